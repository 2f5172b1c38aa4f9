"""The drawer panel: an opening and a slide at first, then readings, box stock, heights, depth, a second drawer."""

import re
from collections.abc import Sequence
from dataclasses import asdict, replace
from pathlib import Path
from types import SimpleNamespace

from shoplib.building.in_opening import box_of
from shoplib.draw.drawer_across import drawer_across
from shoplib.draw.drawer_plan import drawer_plan
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.lists.cut_list import Kind, kinds
from shoplib.lists.writing import Writing
from shoplib.live.choose_one import choose_one
from shoplib.live.drawer_choices import drawer_choices
from shoplib.live.drawer_project import (
    FRONTS,
    DrawerChoices,
    drawer_project,
    drawer_rounding,
    kept_project,
    starting_drawer,
    usual_rabbet,
)
from shoplib.live.drawer_says import DEPTH, LOWER, STOCK, findings, short, sum_lengths, sums
from shoplib.live.keep_group import keep_group
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.live.why import SIDES, Why
from shoplib.measure import INCH, INCH_STYLE, MM_STYLE, Style, write_brief, write_length, write_measured
from shoplib.measure.noted import noting
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject, Project
from shoplib.model.solved import Cabinet
from shoplib.model.tracing import traced
from shoplib.tables.slides import slides
from shoplib.words.naming import boards_in_short

PICTURE = (380.0, 225.0)

READINGS, HEIGHTS, SECOND = "The opening as measured", "Heights", "Another drawer above"
MOST_APART = INCH // 2
"""Readings of one case that differ by more are of two openings: the sliders go no further."""


def drawer_style(unit: str) -> Style:
    """How the drawer panel shows lengths: finer than a case, 1/64 in or 0.1 mm."""
    return INCH_STYLE if unit == "in" else MM_STYLE


def drawer_panel(unit: str = "in", folder: Path | None = None) -> Panel:
    """The panel of the drawer lesson, in inches or millimetres.

    What is saved with it goes into `folder`; None is `my_projects` beside the notebook that is open.

    >>> panel = drawer_panel("in")
    >>> panel.enter("front", "15 1/2 in")
    >>> panel.message
    'The box is 14 1/2 in wide outside: it goes together dry.'
    """
    style, start, rows = drawer_style(unit), starting_drawer(unit), slides(unit)
    arrow = "1/32 in" if unit == "in" else "0.5 mm"

    def length(label: str, ticks: int, inch: tuple[str, str], mm: tuple[str, str], step: str = arrow) -> LengthControl:
        return LengthControl(label, write_length(ticks, style), *(inch if unit == "in" else mm), style, step)

    def opening(label: str) -> LengthControl:
        return length(label, start.front, ("8 in", "36 in"), ("200 mm", "900 mm"))

    limits = ("0.3 in", "0.8 in", style, "0.001 in") if unit == "in" else ("8 mm", "20 mm", style, "0.1 mm")
    groups = [
        Group("Two numbers", {
            "front": opening("Opening, at the front"),
            "slide": choose_one("Slide or runner", rows, start.slide),
        }),
        Group(READINGS, {"back": opening("Opening, at the back")},
              "Both at the height of the slide. The smaller one decides the box; the other may want shims."),
        Group(STOCK, {
            "stock": LengthControl("Measured thickness of the box sides", write_measured(start.stock, style), *limits,
                                   measured=True),
            "rabbet": length("Depth of the corner rabbet", start.rabbet, ("1/16 in", "5/8 in"), ("2 mm", "16 mm"),
                             "1/64 in" if unit == "in" else "0.1 mm"),
        }),
        Group(HEIGHTS, {
            "height": length("Opening, height", start.height, ("2 in", "30 in"), ("50 mm", "760 mm")),
            "room_above": length("Room above the box", start.room_above, ("1/16 in", "2 in"), ("2 mm", "50 mm")),
            "bottom_up": length("Underside of the bottom, up from the lower edge", start.bottom_up,
                                ("1/8 in", "1 in"), ("3 mm", "25 mm")),
            "groove": length("Depth of the groove for the bottom", start.groove, ("1/8 in", "1/2 in"),
                             ("3 mm", "12 mm")),
        }, "The slide asks for room of its own: where it wants more above or below than you give, it gets it."),
        Group(DEPTH, {
            "depth": length("Inside depth, front edge to back", start.depth, ("8 in", "32 in"), ("200 mm", "800 mm")),
            "fronts": choose_one("Front", FRONTS),
        }, "An inset front takes its thickness off the depth. A slide begins a bit behind it, and wants room behind."),
        Group(SECOND, {
            "drawers": choose_one("Drawers in the opening", (1, 2)),
            "upper_front": opening("At the height of the upper one, at the front"),
            "upper_back": opening("At the height of the upper one, at the back"),
        }, "A case is seldom as wide at the top as at the bottom: measure at the height of each slide."),
    ]
    controls = {name: control for group in groups for name, control in group.controls.items()}

    def work(values: SimpleNamespace) -> Outcome:
        return outcome_of(_asked(values, start), values.opened, style)

    groups.append(keep_group(
        lambda: panel, lambda: kept_project(_asked(panel.values, start), unit),
        lambda kept: asdict(drawer_choices(kept, unit)), folder,
    ))
    # Before the panel watches its controls: by the time it follows the front, the front has taken the others along.
    controls["front"].observe(lambda _change: _keep_near_the_front(panel, style), names="ticks")
    controls["slide"].observe(lambda change: _suit_the_slide(panel, unit, change.old, change.new), names="value")
    panel = Panel("Drawer clearance", groups, work)
    _keep_near_the_front(panel, style)
    _show_what_applies(controls)
    return panel


