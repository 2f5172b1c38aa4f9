"""Where a drawing in true scale is parted into pages: the seams, and what each page shows and owns of it."""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.draw.scene import Point, Rect
from shoplib.draw.true_scale import Item, Ring, TextLine, TrueDrawing
from shoplib.measure import MM

WASTE, LAP = 6 * MM, 12 * MM
"""What a page shows before its seam and cuts off there, and what the page under it shows beyond: the strip for glue."""
_FREE = 12 * MM
"""Farther than this from a seam nothing is in its way."""
_BESIDE = 7 * MM
"""The same for words, so that those of the seam have room."""


@dataclass(frozen=True, slots=True)
class Parting:
    """The bounds of a drawing and its seams: across (from the left) and up (from the top down), in ticks."""

    bounds: Rect
    across: tuple[int, ...] = ()
    up: tuple[int, ...] = ()

    @property
    def columns(self) -> int:
        """How many pages side by side."""
        return len(self.across) + 1

    @property
    def rows(self) -> int:
        """How many pages one below another."""
        return len(self.up) + 1

    @property
    def count(self) -> int:
        """How many pages."""
        return self.columns * self.rows

    def tiles(self) -> Iterator["Tile"]:
        """The pages row by row, from the upper left one on."""
        for row in range(self.rows):
            for column in range(self.columns):
                yield Tile(self, column, row)


@dataclass(frozen=True, slots=True)
class Tile:
    """One page of a drawing that is parted."""

    parting: Parting
    column: int
    row: int

    @property
    def name(self) -> str:
        """Its letter and number.

        >>> [tile.name for tile in Parting((0, 0, 9, 9), (4,), (5,)).tiles()]
        ['A1', 'A2', 'B1', 'B2']
        """
        return tile_name(self.row, self.column)

    @property
    def core(self) -> Rect:
        """What of the drawing is this page's own: from seam to seam.

        >>> [tile.core for tile in Parting((0, 0, 9, 9), (4,)).tiles()]
        [(0, 0, 4, 9), (4, 0, 9, 9)]
        """
        (a, b, c, d), parting = self.parting.bounds, self.parting
        across, up = (a, *parting.across, c), (d, *parting.up, b)
        return across[self.column], up[self.row + 1], across[self.column + 1], up[self.row]

    @property
    def shown(self) -> Rect:
        """What it shows: its own, what is cut off before its seams, and the strips for glue beyond."""
        (a, b, c, d), own = self.parting.bounds, self.core
        return max(own[0] - WASTE, a), max(own[1] - LAP, b), min(own[2] + LAP, c), min(own[3] + WASTE, d)


def tile_name(row: int, column: int) -> str:
    """A letter for the row, from the top, and a number for the column, from the left.

    >>> tile_name(0, 0), tile_name(1, 2), tile_name(27, 0)
    ('A1', 'B3', 'AB1')
    """
    letters, row = "", row + 1
    while row:
        row, last = divmod(row - 1, 26)
        letters = chr(ord("A") + last) + letters
    return f"{letters}{column + 1}"


def parted(drawing: TrueDrawing, window: Point) -> Parting:
    """The fewest pages whose windows cover the drawing, each lapping over the next.

    A seam goes near its even share, and where there is room keeps clear of holes and of lines that run along it.

    >>> flat = TrueDrawing((0, 0, 300 * MM, 90 * MM), (Ring((150 * MM, 45 * MM), 6 * MM),))
    >>> seams = parted(flat, (178 * MM, 215 * MM))
    >>> seams.count, [seam // MM for seam in seams.across]
    (2, [135])
    """
    a, b, c, d = drawing.bounds
    across = [(near, far, ranked) for item in drawing.items for near, far, ranked in _shy(item, 0)]
    up = [(-far, -near, ranked) for item in drawing.items for near, far, ranked in _shy(item, 1)]
    return Parting(drawing.bounds, _seams_along(a, c, window[0], across),
                   tuple(-y for y in _seams_along(-d, -b, window[1], up)))


_InTheWay = tuple[int, ...]
"""Of some seams: how many run through what they should not, how much they lack to be free of it, and of words, and how
far they are from their even shares."""
_Shy = tuple[int, int, bool]
"""From where to where a seam should not run, and whether words alone are there."""


def _shy(item: Item, along: int) -> list[_Shy]:
    """What a seam across this axis should not run through: holes, lines along the seam, words."""
    near, far = item.around[along], item.around[along + 2]
    if isinstance(item, TextLine):
        return [(near, far, item.turned != (along == 0))] if item.stays or item.turned == (along == 0) else []
    if isinstance(item, Ring):
        return [(near, far, False)]
    return [(end, end, False) for end in (near, far)]


def _seams_along(low: int, high: int, most: int, shy: list[_Shy]) -> tuple[int, ...]:
    """Seams from `low` to `high`, so that no page shows more than `most`: on as few pages as will do, or on one more
    where a seam would have to run through words or a hole."""
    over = WASTE + LAP
    fewest = 1 if high - low <= most else -((over - (high - low)) // (most - over))
    best = _least_in_the_way(low, high, most, shy, fewest)
    if best[0][0]:
        best = min(best, _least_in_the_way(low, high, most, shy, fewest + 1), key=lambda way: way[0][0])
    return best[1]


def _least_in_the_way(low: int, high: int, most: int, shy: list[_Shy], count: int) -> tuple[_InTheWay, tuple[int, ...]]:
    """Of all seams of so many pages those with the least in their way together: one that goes where it likes best can
    leave the next no choice. Each keeps within a third of a page of its even share."""
    hard = [(near, far) for near, far, words in shy if not words]
    soft = [(near, far) for near, far, words in shy if words]
    step, third = most - WASTE - LAP, (high - low) // (3 * count)
    ways: list[tuple[_InTheWay, tuple[int, ...]]] = [((0, 0, 0, 0), (low + WASTE,))]
    for number in range(1, count):
        even = low + (high - low) * number // count
        first = max(high - most + WASTE - (count - 1 - number) * step, even - third)
        last = min(low + WASTE + number * step, even + third)
        reached, before, best = [], sorted(ways, key=lambda way: way[1][-1]), None
        for seam in sorted({min(max(even, first), last), last, *range(first, last + 1, MM)}, reverse=True):
            while before and seam - before[-1][1][-1] <= step:
                way = before.pop()
                best = min(best, way) if best else way
            if best:
                clear, beside = min(_clear(seam, hard), _FREE), min(_clear(seam, soft), _BESIDE)
                more = not clear, (_FREE - clear) ** 2, (_BESIDE - beside) ** 2, abs(seam - even)
                reached.append((tuple(one + other for one, other in zip(best[0], more, strict=True)), (*best[1], seam)))
        ways = reached
    cost, seams = min(ways)
    return cost, seams[1:]


def _clear(seam: int, shy: list[tuple[int, int]]) -> int:
    """How far the nearest of the spans is away."""
    return min((max(near - seam, seam - far, 0) for near, far in shy), default=_FREE)
