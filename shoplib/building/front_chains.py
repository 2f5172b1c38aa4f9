"""The chains of fronts and gaps that must close over each bay, upward and across, read off the boards.

>>> from shoplib.documents.examples import cabinet_from
>>> from shoplib.measure import MM
>>> case = cabinet_from("rolling_stand")
>>> fronts_of(case)[1][0].name
'bay 1 drawer 1 front'
>>> [(bay, chain)] = chains_upward(case)
>>> [ticks / MM for _, ticks in chain.terms], chain.total[0], chain.total[1] / MM
([3.0, 390.0, 3.0, 260.0, 3.0, 130.0, 3.0], 'over bottom and top', 792.0)
>>> [(where, chain)] = chains_across(case)
>>> where, [ticks / MM for _, ticks in chain.terms], chain.total[1] / MM
('bay 1', [3.0, 341.95, 3.0], 347.95)
"""

from collections.abc import Iterator
from itertools import pairwise

from shoplib.building.gaps import filling
from shoplib.model.board import Board
from shoplib.model.part_of import bay_name
from shoplib.model.solved import Cabinet, ClosingSum
from shoplib.model.uprights import uprights
from shoplib.words.naming import and_list

_WAYS = {2: ("bottom", "top"), 0: ("left side", "right side")}
"""By world axis: the boards of the case at its two ends."""


def fronts_of(cabinet: Cabinet) -> dict[int, list[Board]]:
    """The fronts of each bay, from the bottom up and from the left to the right."""
    found: dict[int, list[Board]] = {}
    for board in cabinet.boards:
        if board.role == "front":
            found.setdefault(board.part_of.bay, []).append(board)
    return {bay: sorted(fronts, key=lambda board: (board.box.low[2], board.box.low[0]))
            for bay, fronts in sorted(found.items())}


def chains_upward(cabinet: Cabinet) -> list[tuple[int, ClosingSum]]:
    """For each bay what lies one above another: inset from the bottom to the top of the opening, overlay from the
    underside of the bottom to the upper face of the top, or as far as the fronts reach where a board is missing.
    """
    found = []
    for bay, fronts in fronts_of(cabinet).items():
        column = _column(fronts)
        pieces = [column[0]]
        for below, above in pairwise(column):
            pieces += [*filling(cabinet, below, above), above]
        low, high = _end(cabinet, 2, 0, column[0]), _end(cabinet, 2, 1, column[-1])
        over = and_list([name for name, (_, said) in zip(_WAYS[2], (low, high), strict=True) if said]) or "the fronts"
        total = "height of the opening" if _inset(cabinet) else f"over {over}"
        found.append((bay, _chain(pieces, 2, low, high, total)))
    return found


def _column(fronts: list[Board]) -> list[Board]:
    """The leftmost front of each row of a bay, from the bottom up: what was measured of each is its own width."""
    rows: dict[str, Board] = {}
    for front in sorted(fronts, key=lambda board: board.box.low[0]):
        rows.setdefault(front.part_of.opening, front)
    return sorted(rows.values(), key=lambda board: board.box.low[2])


def chains_across(cabinet: Cabinet) -> list[tuple[str, ClosingSum]]:
    """Each lowest row of fronts from left to right: inset one chain for each bay, overlay one for those that meet."""
    rows = {bay: [front for front in fronts if front.box.low[2] == fronts[0].box.low[2]]
            for bay, fronts in fronts_of(cabinet).items()}
    if _inset(cabinet):
        return [(bay_name(bay), _in_opening(cabinet, bay, row)) for bay, row in rows.items()]
    return [(_bays(met), _before(cabinet, met, rows)) for met in _meeting(list(rows))]


def _inset(cabinet: Cabinet) -> bool:
    return cabinet.project.fronts.kind == "inset"


def _end(cabinet: Cabinet, axis: int, side: int, front: Board) -> tuple[int, str]:
    """Where a chain ends, and what the piece before the first or after the last front is called: "" for none."""
    board = cabinet.by_name.get(_WAYS[axis][side])
    own = (front.box.low, front.box.high)[side][axis]
    if board is None:
        return own, ""
    near, far = (board.box.high, board.box.low) if side == 0 else (board.box.low, board.box.high)
    covered = own < near[axis] if side == 0 else own > near[axis]
    return (far[axis], f"reveal at the {board.name}") if covered else (near[axis], f"gap at the {board.name}")


def _chain(
    fronts: list[Board], axis: int, low: tuple[int, str], high: tuple[int, str], total: str
) -> ClosingSum:
    """Piece by piece from one end to the other; a piece of nothing without a name is left out."""
    terms, reached, name = [], low[0], low[1]
    for front in fronts:
        if name:
            terms.append((name, front.box.low[axis] - reached))
        terms.append((front.name, front.box.size[axis]))
        reached, name = front.box.high[axis], "gap"
    if high[1]:
        terms.append((high[1], high[0] - reached))
    return ClosingSum(tuple(terms), (total, high[0] - low[0]))


def _in_opening(cabinet: Cabinet, bay: int, row: list[Board]) -> ClosingSum:
    """Between two uprights: the gaps as the plan has them, against the opening as measured where it was."""
    size = {(gap.between, gap.along): gap.size for gap in cabinet.gaps}
    left, right = uprights(cabinet)[bay - 1:bay + 1]
    read = cabinet.project.measured.latest.get(row[0].part_of.opening)
    names = (left.name, *(front.name for front in row), right.name)
    terms = []
    for number, front in enumerate(row):
        terms.append((f"gap at the {left.name}" if number == 0 else "gap", size[(names[number], front.name), "x"]))
        terms.append((front.name, front.box.size[0]))
    terms.append((f"gap at the {right.name}", size[(row[-1].name, right.name), "x"]))
    opening = read.front if read else right.box.low[0] - left.box.high[0]
    return ClosingSum(tuple(terms), (f"opening of {bay_name(bay)}", opening))


def _meeting(bays: list[int]) -> Iterator[list[int]]:
    """Neighbours together: fronts of bays that do not lie side by side make no chain."""
    run: list[int] = []
    for bay in bays:
        if run and bay != run[-1] + 1:
            yield run
            run = []
        run.append(bay)
    if run:
        yield run


def _bays(met: list[int]) -> str:
    if len(met) == 1:
        return bay_name(met[0])
    return f"bays {met[0]} {'and' if len(met) == 2 else 'to'} {met[-1]}"


def _before(cabinet: Cabinet, met: list[int], rows: dict[int, list[Board]]) -> ClosingSum:
    """Before the edges of the case, from the outside of one upright to that of another."""
    fronts = [front for bay in met for front in rows[bay]]
    standing = uprights(cabinet)
    left, right = standing[met[0] - 1], standing[met[-1]]
    low, high = (left.box.low[0], f"reveal at the {left.name}"), (right.box.high[0], f"reveal at the {right.name}")
    return _chain(fronts, 0, low, high, f"over {left.name} and {right.name}")
