"""What the page on carcass sizing shows beside its exercises: worked sums, panels, and what goes wrong."""

from dataclasses import replace

from shoplib.documents.examples import example
from shoplib.documents.project_file import read_project
from shoplib.draw.whole_view import assembled_view, exploded_view
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure, dry_fit_says
from shoplib.lessons.large_type import in_type
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.lessons.worked_case import lesson_case
from shoplib.lessons.wrong_bottom import dry_fit, picture
from shoplib.live.carcass_panel import carcass_panel, style_for
from shoplib.live.panel import Panel
from shoplib.live.project_panel import project_panel
from shoplib.measure import read_length, write_brief, write_length
from shoplib.measure.traced import leaf
from shoplib.model.cabinet import solve
from shoplib.model.solved import Cabinet
from shoplib.model.tracing import traced
from shoplib.words.naming import and_list, in_short

PICTURE = (540.0, 260.0)
_WHOLE = (540.0, 300.0)
_LARGE = (400.0, 275.0)
"""Room for a picture of the whole: five boards, or the case under the bench with all its drawers."""

_CHOSEN = (
    "Width, depth and height over all were chosen. What each board measures that way follows from them: open "
    "\u201cWhy each size\u201d."
)

SOLD_AS = {"in": "3/4 in", "mm": "18 mm"}
"""What the sheet of the lesson's case is called."""


def sizing_panel() -> Panel:
    """The panel of the lesson, in the learner's unit."""
    return in_type(carcass_panel(unit_in_use()))


def bench_case() -> Panel:
    """The whole case under the truing bench, in the learner's unit."""
    return in_type(project_panel(example("under_bench_case"), unit_in_use()))


def case_closed() -> Figure:
    """The five boards of the lesson's case, put together."""
    case = lesson_case(unit_in_use())
    words = ["Bottom and top lie between the sides. At the corners, on the front edges, you see how far they go into "
             "them."]
    return Figure.of(assembled_view(case), _WHOLE, [*words, _CHOSEN], case.style, _across(case))


def case_apart() -> Figure:
    """The same five boards, moved apart."""
    case = lesson_case(unit_in_use())
    words = ["The sides moved out to left and right, the top up, the bottom down, the back to the rear: so they come "
             "together again. The rabbets that hold bottom and top are the narrow steps at both ends of each side: see "
             "the lower end of the left side, and the front edge of the right one at both ends."]
    return Figure.of(exploded_view(case), _WHOLE, [*words, _CHOSEN], case.style, _across(case))


def bench_apart() -> Figure:
    """The whole case under the truing bench, its drawers pulled out and its boards moved apart."""
    unit, project = unit_in_use(), read_project(example("under_bench_case"))
    case = solve(traced(project if project.style.unit == unit else replace(project, style=style_for(unit))))
    names = [board.name for board in case.boards if board.group == "case"]
    words = [f"The case itself has {len(names)} boards: {and_list(in_short(names))}. All else slides."]
    return Figure.of(exploded_view(case), _LARGE, [*words, _CHOSEN], case.style, _across(case))


def _across(case: Cabinet) -> list[tuple[str, int]]:
    """From left to right, from front to back and upward: the boards of the case that run there, and how long."""
    bottom, side, back = (case.by_name[name].box.size for name in ("bottom", "left side", "back"))
    return [
        ("bottom, left to right", bottom[0]), ("back, left to right", back[0]),
        ("side, front to back", side[1]), ("side, upward", side[2]), ("back, upward", back[2]),
    ]


def bottom_worked(unit: str) -> Worked:
    """How long the bottom of the lesson's case is, and why; every number is read off the solved case."""
    case, say = lesson_case(unit), Say(unit)
    width, side, bottom = case.outside.size[0], case.by_name["left side"], case.by_name["bottom"]
    depth = next(joint.depth for joint in case.joints if joint.enters == "bottom")
    inside = width - 2 * side.thickness
    measured, both = say.exact(side.thickness), say.length(2 * depth)
    step = write_length(case.style.step, case.style)
    return Worked(
        f"The bottom of a case {say.length(width)} wide",
        [
            ("between the sides", f"{say.length(width)} - 2 x {measured}", say.exact(inside)),
            ("goes into the sides", f"2 x {say.length(depth)}", both),
            ("bottom, left to right", f"{say.exact(inside)} + {both}", say.exact(bottom.length)),
            ("on the rule", f"to the nearest {step}", write_brief(bottom.length, case.style)),
        ],
        why_each(
            [("between the sides", inside), ("goes into the sides", 2 * depth), ("bottom, length", bottom.length)],
            say.style,
        ),
    )


def wrong_bottom(slip: str) -> Figure:
    """The same case dry-fitted with its bottom cut by a slip: the picture, and what the dry-fit says."""
    unit = unit_in_use()
    case = lesson_case(unit)
    fit = dry_fit(case, slip, leaf(read_length(SOLD_AS[unit]), "thickness by name"))
    scene = picture(fit)
    return Figure.of(scene, PICTURE, [dry_fit_says(found.text) for found in fit.said], case.style)
