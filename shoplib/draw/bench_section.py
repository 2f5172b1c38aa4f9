"""Any joint of the bench cut across, for the screen: sizes written true, clearances drawn larger than they are."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import cos, isqrt, pi, sin

import shapely

from shoplib.draw.chains import stacked, unit_note
from shoplib.draw.look import FROM_ABOVE, FROM_RIGHT, FRONT, Look
from shoplib.draw.scene import Chain, Item, Label, Line, Rect, Region, Scene, Told
from shoplib.draw.spilled import largest_rooms
from shoplib.draw.stretched import Stretched
from shoplib.joints.bench_pair import Pair
from shoplib.lists.writing import Writing
from shoplib.model.board import Board, BoxCut, Hole
from shoplib.model.box import Box
from shoplib.model.joinery import axis_of
from shoplib.model.placement import directions

_LOOK = {0: FROM_RIGHT, 1: FRONT, 2: FROM_ABOVE}
_SEEN_FROM = {0: "the right", 1: "the front", 2: "above"}
_PART = 28
"""A clearance is drawn at least as wide as the picture divided by this."""
_SIDES = 32
"""A hole that is cut across is drawn with so many sides."""
_OPEN = 4
"""Slanting outlines that meet are at most so many ticks apart."""
_LONGEST = 4
"""Of boards that run on side by side so many thicknesses are shown."""
_WOODS = ("case", "box")
"""Colours of the first two boards of a pair, as in the view of its solids; pegs and splines have that of fronts."""

LARGER = "Clearances are drawn larger than they are."


def bench_section(pair: Pair, title: str, gain: int = 0) -> Scene:
    """The pair cut at its `section`: both boards with the sizes of their cuts, and what the entering board gains.

    Sizes are written as they are; a clearance is drawn larger where it would not be seen, and the drawing says so.
    `gain` is what the entering board gains at this end, 0 where nothing is to be said of it.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> dado = joint("dado").build(stock_of(3 * INCH // 4))
    >>> bench_section(dado, "A dado, in section").legend
    ('Fit under the upper wall: 0.002.',)
    """
    axis, at = "xyz".index(pair.section[0]), int(pair.section[1])
    look = _LOOK[axis]
    pieces = {board.name: _sliced(board, look, at) for board in pair.boards}
    window = _window(pair, look, pieces)
    least = max(window[2] - window[0], window[3] - window[1]) // _PART
    across, up = (Stretched(_gaps(pair, pieces, look, flat), least) for flat in (look.across, look.up))
    frame = (across(window[0]), up(window[1]), across(window[2]), up(window[3]))
    items: list[Item] = []
    names: list[Item] = []
    for number, board in enumerate(pair.boards):
        wood = _WOODS[number] if number < len(_WOODS) else "front"
        drawn = [_drawn(piece, across, up) for piece in pieces[board.name].wood]
        area = _joined(drawn)
        holes = [shapely.Polygon(_drawn(hole, across, up)) for hole in pieces[board.name].holes]
        area = shapely.intersection(shapely.difference(area, shapely.union_all(holes)), shapely.box(*frame))
        parts = [part for part in shapely.get_parts(area) if isinstance(part, shapely.Polygon) and part.area > 0]
        items += [Region(_rings(part), f"cut {wood}", board.name, hatch="\\" if number else "/") for part in parts]
        if parts:
            names.append(_name(board.name, parts, drawn, holes, frame))
    items += names
    lines = _Lines(pair, look, at, window, across, up)
    told_before = lines.dimensions()
    items += told_before
    items += [item for item in (lines.gained(gain) if gain else []) if not any(_same(item, one) for one in told_before)]
    told = _clearances(pair)
    note = f"Seen from {_SEEN_FROM[axis]}. The boards run on beyond the frame."
    note += f" {LARGER}" if across or up else ""
    cut = [board.name for board in pair.boards if pieces[board.name].wood]
    return Scene(
        title, unit_note(pair.stock.style, note),
        f"{' and '.join(cut)} cut across, seen from {_SEEN_FROM[axis]}. {' '.join(line.line for line in told)} {note}",
        frame, tuple(items), tuple(line.line for line in told), told=told,
    )


@dataclass(frozen=True, slots=True)
class _Slice:
    """What the plane cuts of a board: convex outlines of wood, and of the holes bored in it."""

    wood: list[list[tuple[int, int]]]
    holes: list[list[tuple[int, int]]]

    def places(self, side: int) -> set[int]:
        """Where something of it begins or ends along the first (0) or second (1) coordinate."""
        return {corner[side] for outline in (*self.wood, *self.holes) for corner in outline}


def _sliced(board: Board, look: Look, at: int) -> _Slice:
    axis = look.along
    wood = []
    for solid in board.solids:
        low, high = solid.reach(axis)
        if not low <= at < high:
            continue
        if solid.axis == axis:
            wood.append([_flat(look, solid.axis, corner) for corner in solid.outline])
        else:
            side = (axis - solid.axis - 1) % 3
            ends = _chord(solid.outline, side, at)
            box = [[0, 0, 0], [0, 0, 0]]
            for end, along, across in zip(box, (solid.low, solid.high), ends, strict=True):
                end[solid.axis], end[3 - axis - solid.axis] = along, across
            wood.append(_corners(look.flat(Box(tuple(box[0]), tuple(box[1])))))
    holes = [hole for cut in board.cuts if isinstance(cut, Hole) for hole in _hole(board, cut, look, at)]
    return _Slice(wood, holes)


def _flat(look: Look, axis: int, corner: tuple) -> tuple[int, int]:
    """A corner of an outline along `axis`, where it lies in the picture."""
    place = {(axis + 1) % 3: round(corner[0]), (axis + 2) % 3: round(corner[1])}
    return place[look.across], place[look.up]


def _corners(rect: Rect) -> list[tuple[int, int]]:
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


def _hole(board: Board, hole: Hole, look: Look, at: int) -> list[list[tuple[int, int]]]:
    """What the plane cuts of a bored hole: a circle, or a strip as wide as its chord; nothing where it misses it."""
    box = _round_hole(board, hole)
    axis, radius = look.along, hole.diameter // 2
    bored = directions(board.placement.axes)["uvw".index(hole.along)][0]
    if not box.low[axis] <= at < box.high[axis]:
        return []
    flat = [int(one) for one in look.flat(box)]
    if bored == axis:
        x, y = (flat[0] + flat[2]) // 2, (flat[1] + flat[3]) // 2
        turns = [2 * pi * side / _SIDES for side in range(_SIDES)]
        return [[(x + round(radius * cos(turn)), y + round(radius * sin(turn))) for turn in turns]]
    off = at - (box.low[axis] + box.high[axis]) // 2
    half = isqrt(max(radius**2 - int(off) ** 2, 0))
    third = 3 - axis - bored
    middle = int(box.low[third] + box.high[third]) // 2
    side = 0 if third == look.across else 1
    flat[side], flat[side + 2] = middle - half, middle + half
    return [_corners(tuple(flat))]


def _round_hole(board: Board, hole: Hole) -> Box:
    """The world box round a bored hole."""
    own = "uvw".index(hole.along)
    low, high = list(hole.centre), list(hole.centre)
    for other in range(3):
        if other != own:
            low[other] -= hole.diameter // 2
            high[other] += hole.diameter // 2
    if 2 * hole.centre[own] < board.size[own]:
        high[own] = high[own] + hole.depth
    else:
        low[own] = low[own] - hole.depth
    return board.placement.to_world(Box(tuple(low), tuple(high)))


def _window(pair: Pair, look: Look, pieces: dict[str, _Slice]) -> Rect:
    """Where boards meet, with some of both round it, and all of what is bored or cut there."""
    boxes = [board.box for board in pair.boards]
    thick = max(board.thickness for board in pair.boards[:2])
    meets = []
    for number, one in enumerate(boxes):
        for other in boxes[number + 1:]:
            low, high = map(max, one.low, other.low), map(min, one.high, other.high)
            low, high = tuple(low), tuple(high)
            if all(a <= b for a, b in zip(low, high, strict=True)):
                meets.append(look.flat(Box(low, high)))
    whole = [look.flat(box) for box in boxes]
    reach = thick * 5 // 4
    window = []
    for side in (0, 1):
        low = max(min(meet[side] for meet in meets) - reach, min(box[side] for box in whole))
        last = max(meet[side + 2] for meet in meets)
        cut = [place for board, box in zip(pair.boards, whole, strict=True) for place in pieces[board.name].places(side)
               if box[side] < place < box[side + 2]]
        high = min(max([last + reach, *(place + reach // 3 for place in cut)]), max(box[side + 2] for box in whole))
        if len({box[side + 2] for box in whole}) == 1:  # both run on alike: their near ends tell all
            high = min(high, low + _LONGEST * thick)
        window.append((int(low), int(high)))
    (left, right), (bottom, top) = window
    return left, bottom, right, top


def _gaps(pair: Pair, pieces: dict[str, _Slice], look: Look, axis: int) -> list[tuple[int, int]]:
    """Where the stated clearances along one axis of the picture lie: between a face of either board."""
    side = 0 if axis == look.across else 1
    found = []
    for stated in pair.clearances:
        along, sign = axis_of(stated.way)
        if along != axis or not stated.gap:
            continue
        against = pieces[stated.against].places(side)
        for place in pieces[stated.mover].places(side):
            face = place + sign * int(stated.gap)
            if face in against:
                found.append((min(place, face), max(place, face)))
    return found


def _drawn(corners: Iterable[tuple[int, int]], across: Stretched, up: Stretched) -> list[tuple[int, int]]:
    return [(across(x), up(y)) for x, y in corners]


def _joined(outlines: Sequence[Sequence[tuple[int, int]]]) -> shapely.Geometry:
    """The outlines as one; what stands open between two of them, because their corners are whole ticks, is closed."""
    area = shapely.union_all([shapely.Polygon(corners) for corners in outlines])
    if all(len({x for x, _ in corners}) == len({y for _, y in corners}) == 2 for corners in outlines):
        return area
    return area.buffer(_OPEN, join_style="mitre").buffer(-_OPEN, join_style="mitre")


def _rings(part: shapely.Polygon) -> tuple[tuple[tuple[int, int], ...], ...]:
    return tuple(
        tuple((round(x), round(y)) for x, y in ring.coords[:-1]) for ring in (part.exterior, *part.interiors)
    )


def _name(
    name: str, parts: list[shapely.Polygon], drawn: list[list[tuple[int, int]]], holes: list[shapely.Polygon],
    frame: Rect,
) -> Label:
    """The name in the largest level room of the board, beside its holes, or at a point of it where it has none."""
    level = []
    for corners in drawn:
        xs, ys = sorted({x for x, _ in corners}), sorted({y for _, y in corners})
        if len(corners) == 4 and len(xs) == len(ys) == 2:
            a, b, c, d = max(xs[0], frame[0]), max(ys[0], frame[1]), min(xs[1], frame[2]), min(ys[1], frame[3])
            level += [(a, b, c, d)] if a < c and b < d else []
    for hole in holes:
        level = [room for one in level for room in _beside(one, hole.bounds)]
    if level:
        largest, *others = largest_rooms(level)
    else:
        point = shapely.point_on_surface(max(parts, key=shapely.area))
        x, y = round(point.x), round(point.y)
        largest, others = (x, y, x + 1, y + 1), []
    return Label(largest, (name, name.replace(" ", "\n")), plate=True, rooms=tuple(others))


def _beside(room: Rect, hole: Rect) -> list[Rect]:
    """What is left of a room on the four sides of a hole; all of it where they do not meet."""
    a, b, c, d = room
    low, under, high, over = max(a, hole[0]), max(b, hole[1]), min(c, hole[2]), min(d, hole[3])
    if low >= high or under >= over:
        return [room]
    parts = [(a, b, low, d), (high, b, c, d), (a, b, c, under), (a, over, c, d)]
    return [(x, y, right, top) for x, y, right, top in parts if x < right and y < top]


@dataclass(frozen=True, slots=True)
class _Lines:
    """The dimensions of a section: of the first board below and on the left, of the others above and on the right."""

    pair: Pair
    look: Look
    at: int
    window: Rect
    across: Stretched
    up: Stretched

    def dimensions(self) -> list[Item]:
        """Thickness and cuts of each board, as far as the window shows their ends."""
        items: list[Item] = []
        for number, board in enumerate(self.pair.boards[:3]):
            sides = ("below", "left") if number == 0 else ("above", "right")
            for axis, side in zip((self.look.across, self.look.up), sides, strict=True):
                found = self._chain(board, axis, side, number - 1 if number else 0)
                if found is not None:
                    items.append(found)
        return items

    def gained(self, gain: int) -> list[Item]:
        """A dashed line where the entering board would end if it were butted, and the length that it gains."""
        along, sign = axis_of(self.pair.joints[0].axis)
        if along == self.look.along:
            return []
        enters = self.pair.by_name[self.pair.joints[0].enters].box
        tip = enters.high[along] if sign > 0 else enters.low[along]
        face = int(tip) - sign * int(gain)
        other = self.look.up if along == self.look.across else self.look.across
        place, beside = (self.across, self.up) if along == self.look.across else (self.up, self.across)
        low = max(int(enters.low[other]), self.window[1 if other == self.look.up else 0])
        high = min(int(enters.high[other]), self.window[3 if other == self.look.up else 2])
        ends = [(place(face), beside(low)), (place(face), beside(high))]
        if along == self.look.up:
            ends = [(y, x) for x, y in ends]
        text = stacked(self._page.setting(gain))
        at = tuple(sorted((place(int(tip)), place(face))))
        return [
            Line(*ends, "hidden"),
            Chain("above" if along == self.look.across else "right", 2, at, (text,), sizes=(gain,)),
        ]

    @property
    def _page(self) -> Writing:
        return Writing(self.pair.stock.style, units=False)

    def _chain(self, board: Board, axis: int, side: str, row: int) -> Chain | None:
        flat = axis == self.look.across
        low, high = (self.window[0], self.window[2]) if flat else (self.window[1], self.window[3])
        stations = {}
        for box in (board.box, *self._cuts(board)):
            for place in (box.low[axis], box.high[axis]):
                if low <= place <= high and board.box.low[axis] <= place <= board.box.high[axis]:
                    stations.setdefault(int(place), place)
        at = sorted(stations)
        if len(at) < 2:
            return None
        drawn = self.across if flat else self.up
        sizes = tuple(stations[b] - stations[a] for a, b in pairwise(at))
        return Chain(side, row, tuple(map(drawn, at)), tuple(stacked(self._page.setting(size)) for size in sizes),
                     sizes=sizes)

    def _cuts(self, board: Board) -> list[Box]:
        """World boxes round the cuts that the plane goes through; those with slanting sides tell no level size."""
        found = [
            board.placement.to_world(cut.box) if isinstance(cut, BoxCut) else _round_hole(board, cut)
            for cut in board.cuts if isinstance(cut, BoxCut | Hole)
        ]
        return [box for box in found if box.low[self.look.along] <= self.at < box.high[self.look.along]]


def _same(one: Item, other: Item) -> bool:
    """Whether two dimensions stand on one side and run from the same place to the same."""
    return isinstance(one, Chain) and isinstance(other, Chain) and (one.side, one.at) == (other.side, other.at)


def _clearances(pair: Pair) -> tuple[Told, ...]:
    """A line for each clearance that is not nothing, with its size."""
    page = Writing(pair.stock.style, units=False)
    lines = {}
    for stated in pair.clearances:
        if stated.gap:
            what = f"{stated.what[:1].upper()}{stated.what[1:]}"
            lines.setdefault(f"{what}: {page.setting(stated.gap)}.", (stated.what, stated.gap))
    return tuple(Told(line, (size,)) for line, size in lines.items())
