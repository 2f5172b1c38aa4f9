"""What is left when sheets are cut, as it lies in the shop: what is kept, and what is written on it."""

from collections.abc import Iterable, Sequence

from shoplib.buying.jobs import Held
from shoplib.layout.marks import letter
from shoplib.layout.offcuts import Least, worth_keeping
from shoplib.layout.pieces import Rect


def left_after(
    held: Iterable[Held], cut: Iterable[tuple[Held | None, str, Sequence[Rect]]], least: Least
) -> tuple[Held, ...]:
    """What lies in the shop when these are cut: what was not used, and what they left.

    Each is the piece in the shop that it was (None: bought), its name, and its offcuts; those of at least the size
    `least` are kept.

    >>> from shoplib.layout.offcuts import LEAST
    >>> one, other = Held(60, 30), Held(40, 30)
    >>> left_after([one, other], [(one, "ply on hand 1", [Rect(0, 0, 20, 30)])], LEAST)[0] == other
    True
    """
    left = list(held)
    for was, name, offcuts in cut:
        if was is not None:
            left.remove(was)
        letters = lettered(offcuts, least)
        left += [
            Held(rest.w, rest.h, left_of=name, name=offcut_name(name, letters[rest]) if rest in letters else "")
            for rest in offcuts
        ]
    return tuple(left)


def offcut_name(sheet: str, called: str) -> str:
    """What is written on an offcut that is kept.

    >>> offcut_name("ply 1", "a")
    'ply 1, offcut a'
    """
    return f"{sheet}, offcut {called}"


def lettered(offcuts: Iterable[Rect], least: Least) -> dict[Rect, str]:
    """The offcuts worth keeping, the largest first, each with its small letter.

    >>> from shoplib.layout.offcuts import LEAST
    >>> from shoplib.measure import INCH
    >>> small, large = Rect(0, 0, 20 * INCH, 9 * INCH), Rect(0, 9 * INCH, 40 * INCH, 9 * INCH)
    >>> list(lettered([small, large, Rect(0, 0, INCH, INCH)], LEAST).values()), lettered([small, large], LEAST)[large]
    (['a', 'b'], 'a')
    """
    return {rest: letter(number).lower() for number, rest in enumerate(worth_keeping(offcuts, least))}
