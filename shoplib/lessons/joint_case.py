"""The plain case with joints that the exercises of lesson 03 ask about, solved by the model."""

from typing import Literal

from shoplib.measure import INCH, INCH_STYLE
from shoplib.model.allowance import Allowance, allowance, cut_for
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, JointChoice, Project, Shelves, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet


def joint_case(
    readings: tuple[int, ...], *, width: int = 32 * INCH, height: int = 40 * INCH, deep: int = 12 * INCH,
    dado: int = 0, fit: int = 0, at: int = 9 * INCH, bays: int = 1,
    tongue: int = 0, tongue_dado: int = 0, end_gap: int = 0, groove: int = 0, rabbet: int = 0, shelf: bool = False,
    top: Literal["between", "over"] = "between",
) -> Cabinet:
    """A case of a sheet with these caliper readings, unrounded; all lengths in ticks.

    With `dado` a shelf stands in dadoes that deep, `fit` wider than the thickest reading, its underside `at` above
    the lower ends of the sides; with two bays one on each side of a divider. With `tongue` top and bottom have
    tongues that thick in dadoes `tongue_dado` deep, `end_gap` deeper than they enter, with `rabbet` they stand in
    rabbets that deep; else they are butted. With `groove` a back lies in grooves that deep. With `shelf` a shelf is
    there without a dado, too: it is butted. `top` lies between the sides or over them. What is left out changes none of
    the others.
    """
    sheets = {"case": Sheet("case", "plywood", readings[0], readings), "back": Sheet("back", "plywood", INCH // 4)}
    corner = JointChoice("rabbet", rabbet) if rabbet else JointChoice()
    if tongue:
        corner = JointChoice("tongue", tongue_dado, end_gap=end_gap, tongue=tongue)
    let_in = JointChoice("dado", dado, fit) if dado else JointChoice()
    back = Back("groove", "back", groove, INCH // 2) if groove else Back()
    bay = Bay("shelves", shelves=Shelves(at=(at,))) if dado or shelf else Bay()
    carcass = Carcass("case", top=top, corner=corner, shelf=let_in, back=back)
    size = Size("outside", width, height, deep)
    return solve(Project("joint case", INCH_STYLE, sheets, size, carcass, bays=(bay,) * bays, rounding=1))


def shelf_joint(case: Cabinet) -> Allowance:
    """What the joint of the first shelf in the left side asks of both boards."""
    joint = next(one for one in case.joints if (one.enters, one.receives) == ("bay 1 shelf 1", "left side"))
    return allowance(case, joint)


def wood_between(case: Cabinet) -> int:
    """What is left of the divider between the dadoes of the shelves on its two sides, in ticks."""
    divider = case.by_name["divider 1"]
    left, right = (cut_for(case.by_name[f"bay {bay} shelf 1"], divider) for bay in (1, 2))
    return right.low[0] - left.high[0]


def across(case: Cabinet, name: str) -> int:
    """A board from left to right, in ticks."""
    return case.by_name[name].box.size[0]
