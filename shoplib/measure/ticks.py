"""The tick: every length inside is a whole number of them, so that equal is equal and sums close."""

from operator import index

MM = 80_000
"""Ticks in a millimetre; 1/128 in, 0.001 in and 0.01 mm are then whole numbers of ticks."""

INCH = 2_032_000
"""Ticks in an inch: 25.4 mm exactly (NIST SP 811, appendix B.8)."""

FOOT = 12 * INCH
"""Ticks in a foot: 304.8 mm exactly (NIST SP 811, appendix B.8)."""


class LengthError(ValueError):
    """A length that cannot be read or used; its text is one sentence that shows what would be right."""


def to_mm(ticks: int) -> float:
    """Millimetres as the nearest float: for files and drawings, never to calculate on.

    Raises TypeError where `ticks` is no whole number.

    >>> to_mm(INCH)
    25.4
    """
    return index(ticks) / MM


def write_mm(ticks: int) -> str:
    """Millimetres as the shortest decimal that is exactly equal (a tick is 0.0000125 mm), without a unit.

    Raises TypeError where `ticks` is no whole number.

    >>> write_mm(INCH), write_mm(-860 * MM), write_mm(1)
    ('25.4', '-860', '0.0000125')
    """
    whole, rest = divmod(abs(index(ticks)) * 125, 10_000_000)
    sign = "-" if ticks < 0 else ""
    return f"{sign}{whole}.{rest:07}".rstrip("0").rstrip(".")
