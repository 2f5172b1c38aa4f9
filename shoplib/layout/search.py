"""Lay parts out, better and better: the first layout at once, each next one cheaper, until none can be."""

import time
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import replace
from itertools import count

from shoplib.layout.alike import alike
from shoplib.layout.beam import Beam
from shoplib.layout.bounds import enough, least_cost
from shoplib.layout.columns import Columns
from shoplib.layout.first_fit import first_fit
from shoplib.layout.grown import Grown, Sheet, grown
from shoplib.layout.many_fits import ManyFits
from shoplib.layout.pieces import Job, Layout, LayoutError
from shoplib.layout.put_together import put_together
from shoplib.layout.scales import closer_bounds

GUIDES = ((0.1, 1.0), (0.0, 1.0), (0.1, 1.5))
"""How unfinished layouts are compared (see `Beam._score`)."""

FOR_BOUND = 0.2
"""The part of the time that is given to a closer bound."""

EVERY = 2
"""Passes with the worth of parts shaken before sheets of all layouts are put together again."""


def layouts(job: Job, seconds: float, clock: Callable[[], float] = time.monotonic) -> Iterator[Layout]:
    """Layouts of the job, each cheaper than the one before; ends when none can be cheaper or the time is over.

    Where the bound is found to lie higher than was known, the last layout comes once more with that bound. It ends
    early as well where every layout of four stages and a trim was looked at; then the cost may be above the bound
    though it is the least.

    Closing the iterator stops the search. LayoutError where there is no way to lay the job out, or none was found.

    >>> from shoplib.layout.pieces import Part, Stock
    >>> *_, best = layouts(Job((Part("shelf", 600, 300, 9),), (Stock("ply", 2440, 610, cost=1),), kerf=3), 1)
    >>> best.cost, best.bound, best.proven
    (2, 2, True)
    """
    until = clock() + seconds
    g = grown(job)
    if g.missing is not None and not enough(g):
        raise LayoutError("the sheets that there are cannot hold all parts; give more of them, or a size to buy")
    bound = least_cost(g)
    best = first_fit(g)
    if _whole(g, best):
        yield g.layout(best, bound)
    for sheets, known in _better(g, best, bound, lambda: until - clock()):
        best, bound = sheets, known
        if _whole(g, best):
            yield g.layout(best, bound)
    if not _whole(g, best):
        raise LayoutError(
            "no way was found to lay all parts on the sheets that there are; give more, a size to buy, or more time"
        )


def _better(
    grown: Grown, best: list[Sheet], bound: int, left: Callable[[], float]
) -> Iterator[tuple[list[Sheet], int]]:
    """Better and better layouts with the bound as far as it is known, while time is `left`."""
    beam, columns, closer, fits = Beam(grown), None, False, ManyFits(grown)
    for width, guide, shaken in _passes():
        if grown.cost_of(best) <= bound or left() <= 0:
            return
        begun = left()
        beam.shake(shaken, columns and columns.prices()[1])
        found = beam.run(width, guide, grown.cost_of(best) - 1, lambda: left() <= 0)
        if found:
            best = found[0]
            yield best, bound
            continue
        if not closer and (shaken or not beam.cut_short):
            # The quick passes are over: ask whether there is anything left to look for.
            closer, known = True, bound
            bound = _closer(grown, bound, grown.cost_of(best), left)
            if bound > known:
                yield best, bound
        if not beam.cut_short:
            if beam.deep:
                return  # all that can be cut in these stages was looked at
            beam.deep = True
        if shaken and fits.worth_while(best):
            # Twice as long as the pass before took.
            until = left() - 2 * (begun - left())
            other = fits.better(grown.cost_of(best), lambda until=until: left() > max(0.0, until))
            if other:
                best = other
                yield best, bound
                continue
        if shaken and shaken % EVERY == 0 and left() > 0:
            if columns is None:
                columns = Columns(grown)
                columns.add_all(best)
            columns.add_all(beam.closed_sheets())
            whole = put_together(beam, columns, best, shaken, left)
            if whole:
                best = whole
                yield best, bound


def _closer(grown: Grown, bound: int, cost: int, left: Callable[[], float]) -> int:
    """The bound, taken closer to the cost in a part of the time that is left."""
    until = left() * (1 - FOR_BOUND)
    for other in closer_bounds(grown, lambda: left() <= until):
        bound = max(bound, other)
        if bound >= cost or left() <= until:
            break
    return bound


def _passes() -> Iterator[tuple[int, tuple[float, float], int]]:
    """Width of the beam, guide, and how often the worth of the parts was shaken: quick passes first, then many."""
    for width in (8, 16, 32, 64):
        for guide in GUIDES:
            yield width, guide, 0
    for shaken in count(1):
        yield 128 * 2 ** min(shaken // 16, 7), GUIDES[shaken % len(GUIDES)], shaken


def _whole(grown: Grown, sheets: list[Sheet]) -> bool:
    return grown.missing is None or all(sheet.stock != grown.missing for sheet in sheets)


def pool(job: Job, cost: int, seconds: float, clock: Callable[[], float] = time.monotonic) -> Iterator[Layout]:
    """Many different layouts of the job that cost no more than `cost`, for a choice among them.

    Some are found with the worth of the parts shaken, some with equal widths in rows, and some leave one piece whole
    that is as large as can be.
    """
    until = clock() + seconds
    bound = least_cost(grown(job))
    seen: set = set()
    for layout in alike(job, cost, until - clock(), clock):
        key = frozenset(Counter((laid.stock, frozenset(laid.placed)) for laid in layout.sheets).items())
        if key not in seen:
            seen.add(key)
            yield replace(layout, bound=bound)
