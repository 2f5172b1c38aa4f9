"""What the splined mitre's own page shows beside what every page has: a tray, what adds up, and two that went wrong."""

from shoplib.joints.splined_mitre import gapes, mitre_face
from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.joint_page import gone_wrong
from shoplib.lessons.pair_box import BoxSizes, pair_box
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.measure import read_length
from shoplib.measure.traced import leaf

_TRAY = {"in": ("15 in", "9 in", "3 in", "0.703 in"), "mm": ("380 mm", "230 mm", "75 mm", "17.5 mm")}
HALF_A_DEGREE, CUTS = 5, 8
"""Half a degree in tenths, and how many cuts four mitred corners have."""


def tray_worked(unit: str) -> Worked:
    """Length from long point to long point, and from heel to heel, of the boards of a tray."""
    say, (wide, deep, high, thick) = Say(unit), _TRAY[unit]
    outside = leaf(read_length(wide), "outside width"), leaf(read_length(deep), "outside depth")
    side = leaf(read_length(thick), "measured thickness of the boards", "measured")
    tray = pair_box("splined mitre", "mitre", BoxSizes(*outside, read_length(high), side, side // 3, 0), {"fit": 0})
    lines, told = [], []
    for what, name, text in (("front and back", "front", wide), ("sides", "left side", deep)):
        long = tray.by_name[name].length
        told += [(f"{what}, long point to long point", long), (f"{what}, heel to heel", long - 2 * side)]
        lines += [(told[-2][0], "the outside", say.length(long)),
                  (told[-1][0], f"{text} - 2 x {thick}", say.length(long - 2 * side))]
    return Worked(f"A mitred tray, {wide} by {deep} outside", lines, why_each(told, say.style))


def degrees_worked(unit: str) -> Worked:
    """What half a degree off at each cut comes to, in one cut and at the last corner of four."""
    say, thick = Say(unit, caliper=True), _TRAY[unit][3]
    face = mitre_face(read_length(thick))
    lines = [
        ("mitre face, along its slant", f"{thick} x 1.414", say.length(face)),
        ("one cut, half a degree off, gapes at its end by", f"{say.length(face)} x tan 0.5", say.length(
            gapes(face, HALF_A_DEGREE))),
        ("eight such cuts, at the last corner", f"{say.length(face)} x tan 4", say.length(
            gapes(face, CUTS * HALF_A_DEGREE))),
    ]
    return Worked("Half a degree", lines)


def too_deep() -> Figure:
    """A slot that hardly leaves wood before the outside."""
    return gone_wrong(
        "splined mitre", "A slot that all but shows",
        "The slot lies far from the heel and goes too deep: only a skin of wood is left before the outside, and "
        "sanding or the first knock goes through it.",
        heel={"in": "5/16 in", "mm": "8 mm"}, slot={"in": "3/8 in", "mm": "10 mm"},
    )


def too_short() -> Figure:
    """A spline that is far narrower than its slots."""
    return gone_wrong(
        "splined mitre", "A spline too narrow",
        "Each slot is deeper than half the spline by far more than glue needs: half of what the spline could hold is "
        "air, and the mitre hangs on its end grain.",
        slot={"in": "3/8 in", "mm": "10 mm"}, end_gap={"in": "3/16 in", "mm": "5 mm"},
    )
