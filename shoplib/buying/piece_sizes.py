"""How pieces of a sheet are written: as the fence is set for them; what is merely left over is rounded down.

A part and a bought sheet have the size that the cut list and the yard give them. What is merely left over nobody has
cut to size, so no more is told of it than is surely there: whole steps.
"""

from shoplib.buying.laid import LaidSheet
from shoplib.layout.pieces import Rect
from shoplib.lists.writing import Writing
from shoplib.words.amounts import surely


class PieceSizes:
    """Writes the pieces of one sheet."""

    def __init__(self, sheet: LaidSheet, writing: Writing) -> None:
        self._writing = writing
        self.stock = Rect(0, 0, sheet.stock.length, sheet.stock.width)
        rest = sheet.held is not None and sheet.held.left_of != ""
        given = {self.stock: (not rest, not rest)}
        for cut in sheet.sawn.cuts:
            along, across = given[cut.piece]
            crosswise = cut.off.h == cut.piece.h
            given[cut.off] = (True, across) if crosswise else (along, True)
            if cut.left is not None:
                given[cut.left] = (False, across) if crosswise else (along, False)
        given |= dict.fromkeys((piece.placed.at for piece in sheet.pieces), (True, True))
        self._given = given | dict.fromkeys(sheet.sawn.offcuts, (False, False))

    def length(self, at: Rect) -> str:
        """The size of a piece along the grain of the sheet."""
        return self._side(at.w, self._given[at][0])

    def width(self, at: Rect) -> str:
        """Its size across the grain."""
        return self._side(at.h, self._given[at][1])

    def size(self, at: Rect, times: str = " x ") -> str:
        """Both."""
        return f"{self.length(at)}{times}{self.width(at)}"

    def _side(self, ticks: int, given: bool) -> str:
        return self._writing.length(ticks if given else surely(ticks, self._writing.style))
