"""A board: a piece of sheet with a place in the cabinet, and the cuts made in it."""

from dataclasses import dataclass
from functools import cached_property

from shoplib.model.box import Box, Point, what_remains
from shoplib.model.placement import Placement

CASE, BOXES, FRONTS = 1, 2, 3
"""Stages: what is cut first, what waits for the opening as built, what waits for the boxes."""


@dataclass(frozen=True, slots=True)
class BoxCut:
    """Wood taken out between `low` and `high`, in the board's own coordinates (ticks).

    `kind` is dado, rabbet, groove or notch; `for_board` names the board that the cut receives,
    or is empty where nothing enters it.
    """

    kind: str
    low: Point
    high: Point
    for_board: str = ""

    @property
    def box(self) -> Box:
        """The cut as a box of the board's own coordinates."""
        return Box(self.low, self.high)


@dataclass(frozen=True, slots=True)
class Hole:
    """A bored hole: `centre` on the face it is drilled from, `depth` into the board along `along`.

    `along` is "u", "v" or "w"; the hole runs inward from whichever face the centre lies on.
    """

    kind: str
    centre: Point
    along: str
    diameter: int
    depth: int
    for_board: str = ""


Cut = BoxCut | Hole


@dataclass(frozen=True, slots=True)
class Edge:
    """Edging on one edge: a thin `band` or a solid `strip`, of stated thickness in ticks."""

    kind: str
    thickness: int


@dataclass(frozen=True)
class Board:
    """One board, finished size (edging included), lengths in ticks.

    `length` runs along the grain and may be less than `width`. `edging` names edges by where they
    look in the cabinet: front, back, left, right, top, bottom. `role` says
    what it does ("side", "box front", ...) whatever its name.
    """

    name: str
    group: str
    stage: int
    sheet: str
    length: int
    width: int
    thickness: int
    placement: Placement
    cuts: tuple[Cut, ...] = ()
    grain: str = "length"
    edging: tuple[tuple[str, Edge], ...] = ()
    role: str = ""

    @property
    def size(self) -> Point:
        """Finished length, width and thickness."""
        return (self.length, self.width, self.thickness)

    @property
    def cut_size(self) -> Point:
        """What the saw leaves before edging goes on: finished size less the edging.

        >>> strip = Edge("strip", 5)
        >>> shelf = Board("shelf", "case", 1, "sheet", 100, 40, 10,
        ...               Placement((0, 0, 0), ("+x", "+y", "+z")), edging=(("front", strip),))
        >>> shelf.cut_size
        (100, 35, 10)
        """
        size = list(self.size)
        for edge, strip in self.edging:
            size[self.placement.own_axis(_EDGE_AXIS[edge])] -= strip.thickness
        return tuple(size)

    @cached_property
    def box(self) -> Box:
        """The space that the uncut board fills in the cabinet (world)."""
        return self.placement.to_world(Box((0, 0, 0), self.size))

    @cached_property
    def cut_boxes(self) -> tuple[Box, ...]:
        """The box cuts, where they lie in the cabinet (world)."""
        return tuple(self.placement.to_world(c.box) for c in self.cuts if isinstance(c, BoxCut))

    @cached_property
    def pieces(self) -> tuple[Box, ...]:
        """The wood that is left after the box cuts, as world boxes that do not overlap.

        Bored holes are left out: no board enters one.
        """
        return tuple(what_remains([self.box], list(self.cut_boxes)))


_EDGE_AXIS = {"left": 0, "right": 0, "front": 1, "back": 1, "bottom": 2, "top": 2}
