"""The carcass panel: three numbers at first, then size, bays, back and base, each with the case drawn at once."""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import asdict, replace
from pathlib import Path
from types import SimpleNamespace

import ipywidgets

from shoplib.checks import check
from shoplib.documents.cut_list_file import sum_text
from shoplib.draw.elevation import front_elevation
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.draw.section import section_side
from shoplib.lists.cut_list import kinds
from shoplib.lists.writing import Writing
from shoplib.live.carcass_project import (
    BACKS,
    BASES,
    FRONTS,
    HOLDS,
    CaseChoices,
    case_project,
    first_case,
    starting_case,
)
from shoplib.live.carcass_refusals import refusal
from shoplib.live.case_choices import case_choices
from shoplib.live.choose_one import choose_one
from shoplib.live.keep_group import keep_group
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.said import Said, said, why_said
from shoplib.live.table import Table
from shoplib.live.why import SIDES, Why, lengths
from shoplib.measure import INCH, MM, Style, write_brief, write_length, write_measured
from shoplib.measure.noted import noting
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject, Project
from shoplib.model.solved import Cabinet, Finding
from shoplib.model.tracing import traced
from shoplib.words.naming import boards_in_short

PICTURE = (360.0, 280.0)
"""Width and height that a drawing of a panel is fitted to, in the picture's own units.

On the screen it is stretched to its column, so this is small enough for letters that can be read there.
"""

SMALL = (300.0, 210.0)
"""For a panel whose table is to be seen together with its drawing."""


