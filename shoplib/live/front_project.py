"""The project that the front panel's numbers stand for: one or two bays of drawers behind fronts."""

from dataclasses import dataclass

from shoplib.measure import INCH, MM, Style, read_length
from shoplib.model.cutting import Cutting
from shoplib.model.marks import usually
from shoplib.model.project import Back, Bay, Carcass, Drawers, Fronts, JointChoice, Project, Size
from shoplib.model.sheet import Sheet

KINDS = ("inset, between the boards of the case", "overlay, before the case")

RULES = ("equal", "stepped", "ratio 7 6 5 4 ...", "freer series")
"""How heights are shared. The last two are of Varnum, Industrial Arts Design (1916), Rule 2c (read)."""

ARITHMETIC = (7, 6, 5, 4, 3, 2, 1)
"""7 6 5 4 3 2 1 from the bottom up (Varnum, Rule 2c, read)."""

FREER = (37, 32, 27, 24, 20, 19)
"""9 1/4, 8, 6 3/4, 6, 5, 4 3/4 from the bottom up, in quarters of an inch (Varnum, Rule 2c, read)."""

IN_LINE, ONE_MORE = "in line with bay 1", "one front more"


@dataclass(frozen=True, slots=True)
class FrontChoices:
    """What the front panel asks for; lengths in ticks.

    `width` and `height` are those of the opening (of bay 1), `around` the gap to the case or, of overlay fronts,
    the reveal. `thick` is the measured thickness of the case boards.
    """

    height: int
    count: int
    gap: int
    width: int
    around: int
    thick: int
    difference: int
    kind: str = KINDS[0]
    rule: str = RULES[0]
    bays: int = 1
    rows: str = IN_LINE

    @property
    def inset(self) -> bool:
        """Whether the fronts stand in the opening."""
        return self.kind == KINDS[0]


def starting_fronts(unit: str) -> FrontChoices:
    """The fronts that the lesson begins with; the thickness is a made-up mean of caliper readings."""
    texts = ("24 in", "1/8 in", "18 in", "1/8 in", "0.703 in", "1 in")
    if unit == "mm":
        texts = ("600 mm", "3 mm", "450 mm", "3 mm", "17.5 mm", "25 mm")
    height, gap, width, around, thick, difference = (read_length(text) for text in texts)
    return FrontChoices(height, 3, gap, width, around, thick, difference)


def front_project(choices: FrontChoices, style: Style) -> Project:
    """The whole project; two bays are as wide as the opening asked for, each.

    Fronts and case are of one sheet, boxes and bottoms of the usual ones (made-up thicknesses of the example).
    """
    inch = style.unit == "in"
    box, thin = (INCH * 472 // 1000, INCH * 204 // 1000) if inch else (119 * MM // 10, 59 * MM // 10)
    sheets = {
        "case sheet": Sheet("case sheet", "plywood", INCH * 3 // 4 if inch else 18 * MM, (choices.thick,) * 2),
        "box sheet": Sheet("box sheet", "plywood", INCH // 2 if inch else 12 * MM, (box,) * 2),
        "thin sheet": Sheet("thin sheet", "plywood", 52 * MM // 10 if inch else 6 * MM, (thin,) * 2, grain="none"),
    }
    shallow = INCH // 4 if inch else 6 * MM
    around = choices.around
    whole = choices.bays * choices.width + (choices.bays - 1) * choices.thick
    return Project(
        name="Fronts",
        cutting=usually(Cutting, style.unit),
        style=style,
        sheets=sheets,
        size=Size("inside", whole, choices.height, 20 * INCH if inch else 500 * MM),
        carcass=usually(
            Carcass, style.unit, sheet="case sheet", corner=JointChoice("rabbet", shallow),
            back=usually(Back, style.unit, kind="rabbet", sheet="thin sheet", depth=shallow),
        ),
        bays=tuple(
            Bay("drawers", drawers=_drawers(choices, number, style.unit)) for number in range(1, choices.bays + 1)
        ),
        fronts=usually(Fronts, style.unit, kind="inset", sheet="case sheet", gap=choices.gap, around=around)
        if choices.inset
        else usually(Fronts, style.unit, kind="overlay", sheet="case sheet", gap=choices.gap, reveal=around),
    )


def _drawers(choices: FrontChoices, number: int, unit: str) -> Drawers:
    slide = "side-mount ball-bearing" if unit == "in" else "side-mount ball-bearing, metric lengths"
    alike = {"slide": slide, "box_sheet": "box sheet", "bottom_sheet": "thin sheet"}
    if number > 1 and choices.rows == IN_LINE:
        return usually(Drawers, unit, like_bay=1, **alike)
    count = choices.count + (number > 1)
    if choices.rule in RULES[2:]:
        series = ARITHMETIC if choices.rule == RULES[2] else FREER
        return usually(Drawers, unit, count=count, heights="ratio", ratio=series[:count], **alike)
    if choices.rule == "stepped":
        return usually(Drawers, unit, count=count, heights="stepped", difference=choices.difference, **alike)
    return usually(Drawers, unit, count=count, **alike)
