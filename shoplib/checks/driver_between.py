"""Bays so narrow that no driver stands square to an upright between two of them: slides and runners go on there."""

from collections.abc import Iterator

from shoplib.checks.as_built import AsBuilt
from shoplib.measure import INCH, MM, narrowest, write_brief
from shoplib.model.board import BOXES
from shoplib.model.solved import Cabinet, Finding
from shoplib.model.uprights import UPRIGHTS
from shoplib.words.naming import and_list

DRIVER = {"in": 8 * INCH, "mm": 200 * MM}
"""How long a drill driver is with a short bit in its chuck and a screw on it (from memory; common practice, no
source)."""

_STRIPS = ("runner", "kicker")


def find_bays_too_narrow_for_a_driver(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One warning for each bay in which slides or runners are screwed to an upright with less than a driver's length
    before it. The amount is what is missing.

    >>> find_bays_too_narrow_for_a_driver(Cabinet("no boards", (), {}))
    ()
    """
    built, need = AsBuilt(cabinet), DRIVER[cabinet.style.unit]
    narrow: dict[str, list[tuple[int, tuple[tuple[str, str], ...]]]] = {}
    for group in cabinet.groups:
        clear, held = built.clear_width(group), tuple(_held(group, cabinet))
        if clear is not None and held and clear < need:
            narrow.setdefault(cabinet.part_of(group).bay_name, []).append((clear, held))
    return tuple(_too_narrow(bay, narrowest([clear for clear, _ in drawers]),
                             dict(one for _, held in drawers for one in held), cabinet)
                 for bay, drawers in narrow.items())


def _too_narrow(bay: str, clear: int, held: dict[str, str], cabinet: Cabinet) -> Finding:
    """`held` says for each upright what is screwed to it."""
    need, style = DRIVER[cabinet.style.unit], cabinet.style
    what = and_list(list(dict.fromkeys(held.values())))
    text = (
        f"{bay}: {write_brief(clear, style)} lie between its uprights, and a driver with its bit is about "
        f"{write_brief(need, style)} long: it cannot stand square to the screws of the {what}. {_mend(what, cabinet)}"
    )
    return Finding("driver room", "warn", tuple(held), text, need - clear)


def _mend(what: str, cabinet: Cabinet) -> str:
    tool = "Take a right-angle driver or a short screwdriver, and try it in that width first"
    before = f", or screw the {what} to the uprights while these lie flat, before the case is glued"
    return f"{tool}{before if cabinet.first_stage < BOXES else ''}."


def _held(group: str, cabinet: Cabinet) -> Iterator[tuple[str, str]]:
    """Each upright to which slides or runners of a drawer or pull-out are screwed, and which of them."""
    for fitting in cabinet.hardware:
        if fitting.what == "slide" and fitting.group == group:
            yield from ((screw.into, "slides") for screw in fitting.screws if _upright(screw.into, cabinet))
    for joint in cabinet.joints:
        strip = cabinet.by_name.get(joint.enters)
        of_it = strip and strip.role in _STRIPS and strip.part_of and strip.part_of.name == group
        if of_it and _upright(joint.receives, cabinet):
            yield joint.receives, f"{strip.role}s"


def _upright(name: str, cabinet: Cabinet) -> bool:
    return name in cabinet.by_name and cabinet.by_name[name].role in UPRIGHTS
