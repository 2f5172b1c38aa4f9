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
