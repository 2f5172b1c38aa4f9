"""Lengths as the shop writes them: at the finest step of the project, with what is left over in brackets."""

from dataclasses import dataclass
from operator import index
from typing import Self

from shoplib.measure.choose import to_step
from shoplib.measure.faults import shown
from shoplib.measure.noted import stated
from shoplib.measure.read import read_length
from shoplib.measure.ticks import INCH, MM, LengthError

_STEPS = {
    "in": {INCH // 8: "1/8 in", INCH // 16: "1/16 in", INCH // 32: "1/32 in", INCH // 64: "1/64 in"},
    "mm": {MM: "1 mm", MM // 2: "0.5 mm", MM // 5: "0.2 mm", MM // 10: "0.1 mm"},
}
_TICKS = {"in": INCH, "mm": MM}

_FINEST = {"in": INCH // 2000, "mm": MM // 100}
"""0.0005 in and 0.01 mm: what digital calipers resolve (common practice, no source)."""
LEAST_REST = {"in": INCH // 500, "mm": MM // 20}
"""0.002 in and 0.05 mm: a saw is not set finer (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Style:
    """How a project shows its lengths: `unit` "in" or "mm", and the finest `step` in ticks.

    Steps are 1/8, 1/16, 1/32, 1/64 in; 1, 0.5, 0.2, 0.1 mm. Raises LengthError for any other.

    >>> Style("in", INCH // 32)
    Style('in', '1/32 in')
    """

    unit: str
    step: int

    def __post_init__(self) -> None:
        if self.unit not in tuple(_STEPS):
            raise LengthError(f"lengths are shown in `in` or `mm`, not in {shown(self.unit)}.")
        if self.step not in _STEPS[self.unit]:
            usual = ", ".join(_STEPS[self.unit].values())
            raise LengthError(
                f"the finest step must be one of {usual} where lengths are shown in {self.unit}."
            )

    @classmethod
    def of(cls, unit: str, step: str) -> Self:
        """The style from text, as a project file gives it; raises LengthError as the style itself does.

        >>> Style.of("mm", "0.5 mm") == Style("mm", MM // 2)
        True
        """
        return cls(unit, read_length(step, what="finest step"))

    def __repr__(self) -> str:
        return f"Style({self.unit!r}, {_STEPS[self.unit][self.step]!r})"


INCH_STYLE = Style("in", INCH // 64)
MM_STYLE = Style("mm", MM // 10)


def write_length(ticks: int, style: Style, unit: bool = True) -> str:
    """The length at the nearest step; a rest (true size minus printed size) follows in brackets.

    The rest is the shortest decimal that reads back to the same tick, so that `read_length` gives
    back what was written. `unit=False` leaves out the unit behind the number, for dimension lines of
    a drawing that states it. Raises TypeError where `ticks` is no whole number.

    >>> write_length(48_006_000, INCH_STYLE)
    '23 5/8 in'
    >>> write_length(33 * INCH + INCH * 27 // 32 + 508, Style("in", INCH // 32))
    '33 27/32 in (+0.00025 in)'
    >>> write_length(860 * MM - 3_200, MM_STYLE), write_length(1_204_000, MM_STYLE, unit=False)
    ('860 mm (-0.04 mm)', '15.1 (-0.05 mm)')
    """
    plain = index(ticks)
    printed = to_step(plain, style.step)
    number = _number(printed, style)
    text = f"{number} {style.unit}" if unit else number
    if plain != printed:
        text = f"{text} ({_rest(plain - printed, style.unit)} {style.unit})"
    return stated(text, ticks)


def write_measured(ticks: int, style: Style) -> str:
    """A measured thickness, or the width of a cut that receives one: a decimal, never a shop fraction.

    The decimal is the shortest that reads back to the same tick. Raises TypeError where `ticks` is no
    whole number.

    >>> write_measured(703 * INCH // 1000, INCH_STYLE), write_measured(18 * MM, MM_STYLE)
    ('0.703 in', '18 mm')
    """
    return stated(_measured(index(ticks), style), ticks)


def write_brief(ticks: int, style: Style, decimal: bool = False) -> str:
    """The length for drawings, reading lists and findings: nothing finer than a shop can measure or set.

    At the nearest step; a rest of 0.002 in or 0.05 mm and more follows in brackets, a smaller one is
    left out. `decimal` is for measured thicknesses and what receives them; what is under a step is a
    decimal too. Rest and decimal are rounded to 0.0005 in or 0.01 mm, so what this writes does not
    always read back to the same tick: files for other programs have `write_length` and
    `write_measured`. Raises TypeError where `ticks` is no whole number.

    >>> write_brief(59 * INCH + 508, INCH_STYLE), write_brief(59 * INCH + 11 * INCH // 2000, INCH_STYLE)
    ('59 in', '59 in (+0.0055 in)')
    >>> write_brief(703 * INCH // 1000, INCH_STYLE, decimal=True), write_brief(1_120, MM_STYLE)
    ('0.703 in', '0.01 mm')
    """
    plain = index(ticks)
    if decimal or abs(plain) < style.step:
        # What is not nothing never reads as nothing.
        return stated(_measured(to_step(plain, _FINEST[style.unit]) or plain, style), ticks)
    printed = to_step(plain, style.step)
    text, rest = f"{_number(printed, style)} {style.unit}", plain - printed
    if shows_rest(plain, style):
        text = f"{text} ({_rest(to_step(rest, _FINEST[style.unit]), style.unit)} {style.unit})"
    return stated(text, ticks)


def shows_rest(ticks: int, style: Style) -> bool:
    """Whether `write_brief` puts a rest behind the nearest step: the rule has no mark for the length.

    >>> [shows_rest(INCH // 2 + more, INCH_STYLE) for more in (0, 508, 8 * 2032)], shows_rest(1_120, MM_STYLE)
    ([False, False, True], False)
    """
    plain = index(ticks)
    return abs(plain) >= style.step and abs(plain - to_step(plain, style.step)) >= LEAST_REST[style.unit]


def _measured(ticks: int, style: Style) -> str:
    number = _decimal(abs(ticks), style.unit).removesuffix(".0")
    return f"{'-' if ticks < 0 else ''}{number} {style.unit}"


def _number(ticks: int, style: Style) -> str:
    """A whole number of steps, without unit."""
    if ticks < 0:
        return f"-{_number(-ticks, style)}"
    if style.unit == "mm":
        whole, tenths = divmod(ticks * 10 // MM, 10)
        return f"{whole}.{tenths}" if tenths else str(whole)
    below = INCH // style.step
    whole, above = divmod(ticks // style.step, below)
    if not above:
        return str(whole)
    common = above & -above
    fraction = f"{above // common}/{below // common}"
    return f"{whole} {fraction}" if whole else fraction


def _rest(ticks: int, unit: str) -> str:
    return f"{'-' if ticks < 0 else '+'}{_decimal(abs(ticks), unit)}"


def _decimal(size: int, unit: str) -> str:
    """The shortest decimal, of one place at least, that reads back to this many ticks."""
    per = _TICKS[unit]
    digits, scale = 0, 1
    while True:
        digits, scale = digits + 1, scale * 10
        number = (2 * size * scale + per) // (2 * per)
        if (2 * number * per + scale) // (2 * scale) == size:
            return f"{number // scale}.{number % scale:0{digits}}"
