"""One headed part of a page of words and tables."""

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Section:
    """Lines of text under a title, then a table where it has rows."""

    title: str
    lines: tuple[str, ...] = ()
    head: tuple[str, ...] = ()
    rows: tuple[tuple[str, ...], ...] = field(default=())
