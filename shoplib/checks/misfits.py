"""Where boards that were cut to other sizes gape or clash when they are put together, measured and placed."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from shoplib.checks.geometry import deepest, direction, far, near, regions
from shoplib.checks.overlap import overlapping
from shoplib.model.board import Board
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet, Gap, Joint

GAP, CLASH, BARE = "gap", "clash", "bare"

SLIDE = "its slide"
"""What stands for the slide in a misfit of a box side."""


@dataclass(frozen=True, slots=True)
class Misfit:
    """One place where `boards` do not meet as planned: how much, along which world axis, and where (world).

    `kind` is "gap" (open where it should be closed, or a planned gap that came out otherwise), "clash" (both want
    the same wood) or "bare" (the first leaves an edge of the second uncovered). Of a joint, the board that enters is
    named first, and `joint` is its kind; of a box side and what it slides on the other is `SLIDE`.
    """

    kind: str
    boards: tuple[str, str]
    axis: int
    amount: int
    box: Box
    joint: str = ""


def misfits(built: Cabinet, planned: Cabinet) -> tuple[Misfit, ...]:
    """Every place where `built`, made of the boards of `planned` in other sizes, gapes or clashes, the worst first."""
    found = [
        *_of_joints(built, planned), *_of_fronts(built, planned), *_without_joint(built, planned),
        *_of_covers(built, planned), *_of_slides(built, planned),
    ]
    return tuple(sorted(found, key=lambda misfit: -misfit.amount))


def outside(built: Cabinet, planned: Cabinet) -> Box:
    """What `built` comes to outside: the box over the boards that make up the planned outside, end by end.

    A back that sticks out past a side that came too near makes the case no wider.
    """
    low, high = list(planned.outside.low), list(planned.outside.high)
    for axis in range(3):
        ends = [(board.box, built.by_name[board.name].box) for board in planned.boards]
        low[axis] = min(now.low[axis] for was, now in ends if was.low[axis] == low[axis])
        high[axis] = max(now.high[axis] for was, now in ends if was.high[axis] == high[axis])
    return Box(tuple(low), tuple(high))


def _of_joints(built: Cabinet, planned: Cabinet) -> Iterable[Misfit]:
    for joint in built.joints:
        axis, sign = direction(joint.axis)
        over = _reach(built, joint) - _reach(planned, joint)
        amount = over - joint.end_gap if over > joint.end_gap else -over if over < 0 else 0
        if not amount:
            continue
        enters, receives = built.by_name[joint.enters], built.by_name[joint.receives]
        end = far(enters.box, axis, sign)
        other = end - sign * amount if over > 0 else end + sign * amount
        box = _across(enters, receives, axis, *sorted((end, other)))
        yield Misfit(CLASH if over > 0 else GAP, (enters.name, receives.name), axis, amount, box, joint.kind)


def _reach(cabinet: Cabinet, joint: Joint) -> int:
    """How far the entering board's end lies past the face of the receiving one; negative: short of it."""
    axis, sign = direction(joint.axis)
    end, face = cabinet.by_name[joint.enters].box, cabinet.by_name[joint.receives].box
    return sign * (far(end, axis, sign) - near(face, axis, sign))


def _across(one: Board, other: Board, axis: int, start: int, end: int) -> Box:
    """From `start` to `end` along the axis, and else the space where the two stand opposite each other."""
    low, high = list(one.box.low), list(one.box.high)
    for side in range(3):
        shared = max(low[side], other.box.low[side]), min(high[side], other.box.high[side])
        if side != axis and shared[0] < shared[1]:
            low[side], high[side] = shared
    low[axis], high[axis] = start, end
    return Box(tuple(low), tuple(high))


def _of_fronts(built: Cabinet, planned: Cabinet) -> Iterable[Misfit]:
    """Gaps beside fronts that came out otherwise, or are gone; less than no gap is a clash, told elsewhere."""
    for gap in planned.gaps:
        if not all(name in planned.by_name for name in gap.between):
            continue
        axis = "xyz".index(gap.along)
        before, now = _between(planned, gap, axis), _between(built, gap, axis)
        off = abs((now[1] - now[0]) - (before[1] - before[0]))
        if off and now[0] <= now[1]:
            one, other = (built.by_name[name] for name in gap.between)
            yield Misfit(GAP, gap.between, axis, off, _across(one, other, axis, *now))


