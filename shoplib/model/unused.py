"""Keys that say something which this project does not use: told, for they would be ignored without a word."""

from collections.abc import Iterator
from dataclasses import fields
from functools import cache
from typing import Any

from shoplib.model.project import Drawers, ImpossibleProject, JointChoice, Project

Rule = tuple[str, Any, str, bool, str]
"""The key of a record, the record, a field of it, whether this project uses it, and what would."""


def refuse_unused(project: Project) -> None:
    """Raises ImpossibleProject for the first key that is given and not used; a key at its usual value is left alone.

    >>> from shoplib.model.project import Carcass, Fronts, Size
    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> refuse_unused(Project("case", INCH_STYLE, {}, Size(), Carcass("ply"), fronts=Fronts("inset", reveal=INCH)))
    Traceback (most recent call last):
    ...
    shoplib.model.project.ImpossibleProject: fronts.reveal: only overlay fronts leave a reveal; take it out
    """
    for key, record, name, used, only in _rules(project):
        if not used and getattr(record, name) not in _usual(type(record))[name]:
            raise ImpossibleProject(f"{key}.{name}", f"{only}; take it out")


def _rules(project: Project) -> Iterator[Rule]:
    carcass, fronts, space = project.carcass, project.fronts, project.space
    over = carcass.top == "over"
    yield "fronts", fronts, "reveal", fronts.kind == "overlay", "only overlay fronts leave a reveal"
    yield "carcass.back", carcass.back, "setback", carcass.back.kind == "groove", "only a back in a groove is set back"
    yield "carcass", carcass, "stretcher_width", carcass.top == "stretchers", 'only top = "stretchers" has stretchers'
    for name in ("overhang_sides", "overhang_front"):
        yield "carcass", carcass, name, over, 'only a top that lies over the sides, top = "over", hangs over'
    for name in ("corner", "divider", "shelf"):
        yield from _of_joint(f"carcass.{name}", getattr(carcass, name))
    for number, rail in enumerate(carcass.rails, 1):
        yield from _of_joint(f"carcass.rails[{number}].joint", rail.joint)
    if space is not None:
        stood = space.bring_in != "slid in"
        yield "space", space, "room_height", stood, "a case that is slid in is not stood up in the room"
    for number, bay in enumerate(project.bays, 1):
        if bay.drawers is not None:
            yield from _of_drawers(f"bays[{number}].drawers", bay.drawers)


def _of_drawers(key: str, rule: Drawers) -> Iterator[Rule]:
    for name, kind in (("difference", "stepped"), ("ratio", "ratio"), ("given", "given")):
        yield key, rule, name, rule.heights == kind, f'only heights = "{kind}" uses it'
    yield key, rule, "strip_width", rule.between == "strip", 'only between = "strip" has strips'
    yield from _of_joint(f"{key}.corner", rule.corner)
    yield f"{key}.corner", rule.corner, "stop", False, "the corner of a box runs through"
    if rule.back_corner is not None:
        yield from _of_joint(f"{key}.back_corner", rule.back_corner)


_CUT = ("rabbet", "dado", "tongue", "drawer lock")
_USES = {
    "depth": _CUT, "end_gap": _CUT, "tongue": ("tongue", "drawer lock"), "lip": ("drawer lock",), "finger": ("finger",),
}  # fmt: skip
"""What only some kinds of joint use. A butt joint has always taken depth and end gap, for a kind to be tried later."""


def _of_joint(key: str, joint: JointChoice) -> Iterator[Rule]:
    for name, kinds in _USES.items():
        used = joint.kind in kinds or (joint.kind == "butt" and name in ("depth", "end_gap"))
        only = " or ".join(f'"{kind}"' for kind in kinds)
        yield key, joint, name, used, f"only kind = {only} has a {name.replace('_', ' ')}"
    through = joint.kind in ("pocket screws", "finger", "drawer lock")
    yield key, joint, "stop", not through, f'kind = "{joint.kind}" is not stopped'


@cache
def _usual(record: type) -> dict[str, tuple]:
    """What each field holds where nobody chose, in inches and in millimetres."""
    return {field.name: (field.default, *field.metadata.values()) for field in fields(record)}
