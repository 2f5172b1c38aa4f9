"""Shop text to ticks, exactly: `23 5/8 in`, `1' 11 5/8"`, `601.5 mm`. What is not clear is refused."""

import re

from shoplib.measure import faults
from shoplib.measure.ticks import FOOT, INCH, MM, LengthError

LONGEST, SHORTEST = 10_000 * MM, MM // 100
"""No size in a workshop is over 10 m or under 0.01 mm: such a text holds a slip."""

_LARGEST_REST = INCH // 16
"""A rest in brackets is at most half of the coarsest step."""

UNITS = {
    **dict.fromkeys(("in", "in.", "inch", "inches", '"'), INCH),
    **dict.fromkeys(("ft", "ft.", "foot", "feet", "'"), FOOT),
    **dict.fromkeys(("mm", "millimetre", "millimetres", "millimeter", "millimeters"), MM),
    **dict.fromkeys(("cm", "centimetre", "centimetres", "centimeter", "centimeters"), 10 * MM),
    **dict.fromkeys(("m", "metre", "metres", "meter", "meters"), 1000 * MM),
}
_SHORT = {INCH: "in", FOOT: "ft", MM: "mm", 10 * MM: "cm", 1000 * MM: "m"}
_DENOMINATORS = frozenset((2, 4, 8, 16, 32, 64, 128))

_PLAIN = str.maketrans(
    {
        **dict.fromkeys("′ʹ’‘‛", "'"),
        **dict.fromkeys("″ʺ”“‟", '"'),
        **dict.fromkeys("⁄∕", "/"),
        **dict.fromkeys("−‐‑–", "-"),
        **{"½": " 1/2", "¼": " 1/4", "¾": " 3/4", "⅛": " 1/8", "⅜": " 3/8", "⅝": " 5/8", "⅞": " 7/8"},
        **{"⅓": " 1/3", "⅔": " 2/3", "⅟": " 1/"},
    }
)
"""What stands for plain quotes, slashes, dashes and fractions in typed and typeset text."""

_LENGTH = re.compile(
    r"""([+-]\ ?)?                                        # sign
        (?: (\d+) \ ? (?:ft\.?|foot|feet|') \ ? (?:-\ ?)? )?   # feet before inches
        (?: (?:(\d+) (?:\ |-\ ?))? (\d+)/(\d+)               # whole, numerator, denominator
          | (\d+(?:[.,]\d+)?|\.\d+) )                          # or a decimal
        (?: \ ? ([a-z]+\.?|['"]) )?                            # unit
        (?: \ ? \( ([+-]) (\d+(?:[.,]\d+)?|\.\d+) \ ? (in|mm) \) )?   # rest
    """,
    re.ASCII | re.VERBOSE,
)
_GROUPED = re.compile(r"[1-9]\d{0,2},\d{3}", re.ASCII)


def read_length(
    text, *, what: str = "length", unit: str | None = None, zero: bool = False, negative: bool = False
) -> int:
    r"""Read the length that a text says, in ticks.

    Read: `23 5/8 in`, `23-5/8"`, `5/8 in`, `1' 11 5/8"`, `2 ft 3 in`, `23.625 in`, `601.5 mm`, `18,2 mm`,
    `60 cm`, `0.6 m`, fraction signs, primes and curly quotes, and what `write_length` writes, rest
    included (with a comma too, as a spreadsheet may write it). A pint quantity of length is read too.
    Fractions (halves to 128ths) are exact; a decimal that is no whole number of ticks goes to the nearest
    tick, at most 0.00000625 mm off.

    `what` names the place in the sentence. `unit` ("in" or "mm") stands in where the text has none:
    only a control with its unit printed beside it passes it. `zero` allows 0; `negative` allows a
    length below 0 (a difference, so it may also be smaller than any size).

    Raises LengthError: one sentence that says what is wrong and what would be right.

    >>> read_length('1\' 11 5/8"') == read_length("23 5/8 in") == 48_006_000
    True
    >>> read_length("18,2 mm"), read_length("31 7/16", unit="in")
    (1456000, 63881000)
    >>> read_length("60", what="size.width")
    Traceback (most recent call last):
    shoplib.measure.ticks.LengthError: size.width: `60` has no unit; write `60 in` or `60 mm`.
    """
    try:
        if isinstance(text, str):
            ticks = _read(text, unit)
            return within(ticks, text, zero, negative)
        if not (hasattr(text, "magnitude") and hasattr(text, "unit_items")):
            raise LengthError(faults.not_text(text))
    except LengthError as fault:
        raise LengthError(f"{what}: {fault}") from None
    from shoplib.measure.registry import from_quantity  # pint is there already, or there would be no quantity

    return from_quantity(text, what=what, zero=zero, negative=negative)


