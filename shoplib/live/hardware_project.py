"""The project that the hardware panel's numbers stand for: a bay of drawers, and something beside it or nothing."""

from dataclasses import dataclass

from shoplib.measure import INCH, MM, Style, read_length
from shoplib.model.cutting import Cutting
from shoplib.model.marks import usually
from shoplib.model.project import Back, Bay, Carcass, Drawers, Fronts, JointChoice, Project, Pulls, Shelves, Size
from shoplib.model.sheet import Sheet

KINDS = ("overlay, before the case", "inset, in the opening")

ALONE, ALIKE, ONE_MORE, SHELVES = "nothing", "as many drawers", "one drawer more", "shelves in dadoes"
BESIDE = (ALONE, ALIKE, ONE_MORE, SHELVES)
"""What stands in the second bay, on the other face of the divider."""


@dataclass(frozen=True, slots=True)
class Tool:
    """One tool of the list, and how wide it is in ticks."""

    name: str
    width: int


@dataclass(frozen=True, slots=True)
class HardwareChoices:
    """What the hardware panel asks for; lengths in ticks.

    `height` and `width` are those of the opening, `front` and `box` the measured thicknesses of the fronts and of
    the box sheet, `pitch` that of the pulls, `panel` the width on which `tools` hang. `seen` says which drawing
    stands first.
    """

    height: int
    count: int
    gap: int
    kind: str
    front: int
    width: int
    pitch: int
    box: int
    beside: str
    shelves: int
    panel: int
    tools: tuple[Tool, ...] = ()
    seen: str = "what was unfolded last"

    @property
    def inset(self) -> bool:
        """Whether the fronts stand in the opening."""
        return self.kind == KINDS[1]


TOOLS = {
    "in": "cone wrench 1 1/8, floor pump 3, chain whip 2 1/4, hub wrench 1 1/2",
    "mm": "cone wrench 28, floor pump 76, chain whip 56, hub wrench 38",
}
"""The tools that the panel begins with; their widths are made up."""


def starting_hardware(unit: str) -> HardwareChoices:
    """The hardware that the lesson begins with; the thicknesses are made-up means of caliper readings."""
    texts = ("24 in", "1/8 in", "0.703 in", "18 in", "5 in", "0.472 in", "20 in")
    if unit == "mm":
        texts = ("600 mm", "3 mm", "17.5 mm", "450 mm", "128 mm", "11.9 mm", "500 mm")
    height, gap, front, width, pitch, box, panel = (read_length(text) for text in texts)
    return HardwareChoices(height, 3, gap, KINDS[0], front, width, pitch, box, ALONE, 3, panel)


def setting_step(unit: str) -> int:
    """What spacers, pulls and pegs are rounded to, in ticks: 1/64 in, or half a millimetre, the finest mark of a rule.

    >>> setting_step("mm") == MM // 2
    True
    """
    return INCH // 64 if unit == "in" else MM // 2


def hardware_project(choices: HardwareChoices, style: Style) -> Project:
    """The whole project; with a second bay, both are as wide as the opening asked for.

    Made-up thicknesses of the example: case 0.703 in or 17.5 mm, bottoms and back 0.204 in or 5.9 mm.
    """
    inch = style.unit == "in"
    case, thin = (INCH * 703 // 1000, INCH * 204 // 1000) if inch else (35 * MM // 2, 59 * MM // 10)
    sold = (INCH * 3 // 4, INCH // 2, 52 * MM // 10) if inch else (18 * MM, 12 * MM, 6 * MM)
    sheets = {
        "case sheet": Sheet("case sheet", "plywood", sold[0], (case,) * 2),
        "front sheet": Sheet("front sheet", "plywood", sold[0], (choices.front,) * 2),
        "box sheet": Sheet("box sheet", "plywood", sold[1], (choices.box,) * 2),
        "thin sheet": Sheet("thin sheet", "plywood", sold[2], (thin,) * 2, grain="none"),
    }
    shallow = INCH // 4 if inch else 6 * MM
    gap, bays = choices.gap, 1 if choices.beside == ALONE else 2
    step = setting_step(style.unit)
    whole = bays * choices.width + (bays - 1) * case
    return Project(
        name="Hardware",
        cutting=usually(Cutting, style.unit),
        style=style,
        sheets=sheets,
        size=Size("inside", whole, choices.height, 20 * INCH if inch else 500 * MM),
        carcass=usually(
            Carcass, style.unit, sheet="case sheet", corner=JointChoice("rabbet", shallow),
            shelf=JointChoice("dado", shallow),
            back=usually(Back, style.unit, kind="rabbet", sheet="thin sheet", depth=shallow),
        ),
        bays=(Bay("drawers", drawers=_drawers(choices.count, style.unit)), *_beside(choices, style.unit)),
        fronts=usually(Fronts, style.unit, kind="inset", sheet="front sheet", gap=gap, around=gap)
        if choices.inset
        else usually(Fronts, style.unit, kind="overlay", sheet="front sheet", gap=gap, reveal=gap),
        pulls=usually(Pulls, style.unit, pitch=choices.pitch),
        rounding=None if step == style.step else step,
    )


def _drawers(count: int, unit: str) -> Drawers:
    slide = "side-mount ball-bearing" if unit == "in" else "side-mount ball-bearing, metric lengths"
    return usually(Drawers, unit, count=count, slide=slide, box_sheet="box sheet", bottom_sheet="thin sheet")


def _beside(choices: HardwareChoices, unit: str) -> tuple[Bay, ...]:
    if choices.beside == ALONE:
        return ()
    if choices.beside == SHELVES:
        return (Bay("shelves", shelves=usually(Shelves, unit, fixed=choices.shelves)),)
    return (Bay("drawers", drawers=_drawers(choices.count + (choices.beside == ONE_MORE), unit)),)
