"""What the hardware panel shows of a solved case: its drawings and tables, one set for each group that is open.

They are made of plain numbers for the screen, and of numbers that carry their working to answer a question.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from shoplib.draw.hardware_views import divider_view, pull_view, screw_view, tools_view
from shoplib.draw.lying_case import UPRIGHT, lying_case, setback_section
from shoplib.draw.scene import Scene
from shoplib.live.hardware_project import ALONE, HardwareChoices
from shoplib.measure import Style
from shoplib.model.hardware_places import front_screw, pull_places, slides_on
from shoplib.model.solved import Cabinet
from shoplib.model.tool_row import ToolRow

FIRST, EDGE, PULLS, SCREWS, BESIDE, PEGS = (
    "Three numbers", "Overlay or inset", "Pulls", "Screws into the front", "The other face of the divider",
    "Tools on a panel",
)

NEWEST = "what was unfolded last"
SEEN = {
    "the case on its side": FIRST, "the setback": EDGE, "a front with its pull": PULLS, "the screw": SCREWS,
    "the divider": BESIDE, "the tools": PEGS,
}
"""What may stand first, beside the controls: by what it is called, the group that it belongs to."""

Sizes = Sequence[tuple[str, Sequence[int | None]]]


@dataclass(frozen=True, slots=True)
class Rows:
    """A table before it is written: its caption, its heads, and for each row a name and sizes in ticks."""

    caption: str
    head: Sequence[str]
    rows: Sizes
    name: str


def scenes(
    cabinet: Cabinet, choices: HardwareChoices, row: ToolRow | None, opened: Sequence[str], style: Style
) -> list[Scene]:
    """The drawings of the groups that are open: that of the group that was asked for first, or of the newest one."""
    found = {FIRST: lying_case(cabinet, style)}
    if EDGE in opened:
        found[EDGE] = setback_section(cabinet, style)
    if PULLS in opened:
        found[PULLS] = pull_view(cabinet, _front(1), style)
    if SCREWS in opened:
        found[SCREWS] = screw_view(front_screw(cabinet, "bay 1 drawer 1"), style)
    if BESIDE in opened and choices.beside != ALONE:
        found[BESIDE] = divider_view(cabinet, "divider 1", style)
    if row is not None:
        found[PEGS] = tools_view(row, [tool.name for tool in choices.tools], style)
    newest = [group for group in opened if group in SEEN.values()][-1]
    wanted = newest if choices.seen == NEWEST else SEEN[choices.seen]
    first = found.pop(wanted if wanted in found else FIRST)
    return [first, *found.values()]


def tables(cabinet: Cabinet, choices: HardwareChoices, row: ToolRow | None, opened: Sequence[str]) -> list[Rows]:
    """The tables of the groups that are open, the spacers first."""
    places = slides_on(cabinet, UPRIGHT)
    found = [Rows(
        "Spacers, each used on both sides", ("Slide of", "Spacer", "Setback"),
        [(f"drawer {number}", (place.spacer, place.setback)) for number, place in enumerate(places, 1)], "spacer/",
    )]
    if PULLS in opened:
        rows = []
        for number in range(1, choices.count + 1):
            holes = pull_places(cabinet, _front(number))
            rows.append((f"front {number}", (holes[0].left, holes[-1].left, holes[0].up)))
        head = ("Front", "First hole, from the left", "Second hole, from the left", "From the lower edge")
        found.append(Rows("Holes for pulls", head, rows, "pull/"))
    if SCREWS in opened:
        fixed = front_screw(cabinet, "bay 1 drawer 1")
        sizes = (fixed.through + fixed.into, *((fixed.screw.length, fixed.left) if fixed.screw else (None, None)))
        head = ("Screw", "Wood in all", "Longest screw", "Left before its point")
        found.append(Rows("Screws into the front", head, [("from inside the box", sizes)], "screw/"))
    if row is not None:
        rows = [
            (tool.name, (tool.width, left, middle))
            for tool, left, middle in zip(choices.tools, row.lefts, row.middles, strict=True)
        ]
        head = ("Tool", "Width", "Left edge at", "Peg at")
        found.append(Rows("Tools on the panel", head, rows, "tool/"))
    return found


def _front(number: int) -> str:
    return f"bay 1 drawer {number} front"
