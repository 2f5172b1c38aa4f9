"""Layouts of one job to choose from: of least cost, out of the shop where they can be, in the time that there is."""

import time
from collections.abc import Callable
from contextlib import suppress
from dataclasses import replace

from shoplib.buying.shop_first import shop_first
from shoplib.layout.looks import by_looks
from shoplib.layout.pieces import Job, Layout, LayoutError
from shoplib.layout.search import layouts, pool
from shoplib.measure import MM

FOR_CHOICE = 0.3
"""The part of the time that goes to other layouts of the same cost, for the choice among them."""

MOST_FOR_CHOICE = 1.0
"""Seconds that the choice gets of what the search leaves of its time."""

A_MOMENT = 2.0
"""Seconds for a first layout where stock is short, when the search was stopped before."""


def searched(job: Job, seconds: float, tell: Callable[[Layout], None]) -> tuple[list[Layout], bool]:
    """Layouts of least cost, the first found first, and whether the search was stopped.

    Where nothing need be bought, they are those that take the least from the shop; else those in which what can comes
    out of pieces in the shop.
    """
    found: list[Layout] = []
    stopped = False
    begun = time.monotonic()
    try:
        for layout in layouts(job, seconds * (1 - FOR_CHOICE)) if seconds else ():
            found = [layout]
            tell(layout)
    except KeyboardInterrupt:
        stopped = True
    if not found:
        found = [_at_once(job)]
        tell(found[0])
    for_choice = max(seconds * FOR_CHOICE, min(MOST_FOR_CHOICE, begun + seconds - time.monotonic()))
    cost, bound = found[0].cost, found[0].bound
    if not stopped:
        try:
            if not cost:
                found = _least_of_the_shop(_by_area(job), found, for_choice)
            elif (shop := shop_first(job, found[0], for_choice)) != found:
                found, cost = shop, shop[0].cost
            else:
                _add_alike(job, cost, for_choice, found)
        except KeyboardInterrupt:
            stopped = True
    return [replace(layout, cost=cost, bound=bound) for layout in found], stopped


def _at_once(job: Job) -> Layout:
    """The first layout; a moment is given to the search where stock is so short that it is not found at once."""
    try:
        return next(layouts(job, 0.0))
    except LayoutError:
        return next(layouts(job, A_MOMENT, by_looks()))


def _least_of_the_shop(job: Job, found: list[Layout], seconds: float) -> list[Layout]:
    """Layouts that take the least area from the shop; those that were found before where the time is too short."""
    try:
        *_, best = layouts(job, seconds / 2)
    except LayoutError:
        return found
    found = [best]
    _add_alike(job, best.cost, seconds / 2, found)
    return found


def _add_alike(job: Job, cost: int, seconds: float, found: list[Layout]) -> None:
    """More layouts at this cost, one by one, so that a search that is stopped has added what it came to.

    None in no time: what is laid out at once comes out the same each time.
    """
    if not seconds:
        return
    with suppress(LayoutError):  # none was found in this time, and there is one already
        found += pool(job, cost, seconds)


def _by_area(job: Job) -> Job:
    """The job with the stock that lies in the shop alone, each piece as dear as it is large (mm2)."""
    stock = (
        replace(one, count=0) if one.count is None else replace(one, cost=one.length * one.width // MM**2)
        for one in job.stock
    )
    return replace(job, stock=tuple(stock))
