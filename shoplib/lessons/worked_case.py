"""Worked sums for the boards of a case: back, bays, divider, base, shelf, and the same case from two sheets.

Every number is read off a case that the model solved; the sums beside them say how to come by it on paper.
"""

from dataclasses import replace

from shoplib.lessons.each_size import why_each
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.live.carcass_panel import style_for
from shoplib.live.carcass_project import case_project, starting_case
from shoplib.measure import read_length, write_brief
from shoplib.model.cabinet import solve
from shoplib.model.solved import Cabinet
from shoplib.model.tracing import traced

TWO_SHEETS = {"in": ("0.703 in", "0.722 in"), "mm": ("17.5 mm", "17.9 mm")}
"""Made-up means of two sheets that were sold under the same name."""


def lesson_case(unit: str, **other: int | str) -> Cabinet:
    """The case of the lesson, solved; `other` are choices of the panel that differ from its first ones."""
    return solve(traced(case_project(replace(starting_case(unit), **other), style_for(unit))))


def back_worked(unit: str) -> Worked:
    """How wide and how high the back is, in rabbets all round."""
    case, say = lesson_case(unit), Say(unit)
    back, depth = case.by_name["back"], _depth(case, "back")
    lines, sizes = [], []
    for between, name, axis, upright in (
        ("between the sides", "back, width", 0, "left side"), ("between bottom and top", "back, height", 2, "bottom"),
    ):
        thick, whole = case.by_name[upright].thickness, case.outside.size[axis]
        inside, size = whole - 2 * thick, back.box.size[axis]
        lines += [
            (between, f"{say.length(whole)} - 2 x {say.exact(thick)}", say.exact(inside)),
            (name, f"{say.exact(inside)} + 2 x {say.length(depth)}", say.exact(size)),
        ]
        sizes += [(between, inside), (name, size)]
    return Worked(f"A back in rabbets {say.length(depth)} wide", lines, why_each(sizes, say.style))


def bays_worked(unit: str) -> Worked:
    """How wide each of three equal bays is, in the clear."""
    case, say = lesson_case(unit, bays=3), Say(unit)
    chain = next(chain for chain in case.sums if any(name == "bay 1" for name, _ in chain.terms))
    bays = [ticks for name, ticks in chain.terms if name not in chain.measured]
    uprights = [ticks for name, ticks in chain.terms if name in chain.measured]
    whole, wood, air = say.length(chain.total[1]), say.exact(sum(uprights)), say.exact(sum(bays))
    return Worked(
        f"{len(bays)} equal bays in a case {whole} wide",
        [
            ("wood of 2 sides and 2 dividers", f"{len(uprights)} x {say.exact(uprights[0])}", wood),
            ("air", f"{whole} - {wood}", air),
            ("left, middle, right bay", f"{air} / {len(bays)}", ", ".join(write_brief(b, case.style) for b in bays)),
        ],
        why_each(
            [
                ("wood", sum(uprights)), ("air", sum(bays)),
                *((f"bay {number}", bay) for number, bay in enumerate(bays, 1)),
            ], say.style,
        ),
    )


def divider_worked(unit: str) -> Worked:
    """How high a divider is over a toe space."""
    case, say = lesson_case(unit, bays=2, base="toe space"), Say(unit)
    divider, bottom, depth = case.by_name["divider 1"], case.by_name["bottom"], _depth(case, "divider 1")
    high, base = say.length(case.outside.size[2]), say.length(bottom.box.low[2])
    between, tall = case.by_name["top"].box.low[2] - bottom.box.high[2], divider.box.size[2]
    inside = say.exact(between)
    return Worked(
        f"A divider in a case {high} high with a toe space of {base}",
        [
            ("between bottom and top", f"{high} - {base} - 2 x {say.exact(bottom.thickness)}", inside),
            ("divider, height", f"{inside} + 2 x {say.length(depth)}", say.exact(tall)),
        ],
        why_each([("between bottom and top", between), ("divider, height", tall)], say.style),
    )


def base_worked(unit: str) -> Worked:
    """What each kind of base does to the sides and to the height over all."""
    say = Say(unit)
    toe, plinth, casters = (lesson_case(unit, base=base) for base in ("toe space", "plinth", "casters"))
    high, base = say.length(toe.outside.size[2]), say.length(toe.by_name["bottom"].box.low[2])
    sides, over_all = [case.by_name["left side"].length for case in (toe, plinth)], casters.envelope.size[2]
    return Worked(
        f"Height {high}, base {base}",
        [
            ("toe space: side", "runs to the floor", say.length(sides[0])),
            ("plinth: side", f"{high} - {base}", say.length(sides[1])),
            ("casters: over all", f"{high} + {base}", say.length(over_all)),
        ],
        why_each(
            [("toe space: side", sides[0]), ("plinth: side", sides[1]), ("casters: over all", over_all)], say.style
        ),
    )


def shelf_worked(unit: str) -> Worked:
    """How long and how deep a fixed shelf is, in the left one of three bays."""
    case, say = lesson_case(unit, bays=3, holds="shelves"), Say(unit)
    shelf, back, depth = case.by_name["bay 1 shelf 1"], case.by_name["back"], _depth(case, "bay 1 shelf 1")
    bay = next(ticks for chain in case.sums for name, ticks in chain.terms if name == "bay 1")
    deep = say.length(case.outside.size[1])
    return Worked(
        f"A fixed shelf in a bay {say.exact(bay)} wide",
        [
            ("shelf, length", f"{say.exact(bay)} + 2 x {say.length(depth)}", say.exact(shelf.length)),
            ("shelf, front to back", f"{deep} - {say.exact(back.thickness)} of back", say.exact(shelf.box.size[1])),
        ],
        why_each(
            [("bay 1", bay), ("shelf, length", shelf.length), ("shelf, front to back", shelf.box.size[1])], say.style
        ),
    )


def sheets_worked(unit: str) -> Worked:
    """The bottom of the same case from two sheets that were sold under the same name."""
    say, lines, sizes = Say(unit), [], []
    for text in TWO_SHEETS[unit]:
        case = lesson_case(unit, thickness=read_length(text))
        whole, bottom = case.outside.size[0], case.by_name["bottom"]
        into = say.length(2 * _depth(case, "bottom"))
        sides = 2 * case.by_name["left side"].thickness
        how = f"{say.length(whole)} - {say.exact(sides)} + {into}"
        lines.append((f"sheet that measures {text}", how, say.exact(bottom.length)))
        sizes += [("both sides", sides), ("goes into them", 2 * _depth(case, "bottom")), ("bottom", bottom.length)]
    return Worked("Two sheets sold under one name: the bottom", lines, why_each(sizes, say.style))


def _depth(case: Cabinet, board: str) -> int:
    """How deep the joints are that the board goes into."""
    return next(joint.depth for joint in case.joints if joint.enters == board)
