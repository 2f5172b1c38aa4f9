"""The plain case whose slides, pulls and screws the exercises ask about: their answers are read off it as solved."""

from dataclasses import replace

from shoplib.measure import INCH, INCH_STYLE
from shoplib.measure.traced import leaf_beside
from shoplib.model.cabinet import solve
from shoplib.model.hardware_places import SlidePlace, slides_on
from shoplib.model.project import Back, Bay, Carcass, Drawers, Fronts, JointChoice, Project, Pulls, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.tables.slides import slide

SLIDE = "side-mount ball-bearing"


def small_hardware(
    *, count: int = 3, front_height: int = 8 * INCH, gap: int = INCH // 8, kind: str = "overlay",
    front: int = 3 * INCH // 4, front_width: int = 18 * INCH, setback: int = INCH // 16,
    slide_height: int = 7 * INCH // 4, pitch: int = 4 * INCH, below: int = INCH // 4,
) -> Cabinet:
    """A case of one bay with `count` drawers on slides, unrounded, each front `front_height` by `front_width`.

    `front` is the thickness of the fronts, `setback` and `slide_height` are those of the slide's row. The edges of
    the fronts stand `gap` inside the opening (inset) or cover half of an inch all round. A box has as much room
    above as `below`, so that its slide lies in the middle of an inset front. All in ticks.
    """
    thick, thin, deep = (
        leaf_beside(ticks, name, "chosen", gap) for ticks, name in (
            (3 * INCH // 4, "thickness of the case"), (INCH // 5, "thickness of the back"), (20 * INCH, "inside depth")
        )
    )
    half = INCH // 2
    over = -2 * gap if kind == "inset" else 2 * half
    stack = count * front_height + (count - 1) * gap
    row = replace(
        slide(SLIDE), setback=setback, height=slide_height, below=below,
        lengths=tuple(number * INCH for number in range(8, 30, 2)),
    )
    sheets = {
        "case": Sheet("case", "plywood", thick), "front": Sheet("front", "plywood", front),
        "box": Sheet("box", "plywood", half), "thin": Sheet("thin", "plywood", thin),
    }
    rule = Drawers(
        count=count, slide=SLIDE, box_sheet="box", bottom_sheet="thin", bottom_depth=INCH // 4, room_above=row.below
    )
    fronts = Fronts(kind, "front", gap, gap) if kind == "inset" else Fronts(kind, "front", gap, reveal=thick - half)
    return solve(Project(
        "small hardware", INCH_STYLE, sheets, Size("inside", front_width - over, stack - over, deep),
        Carcass("case", corner=JointChoice("rabbet", INCH // 4), back=Back("rabbet", "thin", INCH // 4)),
        bays=(Bay("drawers", drawers=rule),), fronts=fronts,
        pulls=Pulls(pitch), rounding=1, slides={SLIDE: row},
    ))


def lower_edges(case: Cabinet) -> tuple[SlidePlace, ...]:
    """The slides on the left side, from the bottom up."""
    return slides_on(case, "left side")
