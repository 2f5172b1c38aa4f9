"""One cut on one saw: what the settings say, and what the cutter leaves."""

from dataclasses import dataclass

from shoplib.practice.bench import Bench


@dataclass(frozen=True, slots=True)
class Kerf:
    """A dado as it came out (ticks): its `width`, its least `depth`, and its near `wall` from the end at the fence.

    `deepest` is the depth at the ends of the dado: more than `depth` where the panel rode up in the middle.
    """

    width: int
    depth: int
    wall: int
    deepest: int


def kerf(bench: Bench, name: str, stack: int, depth: int, fence: int, bow: int = 0) -> Kerf:
    """The cut of this name, with the stack, depth and fence that were set.

    width = stack + cutter + runout, depth = set + scale - bow, wall = set + scale, and to each what one cut differs
    from the next. What the stack cuts too wide goes to the side away from the fence; that is simpler than a true
    wobble, which cuts to both sides. Nothing is cut less than nothing deep.

    >>> from shoplib.practice.spreads import NONE
    >>> kerf(Bench("Noor", "dado", "in", NONE), "test 1", 700, 250, 9000, bow=30)
    Kerf(width=700, depth=220, wall=9000, deepest=250)
    """
    saw, off = bench.saw, bench.spreads
    width = stack + saw.cutter + saw.runout + bench.shift(off.width_again, name, "width")
    full = depth + saw.depth + bench.shift(off.depth_again, name, "depth")
    wall = fence + saw.fence + bench.shift(off.fence_again, name, "fence")
    return Kerf(_no_less(width), _no_less(full - bow), _no_less(wall), _no_less(full))


def _no_less(ticks: int) -> int:
    return ticks if ticks > 0 else 0
