"""What the start page shows beside its exercise."""

from dataclasses import replace

from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.each_size import why_each
from shoplib.lessons.large_type import in_type
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.live.carcass_panel import style_for, width_panel
from shoplib.live.carcass_project import case_project, first_case
from shoplib.live.panel import Panel
from shoplib.measure import read_length
from shoplib.model.cabinet import solve
from shoplib.model.tracing import traced


def first_slider() -> Panel:
    """A case of five boards with one slider, in the learner's unit."""
    return in_type(width_panel(unit_in_use()))


def two_widths(unit: str) -> Worked:
    """The slider's case at its first width and a little wider: how long its bottom is each time."""
    say, start = Say(unit), first_case(unit)
    more = read_length("2 in" if unit == "in" else "50 mm")
    lines, sizes, wide = [], [], []
    for width in (start.width, start.width + more):
        case = solve(traced(case_project(replace(start, width=width), style_for(unit))))
        bottom = case.by_name["bottom"]
        lines.append((f"case {say.length(width)} wide", "", f"bottom {say.length(bottom.length)} long"))
        sizes.append(("bottom, length", bottom.length))
        wide.append(case.outside.size[0])
    sizes.append(("the slider goes up by", wide[1] - wide[0]))
    return Worked(f"The slider goes up by {say.length(more)}", lines, why_each(sizes, say.style))
