"""The carcass panel: three numbers at first, then size, bays, back and base, each with the case drawn at once."""

from collections.abc import Iterable
from dataclasses import replace
from types import SimpleNamespace

import ipywidgets

from shoplib.checks import check
from shoplib.documents.cut_list_file import sum_text
from shoplib.documents.project_file import read_project
from shoplib.draw.elevation import front_elevation
from shoplib.draw.pen import draw
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
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing
from shoplib.live.table import Table
from shoplib.measure import INCH, MM, Style, write_length, write_measured
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject, Project, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.words.naming import boards_in_short

PICTURE = (560.0, 420.0)
"""Width and height that a drawing of a panel is fitted to, in the picture's own units."""


SMALL = (340.0, 250.0)
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


def carcass_panel(unit: str = "in") -> Panel:
    """The panel of the carcass lesson, in inches or millimetres.

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
                "thickness": _thickness("the sheet", start.thickness, style),
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
        Group("Bays", {"bays": _choice("Number of bays", range(1, 5), 1)}),
        Group(
            "What the bays hold",
            {
                "holds": _choice("Each bay holds", HOLDS),
                "drawers": _choice("Drawers in a bay", range(1, 9), 3),
                "fronts": _choice("Fronts", FRONTS),
            },
        ),
        Group("Back", {"back": _choice("Back", tuple(BACKS))}),
        Group(
            "Base",
            {
                "base": _choice("Base", BASES),
                "base_height": length(
                    "Height of the base", "base_height", ("1 in", "8 in"), ("20 mm", "200 mm")
                ),
            },
        ),
    ]

    def work(values: SimpleNamespace) -> Outcome:
        asked = {name: value for name, value in vars(values).items() if name != "opened"}
        return outcome_of(case_project(CaseChoices(**asked), style), beside="side" if len(values.opened) > 1 else "")

    return Panel("Carcass sizing", groups, work)


def project_panel(path: str, unit: str = "in") -> Panel:
    """A whole project file with its width, height, depth and sheet on sliders, shown in inches or millimetres.

    The case is sized from outside, starting at the size that the file gives it.
    """
    project = read_project(path)
    style = project.style if project.style.unit == unit else style_for(unit)
    start = solve(project).outside.size
    case = project.carcass.sheet
    near, far = (4 * INCH, 12 * INCH) if unit == "in" else (100 * MM, 300 * MM)
    width, depth, height = (
        LengthControl(
            label,
            write_length(size, style),
            write_length(style.step * ((size - near) // style.step), style),
            write_length(style.step * ((size + far) // style.step), style),
            style,
        )
        for label, size in zip(("Width", "Depth", "Height"), start, strict=True)
    )
    thickness = _thickness(f"the {case}", project.sheets[case].thickness, style)
    controls = {"width": width, "height": height, "depth": depth, "thickness": thickness}

    def work(values: SimpleNamespace) -> Outcome:
        sheet = _measuring(project.sheets[case], values.thickness)
        asked = replace(
            project,
            style=style,
            sheets=project.sheets | {case: sheet},
            size=Size("outside", values.width, values.height, values.depth),
        )
        return outcome_of(asked, beside="side")

    return Panel(project.name, [Group("Size and sheet", controls)], work)


def _measuring(sheet: Sheet, mean: int) -> Sheet:
    """The same sheet with its readings moved together until their mean is `mean`; they differ as before."""
    by = mean - sheet.thickness
    return replace(sheet, readings=tuple(reading + by for reading in sheet.readings) or (mean,))


def outcome_of(project: Project, beside: str = "", fit: tuple[float, float] = PICTURE) -> Outcome:
    """Solve, dry-fit and draw a project; `beside` "side" adds the section from the side.

    Each drawing is fitted into `fit`, width and height in the picture's own units.

    Raises CannotBuild where no boards can be, in the words of the controls.
    """
    try:
        cabinet = solve(project)
    except ImpossibleProject as reason:
        raise CannotBuild(_in_panel_words(reason)) from None
    style = project.style
    findings = check(cabinet)
    roles = {board.role for board in cabinet.boards}
    scenes = [front_elevation(cabinet, style, fronts="front" in roles or "box front" not in roles)]
    if beside == "side":
        scenes.append(section_side(cabinet, style))
    stops = sum(finding.level == "stop" for finding in findings)
    said = (
        f"{stops} thing{'s' if stops > 1 else ''} to mend before anything is cut" if stops else "it goes together dry"
    )
    return Outcome(
        drawings=[Drawing(scene.title, draw(scene, fit), scene.alt) for scene in scenes],
        tables=[part_table(cabinet)],
        sums=[sum_text(chain, cabinet) for chain in cabinet.sums],
        findings=findings,
        message=f"{len(cabinet.boards)} boards: {said}.",
    )


_CONTROLS = {
    "size.width": "Width",
    "size.height": "Height",
    "size.depth": "Depth",
    "carcass.back": "Back",
    "carcass": "Depth of the joint",
    "base": "Base",
    "fronts": "Fronts",
    "bays": "Bays",
}
"""What a learner calls the values of a project file, by the beginning of their keys."""


def _in_panel_words(reason: ImpossibleProject) -> str:
    """The solver's sentence under the name of a control, not of a key."""
    label = next((label for key, label in _CONTROLS.items() if reason.key.startswith(key)), "Not to be built")
    return f"{label}: {reason.sentence.removesuffix('.')}."


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
    return Table("Boards, finished sizes", ("Board", "Count", "Length", "Width", "Thickness", "Sheet"), rows)


def _width(unit: str) -> LengthControl:
    style = style_for(unit)
    limits = ("12 in", "72 in") if unit == "in" else ("300 mm", "1800 mm")
    return LengthControl("Width", write_length(starting_case(unit).width, style), *limits, style)


def _thickness(what: str, ticks: int, style: Style) -> LengthControl:
    limits = ("0.45 in", "0.85 in", style, "0.001 in") if style.unit == "in" else ("11 mm", "22 mm", style, "0.1 mm")
    return LengthControl(f"Measured thickness of {what}", write_measured(ticks, style), *limits, measured=True)


def _choice(label: str, options: Iterable[str | int], value: str | int | None = None) -> ipywidgets.Dropdown:
    """One of a few; the first unless `value` says which."""
    options = tuple(options)
    return ipywidgets.Dropdown(
        options=options,
        value=options[0] if value is None else value,
        description=label,
        style={"description_width": "auto"},
        layout={"width": "auto"},
    )
