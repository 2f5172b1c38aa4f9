"""Where words stand on a page in true scale: beside their line, clear of lines, holes and other words."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from shoplib.draw.scene import Rect
from shoplib.draw.true_scale import LETTERS, Area, Item, LineName, Stroke, TextLine
from shoplib.measure import MM

_KEPT = MM // 2
"""How near words come to what is beside them."""
_STEP = 2 * MM


@dataclass(frozen=True, slots=True)
class Run:
    """Where words may be moved: from `low` to `high` along a level or `upright` line, their middle `at` beside it."""

    upright: bool
    at: int
    low: int
    high: int

    def words(self, text: str, size: float) -> list[TextLine]:
        """The words at every place where they fit, those in the middle first; none where the run is too short.

        >>> [words.at[0] // MM for words in Run(False, 0, 0, 12 * MM).words("plan", 2.0)]
        [6, 4, 8]
        """
        middle = (self.low + self.high) // 2
        spot = (self.at, middle) if self.upright else (middle, self.at)
        first = TextLine(spot, text, size, "middle", turned=self.upright)
        a, b, c, d = first.around
        room = (self.high - self.low - ((d - b) if self.upright else (c - a))) // 2
        away = sorted(range(-(room // _STEP) * _STEP, room + 1, _STEP), key=abs) if room >= 0 else []
        return [replace(first, at=(spot[0], middle + by) if self.upright else (middle + by, spot[1])) for by in away]


def clearest(places: Sequence[TextLine], others: Iterable[Item]) -> TextLine | None:
    """The first of the places where the words meet nothing, else the one where they meet least, on white.

    None where there is no place at all.

    >>> line = Stroke(((0, -MM), (0, MM)))
    >>> here, there = TextLine((0, 0), "plan", anchor="middle"), TextLine((9 * MM, 0), "plan", anchor="middle")
    >>> clearest([here, there], [line]) == there
    True
    """
    boxes = [box for item in others for box in _boxes(item)]
    best, least = None, 0
    for words in places:
        met = sum(_meet(words.around, box) for box in boxes)
        if best is None or met < least:
            best, least = words, met
        if not met:
            return words
    return replace(best, plate=True) if best else None


def lines_named(names: Sequence[LineName], within: Rect, items: Sequence[Item]) -> list[TextLine]:
    """The names of the lines that run through a part of a drawing, each once beside its line.

    >>> edge = LineName((0, 0), (0, 60 * MM), 3 * MM, ("left end: flush with this line", "left end"))
    >>> [[words.text for words in lines_named([edge], (0, 0, 9 * MM, up * MM), [])] for up in (60, 30)]
    [['left end: flush with this line'], ['left end']]
    """
    found: list[TextLine] = []
    for name in names:
        run = _run_of(name, within)
        found += said_beside(run, name.texts, LETTERS, [*items, *found]) if run else []
    return found


def said_beside(run: Run, texts: Sequence[str], size: float, others: Sequence[Item]) -> list[TextLine]:
    """The first of the texts, from the longest on, that has a clear place on the run; else the last, if it fits at all.

    >>> [words.text for words in said_beside(Run(False, 0, 0, 12 * MM), ("of drawer 1", "drawer"), 2.4, [])]
    ['drawer']
    """
    for text in texts:
        words = clearest(run.words(text, size), others)
        if words and (not words.plate or text == texts[-1]):
            return [words]
    return []


def _run_of(name: LineName, within: Rect) -> Run | None:
    """The part of the line that lies there, its ends left free; None where it does not."""
    along, across = (1, 0) if name.upright else (0, 1)
    if not within[across] <= name.start[across] <= within[across + 2]:
        return None
    low = max(min(name.start[along], name.end[along]), within[along]) + MM
    high = min(max(name.start[along], name.end[along]), within[along + 2]) - MM
    return Run(name.upright, name.start[across] + name.off, low, high) if low < high else None


def _boxes(item: Item) -> Iterator[Rect]:
    """What words should not lie on: a line piece by piece, for there is room inside a frame; a tint is no hindrance."""
    if isinstance(item, Area):
        return
    if not isinstance(item, Stroke):
        yield item.around
        return
    for one in pairwise(item.points):
        yield Stroke(one).around


def _meet(words: Rect, box: Rect) -> bool:
    a, b, c, d = words
    return a - _KEPT < box[2] and box[0] < c + _KEPT and b - _KEPT < box[3] and box[1] < d + _KEPT
