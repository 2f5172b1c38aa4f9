"""Where a name stands along an edge, so that no leader and no extension line runs through it."""

from collections.abc import Iterable
from itertools import pairwise

_CLEAR = 5
"""In the middle a name wants a fifth of the edge free to either side."""


def between(lines: Iterable[int], long: int) -> tuple[int, int]:
    """The stretch of an edge so `long` in whose middle a name stands: the whole of it, or, where one of the `lines`
    runs there, the widest between two of them.

    >>> between([90], 100), between([45], 100), between([50, 20], 100)
    ((0, 100), (45, 100), (50, 100))
    """
    places = sorted({0, long, *(at for at in lines if 0 < at < long)})
    if all(abs(at - long / 2) >= long / _CLEAR for at in places[1:-1]):
        return 0, long
    return max(pairwise(places), key=lambda stretch: stretch[1] - stretch[0])
