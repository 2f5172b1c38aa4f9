"""A drawer in its opening with the room beside it drawn larger, so that slides, play and a taper can be seen."""

from dataclasses import dataclass

from shoplib.draw.scene import Rect, Shape
from shoplib.measure import narrowest
from shoplib.model.box import Box
from shoplib.model.project import Opening

_ROOM, _TAPER, _MOST = 18, 40, 8
"""Room beside the box is drawn at least its width divided by the first, a taper at least by the second on each side
and at most by the third."""

ENLARGED = "The room beside the box is drawn larger than it is."


@dataclass(frozen=True, slots=True)
class Beside:
    """Where the faces of an opening are drawn beside a box from `left` to `right` (world x, plain ticks).

    `least` is the room at each side at the narrower end of the opening, `room` as it is drawn; `front` and `back`
    are how far from the box its faces are drawn at the two ends.
    """

    left: int
    right: int
    least: int
    room: int
    front: int
    back: int

    @property
    def enlarged(self) -> bool:
        """Whether anything is drawn larger than it is."""
        return self.room != self.least or self.front != self.back

    def place(self, x: int) -> int:
        """Where a world x is drawn: the box true, the room beside it stretched, what lies beyond only shifted.

        >>> beside = Beside(100, 200, 5, 10, 10, 10)
        >>> [beside.place(x) for x in (90, 95, 98, 100, 200, 205, 210)]
        [85, 90, 96, 100, 200, 210, 215]
        """
        x = int(x)
        if x < self.left:
            return self.left - self._out(self.left - x)
        return self.right + self._out(x - self.right) if x > self.right else x

    def _out(self, by: int) -> int:
        return by * self.room // self.least if by < self.least else by - self.least + self.room

    def wall(self, y: int, end: int) -> int:
        """How far from the box the face of the opening is drawn at depth `y` of `end`."""
        return self.front + (self.back - self.front) * int(y) // end

    def moved(self, shape: Shape) -> Shape:
        """The shape with its corners where they are drawn."""
        rects: list[Rect] = [(self.place(a), int(b), self.place(c), int(d)) for a, b, c, d in shape.rects]
        return Shape(tuple(rects), shape.fill, shape.name, shape.hatch)


def beside(box: Box, read: Opening) -> Beside:
    """The drawn opening for a box and the readings of its opening.

    >>> drawn = beside(Box((13, 0, 0), (373, 400, 100)), Opening(386, 392))
    >>> drawn.least, drawn.room, drawn.front, drawn.back, drawn.enlarged  # wider at the back
    (13, 20, 20, 38, True)
    """
    left, right = int(box.low[0]), int(box.high[0])
    wide, least = right - left, int(narrowest([read.front, read.back]))
    true = max((least - wide) // 2, 1)
    room = max(true, wide // _ROOM)
    over = [min(half // 2 * 3 + wide // _TAPER, wide // _MOST) if half else 0
            for half in (int(read.front) - least, int(read.back) - least)]
    return Beside(left, right, true, room, room + over[0], room + over[1])
