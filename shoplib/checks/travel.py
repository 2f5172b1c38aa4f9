"""Every drawer and pull-out must run out its whole travel."""

from shoplib.checks.as_built import AsBuilt
from shoplib.checks.geometry import common_boxes, deepest, far, near
from shoplib.measure import write_brief
from shoplib.model.board import Board
from shoplib.model.box import Box, Point, around
from shoplib.model.solved import Cabinet, Finding, Travel
from shoplib.words.amounts import ALONG, give_way, how_much, true_amount


def find_blocked_travel(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "stop" for each board that runs into a board of another group on its way out.

    Each remaining piece of wood is swept, not the board's hull: a hull would fill the groove that
    a runner lies in. The other groups stand closed. Boards that share wood before anything moves
    are left to the overlap check. The amount is how much of the fixed board stands in the way.
    """
    found, built = [], AsBuilt(cabinet)
    for run in cabinet.travel:
        moving = cabinet.groups.get(run.group, ())
        if not moving or run.vector == (0, 0, 0):
            continue
        room = around([board.box for board in moving]).swept(run.vector)
        fixed = [board for board in cabinet.boards if board.group != run.group and board.box.overlaps(room)]
        for board in moving:
            path = board.box.swept(run.vector)
            for planned in fixed:
                other = built.met_by(planned, board)
                if path.overlaps(other.box):
                    found += _collision(cabinet, run, board, other)
    return tuple(found)


def _collision(cabinet: Cabinet, run: Travel, board: Board, other: Board) -> list[Finding]:
    shared = common_boxes([piece.swept(run.vector) for piece in board.pieces], other.pieces)
    if not shared or common_boxes(board.pieces, other.pieces):
        return []
    axis = max(range(3), key=lambda a: abs(run.vector[a]))
    amount, across = deepest(shared, [a for a in range(3) if a != axis])
    free = _free_run(board.pieces, other.pieces, run.vector, axis)
    size = true_amount(amount, cabinet.style)
    whole = write_brief(abs(run.vector[axis]), cabinet.style)
    start = f"after {how_much(free, cabinet.style)} of its" if free else "at the start of its"
    text = (
        f"{board.name} runs into {other.name} {start} {whole} of travel: "
        f"{size} of it stands in the way {ALONG[across]}. "
        f"{give_way((other, board), across, size)}"
    )
    return [Finding("travel", "stop", (board.name, other.name), text, amount)]


def _free_run(moving: tuple[Box, ...], fixed: tuple[Box, ...], vector: Point, axis: int) -> int:
    """How far the moving pieces go before the first of them touches a fixed one, in ticks."""
    sign = 1 if vector[axis] > 0 else -1
    return min(
        sign * (near(wall, axis, sign) - far(piece, axis, sign))
        for piece in moving
        for wall in fixed
        if piece.swept(vector).overlaps(wall)
    )
