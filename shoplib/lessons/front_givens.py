"""Numbers that the exercises about fronts give: openings, gaps, what a front covers.

Ranges and steps are such that no answer is a whole inch or a number that a message shows as an example.
"""

from shoplib.lessons.exercise import Given
from shoplib.lessons.numbers import Draw


def opening_height(draw: Draw) -> Given:
    """`O`, the height of an opening for fronts one above another."""
    ranges = {"inch": ("20 1/16 in", "30 in", "1/16 in"), "mm": ("500.5 mm", "760 mm", "1 mm")}
    return draw.tape("O", "opening, height", **ranges)


def opening_width(draw: Draw) -> Given:
    """`W`, the width of an opening."""
    ranges = {"inch": ("14 1/32 in", "22 in", "1/16 in"), "mm": ("360.5 mm", "560 mm", "1 mm")}
    return draw.tape("W", "opening, width", **ranges)


def wide_gap(draw: Draw) -> Given:
    """`g`, a gap for solid fronts, wide enough that one gap shared among fronts is still seen."""
    return draw.pick("g", "gap, everywhere", inch=("3/16 in", "1/4 in"), mm=("5 mm", "6 mm"))


def usual_gap(draw: Draw) -> Given:
    """`g`, a gap as it is usual between fronts."""
    return draw.pick("g", "gap between the fronts", inch=("3/32 in", "1/8 in"), mm=("2 mm", "2.5 mm", "3 mm"))


def covered(draw: Draw) -> Given:
    """`a`, what an overlay front covers of a side."""
    sizes = {"inch": ("3/8 in", "1/2 in", "5/8 in"), "mm": ("10 mm", "12 mm", "15 mm")}
    return draw.pick("a", "overlay, at each side", **sizes)


def divider(draw: Draw) -> Given:
    """`t`, the mean of the caliper readings of a divider."""
    ranges = {"inch": ("0.695 in", "0.745 in", "0.001 in"), "mm": ("17.3 mm", "18.5 mm", "0.05 mm")}
    return draw.reading("t", "divider, mean of the readings", **ranges)
