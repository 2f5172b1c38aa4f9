"""A blank: a board in the making, a box in the cabinet with the cuts that are marked on it."""

from dataclasses import dataclass, field
from typing import NamedTuple

from shoplib.model.board import Board, BoxCut, Edge, Hole, PrismCut, prism_cut
from shoplib.model.box import Box
from shoplib.model.part_of import PartOf
from shoplib.model.placement import Axes, Placement, directions, standing_in
from shoplib.model.project import PartSize
from shoplib.model.sheet import Sheet

Span = tuple[int, int]

UPRIGHT_LEFT: Axes = ("+z", "+y", "-x")
"""A left side or a divider: length up, width back, inside face at w = 0."""
UPRIGHT_RIGHT: Axes = ("+z", "-y", "+x")
"""A right side: length up, width forward, inside face at w = 0."""
LEVEL: Axes = ("+x", "+y", "+z")
"""A top, bottom or shelf: length to the right, width back."""
FACING: Axes = ("+x", "+z", "-y")
"""A front, rail or box front: length to the right, width up, rear face at w = 0."""
BACKING: Axes = ("+z", "+x", "+y")
"""A back taller than wide: length up, width to the right."""
BACKING_WIDE: Axes = ("+x", "-z", "+y")
"""A back wider than tall: length to the right, width down."""
FACING_TALL: Axes = ("+z", "-x", "-y")
"""The front of a pull-out that is taller than wide, whose grain runs up; a cleat."""
BOX_SIDE: Axes = ("+y", "+z", "+x")
"""A side of a drawer box, a runner beside it, an end of a plinth: length back, width up."""
FLAT_STRIP: Axes = ("+y", "+x", "-z")
"""A runner below or a kicker: length back, width to the right."""


class Outline(NamedTuple):
    """An outline given in the cabinet, in the two axes after `axis` in cyclic order, run from `start` to `end`."""

    kind: str
    axis: int
    corners: tuple[tuple[int, int], ...]
    start: int
    end: int
    for_board: str


@dataclass(slots=True)
class Blank:
    """A board in the making: its box in the cabinet as two lists of three ticks.

    `thin_axis` is the world axis (0, 1, 2) that its thickness runs along.
    """

    name: str
    role: str
    group: str
    stage: int
    sheet: Sheet
    axes: Axes
    low: list[int]
    high: list[int]
    thin_axis: int
    edging: tuple[tuple[str, Edge], ...] = ()
    part_of: PartOf | None = None
    cuts: list[tuple[str, Box, str]] = field(default_factory=list)
    holes: list[Hole] = field(default_factory=list)
    outlines: list[Outline] = field(default_factory=list)

    @property
    def box(self) -> Box:
        """Where it stands now."""
        return Box(tuple(self.low), tuple(self.high))

    def span(self, axis: int) -> Span:
        """From where to where it reaches along a world axis."""
        return (self.low[axis], self.high[axis])

    def notch(self, box: Box, for_board: str = "") -> None:
        """Take a corner out of it, given in the cabinet."""
        self.cuts.append(("notch", box, for_board))


def resize(blank: Blank, size: PartSize) -> None:
    """Give a blank its measured size; its lower, left or front end stays."""
    (length, _), (width, _), _ = directions(blank.axes)
    for axis, true in ((length, size.length), (width, size.width)):
        if true is not None:
            blank.high[axis] = blank.low[axis] + true


def finished(blank: Blank) -> Board:
    """The board that the blank becomes: its cuts kept to its wood, all in its own coordinates."""
    whole = blank.box
    placement = standing_in(whole, blank.axes)
    cuts = []
    for kind, cut, for_board in blank.cuts:
        inside = whole.common(cut)
        if inside is not None:
            own = placement.to_board(inside)
            cuts.append(BoxCut(kind, own.low, own.high, for_board))
    length, width, thickness = (whole.size[axis] for axis, _ in directions(blank.axes))
    return Board(
        blank.name,
        blank.group,
        blank.stage,
        blank.sheet.name,
        length,
        width,
        thickness,
        placement,
        (
            *cuts,
            *(_own_hole(placement, hole) for hole in blank.holes),
            *(_own_outline(placement, outline) for outline in blank.outlines),
        ),
        blank.sheet.grain,
        blank.edging,
        blank.role,
        blank.part_of,
    )


def _own_outline(placement: Placement, outline: Outline) -> PrismCut:
    ends = (outline.start, outline.end)
    return prism_cut(placement, outline.kind, outline.axis, outline.corners, ends, outline.for_board)


def _own_hole(placement: Placement, hole: Hole) -> Hole:
    """A hole given in world terms (`along` "x", "y" or "z"), in the board's own coordinates."""
    along = "uvw"[placement.own_axis("xyz".index(hole.along))]
    centre = placement.point_to_board(hole.centre)
    return Hole(hole.kind, centre, along, hole.diameter, hole.depth, hole.for_board)
