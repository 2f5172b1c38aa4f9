"""The panel of a whole project: the case that its file describes, with its size and sheet to move."""

from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from types import SimpleNamespace

from shoplib.documents.project_file import read_project
from shoplib.live.carcass_panel import outcome_of, style_for, thickness_control
from shoplib.live.keep_group import keep_group
from shoplib.live.kept_choices import choices_again
from shoplib.live.length_control import LengthControl
from shoplib.live.panel import Group, Outcome, Panel
from shoplib.measure import INCH, MM, write_length
from shoplib.model.cabinet import solve
from shoplib.model.project import Project, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Finding
from shoplib.tables.slides import slides


def project_panel(path: str, unit: str = "in", folder: Path | None = None) -> Panel:
    """A whole project file with its width, height, depth and sheet on sliders, shown in inches or millimetres.

    The case is sized from outside, starting at the size that the file gives it. What is kept goes into `folder`.
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
    thickness = thickness_control(f"the {case}", project.sheets[case].thickness, style)
    controls = {"width": width, "height": height, "depth": depth, "thickness": thickness}

    def asked(values: Mapping[str, int]) -> Project:
        return replace(
            project,
            style=style,
            slides=slides(unit),
            sheets=project.sheets | {case: _measuring(project.sheets[case], values["thickness"])},
            size=Size("outside", values["width"], values["height"], values["depth"]),
        )

    def work(values: SimpleNamespace) -> Outcome:
        made = asked(vars(values))
        sheet = made.sheets[case]
        if sheet.readings == project.sheets[case].readings:
            return outcome_of(made, beside="side")
        return outcome_of(made, beside="side", word=lambda finding: _say_moved(finding, case, sheet))

    def read(kept: Project) -> dict[str, int]:
        size = kept.size
        return {
            "width": size.width, "height": size.height, "depth": size.depth,
            "thickness": kept.sheets[case].thickness,
        }

    keep = keep_group(
        lambda: panel, lambda: asked(vars(panel.values)), lambda kept: choices_again(kept, style, read, asked), folder
    )
    panel = Panel(project.name, [Group("Size and sheet", controls), keep], work)
    return panel


def _say_moved(finding: Finding, case: str, sheet: Sheet) -> Finding:
    """A finding that counts the readings of a sheet, with why there are several though one number was set."""
    if finding.check != "readings" or finding.level == "note" or not finding.text.startswith(f"{case}: "):
        return finding
    why = (
        f"You set the mean of the {len(sheet.readings)} caliper readings of the {case}; they moved together, each "
        "as far from the mean as before. "
    )
    return replace(finding, text=why + finding.text)


def _measuring(sheet: Sheet, mean: int) -> Sheet:
    """The same sheet with its readings moved together until their mean is `mean`; they differ as before."""
    by = mean - sheet.thickness
    return replace(sheet, readings=tuple(reading + by for reading in sheet.readings) or (mean,))
