"""What a layout costs the person at the saw, besides the sheets, and which of it they would rather have less of."""

from dataclasses import dataclass
from typing import Literal, get_args

Wish = Literal["largest offcut", "fewest rips", "fewest settings", "fewest stages", "light pieces"]
WISHES: tuple[Wish, ...] = get_args(Wish)


@dataclass(frozen=True, slots=True)
class ShopCost:
    """The figures that wishes are about; trimming the bought edges is the same in every layout and left out.

    `offcut`: square ticks of the largest offcut worth keeping. `rips`, `settings`: how often the fence is set for
    rips, and at all. `stages`: how often pieces are turned about, the first cuts counted. `heaviest`: square ticks of
    the largest piece that still has to be handled once every sheet has had its first cut. `cuts` only breaks ties.
    """

    offcut: int
    rips: int
    settings: int
    stages: int
    heaviest: int
    cuts: int = 0

    def ranked(self, wish: Wish | None = None) -> tuple[int, ...]:
        """Less is better, first in what is wished, then in stages, settings, offcut, rips, cuts, and weight.

        >>> plain, roomy = ShopCost(40, 2, 5, 2, 90), ShopCost(60, 2, 6, 3, 90)
        >>> plain.ranked() < roomy.ranked(), plain.ranked("largest offcut") < roomy.ranked("largest offcut")
        (True, False)
        """
        by_wish = {
            "fewest stages": self.stages,
            "fewest settings": self.settings,
            "largest offcut": -self.offcut,
            "fewest rips": self.rips,
            "": self.cuts,
            "light pieces": self.heaviest,
        }
        first = () if wish is None else (by_wish[wish],)
        return (*first, *by_wish.values())
