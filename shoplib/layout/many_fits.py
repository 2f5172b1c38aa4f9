"""Lays out at once again and again, each time with other parts a little larger than they are.

Where a few sheets hold many parts, one of some hundred tries saves a sheet that no search by stages finds.
"""

from collections.abc import Callable

import numpy as np

from shoplib.layout.first_fit import first_fit
from shoplib.layout.grown import Grown, Sheet
from shoplib.layout.pieces import Rect
from shoplib.layout.slabs import Item, stuck

_FEW, _MANY = 8, 10
"""Not on more sheets than these, nor with fewer parts a sheet: a try that is better on all of them is too seldom, and
stages do as well for few parts."""

_SHAKEN = 0.05
"""So much larger or smaller a part may count."""


class ManyFits:
    """Tries that go on where they ended; the same job gives the same ones."""

    def __init__(self, grown: Grown) -> None:
        self._grown = grown
        self._chance = np.random.default_rng(1)

    def worth_while(self, sheets: list[Sheet]) -> bool:
        """Whether tries like these may do better than the sheets that there are."""
        return len(sheets) <= _FEW and int(self._grown.count.sum()) >= _MANY * len(sheets)

    def better(self, cost: int, go_on: Callable[[], bool]) -> list[Sheet] | None:
        """Sheets that cost less than `cost` and can be sawn, looked for as long as `go_on` says; None if none came."""
        grown = self._grown
        while go_on():
            large = (grown.w * grown.h if self._chance.random() < 0.5 else grown.w + grown.h) * self._chance.uniform(
                1 - _SHAKEN, 1 + _SHAKEN, len(grown.w)
            )
            sheets = first_fit(grown, large, bool(self._chance.random() < 0.5), merge=True)
            if grown.cost_of(sheets) < cost and not any(self._locked(sheet) for sheet in sheets):
                return sheets
        return None

    def _locked(self, sheet: Sheet) -> bool:
        grown = self._grown
        items = []
        for place, lie in enumerate(sheet.lies):
            w, h = int(grown.w[lie.kind]), int(grown.h[lie.kind])
            items.append(Item(Rect(lie.x, lie.y, h, w) if lie.turned else Rect(lie.x, lie.y, w, h), place))
        return bool(stuck(items, 0))
