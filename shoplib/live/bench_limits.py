"""How far a setting may go that was refused: found from what is missing, without trying every value."""

from bisect import bisect_left
from collections.abc import Callable, Sequence

from shoplib.joints.bench_pair import CannotCut

Refused = Callable[[int], CannotCut | None]
"""Why a value of the setting cannot be cut; None where it can."""


def nearest(
    refused: Refused, now: int, values: Sequence[int], scattered: bool = False
) -> tuple[int | None, int | None]:
    """Of rising `values` the nearest to `now` that can be cut, below and above it; None where there is none.

    What can be cut is a range, and each step brings its end as much nearer as the one before it. Where `scattered` says
    that it is none, each value is tried.

    >>> nearest(lambda size: CannotCut("size", "Too much.", size - 70) if size > 70 else None, 200, range(300))
    (70, None)
    >>> nearest(lambda size: CannotCut("size", "A rest.", 60 % size) if 60 % size else None, 8, range(1, 61), True)
    (6, 10)
    """
    at = bisect_left(values, now)
    below, above = values[:at][::-1], [value for value in values[at:] if value > now]
    first = _first_of_many if scattered else _first_of_range
    return first(refused, below), first(refused, above)


def _first_of_many(refused: Refused, outward: Sequence[int]) -> int | None:
    return next((value for value in outward if refused(value) is None), None)


def _first_of_range(refused: Refused, outward: Sequence[int]) -> int | None:
    """The first that can be cut: two steps show how much less is missing with each, and so how many are wanted."""
    at, tried = 0, -1
    while at < len(outward):
        here = refused(outward[at])
        if here is None:
            while at - 1 > tried and refused(outward[at - 1]) is None:
                at -= 1
            return outward[at]
        tried, at = at, at + 1
        after = refused(outward[at]) if at < len(outward) else here
        if after is None:
            return outward[at]
        if after.what == here.what:
            gain = here.amount - after.amount
            if gain <= 0:
                return None
            tried, at = at, at + after.amount // gain + (after.amount % gain > 0)
    return None
