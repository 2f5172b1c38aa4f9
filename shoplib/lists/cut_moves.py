"""What cuts that were made otherwise than planned do to the boards that go into them."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Self

from shoplib.model.board import Board, BoxCut, Cut
from shoplib.model.box import Box, Point
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet, Joint

Pair = tuple[str, str]
"""The receiving board and the one that goes into it."""


@dataclass(frozen=True)
class CutMoves:
    """How far cuts take boards along (`carried`, world), and hold them off along their joint (`pushed`).

    Negative where a board goes further in than planned. `axes` are the world axes on which anything moves,
    `changed` the pairs whose cut is another one, each with how much shallower it is.
    """

    carried: Mapping[Pair, Point]
    pushed: Mapping[Pair, int]
    axes: frozenset[int]
    changed: Mapping[Pair, int]

    @classmethod
    def of(cls, cabinet: Cabinet, cuts: Mapping[str, tuple[Cut, ...]]) -> Self:
        """Read off the planned cuts and those that stand in their place."""
        carried: dict[Pair, Point] = {}
        pushed: dict[Pair, int] = {}
        changed: dict[Pair, int] = {}
        axes = set()
        for joint in cabinet.joints:
            if joint.receives not in cuts:
                continue
            receives, enters = cabinet.by_name[joint.receives], cabinet.by_name[joint.enters]
            rooms = _rooms(joint, receives, cuts[joint.receives])
            if rooms is None or rooms[0] == rooms[1]:
                continue
            pair = (joint.receives, joint.enters)
            along = "xyz".index(joint.axis[1])
            across = directions(enters.placement.axes)[2][0]
            if across != along:
                carried[pair] = _carried(*rooms, receives, across)
            changed[pair] = _shallower(*rooms, joint, along)
            pushed[pair] = max(changed[pair] - joint.end_gap, 0) if changed[pair] > 0 else changed[pair]
            axes |= {along, across}
        for pair, push in pushed.items():
            if push < 0:
                pushed[pair] = min(0, _tightest(cabinet, pair, pushed))
        return cls(carried, pushed, frozenset(axes), changed)


def _rooms(joint: Joint, receives: Board, cuts: tuple[Cut, ...]) -> tuple[Box, Box] | None:
    """The cut for the entering board as planned and as made, in the cabinet."""
    for planned, made in zip(receives.cuts, cuts, strict=False):
        if isinstance(planned, BoxCut) and planned.for_board == joint.enters:
            return receives.placement.to_world(planned.box), receives.placement.to_world(made.box)
    return None


def _carried(planned: Box, made: Box, receives: Board, axis: int) -> Point:
    """How far the walls take the board along; in a wider cut it only has play.

    In a narrower one it lies against the low wall, or against the high one where the cut is open below.
    """
    shift = [0, 0, 0]
    low, high = made.low[axis] - planned.low[axis], made.high[axis] - planned.high[axis]
    if high >= low:
        shift[axis] = low if low > 0 else min(high, 0)
    else:
        shift[axis] = high if planned.low[axis] <= receives.box.low[axis] else low
    return tuple(shift)


def _shallower(planned: Box, made: Box, joint: Joint, axis: int) -> int:
    """How far the floor of the cut stands out."""
    return planned.high[axis] - made.high[axis] if joint.axis[0] == "+" else made.low[axis] - planned.low[axis]


def _tightest(cabinet: Cabinet, pair: Pair, pushed: Mapping[Pair, int]) -> int:
    """What the shallowest cut on the same side of the receiving board allows."""
    axis = next(j.axis for j in cabinet.joints if (j.receives, j.enters) == pair)
    beside = [j for j in cabinet.joints if j.receives == pair[0] and j.axis == axis]
    return max(pushed.get((j.receives, j.enters), 0) for j in beside)
