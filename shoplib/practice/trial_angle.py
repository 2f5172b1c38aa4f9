"""An angle as it is typed."""

import re
from fractions import Fraction

from shoplib.measure import LengthError, to_step
from shoplib.measure.faults import shown
from shoplib.practice.trial_spreads import DEGREE

_ANGLE = re.compile(r"(-?\d{1,4}(?:[.,]\d{1,6})?)\s*(?:°|deg|degrees?)?")


def read_angle(text: object, what: str = "angle") -> int:
    """The angle that a text says, in parts of a degree. Raises LengthError in one sentence.

    >>> read_angle("44.95"), read_angle("45 degrees"), read_angle("44,9°")
    (4495000, 4500000, 4490000)
    >>> read_angle("square")
    Traceback (most recent call last):
    ...
    shoplib.measure.ticks.LengthError: angle: `square` is no angle; write degrees in digits, such as `44.9`.
    """
    found = _ANGLE.fullmatch(text.strip()) if isinstance(text, str) else None
    if found is None:
        raise LengthError(f"{what}: {shown(text)} is no angle; write degrees in digits, such as `44.9`.")
    exact = Fraction(found[1].replace(",", ".")) * DEGREE
    return to_step(exact.numerator, exact.denominator) // exact.denominator
