"""What slips do to a board of a joint: cuts in the other face or from the other end, shifted, or forgotten."""

from collections.abc import Callable
from dataclasses import replace

from shoplib.joints.bench_pair import Pair
from shoplib.measure import narrowest, thickest
from shoplib.model.board import Board, BoxCut, Cut, Hole
from shoplib.model.placement import directions

Does = Callable[[Pair], Pair]


def each_cut(name: str, change: Callable[[Board, Cut], Cut | None]) -> Does:
    """Every cut of a board changed, or left out where `change` gives nothing."""
    def does(pair: Pair) -> Pair:
        boards = []
        for board in pair.boards:
            if board.name == name:
                cuts = (change(board, cut) for cut in board.cuts)
                boards.append(replace(board, cuts=tuple(cut for cut in cuts if cut is not None)))
            else:
                boards.append(board)
        return replace(pair, boards=tuple(boards))

    return does


def forgotten(board: str, kinds: tuple[str, ...] = ()) -> Does:
    """No cut of these kinds in the board, or none at all."""
    return each_cut(board, lambda _, cut: cut if kinds and cut.kind not in kinds else None)


def turned_over(board: str, axis: int, kinds: tuple[str, ...] = ()) -> Does:
    """The cuts measured from the other face, edge or end across a world axis."""
    def change(of: Board, cut: Cut) -> Cut:
        return _mirrored(cut, of.placement.own_axis(axis), of.size) if not kinds or cut.kind in kinds else cut

    return each_cut(board, change)


def beside(board: str, axis: int, sign: int, kinds: tuple[str, ...] = ()) -> Does:
    """Each cut on the other side of its line: shifted by its own width along a world axis, as far as there is wood."""
    def change(of: Board, cut: Cut) -> Cut | None:
        if not isinstance(cut, BoxCut) or (kinds and cut.kind not in kinds):
            return cut
        own = of.placement.own_axis(axis)
        step = (cut.high[own] - cut.low[own]) * sign * directions(of.placement.axes)[own][1]
        low, high = list(cut.low), list(cut.high)
        low[own], high[own] = thickest([low[own] + step, 0]), narrowest([high[own] + step, of.size[own]])
        return replace(cut, low=tuple(low), high=tuple(high)) if low[own] < high[own] else None

    return each_cut(board, change)


def _mirrored(cut: Cut, own: int, size: tuple[int, int, int]) -> Cut:
    whole = size[own]
    if isinstance(cut, BoxCut):
        low, high = list(cut.low), list(cut.high)
        low[own], high[own] = whole - cut.high[own], whole - cut.low[own]
        return replace(cut, low=tuple(low), high=tuple(high))
    if isinstance(cut, Hole):
        centre = list(cut.centre)
        centre[own] = whole - centre[own]
        return replace(cut, centre=tuple(centre))
    along = "uvw".index(cut.along)
    if own == along:
        return replace(cut, start=whole - cut.end, end=whole - cut.start)
    side = (own - along - 1) % 3
    outline = tuple((whole - p, q) if side == 0 else (p, whole - q) for p, q in cut.outline)
    return replace(cut, outline=outline)
