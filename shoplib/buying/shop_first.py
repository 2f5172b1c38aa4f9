"""Pieces in the shop before what is bought: at the same cost, what can come out of them does.

A search for the least cost does not care whether a part lies on a new sheet that must be bought in any case, or on an
offcut that is there: here such parts are moved, so that what is left of new stock is the larger.
"""

from collections import Counter
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import replace

from shoplib.layout.looks import by_looks
from shoplib.layout.pieces import Job, Laid, Layout, LayoutError
from shoplib.layout.search import layouts, pool

FOR_ONE = 0.05
"""Seconds to find whether some parts come out of one piece: mostly the first try says it."""


def shop_first(job: Job, layout: Layout, seconds: float) -> list[Layout]:
    """The layout, with parts moved from new stock to pieces in the shop that it leaves unused, the largest first.

    Behind it others of the same cost, in which what is left on the new stock lies otherwise. No layout costs more.

    >>> from shoplib.layout.pieces import Part, Placed, Rect, Stock
    >>> stock = Stock("offcut", 45, 32, 1), Stock("ply", 90, 80, None, 9)
    >>> job = Job((Part("side", 40, 30, 2), Part("rail", 40, 5)), stock)
    >>> places = (Placed(0, Rect(0, 0, 40, 30)), Placed(0, Rect(0, 30, 40, 30)), Placed(1, Rect(0, 60, 40, 5)))
    >>> moved, *_ = shop_first(job, Layout((Laid(1, places),), 9, 9), 0.1)
    >>> [(laid.stock, [one.part for one in laid.placed]) for laid in moved.sheets]
    [(1, [0, 1]), (0, [0])]
    """
    own = [laid for laid in layout.sheets if job.stock[laid.stock].count is not None]
    new = [laid for laid in layout.sheets if job.stock[laid.stock].count is None]
    waiting = Counter(one.part for laid in new for one in laid.placed)
    filled = []
    for piece in _unused(job, own):
        laid = _filled(job, piece, waiting)
        if laid is not None:
            filled.append(laid)
            waiting -= Counter(one.part for one in laid.placed)
    if not filled:
        return [layout]
    moved = Counter(one.part for laid in filled for one in laid.placed)
    found = [_joined(job, layout, tuple(_without(new, moved)), own + filled)]
    rest = replace(
        job,
        parts=tuple(replace(part, count=waiting[number]) for number, part in enumerate(job.parts)),
        stock=tuple(one if one.count is None else replace(one, count=0) for one in job.stock),
    )
    with suppress(LayoutError):  # there is one already
        for other in pool(rest, found[0].cost, seconds):
            found.append(_joined(job, layout, other.sheets, own + filled))
    return found


def _unused(job: Job, own: list[Laid]) -> Iterator[int]:
    """The pieces in the shop on which nothing lies, by their place in the stock, the largest first."""
    used = Counter(laid.stock for laid in own)
    by_area = sorted(range(len(job.stock)), key=lambda n: -job.stock[n].length * job.stock[n].width)
    for number in by_area:
        if job.stock[number].count is not None:
            yield from [number] * (job.stock[number].count - used[number])


def _filled(job: Job, piece: int, waiting: Counter[int]) -> Laid | None:
    """One piece with as many of the waiting parts as come out of it, large ones first; None where none does."""
    alone = (replace(job.stock[piece], count=1),)
    best, taken = None, Counter()
    for number in sorted(waiting, key=lambda n: -job.parts[n].length * job.parts[n].width):
        for _ in range(waiting[number]):
            tried = taken + Counter([number])
            parts = tuple(replace(part, count=tried[n]) for n, part in enumerate(job.parts))
            try:
                layout = next(layouts(replace(job, parts=parts, stock=alone), FOR_ONE, by_looks()))
            except LayoutError:
                break
            best, taken = Laid(piece, layout.sheets[0].placed), tried
    return best


def _without(new: list[Laid], moved: Counter[int]) -> Iterator[Laid]:
    """The new sheets without the parts that were moved; one that is empty then is not bought."""
    left = Counter(moved)
    for laid in reversed(new):  # from the last sheet, which is the emptiest
        staying = []
        for one in laid.placed:
            if left[one.part]:
                left[one.part] -= 1
            else:
                staying.append(one)
        if staying:
            yield replace(laid, placed=tuple(staying))


def _joined(job: Job, layout: Layout, new: tuple[Laid, ...], own: list[Laid]) -> Layout:
    cost = sum(job.stock[laid.stock].cost for laid in new)
    return replace(layout, sheets=(*new, *own), cost=cost, bound=layout.bound)
