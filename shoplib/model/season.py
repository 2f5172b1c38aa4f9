"""A solid front in a room whose air is dry in one season and damp in another."""

from dataclasses import dataclass
from fractions import Fraction

from shoplib.measure import narrowest, thickest
from shoplib.model.movement import moisture_content, movement

FAHRENHEIT = 70
"""The room of the lesson: 70 degrees Fahrenheit (21 Celsius). A few degrees change little."""

HUMIDITIES = range(30, 71)
"""Relative humidity in percent. At 70 degrees these are moisture contents within 6 to 14 %, where the sum holds."""


@dataclass(frozen=True, slots=True)
class Season:
    """A solid front `height` high across the grain with its `gap` (ticks), both as they were at humidity `made`.

    `coefficient` is the wood's; the room goes from `driest` to `dampest`, relative humidity in percent. Of a gap
    between two such fronts each takes half of what it grows, since it is held in its middle (common practice, no
    source): together one whole movement.

    >>> from shoplib.measure import MM
    >>> season = Season(200 * MM, 3 * MM, Fraction("0.00365"), 45, 35, 65)
    >>> [round(gap / MM, 2) for gap in (season.narrowest_gap(), season.widest_gap())]
    [0.44, 4.11]
    """

    height: int
    gap: int
    coefficient: Fraction
    made: int
    driest: int
    dampest: int

    def grown(self, humidity: int) -> int:
        """By how much the front has grown (minus: shrunk) at that humidity, in ticks; ValueError outside the sum."""
        before, after = moisture(self.made), moisture(humidity)
        return movement(self.height, self.coefficient, before, after)

    def narrowest_gap(self) -> int:
        """The gap when the room is dampest, in ticks; less than nothing where the fronts would press on each other."""
        return self.gap - thickest([self.grown(self.driest), self.grown(self.dampest)])

    def widest_gap(self) -> int:
        """The gap when the room is driest, in ticks."""
        return self.gap - narrowest([self.grown(self.driest), self.grown(self.dampest)])


def moisture(humidity: int) -> float:
    """The moisture content in percent that wood comes to in the room of the lesson.

    >>> [round(moisture(humidity), 1) for humidity in (35, 65)]
    [6.9, 12.0]
    """
    return moisture_content(FAHRENHEIT, humidity)
