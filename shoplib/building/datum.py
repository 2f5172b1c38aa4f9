"""From where heights in the case are measured, wherever one is told: the upper face of the bottom."""

from dataclasses import dataclass

from shoplib.model.box import around
from shoplib.model.solved import Cabinet


@dataclass(frozen=True, slots=True)
class Datum:
    """Its height in the cabinet (ticks), and what it is called."""

    height: int
    name: str


def datum(cabinet: Cabinet) -> Datum:
    """The upper face of the bottom; where a case has none, the lower ends of its boards; 0 where there are none.

    >>> from shoplib.model.board import Board
    >>> from shoplib.model.placement import Placement
    >>> place = Placement((0, 0, 40), ("+x", "+y", "+z"))
    >>> bottom = Board("bottom", "case", 1, "sheet", 90, 50, 18, place, role="bottom")
    >>> datum(Cabinet("Trial", (bottom,), {}))
    Datum(height=58, name='upper face of the bottom')
    """
    bottom = next((board for board in cabinet.boards if board.role == "bottom"), None)
    if bottom:
        return Datum(bottom.box.high[2], "upper face of the bottom")
    case = [board.box for board in cabinet.boards if board.group == "case"]
    return Datum(around(case).low[2] if case else 0, "lower end of the case")
