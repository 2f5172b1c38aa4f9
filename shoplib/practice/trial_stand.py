"""A pair as it was cut, put together as by hand: pushed in as far as it goes, between its walls, or not at all."""

from collections.abc import Mapping
from dataclasses import replace

from shoplib.checks.pair_fit import way_out, ways
from shoplib.joints.bench_pair import Clearance, Pair
from shoplib.measure import share, thickest
from shoplib.model.board import Board
from shoplib.model.box import Box, Point
from shoplib.practice.fit import Felt
from shoplib.practice.trial_kind import Meet, Stood, Trial
from shoplib.practice.trouble import MOVED


def stood(trial: Trial, pair: Pair, planned: Pair, slipped: bool = False) -> Stood:
    """The boards of the pair where they stand once they are put together by hand.

    A board that does not go in stands before the other. With `slipped`, so does one that is stopped far off its place.

    >>> from shoplib.practice.trial_kind import each_board
    >>> from shoplib.practice.trial_stock import trial_plan, trial_stock
    >>> from shoplib.practice.trials import trial
    >>> rabbet = trial("rabbet")
    >>> stock, plan = trial_stock("rabbet", "in"), trial_plan("rabbet", "in")
    >>> meant = rabbet.kind.build(stock, plan)
    >>> shallow = each_board(rabbet.kind, stock, plan, {"side": {"depth": plan["depth"] - 700}})
    >>> found = stood(rabbet, shallow, meant)
    >>> found.room["cheek"][0], found.pair.by_name["bottom"].box.low[0] - meant.by_name["bottom"].box.low[0]
    (-700, 700)
    """
    boards = dict(pair.by_name)
    gone = {name: (0, 0, 0) for name in boards}
    unit = pair.stock.style.unit
    room: dict[str, tuple[int | None, int | None]] = {}
    tight: list[str] = []
    give = 0
    for meet in trial.meets:
        back, forth = _room(meet, pair, boards, gone, give)
        room[meet.name] = back, forth
        shift = _shift(meet, back, forth)
        play = back + forth if meet.does == "between" and None not in (back, forth) else 0
        if not Felt(play, unit).enters:
            tight.append(meet.name)
            continue
        give = thickest([give, -play])
        if shift:
            vector = tuple(shift if axis == meet.axis else 0 for axis in range(3))
            boards[meet.mover] = moved(boards[meet.mover], vector)
            gone[meet.mover] = tuple(a + b for a, b in zip(gone[meet.mover], vector, strict=True))
    if slipped and (tight or _far_off(trial.enters, boards, gone)):
        stopped = _before(trial.enters, pair.by_name)
        if stopped > MOVED:
            return Stood(_drawn_out(trial.enters, pair, stopped), planned, {}, (), stopped)
    if tight:
        out = _drawn_out(trial.enters, pair, _before(trial.enters, pair.by_name))
        return Stood(out, planned, room, tuple(tight))
    return Stood(_placed(pair, gone), planned, room, gone=gone)


def _far_off(enters: Meet, boards: Mapping[str, Board], gone: Mapping[str, Point]) -> bool:
    """Whether a board would have to go farther aside than a step that can be planed away, or is stopped even there."""
    return _before(enters, boards) > MOVED or any(abs(way) > 2 * MOVED for vector in gone.values() for way in vector)


def gaps(trial: Trial, found: Stood) -> tuple[Clearance, ...]:
    """The rooms that are open where the boards stand now; none where one does not go in."""
    if found.tight or found.stopped:
        return ()
    give = thickest([0, *(-found.play(meet.name) for meet in trial.meets if meet.does == "between")])
    return tuple(
        Clearance(meet.name, meet.mover, meet.against, f"{way}{'xyz'[meet.axis]}", free)
        for meet in trial.meets
        for way, free in zip("-+", _room(meet, found.pair, found.pair.by_name, found.gone, give), strict=True)
        if free is not None and free > 0
    )


def _room(
    meet: Meet, pair: Pair, boards: Mapping[str, Board], gone: Mapping[str, Point], give: int = 0
) -> tuple[int | None, int | None]:
    """How far the mover can go back and forth where the boards stand now, of the wood that the meeting looks at."""
    part = None if meet.part is None else _moved_box(meet.part(pair.stock, pair.values), gone[meet.mover])
    found = ways(boards[meet.mover], boards[meet.against], meet.axis, part, give)
    back, forth = (None if one is None else _whole(one) for one in found)
    return back, forth


def _before(enters: Meet, boards: Mapping[str, Board]) -> int:
    """How far before its place the entering board is stopped; 0 where it gets there."""
    way = f"{'+' if enters.way > 0 else '-'}{'xyz'[enters.axis]}"
    return _whole(way_out(boards[enters.mover], boards[enters.against], way))


def _drawn_out(enters: Meet, pair: Pair, by: int) -> Pair:
    vector = tuple(-enters.way * by if axis == enters.axis else 0 for axis in range(3))
    return _placed(pair, {enters.mover: vector})


def _placed(pair: Pair, gone: Mapping[str, Point]) -> Pair:
    """The pair with its boards moved, and what is named of them."""
    named = {
        part: (board, tuple(a + b for a, b in zip(point, gone.get(board, (0, 0, 0)), strict=True)))
        for part, (board, point) in pair.named.items()
    }
    boards = tuple(moved(board, gone.get(board.name, (0, 0, 0))) for board in pair.boards)
    return replace(pair, boards=boards, named=named)


def _whole(one: object) -> int:
    """To the whole tick below: a rest of a tick comes of slanting cuts alone."""
    return int(one // 1)


def _shift(meet: Meet, back: int | None, forth: int | None) -> int:
    """How far the mover goes along its axis."""
    if meet.does == "between":
        if None not in (back, forth) and back + forth < 0:
            return share(forth - back, 2, 1)[0]  # pressed in: both walls give alike
        if back is not None and back < 0:
            return -back
        return forth if forth is not None and forth < 0 else 0
    if meet.does == "read":
        return 0
    free = back if meet.way < 0 else forth
    if free is None or (meet.does == "home" and free > 0):
        return 0
    return meet.way * free


def moved(board: Board, vector: Point) -> Board:
    """The board at another place."""
    origin = tuple(a + b for a, b in zip(board.placement.origin, vector, strict=True))
    return replace(board, placement=replace(board.placement, origin=origin))


def _moved_box(box: Box, vector: Point) -> Box:
    return Box(
        tuple(a + b for a, b in zip(box.low, vector, strict=True)),
        tuple(a + b for a, b in zip(box.high, vector, strict=True)),
    )
