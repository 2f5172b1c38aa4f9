"""The project that a few numbers stand for: a box of five boards, and what unfolds from it."""

from dataclasses import dataclass, replace

from shoplib.measure import INCH, MM, Style, read_length
from shoplib.model.marks import natural_to
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
    joint = JointChoice("rabbet", choices.joint_depth)
    kind = BACKS[choices.back]
    depth = (INCH // 4 if inch else 6 * MM) if kind in ("rabbet", "groove") else None
    back = natural_to(Back(kind, "" if kind == "none" else "thin sheet", depth), style.unit)
    wide_gap = INCH // 8 if inch else 3 * MM
    fronts = Fronts(choices.fronts, "" if choices.fronts == "none" else "case sheet", wide_gap, wide_gap, wide_gap)
    return Project(
        name="Work-room case",
        style=style,
        sheets=sheets,
        size=Size("outside", choices.width, choices.height, choices.depth),
        carcass=Carcass("case sheet", corner=joint, divider=replace(joint, kind="dado"), shelf=joint, back=back),
        base=Base(choices.base, choices.base_height if choices.base != "none" else 0, _toe(choices, inch)),
        bays=_bays(choices, inch),
        fronts=fronts if choices.holds.startswith("drawers") else Fronts("none"),
        pulls=natural_to(Pulls(), style.unit)
        if choices.holds.startswith("drawers") and choices.fronts != "none"
        else None,
    )


def _toe(choices: CaseChoices, inch: bool) -> int:
    if choices.base not in ("toe space", "plinth"):
        return 0
    return 2 * INCH if inch else 50 * MM


def _bays(choices: CaseChoices, inch: bool) -> tuple[Bay, ...]:
    slide = "side-mount ball-bearing" if inch else "side-mount ball-bearing, metric lengths"
    up, groove = (INCH // 4, INCH * 7 // 32) if inch else (6 * MM, 5 * MM)
    drawers = Drawers(
        count=choices.drawers,
        slide=slide,
        box_sheet="box sheet",
        bottom_sheet="thin sheet",
        bottom_up=up,
        bottom_depth=groove,
        bottom_slack=INCH // 16 if inch else 2 * MM,
        room_above=INCH // 4 if inch else 6 * MM,
    )
    kinds = {
        "nothing yet": Bay("open"),
        "shelves": Bay("shelves", shelves=Shelves(fixed=2)),
        "drawers": Bay("drawers", drawers=drawers),
        PULL_OUT: Bay("drawers", drawers=drawers),
    }
    bays = [kinds[choices.holds]] * choices.bays
    if choices.holds == PULL_OUT:
        bays[choices.bays // 2] = Bay("pull-out", pull_out=natural_to(PullOut(slide=slide), "in" if inch else "mm"))
    return tuple(bays)
