"""Lengths in and out, choosing and rounding for the shop, and the pint registry.

Inside, a length is a whole number of ticks of 1/80 000 mm; outside, text with a unit or a pint quantity.
"""

from shoplib.measure.choose import largest_fitting, mean, narrowest, share, thickest, to_step
from shoplib.measure.read import read_length, unit_written
from shoplib.measure.ticks import FOOT, INCH, MM, LengthError, to_mm, write_mm
from shoplib.measure.write import (
    INCH_STYLE,
    LEAST_REST,
    MM_STYLE,
    Style,
    shows_rest,
    write_brief,
    write_length,
    write_measured,
)

__all__ = [
    "FOOT",
    "INCH",
    "INCH_STYLE",
    "LEAST_REST",
    "MM",
    "MM_STYLE",
    "LengthError",
    "Style",
    "from_quantity",
    "largest_fitting",
    "mean",
    "narrowest",
    "read_length",
    "share",
    "shows_rest",
    "thickest",
    "to_mm",
    "to_quantity",
    "to_step",
    "unit_written",
    "ureg",
    "write_brief",
    "write_length",
    "write_measured",
    "write_mm",
]

_OF_PINT = ("from_quantity", "to_quantity", "ureg")


def __getattr__(name: str):
    """The registry and its two functions when first asked for: pint takes a third of a second to load."""
    if name not in _OF_PINT:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from shoplib.measure import registry

    return getattr(registry, name)
