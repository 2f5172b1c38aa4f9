"""Which boards hold or stop which, and how far each follows when its neighbours come out otherwise than planned."""

from dataclasses import dataclass
from typing import Self

from shoplib.lists.cut_moves import CutMoves
from shoplib.model.board import Board, BoxCut
from shoplib.model.box import Box, Point
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet, Joint

Moves = tuple[tuple[int, int], tuple[int, int], tuple[int, int]]
"""For world x, y, z: how far the low and the high end of a board moved by its own change of size."""

_PANELS = ("back", "box bottom", "toe board", "rail", "strip")

STILL: Moves = ((0, 0), (0, 0), (0, 0))
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
class Neighbours:
    """Who meets whom, and how far each board ends up off its planned place (`shifts`, found by `settled`)."""

    meeting: dict[str, list[Joint]]
    by_name: dict[str, Board]
    moves: dict[str, Moves]
    cut_moves: CutMoves
    shifts: dict[str, list[int]]
    step: int

    @classmethod
    def of(cls, cabinet: Cabinet, moves: dict[str, Moves], cut_moves: CutMoves) -> Self:
        """The neighbours of every board, all still at their planned places."""
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
            if joint.enters == board.name and "xyz".index(joint.axis[1]) != axis:
                holder = self.by_name[joint.receives]
                own, moved = (self.moves.get(name, STILL)[axis] for name in (board.name, holder.name))
                by_cut = self.cut_moves.carried.get((holder.name, board.name), _NOT)[axis]
                at = self.shifts[holder.name][axis] + _holder_moved(board, holder, axis, moved, own)
                held[holder.name] = at + by_cut
        return held

    def _against(self, board: Board, axis: int) -> list[int]:
        """Where what lies to its left, in front or below it, and meets it along the axis, lets it stand."""
        against = []
        for joint in self.meeting[board.name]:
            if "xyz".index(joint.axis[1]) != axis:
                continue
            other = self.by_name[joint.receives if joint.enters == board.name else joint.enters]
            if _middle(other.box, axis) < _middle(board.box, axis) and other.role not in _PANELS:
                ends = self.moves.get(other.name, STILL)[axis][1] - self.moves.get(board.name, STILL)[axis][0]
                pushed = self.cut_moves.pushed.get((joint.receives, joint.enters), 0)
                against.append(self.shifts[other.name][axis] + ends + pushed)
        return against


def _middle(box: Box, axis: int) -> int:
    return box.low[axis] + box.high[axis]


def _holder_moved(board: Board, holder: Board, axis: int, moved: tuple[int, int], own: tuple[int, int]) -> int:
    """How far the cut or end that holds the board moved, less what the board itself gained there."""
    for cut, room in zip(_box_cuts(holder), holder.cut_boxes, strict=True):
        if cut.for_board == board.name:
            span = moved_span(room, holder.box, axis, moved)
            runs_through = span == moved and room.size[axis] == holder.box.size[axis]
            if not runs_through:
                return span[0] - own[0]
    flush_high = board.box.high[axis] == holder.box.high[axis]
    flush_low = board.box.low[axis] == holder.box.low[axis]
    if flush_high and not flush_low:
        return moved[1] - own[1]
    return moved[0] - own[0] if flush_low else 0


def moved_span(room: Box, wood: Box, axis: int, moved: tuple[int, int]) -> tuple[int, int]:
    """How far the two walls of a cut move: with an end that it runs out of, else not at all."""
    low_open = room.low[axis] <= wood.low[axis]
    high_open = room.high[axis] >= wood.high[axis]
    if low_open and high_open:
        return moved
    if low_open:
        return moved[0], moved[0]
    return (moved[1], moved[1]) if high_open else (0, 0)


def _box_cuts(board: Board) -> list[BoxCut]:
    return [cut for cut in board.cuts if isinstance(cut, BoxCut)]
