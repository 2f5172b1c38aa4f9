"""What the choice of a joint leaves: enough of it to hold, and room for the board to go in."""

from shoplib.checks.geometry import direction
from shoplib.checks.seat import seat_of
from shoplib.measure import INCH, MM, write_brief
from shoplib.measure.traced import limit
from shoplib.model.board import Board, BoxCut
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet, Finding, Joint
from shoplib.words.naming import and_list, in_short, plural

_TWO_WALLS = {"dado": "dado", "groove": "groove", "tongue": "dado", "drawer lock": "dado", "finger": "socket"}
"""What has a wall on either side of what enters, and what that cut is called."""


def find_weak_joints(cabinet: Cabinet) -> tuple[Finding, ...]:
    """Joints that a stop leaves little of: "warn" under half of the length that could be held, "stop" under a quarter.

    The amount is the length that is held. Where the limits lie is common practice, no source.
    """
    stopped = {board.name for board in cabinet.boards for cut in board.cuts if _is_stop(cut)}
    places: dict[tuple, list[Joint]] = {}
    for joint in cabinet.joints:
        enters, receives = cabinet.by_name.get(joint.enters), cabinet.by_name.get(joint.receives)
        if not joint.depth or joint.enters not in stopped or enters is None or receives is None:
            continue
        held, whole = _held(joint, enters, receives)
        if 0 < 2 * held < whole:
            level = "stop" if 4 * held < whole else "warn"
            places.setdefault((level, held, whole, joint.kind), []).append(joint)
    return tuple(_weak(cabinet, *place, joints) for place, joints in places.items())


def _is_stop(cut: object) -> bool:
    """The corner taken out of a board so that it passes the end of a stopped cut."""
    return isinstance(cut, BoxCut) and cut.kind == "notch" and cut.for_board != ""


def _held(joint: Joint, enters: Board, receives: Board) -> tuple[int, int]:
    """How long the board stands in its cut, and how long it could: what both boards have in common that way."""
    run = 3 - direction(joint.axis)[0] - directions(enters.placement.axes)[2][0]
    inside = seat_of(joint, enters, receives).entering
    common = enters.box.common(receives.box)
    if inside is None or common is None or run not in (0, 1, 2):
        return (0, 0)
    return (inside.size[run], common.size[run])


def _weak(cabinet: Cabinet, level: str, held: int, whole: int, kind: str, joints: list[Joint]) -> Finding:
    style = cabinet.style
    boards = tuple(dict.fromkeys(joint.enters for joint in joints))
    receivers = dict.fromkeys(joint.receives for joint in joints)
    left = "almost nothing of the joint is left" if level == "stop" else "less than half of the joint is left"
    text = (
        f"{and_list(in_short(boards))}: only {write_brief(held, style)} of {write_brief(whole, style)} stands in the "
        f"{kind} of {and_list(in_short(receivers))}; {left}. Stop the cut nearer to the front edge."
    )
    return Finding("joints", level, (*boards, *receivers), text, held)


def usual_fit(unit: str) -> int:
    """0.004 in, 0.1 mm: what a dado is commonly cut wider than the thickest reading. Common practice, no source.

    >>> usual_fit("mm") * 10 == MM
    True
    """
    return INCH // 250 if unit == "in" else MM // 10


def find_joints_without_clearance(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One "note" for each kind of cut with two walls that is planned exactly as wide as what enters it.

    A rabbet has one wall and needs no clearance.
    """
    tight: dict[str, list[Joint]] = {}
    for joint in cabinet.joints:
        if joint.depth and not joint.fit and joint.kind in _TWO_WALLS:
            tight.setdefault(_TWO_WALLS[joint.kind], []).append(joint)
    found = []
    for kind, joints in tight.items():
        boards = tuple(dict.fromkeys(joint.enters for joint in joints))
        usual = write_brief(limit(usual_fit(cabinet.style.unit), "the usual fit"), cabinet.style, decimal=True)
        text = (
            f"The {plural(kind)} for {and_list(in_short(boards))} are planned exactly as wide as what enters "
            f"(fit 0): it must be forced in, all the more once glue swells it. A fit of {usual} over the thickest "
            "reading is usual; try it in a piece of the same sheet first."
        )
        found.append(Finding("joints", "note", boards, text))
    return tuple(found)


def tell_to_square_stopped_cuts(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One "note" for all stopped cuts: the board is notched square to the stop, and a router leaves a round end."""
    cuts = {
        (cut.for_board, board.name): None
        for board in cabinet.boards
        for cut in board.cuts
        if _is_stop(cut) and cut.for_board in cabinet.by_name
    }
    if not cuts:
        return ()
    receivers = tuple(dict.fromkeys(receives for receives, _ in cuts))
    entering = tuple(dict.fromkeys(enters for _, enters in cuts))
    text = (
        f"The stopped cuts in {and_list(in_short(receivers))} end square in this plan, as the notches of "
        f"{and_list(in_short(entering))} do. A router leaves their ends round: square them with a chisel before "
        "the board goes in."
    )
    return (Finding("joints", "note", (*receivers, *entering), text),)
