"""Boards that lie loose between two others: how much they have to spare, and how they give way before they clash."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from shoplib.checks.geometry import direction, far, near
from shoplib.measure import narrowest
from shoplib.model.placement import Placement
from shoplib.model.solved import Cabinet, Joint


@dataclass(frozen=True, slots=True)
class Loose:
    """A board let in at both ends along an axis, with an end gap at each.

    `low` and `high` are what is free before its two ends, in ticks, less than nothing where it goes too far in;
    `planned` is what is meant to be free at both together.
    """

    board: str
    axis: int
    low: int
    high: int
    planned: int
    joint: str

    @property
    def spare(self) -> int:
        """What is free at both ends together."""
        return self.low + self.high


def loose_boards(cabinet: Cabinet) -> Iterator[Loose]:
    """Each board that lies loose along an axis, such as a box bottom in its grooves."""
    ends: dict[tuple[str, int, int], Joint] = {}
    for joint in cabinet.joints:
        axis, sign = direction(joint.axis)
        if joint.end_gap:
            ends.setdefault((joint.enters, axis, sign), joint)
    for (board, axis, sign), joint in ends.items():
        other = ends.get((board, axis, -sign))
        if sign > 0 and other is not None:
            planned = joint.end_gap + other.end_gap
            yield Loose(board, axis, _free(cabinet, other), _free(cabinet, joint), planned, joint.kind)


def gives_way(cabinet: Cabinet) -> Cabinet:
    """The cabinet with each loose board pushed over by what it would go too far in, as far as there is room.

    Boards are put together from sizes by the end that each is set out from. What is loose does not stay there: it
    clashes only where the slack of both its ends is used up.
    """
    boards = dict(cabinet.by_name)
    for loose in loose_boards(cabinet):
        sign, over, room = (-1, -loose.high, loose.low) if loose.high < 0 else (1, -loose.low, loose.high)
        if over > 0 and room > 0:
            board = boards[loose.board]
            origin = list(board.placement.origin)
            origin[loose.axis] += sign * narrowest([over, room])
            boards[board.name] = replace(board, placement=Placement(tuple(origin), board.placement.axes))
    return replace(cabinet, boards=tuple(boards.values()))


def _free(cabinet: Cabinet, joint: Joint) -> int:
    """What is free between the end of the entering board and the floor of its cut."""
    axis, sign = direction(joint.axis)
    end, face = cabinet.by_name[joint.enters].box, cabinet.by_name[joint.receives].box
    return joint.depth - sign * (far(end, axis, sign) - near(face, axis, sign))
