"""The hardware that the page shows, as it begins and with other choices, and its pictures of what goes wrong."""

from collections.abc import Sequence
from dataclasses import replace

from shoplib.draw.dry_fit import dry_fit
from shoplib.draw.hardware_views import divider_view, pull_view, screw_view, tools_view
from shoplib.draw.lying_case import UPRIGHT, lying_case, setback_section
from shoplib.draw.scene import Scene
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.figure import Figure, dry_fit_says
from shoplib.lessons.hardware_set import SECOND, SPACER_SET, THIRD, set_out
from shoplib.lessons.together import put_together
from shoplib.live.hardware_panel import hardware_style
from shoplib.live.hardware_project import (
    KINDS,
    TOOLS,
    HardwareChoices,
    hardware_project,
    setting_step,
    starting_hardware,
)
from shoplib.live.tool_list import read_tools
from shoplib.measure.traced import leaf
from shoplib.model.cabinet import solve
from shoplib.model.hardware_places import FrontScrew, front_screw, slides_on
from shoplib.model.solved import Cabinet, Screw
from shoplib.model.tool_row import ToolRow, tool_row
from shoplib.model.tracing import traced
from shoplib.tables.screws import screws

PICTURE = (420.0, 280.0)
DRAWER = "bay 1 drawer 1"


def choices(unit: str, **other: object) -> HardwareChoices:
    """What the panel begins with, with other choices in place of some."""
    return replace(starting_hardware(unit), **other)


def solved(chosen: HardwareChoices, unit: str) -> Cabinet:
    """The case as the panel would solve it."""
    return solve(traced(hardware_project(chosen, hardware_style(unit))))


def hung(unit: str) -> tuple[ToolRow, list[str]]:
    """The tools of the worked example on their panel, and their names."""
    tools = read_tools(TOOLS[unit], unit)
    widths = [leaf(tool.width, f"width of the {tool.name}", "measured") for tool in tools]
    row = tool_row(leaf(starting_hardware(unit).panel, "width of the panel"), widths, setting_step(unit))
    return row, [tool.name for tool in tools]


def lying() -> Figure:
    """The case of the worked example on its side, with its slides and spacers."""
    unit = unit_in_use()
    return _drawn(lying_case(solved(choices(unit, kind=KINDS[1]), unit), hardware_style(unit)))


def behind_inset() -> Figure:
    """The setback of a slide behind an inset front."""
    unit = unit_in_use()
    return _drawn(setback_section(solved(choices(unit, kind=KINDS[1]), unit), hardware_style(unit)))


def behind_overlay() -> Figure:
    """The setback of a slide behind an overlay front."""
    unit = unit_in_use()
    return _drawn(setback_section(solved(choices(unit), unit), hardware_style(unit)))


def pull() -> Figure:
    """A front with the holes of its pull."""
    unit = unit_in_use()
    return _drawn(pull_view(solved(choices(unit), unit), f"{DRAWER} front", hardware_style(unit)))


def screw() -> Figure:
    """The longest screw from the box into the front."""
    unit = unit_in_use()
    return _drawn(screw_view(front_screw(solved(choices(unit), unit), DRAWER), hardware_style(unit)))


def too_long() -> Figure:
    """The next longer screw that is sold, in the same two boards."""
    unit = unit_in_use()
    return _drawn(replace(screw_view(longer_screw(unit), hardware_style(unit)), title="The next longer screw"))


def longer_screw(unit: str) -> FrontScrew:
    """The two boards of the worked example with the next longer screw of the table."""
    fixed = front_screw(solved(choices(unit), unit), DRAWER)
    lengths = screws(unit)["front"].lengths
    longer = leaf(lengths[lengths.index(fixed.screw.length) + 1], "next longer screw that is sold", "table")
    return replace(fixed, screw=replace(fixed.screw, length=longer))


def tools() -> Figure:
    """Four tools on a panel."""
    unit = unit_in_use()
    return _drawn(tools_view(*hung(unit), hardware_style(unit)))


def meeting() -> Figure:
    """Screws of slides on both faces of a divider at one height."""
    return _divider("as many drawers", "Screws from both faces of a divider")


def in_dado() -> Figure:
    """Screws of a slide that reach into the dado of a shelf."""
    return _divider("shelves in dadoes", "A screw that reaches into a dado")


def _divider(beside: str, title: str) -> Figure:
    unit = unit_in_use()
    case = solved(choices(unit, beside=beside), unit)
    scene = replace(divider_view(case, "divider 1", hardware_style(unit)), title=title)
    return _drawn(scene, sizes=[("screw", into(case, "divider 1").length)])


def gap_forgotten() -> Figure:
    """The spacers of the worked example, cut with the gap between the fronts left out."""
    unit = unit_in_use()
    case = solved(choices(unit, kind=KINDS[1]), unit)
    lowest, front = slides_on(case, UPRIGHT)[0].spacer, case.by_name["bay 1 drawer 2 front"].box.size[2]
    laid = set_out(case)
    built = put_together(laid, {SECOND: lowest + front, THIRD: lowest + 2 * front})
    scene = dry_fit(built.built, laid, built.misfits, SPACER_SET.view)
    return _drawn(scene, [dry_fit_says(f"{told}.") for told in built.says])


def into(case: Cabinet, board: str) -> Screw:
    """The first screw of a slide that goes into that board."""
    return next(screw for fitting in case.hardware for screw in fitting.screws if screw.into == board)


def _drawn(scene: Scene, words: Sequence[str] = (), sizes: Sequence[tuple[str, int]] = ()) -> Figure:
    return Figure.of(scene, PICTURE, words, hardware_style(unit_in_use()), sizes)
