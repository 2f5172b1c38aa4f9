"""Which straight router bit to take for a cut, and what is left for a second pass."""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.measure import INCH_STYLE, Style, largest_fitting, share, write_brief
from shoplib.model.passes import CannotPass, Passes, passes


@dataclass(frozen=True, slots=True)
class BitChoice:
    """The widest bit that is not wider than the cut, in ticks; a bit cannot be made narrower."""

    bit: int
    target: int

    @property
    def left(self) -> int:
        """What one pass leaves standing: in one pass, the cut would be tighter by this."""
        return self.target - self.bit

    @property
    def passes(self) -> Passes:
        """Where the passes stand that cut the full width."""
        return passes(self.target, self.bit)

    def down(self, depth: int) -> int:
        """In how many passes, at the least, a cut of this depth is reached: each half the width of the bit deep.

        Common practice, no source; the caution beside every router cut says the same.

        >>> half_inch = BitChoice(500, 500)
        >>> half_inch.down(250), half_inch.down(251), half_inch.down(750)
        (1, 2, 3)
        """
        return share(2 * depth + self.bit - 1, self.bit, 1)[0]


def bit_for(target: int, bits: Iterable[int], style: Style = INCH_STYLE) -> BitChoice:
    """The bit to take for a cut of the target width, from those at hand (common practice, no source).

    `style` is for the sentence of a refusal. Raises CannotPass where there is no bit narrow enough.

    >>> from shoplib.measure import read_length
    >>> from shoplib.tables.router_bits import straight_bits, undersize_bits
    >>> choice = bit_for(read_length("0.725 in"), [*straight_bits("in"), *undersize_bits()])
    >>> choice.bit == read_length("23/32 in"), choice.left == read_length("0.00625 in"), len(choice.passes.offsets)
    (True, True, 2)
    """
    bit = largest_fitting(bits, target)
    if bit is None:
        raise CannotPass(
            f"no bit at hand is so narrow as this cut, {write_brief(target, style, decimal=True)}: "
            "make the cut wider, or get a narrower bit."
        )
    return BitChoice(bit, target)