def style_for(unit: str) -> Style:
    """How the panels show lengths: 1/32 in, or half a millimetre."""
    return Style("in", INCH // 32) if unit == "in" else Style("mm", MM // 2)


def width_panel(unit: str = "in") -> Panel:
    """The first slider: the width of a box of five boards, and nothing else to turn.

    >>> panel = width_panel("mm")
    >>> panel.enter("width", "900 mm")
    >>> [row[2] for row in panel.outcome.tables[0].rows if row[0].startswith("bottom")]
    ['877 mm']
    """
    style = style_for(unit)

    def work(values: SimpleNamespace) -> Outcome:
        outcome = outcome_of(case_project(replace(first_case(unit), width=values.width), style), fit=SMALL)
        return replace(outcome, sums=(), findings=())

    return Panel("A case of five boards", [Group("One number", {"width": _width(unit)})], work)


def carcass_panel(unit: str = "in", folder: Path | None = None) -> Panel:
    """The panel of the carcass lesson, in inches or millimetres.

    What is saved with it goes into `folder`; None is `my_projects` beside the notebook that is open.

    >>> panel = carcass_panel("in")
    >>> panel.enter("width", "30 in")
    >>> panel.message
    '5 boards: it goes together dry.'
    """
    style, start = style_for(unit), starting_case(unit)

    def length(label: str, name: str, inch: tuple[str, str], mm: tuple[str, str]) -> LengthControl:
        return LengthControl(
            label, write_length(getattr(start, name), style), *(inch if unit == "in" else mm), style
        )

    groups = [
        Group(
            "Three numbers",
            {
                "width": _width(unit),
                "thickness": thickness_control("the sheet", start.thickness, style),
                "joint_depth": length(
                    "Depth of the joint", "joint_depth", ("1/16 in", "5/8 in"), ("2 mm", "16 mm")
                ),
            },
        ),
        Group(
            "Height and depth",
            {
                "height": length("Height", "height", ("8 in", "84 in"), ("200 mm", "2100 mm")),
                "depth": length("Depth", "depth", ("6 in", "30 in"), ("150 mm", "760 mm")),
            },
        ),
        Group("Bays", {"bays": choose_one("Number of bays", range(1, 5), 1)}),
        Group(
            "What the bays hold",
            {
                "holds": choose_one("Each bay holds", HOLDS),
                "drawers": choose_one("Drawers in a bay", range(1, 9), 3),
                "fronts": choose_one("Fronts", FRONTS),
            },
            "Inset fronts lie between the sides, overlay fronts lie on the front edges of the case. A pull-out is "
            "one tall panel that slides out of its bay, with hooks for tools.",
        ),
        Group("Back", {"back": choose_one("Back", tuple(BACKS))}),
        Group(
            "Base",
            {
                "base": choose_one("Base", BASES),
                "base_height": length(
                    "Height of the base", "base_height", ("1 in", "8 in"), ("20 mm", "200 mm")
                ),
            },
            "Toe space: the bottom of the front stands back, for your feet. Plinth: a low frame of its own that "
            "the case stands on. Casters are wheels; they and feet come on top of the height of the case.",
        ),
    ]
    _ask_what_applies({name: control for group in groups for name, control in group.controls.items()})

    def project(values: SimpleNamespace) -> Project:
        asked = {name: value for name, value in vars(values).items() if name != "opened"}
        return case_project(CaseChoices(**asked), style)

    def work(values: SimpleNamespace) -> Outcome:
        return outcome_of(project(values), beside="side" if len(values.opened) > 1 else "")

    groups.append(keep_group(
        lambda: panel, lambda: project(panel.values), lambda kept: asdict(case_choices(kept, style)), folder,
    ))
    panel = Panel("Carcass sizing", groups, work)
    return panel


def _ask_what_applies(controls: Mapping[str, ipywidgets.Widget]) -> None:
    """Show a control only where it changes something, and name the height for what it is."""

    def follow(_change: object = None) -> None:
        base, holds = controls["base"].value, controls["holds"].value
        loose = base in ("feet", "casters")
        controls["height"].label = f"Height of the case, without {base}" if loose else "Height"
        drawers = holds.startswith("drawers")
        for name, applies in (("base_height", base != "none"), ("drawers", drawers), ("fronts", drawers)):
            controls[name].layout.display = None if applies else "none"

    for name in ("base", "holds"):
        controls[name].observe(follow, names="value")
    follow()


def outcome_of(
    project: Project, beside: str = "", fit: tuple[float, float] = PICTURE,
    word: Callable[[Finding], Finding] = lambda finding: finding,
) -> Outcome:
    """Solve, dry-fit and draw a project; `beside` "side" adds the section from the side.

    Each drawing is fitted into `fit`, width and height in the picture's own units. `word` puts what a finding says
    into the words of the panel.

    Raises CannotBuild where no boards can be, in the words of the controls.
    """
    def say(given: Project) -> tuple[Cabinet, Said]:
        with noting() as notes:
            cabinet = solve(given)
            findings = [word(_under_a_slider(finding)) for finding in check(cabinet)]
        return cabinet, said(notes, findings, f"{len(cabinet.boards)} boards: {_in_short(findings)}.")

    try:
        cabinet, told = say(project)
    except ImpossibleProject as reason:
        raise refusal(reason) from None
    style = project.style
    roles = {board.role for board in cabinet.boards}
    closed = "front" in roles or "box front" not in roles
    views: list[Callable[[Cabinet], Scene]] = [lambda solved: front_elevation(solved, style, fronts=closed)]
    if beside == "side":
        views.append(lambda solved: section_side(solved, style))
    return Outcome(
        drawings=[_drawing(view(cabinet), fit, f"drawing/{number}/") for number, view in enumerate(views)],
        tables=[part_table(cabinet)],
        sums=[*(sum_text(chain, cabinet, exact=False) for chain in cabinet.sums), *_stands_on(cabinet)],
        findings=told.findings,
        message=told.message,
        why=why_said(
            told, lambda: say(traced(project))[1], style,
            Why(project, views, sums=lambda cabinet: [*map(lengths, cabinet.sums), *_standing(cabinet)]).ask,
        ),
        sums_asked=True,
    )


def _drawing(scene: Scene, fit: tuple[float, float], asked: str) -> Drawing:
    return Drawing(scene.title, draw(scene, fit, asked), scene.alt)


def _in_short(findings: Iterable[Finding]) -> str:
    """How it stands, for the line above the picture."""
    levels = [finding.level for finding in findings]
    stops, looks = levels.count("stop"), levels.count("warn")
    said = f"{stops} to mend before anything is cut (Stop)" if stops else "it goes together dry"
    return f"{said}, {looks} to look at (Look)" if looks else said


def _stands_on(cabinet: Cabinet) -> list[str]:
    """The sum of what stands below the boards, casters or feet, which no sum of boards has."""
    found = []
    for told in _standing(cabinet):
        (what, under), (_, case), (_, over_all) = ((name, write_brief(ticks, cabinet.style)) for name, ticks in told)
        found.append(f"{what} + case = height over all: {under} + {case} = {over_all}")
    return found


def _standing(cabinet: Cabinet) -> list[tuple[tuple[str, int], ...]]:
    """The same with its lengths in ticks; none where the case stands on its boards."""
    below = {"caster": "casters", "foot": "feet"}
    what = next((below[fitting.what] for fitting in cabinet.hardware if fitting.what in below), "")
    boards, whole = cabinet.outside.size[2], cabinet.envelope.size[2]
    return [((what, whole - boards), ("case", boards), ("height over all", whole))] if what else []


def _under_a_slider(finding: Finding) -> Finding:
    """A finding that names the key of a size, with the words of whoever moves a slider instead."""
    text = re.sub(r"\bsize\.(width|height|depth)\b", r"the \1 set here", finding.text)
    return finding if text == finding.text else replace(finding, text=text)


def part_table(cabinet: Cabinet) -> Table:
    """The boards, equal ones in one row, with finished sizes as the shop reads them."""
    write = Writing(cabinet.style)
    rows = [
        (
            boards_in_short(kind.boards),
            str(kind.count),
            write.length(kind.finished[0]),
            write.length(kind.finished[1]),
            write.measured(kind.finished[2]),
            kind.sheet,
        )
        for kind in kinds(cabinet)
    ]
    head = ("Board", "Count", "Length", "Width", "Thickness", "Sheet")
    return Table("Boards, finished sizes", head, rows, tuple(SIDES))


def _width(unit: str) -> LengthControl:
    style = style_for(unit)
    limits = ("12 in", "72 in") if unit == "in" else ("300 mm", "1800 mm")
    return LengthControl("Width", write_length(starting_case(unit).width, style), *limits, style)


def thickness_control(what: str, ticks: int, style: Style) -> LengthControl:
    """The measured thickness of a sheet as calipers give it, `ticks` at first."""
    limits = ("0.45 in", "0.85 in", style, "0.001 in") if style.unit == "in" else ("11 mm", "22 mm", style, "0.1 mm")
    return LengthControl(f"Measured thickness of {what}", write_measured(ticks, style), *limits, measured=True)
