"""The way back from a project to the controls of the carcass panel, for what was kept in a file."""

from shoplib.live.carcass_project import BACKS, PULL_OUT, CaseChoices, case_project, starting_case
from shoplib.live.kept_choices import choices_again
from shoplib.measure import Style
from shoplib.model.project import Project


def case_choices(project: Project, style: Style) -> CaseChoices:
    """The choices that `carcass_project.case_project` makes this project of, whatever its name.

    What the project does not tell, because it does not apply (drawers of a case without any), is as the panel
    begins.

    Raises OtherProject where none do.

    >>> from dataclasses import replace
    >>> from shoplib.live.carcass_panel import style_for
    >>> choices = replace(starting_case("in"), bays=2, holds="shelves")
    >>> case_choices(case_project(choices, style_for("in")), style_for("in")) == choices
    True
    """
    return choices_again(
        project, style, lambda kept: _read(kept, style.unit), lambda choices: case_project(choices, style)
    )


def _read(project: Project, unit: str) -> CaseChoices:
    """The choices where there are such; LookupError or TypeError, or wrong ones, where there are none."""
    start = starting_case(unit)
    drawers = next((bay.drawers for bay in project.bays if bay.drawers), None)
    kinds = {bay.kind for bay in project.bays}
    holds = PULL_OUT if "pull-out" in kinds else {"open": "nothing yet"}.get(project.bays[0].kind, project.bays[0].kind)
    words = {kind: word for word, kind in BACKS.items()}
    size, base = project.size, project.base
    choices = CaseChoices(
        width=size.width, thickness=project.sheets["case sheet"].thickness, joint_depth=project.carcass.corner.depth,
        height=size.height, depth=size.depth, bays=len(project.bays), holds=holds,
        back=words[project.carcass.back.kind], base=base.kind,
        drawers=drawers.count if drawers else start.drawers,
        fronts=project.fronts.kind if holds in ("drawers", PULL_OUT) else start.fronts,
        base_height=base.height if base.kind != "none" else start.base_height,
    )
    if None in (choices.width, choices.height, choices.depth, choices.joint_depth):
        raise LookupError("a size is left to the project")
    return choices
