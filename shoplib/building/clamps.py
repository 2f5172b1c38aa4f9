"""Clamps for a glue-up: how many, how far they must reach, and the length in which such clamps are sold."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from shoplib.building.glue_ups import GlueUp
from shoplib.measure import INCH, MM
from shoplib.model.box import around
from shoplib.model.solved import Cabinet, Joint


@dataclass(frozen=True, slots=True)
class ClampRule:
    """A clamp for `every` so much of a joint; `caul` of wood between jaw and case, on both sides, and `play` to set the
    clamp on; `sold`: how far clamps open (ticks).
    """

    every: int
    caul: int
    play: int
    sold: tuple[int, ...]

    def along(self, length: int) -> int:
        """How many along a joint; one that is more than half as long as clamps stand apart gets one at each end.

        >>> [RULES["in"].along(inches * INCH) for inches in (3, 7, 16, 22)]
        [1, 2, 2, 3]
        """
        return max(2 if 2 * length > self.every else 1, -(-length // self.every))


RULES = {
    "in": ClampRule(8 * INCH, INCH * 3 // 4, INCH // 2,
                    tuple(n * INCH for n in (6, 12, 18, 24, 30, 36, 40, 50, 60, 72, 84, 98))),
    "mm": ClampRule(200 * MM, 20 * MM, 15 * MM,
                    tuple(n * MM for n in (150, 300, 450, 600, 800, 1000, 1250, 1500, 1800, 2000, 2500))),
}
"""By the unit of the shop. How close they stand: common practice, no source; how far they open: from memory."""


@dataclass(frozen=True, slots=True)
class Clamps:
    """Clamps that press along a world axis: `count` of them over so much `across`; `reach` with cauls and play; `sold`
    is the length to take, None where none is sold that long. `over` names the boards whose joints they close.
    """

    axis: str
    count: int
    across: int
    reach: int
    sold: int | None
    over: tuple[str, ...]


def clamps_for(go: GlueUp, cabinet: Cabinet) -> tuple[Clamps, ...]:
    """The clamps of one go, by the axis along which they press: none for joints that pocket screws pull together.

    >>> clamps_for(GlueUp((), ()), Cabinet("no boards", (), {}))
    ()
    """
    rule = RULES[cabinet.style.unit]
    found = []
    for axis in "xyz":
        joints = [j for j in go.joints if j.axis[1] == axis and j.kind != "pocket screws"]
        if joints:
            across = _across(joints, {*go.standing, *go.boards}, axis, cabinet)
            reach = across + 2 * rule.caul + rule.play
            sold = min((length for length in rule.sold if length >= reach), default=None)
            lines = _lines(joints, axis, cabinet)
            count = sum(rule.along(length) for length in lines.values())
            found.append(Clamps(axis, count, across, reach, sold, tuple(lines)))
    return tuple(found)


def _across(joints: Sequence[Joint], standing: set[str], axis: str, cabinet: Cabinet) -> int:
    """The size over all boards that hang together along the axis, which a clamp has to span."""
    met = {name for joint in joints for name in (joint.enters, joint.receives)}
    along = [j for j in cabinet.joints if j.axis[1] == axis and j.kind != "groove"
             and {j.enters, j.receives} <= standing]
    grown = True
    while grown:
        more = {name for j in along if met & {j.enters, j.receives} for name in (j.enters, j.receives)} - met
        met |= more
        grown = bool(more)
    return around([cabinet.by_name[name].box for name in met]).size["xyz".index(axis)]


def _lines(joints: Iterable[Joint], axis: str, cabinet: Cabinet) -> dict[str, int]:
    """The boards between the jaws, each once though it is closed at both ends, with how long its joint runs (ticks).

    Boards in one line, such as shelves at one height in two bays, are pressed by the same clamps: the first is named.
    """
    across = [k for k in range(3) if k != "xyz".index(axis)]
    lines: dict[tuple[Run, ...], tuple[str, int]] = {}
    for joint in joints:
        enters, receives = cabinet.by_name[joint.enters].box, cabinet.by_name[joint.receives].box
        runs = tuple((max(enters.low[k], receives.low[k]), min(enters.high[k], receives.high[k])) for k in across)
        same = next((old for old in lines if all(map(_overlap, old, runs))), runs)
        name, long = lines.get(same, (joint.enters, 0))
        lines[same] = name, max(long, *(high - low for low, high in runs))
    return {name: long for name, long in lines.values()}


Run = tuple[int, int]


def _overlap(one: Run, other: Run) -> bool:
    return one[0] < other[1] and other[0] < one[1]
