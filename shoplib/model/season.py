"""A solid front in a room whose air is dry in one season and damp in another."""

from dataclasses import dataclass
from fractions import Fraction

from shoplib.measure import narrowest, thickest
from shoplib.measure.traced import named
from shoplib.model.movement import gap_left, moisture_content, movement

FAHRENHEIT = 70
"""The room of the lesson: 70 degrees Fahrenheit (21 Celsius). A few degrees change little."""

HUMIDITIES = range(30, 74)
"""Relative humidity in percent. At 70 degrees these are moisture contents within 6 to 14 %, where the sum holds: 73 %
comes to 13.9 %, and 74 % to 14.1 %."""


@dataclass(frozen=True, slots=True)
class Season:
    """A solid front `height` high across the grain and a `gap` above or below it (ticks), as they were at `made`.

    At the other side of the gap is a front of the same wood, `beside` high; 0 where it is the case, which stands
    still. `coefficient` is the wood's; the room goes from `driest` to `dampest`, relative humidity in percent.

    >>> from shoplib.measure import MM
    >>> season = Season(200 * MM, 200 * MM, 3 * MM, Fraction("0.00365"), 45, 35, 65)
    >>> [round(gap / MM, 2) for gap in (season.narrowest_gap(), season.widest_gap())]
    [0.44, 4.11]
    """

    height: int
    beside: int
    gap: int
    coefficient: Fraction
    made: int
    driest: int
    dampest: int

    def grown(self, humidity: int) -> int:
        """By how much the front has grown (minus: shrunk) at that humidity, in ticks; ValueError outside the sum."""
        return self._grown(self.height, humidity)

    def beside_grown(self, humidity: int) -> int:
        """The same of what is at the other side of the gap."""
        return self._grown(self.beside, humidity)

    def _grown(self, height: int, humidity: int) -> int:
        grown = movement(height, self.coefficient, moisture(self.made), moisture(humidity))
        return named(grown, f"growth at {humidity} % of humidity")

    def gap_at(self, humidity: int) -> int:
        """The gap at that humidity, in ticks; less than nothing where they would press on each other."""
        return gap_left(self.gap, (self.grown(humidity), self.beside_grown(humidity)))

    def narrowest_gap(self) -> int:
        """The gap when the room is dampest, in ticks; less than nothing where they would press on each other."""
        return narrowest([self.gap_at(self.driest), self.gap_at(self.dampest)])

    def widest_gap(self) -> int:
        """The gap when the room is driest, in ticks."""
        return thickest([self.gap_at(self.driest), self.gap_at(self.dampest)])


def moisture(humidity: int) -> float:
    """The moisture content in percent that wood comes to in the room of the lesson.

    >>> [round(moisture(humidity), 1) for humidity in (35, 65)]
    [6.9, 12.0]
    """
    return moisture_content(FAHRENHEIT, humidity)
