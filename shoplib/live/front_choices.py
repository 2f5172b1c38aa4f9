"""The way back from a project to the controls of the front panel, for what was kept in a file."""

from shoplib.live.front_project import (
    ARITHMETIC,
    FREER,
    IN_LINE,
    KINDS,
    ONE_MORE,
    RULES,
    FrontChoices,
    front_project,
    starting_fronts,
)
from shoplib.live.kept_choices import choices_again
from shoplib.measure import Style, share
from shoplib.model.project import Drawers, Project


def front_choices(project: Project, style: Style) -> FrontChoices:
    """The choices that `front_project.front_project` makes this project of, whatever its name.

    What the project does not tell, because it does not apply (by how much stepped fronts differ, where they are
    equal), is as the panel begins. Raises OtherProject where no choices give it.

    >>> from dataclasses import replace
    >>> from shoplib.live.front_panel import front_style
    >>> style, choices = front_style("in"), replace(starting_fronts("in"), rule="stepped", bays=2, rows=ONE_MORE)
    >>> front_choices(front_project(choices, style), style) == choices
    True
    """
    return choices_again(project, style, _read, lambda choices: front_project(choices, style))


def _read(project: Project) -> FrontChoices:
    start = starting_fronts(project.style.unit)
    if any(bay.drawers is None for bay in project.bays):
        raise LookupError("a bay has no drawers")
    first, bays, thick = project.bays[0].drawers, len(project.bays), project.sheets["case sheet"].thickness
    inset = project.fronts.kind == "inset"
    in_line = bays == 1 or project.bays[1].drawers.like_bay == 1
    return FrontChoices(
        height=project.size.height, count=first.count, gap=project.fronts.gap,
        width=share(project.size.width - (bays - 1) * thick, bays, 1)[0],
        around=project.fronts.around if inset else project.fronts.reveal, thick=thick,
        difference=first.difference if first.heights == "stepped" else start.difference,
        kind=KINDS[0] if inset else KINDS[1], rule=_rule(first), bays=bays, rows=IN_LINE if in_line else ONE_MORE,
    )


def _rule(drawers: Drawers) -> str:
    series = {ARITHMETIC[: drawers.count]: RULES[2], FREER[: drawers.count]: RULES[3]}
    return series[drawers.ratio] if drawers.heights == "ratio" else drawers.heights
