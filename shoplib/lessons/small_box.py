"""The plain drawer that the exercises ask about, solved by the model: their answers are read off its boards."""

from dataclasses import replace

from shoplib.measure import INCH, INCH_STYLE
from shoplib.model.box import Box, around
from shoplib.model.cabinet import solve
from shoplib.model.project import (
    Back,
    Bay,
    Carcass,
    Drawers,
    Fronts,
    JointChoice,
    Measured,
    Opening,
    Project,
    Size,
)
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.tables.slides import slide

GROUP = "bay 1 drawer 1"
SLIDES = {"in": "side-mount ball-bearing", "mm": "side-mount ball-bearing, metric lengths"}
"""What the drawers of the exercises run on."""


def small_box(
    front: int, back: int, *, unit: str = "in", side: int | None = None, rear: int | None = None,
    setback: int | None = None, stock: int = INCH * 472 // 1000, rabbet: int = INCH // 4, groove: int = INCH // 4,
    slack: int = INCH // 16, depth: int = 20 * INCH, inset: int = 0, corner: JointChoice | None = None,
    back_corner: JointChoice | None = None, box_front: int = 0,
) -> Cabinet:
    """A case with one drawer, unrounded, in an opening that reads `front` and `back`; all lengths in ticks.

    Slides are the ones of `SLIDES` for the unit, with `side`, `rear` and `setback` in place of what they take at each
    side, behind and before their front end. The case is `depth` deep inside; a front of thickness `inset` stands in
    the opening, 0 is none. The corners of the box are rabbeted where no other `corner` is given; `back_corner` is how
    the back is joined where that is another way. `box_front` is the stock of the box front, 0 that of the box. Heights
    change none of the widths and depths.
    """
    row = slide(SLIDES[unit], unit)
    own = {"side": side, "rear_room": rear, "setback": setback}
    row = replace(row, **{name: size for name, size in own.items() if size is not None})
    sheets = {
        "case": Sheet("case", "plywood", 3 * INCH // 4), "box": Sheet("box", "plywood", stock),
        "thin": Sheet("thin", "plywood", INCH // 5),
    }
    fronts = Fronts()
    if inset:
        sheets["front"] = Sheet("front", "plywood", inset)
        fronts = Fronts("inset", "front")
    if box_front:
        sheets["box front"] = Sheet("box front", "plywood", box_front)
    rule = Drawers(
        slide=row.name, box_sheet="box", bottom_sheet="thin", corner=corner or JointChoice("rabbet", rabbet),
        back_corner=back_corner, front_sheet="box front" if box_front else "",
        bottom_depth=groove, bottom_slack=slack,
    )
    case_corner = JointChoice("rabbet", INCH // 4)
    return solve(Project(
        "small drawer", INCH_STYLE, sheets, Size("inside", front, 8 * INCH, depth),
        Carcass("case", corner=case_corner, back=Back("rabbet", "thin", INCH // 4)),
        bays=(Bay("drawers", drawers=rule),), fronts=fronts, rounding=1, slides={row.name: row},
        measured=Measured({GROUP: Opening(front, back)}),
    ))


def outside(case: Cabinet) -> Box:
    """The outside of the box."""
    return around([board.box for board in case.groups[GROUP] if board.role.startswith("box ")])


def box_width(case: Cabinet) -> int:
    """The box from left to right, outside, in ticks."""
    box = outside(case)
    return box.high[0] - box.low[0]


def part(case: Cabinet, name: str, axis: int) -> int:
    """One size of a board of the box ("box front", "left box side") along world x, y or z (0, 1, 2), in ticks."""
    box = case.by_name[f"{GROUP} {name}"].box
    return box.high[axis] - box.low[axis]