def unit_written(text: str, *, what: str = "length") -> str:
    r"""Whether a length is written in "in" or in "mm", whatever of feet, inches, cm or metres; raises LengthError.

    >>> unit_written('1\' 11 5/8"'), unit_written("1.82 cm")
    ('in', 'mm')
    """
    read_length(text, what=what)
    found = _LENGTH.fullmatch(tidied(text))
    return "in" if UNITS[found.group(7)] % INCH == 0 else "mm"


def within(ticks: int, text, zero: bool, negative: bool) -> int:
    """The ticks themselves, where a size may be so; raises LengthError otherwise."""
    if ticks == 0 and not zero:
        raise LengthError(faults.zero(text))
    if ticks < 0 and not negative:
        raise LengthError(faults.negative(text))
    if abs(ticks) > LONGEST:
        raise LengthError(faults.too_long(text))
    if 0 < ticks < SHORTEST and not negative:
        raise LengthError(faults.too_short(text))
    return ticks


def tidied(text: str) -> str:
    """The text in lower case with plain quotes, slashes, dashes, fractions and single spaces.

    >>> tidied("23⅝ In")
    '23 5/8 in'
    """
    if not text.isascii():
        text = text.translate(_PLAIN)
    return " ".join(text.lower().replace("''", '"').split())


def nearest(above: int, below: int) -> int:
    """The whole number nearest to above/below, both positive (a half goes up).

    >>> nearest(7, 2)
    4
    """
    return (2 * above + below) // (2 * below)


def _read(text: str, default: str | None) -> int:
    if len(text) > faults.LONGEST_TEXT:
        raise LengthError(faults.long_text(text))
    tidy = tidied(text)
    found = _LENGTH.fullmatch(tidy)
    if not found:
        raise LengthError(faults.unreadable(text, tidy, UNITS))
    sign, feet, whole, above, below, decimal, unit, rest_sign, rest, rest_unit = found.groups()
    unit = unit or default
    if unit is None:
        raise LengthError(faults.no_unit(text, tidy, feet))
    per = UNITS.get(unit)
    if per is None:
        raise LengthError(faults.unknown_unit(text, unit))
    before = (sign or "").strip() + (f"{feet} ft " if feet else "")
    if decimal is None:
        above, below = _fraction(text, before, whole, above, below, _SHORT[per])
    else:
        if "," in decimal:
            if per % INCH == 0 or _GROUPED.fullmatch(decimal):
                raise LengthError(faults.comma(text, before, decimal, _SHORT[per]))
            decimal = decimal.replace(",", ".")
        above, below = _decimal(decimal)
    if feet is not None:
        if per != INCH:
            raise LengthError(faults.mixed(text))
        inches, above = above, above + 12 * int(feet) * below
        if inches >= 12 * below:
            raise LengthError(faults.inches_beside_feet(text, above / below))
    ticks = nearest(above * per, below)
    if above and not ticks:
        raise LengthError(faults.too_short(text))
    if sign and sign[0] == "-":
        ticks = -ticks
    if rest is None:
        return ticks
    if (rest_unit == "in") != (per % INCH == 0):
        raise LengthError(faults.mixed(text))
    above, below = _decimal(rest.replace(",", "."))  # far too small for a comma that parts thousands
    more = nearest(above * UNITS[rest_unit], below)
    if more > _LARGEST_REST:
        raise LengthError(faults.large_rest(text))
    return ticks - more if rest_sign == "-" else ticks + more


def _fraction(
    text: str, before: str, whole: str | None, above: str, below: str, unit: str
) -> tuple[int, int]:
    top, bottom = int(above), int(below)
    if bottom not in _DENOMINATORS:
        raise LengthError(faults.denominator(text, bottom))
    if whole is None:
        return top, bottom
    if top >= bottom:
        raise LengthError(faults.top_heavy(text, before, int(whole), top, bottom, unit))
    return int(whole) * bottom + top, bottom


def _decimal(digits: str) -> tuple[int, int]:
    whole, _, after = digits.partition(".")
    return int(whole + after), 10 ** len(after)
