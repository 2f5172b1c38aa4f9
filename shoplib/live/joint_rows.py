"""What the joint panel tells of a joint in numbers: the rows of its table, and one sentence."""

from dataclasses import dataclass

from shoplib.lists.writing import Writing
from shoplib.measure import Style
from shoplib.model.allowance import allowance
from shoplib.model.solved import Cabinet, Joint


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the panel's table: what it is, its ticks, and how the shop writes it.

    `kind` is "length" (on the rule), "setting" (on the rule where it is a mark of it) or "measured" (a decimal).
    """

    what: str
    ticks: int
    kind: str = "setting"

    def text(self, style: Style) -> str:
        """The size as the shop reads it."""
        return getattr(Writing(style), self.kind)(self.ticks)


def rows(cabinet: Cabinet, joint: Joint) -> tuple[Row, ...]:
    """What the joint does to both boards, each number read off the boards."""
    found, enters = allowance(cabinet, joint), cabinet.by_name[joint.enters]
    left, right = (cabinet.by_name[name].box for name in ("left side", "right side"))
    body = enters.box
    told = [
        Row("between the sides", right.low[0] - left.high[0], "length"),
        Row(f"{joint.enters} gains at each end", found.gain),
        Row(f"{joint.enters}, left to right", body.size[0], "length"),
    ]
    if not joint.depth:
        return (*told, Row(f"wood left of {joint.receives}", found.wood_left, "measured"))
    datum = "rear edge" if joint.enters == "back" else "lower end"
    told += [
        Row(f"{cut_name(joint)} in {joint.receives}, width", found.width, "measured"),
        Row(f"{cut_name(joint)} in {joint.receives}, depth", found.depth),
        Row("wood left under it", found.wood_left, "measured"),
    ]
    if found.near_wall:
        told.append(Row(f"near wall from the {datum}", found.near_wall, "length" if not joint.tongue else "measured"))
    if found.stop:
        told.append(Row("it begins behind the front edge by", found.stop))
    if joint.tongue:
        thickest = cabinet.sheets[enters.sheet].thickest
        told.append(Row("tongue, as thick everywhere", joint.tongue))
        by_the_mean = enters.thickness - joint.tongue
        told.append(Row("rabbet that leaves the tongue, depth by the mean", by_the_mean, "measured"))
        if thickest != enters.thickness:
            told.append(Row("the same where the sheet is thickest", thickest - joint.tongue, "measured"))
        told.append(Row("rabbet that leaves the tongue, width", found.gain))
    return tuple(told)


def cut_name(joint: Joint) -> str:
    """What the shop calls the cut in the receiving board.

    >>> cut_name(Joint("tongue", "bottom", "left side", "-x", 5)), cut_name(Joint("groove", "back", "left side", "-x"))
    ('dado', 'groove')
    """
    return "dado" if joint.kind == "tongue" else joint.kind


def in_short(cabinet: Cabinet, joint: Joint, style: Style) -> str:
    """The joint in one sentence, for the line above its picture."""
    found, write = allowance(cabinet, joint), Writing(style)
    if not joint.depth:
        return f"butt joint: nothing is cut, and the {joint.enters} gains nothing."
    return (
        f"{cut_name(joint)} in {joint.receives}: {write.measured(found.width)} wide and "
        f"{write.setting(found.depth)} deep, {write.measured(found.wood_left)} of wood left; the {joint.enters} "
        f"gains {write.setting(found.gain)} at each end."
    )
