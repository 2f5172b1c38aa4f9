"""What solving gathers besides boards and joints, while it goes from bay to bay."""

from dataclasses import dataclass, field

from shoplib.model.blank import Blank
from shoplib.model.carcass import Opening
from shoplib.model.solved import Awaited, Finding, Hardware, SlideHeight, Travel


@dataclass(slots=True)
class Gathered:
    """Lists that each part of the solver adds to.

    `fronts` pairs each front with its opening, or its share of one, as measured; `openings` are the names
    that one can be measured by; `again` are those of `waiting` for fronts and strips that were read once, before
    the boxes hung.
    """

    travel: list[Travel] = field(default_factory=list)
    hardware: list[Hardware] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)
    fronts: list[tuple[Opening, Blank]] = field(default_factory=list)
    spacers: list[SlideHeight] = field(default_factory=list)
    waiting: list[Awaited] = field(default_factory=list)
    again: list[Awaited] = field(default_factory=list)
    openings: list[str] = field(default_factory=list)
