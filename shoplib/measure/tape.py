"""A tape read as a person reads it: the printed figure, then the longest mark passed, then the next shorter."""

from operator import index
from typing import NamedTuple

from shoplib.measure.ticks import INCH, MM
from shoplib.measure.write import Style


class TapeStep(NamedTuple):
    """`count` times one `part` of the tape, in ticks: 2 inches, 1 eighth, 3 single millimetres."""

    count: int
    part: int

    @property
    def ticks(self) -> int:
        """How far this step goes."""
        return self.count * self.part


def tape_parts(style: Style) -> tuple[int, ...]:
    """The kinds of mark on a tape from the longest to the shortest, as ticks from one to the next of its kind.

    In inches each kind halves the one before; in millimetres they are 10 mm (printed as a figure, in
    centimetres), 5 mm, 1 mm, and what is finer (common practice, no source).

    >>> [INCH // part for part in tape_parts(Style("in", INCH // 8))]
    [1, 2, 4, 8]
    >>> [part // MM for part in tape_parts(Style("mm", MM))]
    [10, 5, 1]
    """
    if style.unit == "in":
        return tuple(INCH >> k for k in range((INCH // style.step).bit_length()))
    parts = (10 * MM, 5 * MM, MM)
    return parts if style.step == MM else (*parts, style.step)


def tape_steps(ticks: int, style: Style) -> tuple[TapeStep, ...]:
    """The steps that add up to a reading, the printed figure first (0 where none is passed).

    `ticks` must stand on a mark of the style. Raises ValueError where it does not, or is less than 0.

    >>> [(step.count, INCH // step.part) for step in tape_steps(INCH * 21 // 8, Style("in", INCH // 16))]
    [(2, 1), (1, 2), (1, 8)]
    >>> [(step.count, step.part // MM) for step in tape_steps(267 * MM, Style("mm", MM))]
    [(26, 10), (1, 5), (2, 1)]
    """
    left = index(ticks)
    if left < 0 or left % style.step:
        raise ValueError("a reading stands on a mark of the tape, from 0 up.")
    whole, *finer = tape_parts(style)
    steps = [TapeStep(left // whole, whole)]
    left %= whole
    for part in finer:
        count, left = divmod(left, part)
        if count:
            steps.append(TapeStep(count, part))
    return tuple(steps)
