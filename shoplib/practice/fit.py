"""How a board goes into its dado: what the hand feels, and by how much.

The classes are common practice, no source: whole thousandths of an inch that the dado is wider (+) or narrower (-)
than the board. What lies on a border counts as the tighter one.
"""

from dataclasses import dataclass

from shoplib.measure import INCH, MM, Style, to_step, write_measured
from shoplib.practice.spreads import THOU

PRESS, TAP, PUSH = -2 * THOU, 2 * THOU, 5 * THOU
"""From PRESS to 0 the board must be pressed in; to TAP it is tapped, to PUSH pushed; over that it is loose."""

_FINEST = {"in": INCH // 1000, "mm": MM // 100}


@dataclass(frozen=True, slots=True)
class Fit:
    """How one board goes into one dado: `over` is the width of the dado less the board (ticks).

    >>> Fit(12 * THOU).name, Fit(THOU).name, Fit(-3 * THOU).name
    ('loose', 'tap', 'does not enter')
    """

    over: int

    @property
    def name(self) -> str:
        """"does not enter", "press", "tap", "push" or "loose", by the nearest thousandth."""
        over = to_step(self.over, THOU)
        if over < PRESS:
            return "does not enter"
        if over <= 0:
            return "press"
        if over <= TAP:
            return "tap"
        return "push" if over <= PUSH else "loose"

    @property
    def enters(self) -> bool:
        """Whether the board goes in at all."""
        return self.name != "does not enter"

    def said(self, style: Style) -> str:
        """The class and the difference, in a few words.

        >>> from shoplib.measure import INCH_STYLE, MM_STYLE
        >>> Fit(12 * THOU).said(INCH_STYLE), Fit(12 * THOU).said(MM_STYLE)
        ('loose by 0.012 in', 'loose by 0.3 mm')
        >>> Fit(-3 * THOU).said(INCH_STYLE), Fit(0).said(INCH_STYLE)
        ('does not enter: 0.003 in too narrow', 'a press fit, just as wide as the board')
        """
        size = small(abs(self.over), style)
        if not self.enters:
            return f"does not enter: {size} too narrow"
        if self.name == "loose":
            return f"loose by {size}"
        if not _shown(self.over, style):
            return f"a {self.name} fit, just as wide as the board"
        return f"a {self.name} fit, {size} {'over' if self.over > 0 else 'under'}"


def small(ticks: int, style: Style) -> str:
    """A difference to the nearest 0.001 in or 0.01 mm; what is under half of that reads 0.

    >>> from shoplib.measure import INCH_STYLE
    >>> small(12 * THOU + 300, INCH_STYLE), small(300, INCH_STYLE)
    ('0.012 in', '0 in')
    """
    return write_measured(_shown(ticks, style), style)


def _shown(ticks: int, style: Style) -> int:
    return to_step(ticks, _FINEST[style.unit])
