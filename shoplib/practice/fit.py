"""How a board goes into its dado: what the hand feels, and by how much."""

from dataclasses import dataclass

from shoplib.measure import INCH, MM, Style, to_step, write_measured
from shoplib.tables import fits
from shoplib.tables.fits import fit_class

FINEST = {"in": INCH // 1000, "mm": MM // 100}
"""A hand feels no less, and a caliper hardly shows it (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Felt:
    """How one board goes into one dado: `over` is the width of the dado less the board (ticks), `unit` the shop's.

    The classes are those of `data/fits.toml`, by the difference to the nearest 0.001 in or 0.01 mm.

    >>> from shoplib.practice.spreads import THOU
    >>> Felt(12 * THOU, "in").name, Felt(THOU, "in").name, Felt(-3 * THOU, "in").name
    ('loose', 'tap', 'too tight')
    """

    over: int
    unit: str

    @property
    def fit(self) -> fits.Fit:
        """The class of fit."""
        return fit_class(int(to_step(self.over, FINEST[self.unit])), self.unit)

    @property
    def name(self) -> str:
        """"too tight", "press", "tap", "push" or "loose"."""
        return self.fit.name

    @property
    def enters(self) -> bool:
        """Whether the board goes in at all."""
        return self.fit.over is not None

    @property
    def loose(self) -> bool:
        """Whether the dado is too wide for glue: the loosest class, which nobody aims for."""
        return self.enters and self.fit.aim is None

    def said(self, style: Style) -> str:
        """The class and the difference, in a few words.

        >>> from shoplib.measure import INCH_STYLE, MM_STYLE
        >>> from shoplib.practice.spreads import THOU
        >>> Felt(12 * THOU, "in").said(INCH_STYLE), Felt(12 * THOU, "mm").said(MM_STYLE)
        ('loose by 0.012 in', 'loose by 0.3 mm')
        >>> Felt(-3 * THOU, "in").said(INCH_STYLE), Felt(0, "in").said(INCH_STYLE)
        ('too tight by 0.003 in', 'a tap fit, just as wide as the board')
        """
        size = small(abs(self.over), style)
        if self.fit.aim is None:
            return f"{self.name} by {size}"
        if size == small(0, style):
            return f"a {self.name} fit, just as wide as the board"
        return f"a {self.name} fit, {size} {'over' if self.over > 0 else 'under'}"


def small(ticks: int, style: Style) -> str:
    """A difference to the nearest 0.001 in or 0.01 mm; what is under half of that reads 0.

    >>> from shoplib.measure import INCH_STYLE
    >>> from shoplib.practice.spreads import THOU
    >>> small(12 * THOU + 300, INCH_STYLE), small(300, INCH_STYLE)
    ('0.012 in', '0 in')
    """
    return write_measured(to_step(ticks, FINEST[style.unit]), style)
