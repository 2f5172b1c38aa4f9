"""Why a text is no length: one sentence each, ending in what would be right."""

import re
from collections.abc import Container

LONGEST_TEXT = 60
"""Characters; the longest length that is ever written has 36."""

_LIKE = "such as `23 5/8 in` or `601.5 mm`"


def shown(text) -> str:
    r"""Quote the text in a sentence: short, and nothing in it that does not print.

    >>> shown("a" * 99), shown("5\n")
    ('`aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa...`', '`5?`')
    """
    text = str(text)
    short = text if len(text) <= 40 else text[:40] + "..."
    return "`" + "".join(sign if sign.isprintable() else "?" for sign in short) + "`"


def not_text(value) -> str:
    """For a number or anything else that is not text."""
    if isinstance(value, int | float) and not isinstance(value, bool):
        if abs(value) <= 10_000:
            right = _one_of((f"{abs(value)}", "in"), (f"{abs(value)}", "mm"))
            return f"{value} is a bare number; write text with a unit, {right}."
        return f"a bare number is no length; write text with a unit, {_LIKE}."
    return f"a length is text with a unit, {_LIKE}, not {type(value).__name__}."


def long_text(text: str) -> str:
    """For more text than any length needs."""
    return f"{shown(text)} is too long for one length; write a number and a unit, {_LIKE}."


def zero(text) -> str:
    """For zero where a size is meant."""
    return f"{shown(text)} is zero; write a size above zero, {_LIKE}."


def negative(text) -> str:
    """For less than zero where a size is meant."""
    return f"{shown(text)} is negative; write a size above zero, {_LIKE}."


def too_long(text) -> str:
    """For more than any workshop holds."""
    return f"{shown(text)} is over 10 m (32 ft 9 in); write what a shop can hold, such as `2.4 m` or `96 in`."


def too_short(text) -> str:
    """For less than any tool can set."""
    return (
        f"{shown(text)} is under 0.01 mm (0.0004 in); write what can be set, such as `0.1 mm` or `1/64 in`."
    )


def no_unit(text: str, tidy: str, feet: str | None) -> str:
    """For a number alone, or inches without their mark behind feet."""
    if feet is not None:
        inches = re.split(r"ft\.?|foot|feet|'", tidy, maxsplit=1)[1].strip(" -")
        ways = f"`{feet} ft {inches} in` or `{feet}' {inches}\"`"
        return f"{shown(text)} has no unit behind the inches; write it as {ways}."
    number, bracket, rest = tidy.partition(" (")
    if bracket:
        return (
            f"{shown(text)} has no unit before the brackets; write `{number} {rest[-3:-1]}{bracket}{rest}`."
        )
    lacks = "is negative and has no unit" if number.startswith("-") else "has no unit"
    number = number.lstrip("- ")
    if "/" in number:
        return f"{shown(text)} {lacks}; write `{number} in`."
    if "," in number:
        return f"{shown(text)} {lacks}; write `{number} mm`."
    return f"{shown(text)} {lacks}; write {_one_of((number, 'in'), (number, 'mm'))}."


def unknown_unit(text: str, unit: str) -> str:
    """For letters that are no unit of length."""
    return f"{shown(text)} has `{unit}` where a unit of length is meant; write in, ft, mm, cm or m, {_LIKE}."


def comma(text: str, before: str, number: str, unit: str) -> str:
    """For a comma with inches, or one that may part thousands; `before` is a sign, or feet."""
    as_decimal = (number.replace(",", "."), unit)
    if not re.fullmatch(r"[1-9]\d{0,2}(,\d{3})+", number):  # it parts no thousands
        return f"{shown(text)} has a comma where inches have a point; write {_one_of(as_decimal, before=before)}."
    right = _one_of(as_decimal, (number.replace(",", ""), unit), before=before)
    return f"{shown(text)} has a comma that can be read two ways; write {right}."


def mixed(text: str) -> str:
    """For two systems in one length."""
    return f"{shown(text)} mixes inches or feet with metric; write it in one, such as `27 in` or `686 mm`."


def inches_beside_feet(text: str, inches: float) -> str:
    """For 12 inches or more beside feet; `inches` is all of it."""
    return f"{shown(text)} has 12 inches or more beside the feet; write `{inches:.10g} in` if that is meant."


