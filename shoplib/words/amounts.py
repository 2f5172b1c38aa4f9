"""Amounts, directions, and what a board is to give, in words."""

from collections.abc import Sequence

from shoplib.measure import INCH, MM, Style, to_step, write_brief
from shoplib.model.board import Board

ALONG = ("from side to side", "from front to back", "up and down")
"""How a reader would say that something runs along world x, y, z."""


def how_much(ticks: int, style: Style) -> str:
    """By how much something is off: the nearest step, and a decimal under one step.

    The exact amount stays in `Finding.amount`.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> how_much(2 * INCH + 508, INCH_STYLE), how_much(31 * INCH // 2000, INCH_STYLE)
    ('2 in', '0.0155 in')
    """
    return write_brief(ticks if abs(ticks) < style.step else to_step(ticks, style.step), style)


def setting(ticks: int, style: Style) -> str:
    """What a tool is set to, or what a cut leaves: a whole number of steps as such, anything else a decimal.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> setting(5 * INCH // 16, INCH_STYLE), setting(703 * INCH // 2000, INCH_STYLE)
    ('5/16 in', '0.3515 in')
    """
    return write_brief(ticks, style, decimal=ticks % style.step != 0)


_FINEST = {"in": INCH // 2000, "mm": MM // 100}
"""What a decimal of an amount is rounded up to: 0.0005 in and 0.01 mm, as calipers show it."""


def true_amount(ticks: int, style: Style) -> str:
    """What must come off or on, never less than it is: a mark where it is one, anything else a decimal, rounded up.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> true_amount(3 * INCH // 32, INCH_STYLE), true_amount(INCH // 128, INCH_STYLE)
    ('3/32 in', '0.008 in')
    """
    whole = ticks % style.step == 0
    return write_brief(ticks if whole else to_step(ticks, _FINEST[style.unit], "up"), style, decimal=not whole)


def at_least(ticks: int, style: Style) -> str:
    """By how much a whole case or box must be made otherwise, so that it is enough: up to a whole step.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> at_least(2 * INCH + 508, INCH_STYLE), at_least(INCH // 1000, INCH_STYLE)
    ('2 1/64 in', '1/64 in')
    """
    return write_brief(to_step(ticks, style.step, "up"), style)


def surely(ticks: int, style: Style) -> int:
    """What is surely there of a piece that nobody cuts to size: down to a whole step; under a step, what it is.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> surely(2 * INCH + 508, INCH_STYLE) == 2 * INCH, surely(508, INCH_STYLE)
    (True, 508)
    """
    return to_step(ticks, style.step, "down") or ticks


def longer(board: Board, axis: int) -> str:
    """The word for more of this board along a world axis: longer, wider or thicker."""
    return ("longer", "wider", "thicker")[board.placement.own_axis(axis)]


def shorter(board: Board, axis: int) -> str:
    """The word for less of this board along a world axis: shorter, narrower or thinner."""
    return ("shorter", "narrower", "thinner")[board.placement.own_axis(axis)]


def give_way(boards: Sequence[Board], axis: int, size: str) -> str:
    """What ends a clash of two boards along a world axis: move one, or shorten one that is not thin there."""
    for board in boards:
        if board.placement.own_axis(axis) != 2:
            return f"Make {board.name} {shorter(board, axis)} by {size}, or move one of them by {size}."
    return f"Move one of them by {size}."
