"""What a solved project is made of besides its boards: joints, travel, gaps, hardware, sums, findings."""

from dataclasses import dataclass
from functools import cached_property
from typing import Literal

from shoplib.measure import INCH_STYLE, Style
from shoplib.model.board import CASE, Board
from shoplib.model.box import Box, Point
from shoplib.model.part_of import PartOf
from shoplib.model.project import Project
from shoplib.model.sheet import Sheet
from shoplib.tables.slides import Slide, slides


@dataclass(frozen=True, slots=True)
class Joint:
    """Board `enters` goes into (or stands against) board `receives` along the world `axis`.

    `depth` is the depth of the cut from the face of the receiving board (0 for a butt), `fit` what
    the cut is wider than the thickest reading, `end_gap` what the cut is deeper than the board
    enters. `tongue` is 0 where the whole thickness enters, else the thickness of the tongue.
    """

    kind: str
    enters: str
    receives: str
    axis: str
    depth: int = 0
    fit: int = 0
    end_gap: int = 0
    tongue: int = 0


@dataclass(frozen=True, slots=True)
class Travel:
    """A group of boards that runs out together, and how far (world; outward is -y)."""

    group: str
    vector: Point


@dataclass(frozen=True, slots=True)
class Gap:
    """Open space between two fronts, or between a front and the case, along world x or z."""

    between: tuple[str, str]
    along: str
    size: int


@dataclass(frozen=True, slots=True)
class Screw:
    """A screw of the hardware: `gauge` and `length` as bought, `into` the board it must not come through."""

    gauge: str
    length: int
    into: str
    count: int


@dataclass(frozen=True, slots=True)
class Hardware:
    """A fitting on a board: slide, runner, pull, peg, caster, foot. `box` is where it lies (world).

    `row` is the name of its row in the tables, empty where it has none.
    """

    what: str
    on: str
    group: str
    box: Box
    row: str = ""
    screws: tuple[Screw, ...] = ()


@dataclass(frozen=True, slots=True)
class ClosingSum:
    """A chain of sizes that must add up: `terms` (what, ticks) against `total` (what, ticks).

    `measured` names the terms that are sheet thicknesses, which are written as decimals.
    """

    terms: tuple[tuple[str, int], ...]
    total: tuple[str, int]
    measured: frozenset[str] = frozenset()

    @property
    def rest(self) -> int:
        """Total less the terms; 0 where the chain closes."""
        return self.total[1] - sum(ticks for _, ticks in self.terms)


@dataclass(frozen=True, slots=True)
class Finding:
    """What a check saw. `level` is "stop", "warn" or "note"; `amount` in ticks where there is one.

    `text` says what is wrong, by how much, and what would mend it, in one or two sentences.
    """

    check: str
    level: str
    boards: tuple[str, ...]
    text: str
    amount: int | None = None


@dataclass(frozen=True, slots=True)
class SlideHeight:
    """How high a slide or runner of a drawer or pull-out lies above the bottom of the case, in ticks: a spacer of that
    height is cut to set it by. `under` says of which it is.

    >>> SlideHeight("bay 1 drawer 2", "slide", 90).text
    'bay 1 drawer 2: under the slide, above the bottom'
    """

    group: str
    under: str
    height: int

    @property
    def what(self) -> str:
        """From where to where it is, in words."""
        return f"under the {self.under}, above the bottom"

    @property
    def text(self) -> str:
        """What it is for, in words."""
        return f"{self.group}: {self.what}"


@dataclass(frozen=True, slots=True)
class Awaited:
    """A reading that the boards of a stage wait for: `what` is read ("opening", "depth"), `of` which drawer, bay or
    strip, and `how`.

    >>> Awaited(2, "depth", "bay 1", "from its front edge to what stands behind the boxes").text
    'the depth of bay 1, from its front edge to what stands behind the boxes'
    """

    stage: int
    what: Literal["opening", "depth"]
    of: str
    how: str

    @property
    def text(self) -> str:
        """What is read, in words."""
        return f"the {self.what} of {self.of}, {self.how}"


NOWHERE = Box((0, 0, 0), (0, 0, 0))


@dataclass(frozen=True)
class Cabinet:
    """A project solved: everything that lists, drawings, checks and documents are read from.

    `spacers` are the heights that slides are set by; `waiting` is what must be measured before
    boards of a stage are cut; `again` is what was read for the boxes and is read once more, with the boxes in, before
    fronts and strips are cut; `outside` is the box over all boards, closed, and `envelope`
    that plus casters, feet and pulls.
    """

    name: str
    boards: tuple[Board, ...]
    sheets: dict[str, Sheet]
    joints: tuple[Joint, ...] = ()
    travel: tuple[Travel, ...] = ()
    gaps: tuple[Gap, ...] = ()
    hardware: tuple[Hardware, ...] = ()
    sums: tuple[ClosingSum, ...] = ()
    findings: tuple[Finding, ...] = ()
    spacers: tuple[SlideHeight, ...] = ()
    waiting: tuple[Awaited, ...] = ()
    again: tuple[Awaited, ...] = ()
    project: Project | None = None
    style: Style = INCH_STYLE
    outside: Box = NOWHERE
    envelope: Box = NOWHERE

    @property
    def slides(self) -> dict[str, Slide]:
        """The rows that its drawers and pull-outs chose from."""
        return slides(self.style.unit) if self.project is None else self.project.slides

    @property
    def first_stage(self) -> int:
        """The first stage that is still to be cut: what the project says is cut stands in the lists, and no more.

        >>> Cabinet("case", (), {}).first_stage
        1
        """
        return CASE if self.project is None else self.project.cutting.first_stage

    @cached_property
    def by_name(self) -> dict[str, Board]:
        """The boards by name."""
        return {board.name: board for board in self.boards}

    @cached_property
    def groups(self) -> dict[str, tuple[Board, ...]]:
        """The boards by group: "case", and one group for each drawer and pull-out."""
        found: dict[str, list[Board]] = {}
        for board in self.boards:
            found.setdefault(board.group, []).append(board)
        return {group: tuple(boards) for group, boards in found.items()}

    def part_of(self, group: str) -> PartOf | None:
        """Which drawer or pull-out a group is; None for the case, and where there is no such group.

        >>> Cabinet("no boards", (), {}).part_of("bay 1 drawer 1")
        """
        boards = self.groups.get(group)
        return boards[0].part_of if boards else None
