"""The best layout that the search finds, to hold a layout made by hand against."""

from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import islice
from typing import Self

from shoplib.layout.by_hand import letters
from shoplib.layout.choose import Choice, best_for
from shoplib.layout.hand import Hand, HandSheet, Place
from shoplib.layout.hand_sawn import shop_cost_by_hand
from shoplib.layout.pieces import Job, LayoutError
from shoplib.layout.search import layouts, pool
from shoplib.layout.shop_cost import ShopCost
from shoplib.measure import Style

_AMONG = 12
"""Among so many layouts of the lowest cost the one with the largest offcut is chosen."""

_OTHERS = 0.5
"""Others that cost the same are looked for no longer than so many seconds."""


@dataclass(frozen=True, slots=True)
class Best:
    """A layout of the lowest cost that was found, as if it had been laid by hand; `least` is what any layout costs.

    Where a layout made by hand costs less than what the search found, it is the best, and `searched` is what that one
    costs.
    """

    hand: Hand
    shop: ShopCost
    cost: int
    least: int
    searched: int | None = None

    @property
    def proven(self) -> bool:
        """Whether nothing can cost less."""
        return self.cost <= self.least

    def or_by_hand(self, hand: Hand) -> Self:
        """The layout made by hand where it is whole and costs less, else this one.

        >>> from shoplib.layout.by_hand import begin, lay_along
        >>> from shoplib.layout.pieces import Part, Stock
        >>> from shoplib.measure import MM, MM_STYLE
        >>> job = Job((Part("shelf", 600 * MM, 300 * MM, 3),), (Stock("plywood", 2440 * MM, 610 * MM, cost=1),))
        >>> mine = lay_along(begin(job, MM_STYLE), 0, 0)
        >>> dear = Best(mine, shop_cost_by_hand(mine), 2, 1)
        >>> dear.or_by_hand(mine).cost, dear.or_by_hand(mine).searched, dear.or_by_hand(mine).proven
        (1, 2, True)
        >>> dear.or_by_hand(begin(job, MM_STYLE)) is dear
        True
        """
        cost = sum(hand.job.stock[sheet.stock].cost for sheet in hand.sheets)
        if not hand.done or cost >= self.cost:
            return self
        searched = self.cost if self.searched is None else self.searched
        return replace(self, hand=hand, shop=shop_cost_by_hand(hand), cost=cost, searched=searched)


@lru_cache(maxsize=32)
def best_found(job: Job, style: Style, seconds: float) -> Best | None:
    """Of the cheapest layouts that are found in this time one with a large offcut; None where none holds all parts.

    The search ends as soon as nothing can cost less.

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
    others = islice(pool(job, cheapest.cost, min(seconds, _OTHERS)), _AMONG)
    choice = best_for("largest offcut", job, [cheapest, *others])
    return Best(as_hand(job, choice, style), choice.shop, cheapest.cost, cheapest.bound)


def as_hand(job: Job, choice: Choice, style: Style) -> Hand:
    """A layout as if it had been laid by hand: to be looked at, not to be gone on with."""
    sheets, places, letter = [], [], letters()
    for number, (laid, done) in enumerate(zip(choice.layout.sheets, choice.sheets, strict=True)):
        sheets.append(HandSheet(laid.stock, laid.placed, tuple(cut for cut in done.cuts if cut.kind != "trim")))
        places += [Place(next(letter), number, at, (number, f"left {n}")) for n, at in enumerate(done.offcuts)]
    return Hand(job, style, (0,) * len(job.parts), tuple(sheets), tuple(places))
