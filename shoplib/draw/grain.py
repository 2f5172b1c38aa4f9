"""The arrow along the grain with its word: in the first room that holds both at the size of the page."""

from dataclasses import dataclass

from shoplib.draw.lettering import text_width
from shoplib.draw.marks import NORMAL
from shoplib.draw.scene import Grain, Rect

_WORD = "grain"
_TAIL, _ABOVE, _CLEAR = 16.0, 9.0, 3.0
"""In units of the page: what shows of the arrow to each side of a word on it, how far above the arrow a word stands,
and what both leave free about them."""


@dataclass(frozen=True, slots=True)
class GrainDrawn:
    """On the page: the ends of the arrow, and the middle of its word; None where the word has no room."""

    start: tuple[float, float]
    end: tuple[float, float]
    word: tuple[float, float] | None


def grain_drawn(item: Grain, left: int, top: int, scale: float) -> GrainDrawn:
    """The word over the arrow where a room is high enough, else in the middle of it; where no room holds the word, the
    arrow alone in the first.

    >>> wide, flat = (grain_drawn(Grain(((0, 0, 200, high),)), 0, high, 1.0) for high in (90, 20))
    >>> wide.start, wide.end, wide.word
    ((75.0, 49.5), (125.0, 49.5), (100.0, 40.5))
    >>> flat.start[1], round(flat.end[0] - flat.start[0]), flat.word
    (10.0, 62, (100.0, 10.0))
    """
    word, high = text_width(_WORD, NORMAL), NORMAL * 1.2
    for room in item.rooms:
        wide, tall = (room[2] - room[0]) * scale - 2 * _CLEAR, (room[3] - room[1]) * scale - 2 * _CLEAR
        if wide >= word and tall >= high / 2 + _ABOVE + _CLEAR:
            return _arrow(room, left, top, scale, _ABOVE)
        if wide >= word + 2 * _TAIL and tall >= high - _CLEAR:
            return _arrow(room, left, top, scale, 0.0)
    alone = _arrow(item.rooms[0], left, top, scale, 0.0)
    return GrainDrawn(alone.start, alone.end, None)


def _arrow(room: Rect, left: int, top: int, scale: float, above: float) -> GrainDrawn:
    """Through the middle of the room, a quarter of it long, or as long as its word asks for."""
    a, b, c, d = room
    x, y = ((a + c) / 2 - left) * scale, (top - (b + d) / 2) * scale
    least = text_width(_WORD, NORMAL) + (0.0 if above else 2 * _TAIL)
    half = min(max((c - a) * scale / 4, least), (c - a) * scale - 2 * _CLEAR) / 2
    return GrainDrawn((x - half, y + above / 2), (x + half, y + above / 2), (x, y - above / 2))
