"""Numbers that the exercises about drawers give: openings, slides, and box stock as sold and as measured.

Ranges and steps are such that no answer is a whole inch or a number that a message shows as an example.
"""

from shoplib.lessons.exercise import Given
from shoplib.lessons.numbers import Draw


def opening(draw: Draw) -> tuple[Given, Given]:
    """`F` and `R`, an opening read at the front and at the rear: one end is wider, by what shims can take up."""
    ranges = {"inch": ("14 1/32 in", "22 in", "1/16 in"), "mm": ("380.5 mm", "560 mm", "1 mm")}
    least = draw.tape("least", "", **ranges).value
    by = draw.pick("by", "", inch=("1/8 in",), mm=("2.5 mm", "3 mm")).value
    ends = (least, least + by) if draw.count("end", "", 0, 1).value else (least + by, least)
    return (
        draw.derived("F", "opening, at the front", ends[0]),
        draw.derived("R", "opening, at the back", ends[1]),
    )


def box_outside(draw: Draw) -> Given:
    """`B`, the outside width of a box."""
    ranges = {"inch": ("15 1/4 in", "20 3/4 in", "1/2 in"), "mm": ("380 mm", "540 mm", "1 mm")}
    return draw.tape("B", "box, outside width", **ranges)


def slide_side(draw: Draw) -> Given:
    """`c`, what one slide takes beside the box, as its sheet says."""
    return draw.pick("c", "a slide takes, at each side", inch=("1/2 in", "17/32 in"), mm=("12.7 mm", "13 mm"))


def box_stock_as_sold(draw: Draw) -> Given:
    """`T`, the thickness that box stock is sold by."""
    return draw.pick("T", "box sides, sold as", inch=("1/2 in",), mm=("12 mm",))


def box_stock(draw: Draw) -> Given:
    """`s`, the mean of the caliper readings of box stock, always under its name."""
    read = draw.pick(
        "s", "", inch=tuple(f"0.{thousandths} in" for thousandths in range(462, 475)),
        mm=("11.4 mm", "11.45 mm", "11.55 mm", "11.6 mm"),
    )
    return draw.derived_reading("s", "box sides, mean of the readings", read.value)


def corner_rabbet(draw: Draw) -> Given:
    """`r`, the depth of the rabbets at the corners, less than half of the stock."""
    return draw.pick("r", "corner rabbets, depth", inch=("5/32 in", "3/16 in"), mm=("4 mm", "4.5 mm", "5 mm"))


def bottom_groove(draw: Draw) -> Given:
    """`q`, the depth of the grooves for the bottom."""
    return draw.pick("q", "grooves for the bottom, depth", inch=("3/16 in", "1/4 in"), mm=("5 mm", "6 mm"))


def bottom_slack(draw: Draw) -> Given:
    """`e`, how much narrower the bottom is than its grooves would let it be, both sides together."""
    return draw.pick("e", "slack of the bottom, in all", inch=("1/16 in",), mm=("1.5 mm", "2 mm"))
