"""What the page of dowels and splines shows beside what every page of a joint has: what is cut beside the
boards, and two that went wrong.
"""

from itertools import pairwise

from shoplib.joints.in_case import spread_out
from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong, pair_of
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.measure import read_length
from shoplib.measure.traced import leaf
from shoplib.model.board import Hole

_ROW = {"in": ("11 in", "1 in"), "mm": ("290 mm", "25 mm")}
"""A board, wide; its first and last dowel, from the edges."""

_DOWELS = 4

_SPLINE = {"in": "7/8 in", "mm": "22 mm"}
"""A spline, wide."""


def dowels_worked(unit: str) -> Worked:
    """How long a dowel is, from the holes as the bench bores them."""
    pair, say = pair_of("dowel", unit), Say(unit)
    side, bottom = (
        next(cut.depth for cut in pair.by_name[name].cuts if isinstance(cut, Hole)) for name in ("side", "bottom")
    )
    room, long = pair.values["end gap"], pair.by_name["dowel 1"].length
    lines = [
        ("hole in the side, deep", "", say.length(side)), ("hole in the bottom, deep", "", say.length(bottom)),
        ("dowel, long", f"{say.length(side)} + {say.length(bottom)} - 2 x {say.length(room)}", say.length(long)),
    ]
    return Worked("A dowel for its two holes", lines, why_each([(what, size) for (what, _, _), size in zip(
        lines, (side, bottom, long), strict=True)], say.style))


def row_worked(unit: str) -> Worked:
    """Where four dowels stand along a board's end, all from its reference edge."""
    say = Say(unit)
    wide, edge = (
        leaf(read_length(text), name)
        for text, name in zip(_ROW[unit], ("board, width", "first and last dowel, from the edges"), strict=True)
    )
    places = spread_out(wide, edge, _DOWELS)
    space = places[1] - places[0]
    run = f"({say.length(wide)} - 2 x {say.length(edge)}) / {_DOWELS - 1}"
    lines = [
        ("space", run, say.length(space)), ("first dowel", "", say.length(places[0])),
        *((f"dowel {number}", f"{say.length(before)} + {say.length(space)}", say.length(at))
          for number, (before, at) in enumerate(pairwise(places), 2)),
    ]
    sizes = [(what, size) for (what, _, _), size in zip(lines, (space, *places), strict=True)]
    title = f"{_DOWELS} dowels along a board {say.length(wide)} wide, from its reference edge"
    return Worked(title, lines, why_each(sizes, say.style))


def spline_worked(unit: str) -> Worked:
    """How wide a spline is, from the grooves as the bench cuts them."""
    pair, say = pair_of("spline", unit, spline_width=_SPLINE[unit]), Say(unit)
    left, right = (joint.depth for joint in pair.joints if joint.enters == "spline")
    room, wide = pair.values["end gap"], pair.by_name["spline"].length
    lines = [
        ("groove in the left board, deep", "", say.length(left)),
        ("groove in the right board, deep", "", say.length(right)),
        ("spline, wide", f"{say.length(left)} + {say.length(right)} - 2 x {say.length(room)}", say.length(wide)),
    ]
    return Worked("A spline for its two grooves", lines, why_each([(what, size) for (what, _, _), size in zip(
        lines, (left, right, wide), strict=True)], say.style))


def no_room() -> Figure:
    """A dowel that fills its holes to the floor."""
    return gone_wrong(
        "dowel", "No room at the floors of the holes",
        "The dowel drives the glue before it, and the glue has nowhere to go: the joint stays open, or the board "
        "splits along the dowel.",
        end_gap={"in": "0 in", "mm": "0 mm"},
    )


def thick_spline() -> Figure:
    """A spline that leaves thin walls."""
    return gone_wrong(
        "spline", "A spline too thick",
        "The walls of the grooves are the weak place now: they break out before the spline does.",
        spline={"in": "15/32 in", "mm": "12 mm"},
    )
