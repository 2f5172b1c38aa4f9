"""How far each board of a case is shifted so that all of them stand apart in a drawing."""

from collections.abc import Iterable

from shoplib.model.board import Board
from shoplib.model.box import Box, Point, around

_CASE = "case"
_SPREAD = (3, 5)
"""A board is shifted by three fifths of its way from the middle: two that lie side by side stay so."""


def apart(boards: Iterable[Board]) -> dict[str, Point]:
    """The shift of each board, in ticks: away from the middle of the case, and each drawer before the case, where it
    comes apart as the case does.

    Two boards that do not overlap before do not after.

    >>> from shoplib.model.placement import Placement
    >>> side, top = (Board(name, "case", 1, "sheet", *size, Placement((0, 0, z), ("+x", "+y", "+z")))
    ...              for name, size, z in (("side", (10, 90, 90), 0), ("top", (90, 90, 10), 90)))
    >>> apart([side, top])
    {'side': (-24, 0, -3), 'top': (0, 0, 27)}
    """
    groups: dict[str, list[Board]] = {}
    for board in boards:
        groups.setdefault(board.group, []).append(board)
    whole = around([board.box for mine in groups.values() for board in mine])
    shifts: dict[str, Point] = {}
    for name, mine in groups.items():
        if name == _CASE:
            shifts |= {board.name: _away(board.box, whole) for board in mine}
    case = [board.box.moved(shifts[board.name]) for board in groups.get(_CASE, ())]
    first = around(case).low[1] if case else whole.high[1]
    for name, mine in groups.items():
        if name != _CASE:
            unit = around([board.box for board in mine])
            inside = {board.name: _away(board.box, unit) for board in mine}
            last = around([board.box.moved(inside[board.name]) for board in mine]).high[1]
            across, _, up = _away(unit, whole)
            shifts |= {
                board: (x + across, y + first - last - _part(unit.size[1]), z + up)
                for board, (x, y, z) in inside.items()
            }
    return shifts


def _away(box: Box, whole: Box) -> Point:
    return tuple(
        _part(a + b - c - d) // 2 for a, b, c, d in zip(box.low, box.high, whole.low, whole.high, strict=True)
    )


def _part(length: int) -> int:
    part, of = _SPREAD
    return length * part // of
