"""Numbers that the exercises about hardware give: fronts, slides, pulls, and what screws go through."""

from shoplib.lessons.exercise import Given
from shoplib.lessons.numbers import Draw
from shoplib.lessons.small_hardware import lower_edges, small_hardware


def front_height(draw: Draw) -> Given:
    """`f`, the height of each of several equal fronts, such that no spacer comes to a whole inch or millimetre.

    Slides are 1 3/4 in or 45 mm high and lie in the middle of it.
    """
    ranges = {"inch": ("5 1/16 in", "12 15/16 in", "1/8 in"), "mm": ("140 mm", "300 mm", "2 mm")}
    return draw.tape("f", "fronts, height of each", **ranges)


def front_gap(draw: Draw) -> Given:
    """`g`, the gap around the fronts."""
    return draw.pick("g", "gap, everywhere", inch=("1/8 in", "3/16 in", "1/4 in"), mm=("3 mm", "4 mm", "5 mm"))


def slide_height(draw: Draw) -> Given:
    """`h`, the height of a slide: one of those of the table."""
    return draw.pick("h", "slides, height", inch=("1 3/4 in",), mm=("45 mm",))


def case_depth(draw: Draw) -> Given:
    """`D`, the depth of a case, which stands in no sum of a setback."""
    return draw.tape("D", "case, depth", inch=("16 in", "24 in", "1/4 in"), mm=("400 mm", "600 mm", "5 mm"))


def clearance(draw: Draw) -> Given:
    """`c`, how far behind the front the sheet of a slide wants it."""
    sizes = {"inch": ("3/32 in", "1/8 in", "5/32 in", "3/16 in"), "mm": ("2 mm", "2.5 mm", "3 mm")}
    return draw.pick("c", "slide behind the front, by its sheet", **sizes)


def front_as_measured(draw: Draw) -> Given:
    """`t`, the mean of the caliper readings of fronts, so far under the name of their sheet that it matters.

    In inches a sheet that PS 1 would call 23/32 in (0.688 to 0.750 in) and that is often sold as 3/4 in (common
    practice, no source); in millimetres one of 18 mm at the thin end.
    """
    ranges = {"inch": ("0.690 in", "0.700 in", "0.001 in"), "mm": ("17.1 mm", "17.38 mm", "0.01 mm")}
    return draw.reading("t", "fronts, mean of the readings", **ranges)


def front_width(draw: Draw) -> Given:
    """`L`, the width of a front, such that no hole comes to a whole inch or millimetre."""
    return draw.tape("L", "front, width", inch=("14 1/8 in", "24 1/8 in", "1/4 in"), mm=("361 mm", "611 mm", "2 mm"))


def pitch(draw: Draw) -> Given:
    """`p`, from hole to hole of a pull."""
    return draw.pick("p", "pull, from hole to hole", inch=("3 in", "3 3/4 in", "5 in"), mm=("96 mm", "128 mm"))


def lowest_spacer(values: dict[str, int], draw: Draw) -> Given:
    """`s`, the spacer under the lowest slide of inset fronts `f` high with the gap `g`, read off the solved case."""
    case = small_hardware(kind="inset", count=1, front_height=values["f"], gap=values["g"], slide_height=values["h"])
    return draw.derived("s", "lower edge of the lowest slide, above the bottom", lower_edges(case)[0].spacer)
