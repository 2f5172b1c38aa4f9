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


def message(cabinet: Cabinet, style: Style, found: Sequence[Finding] = ()) -> str:
    """The line above the picture: the spacers and the setback, and how many findings say Stop or Look."""
    page, places = Writing(style), slides_on(cabinet, UPRIGHT)
    spacers = and_list([page.length(place.spacer) for place in places])
    noun = "Spacer" if len(places) == 1 else "Spacers"
    levels = [each.level for each in found]
    stops, looks = levels.count("stop"), levels.count("warn")
    told = (
        f"{noun} {spacers}, used on both sides; slides set back {page.setting(places[0].setback)}",
        *([f"{stops} to mend first (Stop)"] if stops else []), *([f"{looks} to look at (Look)"] if looks else []),
    )
    return f"{'; '.join(told)}."


Lengths = tuple[tuple[str, int], ...]
"""The lengths of one closing sum in their order, each after what it is called."""


def sums(cabinet: Cabinet, row: ToolRow | None, style: Style) -> list[str]:
    """From spacer to spacer, and the tools and spaces across the panel."""
    found = []
    for number, lengths in enumerate(_from_slide_to_slide(cabinet), 2):
        below, step, above = _written(lengths, style)
        found.append(f"spacer {number}: {below} + {step} from slide to slide = {above}")
    if row is not None:
        space, tools, *rest, width = _written(_across_the_panel(row), style)
        at_the_end = f" + {rest[0]} at the end" if rest else ""
        found.append(f"panel: {len(row.tools) + 1} x {space} + tools {tools}{at_the_end} = {width}")
    return found


def sum_lengths(cabinet: Cabinet, row: ToolRow | None) -> list[Lengths]:
    """The lengths of each of these sums, to be asked for their working."""
    return [*_from_slide_to_slide(cabinet), *([_across_the_panel(row)] if row is not None else [])]


def _from_slide_to_slide(cabinet: Cabinet) -> list[Lengths]:
    return [
        (
            (f"spacer {number - 1}", below.spacer), ("from slide to slide", above.spacer - below.spacer),
            (f"spacer {number}", above.spacer),
        )
        for number, (below, above) in enumerate(pairwise(slides_on(cabinet, UPRIGHT)), 2)
    ]


def _across_the_panel(row: ToolRow) -> Lengths:
    rest = (("what the last space has more", row.rest),) if row.rest else ()
    tools = ("tools together", sum(row.tools))
    return ("each space", row.space), tools, *rest, ("panel in all", row.width)


def _written(lengths: Lengths, style: Style) -> list[str]:
    return [Writing(style).length(size) for _, size in lengths]