def denominator(text: str, below: int) -> str:
    """For a fraction of parts that no tape has."""
    if below == 0:
        return f"{shown(text)} divides by zero; write a fraction such as `5/8 in`."
    return (
        f"{shown(text)} has {below} under the line, which no tape shows; "
        "write halves to 128ths such as `5/8 in`, or a decimal such as `0.6 in`."
    )


def top_heavy(text: str, before: str, whole: int, above: int, below: int, unit: str) -> str:
    """For a mixed number whose fraction is one or more; `before` is a sign, or feet."""
    more, left = divmod(above, below)
    if "ft" in before and whole + more >= 12:
        return f"{shown(text)} has a fraction of one or more after the whole; write it all in inches."
    right = f"{before}{whole + more} {left}/{below} {unit}" if left else f"{before}{whole + more} {unit}"
    return f"{shown(text)} has a fraction of one or more after the whole; write `{right}` if that is meant."


def large_rest(text: str) -> str:
    """For more in the brackets than any step leaves over."""
    return f"{shown(text)} has a rest over 1/16 in in brackets; write the length itself, {_LIKE}."


_LONGEST = {"in": 393, "ft": 32, "mm": 10_000, "cm": 1_000, "m": 10}


def _one_of(*lengths: tuple[str, str], before: str = "") -> str:
    """The lengths that may have been meant: those that are not absurdly long."""
    longest = {"in": 11.99} if "ft" in before else _LONGEST
    meant = [f"`{before}{number} {unit}`" for number, unit in lengths if float(number) <= longest[unit]]
    return " or ".join(meant) or f"a length {_LIKE}"


_UNIT_SIGNS = re.compile(r"[^\W\d_]+\.?|['\"]")
_NUMBERS = re.compile(r"\d+(?:\.\d+)?(?: ?/ ?\d+)?", re.ASCII)


def unreadable(text: str, tidy: str, units: Container[str]) -> str:
    """The sentence for a text that does not have the form of a length; `tidy` is how the reader sees it."""
    if not tidy:
        return f"the text is empty; write a length {_LIKE}."
    if any(sign.isnumeric() and not sign.isascii() for sign in tidy):
        return f"{shown(text)} has digits other than 0 to 9; write a length {_LIKE}."
    if not re.search(r"\d", tidy):
        return f"{shown(text)} has no number; write a length in digits with its unit, {_LIKE}."
    if re.search(r"\d ?e ?[+-]?\d", tidy):
        return f"{shown(text)} has an exponent; write the number out, such as `1000 mm` or `0.5 mm`."
    if re.search(r"\d[,._']\d+[,.]\d|\d[_']\d{3}|\d,\d+,", tidy):
        return f"{shown(text)} has thousands set apart; write the number in one piece, such as `1234.5 mm`."
    return _about_words(text, tidy, units) or _about_numbers(text, tidy)


def _about_words(text: str, tidy: str, units: Container[str]) -> str | None:
    signs = _UNIT_SIGNS.findall(tidy)
    for sign in signs:
        if sign not in units:
            return unknown_unit(text, sign)
    metric = [sign for sign in signs if "m" in sign]
    if metric and len(metric) < len(signs):
        return mixed(text)
    if len(metric) > 1:
        return f"{shown(text)} has two units; write it in one of them, such as `120 cm` or `1.2 m`."
    return None


def _about_numbers(text: str, tidy: str) -> str:
    numbers = _NUMBERS.findall(tidy)
    if any("/" in number for number in numbers) and "." in tidy:
        return f"{shown(text)} has a decimal and a fraction; write one, such as `23.625 in` or `23 5/8 in`."
    if re.search(r"\d ?-+ ?\d", tidy):
        return f"{shown(text)} reads like a subtraction; write one length, {_LIKE}."
    if len(numbers) > 1:
        right = "such as `601.5 mm`" if "m" in tidy else "such as `12 5/8 in` or `12.625 in`"
        return f"{shown(text)} holds two numbers; write one length, {right}."
    return f"{shown(text)} is not a length; write a number and a unit, {_LIKE}."
