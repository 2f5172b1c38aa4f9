"""What the exercises about frames give: stiles, rails, and boards that were planed."""

from shoplib.lessons.exercise import Given
from shoplib.lessons.numbers import Draw


def stile_width(draw: Draw) -> Given:
    """`w`, how wide the stiles are: never as wide as the rails."""
    return draw.tape("w", "stiles, width", inch=("1 3/4 in", "2 1/4 in", "1/8 in"), mm=("44 mm", "56 mm", "2 mm"))


def rail_width(draw: Draw) -> Given:
    """`r`, how wide the rails are."""
    return draw.tape("r", "rails, width", inch=("2 1/2 in", "3 in", "1/8 in"), mm=("62 mm", "74 mm", "2 mm"))


def frame_width(draw: Draw) -> Given:
    """`W`, the outside width of a frame."""
    return draw.tape("W", "frame, outside width", inch=("20 1/16 in", "32 1/16 in", "1/4 in"),
                     mm=("500 mm", "800 mm", "5 mm"))


def frame_height(draw: Draw) -> Given:
    """`H`, the outside height of a frame."""
    return draw.tape("H", "frame, outside height", inch=("24 in", "40 in", "1/2 in"), mm=("600 mm", "1000 mm", "10 mm"))


def tenon_length(draw: Draw) -> Given:
    """`L`, how long the tenons are: some wood of the narrowest stile is left behind their mortises."""
    return draw.pick("L", "tenons, length", inch=("1 1/8 in", "1 1/4 in", "1 3/8 in"), mm=("28 mm", "30 mm", "34 mm"))


def mortise_room(draw: Draw) -> Given:
    """`e`, how much deeper a mortise is than its tenon is long."""
    return draw.pick("e", "mortises, deeper than that by", inch=("1/16 in", "3/32 in"), mm=("1.5 mm", "2 mm"))


def planed_board(draw: Draw) -> list[Given]:
    """`T` and `t`: a planed board by its name and by its measure."""
    sold = draw.pick("T", "boards, sold as", inch=("3/4 in",), mm=("19 mm",))
    read = draw.reading("t", "boards, as measured", inch=("0.730 in", "0.742 in", "0.001 in"),
                        mm=("18.2 mm", "18.75 mm", "0.05 mm"))
    return [sold, read]
