"""Lay parts out, better and better: the first layout at once, each next one cheaper, until none can be."""

import time
from collections.abc import Callable, Iterator
from itertools import count

from shoplib.layout.beam import Beam
from shoplib.layout.bounds import least_cost
from shoplib.layout.first_fit import first_fit
from shoplib.layout.grown import Grown, Sheet, grown
from shoplib.layout.pieces import Job, Layout, LayoutError


def layouts(job: Job, seconds: float, clock: Callable[[], float] = time.monotonic) -> Iterator[Layout]:
    """Layouts of the job, each cheaper than the one before; ends when none can be cheaper or the time is over.

    Closing the iterator stops the search. LayoutError where there is no way to lay the job out, or none was found.

    >>> from shoplib.layout.pieces import Part, Stock
    >>> *_, best = layouts(Job((Part("shelf", 600, 300, 9),), (Stock("ply", 2440, 610, cost=1),), kerf=3), 1)
    >>> best.cost, best.bound, best.proven
    (2, 2, True)
    """
    until = clock() + seconds
    g = grown(job)
    bound = least_cost(g)
    best = first_fit(g)
    if _whole(g, best):
        yield g.layout(best, bound)
    if g.cost_of(best) > bound:
        beam = Beam(g)
        for width, guide in passes(g):
            if clock() > until:
                break
            found = beam.run(width, guide, g.cost_of(best) - 1, lambda: clock() > until)
            if found:
                best = found[0]
                if _whole(g, best):
                    yield g.layout(best, bound)
                if g.cost_of(best) <= bound:
                    break
    if not _whole(g, best):
        raise LayoutError("the sheets that there are do not hold all parts; give more, or a size that can be bought")


def passes(grown: Grown) -> Iterator[tuple[int, int]]:
    """Widths of the beam and guides, ever wider."""
    for power in count(3):
        for guide in (1, 2, 0):
            yield 2**power, guide


def _whole(grown: Grown, sheets: list[Sheet]) -> bool:
    return grown.missing is None or all(sheet.stock != grown.missing for sheet in sheets)


def pool(job: Job, cost: int, seconds: float, clock: Callable[[], float] = time.monotonic) -> Iterator[Layout]:
    """Many different layouts of the job that cost no more than `cost`, for a choice among them."""
    for layout in layouts(job, seconds, clock):
        if layout.cost <= cost:
            yield layout
