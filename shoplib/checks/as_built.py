"""What goes between uprights is held against them where they were measured, not where the plan has them."""

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from shoplib.measure import narrowest
from shoplib.model.as_measured import STRANGE, believable_depth, far_off, spans_as_built
from shoplib.model.board import Board
from shoplib.model.project import Opening as Reading
from shoplib.model.rows import Span
from shoplib.model.shell import shell_of
from shoplib.model.solved import Cabinet

_ROW = re.compile(r"bay (\d+) (?:drawer \d+|pull-out|strip \d+)\b", re.ASCII)
_BEHIND = {"back", "rail"}


@dataclass(frozen=True)
class AsBuilt:
    """A cabinet with what was measured on it; with nothing measured, every board stands where it is planned."""

    cabinet: Cabinet

    @cached_property
    def _openings(self) -> dict[str, tuple[Reading, Span, tuple[Board, Board]]]:
        """Each measured opening: what was read, where its planned faces are, and its uprights."""
        project, found = self.cabinet.project, {}
        for name, read in project.measured.openings.items() if project else ():
            pair = self._uprights(name, len(project.bays))
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

    def _uprights(self, name: str, bays: int) -> tuple[Board, Board] | None:
        row = _ROW.fullmatch(name)
        if row is None:
            return None
        bay = int(row[1])
        left = self.cabinet.by_name.get("left side" if bay == 1 else f"divider {bay - 1}")
        right = self.cabinet.by_name.get("right side" if bay == bays else f"divider {bay}")
        return (left, right) if left and right else None

    def behind(self, group: str) -> int | None:
        """How far back a drawer or pull-out may reach, as measured where it was; None for a group that is neither."""
        row, project = _ROW.match(group), self.cabinet.project
        if row is None:
            return None
        read = project.measured.depths.get(f"bay {row[1]}") if project else None
        if read is not None:
            return read
        closes = [board.box.low[1] for board in self.cabinet.boards if board.role in _BEHIND]
        sides = [board.box.high[1] for board in self.cabinet.boards if board.role == "side"]
        return narrowest(closes or sides) if closes or sides else None

    @property
    def nothing_moved(self) -> bool:
        """True where every board stands where it is planned."""
        return not self._shifts and not self._deeper

    def met(self, other: Board, name: str, front: bool = False) -> Board:
        """`other` where it is met by what is called `name`: a board, a drawer or a pull-out; `front`, by its front."""
        row = None if self.nothing_moved else _ROW.match(name)
        if row is None or other.group != "case":
            return other
        if other.role in _BEHIND:
            return _moved(other, 1, self._deeper.get(f"bay {row[1]}", 0))
        return _moved(other, 0, self._shifts.get((row[0], other.name), (0, 0))[front])

    def all_met(self, name: str) -> Sequence[Board]:
        """Every board where it is met by a drawer or pull-out of this name."""
        boards = self.cabinet.boards
        return boards if self.nothing_moved else [self.met(board, name) for board in boards]

    def clear_width(self, group: str) -> int | None:
        """Between the uprights of a drawer or pull-out, as measured where it was; None where it shares its row."""
        pair = self._uprights(group, len(self.cabinet.project.bays)) if self.cabinet.project else None
        if pair is None:
            return None
        left, right = (self.met(upright, group).box for upright in pair)
        return right.low[0] - left.high[0]

    def met_by(self, other: Board, board: Board) -> Board:
        """`other` where it is met by a board that goes into a measured opening.

        An overlay front of the next bay that still waits for its own opening will follow the divider between
        them, so it is met as far along as that was measured.
        """
        if other.role == board.role == "front" and self.waits(other.name, board.name):
            bay, next_bay = (int(front.name.split()[1]) for front in (board, other))
            if abs(bay - next_bay) != 1:
                return other
            divider = f"divider {min(bay, next_bay)}"
            return _moved(other, 0, self._shifts.get((row_of(board.name), divider), (0, 0))[1])
        return self.met(other, board.name, board.role == "front")

    def waits(self, name: str, beside: str) -> bool:
        """Whether one opening is not measured yet while the other is."""
        return row_of(name) not in self._openings and row_of(beside) in self._openings


def row_of(name: str) -> str:
    """The drawer, pull-out or strip that a board or group of this name belongs to; empty for the case.

    >>> row_of("bay 1 drawer 12.2 box front"), row_of("bay 2 strip 1"), row_of("bay 1 rail 1")
    ('bay 1 drawer 12', 'bay 2 strip 1', '')
    """
    row = _ROW.match(name)
    return row[0] if row else ""


def _moved(board: Board, axis: int, by: int) -> Board:
    if not by:
        return board
    origin = list(board.placement.origin)
    origin[axis] += by
    return replace(board, placement=replace(board.placement, origin=tuple(origin)))
