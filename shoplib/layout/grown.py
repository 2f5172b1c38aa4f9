"""The job as the search sees it: grown by one kerf, equal parts together, in the largest unit that stays whole.

A saw cut takes one kerf between two pieces and none at the far edge. So parts and usable sheets that are all larger
by one kerf, laid edge to edge with no kerf at all, are exactly the layouts that there are.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import gcd

import numpy as np

from shoplib.layout.pieces import Job, Laid, Layout, LayoutError, Placed, Rect

MOST = 2_000
"""Parts in one job: beyond it not even the first layout would come at once."""
LONGEST = 2**31
"""Ticks: 26 m and more cannot be laid out."""


class TooLarge(LayoutError):
    """A part that fits no sheet: `part` counts in the parts of the job, so that a caller can say it in lengths."""

    def __init__(self, part: int, name: str):
        super().__init__(f"{name} is larger than every sheet with its edges trimmed; give a larger sheet or join it up")
        self.part = part


@dataclass(frozen=True, slots=True)
class Lie:
    """One part on a grown sheet: which kind, turned or not, and where its near corner lies."""

    kind: int
    turned: bool
    x: int
    y: int


@dataclass(frozen=True, slots=True)
class Sheet:
    """One grown sheet with its parts; `stock` counts in `Grown.wide`."""

    stock: int
    lies: tuple[Lie, ...]


@dataclass(frozen=True, slots=True)
class Grown:
    """Kinds of parts (`w`, `h`, `count`, `turns`) and of stock (`wide`, `high`, `there`, `cost`), whole units.

    `parts[k]` are the parts of the job that are of kind k, one entry a piece. Stock that is short is made up by one
    kind more, the last one, so dear that a layout without it is always cheaper: `missing` is its index or None.
    """

    job: Job
    w: np.ndarray
    h: np.ndarray
    count: np.ndarray
    turns: np.ndarray
    parts: tuple[tuple[int, ...], ...]
    wide: np.ndarray
    high: np.ndarray
    there: np.ndarray
    cost: tuple[int, ...]
    missing: int | None
    unit: tuple[int, int]

    def fits(self, kind: int, stock: int) -> bool:
        """Whether a part of the kind can lie on the stock at all."""
        w, h, wide, high = self.w[kind], self.h[kind], self.wide[stock], self.high[stock]
        return bool((w <= wide and h <= high) or (self.turns[kind] and h <= wide and w <= high))

    def cost_of(self, sheets: Sequence[Sheet]) -> int:
        """What the stock of the sheets costs."""
        return sum(self.cost[sheet.stock] for sheet in sheets)

    def layout(self, sheets: Sequence[Sheet], bound: int) -> Layout:
        """The sheets as they are sawn, in ticks."""
        left = [list(parts) for parts in self.parts]
        laid = (Laid(on.stock, tuple(self._placed(on.stock, lie, left) for lie in on.lies)) for on in sheets)
        return Layout(tuple(laid), self.cost_of(sheets), bound)

    def _placed(self, stock: int, lie: Lie, left: list[list[int]]) -> Placed:
        part = left[lie.kind].pop(0)
        of, on = self.job.parts[part], self.job.stock[stock]
        w, h = (of.width, of.length) if lie.turned else (of.length, of.width)
        return Placed(
            part,
            Rect(on.trim_ends + lie.x * self.unit[0], on.trim_edges + lie.y * self.unit[1], w, h),
            lie.turned,
        )


def grown(job: Job) -> Grown:
    """The job as the search sees it; LayoutError where it cannot be laid out whatever is done.

    >>> from shoplib.layout.pieces import Part, Stock
    >>> job = Job((Part("shelf", 590, 290, 2), Part("rail", 880, 190)), (Stock("ply", 2440, 1220),), kerf=10)
    >>> g = grown(job)
    >>> g.unit, g.w.tolist(), g.h.tolist(), g.wide.tolist(), g.high.tolist()
    ((10, 100), [60, 89], [3, 2], [245], [12])
    """
    _check(job)
    kinds: dict[tuple[int, int, bool], list[int]] = {}
    for index, part in enumerate(job.parts):
        if not part.count:
            continue
        turns = part.may_turn and part.length != part.width
        kinds.setdefault((part.length + job.kerf, part.width + job.kerf, turns), []).extend([index] * part.count)
    usable = [stock.usable for stock in job.stock]
    wide = [at.w + job.kerf for at in usable]
    high = [at.h + job.kerf for at in usable]
    w, h, turns = ([kind[i] for kind in kinds] for i in range(3))
    there = [sum(part.count for part in job.parts) if one.count is None else one.count for one in job.stock]
    cost = [one.cost for one in job.stock]
    missing = None
    if not any(one.count is None and all(part.fits(one) for part in job.parts if part.count) for one in job.stock):
        missing = len(wide)
        wide, high = [*wide, max(wide)], [*high, max(high)]
        dear = 1 + 2 * sum(each * n for each, n in zip(cost, there, strict=True))
        there, cost = [*there, sum(part.count for part in job.parts)], [*cost, dear]
    # The unit in which all parts are whole; sheets are rounded down to it, which no part can notice.
    unit = (gcd(*w), gcd(*h))
    if any(turns):
        unit = (gcd(*unit),) * 2
    return Grown(
        job,
        np.array(w) // unit[0],
        np.array(h) // unit[1],
        np.array([len(parts) for parts in kinds.values()]),
        np.array(turns),
        tuple(map(tuple, kinds.values())),
        np.array(wide) // unit[0],
        np.array(high) // unit[1],
        np.array(there),
        tuple(cost),
        missing,
        unit,
    )


def _check(job: Job) -> None:
    if job.kerf < 0:
        raise LayoutError("the kerf is negative; give the width of the saw cut, or 0 to lay out without one")
    if not job.stock:
        raise LayoutError("there are no sheets to lay the parts out on; give at least one size")
    for one in job.stock:
        if one.usable.w <= 0 or one.usable.h <= 0:
            raise LayoutError(f"nothing is left of {one.name} when its edges are trimmed; trim less")
        if max(one.length, one.width) >= LONGEST:
            raise LayoutError(f"{one.name} is longer than any board; give its sizes in ticks")
        if one.cost < 0 or (one.count is not None and one.count < 0):
            raise LayoutError(f"{one.name} has a count or a cost below 0; give 0 or more")
    if any(part.count < 0 or part.length <= 0 or part.width <= 0 for part in job.parts):
        bad = next(part for part in job.parts if part.count < 0 or part.length <= 0 or part.width <= 0)
        raise LayoutError(f"{bad.name} has a size or a count that cannot be cut; give sizes above 0")
    pieces = sum(part.count for part in job.parts)
    if not pieces:
        raise LayoutError("there is nothing to lay out; the list has no parts")
    if pieces > MOST:
        raise LayoutError(f"{pieces} parts are more than one layout can take; lay out at most {MOST} at a time")
    for index, part in enumerate(job.parts):
        if part.count and not any(one.count != 0 and part.fits(one) for one in job.stock):
            raise TooLarge(index, part.name)
