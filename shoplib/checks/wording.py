"""Words that the checks share: lists of names, directions, what a board is to give."""

from collections.abc import Sequence

from shoplib.model.board import Board

ALONG = ("from side to side", "from front to back", "up and down")
"""How a reader would say that something runs along world x, y, z."""


def names(items: Sequence[str], most: int = 3) -> str:
    """The names as one phrase, with the tail of a long list counted rather than named.

    >>> names(["left side"]), names(["left side", "right side"])
    ('left side', 'left side and right side')
    >>> names(["a", "b", "c", "d", "e", "f"])
    'a, b, c and 3 more'
    """
    if len(items) > most:
        return f"{', '.join(items[:most])} and {len(items) - most} more"
    if len(items) == 1:
        return items[0]
    return f"{', '.join(items[:-1])} and {items[-1]}"


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
            return f"Make {board.name} {size} {shorter(board, axis)}, or move one of them by {size}."
    return f"Move one of them by {size}."
