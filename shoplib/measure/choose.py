"""Where a length is chosen among several, or rounded for the shop: nowhere else, so that it can be explained.

All work on whole ticks, plain or carrying their working (`traced`); then the choice joins the working. A float or
anything else that is no whole number raises TypeError: it would slip past every exact sum.
"""

from collections.abc import Iterable, Sequence
from fractions import Fraction

from shoplib.measure.traced import chosen


def mean(values: Sequence[int]) -> int:
    """The mean of the readings to the nearest tick (a half goes up): what sums use.

    Raises ValueError where there is no reading.

    >>> mean([90, 93])
    92
    """
    _need_some(values)
    return chosen(_nearest(int(sum(values)), len(values)), "mean", values)


def narrowest(values: Sequence[int]) -> int:
    """The smallest of the readings: what must pass through, or stand in, all of them.

    Raises ValueError where there is no reading.

    >>> narrowest([90, 93])
    90
    """
    _need_some(values)
    return chosen(min(values), "narrowest", values)


def thickest(values: Sequence[int]) -> int:
    """The largest of the readings: what a cut must receive.

    Raises ValueError where there is no reading.

    >>> thickest([90, 93])
    93
    """
    _need_some(values)
    return chosen(max(values), "thickest", values)


def share(total: int, n: int, step: int) -> tuple[int, int]:
    """Share `total` among `n` equal parts of whole steps: the part, and the rest left over.

    n * part + rest == total and 0 <= rest < n * step. Raises ValueError where `n` or `step` is under 1.

    >>> share(100, 3, 5)
    (30, 10)
    """
    if n < 1 or step < 1:
        raise ValueError(f"a length is shared among 1 or more parts of 1 tick or more, not {n} of {step}.")
    part = chosen(total // (n * step) * step, "share", [total], steps=step, parts=n)
    return part, total - n * part


def largest_fitting(values: Iterable[int], limit: int) -> int | None:
    """The largest value that is no more than `limit`, or None where all are larger.

    >>> largest_fitting([300, 350, 400], 399), largest_fitting([300], 299)
    (350, None)
    """
    values = list(values)
    best = max((value for value in values if value <= limit), default=None)
    return None if best is None else chosen(best, "largest fitting", [limit, *values])


def to_step(value: int, step: int, direction: str = "nearest") -> int:
    """The multiple of `step` that is "nearest" to the value (a half goes up), or next "down" or "up".

    Raises ValueError for another direction, or a step under 1.

    >>> to_step(14, 5), to_step(14, 5, "down"), to_step(11, 5, "up"), to_step(-14, 5, "down")
    (15, 10, 15, -15)
    """
    if step < 1:
        raise ValueError(f"a step is 1 tick or more, not {step}.")
    match direction:
        case "nearest":
            whole = _nearest(int(value), step) * step
        case "down":
            whole = value // step * step
        case "up":
            whole = -(-int(value) // step) * step
        case _:
            raise ValueError(f"a length goes to the nearest step, down or up, not {direction!r}.")
    return chosen(whole, direction, [value], steps=step)


def scaled(value: int, factor: Fraction, told: str) -> int:
    """The value times a factor, to the nearest tick; `told` is the factor as a working says it.

    >>> scaled(40, Fraction(3, 8), "3/8")
    15
    """
    return chosen(round(int(value) * factor), f"x {told}", [value])


def _nearest(value: int, by: int) -> int:
    return (2 * value + by) // (2 * by)


def _need_some(values: Sequence[int]) -> None:
    if not values:
        raise ValueError("there is no reading to choose from; give at least one.")
