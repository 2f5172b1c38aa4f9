"""The boards of a joint cut through where the joint shows best, to be printed as large as they are."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import combinations, pairwise

import numpy as np
from shapely import LineString as Segment
from shapely import MultiPolygon, Polygon, box, intersection, line_merge, union_all
from shapely.geometry.base import BaseGeometry

from shoplib.draw.look import FROM_ABOVE, FROM_RIGHT, FRONT, Look
from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Rect, Region, Scene
from shoplib.draw.solids import solid, turned
from shoplib.joints.bench_pair import Pair
from shoplib.measure import MM, Style, write_brief
from shoplib.model.board import Board, BoxCut, Hole, PrismCut
from shoplib.model.box import Box

_LOOKS = {"x": FROM_RIGHT, "y": FRONT, "z": FROM_ABOVE}
_SEEN_FROM = {"x": "the right", "y": "the front", "z": "above"}
_WOODS = ("cut case", "cut box")
_ROUND = 26 * MM
"""So much of the boards is shown round the joint, where the paper has room."""
_TOOTH, _DEEP = 2 * MM, MM
"""Half a tooth of the line along which a board is broken off, and how far it stands in."""
_HATCH = 7 * MM // 2
_LEAST_TOLD = MM // 4
"""A step that is less than 1/4 mm is too small for a dimension."""


@dataclass(frozen=True)
class Cut:
    """What the plane takes out of one board: its `kind`, the rectangle round it in the drawing, and the places across
    and up (`steps`) from which it is measured. A slanting wall has none."""

    board: str
    kind: str
    rect: Rect
    steps: tuple[tuple[int, ...], tuple[int, ...]]


def said(ticks: int, style: Style) -> str:
    """A size of a joint: a whole number of the rule's marks as such, what a caliper decides as a decimal.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> said(INCH // 4, INCH_STYLE), said(INCH * 705 // 1000, INCH_STYLE)
    ('1/4 in', '0.705 in')
    """
    return write_brief(ticks, style, decimal=bool(ticks % style.step))


def pair_section(pair: Pair, room: tuple[int, int]) -> Scene:
    """The section of the pair, its boards broken off where `room` (width and height in ticks) ends.

    The sizes stand without their unit, which the note names; every length of the picture is the model's own.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> dado = joint("dado").build(stock_of(3 * INCH // 4))
    >>> pair_section(dado, (150 * MM, 90 * MM)).alt.partition(": ")[2]
    'side, shelf. In the side: dado, 1/4 in across and 0.752 in high.'
    """
    axis, at = pair.section
    look, style = _LOOKS[axis], pair.stock.style
    whole = {board.name: _slice(board, look, at) for board in pair.boards}
    whole = {name: flat for name, flat in whole.items() if not flat.is_empty}
    cuts = list(_cuts(pair, look, at))
    extent = tuple(round(value) for value in union_all(list(whole.values())).bounds)
    frame = _frame(_core(pair, whole, cuts, look), extent, room)
    window = _window(frame, extent)
    items: list[Item] = []
    for number, (name, flat) in enumerate(whole.items()):
        shown = intersection(flat, window)
        fill = _WOODS[number] if number < len(_WOODS) else "cut front"
        for part in _parts(shown):
            items.append(Region(_rings(part), fill, name))
            items += _hatched(part, number)
    leaders = tuple(_named(pair, look, at, frame))
    items += [_name(name, intersection(flat, box(*frame)), leaders) for name, flat in whole.items()
              if flat.intersects(box(*frame))]
    items += [*_dimensions(pair, whole, cuts, frame, look), *leaders]
    unit = "inches" if style.unit == "in" else "millimetres"
    return Scene(
        f"{pair.kind}, cut through, in true size",
        f"Seen from {_SEEN_FROM[axis]}. Sizes in {unit}. A jagged end: the board runs on.",
        _alt(pair, whole, cuts, axis), frame, tuple(items),
    )


def _alt(pair: Pair, whole: dict[str, BaseGeometry], cuts: list[Cut], axis: str) -> str:
    style = pair.stock.style
    told = [f"The joint cut through, seen from {_SEEN_FROM[axis]}, in true size: {', '.join(whole)}."]
    for cut in cuts:
        across, up = (cut.rect[k + 2] - cut.rect[k] for k in (0, 1))
        told.append(f"In the {cut.board}: {cut.kind}, {said(across, style)} across and {said(up, style)} high.")
    return " ".join(dict.fromkeys(told))


def _slice(board: Board, look: Look, at: int) -> BaseGeometry:
    """The wood of the board in the plane, in the drawing's coordinates."""
    turn = np.zeros((3, 3))
    for row, axis in enumerate((look.across, look.up, look.along)):
        turn[row, axis] = 1
    start = np.array(board.placement.origin, float)
    flat = solid(board).transform(np.column_stack([turn @ turned(board), turn @ start])).slice(float(at))
    wood: BaseGeometry = Polygon()
    for ring in flat.to_polygons():
        # Whichever way a ring runs, one inside another opens it.
        wood = wood.symmetric_difference(Polygon(np.round(ring)).buffer(0))
    return wood


