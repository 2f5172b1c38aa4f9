"""A back of solid wood: it moves with the season, and so it is held without glue."""

from shoplib.model.board import Board
from shoplib.model.solved import Cabinet


def fixed_dry(board: Board, cabinet: Cabinet) -> bool:
    """Whether a board is a back of solid wood: with its edges glued all round it splits, or parts the case.

    In grooves it floats, as every back there; else it is screwed without glue (common practice, no source).

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("wheel_wall_drawers")
    >>> [board.name for board in cabinet.boards if fixed_dry(board, cabinet)]
    []
    """
    return board.role == "back" and cabinet.sheets[board.sheet].kind == "solid"
