"""The screws of a pull go through the front and what carries it: nowhere else."""

from shoplib.checks.geometry import has_wood_in
from shoplib.measure import Style, narrowest, share, to_step, write_brief
from shoplib.model.board import Board, Hole
from shoplib.model.box import Box
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import at_least
from shoplib.words.naming import and_list, in_short

Place = tuple[int, int, int]


def find_pulls_off_the_box(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "stop" for each kind of front with pull holes that come out beside the inside of its box, or on other wood.

    Behind the front of a pull-out they may come out free; behind that of a drawer slides run. The amount is how
    far the worst hole reaches past what is clear of the box front between the box sides, or the whole hole where
    it meets other wood.
    """
    alike: dict[tuple, list[Board]] = {}
    for front in cabinet.boards:
        holes = _pull_holes(front) if front.role == "front" else []
        fault = _fault(cabinet, front, holes) if holes else None
        if fault:
            alike.setdefault(fault, []).append(front)
    return tuple(_finding(cabinet, *fault, fronts) for fault, fronts in alike.items())


def _fault(cabinet: Cabinet, front: Board, holes: list[Hole]) -> tuple[int, bool, int | None, str] | None:
    """How far off, whether sideways, the greatest distance of two holes that would do, and the wood met."""
    group = cabinet.groups[front.group]
    bored = {_place(board, hole)[::2] for board in group if board is not front for hole in _pull_holes(board)}
    missed = [hole for hole in holes if _place(front, hole)[::2] not in bored]
    if not missed:
        return None
    rooms = [_behind(front, hole) for hole in missed]
    met = [board for board in cabinet.boards if any(has_wood_in(board, room) for room in rooms)]
    carrier = _clear_of_the_sides(group)
    if carrier is None and not met:
        return None
    case = and_list(in_short([board.name for board in met if board.group == "case"]))
    if carrier is None:
        return (missed[0].diameter, True, None, case or met[0].name)
    over = [_past(carrier, room) for room in rooms]
    wide = max(over)
    if wide[0] <= 0:
        return (max(high for _, high in over), False, None, case)
    middle = share(front.box.low[0] + front.box.high[0], 2, 1)[0]
    room = narrowest([middle - carrier.low[0], carrier.high[0] - middle])
    return (wide[0], True, 2 * room - holes[0].diameter - 1, case)


def _clear_of_the_sides(group: tuple[Board, ...]) -> Box | None:
    """The box front as far as it is seen from inside the box; None where there is no box."""
    box_front = next((board.box for board in group if board.role == "box front"), None)
    sides = sorted((board.box for board in group if board.role == "box side"), key=lambda side: side.low[0])
    if box_front is None or len(sides) != 2:
        return box_front
    (_, y0, z0), (_, y1, z1) = box_front.low, box_front.high
    return Box((sides[0].high[0], y0, z0), (sides[1].low[0], y1, z1))


def _pull_holes(board: Board) -> list[Hole]:
    return [hole for hole in board.cuts if isinstance(hole, Hole) and hole.kind == "pull"]


def _place(board: Board, hole: Hole) -> Place:
    return board.placement.point_to_world(hole.centre)


def _behind(front: Board, hole: Hole) -> Box:
    """The first tick behind the front that the hole opens into."""
    x, _, z = _place(front, hole)
    r, y = share(hole.diameter, 2, 1)[0], front.box.high[1]
    return Box((x - r, y, z - r), (x + r, y + 1, z + r))


def _past(carrier: Box, room: Box) -> tuple[int, int]:
    """How far a hole reaches past what should have it, sideways and in height."""
    return tuple(max(carrier.low[a] - room.low[a], room.high[a] - carrier.high[a]) for a in (0, 2))


def _finding(cabinet: Cabinet, over: int, sideways: bool, most: int | None, met: str, fronts: list[Board]) -> Finding:
    style = cabinet.style
    whose = and_list(in_short([front.group for front in fronts]))
    onto = f", on the wood of {met}, where the front cannot close over its screws" if met else ""
    beside = onto or ", where its side or its slides are in the way of the screws"
    if most is None and sideways:
        text = f"{whose}: screws of the pull come out of the back of the front{onto}. Choose a pull of another pitch."
    elif sideways:
        text = (
            f"{whose}: holes of the pull reach {at_least(over, style)} past the inside of the box{beside}. "
            f"{_mend(most, fronts[0], style)}"
        )
    else:
        text = (
            f"{whose}: holes of the pull reach {at_least(over, style)} past the edge of the box front{onto}. "
            "Make the front lower, or leave less room above the box."
        )
    return Finding("pulls", "stop", tuple(front.name for front in fronts), text, over)


def _mend(most: int, front: Board, style: Style) -> str:
    """What to choose where the holes may be `most` ticks apart: no distance where none leaves wood between them."""
    wider = "make the bay wider, with fewer bays or a wider case"
    hole = _pull_holes(front)[0].diameter
    if most >= 2 * hole:  # as much wood between the two as one is wide: common practice, no source
        apart = write_brief(to_step(most, style.step, "down"), style)
        return f"Choose a pull whose holes are at most {apart} apart, or with one hole."
    if most >= 0:
        return f"The box is too narrow for a pull with two holes. Choose one with one hole, or {wider}."
    return f"The box is too narrow for any pull in the middle of its front: {wider}."