def _asked(values: SimpleNamespace, start: DrawerChoices) -> DrawerChoices:
    """The choices, with what was not opened yet as at the start or as the front reading has it."""
    found = {name: value for name, value in vars(values).items() if name != "opened"}
    asked = replace(start, **found)
    if READINGS not in values.opened:
        asked = replace(asked, back=asked.front)
    if asked.drawers == 1:
        asked = replace(asked, upper_front=asked.front, upper_back=asked.front)
    return asked


def _keep_near_the_front(panel: Panel, style: Style) -> None:
    """The other readings stay near the front one; one that was not opened yet, or is left far behind, begins there."""
    front = panel.controls["front"].ticks
    low, high = (write_length(front + by, style) for by in (-MOST_APART, MOST_APART))
    with panel.held():
        for group, name in ((READINGS, "back"), (SECOND, "upper_front"), (SECOND, "upper_back")):
            control = panel.controls[name]
            near = group in panel.opened and abs(control.ticks - front) <= MOST_APART
            with control.hold_trait_notifications():
                control.low, control.high = min(control.low, front), max(control.high, front)
                control.ticks = control.ticks if near else front
                control.limit(low, high)


def _suit_the_slide(panel: Panel, unit: str, old: str, new: str) -> None:
    """The corner rabbet goes with what the drawer runs on, as long as it is the usual one."""
    rabbet = panel.controls["rabbet"]
    if rabbet.ticks == usual_rabbet(old, unit):
        with panel.held():
            rabbet.ticks = usual_rabbet(new, unit)


def _show_what_applies(controls: dict) -> None:
    def follow(_change: object = None) -> None:
        for name in ("upper_front", "upper_back"):
            controls[name].layout.display = None if controls["drawers"].value == 2 else "none"

    controls["drawers"].observe(follow, names="value")
    follow()


def outcome_of(choices: DrawerChoices, opened: Sequence[str], style: Style) -> Outcome:
    """Solve, dry-fit and draw a drawer; `opened` says of what to speak.

    Raises CannotBuild where no box can be, in the words of the controls.
    """
    project = replace(drawer_project(choices, style), rounding=drawer_rounding(style.unit))
    try:
        cabinet, told = _say(project, choices, opened)
    except ImpossibleProject as reason:
        raise CannotBuild(_in_panel_words(reason)) from None
    views = [lambda solved: drawer_plan(solved, style, LOWER, project.slides[choices.slide]),
             lambda solved: drawer_across(solved, style)]
    return Outcome(
        drawings=[_drawing(view(cabinet), f"drawing/{number}/") for number, view in enumerate(views)],
        tables=[_table(cabinet)],
        sums=sums(cabinet, opened),
        findings=told.findings,
        message=told.message,
        why=why_said(
            told, lambda: _say(traced(project), choices, opened)[1], style,
            Why(project, views, box_rows, lambda solved: sum_lengths(solved, opened)).ask,
        ),
        sums_asked=True,
    )


def _say(project: Project, choices: DrawerChoices, opened: Sequence[str]) -> tuple[Cabinet, Said]:
    """The project solved, and what the panel says of it."""
    with noting() as notes:
        cabinet = solve(project)
        found = findings(cabinet, project.slides[choices.slide], opened)
        stops, looks = (sum(each.level == level for each in found) for level in ("stop", "warn"))
        state = f"{stops} to mend first (Stop)" if stops else "it goes together dry"
        message = f"The box is {write_brief(box_of(cabinet, LOWER).size[0], cabinet.style)} wide outside: {state}"
        message += f", {looks} to look at (Look)." if looks else "."
    return cabinet, said(notes, found, message)


def _drawing(scene: Scene, asked: str) -> Drawing:
    return Drawing(scene.title, draw(scene, PICTURE, asked), scene.alt)


def box_rows(cabinet: Cabinet) -> list[Kind]:
    """The rows of the panel's table: the boards of the boxes, and what they run on."""
    return [kind for kind in kinds(cabinet) if kind.boards[0].role.startswith("box ")
            or kind.boards[0].role in ("runner", "kicker")]


def _table(cabinet: Cabinet) -> Table:
    write = Writing(cabinet.style)
    rows = [
        (
            short(boards_in_short(kind.boards), cabinet),
            str(kind.count),
            write.length(kind.finished[0]),
            write.length(kind.finished[1]),
            write.measured(kind.finished[2]),
        )
        for kind in box_rows(cabinet)
    ]
    head = ("Board", "Count", "Length", "Width", "Thickness")
    return Table("Boards of the box, finished sizes", head, rows, tuple(SIDES))


_CONTROLS = {
    "bays[1].drawers.corner": "Depth of the corner rabbet",
    "bays[1].drawers.bottom_depth": "Depth of the groove for the bottom",
    "bays[1].drawers.bottom_slack": "Depth of the groove for the bottom",
    "bays[1].drawers.box_sheet": "Measured thickness of the box sides",
    "bays[1].drawers.count": "Opening, height",
    "bays[1].drawers": "Inside depth or slide",
    "measured": "The opening as measured",
}
"""What a learner calls the values of the project, by the beginning of their keys."""


def _in_panel_words(reason: ImpossibleProject) -> str:
    """The solver's sentence under the name of a control, not of a key."""
    key, sentence = reason.key, reason.sentence
    inner = re.search(r"\((bays\[1\]\.[\w.]+): (.*)\)", sentence)
    if inner:
        key, sentence = inner.groups()
    label = next((label for start, label in _CONTROLS.items() if key.startswith(start)), "Not to be built")
    return f"{label}: {re.sub('bay 1 drawer [12] ', '', sentence).removesuffix('.')}."
