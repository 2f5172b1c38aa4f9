"""What the dovetail's own page shows beside what every page of a joint has: a whole box, and two that went wrong."""

from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong
from shoplib.lessons.pair_box import BoxSizes, pair_box
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.measure import read_length
from shoplib.measure.traced import leaf

_BOX = {"in": ("12 in", "7 1/2 in", "4 in", "0.703 in"), "mm": ("300 mm", "190 mm", "100 mm", "17.5 mm")}


def box_worked(unit: str) -> Worked:
    """Front and sides of a box from its inside: each board reaches from outside to outside."""
    say, (wide, deep, high, thick) = Say(unit), _BOX[unit]
    inside = leaf(read_length(wide), "inside width"), leaf(read_length(deep), "inside depth")
    side = leaf(read_length(thick), "measured thickness of the boards", "measured")
    outside = [one + 2 * side for one in inside]
    box = pair_box("dovetail", "dovetail", BoxSizes(*outside, read_length(high), side, side // 3, 0), {"fit": 0})
    sizes = [box.by_name[name].length for name in ("front", "left side")]
    lines = [
        (what, f"{text} + 2 x {thick}", say.length(size))
        for what, text, size in zip(("front and back, outside to outside", "sides, outside to outside"), (wide, deep),
                                    sizes, strict=True)
    ]
    told = zip((what for what, _, _ in lines), sizes, strict=True)
    return Worked(f"A dovetailed box, {wide} by {deep} inside", lines, why_each(told, say.style))


def too_steep() -> Figure:
    """Tails with a slope of 1 in 4."""
    return gone_wrong(
        "dovetail", "Tails too steep",
        "At 1 in 4 the corners of the tails are short grain: they crumble when the joint is driven home. One old book "
        "has that slope; the bench lets you try it.",
        slope={"in": "1 in 4", "mm": "1 in 4"},
    )


def slack() -> Figure:
    """Tails that were sawn on the wrong side of the line."""
    return gone_wrong(
        "dovetail", "Slack tails",
        "The saw ran on the wrong side of the line, and its kerf is missing from the tails. Gaps stand beside every "
        "pin; glue fills no such gap.",
        fit={"in": "1/16 in", "mm": "1.5 mm"},
    )
