"""Joint cuts that no fence or stop of `dado_stops` makes: notches, holes for screws, pockets, and finger sockets.

Those that are alike are cut together: two notches that take one toe board must match as two dadoes of a shelf must.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.lists.cut_words import cut_told
from shoplib.lists.sides import datum_side, outline_of, side_name
from shoplib.lists.slanting import slant_of
from shoplib.lists.writing import Writing
from shoplib.measure import share
from shoplib.model.board import Board, BoxCut, Hole, PrismCut
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, boards_in_short

NOTCH, SCREW_HOLE, POCKET, SOCKET = "notch", "screw hole", "pocket", "finger sockets"
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
    """All notches, through holes for screws, pockets and sockets, by stage, then by kind.

    >>> alike_cuts(Cabinet("plain boards", (), {}))
    ()
    """
    found = [*_laid_out(cabinet), *_pockets(cabinet), *_sockets(cabinet)]
    return tuple(sorted(found, key=lambda cut: (cut.stage, (NOTCH, SCREW_HOLE, POCKET, SOCKET).index(cut.kind))))


def alike_cut_words(cut: AlikeCuts) -> str:
    """One set of equal cuts in a line.

    >>> from shoplib.model.placement import Placement
    >>> side = Board("left side", "case", 1, "s", 30, 9, 1, Placement((0, 0, 0), ("+z", "+y", "-x")))
    >>> alike_cut_words(AlikeCuts(1, "notch", (side,), 1, "4 in along the length x 3 in across", "at the bottom end"))
    'notch, 4 in along the length x 3 in across, at the bottom end: left side'
    """
    count = f"{cut.count} x " if cut.count > 1 and cut.kind != SOCKET else ""
    of = "" if cut.kind == POCKET else f": {boards_in_short(cut.boards)}"  # their place names each board
    return f"{count}{cut.kind}, {cut.size}, {cut.place}{of}"


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


def _pockets(cabinet: Cabinet) -> Iterator[AlikeCuts]:
    """Pockets that the guide and the collar of the bit are set for once: in boards of one sheet, with one web.

    The stepped bit bores the hole before a pocket in the same stroke, so a pocket counts with its hole as one.
    """
    alike: dict[tuple[int, str, int, int, int], list[tuple[Board, PrismCut]]] = {}
    holes: dict[tuple[str, str], int] = {}
    for board in cabinet.boards:
        for cut in board.cuts:
            if isinstance(cut, PrismCut) and cut.kind == "shank hole":
                holes[board.name, cut.for_board] = cut.end - cut.start
            if isinstance(cut, PrismCut) and cut.kind == "pocket":
                slant = slant_of(cut, board)
                set_by = board.stage, board.sheet, cut.end - cut.start, slant.angle, slant.web
                alike.setdefault(set_by, []).append((board, cut))
    write = Writing(cabinet.style).setting
    for (stage, _, wide, angle, web), cuts in alike.items():
        board, cut = cuts[0]
        hole = write(holes[board.name, cut.for_board])
        yield AlikeCuts(
            stage, POCKET, _once([board for board, _ in cuts]), len(cuts),
            f"{write(wide)} across, the hole before it {hole}, {angle} degrees, web {write(web)}",
            _pocket_places(cuts, cabinet),
            f"set the collar in an offcut of the same sheet: the pocket ends {write(web)} before the end of the board, "
            "and no screw comes through",
        )


def _pocket_places(cuts: list[tuple[Board, PrismCut]], cabinet: Cabinet) -> str:
    """In which face of which boards, how far their middles are from an edge, and at which ends."""
    write = Writing(cabinet.style).length
    ends: dict[tuple[str, str], dict[str, list[int]]] = {}
    by_name = {board.name: board for board, _ in cuts}
    for board, cut in cuts:
        slant = slant_of(cut, board)
        middle, side = share(cut.start + cut.end, 2, 1)[0], datum_side(board, 1)
        face = side_name(board, 2, slant.face, outline_of(board, cabinet))
        at = ends.setdefault((board.name, face), {}).setdefault(side_name(board, 0, slant.end), [])
        at.append(middle if side < 0 else board.width - middle)
    rows: dict[tuple[str, str, str], list[Board]] = {}
    for (name, face), by_end in ends.items():
        edge = side_name(by_name[name], 1, datum_side(by_name[name], 1))
        together: dict[str, list[str]] = {}
        for end, places in by_end.items():
            together.setdefault(and_list([write(at) for at in sorted(places)]), []).append(end)
        for places, some in together.items():
            where = "at either end" if len(some) > 1 else f"at the {some[0]}"
            rows.setdefault((face, f"{places} from the {edge}", where), []).append(by_name[name])
    return "; ".join(
        f"{boards_in_short(boards)}: in the {face}, middles {places}, {where}"
        for (face, places, where), boards in rows.items()
    )


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
