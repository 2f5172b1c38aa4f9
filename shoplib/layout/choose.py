"""Among layouts that cost the same to buy, the one that a shop would rather cut."""

import time
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from operator import attrgetter

from shoplib.layout.cut_tree import one_sheet, other_ways, sawn, tidied
from shoplib.layout.offcuts import LEAST, Least, worth_keeping
from shoplib.layout.order import cut_order, set_ups
from shoplib.layout.own_strips import own_strips
from shoplib.layout.pieces import Job, Laid, Layout, LayoutError, Rect
from shoplib.layout.room_kept import largest_room
from shoplib.layout.sawn import Sawn
from shoplib.layout.shop_cost import ShopCost, Wish, as_good, best_of

FINALISTS = 6
"""So many layouts are tidied and put in order before the last choice; the others are judged as they were found."""

CUT_OTHERWISE = 3
"""So many finalists are cut in other ways as well, where something is wanted of what is left."""

FOR_LAST = 0.3
"""Seconds at least in which finalists are weighed and cut in other ways."""

WAYS = 4
"""So many other ways to cut a sheet are held against what is wanted of the leftovers."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """What the leftovers are for, beside the wish; less is better. Both get the sheets and their cuts.

    `later` is what stages that are still to come would cost to buy, and comes before the wish; None where there are
    none. `spare` says how well spoiled parts could be made again, and comes after the wish and parts left to size.
    """

    later: Callable[[Sequence[Laid], Sequence[Sawn]], int] | None = None
    spare: Callable[[Sequence[Laid], Sequence[Sawn]], tuple[int, ...]] = lambda sheets, cuts: ()


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
    wanted: Wanted | None = None,
) -> Choice:
    """The layout that does best in what is wished, then in the other wishes (`ShopCost.ranked`), ready for the saw.

    Its strips are tidied. Parts that must lie side by side in their order (`grain_run`) are therefore still one part
    here, and taken apart afterwards. Only the cheapest layouts count, and of many those that can be looked at in about
    so many seconds, those that promise most first. What is `wanted` of the leftovers counts besides. LayoutError where
    there are no layouts.

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
    found = sorted((layout for layout in found if layout.cost == cheapest), key=partial(_promises, wish, job))
    known: dict[Laid, Sawn] = {}  # layouts of one job have many sheets in common
    ranked: list[tuple[tuple[int, ...], int]] = []
    spare: dict[int, tuple[int, ...]] = {}
    for n, layout in enumerate(found):
        if len(ranked) >= FINALISTS and clock() > until:
            break
        for laid in layout.sheets:
            if laid not in known:
                known[laid] = sawn(job, laid, wish, least)
        cuts = [known[laid] for laid in layout.sheets]
        ranked.append((_at_a_glance(cuts, least).ranked(wish), n))
        spare[n] = wanted.spare(layout.sheets, cuts) if wanted else ()
    if not ranked:
        raise LayoutError("there is no layout to choose from; give the search more time.")
    ranked.sort()
    good = as_good(wish, ranked[0][0])
    by_spare = sorted((rank for rank in ranked if good(rank[0])), key=lambda rank: (spare[rank[1]], rank))
    numbers = dict.fromkeys(n for _, n in (*ranked[:FINALISTS], *(by_spare[:FINALISTS] if wanted else ())))
    until = max(until, clock() + max(seconds / 4, FOR_LAST))
    finalists: list[Choice] = []
    for n in numbers:
        if finalists and clock() > until:
            break
        finalists.append(weighed(job, found[n], wish, least))
    if wanted is None:
        best = best_of(_in_turn(job, finalists, _as_sawn), attrgetter("shop"), wish)
        return replace(together(job, best), among=len(ranked))
    able = list(finalists)
    for n, choice in [*zip(numbers, finalists, strict=False)][:CUT_OTHERWISE]:
        cuts = tuple(known[laid] for laid in found[n].sheets)
        plain = Choice(wish, found[n], cuts, shop_cost(job, found[n].sheets, cuts, least), least)
        for one in dict.fromkeys((choice, plain)):
            able += _cut_otherwise(job, one) if clock() < until else ()
    chosen = _wanted_most(wanted, _in_turn(job, able, _as_sawn), lambda: clock() > until)
    return replace(_if_no_worse(wanted, chosen, together(job, chosen)), among=len(ranked))


