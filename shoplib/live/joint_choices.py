"""The way back from a project to the controls of the joint panel, for what was kept in a file."""

from shoplib.live.joint_project import JointChoices, joint_project
from shoplib.live.kept_choices import choices_again
from shoplib.measure import Style
from shoplib.model.project import Back, JointChoice, Project


def joint_choices(project: Project, style: Style) -> JointChoices:
    """The choices that `joint_project.joint_project` makes this project of, whatever its name.

    What its kind of joint does not ask for (a stop, where nothing is stopped) is 0. Each sheet that enters must have
    its three readings, as the panel shows them. Raises OtherProject where no choices give the project.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> choices = JointChoices("rabbet", (7 * INCH // 10,) * 3, INCH // 4, 7 * INCH // 10, end_gap=INCH // 32)
    >>> joint_choices(joint_project(choices, INCH_STYLE), INCH_STYLE) == choices
    True
    """
    return choices_again(project, style, _read, lambda choices: joint_project(choices, style))


def _read(project: Project) -> JointChoices:
    kind, cut = _joint(project)
    readings = project.sheets["back sheet" if kind == "groove" else "case sheet"].readings
    if len(readings) != 3:
        raise LookupError("there are three readings on the panel")
    receives = project.sheets["case sheet"].readings[0]
    if isinstance(cut, Back):
        return JointChoices(kind, readings, cut.depth, receives, cut.fit, cut.end_gap)
    return JointChoices(kind, readings, cut.depth or 0, receives, cut.fit, cut.end_gap, cut.tongue or 0, cut.stop)


def _joint(project: Project) -> tuple[str, JointChoice | Back]:
    """What the panel calls the kind of joint, and where the project says how it is cut."""
    corner, shelf, back = project.carcass.corner, project.carcass.shelf, project.carcass.back
    if corner.kind != "butt":
        return "rabbet" if corner.kind == "rabbet" else "tongue in a narrower dado", corner
    if shelf.kind != "butt":
        return "stopped dado" if shelf.stop else "dado", shelf
    return ("groove", back) if back.kind == "groove" else ("butt", corner)
