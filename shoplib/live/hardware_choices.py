"""The way back from a project to the controls of the hardware panel, for what was kept in a file."""

from dataclasses import replace

from shoplib.live.hardware_project import (
    ALIKE,
    ALONE,
    KINDS,
    ONE_MORE,
    SHELVES,
    HardwareChoices,
    hardware_project,
    starting_hardware,
)
from shoplib.live.kept_choices import choices_again
from shoplib.measure import Style, share
from shoplib.model.project import Project


def hardware_choices(project: Project, style: Style) -> HardwareChoices:
    """The choices that `hardware_project.hardware_project` makes this project of, whatever its name.

    The tools, the panel they hang on and the drawing that stands first are no part of it: they are as the panel
    begins. Raises OtherProject where no choices give the project.

    >>> from shoplib.live.hardware_panel import hardware_style
    >>> style, choices = hardware_style("mm"), replace(starting_hardware("mm"), beside=SHELVES, shelves=4)
    >>> hardware_choices(hardware_project(choices, style), style) == choices
    True
    """
    return choices_again(project, style, _read, lambda choices: hardware_project(choices, style))


def _read(project: Project) -> HardwareChoices:
    first, *beside = project.bays
    start, bays = starting_hardware(project.style.unit), len(project.bays)
    inside = project.size.width - (bays - 1) * project.sheets["case sheet"].thickness
    choices = replace(
        start, height=project.size.height, count=first.drawers.count, gap=project.fronts.gap,
        kind=KINDS[1] if project.fronts.kind == "inset" else KINDS[0],
        front=project.sheets["front sheet"].thickness, width=share(inside, bays, 1)[0], pitch=project.pulls.pitch,
        box=project.sheets["box sheet"].thickness,
    )
    if not beside:
        return replace(choices, beside=ALONE)
    if beside[0].shelves is not None:
        return replace(choices, beside=SHELVES, shelves=beside[0].shelves.fixed)
    return replace(choices, beside=ALIKE if beside[0].drawers.count == choices.count else ONE_MORE)