def _promises(wish: Wish | None, job: Job, layout: Layout) -> int:
    """Before anything is cut in thought: a large piece that is free or, for other wishes, few lines to saw along."""
    if wish == "largest offcut":
        return -largest_room(job, layout)[0]
    sides = ({(one.at[axis], one.at[axis + 2]) for one in laid.placed} for laid in layout.sheets for axis in (0, 1))
    return sum(map(len, sides))


def _as_sawn(choice: Choice) -> tuple[tuple[Laid, ...], tuple[Sawn, ...]]:
    return choice.layout.sheets, choice.sheets


def _rank(choice: Choice) -> tuple[int, ...]:
    return choice.shop.ranked(choice.wish)


def _wanted_most(wanted: Wanted, able: list[Choice], late: Callable[[], bool]) -> Choice:
    """The choice with which least is bought later; of those the one as it is wished, from which parts can be made."""
    good = as_good(able[0].wish, min(map(_rank, able)))

    def rank(choice: Choice) -> tuple:
        if not good(_rank(choice)):
            return True, 0, (), _rank(choice)
        return False, choice.shop.left_to_size, wanted.spare(choice.layout.sheets, choice.sheets), _rank(choice)

    best, least_cost = able[0], None
    for choice in sorted(able, key=rank):
        if wanted.later is None:
            return choice
        cost = wanted.later(choice.layout.sheets, choice.sheets)
        if least_cost is None or cost < least_cost:
            best, least_cost = choice, cost
        if not cost or late():
            break
    return best


def _if_no_worse(wanted: Wanted, chosen: Choice, other: Choice) -> Choice:
    """The other choice, unless what it leaves serves less well."""
    ways = [(one.layout.sheets, one.sheets) for one in (other, chosen)]
    later, spare = ([ask(*way) for way in ways] if ask else [0, 0] for ask in (wanted.later, wanted.spare))
    return other if later[0] <= later[1] and spare[0] <= spare[1] else chosen


def _cut_otherwise(job: Job, choice: Choice) -> Iterator[Choice]:
    """The same layout with one sheet cut in another way."""
    for number, laid in enumerate(choice.layout.sheets):
        for cuts in other_ways(job, laid, choice.wish, choice.least)[:WAYS]:
            sheets = (*choice.sheets[:number], cuts, *choice.sheets[number + 1 :])
            yield replace(choice, sheets=sheets, shop=shop_cost(job, choice.layout.sheets, sheets, choice.least))


def weighed(job: Job, layout: Layout, wish: Wish | None = None, least: Least = LEAST) -> Choice:
    """One layout as it would be cut: tidied, or each width in strips of its own, where that makes nothing worse."""
    sheets, cuts = [], []
    for laid in layout.sheets:
        ways = _ways(job, laid, wish, least)
        laid, found = best_of(ways, lambda way: shop_cost(job, way[:1], way[1:], least), wish)
        sheets.append(laid)
        cuts.append(found)
    layout = replace(layout, sheets=tuple(sheets))
    return Choice(wish, layout, tuple(cuts), shop_cost(job, layout.sheets, cuts, least), least)


def _ways(job: Job, laid: Laid, wish: Wish | None, least: Least) -> list[tuple[Laid, Sawn]]:
    """The ways to lay the parts of one sheet that are tried, with their cuts."""
    tidy = (tidied(job, laid, wish, least, at_once) for at_once in (True, False))
    ways = [(one, sawn(job, one, wish, least)) for one in dict.fromkeys((*tidy, laid, *own_strips(job, laid)))]
    return _in_turn(job, ways, lambda way: (way[:1], way[1:]))


def _in_turn(job: Job, ways: list, sheets_and_cuts: Callable) -> list:
    """Of ways to lay and cut those in which the fewest parts get a size before their turn."""
    if len({part.turn for part in job.parts}) < 2:
        return ways
    early = [sum(len(step.too_early) for step in cut_order(job, *sheets_and_cuts(way))) for way in ways]
    return [way for way, count in zip(ways, early, strict=True) if count == min(early)]


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
            fewer = shop.left_to_size <= choice.shop.left_to_size
            if fewer and shop.ranked(choice.wish) < choice.shop.ranked(choice.wish):
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
