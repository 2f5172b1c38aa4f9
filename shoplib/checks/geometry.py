"""Geometry that the checks share: directions, near and far ends, what boxes have in common."""

from collections.abc import Iterable, Sequence

from shoplib.model.board import Board, PrismCut
from shoplib.model.box import Box, around
from shoplib.model.prism import Prism, shared_shifts

AXES = "xyz"


def direction(text: str) -> tuple[int, int]:
    """A world direction such as "-x" as the axis it runs along (0, 1, 2) and its sign.

    >>> direction("-x"), direction("+z")
    ((0, -1), (2, 1))
    """
    return AXES.index(text[1]), 1 if text[0] == "+" else -1


def near(box: Box, axis: int, sign: int) -> int:
    """Where the box begins for someone who moves along the axis in this direction."""
    return box.low[axis] if sign > 0 else box.high[axis]


def far(box: Box, axis: int, sign: int) -> int:
    """Where the box ends for someone who moves along the axis in this direction."""
    return box.high[axis] if sign > 0 else box.low[axis]


def common_boxes(some: Iterable[Box], others: Sequence[Box]) -> list[Box]:
    """Every box that one of `some` shares with one of `others`.

    >>> common_boxes([Box((0, 0, 0), (4, 4, 4))], [Box((3, 3, 3), (9, 9, 9)), Box((4, 0, 0), (5, 4, 4))])
    [Box(low=(3, 3, 3), high=(4, 4, 4))]
    """
    shared = []
    for one in some:
        (a, b, c), (d, e, f) = one.low, one.high
        for other in others:
            (g, h, i), (j, k, m) = other.low, other.high
            if a < j and g < d and b < k and h < e and c < m and i < f:
                shared.append(Box((max(a, g), max(b, h), max(c, i)), (min(d, j), min(e, k), min(f, m))))
    return shared


def share_wood(one: Prism, other: Prism) -> bool:
    """Whether two convex solids want the same wood where they stand.

    >>> wedge = Prism(2, ((0, 0), (4, 0), (0, 4)), 0, 9)
    >>> [share_wood(wedge, Prism.of(Box((low, low, 0), (9, 9, 9)), 2)) for low in (1, 2)]
    [True, False]
    """
    for axis in range(3):
        (a, b), (c, d) = one.reach(axis), other.reach(axis)
        if a >= d or c >= b:
            return False
    shifts = shared_shifts(one, other, 0)
    return shifts is not None and shifts[0] < 0 < shifts[1]


def is_outlined(board: Board) -> bool:
    """Whether something is cut from the board that is no box: then `Board.pieces` are more than its wood."""
    return any(isinstance(cut, PrismCut) for cut in board.cuts)


def shared_by_solids(one: Board, other: Board) -> list[Box]:
    """The boxes round what two boards share of which one at least is outlined: whole ticks, no less than it is."""
    found = []
    # What lies in the other's uncut box, first: of many fingers, most are nowhere near.
    near = [solid for solid in other.solids if _reaches_into(solid, one.box)]
    for ours in one.solids:
        if not _reaches_into(ours, other.box):
            continue
        for theirs in near:
            if share_wood(ours, theirs):
                reaches = [(ours.reach(axis), theirs.reach(axis)) for axis in range(3)]
                low = tuple(int(max(a, c) // 1) for (a, _), (c, _) in reaches)
                found.append(Box(low, tuple(-int(-min(b, d) // 1) for (_, b), (_, d) in reaches)))
    return found


def _reaches_into(solid: Prism, box: Box) -> bool:
    """Whether the box round a solid shares room with this one."""
    reaches = (solid.reach(axis) for axis in range(3))
    return all(a < high and low < b for (a, b), low, high in zip(reaches, box.low, box.high, strict=True))


def has_wood_in(board: Board, room: Box) -> bool:
    """Whether some wood that is left of the board is in the room."""
    return board.box.overlaps(room) and any(piece.overlaps(room) for piece in board.pieces)


def regions(boxes: Sequence[Box]) -> list[Box]:
    """Boxes that touch, drawn together into the box round each heap of them.

    >>> regions([Box((0, 0, 0), (1, 1, 1)), Box((5, 0, 0), (6, 1, 1)), Box((1, 0, 0), (2, 1, 1))])
    [Box(low=(5, 0, 0), high=(6, 1, 1)), Box(low=(0, 0, 0), high=(2, 1, 1))]
    """
    heaps: list[Box] = []
    for box in boxes:
        apart = []
        for heap in heaps:
            if _touch(heap, box):
                box = around([heap, box])
            else:
                apart.append(heap)
        heaps = [*apart, box]
    return heaps


def _touch(one: Box, other: Box) -> bool:
    """True where the two boxes share at least a point."""
    return all(
        a <= d and c <= b for a, b, c, d in zip(one.low, one.high, other.low, other.high, strict=True)
    )


def deepest(boxes: Sequence[Box], axes: Sequence[int] = (0, 1, 2)) -> tuple[int, int]:
    """How far the worst of the shared regions goes, and along which axis: (ticks, axis).

    A region's own measure is its smallest extent, for that is how far one board must give way.

    >>> deepest([Box((0, 0, 0), (2, 9, 9)), Box((20, 0, 0), (29, 9, 3))])
    (3, 2)
    """
    return max(min((heap.size[axis], axis) for axis in axes) for heap in regions(boxes))
