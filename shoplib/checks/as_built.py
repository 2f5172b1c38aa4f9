"""What goes between uprights is held against them where they were measured, not where the plan has them."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from shoplib.measure import narrowest
from shoplib.model.as_measured import STRANGE, believable_depth, far_off, spans_as_built
from shoplib.model.board import Board
from shoplib.model.part_of import PartOf
from shoplib.model.project import Opening as Reading
from shoplib.model.rows import Span
from shoplib.model.shell import shell_of
from shoplib.model.solved import Cabinet

_BEHIND = {"back", "rail"}


@dataclass(frozen=True)
class AsBuilt:
    """A cabinet with what was measured on it; with nothing measured, every board stands where it is planned."""

    cabinet: Cabinet

    @cached_property
    def _openings(self) -> dict[str, tuple[Reading, Span, tuple[Board, Board]]]:
        """Each measured opening: what was read, where its planned faces are, and its uprights."""
        project, found = self.cabinet.project, {}
        bays = {board.part_of.opening: board.part_of.bay for board in self.cabinet.boards if board.part_of}
        for name, read in project.measured.latest.items() if project else ():
            pair = self._uprights(bays[name], len(project.bays)) if name in bays else None
            if pair is not None:
                found[name] = (read, (pair[0].box.high[0], pair[1].box.low[0]), pair)
        return found

    @cached_property
    def _shifts(self) -> dict[tuple[str, str], tuple[int, int]]:
        """By opening and upright: how far its face was measured to stand right of the plan, at slides and front."""
        found = {}
        for name, (read, planned, pair) in self._openings.items():
            spans = spans_as_built(read, planned, (pair[0].role == "side", pair[1].role == "side"))
            for end, upright in enumerate(pair):
                found[name, upright.name] = tuple(span[end] - planned[end] for span in spans)
        return found

    @cached_property
    def _deeper(self) -> dict[str, int]:
        """By bay: how much farther back than planned what stands behind it was measured; less where nearer."""
        project = self.cabinet.project
        if project is None or not project.measured.depths:
            return {}
        return {bay: depth - self._behind for bay, depth in project.measured.depths.items()}

    @cached_property
    def _behind(self) -> int:
        """Where boxes are planned to end: at the back or the nearest rail."""
        rails = [board.box.low[1] for board in self.cabinet.boards if board.role == "rail"]
        return narrowest([shell_of(self.cabinet.project).behind, *rails])

    @cached_property
    def doubted(self) -> frozenset[str]:
        """The openings, and the bays by their depths, whose readings are so far off that they are read again."""
        openings = {
            name
            for name, (read, planned, _) in self._openings.items()
            if far_off([read.front, read.back], planned[1] - planned[0]) > STRANGE
        }
        depths = {
            bay for bay, by in self._deeper.items() if not believable_depth(self._behind + by, self._behind)
        }
        return frozenset(openings | depths)

    def _uprights(self, bay: int, bays: int) -> tuple[Board, Board] | None:
        left = self.cabinet.by_name.get("left side" if bay == 1 else f"divider {bay - 1}")
        right = self.cabinet.by_name.get("right side" if bay == bays else f"divider {bay}")
        return (left, right) if left and right else None

    def behind(self, group: str) -> int | None:
        """How far back a drawer or pull-out may reach, as measured where it was; None for a group that is neither."""
        part, project = self.cabinet.part_of(group), self.cabinet.project
        if part is None:
            return None
        read = project.measured.depths.get(part.bay_name) if project else None
        if read is not None:
            return read
        closes = [board.box.low[1] for board in self.cabinet.boards if board.role in _BEHIND]
        sides = [board.box.high[1] for board in self.cabinet.boards if board.role == "side"]
        return narrowest(closes or sides) if closes or sides else None

    @property
    def nothing_moved(self) -> bool:
        """True where every board stands where it is planned."""
        return not self._shifts and not self._deeper

    def met(self, other: Board, part: PartOf | None, front: bool = False) -> Board:
        """`other` where it is met by a part of a bay; `front`, by its front."""
        if self.nothing_moved or other.group != "case" or part is None or not part.opening:
            return other
        if other.role in _BEHIND:
            return _moved(other, 1, self._deeper.get(part.bay_name, 0))
        return _moved(other, 0, self._shifts.get((part.opening, other.name), (0, 0))[front])

    def all_met(self, group: str) -> Sequence[Board]:
        """Every board where it is met by a drawer or pull-out of this name."""
        boards, part = self.cabinet.boards, self.cabinet.part_of(group)
        return boards if self.nothing_moved else [self.met(board, part) for board in boards]

    def clear_width(self, group: str) -> int | None:
        """Between the uprights of a drawer or pull-out, as measured where it was; None where it shares its row."""
        part, project = self.cabinet.part_of(group), self.cabinet.project
        if part is None or part.place or project is None:
            return None
        pair = self._uprights(part.bay, len(project.bays))
        if pair is None:
            return None
        left, right = (self.met(upright, part).box for upright in pair)
        return right.low[0] - left.high[0]

    def met_by(self, other: Board, board: Board) -> Board:
        """`other` where it is met by a board that goes into a measured opening.

        An overlay front of the next bay that still waits for its own opening will follow the divider between
        them, so it is met as far along as that was measured.
        """
        if other.role == board.role == "front" and self.waits(other, board):
            bay, next_bay = (front.part_of.bay for front in (board, other))
            if abs(bay - next_bay) != 1:
                return other
            divider = f"divider {min(bay, next_bay)}"
            return _moved(other, 0, self._shifts.get((opening_of(board), divider), (0, 0))[1])
        return self.met(other, board.part_of, board.role == "front")

    def waits(self, board: Board, beside: Board) -> bool:
        """Whether the opening of one board is not measured yet while that of the other is."""
        return opening_of(board) not in self._openings and opening_of(beside) in self._openings


def opening_of(board: Board) -> str:
    """The opening that a board goes into or is hung in front of, by its name; empty for the case."""
    return board.part_of.opening if board.part_of else ""


def _moved(board: Board, axis: int, by: int) -> Board:
    if not by:
        return board
    origin = list(board.placement.origin)
    origin[axis] += by
    return replace(board, placement=replace(board.placement, origin=tuple(origin)))
