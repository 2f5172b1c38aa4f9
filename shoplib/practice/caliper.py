"""A caliper: every reading has a little error of its own, and stands on a step of the display."""

from dataclasses import dataclass

from shoplib.measure import INCH, MM, mean, thickest, to_step, write_brief
from shoplib.practice.bench import Bench

STEP = {"in": INCH // 2000, "mm": MM // 100}
"""0.0005 in and 0.01 mm: what digital calipers resolve (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Readings:
    """What the caliper showed of one thing, reading by reading (ticks).

    `size` is "sheet", "width", "depth" or "wall", and `test` the number of the test cut, 0 for the sheet.
    """

    what: str
    values: tuple[int, ...]
    size: str = "sheet"
    test: int = 0

    @property
    def mean(self) -> int:
        """The mean of the readings, to the nearest tick."""
        return mean(self.values)

    @property
    def thickest(self) -> int:
        """The largest reading."""
        return thickest(self.values)

    def said(self, bench: Bench) -> str:
        """The readings in a sentence.

        >>> from shoplib.measure import MM
        >>> Readings("the width", (18 * MM, 18 * MM + 1600)).said(Bench("Noor", "dado", "mm"))
        'The width reads 18 and 18.02 mm; the mean is 18.01 mm.'
        """
        texts = [write_brief(value, bench.style, decimal=True) for value in self.values]
        if len(texts) == 1:
            return f"{_begin(self.what)} reads {texts[0]}."
        bare = [text.rpartition(" ")[0] for text in texts[:-1]]
        shown = f"{', '.join(bare)} and {texts[-1]}"
        return f"{_begin(self.what)} reads {shown}; the mean is {write_brief(self.mean, bench.style, decimal=True)}."


def read(
    bench: Bench, what: str, sizes: tuple[int, ...], after: int, size: str = "sheet", test: int = 0
) -> Readings:
    """One reading of each of `sizes`. `after` is how many times something was measured before: each reads anew.

    >>> from shoplib.practice.spreads import NONE
    >>> read(Bench("Noor", "dado", "mm", NONE), "the depth", (1_439_900,), 0).values
    (1440000,)
    """
    spread, step = bench.spreads.caliper, STEP[bench.unit]
    return Readings(what, tuple(
        to_step(true + bench.shift(spread, "reading", str(after), str(number)), step)
        for number, true in enumerate(sizes)
    ), size, test)


def _begin(text: str) -> str:
    return text[0].upper() + text[1:]
