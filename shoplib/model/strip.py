"""Pieces sawn from one board: what the saw makes dust of comes off one piece or another."""

from collections.abc import Sequence
from typing import Literal, NamedTuple

from shoplib.measure import share

SawSide = Literal["waste side", "on the line", "keep side"]
"""Where the blade runs: beside the line in the waste, on its middle, or beside it in the piece to be kept."""


class TwoPieces(NamedTuple):
    """A board after one cut, from left to right: the piece to be kept, the kerf, and the rest."""

    kept: int
    kerf: int
    rest: int


def cut_at(board: int, line: int, kerf: int, side: SawSide) -> TwoPieces:
    """Cut a board at a line `line` from its left end; what is to be kept lies left of the line. All in ticks.

    kept + kerf + rest = board, wherever the blade runs (common practice, no source). Raises ValueError where
    either piece would be nothing.

    >>> cut_at(48, 12, 2, "waste side"), cut_at(48, 12, 2, "on the line").kept, cut_at(48, 12, 2, "keep side").kept
    (TwoPieces(kept=12, kerf=2, rest=34), 11, 10)
    """
    into_kept = {"waste side": 0, "on the line": share(kerf, 2, 1)[0], "keep side": kerf}[side]
    kept = line - into_kept
    rest = board - kept - kerf
    if kept <= 0 or rest <= 0:
        raise ValueError("the blade leaves nothing of one of the two pieces.")
    return TwoPieces(kept, kerf, rest)


def left_over(board: int, pieces: Sequence[int], kerf: int) -> int:
    """What is left of a board when the pieces are cut from it one after another, each with a cut of its own.

    Raises ValueError where they are more than the board.

    >>> left_over(100, [30, 30], 2)
    36
    """
    left = board - sum(pieces) - len(pieces) * kerf
    if left < 0:
        raise ValueError("the pieces and their cuts are more than the board.")
    return left


def equal_pieces(board: int, count: int, kerf: int, step: int = 1) -> tuple[int, int]:
    """Equal pieces from a whole board: how long each is, in whole steps, and what then is left over.

    Between `count` pieces there are count - 1 cuts: piece = (board - (count - 1) x kerf) / count (common
    practice, no source). Raises ValueError where the cuts alone are more than the board, or count is under 1.

    >>> equal_pieces(100, 3, 2)
    (32, 0)
    """
    wood = board - (count - 1) * kerf
    if wood <= 0:
        raise ValueError("the cuts alone are more than the board.")
    return share(wood, count, step)


def marked_without_kerf(board: int, count: int, kerf: int) -> tuple[int, ...]:
    """What comes of a board that was shared into equal pieces as if a cut took no wood, each cut at its full length.

    All but the last are as long as marked; the last one gets what is left. Raises ValueError where nothing is.

    >>> marked_without_kerf(90, 3, 2)
    (30, 30, 26)
    """
    piece = share(board, count, 1)[0]
    return (*(piece,) * (count - 1), left_over(board, [piece] * (count - 1), kerf))
