"""A template in true scale: a drawing to lay on a face of a board, and what must be known to use it."""

from dataclasses import dataclass

from shoplib.draw.lettering import wrapped
from shoplib.draw.true_scale import LETTERS, Ring, TextLine, TrueDrawing
from shoplib.measure import MM

SLIDES, PINS, PEGS, PULLS = "slides and runners", "holes for shelf pins", "holes for pegs", "holes for pulls"
"""What templates are for, as they are titled."""

STEP = round(1.4 * LETTERS * MM)
"""From one line of words to the next."""

CHECK = (
    "Check a hole with the tape from the same edges before you drill; prick the centres through with an awl."
)
"""Common practice, no source."""


@dataclass(frozen=True)
class Template:
    """`what` it is for ("holes for pulls"), the boards that it serves in words and by name, the lines that tell how it
    is used, and the drawing. Equal drawings for other boards are one template.
    """

    what: str
    serves: str
    names: tuple[str, ...]
    lines: tuple[str, ...]
    alt: str
    drawing: TrueDrawing


def naming(what: str, serves: str, mark: str, room: int) -> list[str]:
    """What stands on the paper itself, for its head is cut off: what it is, for which boards, and of which plan.

    >>> naming("holes for pulls", "bay 1 drawer 1 front", "plan 2222-3333", 72 * MM)
    ['holes for pulls: bay 1 drawer 1 front, plan', '2222-3333']
    """
    text = f"{what}: {serves}, {mark}" if mark else f"{what}: {serves}"
    return wrapped(text, LETTERS, room / MM)


def beside(hole: Ring, lines: tuple[str, ...], to_right: bool) -> list[TextLine]:
    """Lines of words at the upper right of a hole, or at its upper left, clear of it and of its cross.

    >>> [words.at[1] // MM for words in beside(Ring((0, 0), 6 * MM), ("60 mm from left end", "up"), True)]
    [6, 3]
    """
    (x, y), off = hole.centre, hole.diameter // 2 + 2 * MM
    anchor, off = ("start", off) if to_right else ("end", -off)
    return [
        TextLine((x + off, y + 3 * MM + STEP * (len(lines) - 1 - k)), line, LETTERS, anchor, stays=True)
        for k, line in enumerate(lines)
    ]
