"""The best layout that the search finds, to hold a layout made by hand against."""

from dataclasses import dataclass
from functools import lru_cache
from itertools import islice

from shoplib.layout.by_hand import letters
from shoplib.layout.choose import Choice, best_for
from shoplib.layout.hand import Hand, HandSheet, Place
from shoplib.layout.pieces import Job, LayoutError
from shoplib.layout.search import layouts, pool
from shoplib.layout.shop_cost import ShopCost
from shoplib.measure import Style

_AMONG = 12
"""Among so many layouts of the lowest cost the one with the largest offcut is chosen."""


@dataclass(frozen=True, slots=True)
class Best:
    """A layout of the lowest cost that was found, as if it had been laid by hand; `least` is what any layout costs."""

    hand: Hand
    shop: ShopCost
    cost: int
    least: int


@lru_cache(maxsize=32)
def best_found(job: Job, style: Style, seconds: float) -> Best | None:
    """Of the cheapest layouts that are found in this time one with a large offcut; None where none holds all parts.

    >>> from shoplib.layout.pieces import Part, Stock
    >>> from shoplib.measure import MM, MM_STYLE
    >>> job = Job((Part("shelf", 600 * MM, 300 * MM, 9),), (Stock("plywood", 2440 * MM, 610 * MM, cost=1),), 3 * MM)
    >>> best = best_found(job, MM_STYLE, 1.0)
    >>> best.cost, best.least, best.hand.done, len(best.hand.sheets)
    (2, 2, True, 2)
    >>> best_found(Job(job.parts, (Stock("offcut", 500 * MM, 500 * MM, cost=1),)), MM_STYLE, 1.0) is None
    True
    """
    try:
        *_, cheapest = layouts(job, seconds)
    except LayoutError:
        return None
    choice = best_for("largest offcut", job, [cheapest, *islice(pool(job, cheapest.cost, seconds), _AMONG)])
    return Best(as_hand(job, choice, style), choice.shop, cheapest.cost, cheapest.bound)


def as_hand(job: Job, choice: Choice, style: Style) -> Hand:
    """A layout as if it had been laid by hand: to be looked at, not to be gone on with."""
    sheets, places, letter = [], [], letters()
    for number, (laid, done) in enumerate(zip(choice.layout.sheets, choice.sheets, strict=True)):
        sheets.append(HandSheet(laid.stock, laid.placed, tuple(cut for cut in done.cuts if cut.kind != "trim")))
        places += [Place(next(letter), number, at, (number, f"left {n}")) for n, at in enumerate(done.offcuts)]
    return Hand(job, style, (0,) * len(job.parts), tuple(sheets), tuple(places))
