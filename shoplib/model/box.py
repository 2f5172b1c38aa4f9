"""An axis-aligned box of whole ticks: the one shape that boards, cuts and sweeps are made of."""

from dataclasses import dataclass
from typing import Self

Point = tuple[int, int, int]


@dataclass(frozen=True, slots=True)
class Box:
    """The space between two corners, in ticks.

    >>> Box((0, 0, 0), (2, 3, 4)).volume
    24
    """

    low: Point
    high: Point

    @property
    def size(self) -> Point:
        """Extent along x, y, z, in ticks."""
        (a, b, c), (d, e, f) = self.low, self.high
        return (d - a, e - b, f - c)

    @property
    def volume(self) -> int:
        """Product of the three extents, in cubic ticks."""
        a, b, c = self.size
        return a * b * c

    def overlaps(self, other: Self) -> bool:
        """True where the two share some volume; touching faces do not count.

        >>> Box((0, 0, 0), (2, 2, 2)).overlaps(Box((2, 0, 0), (3, 2, 2)))
        False
        """
        (a, b, c), (d, e, f) = self.low, self.high
        (g, h, i), (j, k, m) = other.low, other.high
        return a < j and g < d and b < k and h < e and c < m and i < f

    def common(self, other: Self) -> Self | None:
        """The shared box, or None where no volume is shared.

        >>> Box((0, 0, 0), (4, 4, 4)).common(Box((2, 2, 2), (9, 9, 9)))
        Box(low=(2, 2, 2), high=(4, 4, 4))
        """
        if not self.overlaps(other):
            return None
        (a, b, c), (d, e, f) = self.low, self.high
        (g, h, i), (j, k, m) = other.low, other.high
        return Box((max(a, g), max(b, h), max(c, i)), (min(d, j), min(e, k), min(f, m)))

    def moved(self, by: Point) -> Self:
        """The same box shifted.

        >>> Box((0, 0, 0), (1, 1, 1)).moved((0, -5, 0)).low
        (0, -5, 0)
        """
        (a, b, c), (d, e, f) = self.low, self.high
        x, y, z = by
        return Box((a + x, b + y, c + z), (d + x, e + y, f + z))

    def swept(self, by: Point) -> Self:
        """The box that holds every position on the straight way from here to `by`."""
        (a, b, c), (d, e, f) = self.low, self.high
        x, y, z = by
        return Box((min(a, a + x), min(b, b + y), min(c, c + z)), (max(d, d + x), max(e, e + y), max(f, f + z)))

    def without(self, hole: Self) -> list[Self]:
        """What is left when `hole` is taken out, as boxes that do not overlap (at most six).

        >>> [b.size for b in Box((0, 0, 0), (4, 4, 4)).without(Box((0, 0, 2), (4, 4, 9)))]
        [(4, 4, 2)]
        """
        if not self.overlaps(hole):
            return [self]
        pieces = []
        low, high = list(self.low), list(self.high)
        for axis, (near, far) in enumerate(zip(hole.low, hole.high, strict=True)):
            if low[axis] < near:
                cap = high.copy()
                cap[axis] = near
                pieces.append(Box(tuple(low), tuple(cap)))
                low[axis] = near
            if high[axis] > far:
                foot = low.copy()
                foot[axis] = far
                pieces.append(Box(tuple(foot), tuple(high)))
                high[axis] = far
        return pieces


def around(boxes: list[Box]) -> Box:
    """The smallest box that holds all of them.

    >>> around([Box((0, 0, 0), (1, 1, 1)), Box((5, 0, 0), (6, 2, 1))])
    Box(low=(0, 0, 0), high=(6, 2, 1))
    """
    low = map(min, zip(*[box.low for box in boxes], strict=True))
    high = map(max, zip(*[box.high for box in boxes], strict=True))
    return Box(tuple(low), tuple(high))


def what_remains(solid: list[Box], holes: list[Box]) -> list[Box]:
    """The boxes of `solid` after every one of `holes` is taken out.

    >>> what_remains([Box((0, 0, 0), (2, 2, 2))], [Box((0, 0, 0), (2, 2, 2))])
    []
    """
    for hole in holes:
        solid = [piece for box in solid for piece in box.without(hole)]
    return solid
