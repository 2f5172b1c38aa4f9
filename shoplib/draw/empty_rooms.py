"""Where on a face nothing is cut, so that a word can stand there."""

from collections.abc import Sequence
from itertools import pairwise

from shoplib.draw.scene import Rect

_MOST = 40
"""Of more places than these in a row only so many, evenly taken, are looked at."""


def empty_rooms(whole: Rect, taken: Sequence[Rect]) -> list[Rect]:
    """The largest rectangles of `whole` that none of the `taken` reaches into, the largest first; of equal ones the
    nearest to the middle.

    >>> empty_rooms((0, 0, 90, 30), [(40, 10, 50, 20)])
    [(0, 0, 40, 30), (50, 0, 90, 30), (0, 0, 90, 10), (0, 20, 90, 30)]
    """
    a, b, c, d = whole
    columns = sorted({a, c, *(x for rect in taken for x in (rect[0], rect[2]) if a < x < c)})
    if len(columns) > _MOST:
        columns = [columns[k * (len(columns) - 1) // (_MOST - 1)] for k in range(_MOST)]
    found: set[Rect] = set()
    for number, left in enumerate(columns):
        for right in columns[number + 1:]:
            reached = sorted({(b, b), (d, d), *((y, z) for x, y, w, z in taken if x < right and left < w)})
            low = b
            for (_, end), (start, _) in pairwise(reached):
                low = max(low, end)
                if start > low:
                    found.add((left, low, right, start))
    rooms = [room for room in found if not any(room != other and _covers(other, room) for other in found)]
    return sorted(rooms, key=lambda room: (-(room[2] - room[0]) * (room[3] - room[1]),
                                           abs(room[0] + room[2] - a - c) + abs(room[1] + room[3] - b - d), room))


def _covers(one: Rect, other: Rect) -> bool:
    return one[0] <= other[0] and one[1] <= other[1] and one[2] >= other[2] and one[3] >= other[3]
