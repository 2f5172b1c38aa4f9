"""Lay parts out, better and better: the first layout at once, each next one cheaper, until none can be."""

import time
from collections.abc import Callable, Iterator

from shoplib.layout.bounds import least_cost
from shoplib.layout.first_fit import first_fit
from shoplib.layout.grown import grown
from shoplib.layout.pieces import Job, Layout, LayoutError


def layouts(job: Job, seconds: float, clock: Callable[[], float] = time.monotonic) -> Iterator[Layout]:
    """Layouts of the job, each cheaper than the one before; ends when none can be cheaper or the time is over.

    Closing the iterator stops the search. LayoutError where there is no way to lay the job out, or none was found.

    >>> from shoplib.layout.pieces import Part, Stock
    >>> *_, best = layouts(Job((Part("shelf", 600, 300, 9),), (Stock("ply", 2440, 610, cost=1),), kerf=3), 1)
    >>> best.cost, best.bound, best.proven
    (2, 2, True)
    """
    g = grown(job)
    bound = least_cost(g)
    sheets = first_fit(g)
    if g.missing is None or all(sheet.stock != g.missing for sheet in sheets):
        yield g.layout(sheets, bound)
    else:
        raise LayoutError("the sheets that there are do not hold all parts; give more, or a size that can be bought")


def pool(job: Job, cost: int, seconds: float, clock: Callable[[], float] = time.monotonic) -> Iterator[Layout]:
    """Many different layouts of the job that cost no more than `cost`, for a choice among them."""
    for layout in layouts(job, seconds, clock):
        if layout.cost <= cost:
            yield layout
