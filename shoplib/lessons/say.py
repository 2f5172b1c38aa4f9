"""How an exercise writes lengths: as a rule shows them, or as calipers do."""

from dataclasses import dataclass

from shoplib.lessons.counted import Counted
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, Style, to_step, write_brief, write_length

UNIT_WORDS = {"in": "inches", "mm": "millimetres"}


def caliper_text(ticks: int, unit: str) -> str:
    """A caliper reading: thousandths of an inch, or hundredths of a millimetre.

    >>> caliper_text(INCH * 703 // 1000, "in"), caliper_text(MM * 1745 // 100, "mm")
    ('0.703 in', '17.45 mm')
    >>> caliper_text(18 * MM, "mm")
    '18 mm'
    """
    if unit == "in":
        count, parts = to_step(ticks, INCH // 1000) // (INCH // 1000), 3
    else:
        count, parts = to_step(ticks, MM // 100) // (MM // 100), 2
    whole, rest = divmod(count, 10**parts)
    decimals = f"{rest:0{parts}d}" if unit == "in" else f"{rest:0{parts}d}".rstrip("0")
    return f"{whole}.{decimals} {unit}" if decimals else f"{whole} {unit}"


@dataclass(frozen=True, slots=True)
class Say:
    """Writes lengths in the learner's `unit`, "in" or "mm"; amounts are floors where `rough`.

    `counted` says what amounts are of, where they are of things and no lengths.
    """

    unit: str
    caliper: bool = False
    rough: bool = False
    counted: Counted | None = None

    @property
    def style(self) -> Style:
        """Sixty-fourths of an inch, or tenths of a millimetre."""
        return INCH_STYLE if self.unit == "in" else MM_STYLE

    def length(self, ticks: int) -> str:
        """The length as a rule shows it; a rest that a shop could still set follows in brackets."""
        return caliper_text(ticks, self.unit) if self.caliper else write_brief(ticks, self.style)

    def exact(self, ticks: int) -> str:
        """A length between two steps of a sum: as the calipers write it where a rule cannot show it."""
        if ticks % self.style.step == 0:
            return write_length(ticks, self.style)
        return caliper_text(ticks, self.unit)

    def amount(self, ticks: int) -> str:
        """How much something is off, as a person says it: no sign, to the nearest step.

        >>> Say("in").amount(-3 * INCH // 8), Say("in").amount(INCH * 94 // 1000)
        ('3/8 in', 'about 3/32 in')
        >>> Say("mm", rough=True).amount(50 * MM)
        'more than 50 mm'
        >>> Say("mm", counted=Counted("strip", "strips")).amount(-3)
        '3 strips'
        """
        size = abs(ticks)
        if self.counted:
            return ("more than " if self.rough else "") + self.counted.told(size)
        if self.caliper:
            return ("more than " if self.rough else "") + caliper_text(size, self.unit)
        near = max(to_step(size, self.style.step), self.style.step)
        before = "more than " if self.rough else "" if near == size else "about "
        return before + write_length(near, self.style)
