"""Pocket screws that no driver reaches: another board stands before the pockets when they would be driven."""

from collections.abc import Callable, Iterable

from shoplib.checks.driver_way import Driven, driven
from shoplib.checks.parting import Captured, Entry, put_together
from shoplib.model.board import CASE, Board, PrismCut
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list

LOOKS = {(1, 0): "front", (1, 1): "rear", (2, 0): "lower", (2, 1): "upper", (0, 0): "left", (0, 1): "right"}
_APART = ("plinth", "loose shelf")
"""Boards that are no part of the case while it goes together."""


def boards_of_case(cabinet: Cabinet) -> list[Board]:
    """The boards that are put together before anything is measured."""
    return [b for b in cabinet.groups.get("case", ()) if b.stage == CASE and b.role not in _APART]


def pocket_face(board: Board) -> str:
    """The face that the pockets of a board open in: "front", "rear", "lower", "upper", "left" or "right"; else "".

    >>> from shoplib.model.placement import Placement
    >>> pocket_face(Board("plain", "case", 1, "s", 90, 30, 2, Placement((0, 0, 0), ("+x", "+y", "+z"))))
    ''
    """
    thin = directions(board.placement.axes)[2][0]
    boxes = [board.placement.to_world(cut.box) for cut in board.cuts
             if isinstance(cut, PrismCut) and cut.kind == "pocket"]
    return LOOKS[thin, int(boxes[0].high[thin] == board.box.high[thin])] if boxes else ""


def find_pockets_out_of_reach(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One stop for each board of the case whose pockets no bit reaches when they are driven, because another board
    stands before them by then, and one warning for each whose pockets leave no room for a chuck.

    The order is that in which the case goes together, which keeps that room free where the joints let it; screws are
    driven as soon as both their boards stand.
    """
    screws = driven(cabinet)
    if not screws:
        return ()
    try:
        entries = put_together(boards_of_case(cabinet), cabinet.joints, screws)
    except Captured:
        return ()  # a case that does not go together is told of by what keeps its boards apart
    stopped = _shut(screws, entries, cabinet, Driven.bit_meets)
    tight = _shut(screws, entries, cabinet, Driven.chuck_meets)
    return (
        *(_out_of_reach(cabinet.by_name[name], tuple(others)) for name, others in stopped.items()),
        *(_tight(cabinet.by_name[name], tuple(others)) for name, others in tight.items() if name not in stopped),
    )


def _shut(
    screws: Iterable[Driven], entries: tuple[Entry, ...], cabinet: Cabinet, meets: Callable[[Driven, Board], bool]
) -> dict[str, dict[str, None]]:
    """For each board with pockets, those that stand too near when its screws are driven."""
    found: dict[str, dict[str, None]] = {}
    for each in screws:
        entry = next((e for e in entries if e.board in each.pair and each.pair <= {e.board, *e.onto}), None)
        for name in entry.onto if entry else ():
            if meets(each, cabinet.by_name[name]):
                found.setdefault(each.enters, {})[name] = None
    return found


def closes(entry: Entry, screws: Iterable[Driven], cabinet: Cabinet) -> tuple[str, ...]:
    """The boards whose pockets, already driven then, a board that goes in closes to bit or chuck.

    >>> closes(Entry("top"), (), Cabinet("no boards", (), {}))
    ()
    """
    board = cabinet.by_name.get(entry.board)
    return tuple(dict.fromkeys(
        each.enters for each in screws
        if each.pair <= set(entry.onto) and (each.bit_meets(board) or each.chuck_meets(board))
    ))


def _out_of_reach(board: Board, others: tuple[str, ...]) -> Finding:
    text = (
        f"The pockets in the {pocket_face(board)} face of {board.name} cannot be reached: {and_list(others)} "
        f"stand{'s' if len(others) == 1 else ''} before them when the screws are driven. Choose another joint there."
    )
    return Finding("driver room", "stop", (board.name, *others), text)


def _tight(board: Board, others: tuple[str, ...]) -> Finding:
    text = (
        f"The pockets in the {pocket_face(board)} face of {board.name} leave no room for a chuck: {and_list(others)} "
        f"stand{'s' if len(others) == 1 else ''} too near when the screws are driven, whatever the order. Take a "
        "right-angle driver, or choose another joint there."
    )
    return Finding("driver room", "warn", (board.name, *others), text)
