"""A board: a piece of sheet with a place in the cabinet, and the cuts made in it."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cached_property, lru_cache

from shoplib.measure import MM
from shoplib.model.box import Box, Point, what_remains
from shoplib.model.part_of import PartOf
from shoplib.model.placement import Placement
from shoplib.model.prism import Prism, turned

CASE, BOXES, FRONTS = 1, 2, 3
"""Stages: what is cut first, what waits for the opening as built, what waits for the boxes."""

BOX_WALLS = ("box side", "box front", "box back")
"""The roles of the boards round a drawer box."""

BOX_PARTS = (*BOX_WALLS, "box bottom")
"""The roles of all its boards; its front is none of them."""

LEAST_WOOD = 3 * MM
"""Less wood than this does not hold under a cut or beside one. Common practice, no source."""


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


@dataclass(frozen=True, slots=True)
class PrismCut:
    """Wood taken out where an `outline` is run from `start` to `end` along one axis: a dovetail, a mitre, a bevel.

    `along` is "u", "v" or "w"; corners are ticks in the two other own coordinates in cyclic order (along u: v, w;
    along v: w, u; along w: u, v). Raises ValueError for an outline that is not convex: that is several cuts.

    >>> PrismCut("mitre", ((0, 0), (10, 0), (10, 10), (5, 2)), "v", 0, 40)
    Traceback (most recent call last):
    ...
    ValueError: the outline ((0, 0), (10, 0), (10, 10), (5, 2)) is not convex, or has a corner too many; make it \
several cuts.
    """

    kind: str
    outline: tuple[tuple[int, int], ...]
    along: str
    start: int
    end: int
    for_board: str = ""

    def __post_init__(self) -> None:
        turned(self.outline)

    @property
    def box(self) -> Box:
        """The box round the cut, in the board's own coordinates."""
        return Box(self.low, self.high)

    @property
    def low(self) -> Point:
        """The lower corner of that box."""
        return self._ends(min, self.start)

    @property
    def high(self) -> Point:
        """The upper corner of that box."""
        return self._ends(max, self.end)

    def _ends(self, choose: Callable[[Iterable[int]], int], along: int) -> Point:
        ends, axis = [along] * 3, "uvw".index(self.along)
        for k in (0, 1):
            ends[(axis + 1 + k) % 3] = choose(corner[k] for corner in self.outline)
        return tuple(ends)

    @property
    def prism(self) -> Prism:
        """The cut as a solid of the board's own coordinates."""
        return Prism("uvw".index(self.along), turned(self.outline), self.start, self.end)


Cut = BoxCut | Hole | PrismCut

Spot = tuple[int, int]


def prism_cut(
    placement: Placement, kind: str, axis: int, outline: Iterable[Spot], ends: Spot, for_board: str
) -> PrismCut:
    """An outline given in the world, in the two axes after `axis` in cyclic order, as a cut of the board placed there.

    >>> prism_cut(Placement((0, 0, 0), ("+z", "+y", "-x")), "mitre", 1, ((0, 0), (4, 0), (4, -4)), (0, 9), "").outline
    ((0, 0), (0, 4), (4, 4))
    """
    corners, run = [], ()
    own = placement.own_axis(axis)
    for p, q in outline:
        world = [ends[0]] * 3
        world[(axis + 1) % 3], world[(axis + 2) % 3] = p, q
        point = placement.point_to_board(tuple(world))
        corners.append((point[(own + 1) % 3], point[(own + 2) % 3]))
        world[axis] = ends[1]
        run = sorted((point[own], placement.point_to_board(tuple(world))[own]))
    return PrismCut(kind, tuple(corners), "uvw"[own], *run, for_board)


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
    what it does ("side", "box front", ...) whatever its name, and `part_of` where it stands in a bay; None for
    what is of the whole case.
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
    part_of: PartOf | None = None

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

        Bored holes are left out: no board of a cabinet enters one. So are outlines: `solids` has them.
        """
        return tuple(what_remains([self.box], list(self.cut_boxes)))

    @cached_property
    def solids(self) -> tuple[Prism, ...]:
        """The wood that is left after box cuts and outlines, as convex world prisms that do not overlap.

        Bored holes are left out. Raises ValueError where outlines run along two axes of one board.

        >>> mitre = PrismCut("mitre", ((0, 0), (10, 0), (10, 10)), "v", 0, 40)
        >>> frame = Board("top", "case", 1, "sheet", 100, 40, 10,
        ...               Placement((0, 0, 0), ("+x", "+y", "+z")), (mitre,))
        >>> sum(piece.volume for piece in frame.solids)
        Fraction(38000, 1)
        """
        return tuple(piece.placed(self.placement) for piece in _own_solids(self.size, self.cuts))


@lru_cache(maxsize=64)
def _own_solids(size: Point, cuts: tuple[Cut, ...]) -> tuple[Prism, ...]:
    """The wood that is left, in own coordinates. Kept, for between two moves of a slider few boards change."""
    outlines = [cut.prism for cut in cuts if isinstance(cut, PrismCut)]
    axes = {outline.axis for outline in outlines} or {0}
    if len(axes) > 1:
        raise ValueError("outlines of one board run along two of its axes; they may run along one.")
    boxes = what_remains([Box((0, 0, 0), size)], [cut.box for cut in cuts if isinstance(cut, BoxCut)])
    wood = [Prism.of(box, *axes) for box in boxes]
    for outline in outlines:
        wood = [rest for piece in wood for rest in piece.without(outline)]
    return tuple(wood)


_EDGE_AXIS = {"left": 0, "right": 0, "front": 1, "back": 1, "bottom": 2, "top": 2}
