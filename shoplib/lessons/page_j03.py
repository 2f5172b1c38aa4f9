"""What the rabbet's own page shows beside what every page of a joint has: a back in rabbets, two that went wrong."""

from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong
from shoplib.lessons.say import Say
from shoplib.lessons.small_case import back_width, bottom_length, small_case
from shoplib.lessons.worked import Worked
from shoplib.measure import read_length
from shoplib.measure.traced import leaf

_CASE = {"in": ("30 in", "0.703 in", "1/4 in", "5/16 in"), "mm": ("760 mm", "17.5 mm", "6 mm", "8 mm")}


def case_worked(unit: str) -> Worked:
    """Bottom and back of a case whose sides are rabbeted: both gain at both ends, each by its own rabbet."""
    say, (wide, thick, across, behind) = Say(unit), _CASE[unit]
    width = leaf(read_length(wide), "case width")
    side = leaf(read_length(thick), "measured thickness of a side", "measured")
    deep, back = leaf(read_length(across), "rabbets for the bottom"), leaf(read_length(behind), "rabbets for the back")
    case = small_case(width, side, dado=deep, rabbet=back)
    between, sizes = width - 2 * side, (bottom_length(case), back_width(case))
    lines = [
        ("between the sides", f"{wide} - 2 x {thick}", say.exact(between)),
        ("bottom", f"{say.exact(between)} + 2 x {across}", say.exact(sizes[0])),
        ("back, from side to side", f"{say.exact(between)} + 2 x {behind}", say.exact(sizes[1])),
    ]
    told = zip((what for what, _, _ in lines), (between, *sizes), strict=True)
    return Worked(f"A rabbeted case {wide} wide", lines, why_each(told, say.style))


def too_wide() -> Figure:
    """A rabbet wider than its mate is thick."""
    return gone_wrong(
        "rabbet", "A rabbet too wide",
        "The fence was set to the name of the sheet. Flush below, light shows under the shoulder; pushed up to it, the "
        "end of the side stands out past the bottom.",
        fit={"in": "0.04 in", "mm": "1 mm"},
    )


def too_deep() -> Figure:
    """A rabbet that leaves hardly any tongue."""
    return gone_wrong(
        "rabbet", "A rabbet too deep",
        "Hardly more is left beside the step than the least that the bench allows. It holds while nothing knocks it; a "
        "nail through such a tongue splits it off: nail through the mate.",
        depth={"in": "9/16 in", "mm": "14 mm"},
    )
