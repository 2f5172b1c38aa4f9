"""What a layout costs the person at the saw, besides the sheets, and which of it they would rather have less of."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeVar, get_args

Wish = Literal["largest offcut", "fewest rips", "fewest settings", "fewest turns", "light pieces"]
WISHES: tuple[Wish, ...] = get_args(Wish)

AS_GOOD = Fraction(9, 10)
"""An offcut is as good as the largest if it has this share of its area, and fewer parts are left to size or more could
be made again from what is left (common practice, no source)."""

_Way = TypeVar("_Way")


@dataclass(frozen=True, slots=True)
class ShopCost:
    """The figures that wishes are about; trimming the bought edges is the same in every layout and left out.

    `offcut`: square ticks of the largest offcut worth keeping. `rips`, `settings`: how often the fence is set for
    rips, and at all. `stages`: how often pieces are turned about, the first cuts counted. `heaviest`: square ticks of
    the largest piece that still has to be handled once every sheet has had its first cut. `short` cuts run along the
    grain of pieces too short for the fence; `skims` take less than the blade off an edge; `left_to_size` are parts that
    are what a cut leaves. Those two, and `cuts`, only break ties.
    """

    offcut: int
    rips: int
    settings: int
    stages: int
    heaviest: int
    cuts: int = 0
    short: int = 0
    skims: int = 0
    left_to_size: int = 0

    def ranked(self, wish: Wish | None = None) -> tuple[int, ...]:
        """Less is better: first in short pieces at the fence, for they are thrown back, then in what is wished.

        That is fewest turns where nothing is. After it come skims, parts left to size,
        stages, settings, offcut, rips, cuts, and weight.

        >>> plain, roomy = ShopCost(40, 2, 5, 2, 90), ShopCost(60, 2, 6, 3, 90)
        >>> plain.ranked() < roomy.ranked(), plain.ranked("largest offcut") < roomy.ranked("largest offcut")
        (True, False)
        """
        by_wish = {
            "fewest turns": self.stages,
            "fewest settings": self.settings,
            "largest offcut": -self.offcut,
            "fewest rips": self.rips,
            "": self.cuts,
            "light pieces": self.heaviest,
        }
        return (self.short, by_wish[wish or "fewest turns"], self.skims, self.left_to_size, *by_wish.values())


def as_good(wish: Wish | None, best: tuple[int, ...]) -> Callable[[tuple[int, ...]], bool]:
    """Whether a rank (`ShopCost.ranked`) is as good in what is wished as the best one, or nearly so."""
    if wish == "largest offcut":
        return lambda rank: rank[0] <= best[0] and rank[1] <= best[1] * AS_GOOD
    return lambda rank: rank[:2] <= best[:2]


def best_of(ways: Iterable[_Way], cost: Callable[[_Way], ShopCost], wish: Wish | None = None) -> _Way:
    """Of those as good in what is wished the one with the fewest skims and parts left to size; then by rank.

    >>> exact, roomy = ShopCost(60, 2, 5, 2, 90, left_to_size=1), ShopCost(58, 2, 6, 2, 90)
    >>> best_of([exact, roomy], lambda cost: cost, "largest offcut") == roomy
    True
    """
    ranked = [(cost(way), cost(way).ranked(wish), way) for way in ways]
    good = as_good(wish, min(rank for _, rank, _ in ranked))
    return min(
        (one for one in ranked if good(one[1])), key=lambda one: (one[0].skims, one[0].left_to_size, one[1])
    )[2]
