"""How a board stands in the cabinet: where its own origin lies and which way its three sizes run.

World axes: x left to right, y front to back (0 at the front of the case), z up.
A board's own coordinates are u along its length, v across its width, w through its thickness.
"""

from dataclasses import dataclass
from functools import lru_cache

from shoplib.model.box import Box, Point

Axes = tuple[str, str, str]

_WORLD = "xyz"


@lru_cache(maxsize=256)
def directions(axes: Axes) -> tuple[tuple[int, int], ...]:
    """For u, v and w: the world axis it runs along (0, 1 or 2) and its sign.

    Raises ValueError for a left-handed placement: such a board would be the mirror image of the
    one on the bench, and its printed template with it.

    >>> directions(("+z", "+y", "-x"))
    ((2, 1), (1, 1), (0, -1))
    """
    pairs = tuple((_WORLD.index(text[1]), 1 if text[0] == "+" else -1) for text in axes)
    (a, s), (b, t), (c, u) = pairs
    if sorted((a, b, c)) != [0, 1, 2]:
        raise ValueError(f"the axes {axes} do not name x, y and z once each")
    turns = 1 if (a, b, c) in ((0, 1, 2), (1, 2, 0), (2, 0, 1)) else -1
    if s * t * u * turns != 1:
        raise ValueError(f"the axes {axes} are left-handed: the board would be mirrored")
    return pairs


@dataclass(frozen=True, slots=True)
class Placement:
    """`origin` is the world point of the board's own (0, 0, 0); `axes` where u, v and w run.

    >>> side = Placement((10, 0, 0), ("+z", "+y", "-x"))
    >>> side.to_world(Box((0, 0, 0), (100, 50, 10)))
    Box(low=(0, 0, 0), high=(10, 50, 100))
    """

    origin: Point
    axes: Axes

    def to_world(self, box: Box) -> Box:
        """A box of the board's own coordinates, as it stands in the cabinet."""
        origin, low, high = self.origin, [0, 0, 0], [0, 0, 0]
        for (axis, sign), near, far in zip(directions(self.axes), box.low, box.high, strict=True):
            if sign > 0:
                low[axis], high[axis] = origin[axis] + near, origin[axis] + far
            else:
                low[axis], high[axis] = origin[axis] - far, origin[axis] - near
        return Box(tuple(low), tuple(high))

    def to_board(self, box: Box) -> Box:
        """A box of the cabinet, in the board's own coordinates.

        >>> side = Placement((10, 0, 0), ("+z", "+y", "-x"))
        >>> side.to_board(Box((7, 0, 20), (10, 50, 30)))
        Box(low=(20, 0, 0), high=(30, 50, 3))
        """
        origin, low, high = self.origin, box.low, box.high
        (i, a), (j, b), (k, c) = directions(self.axes)
        u, v, w = origin[i], origin[j], origin[k]
        first = ((low[i] - u) * a, (low[j] - v) * b, (low[k] - w) * c)
        last = ((high[i] - u) * a, (high[j] - v) * b, (high[k] - w) * c)
        if a > 0 and b > 0 and c > 0:
            return Box(first, last)
        ends = [(p, q) if sign > 0 else (q, p) for p, q, sign in zip(first, last, (a, b, c), strict=True)]
        return Box(tuple(e[0] for e in ends), tuple(e[1] for e in ends))

    def point_to_board(self, point: Point) -> Point:
        """A world point in the board's own coordinates."""
        return tuple((point[axis] - self.origin[axis]) * sign for axis, sign in directions(self.axes))

    def point_to_world(self, point: Point) -> Point:
        """A point of the board's own coordinates, as it stands in the cabinet.

        >>> Placement((10, 0, 0), ("+z", "+y", "-x")).point_to_world((20, 5, 3))
        (7, 5, 20)
        """
        world = [0, 0, 0]
        for own, (axis, sign) in zip(point, directions(self.axes), strict=True):
            world[axis] = self.origin[axis] + own * sign
        return tuple(world)

    def own_axis(self, world_axis: int) -> int:
        """Which of u, v, w (0, 1, 2) runs along this world axis.

        >>> Placement((10, 0, 0), ("+z", "+y", "-x")).own_axis(2)
        0
        """
        return next(own for own, (axis, _) in enumerate(directions(self.axes)) if axis == world_axis)


def standing_in(box: Box, axes: Axes) -> Placement:
    """The placement that makes a board with these axes fill the world box.

    >>> standing_in(Box((0, 0, 0), (10, 50, 100)), ("+z", "+y", "-x")).origin
    (10, 0, 0)
    """
    origin = [0, 0, 0]
    for axis, sign in directions(axes):
        origin[axis] = box.low[axis] if sign > 0 else box.high[axis]
    return Placement(tuple(origin), axes)
