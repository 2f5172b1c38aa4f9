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
from shoplib.model.board import Board, Hole, PrismCut
from shoplib.model.box import Point
from shoplib.model.solved import Cabinet

Signature = tuple

_Turn = tuple[int, int, int]
"""For u, v, w: 1 where that axis comes to run the other way, else 0."""

HALF_TURNS: tuple[_Turn, ...] = ((0, 0, 0), (0, 1, 1), (1, 0, 1), (1, 1, 0))
_MIRRORED: tuple[_Turn, ...] = tuple((1 - u, v, w) for u, v, w in HALF_TURNS)


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
    turned: dict[Signature, Signature] = {}
    for board in cabinet.boards:
        # Boards of one kind mostly lie alike already, and only the first of those is turned about.
        lying = _as_it_lies(board)
        if lying not in turned:
            turned[lying] = _signature(*lying, HALF_TURNS)
        key = turned[lying]
        if key not in found:
            mirrored[key] = _signature(*lying, _MIRRORED)
        found.setdefault(key, []).append(board)
    rows = []
    for key, boards in found.items():
        other = mirrored[key]
        twin = found[other][0].name if other != key and other in found else ""
        rows.append(Kind(tuple(boards), twin))
    sheets = list(cabinet.sheets)
    return tuple(sorted(rows, key=lambda kind: (kind.stage, sheets.index(kind.sheet))))


_Mark = tuple[tuple, tuple[tuple, tuple, tuple]]
"""What was done to a board, and for u, v, w where: as the board lies, and when that axis runs the other way."""


def _as_it_lies(board: Board) -> tuple[tuple, tuple[_Mark, ...]]:
    """What two equal boards have alike whichever way they lie, and the marks of this one where they are."""
    return (board.stage, board.sheet, board.size, board.grain), (*_cut_marks(board), *_edging_marks(board))


def _signature(alike: tuple, marks: tuple[_Mark, ...], turns: Iterable[_Turn]) -> Signature:
    """What makes two boards equal, however they are turned: the least over the given turns."""
    if not marks:
        return alike
    turned = [
        sorted((what, u[along], v[across], w[through]) for what, (u, v, w) in marks)
        for along, across, through in turns
    ]
    return (*alike, tuple(min(turned)))


def turns_between(one: Board, other: Board) -> tuple[_Turn, ...]:
    """The half turns that lay a board on an equal one, cut on cut: which of its sides is which of the other's.

    None where the two are not of one kind.

    >>> from shoplib.model.placement import Placement
    >>> side = Board("side", "case", 1, "s", 90, 50, 2, Placement((2, 0, 0), ("+z", "+y", "-x")))
    >>> turns_between(side, side)
    ((0, 0, 0), (0, 1, 1), (1, 0, 1), (1, 1, 0))
    """
    alike, marks = _as_it_lies(one)
    there, lying = _as_it_lies(other)
    if alike != there:
        return ()
    wanted = _signature(there, lying, HALF_TURNS[:1])
    return tuple(turn for turn in HALF_TURNS if _signature(alike, marks, (turn,)) == wanted)


def _cut_marks(board: Board) -> Iterator[_Mark]:
    a, b, c = board.size
    for cut in board.cuts:
        box = not isinstance(cut, Hole)
        (d, e, f), (g, h, i) = (cut.low, cut.high) if box else (cut.centre, cut.centre)
        where = [((d, g), (a - g, a - d)), ((e, h), (b - h, b - e)), ((f, i), (c - i, c - f))]
        if box:
            yield ("cut", cut.kind if isinstance(cut, PrismCut) else ""), tuple(where)
            continue
        own = "uvw".index(cut.along)
        if cut.depth >= board.size[own]:
            where[own] = ((), ())  # through: the same from either face
        yield ("hole", own, cut.diameter, min(cut.depth, board.size[own])), tuple(where)


def _edging_marks(board: Board) -> Iterator[_Mark]:
    for edge, strip in board.edging:
        own, side = own_side(board, edge)
        where = tuple(((side,), (-side,)) if axis == own else ((), ()) for axis in range(3))
        yield ("edging", strip.kind, strip.thickness, own), where
