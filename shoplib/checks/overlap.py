"""No two boards may share wood."""

from collections.abc import Iterator, Sequence

from shoplib.checks.as_built import AsBuilt
from shoplib.checks.geometry import common_boxes, deepest, direction, is_outlined, shared_by_solids
from shoplib.checks.seat import Seat, seat_of
from shoplib.measure import Style
from shoplib.model.board import Board
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet, Finding, Joint
from shoplib.words.amounts import ALONG, give_way, shorter, true_amount


def overlapping(boards: Sequence[Board]) -> list[tuple[Board, Board, list[Box]]]:
    """Each pair of boards that share wood, in the order of `boards`, with the boxes that they share.

    Exact: the boards' remaining wood (`Board.pieces`) is compared in whole ticks. Faces that only
    touch share nothing.
    """
    found = []
    for one, other in _pairs_in_reach(boards):
        # What lies in the other's uncut box, first: most pieces of a long board are nowhere near.
        near = common_boxes(one.pieces, [other.box])
        shared = common_boxes(near, other.pieces)
        if shared and (is_outlined(one) or is_outlined(other)):
            shared = shared_by_solids(one, other)
        if shared:
            found.append((one, other, shared))
    return found


def find_overlaps(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "stop" for each pair of boards that share wood; the amount is how far one must give way.

    What goes into an opening that was measured is held against its uprights where they were measured.
    """
    joints = {frozenset((joint.enters, joint.receives)): joint for joint in cabinet.joints}
    built = AsBuilt(cabinet)
    pairs = overlapping(cabinet.boards)
    if not built.nothing_moved:
        pairs = [pair for pair in pairs if _as_planned(built, *pair[:2])] + list(_as_measured(cabinet, built))
    return tuple(
        _finding(cabinet, one, other, shared, joints.get(frozenset((one.name, other.name))))
        for one, other, shared in pairs
    )


def _as_planned(built: AsBuilt, one: Board, other: Board) -> bool:
    """Whether neither of the two meets the other elsewhere than planned."""
    return built.met_by(one, other) is one and built.met_by(other, one) is other


def _as_measured(cabinet: Cabinet, built: AsBuilt) -> Iterator[tuple[Board, Board, list[Box]]]:
    """The pairs of which one stands elsewhere than planned for the other, that share wood there."""
    others = [board for board in cabinet.boards if board.group == "case" or board.role == "front"]
    for board in cabinet.boards:
        for fixed in others:
            there = built.met_by(fixed, board)
            if there is not fixed and there.box.overlaps(board.box):
                shared = common_boxes(there.pieces, board.pieces)
                if shared:
                    yield there, board, shared


def _pairs_in_reach(boards: Sequence[Board]) -> list[tuple[Board, Board]]:
    """Pairs whose uncut boxes share volume, found by a sweep along the axis that parts them best."""
    if len(boards) < 2:
        return []
    boxes = [board.box for board in boards]
    whole, sizes = around(boxes).size, [box.size for box in boxes]
    axis = min(range(3), key=lambda a: sum(size[a] for size in sizes) / (whole[a] or 1))
    order = sorted(range(len(boards)), key=lambda number: boxes[number].low[axis])
    pairs, open_now = [], []
    for number in order:
        box = boxes[number]
        low = box.low[axis]
        open_now = [earlier for earlier in open_now if boxes[earlier].high[axis] > low]
        pairs += [
            (earlier, number) if earlier < number else (number, earlier)
            for earlier in open_now
            if boxes[earlier].overlaps(box)
        ]
        open_now.append(number)
    return [(boards[one], boards[other]) for one, other in sorted(pairs)]


def _finding(cabinet: Cabinet, one: Board, other: Board, shared: list[Box], joint: Joint | None) -> Finding:
    amount, axis = deepest(shared, range(3) if joint else _ways_apart(one.box, other.box))
    size = true_amount(amount, cabinet.style)
    if joint is None:
        box = next((board for board in (one, other) if board.role == "box side" and axis == 0), None)
        mend = f"Make the box of {box.group} narrower by {size}." if box else give_way((one, other), axis, size)
    else:
        enters, receives = (one, other) if one.name == joint.enters else (other, one)
        if axis == direction(joint.axis)[0]:
            mend = _mend_along(seat_of(joint, enters, receives), shared, size, cabinet.style)
        else:
            mend = f"Cut {receives.name} wider there by {size}, or move the cut by {size}."
    text = f"{one.name} and {other.name} want the same wood: {size} {ALONG[axis]}. {mend}"
    return Finding("overlap", "stop", (one.name, other.name), text, amount)


def _mend_along(seat: Seat, shared: list[Box], size: str, style: Style) -> str:
    """What ends a clash along a joint: the wood struck may be less than what the board is too long by.

    Nobody is told to shorten a board that is as long as it should be, or to cut right through another.
    """
    enters, receives = seat.enters.name, seat.receives.name
    too_long = seat.entered - (seat.joint.depth - seat.joint.end_gap)
    if seat.room is not None and too_long <= 0 and not any(_behind(seat, box) for box in shared):
        return f"It is not the length of {enters}: the {seat.cut.kind} for it in {receives} lies elsewhere."
    if seat.room is None or seat.entered >= seat.receives.box.size[seat.axis]:
        if too_long <= 0:
            return f"Cut the {seat.joint.kind} for {enters} in {receives}."
        return f"Make {enters} {shorter(seat.enters, seat.axis)} by {true_amount(too_long, style)}."
    less = true_amount(too_long, style) if too_long > 0 else size
    return f"Cut {receives} deeper there by {size}, or make {enters} {shorter(seat.enters, seat.axis)} by {less}."


def _behind(seat: Seat, box: Box) -> bool:
    """Whether this wood lies behind the floor of the cut, or before its mouth, and not beside it."""
    return all(
        box.low[a] < seat.room.high[a] and seat.room.low[a] < box.high[a] for a in range(3) if a != seat.axis
    )


def _ways_apart(one: Box, other: Box) -> list[int]:
    """The axes along which two boards that have no joint run past each other's ends.

    Along the rest one lies within the other's length, so moving it that way would not part them.
    """
    past = [
        axis
        for axis in range(3)
        if (one.low[axis] - other.low[axis]) * (one.high[axis] - other.high[axis]) > 0
    ]
    return past or [0, 1, 2]
