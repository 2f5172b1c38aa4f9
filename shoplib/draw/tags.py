"""Small numbers on lines of a drawing: each where it lies on no words, on its line or touching it; words that lie over
all of a line make room, and only where they cannot does it stand beside the drawing with a leader.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from itertools import product
from typing import Self

from shoplib.draw.labels import Fit, fitting
from shoplib.draw.lettering import text_width
from shoplib.draw.marks import INK, SMALL, text_element
from shoplib.draw.scene import Label, Tag
from shoplib.draw.spilled import Box
from shoplib.draw.uncrossed import Stroke, cross, runs_through

_PARTS = 24
"""A number may stand at so many places along its line, from the middle outward."""
_OFF = (14.0, 20.0, 28.0, 40.0)
"""So far off its line it may stand, in units of the page, where there is no room on it."""


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


@dataclass(frozen=True, slots=True)
class Placed:
    """Where numbers stand: each with its box on the page, short lines for those that stand off their own line, those
    that stand beside the drawing, and how the labels fit that made room for them."""

    boxes: tuple[tuple[Tag, Box], ...]
    lines: tuple[Stroke, ...]
    beside: tuple[Tag, ...]
    fits: Mapping[int, Fit]


def place_tags(tags: Iterable[Tag], named: Mapping[int, tuple[Label, Fit]], left: int, top: int,
               scale: float) -> Placed:
    """Each number at the first place on its line where nothing stands, or touching it, short lines first.

    Where words lie over all of a line, a label of `named` says less, if that gives the number a place: what it does not
    say stands under the drawing, and a leader from outside would run through other words. What finds no place even so
    stands a little way off its line, if there is room.
    """
    words = _Words(dict(named), left, top, scale)
    boxes: list[tuple[Tag, Box]] = []
    rest: list[_OnPage] = []
    for tag in sorted(tags, key=_long):
        line = _OnPage.of(tag, left, top, scale)
        free = [place for place in _places(line) if not any(_meet(place, other) for _, other in boxes)]
        box = next((place for place in free if not words.under(place)), None) or words.make_room(free)
        if box is None:
            rest.append(line)
        else:
            boxes.append((tag, box))
    lines: list[Stroke] = []
    beside: list[Tag] = []
    for line in rest:
        found = next(_off_the_line(line, [*words.boxes, *(box for _, box in boxes)], lines), None)
        if found is None:
            beside.append(line.tag)
        else:
            boxes.append((line.tag, found[0]))
            lines.append(found[1])
    return Placed(tuple(boxes), tuple(lines), tuple(beside), {number: fit for number, (_, fit) in words.named.items()})


@dataclass(frozen=True, slots=True)
class _OnPage:
    """The line of a number on the page, from `start` to `end`, and the space that the number may take."""

    tag: Tag
    start: tuple[float, float]
    end: tuple[float, float]
    space: Box

    @classmethod
    def of(cls, tag: Tag, left: int, top: int, scale: float) -> Self:
        start, end = (((x - left) * scale, (top - y) * scale) for x, y in (tag.start, tag.end))
        a, b, c, d = tag.within
        return cls(tag, start, end, ((a - left) * scale, (top - d) * scale, (c - left) * scale, (top - b) * scale))

    @property
    def size(self) -> tuple[float, float]:
        """How wide and high the box of the number is."""
        return text_width(self.tag.text, SMALL) + 4, SMALL * 1.15

    def along(self, step: int) -> tuple[float, float]:
        """A point of the line: step 0 is its middle, the next ones lie to both sides of it in turn."""
        part = 0.5 + (step + 1) // 2 * (-1) ** step / _PARTS
        return tuple(a + (b - a) * part for a, b in zip(self.start, self.end, strict=True))

    def box(self, x: float, y: float) -> Box:
        """The box about a point, or as near to it as the space allows."""
        wide, high = self.size
        x = min(max(x, self.space[0] + wide / 2), self.space[2] - wide / 2)
        y = min(max(y, self.space[1] + high / 2), self.space[3] - high / 2)
        return x - wide / 2, y - high / 2, x + wide / 2, y + high / 2

    @property
    def has_room(self) -> bool:
        """Whether the number is smaller than its space."""
        wide, high = self.size
        return wide <= self.space[2] - self.space[0] and high <= self.space[3] - self.space[1]


class _Words:
    """The words of labels as they fit now, by the numbers of their items; they may come to say less."""

    def __init__(self, named: dict[int, tuple[Label, Fit]], left: int, top: int, scale: float) -> None:
        self.named, self._at = named, (left, top, scale)
        self._boxes = {number: words_box(item, fit, *self._at) for number, (item, fit) in named.items()}

    @property
    def boxes(self) -> Iterable[Box]:
        """What all words cover."""
        return self._boxes.values()

    def under(self, place: Box) -> list[int]:
        """The labels whose words a box would cover."""
        return [number for number, box in self._boxes.items() if _meet(place, box)]

    def make_room(self, places: Iterable[Box]) -> Box | None:
        """The place for which labels have to say the least less, and of these the first; they then do. None where words
        that cannot be shorter are in the way at each."""
        best: tuple[int, Box, dict[int, Fit | None]] | None = None
        for place in places:
            less = {number: self._clear_of(number, place) for number in self.under(place)}
            if not all(less.values()):
                continue
            shorter = sum(fit[0] - self.named[number][1][0] for number, fit in less.items())
            if best is None or shorter < best[0]:
                best = shorter, place, less
        if best is None:
            return None
        for number, fit in best[2].items():
            item, _ = self.named[number]
            self.named[number], self._boxes[number] = (item, fit), words_box(item, fit, *self._at)
        return best[1]

    def _clear_of(self, number: int, place: Box) -> Fit | None:
        """How the fullest of the shorter texts of a label fits that leaves a place free."""
        item, fit = self.named[number]
        for first in range(fit[0] + 1, len(item.texts)):
            found = fitting(item, self._at[2], first)
            if found and not _meet(place, words_box(item, found, *self._at)):
                return found
        return None


def write_tags(placed: Placed, words: list[str]) -> None:
    """Each number in its box, white with a thin line round it, and a dot on its own line where it stands off that."""
    for (x, y), (x1, y1) in placed.lines:
        words.append(f'<path d="M{x:.2f} {y:.2f}L{x1:.2f} {y1:.2f}" stroke="{INK}" stroke-width="0.7"/>'
                     f'<circle cx="{x:.2f}" cy="{y:.2f}" r="1.7"/>')
    for tag, (x0, y0, x1, y1) in placed.boxes:
        words.append(f'<rect x="{x0:.2f}" y="{y0:.2f}" width="{x1 - x0:.2f}" height="{y1 - y0:.2f}" rx="2" '
                     f'fill="#ffffff" stroke="{INK}" stroke-width="0.6"/>')
        words.append(text_element((x0 + x1) / 2, (y0 + y1) / 2, tag.text, SMALL, "middle", False))


def _long(tag: Tag) -> int:
    (a, b), (c, d) = tag.start, tag.end
    return abs(a - c) + abs(b - d)


def _places(line: _OnPage) -> Iterator[Box]:
    """The boxes of a number along its line, inside its space, then beside the line; none where that is smaller."""
    if not line.has_room:
        return
    wide, high = line.size
    upright = line.start[0] == line.end[0]
    for beside, step in product((0, 1, -1), range(_PARTS - 1)):
        x, y = line.along(step)
        yield line.box(x + beside * wide / 2, y) if upright else line.box(x, y - beside * high / 2)


def _off_the_line(line: _OnPage, words: Iterable[Box], lines: Iterable[Stroke]) -> Iterator[tuple[Box, Stroke]]:
    """Boxes a little way off the line, the nearest first, each with a short stroke from the line to its middle: neither
    meets words or numbers, nor do two strokes cross."""
    if not line.has_room:
        return
    words = tuple(words)
    for off, side, slant, step in product(_OFF, (1, -1), (0, 1, -1), range(_PARTS - 1)):
        x, y = line.along(step)
        by = (side * off, slant * off) if line.start[0] == line.end[0] else (slant * off, side * off)
        box = line.box(x + by[0], y + by[1])
        stroke = (x, y), ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
        if not any(_meet(box, other) or runs_through(stroke, other) for other in words) and not any(
            cross(stroke, other) or runs_through(other, box) for other in lines
        ):
            yield box, stroke


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
