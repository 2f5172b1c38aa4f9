"""What the saw does to a laid-out sheet: straight cuts right through the piece that lies on it, and what is left."""

from dataclasses import dataclass
from typing import Literal

from shoplib.layout.pieces import Rect


@dataclass(frozen=True, slots=True)
class SawCut:
    """One cut, edge to edge through `piece`.

    A `rip` runs along the grain of the sheet, a `crosscut` across it, a `trim` takes off a bought edge. `fence` is
    what the saw is set to: the size of what comes `off` between fence and blade. `left` is what is kept for later
    cuts; None where the blade takes the rest. `stage` is 0 for trimming, then goes up by one whenever the pieces are
    turned about. `finishes` are the places (counted in `Laid.placed`) of the parts that this cut brings to size.
    """

    kind: Literal["trim", "rip", "crosscut"]
    stage: int
    piece: Rect
    fence: int
    off: Rect
    left: Rect | None
    finishes: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Sawn:
    """One sheet, cut: areas in square ticks. Parts, `kerf`, `trim` and offcuts together are the sheet, exactly.

    `short` counts the cuts along the grain of pieces too short for the fence, `skims` those that only skim an edge,
    `left_to_size` the parts whose size is only what a cut leaves (`set_by`).
    """

    cuts: tuple[SawCut, ...]
    offcuts: tuple[Rect, ...]
    kerf: int
    trim: int
    short: int = 0
    skims: int = 0
    left_to_size: int = 0
