"""Numbers that the exercises of measuring give: lengths off a tape, a board, a kerf."""

from shoplib.lessons.exercise import Given
from shoplib.lessons.numbers import Draw


def odd_length(draw: Draw) -> Given:
    """`A`, whose half cannot be had by halving a top number."""
    ranges = {"inch": ("7 1/8 in", "95 7/8 in", "1/4 in"), "mm": ("301 mm", "1999 mm", "2 mm")}
    return draw.tape("A", "rail, length", **ranges)


def two_lengths(draw: Draw) -> list[Given]:
    """`B` and `C`, whose fractions have unlike bottoms (in millimetres: one has a half, the other none)."""
    one = {"inch": ("11 1/8 in", "29 7/8 in", "1/4 in"), "mm": ("281.5 mm", "748.5 mm", "1 mm")}
    other = {"inch": ("6 1/16 in", "24 15/16 in", "1/8 in"), "mm": ("155 mm", "620 mm", "1 mm")}
    return [draw.tape("B", "first board", **one), draw.tape("C", "second board", **other)]


def board_and_cut(draw: Draw) -> list[Given]:
    """`L`, a board; `P`, the piece to be cut from it; `k`, the kerf."""
    board = {"inch": ("40 1/16 in", "70 15/16 in", "1/8 in"), "mm": ("1000.5 mm", "1799.5 mm", "1 mm")}
    piece = {"inch": ("9 1/8 in", "30 7/8 in", "1/4 in"), "mm": ("231 mm", "789 mm", "1 mm")}
    return [draw.tape("L", "board, length", **board), draw.tape("P", "first piece", **piece), kerf(draw)]


def kerf(draw: Draw) -> Given:
    """`k`, what a saw blade takes."""
    return draw.pick("k", "kerf", inch=("1/8 in",), mm=("3 mm", "3.2 mm"))
