"""Where a name stands along an edge, so that no leader and no extension line runs through it."""

from collections.abc import Iterable
from itertools import pairwise


def between(lines: Iterable[float], edge: tuple[float, float], wide: float) -> float | None:
    """Where along an `edge` the middle of a name so `wide` stands: amid it, or, where one of the `lines` runs through
    the name there, amid the widest stretch between two of them; None where that is too short for it.

    >>> between([90], (0, 100), 40), between([45], (0, 100), 40), between([50, 20], (0, 100), 60)
    (50.0, 72.5, None)
    """
    low, high = edge
    middle = (low + high) / 2
    lines = [line for line in lines if low < line < high]
    if wide <= high - low and all(abs(line - middle) >= wide / 2 for line in lines):
        return middle
    low, high = max(pairwise(sorted([low, *lines, high])), key=lambda stretch: stretch[1] - stretch[0])
    return (low + high) / 2 if wide <= high - low else None
