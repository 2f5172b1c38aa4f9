"""Fingers of two boards: flush with each other's outer faces, side by side, with no more play than the fit."""

from itertools import pairwise

from shoplib.checks.geometry import common_boxes, direction, far
from shoplib.measure import Style, write_brief
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.placement import directions
from shoplib.model.solved import Finding, Joint
from shoplib.words.amounts import longer, shorter, true_amount

Stretch = tuple[int, int, str]
"""From where to where along the corner, and the name of the board whose finger lies there."""


def finger_faults(joint: Joint, enters: Board, receives: Board, style: Style) -> list[Finding]:
    """"stop" where an end is not flush, or a socket is missing; "warn" where fingers stand farther apart than the fit.

    Where fingers want the same wood, the overlap check tells. The amount is by how much.
    """
    names = (enters.name, receives.name)
    axis, sign = direction(joint.axis)
    thin = directions(enters.placement.axes)[2][0]
    corner = enters.box.common(receives.box)
    off = sign * (far(enters.box, axis, sign) - far(receives.box, axis, sign))
    if off:
        size = true_amount(abs(off), style)
        how = "too long" if off > 0 else "too short"
        mend = f"Make it {shorter(enters, axis) if off > 0 else longer(enters, axis)} by {size}."
        text = f"The fingers of {enters.name} are {size} {how} to be flush with {receives.name}. {mend}"
        return [Finding("seating", "stop", names, text, abs(off))]
    if corner is None:
        text = f"The fingers of {enters.name} do not reach those of {receives.name}. Bring the boards together."
        return [Finding("seating", "stop", names, text)]
    found = [_too_deep(*pair, axis, thin, corner, style) for pair in ((enters, receives), (receives, enters))]
    return [*(fault for fault in found if fault), *_loose(joint, enters, receives, corner, 3 - axis - thin, style)]


def _too_deep(
    board: Board, mate: Board, axis: int, thin: int, corner: Box, style: Style
) -> Finding | None:
    """Sockets that run on past the corner: the mate's finger would not stand on their floor."""
    rooms = [
        board.placement.to_world(cut.box) for cut in board.cuts if cut.kind == "socket" and cut.for_board == mate.name
    ]
    if not rooms:
        text = f"{board.name} has no sockets for the fingers of {mate.name}. Cut them, or choose another joint."
        return Finding("seating", "stop", (board.name, mate.name), text)
    over = max(
        max(corner.low[a] - room.low[a], room.high[a] - corner.high[a]) for room in rooms for a in (axis, thin)
    )
    if over <= 0:
        return None
    size = true_amount(over, style)
    text = (
        f"A socket in {board.name} for {mate.name} is {size} too deep: the finger does not stand on its floor. Cut it "
        f"shallower by {size}."
    )
    return Finding("seating", "warn", (board.name, mate.name), text, over)


def _loose(joint: Joint, enters: Board, receives: Board, corner: Box, run: int, style: Style) -> list[Finding]:
    """Open space between two fingers, or beside the last, that is more than the fit."""
    places = sorted(s for board in (enters, receives) for s in stretches(board, corner, run))
    ends = [(corner.low[run], corner.low[run], ""), *places, (corner.high[run], corner.high[run], "")]
    play = max((later[0] - earlier[1] for earlier, later in pairwise(ends)), default=0) - joint.fit
    if play <= 0:
        return []
    size = true_amount(play, style)
    meant = write_brief(joint.fit, style, decimal=True)
    text = (
        f"The fingers of {enters.name} and {receives.name} leave {size} more play beside each other than the {meant} "
        f"meant. Cut the sockets narrower by {size}."
    )
    return [Finding("seating", "warn", (enters.name, receives.name), text, play)]


def stretches(board: Board, corner: Box, run: int) -> list[Stretch]:
    """Where the board has wood along the corner, stretches that touch drawn together."""
    spans = sorted((box.low[run], box.high[run]) for box in common_boxes(board.pieces, [corner]))
    merged: list[list[int]] = []
    for low, high in spans:
        if merged and low <= merged[-1][1]:
            merged[-1][1] = max(merged[-1][1], high)
        else:
            merged.append([low, high])
    return [(low, high, board.name) for low, high in merged]
