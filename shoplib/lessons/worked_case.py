"""Worked sums for the boards of a case: back, bays, divider, base, shelf, and the same case from two sheets.

Every number is read off a case that the model solved; the sums beside them say how to come by it on paper.
"""

from dataclasses import replace

from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.live.carcass_panel import style_for
from shoplib.live.carcass_project import case_project, starting_case
from shoplib.measure import read_length, write_brief
from shoplib.model.cabinet import solve
from shoplib.model.solved import Cabinet

TWO_SHEETS = {"in": ("0.703 in", "0.722 in"), "mm": ("17.5 mm", "17.9 mm")}
"""Made-up means of two sheets that were sold under the same name."""


def lesson_case(unit: str, **other: int | str) -> Cabinet:
    """The case of the lesson, solved; `other` are choices of the panel that differ from its first ones."""
    return solve(case_project(replace(starting_case(unit), **other), style_for(unit)))


def back_worked(unit: str) -> Worked:
    """How wide and how high the back is, in rabbets all round."""
    case, say = lesson_case(unit), Say(unit)
    back, depth = case.by_name["back"], _depth(case, "back")
    lines = []
    for between, name, axis, upright in (
        ("between the sides", "back, width", 0, "left side"), ("between bottom and top", "back, height", 2, "bottom"),
    ):
        thick, whole = case.by_name[upright].thickness, case.outside.size[axis]
        inside = say.exact(whole - 2 * thick)
        lines += [
            (between, f"{say.length(whole)} - 2 x {say.exact(thick)}", inside),
            (name, f"{inside} + 2 x {say.length(depth)}", say.exact(back.box.size[axis])),
        ]
    return Worked(f"A back in rabbets {say.length(depth)} wide", lines)


def bays_worked(unit: str) -> Worked:
    """How wide each of three equal bays is, in the clear."""
    case, say = lesson_case(unit, bays=3), Say(unit)
    chain = next(chain for chain in case.sums if any(name == "bay 1" for name, _ in chain.terms))
    bays = [ticks for name, ticks in chain.terms if name.startswith("bay ")]
    uprights = [ticks for name, ticks in chain.terms if not name.startswith("bay ")]
    whole, wood, air = say.length(chain.total[1]), say.exact(sum(uprights)), say.exact(sum(bays))
    return Worked(
        f"{len(bays)} equal bays in a case {whole} wide",
        [
            ("wood of 2 sides and 2 dividers", f"{len(uprights)} x {say.exact(uprights[0])}", wood),
            ("air", f"{whole} - {wood}", air),
            ("left, middle, right bay", f"{air} / {len(bays)}", ", ".join(write_brief(b, case.style) for b in bays)),
        ],
    )


def divider_worked(unit: str) -> Worked:
    """How high a divider is over a toe space."""
    case, say = lesson_case(unit, bays=2, base="toe space"), Say(unit)
    divider, bottom, depth = case.by_name["divider 1"], case.by_name["bottom"], _depth(case, "divider 1")
    high, base = say.length(case.outside.size[2]), say.length(bottom.box.low[2])
    inside = say.exact(case.by_name["top"].box.low[2] - bottom.box.high[2])
    return Worked(
        f"A divider in a case {high} high with a toe space of {base}",
        [
            ("between bottom and top", f"{high} - {base} - 2 x {say.exact(bottom.thickness)}", inside),
            ("divider, height", f"{inside} + 2 x {say.length(depth)}", say.exact(divider.box.size[2])),
        ],
    )


def base_worked(unit: str) -> Worked:
    """What each kind of base does to the sides and to the height over all."""
    say = Say(unit)
    toe, plinth, casters = (lesson_case(unit, base=base) for base in ("toe space", "plinth", "casters"))
    high, base = say.length(toe.outside.size[2]), say.length(toe.by_name["bottom"].box.low[2])
    return Worked(
        f"Height {high}, base {base}",
        [
            ("toe space: side", "runs to the floor", say.length(toe.by_name["left side"].length)),
            ("plinth: side", f"{high} - {base}", say.length(plinth.by_name["left side"].length)),
            ("casters: over all", f"{high} + {base}", say.length(casters.envelope.size[2])),
        ],
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
    )


def sheets_worked(unit: str) -> Worked:
    """The bottom of the same case from two sheets that were sold under the same name."""
    say, lines = Say(unit), []
    for text in TWO_SHEETS[unit]:
        case = lesson_case(unit, thickness=read_length(text))
        whole, bottom = case.outside.size[0], case.by_name["bottom"]
        into = say.length(2 * _depth(case, "bottom"))
        sides = say.exact(2 * case.by_name["left side"].thickness)
        how = f"{say.length(whole)} - {sides} + {into}"
        lines.append((f"sheet that measures {text}", how, say.exact(bottom.length)))
    return Worked("Two sheets sold under one name: the bottom", lines)


def _depth(case: Cabinet, board: str) -> int:
    """How deep the joints are that the board goes into."""
    return next(joint.depth for joint in case.joints if joint.enters == board)
