"""How the lengths of a list are written: exactly where the list is read back, in brief where people read it."""

from dataclasses import dataclass, replace

from shoplib.measure import INCH, MM, Style, write_brief, write_length, write_measured

_DRILLS = {"in": INCH // 64, "mm": MM // 2}
"""The steps that drills are sold in (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Writing:
    """`exact` for a file that must read back to the same tick; `units=False` where the page states the unit.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> exact, page = Writing(INCH_STYLE, exact=True), Writing(INCH_STYLE, units=False)
    >>> exact.length(7 * INCH + 508), page.length(7 * INCH + 508), page.measured(703 * INCH // 1000)
    ('7 in (+0.00025 in)', '7', '0.703')
    """

    style: Style
    exact: bool = False
    units: bool = True

    def length(self, ticks: int) -> str:
        """A length, width or position, at the nearest step and with its rest; a decimal under one step."""
        if not self.exact:
            return self._bare(write_brief(ticks, self.style))
        return self._bare((write_length if abs(ticks) >= self.style.step else write_measured)(ticks, self.style))

    def measured(self, ticks: int) -> str:
        """A sheet's thickness, or the width of a cut that takes a sheet or a tongue: a decimal."""
        return self._bare(write_measured(ticks, self.style) if self.exact else write_brief(ticks, self.style, True))

    def setting(self, ticks: int) -> str:
        """A depth or a diameter: as the shop says it where it is a whole number of steps, else a decimal."""
        return self.length(ticks) if ticks % self.style.step == 0 else self.measured(ticks)

    def bored(self, ticks: int) -> str:
        """The diameter of a hole, as its drill is sold: by 1/64 in or half a millimetre, else a decimal.

        >>> from shoplib.measure import INCH, INCH_STYLE
        >>> Writing(replace(INCH_STYLE, step=INCH // 32)).bored(11 * INCH // 64)
        '11/64 in'
        """
        return replace(self, style=replace(self.style, step=_DRILLS[self.style.unit])).setting(ticks)

    def _bare(self, text: str) -> str:
        return text if self.units else text.replace(f" {self.style.unit}", "")
