"""The project that a few numbers stand for: a box of five boards, and what unfolds from it."""

from dataclasses import dataclass, replace

from shoplib.checks.joint_choice import usual_fit
from shoplib.measure import INCH, MM, Style, read_length
from shoplib.model.cutting import Cutting
from shoplib.model.marks import usually
from shoplib.model.project import (
    Back,
    Base,
    Bay,
    Carcass,
    Drawers,
    Fronts,
    JointChoice,
    Project,
    PullOut,
    Pulls,
    Shelves,
    Size,
)
from shoplib.model.sheet import Sheet


@dataclass(frozen=True, slots=True)
class CaseChoices:
    """What the carcass panel asks for; lengths in ticks, words as the panel shows them."""

    width: int
    thickness: int
    joint_depth: int
    height: int
    depth: int
    bays: int = 1
    holds: str = "nothing yet"
    drawers: int = 3
    fronts: str = "inset"
    back: str = "in a rabbet"
    base: str = "none"
    base_height: int = 0


def starting_case(unit: str) -> CaseChoices:
    """The box of five boards that the lesson begins with, in inches or in whole millimetres.

    The thickness is a made-up mean of caliper readings, of a sheet sold as 3/4 in or 18 mm.
    """
    texts = ("34 1/2 in", "0.703 in", "1/4 in", "30 in", "20 in", "4 in")
    if unit == "mm":
        texts = ("876 mm", "17.5 mm", "6 mm", "760 mm", "500 mm", "100 mm")
    *sizes, base = (read_length(text) for text in texts)
    return CaseChoices(*sizes, base_height=base)


def first_case(unit: str) -> CaseChoices:
    """The same box of a sheet whose thickness is a mark on the rule, so that no size has a rest."""
    start = starting_case(unit)
    return replace(start, thickness=read_length("45/64 in")) if unit == "in" else start


PULL_OUT = "drawers and a pull-out"
HOLDS = ("nothing yet", "drawers", "shelves", PULL_OUT)
FRONTS = ("inset", "overlay", "none")
BACKS = {"in a rabbet": "rabbet", "in a groove": "groove", "over the rear": "applied", "none": "none"}
BASES = ("none", "toe space", "plinth", "feet", "casters")


def case_project(choices: CaseChoices, style: Style) -> Project:
    """The whole project for these choices, in the workbook's own usual stock and clearances.

    Stock beside the case sheet: box sides sold as 1/2 in or 12 mm, back and bottoms sold as 5.2 mm or
    6 mm, with made-up readings of the example. Sheets are 96 x 48 in and 60 x 60 in, or 2440 x 1220 mm and
    1525 x 1525 mm (sizes as commonly sold, no source).
    """
    inch = style.unit == "in"
    thin = INCH * 204 // 1000 if inch else 59 * MM // 10
    box = INCH * 472 // 1000 if inch else 119 * MM // 10
    thin_name = 52 * MM // 10 if inch else 6 * MM
    whole = (96 * INCH, 48 * INCH) if inch else (2440 * MM, 1220 * MM)
    square = (60 * INCH, 60 * INCH) if inch else (1525 * MM, 1525 * MM)
    # Each thickness stands for the mean of several readings, so no doubt is raised about a single one.
    # The case sheet has no other name: the panel asks what it measures, not what it was sold as.
    case = (choices.thickness,) * 2
    sheets = {
        "case sheet": Sheet("case sheet", "plywood", choices.thickness, case, *whole),
        "box sheet": Sheet("box sheet", "plywood", INCH // 2 if inch else 12 * MM, (box, box), *square),
        "thin sheet": Sheet("thin sheet", "plywood", thin_name, (thin, thin), *whole, grain="none"),
    }
    fit = usual_fit(style.unit)
    corner = JointChoice("rabbet", choices.joint_depth, fit)
    inside = replace(corner, kind="dado")
    kind = BACKS[choices.back]
    depth = (INCH // 4 if inch else 6 * MM) if kind in ("rabbet", "groove") else None
    back = usually(
        Back, style.unit, kind=kind, sheet="" if kind == "none" else "thin sheet", depth=depth,
        fit=fit if kind == "groove" else 0,
    )
    fronts = usually(
        Fronts, style.unit, kind=choices.fronts, sheet="" if choices.fronts == "none" else "case sheet"
    )
    return Project(
        name="Work-room case",
        cutting=usually(Cutting, style.unit),
        style=style,
        sheets=sheets,
        size=Size("outside", choices.width, choices.height, choices.depth),
        carcass=usually(
            Carcass, style.unit, sheet="case sheet", corner=corner, divider=inside, shelf=inside, back=back,
        ),
        base=Base(choices.base, choices.base_height if choices.base != "none" else 0, _toe(choices, inch)),
        bays=_bays(choices, style.unit),
        fronts=fronts if choices.holds.startswith("drawers") else usually(Fronts, style.unit),
        pulls=usually(Pulls, style.unit)
        if choices.holds.startswith("drawers") and choices.fronts != "none"
        else None,
    )


def _toe(choices: CaseChoices, inch: bool) -> int:
    if choices.base not in ("toe space", "plinth"):
        return 0
    return 2 * INCH if inch else 50 * MM


def _bays(choices: CaseChoices, unit: str) -> tuple[Bay, ...]:
    slide = "side-mount ball-bearing" if unit == "in" else "side-mount ball-bearing, metric lengths"
    drawers = usually(
        Drawers, unit, count=choices.drawers, slide=slide, box_sheet="box sheet", bottom_sheet="thin sheet",
        bottom_depth=INCH * 7 // 32 if unit == "in" else 5 * MM, bottom_fit=usual_fit(unit),
    )
    kinds = {
        "nothing yet": Bay("open"),
        "shelves": Bay("shelves", shelves=usually(Shelves, unit, fixed=2)),
        "drawers": Bay("drawers", drawers=drawers),
        PULL_OUT: Bay("drawers", drawers=drawers),
    }
    bays = [kinds[choices.holds]] * choices.bays
    if choices.holds == PULL_OUT:
        bays[choices.bays // 2] = Bay("pull-out", pull_out=usually(PullOut, unit, slide=slide))
    return tuple(bays)
