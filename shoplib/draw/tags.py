"""Small numbers on lines of a drawing: each where it lies on no words, on its line or touching it, or else beside the
drawing with a leader.
"""

from collections.abc import Iterable, Iterator
from itertools import product

from shoplib.draw.labels import Fit
from shoplib.draw.lettering import text_width
from shoplib.draw.marks import INK, SMALL, text_element
from shoplib.draw.scene import Label, Tag

Box = tuple[float, float, float, float]
"""Left, top, right, bottom on the page."""

_PARTS = 24
"""A number may stand at so many places along its line, from the middle outward."""


def words_box(item: Label, found: Fit, left: int, top: int, scale: float) -> Box:
    """What the words of a label cover, its plate too.

    >>> label = Label((0, 0, 100, 40), ("AB",))
    >>> [round(side, 1) for side in words_box(label, (0, label.room, False, 10.0), 0, 40, 1.0)]
    [41.1, 14.0, 58.9, 26.0]
    """
    number, (a, b, c, d), turned, size = found
    x, y = ((a + c) / 2 - left) * scale, (top - (b + d) / 2) * scale
    lines = item.texts[number].split("\n")
    p, q = max(text_width(line, 1.0) for line in lines) * size / 2 + 2, len(lines) * size * 0.6
    p, q = (q, p) if turned else (p, q)
    return x - p, y - q, x + p, y + q


def write_tags(
    tags: Iterable[Tag], taken: Iterable[Box], left: int, top: int, scale: float, words: list[str]
) -> list[Tag]:
    """Write each number at the first place on its line where nothing stands, or touching it, short lines first.

    Gives back those that have no such place.
    """
    there, outside = list(taken), []
    for tag in sorted(tags, key=_long):
        a, b, c, d = tag.within
        space = (a - left) * scale, (top - d) * scale, (c - left) * scale, (top - b) * scale
        places = _places(tag, left, top, scale, space)
        box = next((box for box in places if not any(_meet(box, other) for other in there)), None)
        if box is None:
            outside.append(tag)
            continue
        there.append(box)
        x0, y0, x1, y1 = box
        words.append(f'<rect x="{x0:.2f}" y="{y0:.2f}" width="{x1 - x0:.2f}" height="{y1 - y0:.2f}" rx="2" '
                     f'fill="#ffffff" stroke="{INK}" stroke-width="0.6"/>')
        words.append(text_element((x0 + x1) / 2, (y0 + y1) / 2, tag.text, SMALL, "middle", False))
    return outside


def _long(tag: Tag) -> int:
    (a, b), (c, d) = tag.start, tag.end
    return abs(a - c) + abs(b - d)


def _places(tag: Tag, left: int, top: int, scale: float, space: Box) -> Iterator[Box]:
    """The boxes of a number along its line, inside the `space`, then beside the line; none where that is smaller."""
    wide, high = text_width(tag.text, SMALL) + 4, SMALL * 1.15
    (a, b), (c, d) = tag.start, tag.end
    if wide > space[2] - space[0] or high > space[3] - space[1]:
        return
    for beside, step in product((0, 1, -1), range(_PARTS - 1)):
        part = 0.5 + (step + 1) // 2 * (-1) ** step / _PARTS
        x = (a + (c - a) * part - left) * scale + beside * (wide / 2 if a == c else 0)
        y = (top - b - (d - b) * part) * scale - beside * (high / 2 if b == d else 0)
        x = min(max(x, space[0] + wide / 2), space[2] - wide / 2)
        y = min(max(y, space[1] + high / 2), space[3] - high / 2)
        yield x - wide / 2, y - high / 2, x + wide / 2, y + high / 2


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
