"""A drawer box in its opening: room beside it, shims, the offcut that stands for a sum, an opening out of square."""

from typing import Literal

from shoplib.measure import narrowest, share
from shoplib.measure.traced import named
from shoplib.model.project import Opening
from shoplib.tables.slides import Slide

SHIMMED = 2
"""A taper of up to so many times what its slide forgives is shimmed, a larger one not: common practice, no source."""


def beside(opening: int, box: int) -> int:
    """Clear room at each side of a box in the middle of an opening, in ticks; less than nothing where it is too wide.

    >>> beside(1600, 1500)
    50
    """
    return named(share(opening - box, 2, 1)[0], "room beside the box")


def shims(read: Opening, box: int, side: int) -> tuple[int, int]:
    """What is put behind each of the two slides at the front and at the back, so that both just reach the box.

    `read` is the opening as measured, `box` the width that the slides hold, `side` what one slide takes. Each shim is
    half of what the opening has over box and slides at that end (common practice, no source). Less than nothing says
    that the end is too narrow.

    >>> shims(Opening(1600, 1612), 1500, 50)
    (0, 6)
    """
    front, back = (named(beside(opening, box) - side, "shim behind each slide") for opening in (read.front, read.back))
    return front, back


def taper(read: Opening) -> tuple[int, str]:
    """By how much an opening is wider at one end than at the other, and at which: "front", "back" or "".

    >>> taper(Opening(1600, 1612)), taper(Opening(1600, 1600))
    ((12, 'back'), (0, ''))
    """
    least = narrowest([read.front, read.back])
    if read.back > read.front:
        return read.back - least, "back"
    return read.front - least, "front" if read.front > read.back else ""


def limits(slide: Slide) -> tuple[int, int]:
    """The taper up to which the slide forgives it, and that up to which it is shimmed.

    >>> from shoplib.measure import INCH
    >>> from shoplib.tables.slides import slide
    >>> [INCH // most for most in limits(slide("side-mount ball-bearing"))]
    [16, 8]
    """
    return slide.narrow, SHIMMED * slide.narrow


def mend(spread: int, slide: Slide) -> Literal["nothing", "shim", "guide", "straighten"]:
    """What is done about a taper of `spread` before this slide goes in.

    Behind what lies under the box no shim goes: a strip glued to the case guides the box where it is loose; one that
    rides on a shelf may be loose (common practice, no source).

    >>> from shoplib.measure import INCH
    >>> from shoplib.tables.slides import slide
    >>> [mend(INCH * n // 32, slide("side-mount ball-bearing")) for n in (2, 3, 4, 5)]
    ['nothing', 'shim', 'shim', 'straighten']
    """
    forgiven, shimmed = limits(slide)
    if spread <= forgiven or slide.carries == "shelf":
        return "nothing"
    if spread > shimmed:
        return "straighten"
    return "guide" if slide.carries == "strip below" else "shim"


def front_by_offcut(box: int, stock: int) -> int:
    """How long a box front comes out that is marked with one offcut of the box stock beside it, in ticks.

    The offcut stands for two sides less two rabbets: front = box width - one thickness. That is the right
    length, B - 2s + 2r, only where the rabbet r is half of the thickness s (common practice, no source; the
    sum proves it).

    >>> front_by_offcut(1500, 48)
    1452
    """
    return box - stock


def offcut_over(stock: int, rabbet: int) -> int:
    """By how much that front is too long: (B - s) - (B - 2s + 2r) = s - 2r; minus: too short.

    >>> offcut_over(48, 24), offcut_over(48, 20), offcut_over(48, 25)
    (0, 8, -2)
    """
    return stock - 2 * rabbet


def out_of_square(longer: int, shorter: int, width: int) -> int:
    """By how much one side of an opening stands further back than the other, from its two diagonals, in ticks.

    Seen from above, an opening of equal sides that leans by x has the diagonals a and b with
    a2 = (w + x)2 + d2 - x2 and b2 = (w - x)2 + d2 - x2, where d is the length of a side; so
    x = (a2 - b2) / 4w, exactly (parallelogram law). To the nearest tick. Raises ValueError where `width` is
    not above nothing.

    >>> out_of_square(205, 195, 100)
    10
    """
    if width <= 0:
        raise ValueError("an opening has a width above nothing.")
    return (longer * longer - shorter * shorter + 2 * width) // (4 * width)
