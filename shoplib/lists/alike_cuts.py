"""Joint cuts that no fence or stop of `dado_stops` makes: notches, holes for screws, and the sockets of fingers.

Those that are alike are cut together: two notches that take one toe board must match as two dadoes of a shelf must.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.lists.cut_words import cut_told
from shoplib.lists.sides import datum_side, side_name
from shoplib.lists.writing import Writing
from shoplib.model.board import Board, BoxCut, Hole
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, boards_in_short

NOTCH, SCREW_HOLE, SOCKET = "notch", "screw hole", "finger sockets"
"""Kinds of such cuts, in the order in which they are made."""


@dataclass(frozen=True, slots=True)
class AlikeCuts:
    """`count` equal cuts in `boards`, of one stage: their `size`, and the `place` that is the same in each board.

    `mind` says what asks for care, empty where nothing does.
    """

    stage: int
    kind: str
    boards: tuple[Board, ...]
    count: int
    size: str
    place: str
    mind: str = ""


def alike_cuts(cabinet: Cabinet) -> tuple[AlikeCuts, ...]:
    """All notches, through holes for screws, and sockets, by stage, then by kind.

    >>> alike_cuts(Cabinet("plain boards", (), {}))
    ()
    """
    found = [*_laid_out(cabinet), *_sockets(cabinet)]
    return tuple(sorted(found, key=lambda cut: (cut.stage, (NOTCH, SCREW_HOLE, SOCKET).index(cut.kind))))


def alike_cut_words(cut: AlikeCuts) -> str:
    """One set of equal cuts in a line.

    >>> from shoplib.model.placement import Placement
    >>> side = Board("left side", "case", 1, "s", 30, 9, 1, Placement((0, 0, 0), ("+z", "+y", "-x")))
    >>> alike_cut_words(AlikeCuts(1, "notch", (side,), 1, "4 in along the length x 3 in across", "at the bottom end"))
    'notch, 4 in along the length x 3 in across, at the bottom end: left side'
    """
    count = f"{cut.count} x " if cut.count > 1 and cut.kind != SOCKET else ""
    return f"{count}{cut.kind}, {cut.size}, {cut.place}: {boards_in_short(cut.boards)}"


def _laid_out(cabinet: Cabinet) -> Iterator[AlikeCuts]:
    """Notches and holes by the words of the cut list, which are the same for places that must match."""
    writing = Writing(cabinet.style)
    alike: dict[tuple[int, str, str, str], list[Board]] = {}
    for board in cabinet.boards:
        for cut in board.cuts:
            if kind := _kind(cut, board):
                _, size, place = cut_told(board, cabinet, writing, cut)
                alike.setdefault((board.stage, kind, size, place), []).append(board)
    for (stage, kind, size, place), boards in alike.items():
        yield AlikeCuts(stage, kind, _once(boards), len(boards), size, place)


def _kind(cut: object, board: Board) -> str:
    if isinstance(cut, BoxCut) and cut.kind == "notch":
        return NOTCH
    if isinstance(cut, Hole) and cut.kind == "screw" and cut.depth >= board.size["uvw".index(cut.along)]:
        return SCREW_HOLE
    return ""


def _once(boards: list[Board]) -> tuple[Board, ...]:
    return tuple({board.name: board for board in boards}.values())


def _sockets(cabinet: Cabinet) -> Iterator[AlikeCuts]:
    """Sockets of one width and depth: all boxes at one setting of the cutter, whatever their height."""
    alike: dict[tuple[int, int, int], list[tuple[Board, BoxCut]]] = {}
    for board in cabinet.boards:
        mine = [cut for cut in board.cuts if isinstance(cut, BoxCut) and cut.kind == "socket"]
        # The last socket may run out of the edge, and is narrower: the widest is as wide as the cutter.
        widest = max((cut.box.size[1] for cut in mine), default=0)
        for cut in mine:
            alike.setdefault((board.stage, widest, cut.box.size[0]), []).append((board, cut))
    write = Writing(cabinet.style).measured
    for (stage, wide, deep), cuts in alike.items():
        boards = _once([board for board, _ in cuts])
        first = _once([board for board, cut in cuts if begins_with_socket(board, cut)])
        others = [board for board in boards if board not in first]
        edge = side_name(boards[0], 1, datum_side(boards[0], 1))
        begins = and_list([
            f"{boards_in_short(some)} begin{'' if len(some) > 1 else 's'} with a {what}"
            for some, what in ((first, "socket"), (others, "finger")) if some
        ])
        yield AlikeCuts(
            stage, SOCKET, boards, len(cuts), f"{write(wide)} wide, {write(deep)} deep",
            f"in the finger jig, from the {edge}: {begins}",
            "a test corner in scrap first; each board on end is clamped to the jig, a fresh backer behind",
        )


def begins_with_socket(board: Board, cut: BoxCut) -> bool:
    """Whether a socket is the first of its board: it runs out of the edge that all places are measured from."""
    return cut.low[1] <= 0 if datum_side(board, 1) < 0 else cut.high[1] >= board.size[1]
