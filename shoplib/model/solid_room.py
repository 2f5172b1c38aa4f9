"""The room that solid wood needs across its grain: what it takes in damp air, what it leaves in dry."""

from dataclasses import dataclass
from fractions import Fraction

from shoplib.measure import thickest
from shoplib.model.movement import movement
from shoplib.model.season import moisture


@dataclass(frozen=True, slots=True)
class YearRound:
    """By how much a width grows over its size as made, and how much it shrinks under it, through the year (ticks)."""

    grows: int
    shrinks: int


def year_round(width: int, coefficient: Fraction, made: int, driest: int, dampest: int) -> YearRound:
    """How far a board `width` across the grain (ticks) moves in a room from `driest` to `dampest` % of humidity.

    `made` is the humidity where it was cut; `coefficient` that of its wood and cut. Raises ValueError for a humidity
    outside the sum.

    >>> from shoplib.measure import MM
    >>> moves = year_round(400 * MM, Fraction("0.00365"), 45, 35, 65)
    >>> round(moves.grows / MM, 1), round(moves.shrinks / MM, 1)
    (5.1, 2.2)
    """
    as_made = moisture(made)
    changes = [movement(width, coefficient, as_made, moisture(humidity)) for humidity in (driest, dampest)]
    return YearRound(thickest([0, *changes]), thickest([0, *(-change for change in changes)]))


def gap_to_plan(width: int, beside: int, coefficient: Fraction, made: int, dampest: int, least: int) -> int:
    """The gap to leave, as made, between two fronts of one wood so that `least` is left when the room is dampest.

    `width` and `beside` are the two across the grain (0: the case, which stands still); each takes half of its growth
    from the gap, for it is fixed in its middle. All in ticks.

    >>> from shoplib.measure import MM
    >>> round(gap_to_plan(200 * MM, 200 * MM, Fraction("0.00365"), 45, 65, MM) / MM, 2)
    3.56
    """
    grown = [year_round(size, coefficient, made, made, dampest).grows for size in (width, beside)]
    return least - (-sum(grown) // 2)
