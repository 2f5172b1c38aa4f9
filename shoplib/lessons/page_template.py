"""What the style guide for a new lesson shows: a worked sum, a panel and a picture, each in a line or two."""

from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.each_size import why_each
from shoplib.lessons.large_type import in_type
from shoplib.lessons.say import Say
from shoplib.lessons.small_case import bay_width
from shoplib.lessons.worked import Worked
from shoplib.lessons.worked_case import lesson_case
from shoplib.live.carcass_panel import width_panel
from shoplib.live.panel import Panel


def room_panel() -> Panel:
    """A panel with one control, in the learner's unit."""
    return in_type(width_panel(unit_in_use()))


def room_worked(unit: str) -> Worked:
    """How wide the room between the sides of a case is; every number is read off the solved case."""
    case, say = lesson_case(unit), Say(unit)
    whole, side = say.length(case.outside.size[0]), say.exact(case.by_name["left side"].thickness)
    room = bay_width(case)
    line = ("room between the sides", f"{whole} - 2 x {side}", say.exact(room))
    return Worked(f"Room in a case {whole} wide", [line], why_each([(line[0], room)], say.style))


def bottom_worked_out(unit: str) -> Worked:
    """The same sum one step further: the bottom that goes into joints on both sides of that room."""
    case, say = lesson_case(unit), Say(unit)
    depth = next(joint.depth for joint in case.joints if joint.enters == "bottom")
    room, long = bay_width(case), case.by_name["bottom"].length
    line = ("bottom, left to right", f"{say.exact(room)} + 2 x {say.length(depth)}", say.exact(long))
    sizes = [("room between the sides", room), (line[0], long)]
    return Worked("And the bottom, in joints", [line], why_each(sizes, say.style))
