"""Boards that meet without a cut: which of them the plan gives screws for, and which it leaves to the maker."""

from shoplib.model.board import Board
from shoplib.model.solved import Cabinet, Joint


def butt_joints(cabinet: Cabinet) -> tuple[Joint, ...]:
    """The joints that have no cut, of boards that are there."""
    return tuple(j for j in cabinet.joints if not j.depth and {j.enters, j.receives} <= cabinet.by_name.keys())


def screwed_and_open(cabinet: Cabinet) -> tuple[tuple[Joint, ...], tuple[Joint, ...]]:
    """The butt joints with screws of the plan, and those that are left to the maker.

    A front that is screwed to one board of its drawer or pull-out is held by that; it is not left open at the others.
    """
    screwed = {frozenset((h.on, screw.into)) for h in cabinet.hardware for screw in h.screws}
    butts = butt_joints(cabinet)
    listed = tuple(joint for joint in butts if frozenset((joint.enters, joint.receives)) in screwed)
    held = {joint.enters for joint in listed if cabinet.by_name[joint.enters].role == "front"}
    return listed, tuple(joint for joint in butts if joint not in listed and joint.enters not in held)


def under_back(cabinet: Cabinet) -> tuple[tuple[Board, Board], ...]:
    """Each box bottom that reaches under the back of its box, with that back: it is fixed up into its lower edge."""
    return tuple(
        (bottom, back)
        for parts in cabinet.groups.values()
        for bottom in parts if bottom.role == "box bottom"
        for back in parts if back.role == "box back" and _meets_under(bottom, back)
    )


def _meets_under(bottom: Board, back: Board) -> bool:
    return bottom.box.high[2] <= back.box.low[2] and bottom.box.high[1] > back.box.low[1]
