"""The two papers of the shop's printer, and the room that a page leaves."""

from dataclasses import dataclass

from shoplib.measure import MM

BAR = 100 * MM
"""The check bars, across and up: a printer that fits the page to its paper, or stretches it one way, shows it there."""

AT_FULL_SIZE = "at 100 % (actual size), not fitted to the page"
"""How what is in true scale is printed: in these words wherever it is said."""

LAY_A_RULE = "lay a rule on the bars of 100 mm"
"""How to see that it was: in these words wherever it is said."""

ACROSS, ABOVE, BELOW = 12.0, 16.0, 14.0
"""Margins of the papers for the bench in mm: at the left and at the right, above, below.

Printers leave about 6 mm white (common practice, no source); the stamp of the page stands in the margins above and
below.
"""


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper: its name here and in the typesetter, its sides in mm."""

    name: str
    typeset: str
    width: float
    height: float

    def room(self, lying: bool = False) -> tuple[float, float]:
        """Width and height inside the margins, in mm.

        >>> PAPERS["a4"].room(), PAPERS["a4"].room(lying=True)
        ((186.0, 267.0), (273.0, 180.0))
        """
        width, height = (self.height, self.width) if lying else (self.width, self.height)
        return width - 2 * ACROSS, round(height - ABOVE - BELOW, 4)


PAPERS = {
    "letter": Paper("letter", "us-letter", 215.9, 279.4),
    "a4": Paper("a4", "a4", 210.0, 297.0),
}
"""Sides by ANSI/ASME Y14.1, size A, and by ISO 216, A4."""

USUAL = {"in": "letter", "mm": "a4"}
"""The paper that goes with a unit."""
