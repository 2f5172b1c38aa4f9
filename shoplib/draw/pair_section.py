"""The boards of a joint cut through where the joint shows best, to be printed as large as they are."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import combinations, pairwise

import shapely

from shoplib.draw.look import Look
from shoplib.draw.scene import Chain, Item, Leader, Rect, Scene
from shoplib.draw.slices import Plane, name_on, named_parts, region, rings
from shoplib.joints.bench_pair import Pair
from shoplib.measure import MM, Style, write_brief
from shoplib.model.board import Board, BoxCut, Hole, PrismCut

_ROUND = 26 * MM
"""So much of the boards is shown round the joint, where the paper has room."""
_TOOTH, _DEEP = 2 * MM, MM
"""Half a tooth of the line along which a board is broken off, and how far it stands in."""
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
    plane, style = Plane.of(pair), pair.stock.style
    look = plane.look
    slices = {board.name: plane.slice(board) for board in pair.boards}
    slices = {name: piece for name, piece in slices.items() if piece.wood}
    cuts = list(_cuts(pair, plane))
    extent = _around([(*corner, *corner) for piece in slices.values() for one in piece.wood for corner in one])
    frame = _frame(_core(pair, cuts, look), extent, room)
    window = _window(frame, extent)
    leaders = named_parts(pair, plane, frame)
    items: list[Item] = []
    names: list[Item] = []
    for number, (name, piece) in enumerate(slices.items()):
        parts = piece.parts(window)
        items += [region(part, name, number) for part in parts]
        names += [name_on(name, parts, _rooms(piece.parts(shapely.box(*frame)), leaders))] if parts else []
    items += [*names, *_dimensions(pair, set(slices), cuts, frame, look), *leaders]
    unit = "inches" if style.unit == "in" else "millimetres"
    return Scene(
        f"{pair.kind}, cut through, in true size",
        f"Seen from {plane.seen_from}. Sizes in {unit}. A jagged end: the board runs on.",
        _alt(pair, slices, cuts, plane), frame, tuple(items),
    )


def _alt(pair: Pair, boards: Iterable[str], cuts: list[Cut], plane: Plane) -> str:
    style = pair.stock.style
    told = [f"The joint cut through, seen from {plane.seen_from}, in true size: {', '.join(boards)}."]
    for cut in cuts:
        across, up = (cut.rect[k + 2] - cut.rect[k] for k in (0, 1))
        told.append(f"In the {cut.board}: {cut.kind}, {said(across, style)} across and {said(up, style)} high.")
    return " ".join(dict.fromkeys(told))


def _cuts(pair: Pair, plane: Plane) -> Iterator[Cut]:
    """The cuts that the plane goes through. A piece that is bought, a dowel, has none."""
    for board in pair.boards[:2]:
        for cut, box in plane.cuts(board, BoxCut, Hole, PrismCut):
            left, bottom, right, top = rect = plane.look.flat(box)
            slanted = isinstance(cut, PrismCut)
            steps = _square_ends(cut, board, plane) if slanted else ((left, right), (bottom, top))
            yield Cut(board.name, cut.kind, rect, steps)


def _square_ends(cut: PrismCut, board: Board, plane: Plane) -> tuple[tuple[int, ...], tuple[int, ...]]:
    """The ends of those edges of the outline that run across or up: where a rule can be put."""
    solid = cut.prism.placed(board.placement)
    if solid.axis != plane.look.along:
        return (), ()
    points = [plane.flat(solid.axis, corner) for corner in solid.outline]
    square = [end for edge in zip(points, points[1:] + points[:1], strict=True)
              if edge[0][0] == edge[1][0] or edge[0][1] == edge[1][1] for end in edge]
    return tuple({x for x, _ in square}), tuple({y for _, y in square})


def _core(pair: Pair, cuts: list[Cut], look: Look) -> Rect:
    """What must be seen: the cuts, and where the boards meet."""
    one, other = (look.flat(board.box) for board in pair.boards[:2])
    meet = (max(one[0], other[0]), max(one[1], other[1]), min(one[2], other[2]), min(one[3], other[3]))
    met = [meet] if meet[0] <= meet[2] and meet[1] <= meet[3] else []
    return _around([*(cut.rect for cut in cuts), *met])


def _around(rects: list[Rect]) -> Rect:
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


def _window(frame: Rect, extent: Rect) -> shapely.Polygon:
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
    return shapely.Polygon(points)


def _rooms(parts: list[shapely.Polygon], leaders: tuple[Leader, ...]) -> list[Rect]:
    """The largest upright rectangles of wood, first those that no leader crosses: paper has time to look for them."""
    return sorted((rect for part in parts for rect in _upright(part)), key=lambda rect: (
        any(_crosses(one, rect) for one in leaders), -(rect[2] - rect[0]) * (rect[3] - rect[1])))[:3]


def _upright(part: shapely.Polygon) -> Iterator[Rect]:
    """Upright rectangles of wood between the corners of the outline."""
    xs, ys = (sorted({corner[side] for ring in rings(part) for corner in ring}) for side in (0, 1))
    for left, right in combinations(xs, 2):
        for low, high in combinations(ys, 2):
            if part.contains(shapely.box(left + 1, low + 1, right - 1, high - 1)):
                yield left, low, right, high


def _crosses(leader: Leader, rect: Rect) -> bool:
    left, bottom, right, top = rect
    x, y = leader.point
    return bottom < y < top and (left < x if leader.side == "left" else x < right)


def _dimensions(
    pair: Pair, shown: set[str], cuts: list[Cut], frame: Rect, look: Look
) -> Iterator[Chain]:
    """Of each of the two boards its cuts, and what is left of it beside them where the whole of it is in the frame."""
    style = pair.stock.style
    for board, sides in zip(pair.boards[:2], (("below", "left"), ("above", "right")), strict=False):
        if board.name not in shown:
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
