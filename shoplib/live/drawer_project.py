"""The project that the drawer panel's numbers stand for: one bay of a plain case, with a drawer or two."""

from dataclasses import dataclass

from shoplib.measure import INCH, MM, Style, read_length
from shoplib.model.cutting import Cutting
from shoplib.model.drawers import corner_beside
from shoplib.model.marks import usually
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
from shoplib.tables.slides import slides

FRONTS = ("overlay, before the case", "inset, in the opening", "none")


@dataclass(frozen=True, slots=True)
class DrawerChoices:
    """What the drawer panel asks for; lengths in ticks.

    `front` and `back` are the opening as measured at the height of the (lower) drawer, `rabbet` None is what the
    model takes where nobody chose: half the box side, or half of what the groove for a runner leaves of it.
    """

    front: int
    back: int
    slide: str
    stock: int
    rabbet: int | None
    height: int
    room_above: int
    bottom_up: int
    groove: int
    depth: int
    fronts: str = FRONTS[0]
    drawers: int = 1
    upper_front: int = 0
    upper_back: int = 0


def starting_drawer(unit: str) -> DrawerChoices:
    """The drawer that the lesson begins with, in inches or in whole millimetres.

    The thickness is a made-up mean of caliper readings, of a sheet sold as 1/2 in or 12 mm.
    """
    texts = ("16 in", "0.472 in", "7/32 in", "7 in", "1/4 in", "1/4 in", "7/32 in", "20 in")
    slide = "side-mount ball-bearing"
    if unit == "mm":
        texts = ("400 mm", "11.9 mm", "5.5 mm", "180 mm", "6 mm", "6 mm", "5 mm", "500 mm")
        slide = "side-mount ball-bearing, metric lengths"
    wide, stock, rabbet, height, above, up, groove, depth = (read_length(text) for text in texts)
    return DrawerChoices(
        wide, wide, slide, stock, rabbet, height, above, up, groove, depth, upper_front=wide, upper_back=wide
    )


def usual_rabbet(slide: str, unit: str) -> int:
    """The corner rabbet that the lesson begins with; shallower beside the groove of a runner, as the model takes it.

    >>> usual_rabbet("side-hung wood runner", "in") == INCH // 8, usual_rabbet("undermount", "mm") / MM
    (True, 5.5)
    """
    start, usual = starting_drawer(unit), JointChoice("rabbet")
    stock = Sheet("box sheet", "plywood", start.stock)
    return corner_beside(slides(unit)[slide], usual, stock, drawer_rounding(unit)).depth or start.rabbet


def drawer_project(choices: DrawerChoices, style: Style) -> Project:
    """The whole project: a case of the workbook's usual sheet whose one bay is planned as the front reads.

    Stock beside the box sheet, with made-up readings of the example: the case sold as 3/4 in or 18 mm, bottoms and
    back sold as 5.2 mm or 6 mm. Sheet sizes as commonly sold, no source. Inside height and depth are those asked for.
    """
    inch = style.unit == "in"
    case, thin = (INCH * 703 // 1000, INCH * 204 // 1000) if inch else (35 * MM // 2, 59 * MM // 10)
    whole = (96 * INCH, 48 * INCH) if inch else (2440 * MM, 1220 * MM)
    names = (INCH * 3 // 4, INCH // 2, 52 * MM // 10) if inch else (18 * MM, 12 * MM, 6 * MM)
    # Each thickness stands for the mean of several readings, so no doubt is raised about a single one.
    sheets = {
        "case sheet": Sheet("case sheet", "plywood", names[0], (case,) * 2, *whole),
        "box sheet": Sheet("box sheet", "plywood", names[1], (choices.stock,) * 2, *whole),
        "thin sheet": Sheet("thin sheet", "plywood", names[2], (thin,) * 2, *whole, grain="none"),
    }
    shallow = INCH // 4 if inch else 6 * MM
    kind = choices.fronts.split(",")[0]
    return Project(
        name="Drawer case",
        cutting=usually(Cutting, style.unit),
        style=style,
        sheets=sheets,
        size=Size("inside", choices.front, choices.height, choices.depth),
        carcass=usually(
            Carcass, style.unit, sheet="case sheet", corner=JointChoice("rabbet", shallow),
            back=usually(Back, style.unit, kind="rabbet", sheet="thin sheet", depth=shallow),
        ),
        bays=(Bay("drawers", drawers=_drawers(choices, style.unit)),),
        fronts=usually(Fronts, style.unit, kind=kind, sheet="" if kind == "none" else "case sheet"),
        measured=_measured(choices),
    )


def kept_project(choices: DrawerChoices, unit: str) -> Project:
    """The project for a file, whose style says what its boxes are rounded down to."""
    return drawer_project(choices, Style(unit, drawer_rounding(unit)))


def drawer_rounding(unit: str) -> int:
    """What a box is rounded down to: 1/32 in or 0.5 mm, in ticks."""
    return INCH // 32 if unit == "in" else MM // 2


def _drawers(choices: DrawerChoices, unit: str) -> Drawers:
    # A box that rides on the shelf needs one under each drawer.
    shelf = slides(unit)[choices.slide].carries == "shelf" and choices.drawers > 1
    return usually(
        Drawers, unit, count=choices.drawers, slide=choices.slide, box_sheet="box sheet", bottom_sheet="thin sheet",
        corner=JointChoice("rabbet", choices.rabbet), bottom_up=choices.bottom_up, bottom_depth=choices.groove,
        bottom_fit=INCH // 250 if unit == "in" else MM // 10, room_above=choices.room_above,
        between="shelf" if shelf else "nothing",
    )


def _measured(choices: DrawerChoices) -> Measured:
    read = [Opening(choices.front, choices.back), Opening(choices.upper_front, choices.upper_back)]
    rows = {f"bay 1 drawer {number}": one for number, one in enumerate(read[: choices.drawers], 1)}
    return Measured(rows, {"bay 1": choices.depth})


