"""Wood that moves with the season: moisture by the air of the room, change of width by moisture, gaps by both."""

from collections.abc import Iterable
from fractions import Fraction
from functools import lru_cache

from shoplib.measure.choose import scaled, share

DRIEST, DAMPEST = 6, 14
"""Between these moisture contents, in percent, the change of width holds (Wood Handbook, chapter 13)."""


def moisture_content(fahrenheit: float, humidity: float) -> float:
    """The moisture content in percent that wood comes to in air of so many degrees Fahrenheit and percent humidity.

    Equilibrium moisture content, Wood Handbook FPL-GTR-190 (2010), chapter 4:
    (1800/W) [KH/(1 - KH) + (K1 KH + 2 K1 K2 K2H2) / (1 + K1 KH + K1 K2 K2H2)], where K2H2 is (KH) squared.
    The coefficients are from memory, confirmed: within 0.07 of every cell of Table 4-2.
    Raises ValueError where `humidity` is not from 0 to under 100.

    >>> round(moisture_content(70, 50), 1)
    9.2
    """
    if not 0 <= humidity < 100:
        raise ValueError(f"relative humidity goes from 0 to under 100 percent; {humidity} is outside.")
    t = fahrenheit
    w = 330 + 0.452 * t + 0.00415 * t * t
    k = 0.791 + 0.000463 * t - 0.000000844 * t * t
    k1 = 6.34 + 0.000775 * t - 0.0000935 * t * t
    k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t
    kh = k * humidity / 100
    free = kh / (1 - kh)
    bound = (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh)
    return 1800 / w * (free + bound)


def movement(width: int, coefficient: Fraction, before: float, after: float) -> int:
    """By how many ticks a width across the grain grows (minus: shrinks) from one moisture content to another.

    dD = D * C * (M_F - M_I), Wood Handbook FPL-GTR-190 (2010), chapter 13; `coefficient` C from its Table 13-5, the
    contents in percent. To the nearest tick. Raises ValueError for a content outside 6 to 14 %, where it does not hold.

    >>> from shoplib.measure import MM
    >>> movement(232 * MM, Fraction("0.00245"), 8, 11) / MM
    1.7052
    """
    return scaled(width, *_growth(coefficient, before, after))


@lru_cache(maxsize=256)  # between two moves of a slider, fronts by the hundred grow from and to the same few contents
def _growth(coefficient: Fraction, before: float, after: float) -> tuple[Fraction, str]:
    """What part of its width the wood grows by, and how a working says it."""
    for content in (before, after):
        if not DRIEST <= content <= DAMPEST:
            raise ValueError(
                f"the change of width holds from {DRIEST} to {DAMPEST} % of moisture; {content:.1f} % is outside."
            )
    told = f"{float(coefficient):.5f} x ({after:.2f} - {before:.2f})"
    return coefficient * (Fraction(after) - Fraction(before)), told


def gap_left(gap: int, grown: Iterable[int]) -> int:
    """What is left of a gap, in ticks, when each front beside it has grown by so much (minus: shrunk).

    A front that is fixed along the middle of its height grows half upward and half downward (common practice, no
    source), so each front beside a gap takes half of its growth from it. A case of sheet goods stands still and takes
    nothing: beside it there is one front only. Less than nothing is left where they would press on each other.

    >>> gap_left(30, [20]), gap_left(30, [20, 16])
    (20, 12)
    """
    return gap - share(sum(grown), 2, 1)[0]
