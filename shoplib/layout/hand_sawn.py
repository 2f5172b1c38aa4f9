"""What sawing a layout made by hand takes: the cuts as they were planned, sheet by sheet."""

from dataclasses import replace

from shoplib.layout.choose import shop_cost
from shoplib.layout.cut_tree import trim_cuts
from shoplib.layout.hand import Hand
from shoplib.layout.pieces import Rect
from shoplib.layout.sawn import Sawn
from shoplib.layout.shop_cost import ShopCost


def sawn_by_hand(hand: Hand, number: int) -> Sawn:
    """One of the sheets, counted from 0, trimmed and then cut as it was planned.

    >>> from shoplib.layout.by_hand import begin, lay
    >>> from shoplib.layout.pieces import Job, Part, Stock
    >>> from shoplib.measure import MM_STYLE
    >>> job = Job((Part("side", 300, 200),), (Stock("ply", 1000, 500, trim_ends=10, trim_edges=10),), 3)
    >>> done = sawn_by_hand(lay(begin(job, MM_STYLE), 0, 0), 0)
    >>> [cut.kind for cut in done.cuts], done.cuts[-1].finishes, len(done.offcuts)
    (['trim', 'trim', 'trim', 'trim', 'rip', 'crosscut'], (0,), 2)
    """
    sheet = hand.sheets[number]
    stock, laid = hand.job.stock[sheet.stock], hand.laid()[number]
    whole = Rect(0, 0, stock.length, stock.width)
    finished = {placed.at: n for n, placed in enumerate(sheet.placed)}
    cuts = [
        replace(cut, finishes=tuple(finished[piece] for piece in (cut.off, cut.left) if piece in finished))
        for cut in sheet.cuts
    ]
    return Sawn(
        (*trim_cuts(whole, stock.usable, laid), *cuts),
        tuple(place.at for place in hand.places if place.sheet == number),
        sum(cut.piece.area - cut.off.area - (cut.left.area if cut.left else 0) for cut in cuts),
        whole.area - stock.usable.area,
    )


def shop_cost_by_hand(hand: Hand) -> ShopCost:
    """What all sheets cost at the saw, cut as they were planned, the fence set in the best order that is found.

    >>> from shoplib.layout.by_hand import begin, lay_along
    >>> from shoplib.layout.pieces import Job, Part, Stock
    >>> from shoplib.measure import MM, MM_STYLE
    >>> job = Job((Part("shelf", 600 * MM, 300 * MM, 4),), (Stock("plywood", 2500 * MM, 610 * MM),), 3 * MM)
    >>> cost = shop_cost_by_hand(lay_along(begin(job, MM_STYLE), 0, 0))
    >>> cost.settings, cost.stages, cost.cuts
    (2, 2, 5)
    """
    return shop_cost(hand.job, hand.laid(), [sawn_by_hand(hand, number) for number in range(len(hand.sheets))])
