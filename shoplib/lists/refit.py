"""The cabinet put together from boards of other sizes than planned: who keeps its place, who moves.

A board that comes out longer or shorter keeps the end it is set out from: a side its lower end, a
shelf its left end, a depth its front edge. A thickness keeps the face that the cuts are set out from (else
the board's own w = 0 face, and a level board its underside). Cuts that run out of the end that
moved move with it (a rabbet at the top end of a side); the others stay where they were measured.

Then the neighbours follow, along each world axis:

- a board let into another, or flush with its end, goes with that cut or end (a top in the rabbets of
  two shortened sides comes down with them);
- a board that nothing holds in that way stands against what lies to its left, in front or below it: the
  longest neighbour holds it off (the right side against top, bottom and shelves). Backs, box bottoms,
  toe boards, rails and strips hold nothing off: they go in last, between what stands.

A dado that was cut elsewhere takes the board that goes into it along. One that is shallower than planned
holds its board off by as much as its end gap does not take up; one that is deeper lets it in further only
where every other cut on that side does too.

Where what holds a board disagrees from end to end, the board would be crooked; that is told, and it is left
nearest to its place. Where other neighbours disagree the larger one wins, so that the other shows a gap.
Drawers and fronts stay where their hardware was set out. What then gapes or collides is for the dry-fit to
say.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from shoplib.lists.cut_moves import CutMoves
from shoplib.lists.neighbours import STILL, Crooked, Moves, Neighbours, moved_span
from shoplib.model.board import Board, BoxCut, Cut, Hole, PrismCut, prism_cut
from shoplib.model.box import Box, Point, around
from shoplib.model.placement import Placement, directions, standing_in
from shoplib.model.solved import Cabinet


@dataclass(frozen=True)
class Refit:
    """The cabinet as it would go together, and how far each board that moved stands off (world, ticks).

    `cut_moves` says what cuts that are made otherwise than planned do to the boards that go into them.
    """

    cabinet: Cabinet
    shifts: dict[str, Point]
    cut_moves: CutMoves
    crooked: tuple[Crooked, ...]


def refit(cabinet: Cabinet, sizes: Mapping[str, Point], cuts: Mapping[str, tuple[Cut, ...]] | None = None) -> Refit:
    """Put the cabinet together with the given finished sizes and cuts, by name; other boards are as planned.

    Cuts are those of the board at its planned size: the planned ones in their order, each as it is made
    now, and after them those that the plan does not have.
    """
    cuts = cuts or {}
    moves = {name: _moves(cabinet.by_name[name], size) for name, size in sizes.items()}
    cut_moves = CutMoves.of(cabinet, cuts)
    neighbours = Neighbours.of(cabinet, moves, cut_moves)
    shifts = neighbours.settled(cabinet.boards)
    boards = tuple(
        _made(
            replace(board, cuts=cuts[board.name]) if board.name in cuts else board,
            moves.get(board.name, STILL),
            shifts[board.name],
        )
        for board in cabinet.boards
    )
    hardware = tuple(
        replace(fitting, box=fitting.box.moved(shifts.get(fitting.on, (0, 0, 0)))) for fitting in cabinet.hardware
    )
    moved = {name: shift for name, shift in shifts.items() if any(shift)}
    return Refit(replace(cabinet, boards=boards, hardware=hardware), moved, cut_moves, neighbours.crooked(cabinet))


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


def _made(board: Board, moves: Moves, shift: Point) -> Board:
    if moves == STILL:
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
        if not all(low <= at <= high for low, at, high in zip(wood.low, box.low, wood.high, strict=True)):
            return None
        own = "uvw".index(cut.along)
        through = placement.to_board(wood).high[own] if cut.depth >= board.size[own] else cut.depth
        return replace(cut, centre=placement.point_to_board(box.low), depth=through)
    if isinstance(cut, PrismCut):
        return _made_outline(cut, board, moves, shift, placement, wood)
    room = _shifted(board.placement.to_world(cut.box), board, moves, shift).common(wood)
    if room is None:
        return None
    own = placement.to_board(room)
    return replace(cut, low=own.low, high=own.high)


def _made_outline(
    cut: PrismCut, board: Board, moves: Moves, shift: Point, placement: Placement, wood: Box
) -> PrismCut | None:
    """An outline keeps its form and goes with the end that it is set out from, as do all that are cut for one board:
    the slot in a mitre lies inside, and goes with its mitre.
    """
    was = board.placement.to_world(cut.box)
    alike = around([board.placement.to_world(other.box) for other in board.cuts
                    if isinstance(other, PrismCut) and other.for_board == cut.for_board])
    low = _shifted(alike, board, moves, shift).low
    by = tuple(low[a] - alike.low[a] for a in range(3))
    now = was.moved(by)
    if wood.common(now) != now:
        return None
    axis, own = directions(board.placement.axes)["uvw".index(cut.along)][0], "uvw".index(cut.along)
    corners = []
    for corner in cut.outline:
        point = [cut.start] * 3
        point[(own + 1) % 3], point[(own + 2) % 3] = corner
        there = board.placement.point_to_world(tuple(point))
        corners.append((there[(axis + 1) % 3] + by[(axis + 1) % 3], there[(axis + 2) % 3] + by[(axis + 2) % 3]))
    return prism_cut(placement, cut.kind, axis, corners, (now.low[axis], now.high[axis]), cut.for_board)


def _shifted(room: Box, board: Board, moves: Moves, shift: Point) -> Box:
    spans = [moved_span(room, board.box, axis, moves[axis]) for axis in range(3)]
    low = tuple(room.low[a] + spans[a][0] + shift[a] for a in range(3))
    high = tuple(room.high[a] + spans[a][1] + shift[a] for a in range(3))
    return Box(low, high)
