"""The best layout that the search finds, to hold a layout made by hand against."""

from dataclasses import dataclass
from functools import lru_cache

from shoplib.layout.by_hand import letters
from shoplib.layout.cut_tree import sawn
from shoplib.layout.hand import Hand, HandSheet, Place
from shoplib.layout.pieces import Job, Laid, Layout, LayoutError
from shoplib.layout.sawn import SawCut
from shoplib.layout.search import layouts
from shoplib.measure import Style


@dataclass(frozen=True, slots=True)
class Best:
    """The cheapest layout that was found, and the same as if it had been laid by hand."""

    layout: Layout
    hand: Hand


@lru_cache(maxsize=32)
def best_found(job: Job, style: Style, seconds: float) -> Best | None:
    """The cheapest layout that is found in this time; None where the job cannot be laid out at all.

    >>> from shoplib.layout.pieces import Part, Stock
    >>> from shoplib.measure import MM, MM_STYLE
    >>> job = Job((Part("shelf", 600 * MM, 300 * MM, 9),), (Stock("plywood", 2440 * MM, 610 * MM, cost=1),), 3 * MM)
    >>> best = best_found(job, MM_STYLE, 1.0)
    >>> best.layout.cost, best.hand.done, len(best.hand.sheets)
    (2, True, 2)
    >>> best_found(Job(job.parts, (Stock("offcut", 500 * MM, 500 * MM, cost=1),)), MM_STYLE, 1.0) is None
    True
    """
    try:
        *_, best = layouts(job, seconds)
    except LayoutError:
        return None
    return Best(best, as_hand(job, best.sheets, style))


def as_hand(job: Job, sheets: tuple[Laid, ...], style: Style) -> Hand:
    """A layout as if it had been laid by hand, cut as `cut_tree.sawn` cuts it; it has no steps to take back."""
    laid, places, letter = [], [], letters()
    for number, sheet in enumerate(sheets):
        done = sawn(job, sheet)
        laid.append(HandSheet(sheet.stock, sheet.placed, tuple(cut for cut in done.cuts if cut.kind != "trim")))
        places += [Place(next(letter), number, at, (-1 - len(places) - n, "")) for n, at in enumerate(done.offcuts)]
    to_lay = [part.count for part in job.parts]
    for sheet in sheets:
        for placed in sheet.placed:
            to_lay[placed.part] -= 1
    return Hand(job, style, tuple(to_lay), tuple(laid), tuple(places))


def settings(hand: Hand) -> int:
    """How often the fence is set: equal cuts of one stage are made one after another, of all sheets together.

    >>> from shoplib.layout.by_hand import begin, lay_along
    >>> from shoplib.layout.pieces import Part, Stock
    >>> from shoplib.measure import MM_STYLE
    >>> job = Job((Part("shelf", 600, 300, 4),), (Stock("plywood", 2500, 610),), 3)
    >>> settings(lay_along(begin(job, MM_STYLE), 0, 0)), stages(lay_along(begin(job, MM_STYLE), 0, 0))
    (2, 2)
    """
    return len({(cut.kind, cut.stage, cut.fence) for cut in _cuts(hand)})


def stages(hand: Hand) -> int:
    """How many times the pieces are turned about, the first cuts counted; trimming is not."""
    return max((cut.stage for cut in _cuts(hand)), default=0)


def _cuts(hand: Hand) -> list[SawCut]:
    return [cut for sheet in hand.sheets for cut in sheet.cuts]
