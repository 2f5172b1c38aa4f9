"""How much wood that is: board feet and cubic metres, and what becomes of a board between the yard and the case.

A board foot is 144 cubic inches (NIST Handbook 44): 2359.737216 cm3 exactly, for an inch is 25.4 mm exactly
(NIST SP 811).
"""

from dataclasses import dataclass
from fractions import Fraction

from shoplib.measure import INCH, MM

BOARD_FOOT = 144 * INCH**3
"""In cubic ticks."""

CUBIC_METRE = (1000 * MM) ** 3
"""In cubic ticks."""


def board_feet(volume: int) -> Fraction:
    """Cubic ticks as board feet, exactly.

    >>> board_feet(INCH * 12 * INCH * 12 * INCH)
    Fraction(1, 1)
    """
    return Fraction(volume, BOARD_FOOT)


def cubic_metres(volume: int) -> Fraction:
    """Cubic ticks as cubic metres, exactly.

    >>> cubic_metres(BOARD_FOOT) * 1_000_000
    Fraction(36870894, 15625)
    >>> float(cubic_metres(BOARD_FOOT) * 1_000_000)
    2359.737216
    """
    return Fraction(volume, CUBIC_METRE)


def write_volume(volume: int, unit: str) -> str:
    """Wood as a yard sells it: board feet to a tenth where lengths are shown in inches, else m3, to a tenth of a litre.

    >>> write_volume(BOARD_FOOT * 25 // 2, "in"), write_volume(BOARD_FOOT * 25 // 2, "mm")
    ('12.5 board feet', '0.0295 m3')
    """
    if unit == "in":
        return f"{float(board_feet(volume)):.1f} board feet"
    return f"{float(cubic_metres(volume)):.4f} m3"


@dataclass(frozen=True, slots=True)
class Wood:
    """What becomes of the boards that are used, volumes in cubic ticks.

    `finished` is the parts as they go into the case, `planed` what planing and cutting to final size take off the
    rough parts, `kerf` sawdust, `trim` ends and edges cut off first, `offcuts` what is left over.
    """

    finished: int = 0
    planed: int = 0
    kerf: int = 0
    trim: int = 0
    offcuts: int = 0

    @property
    def bought(self) -> int:
        """The boards as they come: everything that they become.

        >>> Wood(finished=6, planed=2, kerf=1, trim=1, offcuts=2).bought
        12
        """
        return self.finished + self.planed + self.kerf + self.trim + self.offcuts

    @property
    def waste(self) -> Fraction:
        """Percent of the boards that becomes neither part nor offcut; 0 where there are no boards.

        >>> Wood(finished=6, planed=2, kerf=1, trim=1, offcuts=2).waste
        Fraction(100, 3)
        """
        return Fraction(100 * (self.planed + self.kerf + self.trim), self.bought) if self.bought else Fraction(0)


def quarters(thick: int) -> str:
    """The rough thickness to ask for by quarters of an inch: the next of 4/4, 5/4, 6/4, 8/4 and up by whole inches.

    Common practice, no source: rough hardwood is sold so, and what is under 1 in is often counted as 1 in.

    >>> quarters(INCH), quarters(INCH * 7 // 8), quarters(INCH * 9 // 8), quarters(INCH * 13 // 8)
    ('4/4', '4/4', '5/4', '8/4')
    """
    needed = -(-4 * thick // INCH)
    return f"{next(size for size in (4, 5, 6, *range(8, needed + 5, 4)) if size >= needed)}/4"
