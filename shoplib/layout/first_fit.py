"""A layout at once: large parts first, each into the free rectangle that it fills best, sheet after sheet."""

import numpy as np

from shoplib.layout.grown import Grown, Lie, Sheet


def first_fit(grown: Grown, large: np.ndarray | None = None, by_area: bool = False, merge: bool = False) -> list[Sheet]:
    """All parts on sheets, in a moment and not yet well.

    Every free rectangle comes of a cut right through another one, so whatever is laid this way can be sawn. `large`
    says of each kind how large it counts, else it is its longer side. `by_area` takes for each part the smallest free
    rectangle, not the one with the narrowest strip left. With `merge`, free rectangles that lie beside one another
    are made one: more goes in, but no longer can all of it be sawn.

    >>> from shoplib.layout.grown import grown as grow
    >>> from shoplib.layout.pieces import Job, Part, Stock
    >>> sheets = first_fit(grow(Job((Part("shelf", 600, 300, 8),), (Stock("ply", 2440, 610),), kerf=3)))
    >>> [len(sheet.lies) for sheet in sheets]
    [8]
    """
    lies: list[list[Lie]] = []
    stocks: list[int] = []
    there = grown.there.copy()
    free = np.zeros((0, 5), dtype=np.int64)  # sheet, x, y, w, h
    # Parts that few stocks hold go first, or others take the one wide board that is there for them.
    known = [stock for stock in range(len(grown.wide)) if stock != grown.missing]
    held_by = np.array([sum(grown.fits(kind, stock) for stock in known) for kind in range(len(grown.w))])
    sizes = np.maximum(grown.w, grown.h) if large is None else large
    for kind in np.lexsort((-grown.w * 1.0 * grown.h, -sizes, held_by)):
        for _ in range(grown.count[kind]):
            chosen = _best(free, grown, kind, by_area)
            if chosen is None:
                stock = _next_stock(grown, kind, there)
                there[stock] -= 1
                stocks.append(stock)
                lies.append([])
                free = np.vstack((free, [[len(lies) - 1, 0, 0, grown.wide[stock], grown.high[stock]]]))
                chosen = _best(free, grown, kind, by_area)
            row, turned = chosen
            sheet, x, y, wide, high = free[row].tolist()
            lies[sheet].append(Lie(int(kind), turned, x, y))
            w, h = int(grown.w[kind]), int(grown.h[kind])
            if turned:
                w, h = h, w
            # The cut that leaves the larger piece whole.
            if (wide - w) * high >= (high - h) * wide:
                rest = [[sheet, x + w, y, wide - w, high], [sheet, x, y + h, w, high - h]]
            else:
                rest = [[sheet, x + w, y, wide - w, h], [sheet, x, y + h, wide, high - h]]
            free = np.vstack((free[:row], free[row + 1 :], [r for r in rest if r[3] and r[4]] or free[:0]))
            if merge:
                free = _merged(free)
    return [Sheet(stock, tuple(on)) for stock, on in zip(stocks, lies, strict=True)]


def _merged(free: np.ndarray) -> np.ndarray:
    """Free rectangles that lie beside one another, with a side in common, made one."""
    rows = free.tolist()
    number = len(rows) - 1
    while number >= 0:
        one = rows[number]
        found = ((other, both) for other in range(number) if (both := _both(rows[other], one)))
        other, both = next(found, (None, None))
        if both:
            rows.pop(number)
            rows[other] = both
            number = len(rows)
        number -= 1
    return np.array(rows, dtype=np.int64).reshape(-1, 5)


def _both(one: list[int], other: list[int]) -> list[int] | None:
    """Two free rectangles as one; None where they are on two sheets, or no side is the same."""
    (s, x, y, w, h), (t, u, v, p, q) = one, other
    if s == t and y == v and h == q and (x + w == u or u + p == x):
        return [s, min(x, u), y, w + p, h]
    if s == t and x == u and w == p and (y + h == v or v + q == y):
        return [s, x, min(y, v), w, h + q]
    return None


def _best(free: np.ndarray, grown: Grown, kind: int, by_area: bool) -> tuple[int, bool] | None:
    """The free rectangle with the smallest strip left beside the part, or the smallest one, and whether it is turned
    there."""
    best = None
    w, h = grown.w[kind], grown.h[kind]
    for turned in (False, True) if grown.turns[kind] else (False,):
        over_w, over_h = (free[:, 3] - h, free[:, 4] - w) if turned else (free[:, 3] - w, free[:, 4] - h)
        over = free[:, 3] * free[:, 4] if by_area else np.minimum(over_w, over_h)
        left = np.where((over_w >= 0) & (over_h >= 0), over, np.iinfo(np.int64).max)
        if left.size and left.min() < np.iinfo(np.int64).max:
            row = int(left.argmin())
            if best is None or left[row] < best[0]:
                best = (left[row], row, turned)
    return best and (best[1], best[2])


def _next_stock(grown: Grown, kind: int, there: np.ndarray) -> int:
    """What lies in the shop already, smallest first; then what costs least by its area."""
    area = grown.wide * 1.0 * grown.high
    able = [s for s in range(len(area)) if there[s] > 0 and grown.fits(kind, s)]
    return min(able, key=lambda s: (grown.cost[s] / area[s], area[s]))
