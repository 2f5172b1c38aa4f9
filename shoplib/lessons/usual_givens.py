"""Numbers that many exercises give: a case width, a sheet as sold and as measured.

Widths begin where no answer is ever an example that a message shows.
"""

from dataclasses import replace

from shoplib.lessons.exercise import Given
from shoplib.lessons.numbers import Draw


def case_width(draw: Draw) -> Given:
    """`W`, the outside width of a case."""
    ranges = {"inch": ("28 in", "44 in", "1/4 in"), "mm": ("700 mm", "1100 mm", "5 mm")}
    return draw.tape("W", "case, outside width", **ranges)


def sheet_as_sold(draw: Draw) -> Given:
    """`T`, the thickness that a sheet is sold by.

    PS 1 would call a sheet of 0.695 to 0.712 in a 23/32 in; but much imported sheet of that thickness is sold as 3/4 in
    (common practice, no source), and 23/32 is so near to it that no sum could tell which of the two was used.
    """
    what = "sheet, sold as (imported, it often measures about 0.70 in)" if draw.unit == "in" else "sheet, sold as"
    return draw.pick("T", what, inch=("3/4 in",), mm=("18 mm",))


def sheet_as_measured(draw: Draw) -> Given:
    """`t`, the mean of the caliper readings of such a sheet, always under its name."""
    ranges = {"inch": ("0.695 in", "0.712 in", "0.001 in"), "mm": ("17.3 mm", "17.55 mm", "0.05 mm")}
    return draw.reading("t", "sheet, mean of the readings", **ranges)


def side_by_the_rule(draw: Draw) -> Given:
    """`t` again, but on a step of the rule, for sums without decimals; kept off the list of facts."""
    side = draw.pick("t", "", inch=("45/64 in", "23/32 in"), mm=("17.4 mm", "17.5 mm", "17.6 mm"))
    return replace(side, called="measured thickness of a side")


def dado_depth(draw: Draw) -> Given:
    """`d`, which leaves at least half of the thinnest side.

    None is 5 mm: with that, answers are round numbers, such as messages show.
    """
    return draw.pick("d", "dadoes, depth", inch=("3/16 in", "1/4 in", "5/16 in"), mm=("6 mm", "7 mm", "8 mm"))


def rabbet_width(draw: Draw) -> Given:
    """`b`, the width of the rabbets for a back, which leave at least half of the thinnest side beside them."""
    sizes = {"inch": ("1/4 in", "9/32 in", "5/16 in"), "mm": ("6 mm", "7 mm", "8 mm")}
    return draw.pick("b", "rabbets, into each side", **sizes)
