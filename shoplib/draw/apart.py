"""How far each board of a case is shifted so that all of them stand apart in a drawing."""

from collections.abc import Iterable, Mapping

from shoplib.model.board import Board
from shoplib.model.box import Box, Point, around

_CASE = "case"
_ON_A_SIDE = ("runner", "kicker")
"""Boards of the case that lie flat against an upright, each for one drawer."""
_SPREAD = (3, 5)
"""A board is shifted by three fifths of its way from the middle: two that lie side by side stay so."""
_OVER = (1, 1)
"""Drawers that come apart rise farther from one another, or the boards of one would hide those of another."""
_FRONT = (2, 5)
"""A front lies flat against its box: it goes so much of the depth farther, or it would hide what it lies on."""
_INWARD = (2, 5)
"""What lies flat against an upright goes so much of its way to the middle of its drawer back."""


def apart(boards: Iterable[Board], whole_drawers: bool = False, times: int = 1) -> dict[str, Point]:
    """The shift of each board, in ticks: away from the middle of the case, and each drawer before the case, where it
    comes apart as the case does, or with `whole_drawers` stays together.

    Two boards that do not overlap before do not after. `times` makes every shift so many times as long.

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
    units = {name: around([board.box for board in mine]) for name, mine in groups.items() if name != _CASE}
    shifts = {board.name: _of_case(board, whole, units) for board in groups.get(_CASE, ())}
    case = [board.box.moved(shifts[board.name]) for board in groups.get(_CASE, ())]
    first = around(case).low[1] if case else whole.high[1]
    for name, unit in units.items():
        inside = {board.name: (0, 0, 0) if whole_drawers else _inside(board, unit) for board in groups[name]}
        last = around([board.box.moved(inside[board.name]) for board in groups[name]]).high[1]
        across, up = _away(unit, whole)[0], _away(unit, whole, _SPREAD if whole_drawers else _OVER)[2]
        shifts |= {
            board: (x + across, y + first - last - _part(unit.size[1]), z + up)
            for board, (x, y, z) in inside.items()
        }
    return {board: (x * times, y * times, z * times) for board, (x, y, z) in shifts.items()}


def _of_case(board: Board, whole: Box, units: Mapping[str, Box]) -> Point:
    """The shift of a board of the case."""
    x, y, z = _away(board.box, whole)
    if board.role in _ON_A_SIDE:
        for name, unit in units.items():
            if board.part_of and board.part_of.name == name:
                x = _away(unit, whole)[0] - _away(board.box, unit, _INWARD)[0]
    return x, y, z


def _inside(board: Board, unit: Box) -> Point:
    """The shift of a board of a drawer within the drawer."""
    x, y, z = _away(board.box, unit)
    return x, y - (_part(unit.size[1], _FRONT) if board.role == "front" else 0), z


def _away(box: Box, whole: Box, share: tuple[int, int] = _SPREAD) -> Point:
    return tuple(
        _part(a + b - c - d, share) // 2 for a, b, c, d in zip(box.low, box.high, whole.low, whole.high, strict=True)
    )


def _part(length: int, share: tuple[int, int] = _SPREAD) -> int:
    part, of = share
    return length * part // of
