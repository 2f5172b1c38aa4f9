"""The lesson's own shelf and tongue: one case for its sums and pictures, solved by the model."""

from collections.abc import Callable
from dataclasses import replace

from shoplib.live.corner_panel import CORNERS, CornerChoices, corner_project
from shoplib.live.joint_panel import RECEIVES, joint_style
from shoplib.live.joint_project import JointChoices, enters_in, joint_project, with_one_shelf
from shoplib.measure import mean, read_length
from shoplib.model.cabinet import solve
from shoplib.model.project import Project
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Joint
from shoplib.model.tracing import traced

SOLD_AS = {"in": "3/4 in", "mm": "18 mm"}
"""What the lesson's sheet is called."""

READINGS = {"in": ("0.699 in", "0.703 in", "0.710 in"), "mm": ("17.3 mm", "17.5 mm", "17.7 mm")}
"""Three caliper readings of it, made up."""

BACK_READS = {"in": "0.204 in", "mm": "5.9 mm"}
"""The reading of the thin sheet of a back, made up."""

_SIZES = {
    "depth": {"in": "1/4 in", "mm": "6 mm"},
    "fit": {"in": "0.004 in", "mm": "0.1 mm"},
    "end_gap": {"in": "1/32 in", "mm": "1 mm"},
    "tongue": {"in": "1/4 in", "mm": "6 mm"},
    "stop": {"in": "1/2 in", "mm": "12 mm"},
    "deep": {"in": "5/16 in", "mm": "8 mm"},
}


def size(name: str, unit: str) -> int:
    """A size that the lesson works with, in ticks: depth, fit, end_gap, tongue, stop, deep."""
    return read_length(_SIZES[name][unit])


def readings(unit: str) -> tuple[int, ...]:
    """The readings of the lesson's sheet, in ticks."""
    return tuple(read_length(text) for text in READINGS[unit])


def dado_as_wide_as(which: Callable[[Sheet], int], unit: str) -> tuple[Cabinet, Joint]:
    """The lesson's shelf in a dado that is as wide as `which` says of its sheet, with nothing to spare.

    What the cut has over the thickest reading, or lacks, stands in its fit: so its width is told as what it was cut to.
    """
    project = joint_project(JointChoices("dado", readings(unit), size("depth", unit), end_gap=0), joint_style(unit))
    sold = replace(project.sheets["case sheet"], nominal=read_length(SOLD_AS[unit]))
    project = traced(replace(project, sheets={"case sheet": sold}))
    sheet = project.sheets["case sheet"]
    shelf = replace(project.carcass.shelf, fit=which(sheet) - sheet.thickest)
    return _with_joint(replace(project, carcass=replace(project.carcass, shelf=shelf)), "dado")


def shown(unit: str, kind: str, **other: int | tuple[int, ...]) -> tuple[Cabinet, Joint]:
    """The panel's case with this kind of joint and the joint in its left side; `other` replaces sizes."""
    asked = {name: size(name, unit) for name in ("depth", "fit", "end_gap", "tongue", "stop")}
    own = {"readings": readings(unit)}
    if kind == "groove":
        own = {"readings": (read_length(BACK_READS[unit]),), "receives": mean(readings(unit))}
    choices = JointChoices(kind, **(own | asked | other))
    return _with_joint(traced(joint_project(choices, joint_style(unit))), kind)


def _with_joint(project: Project, kind: str) -> tuple[Cabinet, Joint]:
    """The project solved, and its joint of that kind in the left side."""
    case = with_one_shelf(solve(project))
    return case, next(one for one in case.joints if (one.enters, one.receives) == (enters_in(kind), RECEIVES))


def two_bays(unit: str, depth: int) -> Cabinet:
    """The same case with two bays, and a shelf on both sides of its divider at the same height."""
    project = joint_project(JointChoices("dado", readings(unit), depth), joint_style(unit))
    return solve(traced(replace(project, bays=project.bays * 2)))


def corner_cases(unit: str) -> list[Cabinet]:
    """The case of the corner panel with each of its four corners."""
    sizes = ("24 in", "20 in", "0.703 in") if unit == "in" else ("600 mm", "500 mm", "17.5 mm")
    choices = CornerChoices(*(read_length(text) for text in sizes), size("depth", unit), size("tongue", unit))
    return [solve(traced(corner_project(corner, choices, joint_style(unit)))) for corner in CORNERS]
