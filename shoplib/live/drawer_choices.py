"""The way back from a project to the controls of the drawer panel, for what was kept in a file."""

from dataclasses import replace

from shoplib.live.drawer_project import FRONTS, DrawerChoices, drawer_rounding, kept_project
from shoplib.live.kept_choices import choices_again
from shoplib.measure import Style
from shoplib.model.project import Project


def drawer_choices(project: Project, unit: str) -> DrawerChoices:
    """The choices that `drawer_project.kept_project` makes this project of, whatever its name.

    What the project does not tell (readings of a second drawer where there is one) is as that of the first, and
    `rabbet` None where the model takes it. Raises OtherProject where no choices give it.

    >>> from shoplib.live.drawer_project import starting_drawer
    >>> choices = replace(starting_drawer("mm"), fronts=FRONTS[1])
    >>> drawer_choices(kept_project(choices, "mm"), "mm") == choices
    True
    """
    style = Style(unit, drawer_rounding(unit))
    return choices_again(project, style, _read, lambda choices: kept_project(choices, unit))


def _read(project: Project) -> DrawerChoices:
    drawers, measured = project.bays[0].drawers, project.measured.openings
    if drawers is None:
        raise LookupError("the bay has no drawers")
    first = measured["bay 1 drawer 1"]
    upper = measured.get("bay 1 drawer 2", replace(first, back=first.front))
    return DrawerChoices(
        front=first.front, back=first.back, slide=drawers.slide, stock=project.sheets["box sheet"].thickness,
        rabbet=drawers.corner.depth, height=project.size.height, room_above=drawers.room_above,
        bottom_up=drawers.bottom_up, groove=drawers.bottom_depth, depth=project.size.depth,
        fronts=next(words for words in FRONTS if words.split(",")[0] == project.fronts.kind), drawers=drawers.count,
        upper_front=upper.front, upper_back=upper.back,
    )