def _cuts(pair: Pair, look: Look, at: int) -> Iterator[Cut]:
    """The cuts that the plane goes through. A piece that is bought, a dowel, has none."""
    for board in pair.boards[:2]:
        for cut in board.cuts:
            if isinstance(cut, BoxCut):
                around = board.placement.to_world(cut.box)
            elif isinstance(cut, Hole):
                around = board.placement.to_world(_bored(cut, board))
            else:
                around = around_prism(cut, board)
            if around.low[look.along] < at < around.high[look.along]:
                left, bottom, right, top = rect = look.flat(around)
                steps = ((left, right), (bottom, top))
                if isinstance(cut, PrismCut):
                    steps = _square_ends(cut, board, look)
                yield Cut(board.name, cut.kind, rect, steps)


def _bored(hole: Hole, board: Board) -> Box:
    along = "uvw".index(hole.along)
    low, high = ([c - hole.diameter // 2 for c in hole.centre], [c + hole.diameter // 2 for c in hole.centre])
    inward = 2 * hole.centre[along] < board.size[along]
    low[along] = hole.centre[along] - (0 if inward else hole.depth)
    high[along] = hole.centre[along] + (hole.depth if inward else 0)
    return Box(tuple(low), tuple(high))


def _square_ends(cut: PrismCut, board: Board, look: Look) -> tuple[tuple[int, ...], tuple[int, ...]]:
    """The ends of those edges of the outline that run across or up: where a rule can be put."""
    if board.placement.own_axis(look.along) != "uvw".index(cut.along):
        return (), ()
    corners = [board.placement.point_to_world(point) for point in _corners(cut, cut.start)]
    points = [(corner[look.across], corner[look.up]) for corner in corners]
    square = [end for edge in zip(points, points[1:] + points[:1], strict=True)
              if edge[0][0] == edge[1][0] or edge[0][1] == edge[1][1] for end in edge]
    return tuple({x for x, _ in square}), tuple({y for _, y in square})


def around_prism(cut: PrismCut, board: Board) -> Box:
    """The world box round what an outline takes out of its board."""
    places = list(zip(*_corners(cut, cut.start), *_corners(cut, cut.end), strict=True))
    own = Box(tuple(map(min, places)), tuple(map(max, places)))
    around = board.placement.to_world(own)
    return board.box.common(around) or around


def _corners(cut: PrismCut, at: int) -> list[tuple[int, int, int]]:
    """The corners of the outline in the board's own coordinates, at one end of its run."""
    own = "uvw".index(cut.along)
    found = []
    for p, q in cut.outline:
        point = [at, at, at]
        point[(own + 1) % 3], point[(own + 2) % 3] = p, q
        found.append(tuple(point))
    return found


def _core(pair: Pair, whole: dict[str, BaseGeometry], cuts: list[Cut], look: Look) -> Rect:
    """What must be seen: the cuts, and where the boards meet."""
    rects = [cut.rect for cut in cuts]
    one, other = (look.flat(board.box) for board in pair.boards[:2])
    meet = (max(one[0], other[0]), max(one[1], other[1]), min(one[2], other[2]), min(one[3], other[3]))
    if meet[0] <= meet[2] and meet[1] <= meet[3]:
        rects.append(meet)
    lows, highs = [min(rect[k] for rect in rects) for k in (0, 1)], [max(rect[k] for rect in rects) for k in (2, 3)]
    return (*lows, *highs)


def _frame(core: Rect, extent: Rect, room: tuple[int, int]) -> Rect:
    """The part of the drawing that is shown: the joint and some of the boards, no more than the room."""
    low, high = [0, 0], [0, 0]
    for k in (0, 1):
        a, b = core[k], core[k + 2]
        spare = max(0, min(2 * _ROUND, room[k] - (b - a))) // 2
        low[k], high[k] = max(extent[k], a - spare), min(extent[k + 2], b + spare)
        if high[k] - low[k] > room[k]:
            high[k] = low[k] + room[k]
    return (*low, *high)


def _window(frame: Rect, extent: Rect) -> Polygon:
    """The frame; where boards run on beyond a side of it, that side is jagged."""
    left, bottom, right, top = frame
    jagged = [bottom > extent[1], right < extent[2], top < extent[3], left > extent[0]]
    corners = [(left, bottom), (right, bottom), (right, top), (left, top), (left, bottom)]
    points: list[tuple[int, int]] = []
    for (start, end), broken, inward in zip(pairwise(corners), jagged, ((0, 1), (-1, 0), (0, -1), (1, 0)), strict=True):
        points.append(start)
        if broken:
            long = abs(end[0] - start[0]) + abs(end[1] - start[1])
            step = [(b - a) // max(1, abs(b - a)) for a, b in zip(start, end, strict=True)]
            for number, run in enumerate(range(2 * _TOOTH, long - 2 * _TOOTH, _TOOTH)):
                deep = _DEEP if number % 2 == 0 else 0
                points.append(tuple(start[k] + step[k] * run + inward[k] * deep for k in (0, 1)))
    return Polygon(points)


def _parts(flat: BaseGeometry) -> list[Polygon]:
    parts = flat.geoms if isinstance(flat, MultiPolygon) or hasattr(flat, "geoms") else [flat]
    return [part for part in parts if isinstance(part, Polygon) and part.area > 0]


def _rings(part: Polygon) -> tuple[tuple[tuple[int, int], ...], ...]:
    rings = (part.exterior, *part.interiors)
    return tuple(tuple((round(x), round(y)) for x, y in list(ring.coords)[:-1]) for ring in rings)


def _hatched(part: Polygon, number: int) -> Iterator[Line]:
    """Thin slanting lines, those of one board against those of the next."""
    left, bottom, right, top = part.bounds
    high, rising = top - bottom, number % 2 == 0
    k = (left - high) // _HATCH * _HATCH
    while k < right:
        a, b = ((k, bottom), (k + high, top)) if rising else ((k, top), (k + high, bottom))
        met = intersection(Segment([a, b]), part)
        for piece in getattr(line_merge(met) if hasattr(met, "geoms") else met, "geoms", [met]):
            if isinstance(piece, Segment) and piece.length > MM:
                (p, q), (r, s) = piece.coords[0], piece.coords[-1]
                yield Line((round(p), round(q)), (round(r), round(s)), "hatch")
        k += _HATCH


def _name(name: str, shown: BaseGeometry, leaders: tuple[Leader, ...]) -> Label:
    """The name in the largest upright rectangles of wood, of those that no leader crosses, if there are such."""
    rects = [rect for part in _parts(shown) for rect in _upright(part)] or [tuple(map(round, shown.bounds))]
    largest, *others = sorted(rects, key=lambda rect: (any(_crosses(one, rect) for one in leaders),
                                                       -(rect[2] - rect[0]) * (rect[3] - rect[1])))
    return Label(largest, (name, name.replace(" ", "\n")), plate=True, rooms=tuple(others[:2]))


def _crosses(leader: Leader, rect: Rect) -> bool:
    left, bottom, right, top = rect
    x, y = leader.point
    return bottom < y < top and (left < x if leader.side == "left" else x < right)


def _upright(part: Polygon) -> Iterator[Rect]:
    """Upright rectangles of wood between the corners of the outline."""
    corners = [point for ring in _rings(part) for point in ring]
    xs, ys = sorted({x for x, _ in corners}), sorted({y for _, y in corners})
    for left, right in combinations(xs, 2):
        for low, high in combinations(ys, 2):
            if part.contains(box(left + 1, low + 1, right - 1, high - 1)):
                yield left, low, right, high


def _dimensions(
    pair: Pair, whole: dict[str, BaseGeometry], cuts: list[Cut], frame: Rect, look: Look
) -> Iterator[Chain]:
    """Of each of the two boards its cuts, and what is left of it beside them where the whole of it is in the frame."""
    style = pair.stock.style
    for board, sides in zip(pair.boards[:2], (("below", "left"), ("above", "right")), strict=False):
        if board.name not in whole:
            continue
        outside = look.flat(board.box)
        for k, side in enumerate(sides):
            ends = [outside[k], outside[k + 2]]
            stations = {place for cut in cuts if cut.board == board.name for place in cut.steps[k]}
            if frame[k] <= ends[0] and ends[1] <= frame[k + 2]:
                stations |= set(ends)
            inside = sorted(place for place in stations if frame[k] <= place <= frame[k + 2])
            kept = _told(inside)
            if len(kept) > 1:
                texts = tuple(said(b - a, style).removesuffix(f" {style.unit}") for a, b in pairwise(kept))
                yield Chain(side, 0, tuple(kept), texts, sizes=tuple(b - a for a, b in pairwise(kept)))


def _told(places: Iterable[int]) -> list[int]:
    """The places without those that lie too close after another to be measured."""
    kept: list[int] = []
    for place in places:
        if not kept or place - kept[-1] >= _LEAST_TOLD:
            kept.append(place)
    return kept


def _named(pair: Pair, look: Look, at: int, frame: Rect) -> Iterator[Leader]:
    """The parts that lie in the plane, named beside the drawing."""
    left, bottom, right, top = frame
    for text, (_, point) in pair.named.items():
        x, y = point[look.across], point[look.up]
        if text not in pair.by_name and point[look.along] == at and left <= x <= right and bottom <= y <= top:
            yield Leader((x, y), "left" if 2 * x < left + right else "right", text)
