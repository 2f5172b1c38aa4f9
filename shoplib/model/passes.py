"""A wide cut with a narrow cutter: how many passes, and where the fence stands for each."""

from dataclasses import dataclass

from shoplib.measure import INCH_STYLE, Style, write_brief


class CannotPass(ValueError):
    """The cutter does not fit into the cut; the message is one sentence with the amounts."""


@dataclass(frozen=True, slots=True)
class Passes:
    """Where each pass stands, in ticks from the first: `offsets` begin at 0 and end at target minus kerf.

    The first and the last pass cut the two walls, so they decide the width; make those two first, and clear what
    stands between them with the others.

    >>> Passes((0, 100, 150), kerf=120).moves
    (100, 50)
    """

    offsets: tuple[int, ...]
    kerf: int

    @property
    def moves(self) -> tuple[int, ...]:
        """How far the fence goes between one pass and its neighbour."""
        return tuple(there - here for here, there in zip(self.offsets, self.offsets[1:], strict=False))

    @property
    def last(self) -> int:
        """How far from the first pass the last one stands: target minus kerf, exactly."""
        return self.offsets[-1]

    @property
    def width(self) -> int:
        """How wide the finished cut is."""
        return self.last + self.kerf


def passes(target: int, kerf: int, overlap: int = 0, style: Style = INCH_STYLE) -> Passes:
    """The fewest passes of a cutter so wide as `kerf` that leave nothing standing in a cut of the target width.

    Each pass overlaps its neighbour by `overlap` or more: with a little of it no thin ridge stays between two passes
    (common practice, no source). All in ticks; `style` is for the sentence of a refusal.

    Raises CannotPass where the cutter is wider than the cut, ValueError where the overlap is not less than the kerf.

    >>> from shoplib.measure import read_length
    >>> seven = passes(read_length("0.709 in"), read_length("1/8 in"), overlap=read_length("1/64 in"))
    >>> len(seven.offsets), seven.last == read_length("0.584 in")
    (7, True)
    >>> passes(200, 100).offsets, passes(100, 100).offsets
    ((0, 100), (0,))
    >>> passes(read_length("3 mm"), read_length("1/8 in"))
    Traceback (most recent call last):
    shoplib.model.passes.CannotPass: this cutter takes 1/8 in, and the cut is 0.118 in wide: take a narrower one.
    """
    if not 0 <= overlap < kerf:
        raise ValueError(f"passes overlap by 0 or more and by less than the kerf, not by {overlap} of {kerf} ticks.")
    if target < kerf:
        raise CannotPass(
            f"this cutter takes {write_brief(kerf, style)}, and the cut is "
            f"{write_brief(target, style, decimal=True)} wide: take a narrower one."
        )
    last = target - kerf
    return Passes((*range(0, int(last), kerf - overlap), last), kerf)
