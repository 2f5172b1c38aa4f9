"""Worked sums of joinery allowances; every number is read off a case that the model solved."""

from shoplib.lessons.each_size import why_each
from shoplib.lessons.joints_shown import READINGS, SOLD_AS, corner_cases, shown, size, two_bays
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.lists.writing import Writing
from shoplib.live.corner_panel import CORNERS
from shoplib.live.joint_panel import joint_style
from shoplib.measure import INCH, MM, read_length, to_step
from shoplib.measure.traced import leaf
from shoplib.model.allowance import allowance, cut_for

CUT = {"rabbet in the bottom": "bottom"}
"""Where it is not a side that receives: what does."""


def shelf_worked(unit: str) -> Worked:
    """One shelf in dadoes: what is cut from the sides, and how long the shelf is."""
    (case, joint), say, write = shown(unit, "dado"), Say(unit), Writing(joint_style(unit))
    found, shelf = allowance(case, joint), case.by_name["shelf"]
    left, right = (case.by_name[name].box for name in ("left side", "right side"))
    inside, side = right.low[0] - left.high[0], case.by_name["left side"].thickness
    width, gap, fit = case.outside.size[0], size("end_gap", unit), size("fit", unit)
    thick, mark = READINGS[unit][-1], INCH // 64 if unit == "in" else MM // 2
    return Worked(
        f"A shelf in a case {say.length(width)} wide",
        [
            ("sides, mean of the readings", ", ".join(READINGS[unit]), write.measured(side)),
            ("dado, width", f"{thick} + {write.measured(fit)}", write.measured(found.width)),
            ("dado, depth", "chosen", write.setting(found.depth)),
            ("wood left under it", f"{write.measured(side)} - {write.setting(found.depth)}",
             write.measured(found.wood_left)),
            ("gain at each end", f"{write.setting(found.depth)} - {write.setting(gap)}", write.setting(found.gain)),
            ("between the sides", f"{say.length(width)} - 2 x {write.measured(side)}", write.measured(inside)),
            ("shelf, left to right", f"{write.measured(inside)} + 2 x {write.setting(found.gain)}",
             write.measured(shelf.length)),
            ("on the rule", f"to the nearest {write.length(mark)}", write.length(to_step(shelf.length, mark))),
        ],
        why_each([
            ("sides", side), ("dado, width", found.width), ("dado, depth", found.depth),
            ("wood left under it", found.wood_left), ("gain at each end", found.gain), ("between the sides", inside),
            ("shelf, length", shelf.length),
        ], say.style),
    )


def widths_worked(unit: str) -> Worked:
    """One sheet and the dado cut to its name, to its mean, and to its thickest reading with a fit."""
    write, (case, joint) = Writing(joint_style(unit)), shown(unit, "dado")
    sheet, right = case.sheets[case.by_name["shelf"].sheet], allowance(case, joint).width
    thick, middle, name = sheet.thickest, sheet.thickness, leaf(read_length(SOLD_AS[unit]), "thickness by name")
    return Worked(
        f"The thickest place reads {READINGS[unit][-1]}: what it finds in the dado",
        [
            ("cut to the name", f"{SOLD_AS[unit]} - {READINGS[unit][-1]}", f"{write.measured(name - thick)} too wide"),
            ("cut to the mean", f"{READINGS[unit][-1]} - {write.measured(middle)}",
             f"{write.measured(thick - middle)} too narrow"),
            ("cut to the thickest, with the fit", f"{write.measured(right)} - {READINGS[unit][-1]}",
             f"{write.measured(right - thick)} to spare"),
        ],
        why_each([
            ("cut to the name, too wide", name - thick), ("cut to the mean, too narrow", thick - middle),
            ("dado, width", right), ("cut to the thickest, to spare", right - thick),
        ], write.style),
    )


def tongue_worked(unit: str) -> Worked:
    """A tongue in a narrower dado at the corner: both cuts, and where the dado lies."""
    (case, joint), write = shown(unit, "tongue in a narrower dado"), Writing(joint_style(unit))
    found, bottom, fit = allowance(case, joint), case.by_name["bottom"], size("fit", unit)
    thick, tongue = write.measured(bottom.thickness), write.setting(joint.tongue)
    rabbet, most = bottom.thickness - joint.tongue, READINGS[unit][-1]
    left = case.sheets[bottom.sheet].thickest - rabbet
    return Worked(
        f"A tongue {tongue} thick at the ends of the bottom",
        [
            ("dado, width", f"{tongue} + {write.measured(fit)}", write.measured(found.width)),
            ("dado, depth", "chosen", write.setting(found.depth)),
            ("near wall, from the lower end", f"{thick} - {tongue}", write.measured(found.near_wall)),
            ("rabbet in the bottom, depth by the mean", f"{thick} - {tongue}", write.measured(rabbet)),
            (f"where it reads {most}, that depth leaves", f"{most} - {write.measured(rabbet)}",
             f"{write.measured(left)}: {write.measured(left - found.width)} too thick"),
            ("tongue, length = gain", f"{write.setting(found.depth)} - {write.setting(size('end_gap', unit))}",
             write.setting(found.gain)),
        ],
        why_each([
            ("dado, width", found.width), ("dado, depth", found.depth), ("near wall", found.near_wall),
            ("rabbet, depth by the mean", rabbet), ("left where it is thickest", left),
            ("too thick", left - found.width), ("tongue, length", found.gain),
        ], write.style),
    )


def wood_worked(unit: str) -> Worked:
    """What is left of a divider under one dado and between two."""
    write, lines, sizes = Writing(joint_style(unit)), [], []
    for name in ("depth", "deep"):
        deep = size(name, unit)
        case = two_bays(unit, deep)
        divider = case.by_name["divider 1"]
        left, right = (cut_for(case.by_name[f"bay {bay} shelf 1"], divider) for bay in (1, 2))
        thick, said = write.measured(divider.thickness), write.setting(deep)
        one, two = divider.box.high[0] - left.high[0], right.low[0] - left.high[0]
        lines += [
            (f"one dado {said} deep", f"{thick} - {said}", f"{write.measured(one)} left"),
            (f"two, {said} deep", f"{thick} - 2 x {said}", f"{write.measured(two)} left"),
        ]
        sizes += [(f"left under one dado {said} deep", one), ("left between two of them", two)]
    return Worked("A divider with a shelf on each side", lines, why_each(sizes, write.style))


def corners_worked(unit: str) -> Worked:
    """What four corner joints change in the cut list of one case."""
    say, write = Say(unit), Writing(joint_style(unit))
    lines, sizes = [], []
    for corner, case in zip(CORNERS, corner_cases(unit), strict=True):
        joint = next(one for one in case.joints if one.receives == CUT.get(corner, "left side"))
        thick = write.measured(case.by_name["left side"].thickness)
        gain = allowance(case, joint).gain
        axis, what = (2, "sides") if corner in CUT else (0, "bottom and top")
        whole = say.length(case.outside.size[axis])
        sum_ = f"{whole} - 2 x {thick}" + (f" + 2 x {write.setting(gain)}" if gain else "")
        enters = case.by_name[joint.enters]
        lines.append((f"{corner}: {what}", sum_, write.length(enters.box.size[axis])))
        sizes.append((lines[-1][0], enters.box.size[axis]))
        if corner in CUT:
            full = case.by_name["bottom"].length
            lines.append((f"{corner}: bottom and top", "the full width", write.length(full)))
            sizes.append((lines[-1][0], full))
    return Worked("The same case with four corners", lines, why_each(sizes, write.style))
