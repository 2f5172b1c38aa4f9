"""One straight cut through a piece, as it is made in laying out by hand."""

from dataclasses import dataclass

from shoplib.layout.hand import Way
from shoplib.layout.pieces import Rect
from shoplib.layout.sawn import SawCut


@dataclass(frozen=True, slots=True)
class Parted:
    """What a cut makes of a piece: what comes `off`, and what is `left`, None where the blade takes it.

    `cuts` is empty where the piece had that size already; `stage` and `freed` are those of the last cut of both.
    """

    off: Rect
    left: Rect | None
    cuts: tuple[SawCut, ...]
    stage: int
    freed: str


def cut_piece(piece: Rect, wanted: Rect, way: Way, kerf: int, stage: int, freed: str) -> Parted:
    """Cut a piece to the width (a rip) or the length (a crosscut) of what lies in its corner.

    `stage` and `freed` are stage and kind of the cut that made the piece: one of the other kind turns it about.

    >>> parted = cut_piece(Rect(0, 0, 960, 480), Rect(0, 0, 300, 150), "rip", 3, 0, "")
    >>> parted.off, parted.left, parted.stage
    (Rect(x=0, y=0, w=960, h=150), Rect(x=0, y=153, w=960, h=327), 1)
    """
    x, y, wide, high = piece
    if way == "rip":
        size, has = wanted.h, high
        off, left = Rect(x, y, wide, size), Rect(x, y + size + kerf, wide, high - size - kerf)
    else:
        size, has = wanted.w, wide
        off, left = Rect(x, y, size, high), Rect(x + size + kerf, y, wide - size - kerf, high)
    if size == has:
        return Parted(piece, None, (), stage, freed)
    kept = left if has - size > kerf else None
    stage += freed != way
    return Parted(off, kept, (SawCut(way, stage, piece, size, off, kept),), stage, way)
