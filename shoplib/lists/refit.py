"""The cabinet put together from boards of other sizes than planned: who keeps its place, who moves.

A board that comes out longer or shorter keeps the end it is set out from: a side its lower end, a
shelf its left end, a depth its front edge. A thickness keeps the face that the cuts are set out from (else
the board's own w = 0 face, and a level board its underside). Cuts that run out of the end that
moved move with it (a rabbet at the top end of a side); the others stay where they were measured.

Then the neighbours follow, along each world axis:

- a board let into another, or flush with its end, goes with that cut or end (a top in the rabbets of
  two shortened sides comes down with them);
- a board that nothing holds in that way stands against what lies to its left, in front or below it: the
  longest neighbour holds it off (the right side against top, bottom and shelves). Backs and box
  bottoms hold nothing off: they go in last, into cuts with play.

Where two neighbours disagree the larger one wins, so that the other shows a gap. Drawers and fronts
stay where their hardware was set out. What then gapes or collides is for the dry-fit to say.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from shoplib.model.board import Board, BoxCut, Cut, Hole
from shoplib.model.box import Box, Point
from shoplib.model.placement import Placement, directions, standing_in
from shoplib.model.solved import Cabinet, Joint

Moves = tuple[tuple[int, int], tuple[int, int], tuple[int, int]]
"""For world x, y, z: how far the low and the high end of a board moved by its own change of size."""

_PANELS = ("back", "box bottom")

_STILL: Moves = ((0, 0), (0, 0), (0, 0))


@dataclass(frozen=True)
class Refit:
    """The cabinet as it would go together, and how far each board that moved stands off (world, ticks)."""

    cabinet: Cabinet
    shifts: dict[str, Point]


def refit(cabinet: Cabinet, sizes: Mapping[str, Point]) -> Refit:
    """Put the cabinet together with the given finished sizes, by name; other boards are as planned."""
    moves = {name: _moves(cabinet.by_name[name], size) for name, size in sizes.items()}
    shifts = _settled(cabinet, moves)
    boards = tuple(_made(board, moves.get(board.name, _STILL), shifts[board.name]) for board in cabinet.boards)
    hardware = tuple(
        replace(fitting, box=fitting.box.moved(shifts.get(fitting.on, (0, 0, 0)))) for fitting in cabinet.hardware
    )
    moved = {name: shift for name, shift in shifts.items() if any(shift)}
    return Refit(replace(cabinet, boards=boards, hardware=hardware), moved)


def _moves(board: Board, size: Point) -> Moves:
    moves = [(0, 0), (0, 0), (0, 0)]
    for own, (axis, sign) in enumerate(directions(board.placement.axes)):
        change = size[own] - board.size[own]
        keeps_low = own != 2 or axis == 2 or (sign > 0) == _reference_face_is_low(board)
        moves[axis] = (0, change) if keeps_low else (-change, 0)
    return tuple(moves)


def _reference_face_is_low(board: Board) -> bool:
    """True where cuts are set out from the face w = 0: more of them open there, or none anywhere."""
    boxes = [cut for cut in board.cuts if isinstance(cut, BoxCut)]
    low = sum(cut.low[2] <= 0 < board.thickness - cut.high[2] for cut in boxes)
    high = sum(cut.low[2] > 0 and cut.high[2] >= board.thickness for cut in boxes)
    return low >= high


def _settled(cabinet: Cabinet, moves: dict[str, Moves]) -> dict[str, Point]:
    """How far each board ends up off its planned place, neighbours followed until all stand still."""
    boards, by_name = cabinet.boards, cabinet.by_name
    meeting: dict[str, list[Joint]] = {board.name: [] for board in boards}
    for joint in cabinet.joints:
        meeting[joint.enters].append(joint)
        meeting[joint.receives].append(joint)
    shifts = {board.name: [0, 0, 0] for board in boards}
    axes = {axis for move in moves.values() for axis in range(3) if move[axis] != (0, 0)}
    for axis in axes:
        for _ in boards:  # a change passes on from neighbour to neighbour, at most once through all
            still = True
            for board in boards:
                shift = _demand(board, axis, meeting[board.name], by_name, moves, shifts)
                still = still and shift == shifts[board.name][axis]
                shifts[board.name][axis] = shift
            if still:
                break
    return {name: tuple(shift) for name, shift in shifts.items()}


def _demand(
    board: Board,
    axis: int,
    joints: list[Joint],
    by_name: dict[str, Board],
    moves: dict[str, Moves],
    shifts: dict[str, list[int]],
) -> int:
    """Where its neighbours want this board along one axis: holders first, then what it stands against."""
    low, high = moves.get(board.name, _STILL)[axis]
    held, against = [], []
    for joint in joints:
        enters = joint.enters == board.name
        other = by_name[joint.receives if enters else joint.enters]
        other_moves = moves.get(other.name, _STILL)
        shift = shifts[other.name][axis]
        along = "xyz".index(joint.axis[1])
        if along == axis:
            below = _middle(other.box, axis) < _middle(board.box, axis)
            if below and joint.locates and other.role not in _PANELS:
                against.append(shift + other_moves[axis][1] - low)
        elif enters and joint.locates:
            held.append(shift + _holder_moved(board, other, axis, other_moves[axis], (low, high)))
    return max(held or against or [0])


def _middle(box: Box, axis: int) -> int:
    return box.low[axis] + box.high[axis]


def _holder_moved(board: Board, holder: Board, axis: int, moved: tuple[int, int], own: tuple[int, int]) -> int:
    """How far the cut or end that holds the board moved, less what the board itself gained there."""
    for cut, room in zip(_box_cuts(holder), holder.cut_boxes, strict=True):
        if cut.for_board == board.name:
            span = _moved_span(room, holder.box, axis, moved)
            runs_through = span == moved and room.size[axis] == holder.box.size[axis]
            if not runs_through:
                return span[0] - own[0]
    flush_high = board.box.high[axis] == holder.box.high[axis]
    flush_low = board.box.low[axis] == holder.box.low[axis]
    if flush_high and not flush_low:
        return moved[1] - own[1]
    return moved[0] - own[0] if flush_low else 0


def _moved_span(room: Box, wood: Box, axis: int, moved: tuple[int, int]) -> tuple[int, int]:
    """How far the two walls of a cut move: with an end that it runs out of, else not at all."""
    low_open = room.low[axis] <= wood.low[axis]
    high_open = room.high[axis] >= wood.high[axis]
    if low_open and high_open:
        return moved
    if low_open:
        return moved[0], moved[0]
    return (moved[1], moved[1]) if high_open else (0, 0)


def _made(board: Board, moves: Moves, shift: Point) -> Board:
    if moves == _STILL:
        if not any(shift):
            return board
        x, y, z = board.placement.origin
        origin = (x + shift[0], y + shift[1], z + shift[2])
        return replace(board, placement=Placement(origin, board.placement.axes))
    wood = board.box
    low = tuple(wood.low[a] + moves[a][0] + shift[a] for a in range(3))
    high = tuple(wood.high[a] + moves[a][1] + shift[a] for a in range(3))
    placement = standing_in(Box(low, high), board.placement.axes)
    length, width, thickness = placement.to_board(Box(low, high)).high
    cuts = [_made_cut(cut, board, moves, shift, placement, Box(low, high)) for cut in board.cuts]
    return replace(
        board,
        length=length,
        width=width,
        thickness=thickness,
        placement=placement,
        cuts=tuple(cut for cut in cuts if cut is not None),
    )


def _made_cut(cut: Cut, board: Board, moves: Moves, shift: Point, placement: Placement, wood: Box) -> Cut | None:
    """The cut as it comes out in the board of another size; None where the board no longer reaches it."""
    if isinstance(cut, Hole):
        centre = board.placement.to_world(Box(cut.centre, cut.centre))
        box = _shifted(centre, board, moves, shift)
        inside = all(low <= at <= high for low, at, high in zip(wood.low, box.low, wood.high, strict=True))
        return replace(cut, centre=placement.point_to_board(box.low)) if inside else None
    room = _shifted(board.placement.to_world(cut.box), board, moves, shift).common(wood)
    if room is None:
        return None
    own = placement.to_board(room)
    return replace(cut, low=own.low, high=own.high)


def _shifted(room: Box, board: Board, moves: Moves, shift: Point) -> Box:
    spans = [_moved_span(room, board.box, axis, moves[axis]) for axis in range(3)]
    low = tuple(room.low[a] + spans[a][0] + shift[a] for a in range(3))
    high = tuple(room.high[a] + spans[a][1] + shift[a] for a in range(3))
    return Box(low, high)


def _box_cuts(board: Board) -> list[BoxCut]:
    return [cut for cut in board.cuts if isinstance(cut, BoxCut)]
