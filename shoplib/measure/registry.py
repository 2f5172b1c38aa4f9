"""The pint registry: forces, loads and densities, and lengths on their way in and out."""

import re
from fractions import Fraction
from numbers import Integral, Rational, Real

import pint

from shoplib.measure import faults
from shoplib.measure.faults import shown
from shoplib.measure.read import nearest, read_length, tidied, within
from shoplib.measure.ticks import FOOT, INCH, MM, LengthError, write_mm

_EXACT = {"inch": INCH, "foot": FOOT, "millimeter": MM, "centimeter": 10 * MM, "meter": 1000 * MM}

_SHOP_TEXT = re.compile(
    r"""\d[\s-]+[\d.]|\d,\d|[a-z.]\s+\d|['"½¼¾⅛⅜⅝⅞⅓⅔⅟′ʹ’‘‛″ʺ”“‟⁄∕\u00a0\u202f]""", re.IGNORECASE
)
"""What pint alone would misread: it multiplies numbers that stand side by side, and drops commas."""


def _read_shop_text(text: str) -> str:
    if not _SHOP_TEXT.search(text):
        return text
    try:
        ticks = read_length(text, zero=True, negative=True)
    except LengthError:
        raise LengthError(
            f"{shown(text)} can be read more than one way; write one number with a decimal point and a "
            "unit, such as `12.5 lbf`, or a length such as `23 5/8 in`."
        ) from None
    return f"{write_mm(ticks)} millimeter" if "m" in tidied(text) else f"{ticks / INCH!r} inch"


ureg = pint.UnitRegistry(preprocessors=[_read_shop_text])
"""The registry of the whole workbook. Its text is read as the shop means it, or refused.

>>> ureg("23 5/8 in"), ureg.Quantity("18,2 mm")
(<Quantity(23.625, 'inch')>, <Quantity(18.2, 'millimeter')>)
>>> (ureg("12.5 lbf") * 2).to("newton").magnitude
111.20554...
"""


def from_quantity(
    quantity: pint.Quantity, *, what: str = "length", zero: bool = False, negative: bool = False
) -> int:
    """The ticks of a pint quantity of length; a float counts as its shortest decimal, to the nearest tick.

    `what`, `zero` and `negative` as in `read_length`. Raises LengthError where it is no length, no single
    number, or no size that a workshop knows.

    >>> from_quantity(ureg.Quantity(0.1, "inch"))
    203200
    """
    try:
        return within(_ticks(quantity), quantity, zero, negative)
    except LengthError as fault:
        raise LengthError(f"{what}: {fault}") from None


def _ticks(quantity: pint.Quantity) -> int:
    if not quantity.check("[length]"):
        raise LengthError(f"{shown(quantity)} is no length; give a quantity in inches or millimetres.")
    units = tuple(quantity.unit_items())
    per = _EXACT.get(units[0][0]) if len(units) == 1 else None
    if per is None:
        quantity, per = quantity.to("millimeter"), MM
    number = quantity.magnitude
    if not isinstance(number, Real) or isinstance(number, bool) or number != number:
        raise LengthError(f"{shown(quantity)} holds no single number; give one such as 23.625 inches.")
    if abs(number) > 1e9:
        raise LengthError(faults.too_long(quantity))
    if isinstance(number, Integral):
        exact = Fraction(int(number))
    else:
        exact = number if isinstance(number, Rational) else Fraction(repr(float(number)))
    ticks = nearest(abs(exact.numerator) * per, exact.denominator)
    if exact and not ticks:
        raise LengthError(faults.too_short(quantity))
    return -ticks if exact < 0 else ticks


def to_quantity(ticks: int, unit: str = "inch") -> pint.Quantity:
    """A pint quantity of the length, its number the float nearest to it.

    Raises pint's DimensionalityError where `unit` is no unit of length.

    >>> to_quantity(48_006_000, "inch")
    <Quantity(23.625, 'inch')>
    """
    name = ureg.get_name(unit)
    if name in _EXACT:
        return ureg.Quantity(ticks / _EXACT[name], name)
    return ureg.Quantity(ticks / MM, "millimeter").to(unit)
