"""Small gaps drawn larger than they are: places along one axis, shifted so that each gap can be seen."""

from bisect import bisect_right
from collections.abc import Iterable


class Stretched:
    """Where each place along one axis is drawn, when every gap (low, high) is drawn at least `least` wide.

    What lies beyond a gap is only shifted: what touches still touches, and what is apart stays apart. Gaps that
    overlap are drawn as one.

    >>> drawn = Stretched([(10, 12)], 6)
    >>> [drawn(place) for place in (0, 10, 11, 12, 20)]
    [0, 10, 13, 16, 24]
    """

    def __init__(self, gaps: Iterable[tuple[int, int]], least: int) -> None:
        self._gaps: list[tuple[int, int, int]] = []
        end = None
        for low, high in sorted(set(gaps)):
            if end is not None and low < end:
                continue
            if high - low < least:
                self._gaps.append((low, high, least))
                end = high
        self._lows = [low for low, _, _ in self._gaps]

    def __bool__(self) -> bool:
        """Whether anything is drawn larger than it is."""
        return bool(self._gaps)

    def __call__(self, place: int) -> int:
        """Where the place is drawn (plain ticks)."""
        shift = 0
        for low, high, wide in self._gaps[: bisect_right(self._lows, place)]:
            inside = min(place, high) - low
            shift += inside * (wide - high + low) // (high - low)
        return int(place) + shift
