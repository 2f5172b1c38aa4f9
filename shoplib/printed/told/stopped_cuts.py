"""The cautions of cuts that end within the board, wherever such cuts are called for."""

from collections.abc import Iterable

from shoplib.lists.dado_stops import ends_short
from shoplib.model.board import Board, BoxCut
from shoplib.printed.typeset.blocks import Words
from shoplib.tables.setups import cautions

SQUARED = "Square the end of a stopped cut with a chisel."
"""Where what goes in has square corners (common practice, no source)."""


def stopped_cautions(cuts: Iterable[tuple[Board, BoxCut]]) -> tuple[Words, ...]:
    """How a cut is begun and ended that stops short of an end or an edge; empty where each of these runs through.

    >>> from shoplib.model.placement import Placement
    >>> side = Board("side", "case", 1, "s", 90, 50, 2, Placement((0, 0, 0), ("+z", "+y", "-x")))
    >>> [len(stopped_cautions([(side, BoxCut("dado", (30, at, 0), (33, 50, 1), "shelf"))])) for at in (0, 4)]
    [0, 3]
    """
    if not any(ends_short(board, cut) for board, cut in cuts):
        return ()
    return tuple(Words(one.claim.say) for one in cautions().only(["stopped cut"]))
