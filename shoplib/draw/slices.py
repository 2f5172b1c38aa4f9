"""The boards of a joint cut by the plane that shows it best: what of each is wood, for the screen and for paper."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import cos, isqrt, pi, sin

import shapely
from shapely.geometry.base import BaseGeometry

from shoplib.draw.look import FROM_ABOVE, FROM_RIGHT, FRONT, Look
from shoplib.draw.scene import Label, Leader, Point, Rect, Region
from shoplib.draw.spilled import largest_rooms
from shoplib.joints.bench_pair import Pair
from shoplib.measure import share
from shoplib.model.board import Board, BoxCut, Cut, Hole
from shoplib.model.box import Box
from shoplib.model.placement import directions
from shoplib.model.prism import Prism

_LOOKS = {"x": (FROM_RIGHT, "the right"), "y": (FRONT, "the front"), "z": (FROM_ABOVE, "above")}
_SIDES = 32
"""A hole that is cut across is drawn with so many sides."""
_SEAM = 4
"""Slanting outlines that meet are at most so many ticks apart, for their corners are whole ticks."""
_WOODS = ("cut case", "cut box", "cut front")
"""Colours of the first two boards of a pair, as in the view of its solids; pegs and splines have that of fronts."""


@dataclass(frozen=True, slots=True)
class Slice:
    """What a plane cuts of a board: convex outlines of wood, and of the holes bored in it."""

    wood: Sequence[Sequence[Point]]
    holes: Sequence[Sequence[Point]]

    def places(self, side: int) -> set[int]:
        """Where something of it begins or ends along the first (0) or second (1) coordinate."""
        return {corner[side] for outline in (*self.wood, *self.holes) for corner in outline}

    def drawn(self, across: Callable[[int], int], up: Callable[[int], int]) -> "Slice":
        """The same, where a drawing puts its places."""
        wood, holes = ([[(across(x), up(y)) for x, y in one] for one in each] for each in (self.wood, self.holes))
        return Slice(wood, holes)

    def parts(self, window: BaseGeometry) -> list[shapely.Polygon]:
        """The wood that is seen in the window, piece by piece."""
        area, holes = (shapely.union_all([shapely.Polygon(one) for one in each]) for each in (self.wood, self.holes))
        if len(self.wood) > 1 and not all(map(_level, self.wood)):
            area = shapely.buffer(shapely.buffer(area, _SEAM, join_style="mitre"), -_SEAM, join_style="mitre")
        seen = shapely.get_parts(shapely.intersection(shapely.difference(area, holes), window))
        return [part for part in seen if isinstance(part, shapely.Polygon) and part.area > 0]

    def rooms(self, frame: Rect, ways: Sequence[Rect] = ()) -> list[Rect]:
        """The largest level rectangles of wood in the frame, the largest first: beside the bored holes, and beside the
        `ways` that leaders take.
        """
        level = []
        for one in filter(_level, self.wood):
            (a, c), (b, d) = (sorted({corner[side] for corner in one}) for side in (0, 1))
            a, b, c, d = max(a, frame[0]), max(b, frame[1]), min(c, frame[2]), min(d, frame[3])
            level += [(a, b, c, d)] if a < c and b < d else []
        for taken in (*(shapely.Polygon(hole).bounds for hole in self.holes), *ways):
            level = [room for one in level for room in _beside(one, taken)]
        return largest_rooms(level)


@dataclass(frozen=True, slots=True)
class Plane:
    """The plane at `at` on the world axis that `look` looks along; `seen_from` is where the eye is, in words."""

    look: Look
    at: int
    seen_from: str

    @classmethod
    def of(cls, pair: Pair) -> "Plane":
        """The plane that shows the joint best.

        >>> from shoplib.joints import joint
        >>> from shoplib.joints.bench_pair import stock_of
        >>> from shoplib.measure import MM
        >>> dado = joint("dado").build(stock_of(18 * MM))
        >>> Plane.of(dado).seen_from, len(Plane.of(dado).slice(dado.by_name["side"]).wood)
        ('the front', 3)
        """
        look, seen_from = _LOOKS[pair.section[0]]
        return cls(look, int(pair.section[1]), seen_from)

    def meets(self, box: Box) -> bool:
        """Whether the plane goes through the box; one along a face of it takes what lies on the far side."""
        return box.low[self.look.along] <= self.at < box.high[self.look.along]

    def slice(self, board: Board) -> Slice:
        """What it cuts of the board, in the coordinates of the picture."""
        wood = [outline for solid in board.solids if (outline := self._outline(solid))]
        return Slice(wood, [self._hole(board, hole, box) for hole, box in self.cuts(board, Hole)])

    def cuts(self, board: Board, *kinds: type[Cut]) -> Iterator[tuple[Cut, Box]]:
        """The cuts of these kinds that it goes through, each with the world box round it."""
        for cut in board.cuts:
            if isinstance(cut, kinds) and self.meets(box := around(cut, board)):
                yield cut, box

    def flat(self, axis: int, corner: Sequence) -> Point:
        """A corner of an outline along the world `axis`, where it lies in the picture."""
        place = {(axis + 1) % 3: round(corner[0]), (axis + 2) % 3: round(corner[1])}
        return place[self.look.across], place[self.look.up]

    def _outline(self, solid: Prism) -> list[Point]:
        """What it cuts of a convex solid; nothing where it misses it."""
        axis = self.look.along
        low, high = solid.reach(axis)
        if not low <= self.at < high:
            return []
        if solid.axis == axis:
            return [self.flat(axis, corner) for corner in solid.outline]
        ends = _chord(solid.outline, (axis - solid.axis - 1) % 3, self.at)
        box = [[0, 0, 0], [0, 0, 0]]
        for end, along, across in zip(box, (solid.low, solid.high), ends, strict=True):
            end[solid.axis], end[3 - axis - solid.axis] = along, across
        return _corners(self.look.flat(Box(tuple(box[0]), tuple(box[1]))))

    def _hole(self, board: Board, hole: Hole, box: Box) -> list[Point]:
        """What it cuts of a bored hole: a circle, or a strip as wide as its chord."""
        axis, radius = self.look.along, hole.diameter // 2
        bored = directions(board.placement.axes)["uvw".index(hole.along)][0]
        flat = [int(one) for one in self.look.flat(box)]
        if bored == axis:
            x, y = (flat[0] + flat[2]) // 2, (flat[1] + flat[3]) // 2
            turns = [2 * pi * side / _SIDES for side in range(_SIDES)]
            return [(x + round(radius * cos(turn)), y + round(radius * sin(turn))) for turn in turns]
        off = self.at - (box.low[axis] + box.high[axis]) // 2
        half = isqrt(max(radius**2 - int(off) ** 2, 0))
        third = 3 - axis - bored
        middle = int(box.low[third] + box.high[third]) // 2
        side = 0 if third == self.look.across else 1
        flat[side], flat[side + 2] = middle - half, middle + half
        return _corners(tuple(flat))


def around(cut: Cut, board: Board) -> Box:
    """The world box round what a cut takes out of its board; of an outline, no more than lies in the board."""
    if isinstance(cut, BoxCut):
        return board.placement.to_world(cut.box)
    if isinstance(cut, Hole):
        own = "uvw".index(cut.along)
        radius = share(cut.diameter, 2, 1)[0]
        low, high = ([place + by for place in cut.centre] for by in (-radius, radius))
        inward = 2 * cut.centre[own] < board.size[own]
        low[own] = cut.centre[own] - (0 if inward else cut.depth)
        high[own] = cut.centre[own] + (cut.depth if inward else 0)
        return board.placement.to_world(Box(tuple(low), tuple(high)))
    low, high = zip(*map(cut.prism.placed(board.placement).reach, range(3)), strict=True)
    whole = Box(low, high)
    return board.box.common(whole) or whole


def rings(part: shapely.Polygon) -> tuple[tuple[Point, ...], ...]:
    """The corners round a piece, then those round what is open in it.

    >>> part = shapely.box(0, 0, 9, 9).difference(shapely.box(2, 2, 4, 4))
    >>> [len(ring) for ring in rings(part)]
    [4, 4]
    """
    every = (part.exterior, *part.interiors)
    return tuple(tuple((round(x), round(y)) for x, y in ring.coords[:-1]) for ring in every)


def region(part: shapely.Polygon, name: str, number: int) -> Region:
    """A piece of the board of that number in its pair, hatched against the first.

    >>> [region(shapely.box(0, 0, 9, 9), "shelf", number).fill for number in (0, 1)]
    ['cut case', 'cut box']
    """
    return Region(rings(part), _WOODS[min(number, len(_WOODS) - 1)], name, hatch="\\" if number else "/")


def name_on(name: str, parts: Sequence[shapely.Polygon], rooms: Sequence[Rect]) -> Label:
    """The name of a board in the first of its rooms that holds it, or at a point of it where it has none.

    >>> name_on("left side", [shapely.box(0, 0, 9, 9)], []).room
    (4, 4, 5, 5)
    >>> name_on("left side", [shapely.box(0, 0, 60, 20)], [(0, 0, 60, 20)]).room
    (0, 0, 60, 20)
    """
    if not rooms:
        point = shapely.point_on_surface(max(parts, key=shapely.area))
        x, y = round(point.x), round(point.y)
        rooms = [(x, y, x + 1, y + 1)]
    first, *others = rooms
    return Label(first, (name, name.replace(" ", "\n")), plate=True, rooms=tuple(others))


def named_parts(
    pair: Pair, plane: Plane, frame: Rect, across: Callable[[int], int] = int, up: Callable[[int], int] = int
) -> tuple[Leader, ...]:
    """The parts that lie in the plane, named beside the drawing; one that is a board has its name as that board.

    A part that is named at the end of its board, as it shows there, runs on through the plane; in a bored board the
    plane may meet a hole there instead. `across` and `up` say where the drawing puts places.
    """
    left, bottom, right, top = frame
    along, found = plane.look.along, []
    for part, (board, point) in pair.named.items():
        wood = pair.by_name[board]
        bored = any(isinstance(cut, Hole) for cut in wood.cuts)
        low, high = wood.box.low[along], wood.box.high[along]
        ends = (low, high) if low < plane.at < high and not bored else ()
        x, y = across(int(point[plane.look.across])), up(int(point[plane.look.up]))
        shown = point[along] in (plane.at, *ends) and left <= x <= right and bottom <= y <= top
        if shown and not board.startswith(part):
            found.append(Leader((x, y), "left" if 2 * x < left + right else "right", part))
    return tuple(found)


def _level(outline: Sequence[Point]) -> bool:
    """Whether it is a rectangle whose edges run across and up."""
    return len(outline) == 4 and all(len({corner[side] for corner in outline}) == 2 for side in (0, 1))


def _beside(room: Rect, hole: Rect) -> list[Rect]:
    """What is left of a room on the four sides of a hole; all of it where they do not meet."""
    a, b, c, d = room
    low, under, high, over = max(a, hole[0]), max(b, hole[1]), min(c, hole[2]), min(d, hole[3])
    if low >= high or under >= over:
        return [room]
    parts = [(a, b, low, d), (high, b, c, d), (a, b, c, under), (a, over, c, d)]
    return [(x, y, right, top) for x, y, right, top in parts if x < right and y < top]


def _corners(rect: Rect) -> list[Point]:
    a, b, c, d = (round(one) for one in rect)
    return [(a, b), (c, b), (c, d), (a, d)]


def _chord(outline: Sequence[tuple], side: int, at: int) -> tuple[int, int]:
    """From where to where a convex outline reaches beside the line at `at` of its coordinate `side`."""
    met = []
    for one, other in pairwise((*outline, outline[0])):
        a, b = one[side], other[side]
        if a == at:
            met.append(one[1 - side])
        if (a - at) * (b - at) < 0:
            met.append(one[1 - side] + (other[1 - side] - one[1 - side]) * (at - a) / (b - a))
    return round(min(met)), round(max(met))
