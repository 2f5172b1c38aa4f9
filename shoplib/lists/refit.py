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
from typing import Self

from shoplib.lists.cut_moves import CutMoves
from shoplib.model.board import Board, BoxCut, Cut, Hole
from shoplib.model.box import Box, Point
from shoplib.model.placement import Placement, directions, standing_in
from shoplib.model.solved import Cabinet, Joint

Moves = tuple[tuple[int, int], tuple[int, int], tuple[int, int]]
"""For world x, y, z: how far the low and the high end of a board moved by its own change of size."""

_PANELS = ("back", "box bottom", "toe board", "rail", "strip")

_STILL: Moves = ((0, 0), (0, 0), (0, 0))
_NOT: Point = (0, 0, 0)


@dataclass(frozen=True, slots=True)
class Crooked:
    """A board that does not lie level or stand square: what holds it at some ends has it further along its thickness.

    `odd` have it by `amount` (world, ticks) from where the boards `against` have it, along the world `axis`.
    """

    board: str
    odd: tuple[str, ...]
    against: tuple[str, ...]
    axis: int
    amount: int


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
    neighbours = _Neighbours.of(cabinet, moves, cut_moves)
    shifts = neighbours.settled(cabinet.boards)
    boards = tuple(
        _made(
            replace(board, cuts=cuts[board.name]) if board.name in cuts else board,
            moves.get(board.name, _STILL),
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


@dataclass(frozen=True)
class _Neighbours:
    """Who meets whom, and how far each board ends up off its planned place (`shifts`, found by `settled`)."""

    meeting: dict[str, list[Joint]]
    by_name: dict[str, Board]
    moves: dict[str, Moves]
    cut_moves: CutMoves
    shifts: dict[str, list[int]]
    step: int

    @classmethod
    def of(cls, cabinet: Cabinet, moves: dict[str, Moves], cut_moves: CutMoves) -> Self:
        meeting: dict[str, list[Joint]] = {board.name: [] for board in cabinet.boards}
        for joint in cabinet.joints:
            meeting[joint.enters].append(joint)
            meeting[joint.receives].append(joint)
        still = {board.name: [0, 0, 0] for board in cabinet.boards}
        return cls(meeting, cabinet.by_name, moves, cut_moves, still, cabinet.style.step)

    def settled(self, boards: tuple[Board, ...]) -> dict[str, Point]:
        """Every board's shift, neighbours followed until all stand still."""
        for axis in self._axes():
            for _ in boards:  # a change passes on from neighbour to neighbour, at most once through all
                still = True
                for board in boards:
                    shift = self._demand(board, axis)
                    still = still and shift == self.shifts[board.name][axis]
                    self.shifts[board.name][axis] = shift
                if still:
                    break
        return {name: tuple(shift) for name, shift in self.shifts.items()}

    def crooked(self, cabinet: Cabinet) -> tuple[Crooked, ...]:
        """The boards whose holders disagree across their thickness."""
        found = []
        for board in cabinet.boards:
            axis = directions(board.placement.axes)[2][0]
            held = self._held(board, axis) if axis in self._axes() else {}
            if self._disagree(held):
                near, far = min(held.values(), key=abs), max(held.values(), key=abs)
                odd, against = (tuple(name for name, at in held.items() if at == one) for one in (far, near))
                found.append(Crooked(board.name, odd, against, axis, far - near))
        return tuple(found)

    def _axes(self) -> set[int]:
        return {axis for move in self.moves.values() for axis in range(3) if move[axis] != (0, 0)} | self.cut_moves.axes

    def _disagree(self, held: dict[str, int]) -> bool:
        return bool(held) and max(held.values()) - min(held.values()) > self.step

    def _demand(self, board: Board, axis: int) -> int:
        """Where its neighbours want this board along one axis: holders first, then what it stands against."""
        held = self._held(board, axis)
        if axis == directions(board.placement.axes)[2][0] and self._disagree(held):
            return min(held.values(), key=abs)
        return max(held.values() or self._against(board, axis) or [0])

    def _held(self, board: Board, axis: int) -> dict[str, int]:
        """Where each board that this one goes into has it, along an axis that the joint does not run along."""
        held = {}
        for joint in self.meeting[board.name]:
            if joint.enters == board.name and joint.locates and "xyz".index(joint.axis[1]) != axis:
                holder = self.by_name[joint.receives]
                own, moved = (self.moves.get(name, _STILL)[axis] for name in (board.name, holder.name))
                by_cut = self.cut_moves.carried.get((holder.name, board.name), _NOT)[axis]
                at = self.shifts[holder.name][axis] + _holder_moved(board, holder, axis, moved, own)
                held[holder.name] = at + by_cut
        return held

    def _against(self, board: Board, axis: int) -> list[int]:
        """Where what lies to its left, in front or below it, and meets it along the axis, lets it stand."""
        against = []
        for joint in self.meeting[board.name]:
            if not joint.locates or "xyz".index(joint.axis[1]) != axis:
                continue
            other = self.by_name[joint.receives if joint.enters == board.name else joint.enters]
            if _middle(other.box, axis) < _middle(board.box, axis) and other.role not in _PANELS:
                ends = self.moves.get(other.name, _STILL)[axis][1] - self.moves.get(board.name, _STILL)[axis][0]
                pushed = self.cut_moves.pushed.get((joint.receives, joint.enters), 0)
                against.append(self.shifts[other.name][axis] + ends + pushed)
        return against


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
        if not all(low <= at <= high for low, at, high in zip(wood.low, box.low, wood.high, strict=True)):
            return None
        own = "uvw".index(cut.along)
        through = placement.to_board(wood).high[own] if cut.depth >= board.size[own] else cut.depth
        return replace(cut, centre=placement.point_to_board(box.low), depth=through)
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
