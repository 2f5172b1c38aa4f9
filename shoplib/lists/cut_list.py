"""The cut list: equal boards together, in the order in which they are cut.

Two boards are of one kind when either could be put in the place of the other: same stage, sheet,
finished size, grain, edging and cuts, where a board may be turned end for end or over, as it may on
the bench. A mirrored pair (a left and a right side whose back edges are rabbeted) has equal sizes and
yet is two kinds: cut from one row as "2 sides", it easily becomes two left ones. Each of the two
rows names the other.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from shoplib.lists.sides import own_side
from shoplib.model.board import Board, BoxCut, Cut
from shoplib.model.box import Point
from shoplib.model.solved import Cabinet

Signature = tuple

_HALF_TURNS = ((1, 1, 1), (1, -1, -1), (-1, 1, -1), (-1, -1, 1))
_MIRRORED = tuple((-u, v, w) for u, v, w in _HALF_TURNS)


@dataclass(frozen=True)
class Kind:
    """One row of the cut list: boards that are cut alike. Lengths in ticks.

    `mirror_of` names a board of the kind that is the mirror image of this one, or is empty.
    """

    boards: tuple[Board, ...]
    mirror_of: str = ""

    @property
    def first(self) -> Board:
        """The board that speaks for all of them."""
        return self.boards[0]

    @property
    def stage(self) -> int:
        """1 case, 2 drawer boxes, 3 fronts and strips."""
        return self.first.stage

    @property
    def sheet(self) -> str:
        """Name of the sheet it is cut from."""
        return self.first.sheet

    @property
    def count(self) -> int:
        """How many are cut."""
        return len(self.boards)

    @property
    def names(self) -> tuple[str, ...]:
        """The names of the boards."""
        return tuple(board.name for board in self.boards)

    @property
    def cut(self) -> Point:
        """Length, width, thickness as they leave the saw."""
        return self.first.cut_size

    @property
    def finished(self) -> Point:
        """Length, width, thickness with the edging on."""
        return self.first.size

    @property
    def grain(self) -> str:
        """How the grain lies: `length`, or `none` where the board may turn."""
        return self.first.grain


def kinds(cabinet: Cabinet) -> tuple[Kind, ...]:
    """The rows of the cut list, by stage, then sheet, then as the cabinet names its boards."""
    found: dict[Signature, list[Board]] = {}
    mirrored: dict[Signature, Signature] = {}
    for board in cabinet.boards:
        key = _signature(board, _HALF_TURNS)
        if key not in found:
            mirrored[key] = _signature(board, _MIRRORED)
        found.setdefault(key, []).append(board)
    rows = []
    for key, boards in found.items():
        other = mirrored[key]
        twin = found[other][0].name if other != key and other in found else ""
        rows.append(Kind(tuple(boards), twin))
    sheets = list(cabinet.sheets)
    return tuple(sorted(rows, key=lambda kind: (kind.stage, sheets.index(kind.sheet))))


def _signature(board: Board, turns: Iterable[Point]) -> Signature:
    """What makes two boards equal, however they are turned: the least over the given turns."""
    edging = [(*own_side(board, edge), strip.kind, strip.thickness) for edge, strip in board.edging]
    if not board.cuts and not edging:
        return (board.stage, board.sheet, board.size, board.grain)
    turned = min(_turned(board, edging, turn) for turn in turns)
    return (board.stage, board.sheet, board.size, board.grain, turned)


def _turned(board: Board, edging: list[tuple], turn: Point) -> tuple:
    size = board.size
    cuts = tuple(sorted(_turned_cut(cut, size, turn) for cut in board.cuts))
    return cuts, tuple(sorted((own, side * turn[own], kind, thick) for own, side, kind, thick in edging))


def _turned_cut(cut: Cut, size: Point, turn: Point) -> tuple:
    if isinstance(cut, BoxCut):
        spans = list(_turned_spans(zip(cut.low, cut.high, strict=True), size, turn))
        return ("box", *spans)
    own = "uvw".index(cut.along)
    centre = list(cut.centre)
    if cut.depth >= size[own]:
        centre[own] = 0 if turn[own] > 0 else size[own]  # through: the same from either face
    points = _turned_spans(zip(centre, centre, strict=True), size, turn)
    return ("hole", own, cut.diameter, min(cut.depth, size[own]), *points)


def _turned_spans(spans: Iterable[tuple[int, int]], size: Point, turn: Point) -> Iterator[tuple[int, int]]:
    for (low, high), extent, sign in zip(spans, size, turn, strict=True):
        yield (low, high) if sign > 0 else (extent - high, extent - low)
