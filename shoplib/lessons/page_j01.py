"""What the screwed butt's own page shows beside what every page of a joint has: lengths, rows, cleats, two faults."""

from shoplib.joints import joint
from shoplib.joints.bench_pair import stock_of
from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.measure import INCH, read_length
from shoplib.measure.traced import leaf
from shoplib.model.screw_room import room_for_screw

_CASE = {"in": ("30 in", "0.703 in"), "mm": ("760 mm", "17.5 mm")}
_ROW = {"in": ("12 in", "1 1/2 in"), "mm": ("300 mm", "40 mm")}
_CLEAT = {"in": ("0.699 in", "0.701 in", "1/8 in"), "mm": ("17.3 mm", "17.4 mm", "3 mm")}


def length_worked(unit: str) -> Worked:
    """A bottom butted between the sides of a case."""
    say, (wide, thick) = Say(unit), _CASE[unit]
    side = leaf(read_length(thick), "measured thickness of a side", "measured")
    gain = joint("butt").allowance(stock_of(side))
    long = leaf(read_length(wide), "case width") - 2 * side + 2 * gain
    lines = [
        ("gain at each end", "butted", say.length(gain)),
        ("bottom, left to right", f"{wide} - 2 x {thick}", say.exact(long)),
    ]
    return Worked(f"A bottom butted into a case {wide} wide", lines, why_each([(lines[1][0], long)], say.style))


def row_worked(unit: str, count: int) -> Worked:
    """So many screws along the joint, from edge to edge of the boards."""
    say, (wide, near) = Say(unit), _ROW[unit]
    width = leaf(read_length(wide), "width of the bottom")
    edge = leaf(read_length(near), "first and last from the edge")
    pair = joint("butt").build(stock_of(3 * INCH // 4, width=width), {"count": count, "edge": edge})
    at = [cut.centre[1] for cut in pair.by_name["side"].cuts]
    between, each = width - 2 * edge, at[1] - at[0]
    lines = [
        ("from the first to the last", f"{wide} - 2 x {near}", say.length(between)),
        ("from screw to screw", f"{say.length(between)} / {count - 1}", say.length(each)),
        *((f"screw {number} from the front edge", "", say.length(place)) for number, place in enumerate(at, 1)),
    ]
    sizes = [(lines[0][0], between), (lines[1][0], each), *zip((line[0] for line in lines[2:]), at, strict=True)]
    return Worked(f"{count} screws in a bottom {wide} wide", lines, why_each(sizes, say.style))


def cleat_worked(unit: str) -> Worked:
    """The longest screw through a cleat, face to face with a shelf."""
    say, (cleat, shelf, spare) = Say(unit), _CLEAT[unit]
    first = leaf(read_length(cleat), "thinnest reading of the cleat", "measured")
    second = leaf(read_length(shelf), "thinnest reading of the shelf", "measured")
    longest = room_for_screw(first, second, leaf(read_length(spare), "wood to stay over the point"))
    lines = [("longest screw", f"{cleat} + {shelf} - {spare}", say.exact(longest))]
    return Worked("A cleat screwed flat under a shelf", lines, why_each([(lines[0][0], longest)], say.style))


def thread_grips() -> Figure:
    """A clearance hole that is as narrow as the pilot hole."""
    return gone_wrong(
        "butt", "A clearance hole as narrow as the pilot hole",
        "The thread bites in both boards, so the head cannot draw them together: it is tight, and light still shows.",
        clearance_hole={"in": "5/64 in", "mm": "2 mm"},
    )


def too_short() -> Figure:
    """A screw that hardly reaches the second board."""
    return gone_wrong(
        "butt", "A screw too short",
        "Hardly any thread holds in the bottom, and that in its end grain: the first knock pulls it out.",
        screw={"in": "1 in", "mm": "25 mm"},
    )
