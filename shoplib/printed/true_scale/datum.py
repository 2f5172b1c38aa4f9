"""From where heights are measured on templates and story stick: the upper face of the bottom, as the spacers are."""

from dataclasses import dataclass

from shoplib.model.box import around
from shoplib.model.solved import Cabinet


@dataclass(frozen=True, slots=True)
class Datum:
    """Its height in the cabinet (ticks), and what it is called."""

    height: int
    name: str


def datum(cabinet: Cabinet) -> Datum:
    """The upper face of the bottom; where a case has none, the lower ends of its boards."""
    bottoms = [board.box.high[2] for board in cabinet.boards if board.role == "bottom"]
    if bottoms:
        return Datum(max(bottoms), "upper face of the bottom")
    return Datum(around([b.box for b in cabinet.boards if b.group == "case"]).low[2], "lower end of the case")
