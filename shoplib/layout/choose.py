"""Among layouts that cost the same to buy, the one that a shop would rather cut."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from shoplib.layout.cut_tree import one_sheet, sawn, tidied
from shoplib.layout.offcuts import LEAST, Least, worth_keeping
from shoplib.layout.order import cut_order, set_ups
from shoplib.layout.pieces import Job, Laid, Layout, LayoutError, Rect
from shoplib.layout.sawn import Sawn
from shoplib.layout.shop_cost import ShopCost, Wish

FINALISTS = 6
"""So many layouts are tidied and put in order before the last choice; the others are judged as they were found."""


@dataclass(frozen=True, slots=True)
class Choice:
    """A layout with its cuts, sheet by sheet, and what it costs at the saw. `among` is how many were looked at."""

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


def best_for(wish: Wish | None, job: Job, layouts: Iterable[Layout], least: Least = LEAST) -> Choice:
    """The layout that does best in what is wished, then in the other wishes (`ShopCost.ranked`), ready for the saw.

    Its strips are tidied. Parts that must lie side by side in their order (`grain_run`) are therefore still one part
    here, and taken apart afterwards. Only the cheapest layouts count. LayoutError where there are none.

    >>> from shoplib.layout.pieces import Part, Placed, Stock
    >>> job = Job((Part("shelf", 60, 20, 2),), (Stock("ply", 100, 60, cost=1),))
    >>> side = Layout((Laid(0, (Placed(0, Rect(0, 0, 60, 20)), Placed(0, Rect(0, 20, 60, 20)))),), 1, 1)
    >>> apart = Layout((Laid(0, (Placed(0, Rect(0, 0, 60, 20)), Placed(0, Rect(0, 40, 60, 20)))),), 1, 1)
    >>> choice = best_for("largest offcut", job, [apart, side], Least(30, 10))
    >>> choice.shop.offcut, choice.among, choice.largest
    (2400, 2, (0, Rect(x=60, y=0, w=40, h=60)))
    """
    found = list(layouts)
    cheapest = min((layout.cost for layout in found), default=0)
    ranked = sorted(
        ((_at_a_glance(job, layout, wish, least).ranked(wish), n) for n, layout in enumerate(found)
         if layout.cost == cheapest),
    )  # fmt: skip
    if not ranked:
        raise LayoutError("there is no layout to choose from; give the search more time.")
    finalists = [weighed(job, found[n], wish, least) for _, n in ranked[:FINALISTS]]
    return replace(min(finalists, key=lambda choice: choice.shop.ranked(wish)), among=len(ranked))


def weighed(job: Job, layout: Layout, wish: Wish | None = None, least: Least = LEAST) -> Choice:
    """One layout as it would be cut: tidied where that makes nothing worse."""
    sheets, cuts = [], []
    for laid in layout.sheets:
        ways = [(one, sawn(job, one, wish, least)) for one in (tidied(job, laid, wish, least), laid)]
        laid, found = min(ways, key=lambda way: one_sheet(way[1], least).ranked(wish))
        sheets.append(laid)
        cuts.append(found)
    layout = replace(layout, sheets=tuple(sheets))
    return Choice(wish, layout, tuple(cuts), shop_cost(job, layout.sheets, cuts, least), least)


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
    )


def _at_a_glance(job: Job, layout: Layout, wish: Wish | None, least: Least) -> ShopCost:
    """The same but for the settings, of which each counts once a stage: no order of cuts is worked out."""
    cuts = [sawn(job, laid, wish, least) for laid in layout.sheets]
    keys = {(cut.kind, cut.stage, cut.fence) for found in cuts for cut in found.cuts if cut.kind != "trim"}
    return _together(cuts, least, sum(kind == "rip" for kind, *_ in keys), len(keys))


_WISHED = {
    "largest offcut": "for the largest offcut",
    "fewest rips": "for the fewest rip settings",
    "fewest settings": "for the fewest fence settings",
    "fewest stages": "for the fewest turns of the pieces",
    "light pieces": "for light pieces after the first cut",
    None: "for the fewest turns of the pieces",
}


def told(choice: Choice, say: Callable[[int], str]) -> str:
    """Why this layout, and what it costs at the saw, in words; `say` writes a length.

    >>> shop = ShopCost(offcut=0, rips=1, settings=2, stages=2, heaviest=5000)
    >>> print(told(Choice("fewest stages", Layout((), 1, 1), (), shop, Least(40, 10), among=2), str))
    Chosen among 2 layouts for the fewest turns of the pieces. No offcut is worth keeping: none is as large as \
40 x 10. The fence is set 2 times, 1 of them for rips; the pieces are cut in 2 stages.
    """
    among = "The only layout found." if choice.among == 1 else (
        f"Chosen among {choice.among} layouts {_WISHED[choice.wish]}."
    )  # fmt: skip
    if choice.largest is None:
        least = f"{say(choice.least.length)} x {say(choice.least.width)}"
        offcut = f"No offcut is worth keeping: none is as large as {least}."
    else:
        sheet, at = choice.largest
        offcut = f"The largest offcut is {say(at.w)} x {say(at.h)}, of sheet {sheet + 1}."
    shop = choice.shop
    times, stages = _times(shop.settings), f"{shop.stages} stage{'s' * (shop.stages != 1)}"
    return f"{among} {offcut} The fence is set {times}, {shop.rips} of them for rips; the pieces are cut in {stages}."


def _times(number: int) -> str:
    return {1: "once"}.get(number, f"{number} times")
