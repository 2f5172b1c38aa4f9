"""The way back from a project to the controls of the carcass panel, for what was kept in a file."""

from dataclasses import replace

from shoplib.live.carcass_project import BACKS, PULL_OUT, CaseChoices, case_project, starting_case
from shoplib.measure import Style
from shoplib.model.project import Project

_IN_WORDS = {"in": "inches", "mm": "millimetres"}


class OtherProject(ValueError):
    """A project that the controls of the carcass panel cannot show; the text is one sentence that says why."""


def case_choices(project: Project, style: Style) -> CaseChoices:
    """The choices that `carcass_project.case_project` makes this project of, whatever its name.

    What the project does not tell, because it does not apply (drawers of a case without any), is as the panel
    begins. The choices are tried: they must give the very same project again.

    Raises OtherProject where none do.

    >>> from shoplib.live.carcass_panel import style_for
    >>> choices = replace(starting_case("in"), bays=2, holds="shelves")
    >>> case_choices(case_project(choices, style_for("in")), style_for("in")) == choices
    True
    """
    if project.style.unit != style.unit:
        kept, now = _IN_WORDS[project.style.unit], _IN_WORDS[style.unit]
        raise OtherProject(f"it was kept in {kept}, and this panel is in {now}: choose {kept} on 00 Start here.")
    try:
        choices = _read(project, style.unit)
        same = case_project(choices, style) == replace(project, name=case_project(choices, style).name)
    except (LookupError, TypeError):
        same = False
    if not same:
        raise OtherProject("there is more in it than these controls can set.")
    return choices


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
