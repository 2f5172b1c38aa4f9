"""What is left of a sheet: which offcuts are worth keeping, and how large one can be."""

from collections.abc import Iterable, Iterator
from operator import attrgetter
from typing import NamedTuple

from shoplib.layout.pieces import Rect
from shoplib.measure import INCH


class Least(NamedTuple):
    """The smallest offcut worth keeping: `length` along the grain, `width` across it, in ticks.

    `either_way`: the sheet has no grain, so an offcut may be as long across it.
    """

    length: int
    width: int
    either_way: bool = False

    def keeps(self, offcut: Rect) -> bool:
        """Whether an offcut is worth keeping.

        >>> slim = Rect(0, 0, 10, 50)
        >>> Least(40, 10).keeps(slim), Least(40, 10, either_way=True).keeps(slim)
        (False, True)
        """
        along = offcut.w >= self.length and offcut.h >= self.width
        return along or (self.either_way and offcut.h >= self.length and offcut.w >= self.width)


LEAST = Least(12 * INCH, 4 * INCH)
"""What is kept unless it is said otherwise: a drawer side comes out of it. Common practice, no source."""


def worth_keeping(offcuts: Iterable[Rect], least: Least = LEAST) -> tuple[Rect, ...]:
    """The offcuts that a part of the size `least` comes out of, the largest first.

    >>> worth_keeping([Rect(0, 0, 50, 9), Rect(0, 9, 60, 30), Rect(60, 9, 30, 60)], Least(40, 10))
    (Rect(x=0, y=9, w=60, h=30),)
    """
    return tuple(sorted(filter(least.keeps, offcuts), key=attrgetter("area"), reverse=True))


def room_beside(sheet: Rect, parts: Iterable[Rect], kerf: int, least: Least, over: int = 0) -> tuple[Rect, ...]:
    """Every empty rectangle of a sheet that cannot be made larger, a blade away from all parts, the largest first.

    Those are left out that are not worth keeping, or have no more than `over` square ticks.

    >>> room_beside(Rect(0, 0, 100, 50), [Rect(0, 0, 60, 30)], 2, Least(1, 1))
    (Rect(x=62, y=0, w=38, h=50), Rect(x=0, y=32, w=100, h=18))
    >>> room_beside(Rect(0, 0, 100, 50), [Rect(0, 0, 60, 30)], 2, Least(40, 10))
    (Rect(x=0, y=32, w=100, h=18),)
    """
    free = [sheet]
    for part in parts:
        grown = Rect(part.x - kerf, part.y - kerf, part.w + 2 * kerf, part.h + 2 * kerf)
        free, cut = [room for room in free if not _meet(room, grown)], [room for room in free if _meet(room, grown)]
        for new in sorted({new for room in cut for new in _beside(room, grown)}, key=attrgetter("area"), reverse=True):
            if least.keeps(new) and new.area > over and not any(other.holds(new) for other in free):
                free.append(new)
    return tuple(sorted(free, key=lambda room: (-room.area, room)))


def _meet(one: Rect, other: Rect) -> bool:
    return (
        one.x < other.x + other.w
        and other.x < one.x + one.w
        and one.y < other.y + other.h
        and other.y < one.y + one.h
    )


def _beside(room: Rect, part: Rect) -> Iterator[Rect]:
    """What remains of a room on each of the four sides of a part."""
    if part.x > room.x:
        yield Rect(room.x, room.y, part.x - room.x, room.h)
    if part.x + part.w < room.x + room.w:
        yield Rect(part.x + part.w, room.y, room.x + room.w - part.x - part.w, room.h)
    if part.y > room.y:
        yield Rect(room.x, room.y, room.w, part.y - room.y)
    if part.y + part.h < room.y + room.h:
        yield Rect(room.x, part.y + part.h, room.w, room.y + room.h - part.y - part.h)
