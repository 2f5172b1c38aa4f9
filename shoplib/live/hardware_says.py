"""What the hardware panel says: the line above the picture, the closing sums, and what is in the way of what."""

from collections.abc import Sequence
from itertools import pairwise

from shoplib.checks.fittings import find_slides_in_wood
from shoplib.checks.pulls import find_pulls_off_the_box
from shoplib.checks.screw_points import find_screws_through
from shoplib.checks.screws import find_meeting_screws, find_missing_screws
from shoplib.checks.screws_in_cuts import find_screws_in_cuts
from shoplib.draw.lying_case import UPRIGHT
from shoplib.lists.writing import Writing
from shoplib.live.hardware_project import ALONE, HardwareChoices
from shoplib.live.hardware_views import BESIDE
from shoplib.measure import Style
from shoplib.model.hardware_places import slides_on
from shoplib.model.solved import Cabinet, Finding
from shoplib.model.tool_row import ToolRow
from shoplib.words.naming import and_list

CHECKS = (
    find_slides_in_wood, find_pulls_off_the_box, find_missing_screws, find_screws_through, find_meeting_screws,
    find_screws_in_cuts,
)
"""The checks of the dry-fit that have something to say about hardware."""


def findings(cabinet: Cabinet, choices: HardwareChoices, opened: Sequence[str]) -> list[Finding]:
    """What the checks find about slides, pulls and screws; and that nothing meets, where that was asked."""
    found = [one for one in cabinet.findings if one.check == "slide room"]
    for check in CHECKS:
        found += check(cabinet)
    if BESIDE in opened and choices.beside != ALONE and not any("divider" in one.text for one in found):
        found.append(Finding("screws", "note", (), "Nothing meets in the divider: screws and cuts keep clear."))
    return found


def message(cabinet: Cabinet, style: Style) -> str:
    """The line above the picture."""
    page, places = Writing(style), slides_on(cabinet, UPRIGHT)
    spacers = and_list([page.length(place.spacer) for place in places])
    noun = "Spacer" if len(places) == 1 else "Spacers"
    return f"{noun} {spacers}, used on both sides; slides set back {page.setting(places[0].setback)}."


def sums(cabinet: Cabinet, row: ToolRow | None, style: Style) -> list[str]:
    """From spacer to spacer, and the tools and spaces across the panel."""
    page, found = Writing(style), []
    for number, (below, above) in enumerate(pairwise(slides_on(cabinet, UPRIGHT)), 2):
        step = above.spacer - below.spacer
        found.append(
            f"spacer {number}: {page.length(below.spacer)} + {page.length(step)} from slide to slide = "
            f"{page.length(above.spacer)}"
        )
    if row is not None:
        spaces = len(row.tools) + 1
        rest = f" + {page.length(row.rest)} at the end" if row.rest else ""
        found.append(
            f"panel: {spaces} x {page.length(row.space)} + tools {page.length(sum(row.tools))}{rest} = "
            f"{page.length(row.width)}"
        )
    return found
