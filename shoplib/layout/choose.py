"""Among layouts that cost the same to buy, the one that a shop would rather cut."""

import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from shoplib.layout.cut_tree import one_sheet, sawn, tidied
from shoplib.layout.offcuts import LEAST, Least, worth_keeping
from shoplib.layout.order import cut_order, set_ups
from shoplib.layout.own_strips import own_strips
from shoplib.layout.pieces import Job, Laid, Layout, LayoutError, Rect
from shoplib.layout.sawn import Sawn
from shoplib.layout.shop_cost import ShopCost, Wish

FINALISTS = 6
"""So many layouts are tidied and put in order before the last choice; the others are judged as they were found."""


@dataclass(frozen=True, slots=True)
class Choice:
    """A layout with its cuts, sheet by sheet, and what it costs at the saw; `among` so many of the same cost to buy."""

    wish: Wish | None
    layout: Layout
    sheets: tuple[Sawn, ...]
    shop: ShopCost
    least: Least = LEAST
    among: int = 1

    @property
    def largest(self) -> tuple[int, Rect] | None:
        """The largest offcut worth keeping, and on which sheet it is, from 0."""
        kept = [
            (offcut.area, -n, offcut)
            for n, found in enumerate(self.sheets)
            for offcut in worth_keeping(found.offcuts, self.least)[:1]
        ]
        return (-max(kept)[1], max(kept)[2]) if kept else None


def best_for(
    wish: Wish | None,
    job: Job,
    layouts: Iterable[Layout],
    least: Least = LEAST,
    seconds: float = 2.0,
    clock: Callable[[], float] = time.monotonic,
) -> Choice:
    """The layout that does best in what is wished, then in the other wishes (`ShopCost.ranked`), ready for the saw.

    Its strips are tidied. Parts that must lie side by side in their order (`grain_run`) are therefore still one part
    here, and taken apart afterwards. Only the cheapest layouts count, and of many those that can be looked at in about
    so many seconds, the first ones first. LayoutError where there are none.

    >>> from shoplib.layout.pieces import Part, Placed, Stock
    >>> job = Job((Part("shelf", 60, 20, 2),), (Stock("ply", 100, 60, cost=1),))
    >>> side = Layout((Laid(0, (Placed(0, Rect(0, 0, 60, 20)), Placed(0, Rect(0, 20, 60, 20)))),), 1, 1)
    >>> apart = Layout((Laid(0, (Placed(0, Rect(0, 0, 60, 20)), Placed(0, Rect(0, 40, 60, 20)))),), 1, 1)
    >>> choice = best_for("largest offcut", job, [apart, side], Least(30, 10))
    >>> choice.shop.offcut, choice.among, choice.largest
    (2400, 2, (0, Rect(x=60, y=0, w=40, h=60)))
    """
    until = clock() + seconds
    found = list(dict.fromkeys(layouts))
    cheapest = min((layout.cost for layout in found), default=0)
    known: dict[Laid, Sawn] = {}  # layouts of one job have many sheets in common
    ranked: list[tuple[tuple[int, ...], int]] = []
    for n, layout in enumerate(found):
        if len(ranked) >= FINALISTS and clock() > until:
            break
        if layout.cost == cheapest:
            for laid in layout.sheets:
                if laid not in known:
                    known[laid] = sawn(job, laid, wish, least)
            cuts = [known[laid] for laid in layout.sheets]
            ranked.append((_at_a_glance(cuts, least).ranked(wish), n))
    if not ranked:
        raise LayoutError("there is no layout to choose from; give the search more time.")
    finalists = [weighed(job, found[n], wish, least) for _, n in sorted(ranked)[:FINALISTS]]
    chosen = min(finalists, key=lambda choice: choice.shop.ranked(wish))
    return replace(together(job, chosen), among=len(ranked))


