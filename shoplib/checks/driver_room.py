"""Pocket screws that no driver reaches: another board stands before the pockets when they would be driven."""

from shoplib.checks.geometry import direction
from shoplib.checks.parting import Captured, put_together
from shoplib.measure import INCH, MM
from shoplib.model.board import CASE, Board, PrismCut
from shoplib.model.box import Box
from shoplib.model.placement import directions
from shoplib.model.pocketed import POCKET
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list

ROOM = {"in": (6 * INCH, 3 * INCH // 2), "mm": (150 * MM, 40 * MM)}
"""What a long bit needs before the pocket: so far from its mouth along the board, and so far off the face, where it
leaves a pocket that leans 15 degrees (6 in and 150 mm bits are from memory; common practice, no source)."""
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
    """One stop for each board of the case whose pockets face a board that stands by the time they are driven.

    The order is that in which the case goes together; screws are driven as soon as both their boards stand.
    """
    fitted = {(h.on, screw.into) for h in cabinet.hardware if h.what == POCKET and h.group == "case"
              for screw in h.screws}
    if not fitted:
        return ()
    try:
        entries = put_together(boards_of_case(cabinet), cabinet.joints)
    except Captured:
        return ()  # a case that does not go together is told of by what keeps its boards apart
    before: dict[str, dict[str, None]] = {}
    for joint in cabinet.joints:
        pair = {joint.enters, joint.receives}
        entry = next((e for e in entries if e.board in pair and pair <= {e.board, *e.onto}), None)
        if joint.kind != POCKET or entry is None or (joint.enters, joint.receives) not in fitted:
            continue
        places = _driver(cabinet.by_name[joint.enters], joint.receives, joint.axis, cabinet.style.unit)
        for name in entry.onto:
            if name not in pair and any(place.overlaps(piece) for place in places
                                        for piece in cabinet.by_name[name].pieces):
                before.setdefault(joint.enters, {})[name] = None
    return tuple(_finding(cabinet.by_name[name], tuple(others)) for name, others in before.items())


def _driver(board: Board, into: str, axis: str, unit: str) -> list[Box]:
    """Where bit and driver lie before each pocket for one board (world)."""
    along, sign = direction(axis)
    thin = directions(board.placement.axes)[2][0]
    far, off = ROOM[unit]
    found = []
    for cut in board.cuts:
        if isinstance(cut, PrismCut) and cut.kind == "pocket" and cut.for_board == into:
            box = board.placement.to_world(cut.box)
            low, high = list(box.low), list(box.high)
            if sign > 0:
                low[along] -= far
            else:
                high[along] += far
            if box.high[thin] == board.box.high[thin]:
                low[thin], high[thin] = board.box.high[thin], board.box.high[thin] + off
            else:
                low[thin], high[thin] = board.box.low[thin] - off, board.box.low[thin]
            found.append(Box(tuple(low), tuple(high)))
    return found


def _finding(board: Board, others: tuple[str, ...]) -> Finding:
    text = (
        f"The pockets in the {pocket_face(board)} face of {board.name} cannot be reached: {and_list(others)} "
        f"stand{'s' if len(others) == 1 else ''} before them when the screws are driven. Choose another joint there."
    )
    return Finding("driver room", "stop", (board.name, *others), text)
