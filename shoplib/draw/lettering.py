"""How wide a text comes out, and how texts in a row make room for one another.

Widths are those of DejaVu Sans; the other faces that a screen may take instead (Arial, Helvetica) run
narrower, so what fits here fits there.
"""

import re
from itertools import pairwise
from math import inf

_ASCII = (
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636,
    636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
    575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685,
    611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579,
    278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
)
"""Advance widths of the characters 32 to 126 in thousandths of the size, read from the font's hmtx table."""

_BREAK = re.compile(r"(?<!\d) | (?!\d+/\d|\([+-]\d|(?:mm|in)\))")
"""A space that a line may be broken at: none between the number of a size and its fraction, or its rest in brackets,
nor within these."""


class _Widths(dict[str, float]):
    """The width of each character; what is not among them counts as the widest."""

    def __missing__(self, character: str) -> float:
        return 1.0


_WIDTH = _Widths({chr(32 + i): width / 1000 for i, width in enumerate(_ASCII)})


def text_width(text: str, size: float) -> float:
    """Width of one line of text at a letter size, in the units of the size.

    >>> round(text_width("23 5/8", 12), 1)
    38.4
    """
    return size * sum(map(_WIDTH.__getitem__, text))


def wrapped(text: str, size: float, width: float) -> list[str]:
    """The text in lines no wider than `width`, broken at spaces but not within a size; a longer word stands alone.

    >>> wrapped("two dadoes and a groove", 10, 70)
    ['two dadoes', 'and a groove']
    >>> wrapped("20 × 4 13/16 (-0.003)", 10, 60)
    ['20 ×', '4 13/16 (-0.003)']
    """
    lines: list[str] = []
    for word in _BREAK.split(text):
        if lines and text_width(f"{lines[-1]} {word}", size) <= width:
            lines[-1] = f"{lines[-1]} {word}"
        else:
            lines.append(word)
    return lines


def spread(wanted: list[float], lengths: list[float]) -> list[float]:
    """Centres near the wanted ones, in the same order, so that the pieces do not overlap.

    Pieces that collide are packed and centred on the mean of where they wanted to be, which moves them the
    least in all (the pooling of adjacent violators). `wanted` must rise.

    >>> spread([0, 1, 50], [10, 10, 10])
    [-4.5, 5.5, 50.0]
    """
    blocks: list[list[float]] = []
    for place, length in zip(wanted, lengths, strict=True):
        blocks.append([place - length / 2, length, 1])
        while len(blocks) > 1 and blocks[-2][0] + blocks[-2][1] > blocks[-1][0]:
            start, extent, count = blocks.pop()
            first = blocks[-1]
            both = first[2] + count
            first[0] = (first[0] * first[2] + (start - first[1]) * count) / both
            first[1] += extent
            first[2] = both
    centres: list[float] = []
    index = 0
    for start, _, count in blocks:
        place = start
        for length in lengths[index:index + int(count)]:
            centres.append(place + length / 2)
            place += length
        index += int(count)
    return centres


def within(centres: list[float], lengths: list[float], extent: float) -> list[float]:
    """The pieces moved back between 0 and `extent`, in order, as far as there is room for all of them.

    >>> within([-4.5, 5.5, 50.0], [10, 10, 10], 52)
    [5.0, 15.0, 47.0]
    """
    room = max(extent, sum(lengths))
    return _between(centres, lengths, (extent - room) / 2, (extent + room) / 2)


def spread_clear(wanted: list[float], lengths: list[float], walls: list[float], off: float = 0.0) -> list[float]:
    """Centres near the wanted ones, in the same order, so that the pieces do not overlap and keep `off` all walls.

    Of all ways to part the pieces among the stretches between the walls it takes the one that moves them the least
    (the sum of squares). `wanted` and `walls` must rise.

    >>> spread_clear([4, 50, 97], [10, 10, 10], [0, 100])
    [5.0, 50.0, 95.0]
    >>> spread_clear([2, 3], [10, 4], [0, 8])
    [-5.0, 3.0]
    """
    centres = spread(wanted, lengths)
    if not any(abs(at - wall) < long / 2 + off for at, long in zip(centres, lengths, strict=True) for wall in walls):
        return centres
    ways: dict[int, tuple[float, list[float]]] = {0: (0.0, [])}
    for low, high in pairwise((-inf, *walls, inf)):
        low, high = low + off, high - off
        longer = dict(ways)
        for first, (cost, placed) in ways.items():
            for end in range(first + 1, len(wanted) + 1):
                if sum(lengths[first:end]) > high - low:
                    break
                here = _between(spread(wanted[first:end], lengths[first:end]), lengths[first:end], low, high)
                moved = cost + sum((at - to) ** 2 for at, to in zip(here, wanted[first:end], strict=True))
                if end not in longer or moved < longer[end][0]:
                    longer[end] = moved, placed + here
        ways = longer
    return ways[len(wanted)][1]


def _between(centres: list[float], lengths: list[float], low: float, high: float) -> list[float]:
    """The pieces moved back between two edges that have room for all of them, in order."""
    placed, edge = [], low
    for centre, length in zip(centres, lengths, strict=True):
        placed.append(max(centre, edge + length / 2))
        edge = placed[-1] + length / 2
    edge = high
    for k in range(len(placed) - 1, -1, -1):
        placed[k] = min(placed[k], edge - lengths[k] / 2)
        edge = placed[k] - lengths[k] / 2
    return placed