def weighed(job: Job, layout: Layout, wish: Wish | None = None, least: Least = LEAST) -> Choice:
    """One layout as it would be cut: tidied, or each width in strips of its own, where that makes nothing worse."""
    sheets, cuts = [], []
    for laid in layout.sheets:
        ways = _ways(job, laid, wish, least)
        laid, found = min(ways, key=lambda way: shop_cost(job, way[:1], way[1:], least).ranked(wish))
        sheets.append(laid)
        cuts.append(found)
    layout = replace(layout, sheets=tuple(sheets))
    return Choice(wish, layout, tuple(cuts), shop_cost(job, layout.sheets, cuts, least), least)


def _ways(job: Job, laid: Laid, wish: Wish | None, least: Least) -> list[tuple[Laid, Sawn]]:
    """The ways to lay the parts of one sheet that are tried, with their cuts."""
    tidy = (tidied(job, laid, wish, least, at_once) for at_once in (True, False))
    return [(one, sawn(job, one, wish, least)) for one in dict.fromkeys((*tidy, laid, *own_strips(job, laid)))]


def together(job: Job, choice: Choice) -> Choice:
    """Each sheet in turn in the way that goes best with the others, where equal sizes of several share a setting.

    >>> from shoplib.layout.pieces import Part, Placed, Stock
    >>> job = Job((Part("shelf", 60, 20, 2),), (Stock("ply", 100, 60),))
    >>> one = weighed(job, Layout((Laid(0, (Placed(0, Rect(0, 0, 60, 20)),)),) * 2, 0, 0))
    >>> together(job, one).shop.settings
    2
    """
    for n in range(len(choice.layout.sheets) if len(choice.layout.sheets) > 1 else 0):
        for laid, found in _ways(job, choice.layout.sheets[n], choice.wish, choice.least):
            sheets = (*choice.layout.sheets[:n], laid, *choice.layout.sheets[n + 1 :])
            cuts = (*choice.sheets[:n], found, *choice.sheets[n + 1 :])
            shop = shop_cost(job, sheets, cuts, choice.least)
            if shop.ranked(choice.wish) < choice.shop.ranked(choice.wish):
                choice = replace(choice, layout=replace(choice.layout, sheets=sheets), sheets=cuts, shop=shop)
    return choice


def shop_cost(job: Job, sheets: Iterable[Laid], cuts: Iterable[Sawn], least: Least = LEAST) -> ShopCost:
    """What all sheets together cost at the saw, the fence set in the cut order of the whole job."""
    sheets, cuts = list(sheets), list(cuts)
    rips, settings = set_ups(cut_order(job, sheets, cuts))
    return _together(cuts, least, rips, settings)


def _together(cuts: list[Sawn], least: Least, rips: int, settings: int) -> ShopCost:
    each = [one_sheet(found, least) for found in cuts]
    return ShopCost(
        offcut=max((one.offcut for one in each), default=0),
        rips=rips,
        settings=settings,
        stages=max((one.stages for one in each), default=0),
        heaviest=max((one.heaviest for one in each), default=0),
        cuts=sum(one.cuts for one in each),
        short=sum(one.short for one in each),
        skims=sum(one.skims for one in each),
        left_to_size=sum(one.left_to_size for one in each),
    )


def _at_a_glance(cuts: list[Sawn], least: Least) -> ShopCost:
    """The same but for the settings, of which each counts once a stage: no order of cuts is worked out."""
    keys = {(cut.kind, cut.stage, cut.fence) for found in cuts for cut in found.cuts if cut.kind != "trim"}
    return _together(cuts, least, sum(kind == "rip" for kind, *_ in keys), len(keys))


_WISHED = {
    "largest offcut": "for the largest offcut",
    "fewest rips": "for the fewest rip settings",
    "fewest settings": "for the fewest settings",
    "fewest turns": "for the fewest turns of the pieces",
    "light pieces": "for light pieces after the first cut",
    None: "for the fewest turns of the pieces",
}


def why(wish: Wish | None, among: int) -> str:
    """Why this layout, in words; nothing where there was no choice.

    >>> why("largest offcut", 12)
    'Chosen for the largest offcut among 12 layouts that cost the same.'
    """
    return f"Chosen {_WISHED[wish]} among {among} layouts that cost the same." if among > 1 else ""
