"""Fingers on two blanks: both as long as the mate is thick, so that their ends are flush with its outer face."""

from shoplib.measure import Style, narrowest, thickest, write_brief
from shoplib.model.blank import Blank
from shoplib.model.box import Box
from shoplib.model.finger_layout import fingers, usual_finger, why_not
from shoplib.model.joinery import Fitting, axis_of, refuse


def not_at_the_end(enters: Blank, receives: Blank, style: Style) -> tuple[str, int] | None:
    """Why two boards cannot have fingers, in a sentence, and how far the one lies from the other's end; else None."""
    thin = enters.thin_axis
    off = [abs(enters.low[thin] - receives.low[thin]), abs(receives.high[thin] - enters.high[thin])]
    nearer = narrowest(off)
    if not nearer:
        return None
    return (
        f"fingers stand at the end of a board, and the {enters.name} lies {write_brief(nearer, style)} from the end of "
        f"the {receives.name}; choose another joint"
    ), nearer


def cut_fingers(fitting: Fitting, enters: Blank, receives: Blank, face: int, style: Style) -> None:
    """Mark the sockets of both boards, over the width that they have in common.

    The entering board has the finger at either edge. Raises ImpossibleProject where the fingers do not close on it.
    """
    joint = fitting.joint
    axis, sign = axis_of(joint.axis)
    thin = enters.thin_axis
    run = 3 - axis - thin
    low = thickest([enters.low[run], receives.low[run]])
    high = narrowest([enters.high[run], receives.high[run]])
    finger = fitting.choice.finger or usual_finger(high - low, enters.sheet.thickness, style)
    refuse(f"{fitting.key}.finger", why_not(high - low, finger, joint.fit, style))
    layout = fingers(high - low, finger, joint.fit)
    zone = list(receives.span(axis))
    zone[0 if sign > 0 else 1] = face
    spans = {axis: tuple(zone), thin: enters.span(thin)}
    for board, other, places in ((enters, receives, layout.sockets), (receives, enters, layout.mate_sockets)):
        for near, far in places:
            room = spans | {run: (low + near, low + far)}
            corners = tuple(room[k][0] for k in range(3)), tuple(room[k][1] for k in range(3))
            board.cuts.append(("socket", Box(*corners), other.name))


def run_out(fitting: Fitting, enters: Blank, receives: Blank) -> None:
    """Take a stopped cut on to the end of the board where only a socket lies before it: there is nothing to stop at.

    At an end where a finger lies before it, the cut stays stopped, for it would come out in that finger.
    """
    axis, _ = axis_of(fitting.joint.axis)
    run = 3 - axis - enters.thin_axis
    sockets = [box for kind, box, _ in receives.cuts if kind == "socket"]
    for number, (kind, box, for_board) in enumerate(receives.cuts):
        if kind == "socket" or for_board != enters.name:
            continue
        low, high = list(box.low), list(box.high)
        for side, end in ((low, receives.low[run]), (high, receives.high[run])):
            rest = _between(box, run, side[run], end)
            if any(not rest.without(socket) for socket in sockets):
                side[run] = end
        receives.cuts[number] = (kind, Box(tuple(low), tuple(high)), for_board)


def _between(box: Box, run: int, one: int, other: int) -> Box:
    """What the box would take if along `run` it went from the one place to the other."""
    low, high = list(box.low), list(box.high)
    low[run], high[run] = narrowest([one, other]), thickest([one, other])
    return Box(tuple(low), tuple(high))