def _between(cabinet: Cabinet, gap: Gap, axis: int) -> tuple[int, int]:
    low, high = sorted((cabinet.by_name[name].box for name in gap.between), key=lambda box: box.low[axis])
    return low.high[axis], high.low[axis]


def _without_joint(built: Cabinet, planned: Cabinet) -> Iterable[Misfit]:
    joined = {frozenset((joint.enters, joint.receives)) for joint in built.joints}
    clashes = [(one, other, shared) for one, other, shared in overlapping(built.boards)
               if frozenset((one.name, other.name)) not in joined]
    already = {frozenset((one.name, other.name)) for one, other, _ in overlapping(planned.boards)} if clashes else set()
    for one, other, shared in clashes:
        if frozenset((one.name, other.name)) not in already:
            amount, axis = deepest(shared)
            yield Misfit(CLASH, (one.name, other.name), axis, amount, around(regions(shared)))


def _of_covers(built: Cabinet, planned: Cabinet) -> Iterator[Misfit]:
    """Edges that a board laid flat over others, such as an applied back, is flush with and no longer reaches.

    Where it ends over several boards at once, the one with the longest edge tells it.
    """
    ends: dict[tuple[str, int, int], list[Joint]] = {}
    for joint in planned.joints:
        cover, under = planned.by_name[joint.enters], planned.by_name[joint.receives]
        along, _ = direction(joint.axis)
        if joint.depth or cover.placement.own_axis(along) != 2:
            continue
        for axis in {0, 1, 2} - {along}:
            for sign in (-1, 1):
                if far(cover.box, axis, sign) == far(under.box, axis, sign):
                    ends.setdefault((cover.name, axis, sign), []).append(joint)
    for (name, axis, sign), joints in ends.items():
        cover = built.by_name[name]
        joint = max(joints, key=lambda each: _edge(planned, each, axis))
        under = built.by_name[joint.receives]
        end, edge = far(cover.box, axis, sign), far(under.box, axis, sign)
        if sign * (edge - end) > 0:
            box = _across(cover, under, axis, *sorted((end, edge)))
            yield Misfit(BARE, (name, under.name), axis, abs(edge - end), _as_deep(box, cover, joint), joint.kind)


def _edge(cabinet: Cabinet, joint: Joint, axis: int) -> int:
    """How long the edge is that the covering board ends over, at its end along `axis`."""
    along, _ = direction(joint.axis)
    (other,) = {0, 1, 2} - {axis, along}
    return cabinet.by_name[joint.receives].box.size[other]


def _as_deep(box: Box, cover: Board, joint: Joint) -> Box:
    """The space that the covering board leaves open is as thick as the board."""
    along, _ = direction(joint.axis)
    low, high = list(box.low), list(box.high)
    low[along], high[along] = cover.box.low[along], cover.box.high[along]
    return Box(tuple(low), tuple(high))


def _of_slides(built: Cabinet, planned: Cabinet) -> Iterator[Misfit]:
    """Sides of boxes that stand off their slides by more than planned, or in them."""
    for before, now in zip(planned.hardware, built.hardware, strict=True):
        if before.what != "slide":
            continue
        meets = [
            (abs(_off(board.box, before.box, sign)), sign, board)
            for board in planned.groups[before.group] if board.role == "box side" and _beside(board.box, before.box)
            for sign in (1, -1)
        ]
        if not meets:
            continue
        _, sign, board = min(meets, key=lambda each: each[0])
        side = built.by_name[board.name]
        more = _off(side.box, now.box, sign) - _off(board.box, before.box, sign)
        if more:
            face = near(side.box, 0, sign)
            low, high = list(now.box.low), list(now.box.high)
            low[0], high[0] = sorted((face, face - sign * more))
            kind = GAP if more > 0 else CLASH
            yield Misfit(kind, (side.name, SLIDE), 0, abs(more), Box(tuple(low), tuple(high)), "slide")


def _off(side: Box, slide: Box, sign: int) -> int:
    """How far the side begins past the end of the slide, to the right (1) or to the left (-1)."""
    return sign * (near(side, 0, sign) - far(slide, 0, sign))


def _beside(one: Box, other: Box) -> bool:
    return all(one.low[axis] < other.high[axis] and other.low[axis] < one.high[axis] for axis in (1, 2))
