"""Which joint cuts stand a board on its end or edge, by the set-ups of `data/setups/`."""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.lists.cut_words import channel_ways
from shoplib.lists.dado_stops import KINDS
from shoplib.model.board import Board, BoxCut
from shoplib.model.solved import Cabinet
from shoplib.tables.setups import Setup, setups

ON_END = "board on edge or end"
"""What a set-up of `data/setups/` names among its cuts where a board stands so."""

MIND = "board on its end: a tall fence and a carrier, never held by hand alone"
"""Said in the rows of such cuts; the cautions themselves stand before the rows."""

_AT_A_FENCE = "table saw"

_Cut = tuple[Board, BoxCut]


@dataclass(frozen=True, slots=True)
class OnEnd:
    """The `cuts` of one joint that stand their boards on end, and the set-ups (`ways`) in which they do."""

    joint: str
    ways: tuple[Setup, ...]
    cuts: tuple[_Cut, ...]

    @property
    def boards(self) -> tuple[Board, ...]:
        """Each board once."""
        return tuple({board.name: board for board, _ in self.cuts}.values())

    @property
    def always(self) -> bool:
        """Whether no way at the table saw has these boards flat."""
        return all(ON_END in way.cuts for way in setups(self.joint) if _AT_A_FENCE in way.way.tools)


def stood_on_end(boards: Iterable[Board], cabinet: Cabinet) -> tuple[OnEnd, ...]:
    """The cuts in these boards that stand them on end in some way, joint by joint; empty where none does.

    Of the cuts of a joint in one board it is those that go into its end or edge; where there are none, those along it.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> [(one.joint, one.always, one.boards[0].role) for one in stood_on_end(cabinet.boards, cabinet)]
    [('rabbet', False, 'side'), ('tongue', True, 'box front')]
    """
    found: dict[str, list[_Cut]] = {}
    for board in boards:
        mine: dict[str, list[BoxCut]] = {}
        for cut in board.cuts:
            if isinstance(cut, BoxCut) and (joint := _joint_of(board, cut, cabinet)):
                mine.setdefault(joint, []).append(cut)
        for joint, cuts in mine.items():
            into = [cut for cut in cuts if channel_ways(cut, board)[0] != 2]
            along = [cut for cut in cuts if any(_runs_out(cut, board, own) for own in channel_ways(cut, board)[:2])]
            found.setdefault(joint, []).extend((board, cut) for cut in into or along)
    all_on_end = ((joint, tuple(way for way in setups(joint) if ON_END in way.cuts), cuts)
                  for joint, cuts in found.items() if cuts)
    return tuple(OnEnd(joint, ways, tuple(cuts)) for joint, ways, cuts in all_on_end if ways)


def always_on_end(cuts: Iterable[_Cut], cabinet: Cabinet) -> bool:
    """Whether one of these cuts stands its board on end at every table saw."""
    cuts = tuple(cuts)
    boards = {board.name: board for board, _ in cuts}.values()
    return any(cut in one.cuts for one in stood_on_end(boards, cabinet) if one.always for cut in cuts)


def ways_told(one: OnEnd) -> str:
    """The ways in which the boards stand on end, as words.

    >>> ways_told(OnEnd("finger", setups("finger")[:2], ()))
    'stacked dado set or single blade in passes'
    """
    *some, last = [way.way.name for way in one.ways]
    return f"{', '.join(some)} or {last}" if some else last


def _joint_of(board: Board, cut: BoxCut, cabinet: Cabinet) -> str:
    """The joint that a cut is part of; a dado at an edge is a rabbet, whatever the project calls it."""
    if cut.kind not in (*KINDS, "socket") or channel_ways(cut, board) is None:
        return ""
    pair = {board.name, cut.for_board}
    kinds = {joint.kind for joint in cabinet.joints if {joint.enters, joint.receives} == pair}
    return next(iter(sorted(kinds - {*KINDS, "butt"})), "") or cut.kind


def _runs_out(cut: BoxCut, board: Board, own: int) -> bool:
    """Whether a cut is open at an end (0) or an edge (1) of its board."""
    return own != 2 and (cut.low[own] <= 0 or cut.high[own] >= board.size[own])
