"""A convex outline run along one world axis, exact: what is left of a board where a cut is not a box.

Corners are whole ticks or fractions of them, so nothing is rounded. An outline lies in the two other axes in cyclic
order (along x: y, z; along y: z, x; along z: x, y) and turns anticlockwise there.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import pairwise
from typing import Self

from shoplib.model.box import Box
from shoplib.model.placement import Placement, directions

Number = int | Fraction
Corner = tuple[Number, Number]
Outline = tuple[Corner, ...]
Range = tuple[Number, Number]


def turned(outline: Sequence[Corner]) -> Outline:
    """The same outline, anticlockwise.

    Raises ValueError where it is not convex: a chisel cuts planes, so a hollow outline is several cuts.

    >>> turned([(0, 0), (0, 2), (2, 0)])
    ((2, 0), (0, 2), (0, 0))
    """
    corners = tuple(outline)
    turns = [_turn(*three) for three in zip(corners, corners[1:] + corners[:1], corners[2:] + corners[:2], strict=True)]
    if len(corners) < 3 or not (all(turn > 0 for turn in turns) or all(turn < 0 for turn in turns)):
        raise ValueError(f"the outline {corners} is not convex, or has a corner too many; make it several cuts.")
    return corners if turns[0] > 0 else corners[::-1]


def _turn(a: Corner, b: Corner, c: Corner) -> Number:
    return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0])


def twice_area(outline: Outline) -> Number:
    """Twice the area of an anticlockwise outline (square ticks).

    >>> twice_area(((0, 0), (2, 0), (0, 2)))
    4
    """
    return sum(a[0] * b[1] - a[1] * b[0] for a, b in pairwise((*outline, *outline[:1])))


def beside(outline: Outline, a: Number, b: Number, c: Number) -> Outline:
    """The part where a * p + b * q is no more than c; empty where that is no area.

    >>> beside(((0, 0), (2, 0), (2, 2), (0, 2)), 1, 0, 1)
    ((0, 0), (1, 0), (1, 2), (0, 2))
    """
    kept: list[Corner] = []
    over = [a * p + b * q - c for p, q in outline]
    if not over or max(over) <= 0:
        return outline
    if min(over) >= 0:
        return ()
    for at, (p, q) in enumerate(outline):
        after = (at + 1) % len(outline)
        if over[at] <= 0:
            kept.append((p, q))
        if over[at] * over[after] < 0:
            part = Fraction(over[at]) / (over[at] - over[after])
            kept.append((_plain(p + part * (outline[after][0] - p)), _plain(q + part * (outline[after][1] - q))))
    return tuple(kept) if len(kept) > 2 and twice_area(tuple(kept)) > 0 else ()


def _plain(value: Fraction) -> Number:
    return value.numerator if value.denominator == 1 else value


def outside(outline: Outline, hole: Outline) -> list[Outline]:
    """What is left of a convex outline outside another, as convex outlines that do not overlap.

    The largest part is split off first, so that few pieces are left: a peg planed round stays one.
    """
    sides = []
    for (p, q), (r, s) in pairwise((*hole, *hole[:1])):
        a, b = s - q, p - r  # the hole lies where a * x + b * y is no more than c
        sides.append((a, b, a * p + b * q))
    rest = []
    while sides and outline:
        parts = [beside(outline, -a, -b, -c) for a, b, c in sides]
        sizes = [twice_area(part) for part in parts]
        largest = sizes.index(max(sizes))
        if not sizes[largest]:
            break
        rest.append(parts[largest])
        outline = beside(outline, *sides.pop(largest))
    return rest


def between(outline: Outline, side: int, low: Number, high: Number) -> Outline:
    """The part whose first (0) or second (1) coordinate lies from `low` to `high`; empty where that is no area."""
    a, b = (1, 0) if side == 0 else (0, 1)
    part = beside(outline, a, b, high)
    return beside(part, -a, -b, -low) if part else ()


def extent(outline: Iterable[Corner], side: int) -> Range:
    """How far it reaches along its first (0) or second (1) coordinate."""
    values = [corner[side] for corner in outline]
    return min(values), max(values)


@dataclass(frozen=True, slots=True)
class Prism:
    """A convex, anticlockwise `outline` run from `low` to `high` along a world axis (0, 1, 2)."""

    axis: int
    outline: Outline
    low: Number
    high: Number
    _reaches: tuple[Range, Range, Range] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        # The dry-fit of many fingers asks each solid a hundred times how far it reaches.
        along = (self.low, self.high), extent(self.outline, 0), extent(self.outline, 1)
        object.__setattr__(self, "_reaches", along)

    @classmethod
    def of(cls, box: Box, axis: int) -> Self:
        """A box as an outline run along this axis.

        >>> Prism.of(Box((0, 0, 0), (1, 2, 3)), 0).outline
        ((0, 0), (2, 0), (2, 3), (0, 3))
        """
        p, q = (axis + 1) % 3, (axis + 2) % 3
        (a, b), (c, d) = (box.low[p], box.low[q]), (box.high[p], box.high[q])
        return cls(axis, ((a, b), (c, b), (c, d), (a, d)), box.low[axis], box.high[axis])

    @property
    def volume(self) -> Fraction:
        """Exact, in cubic ticks.

        >>> Prism(2, ((0, 0), (2, 0), (0, 2)), 0, 10).volume
        Fraction(20, 1)
        """
        return Fraction(twice_area(self.outline)) * (self.high - self.low) / 2

    def reach(self, axis: int) -> Range:
        """From where to where it reaches along a world axis."""
        return self._reaches[(axis - self.axis) % 3]

    def _side(self, axis: int) -> int:
        return (axis - self.axis - 1) % 3

    def placed(self, placement: Placement) -> Self:
        """A solid of a board's own coordinates, as it stands in the cabinet.

        >>> Prism(0, ((0, 0), (2, 0), (0, 2)), 0, 10).placed(Placement((0, 0, 5), ("+z", "+y", "-x")))
        Prism(axis=2, outline=((0, 0), (0, 2), (-2, 0)), low=5, high=15)
        """
        axis, sign = directions(placement.axes)[self.axis]
        corners = []
        for p, q in self.outline:
            own = [0, 0, 0]
            own[(self.axis + 1) % 3], own[(self.axis + 2) % 3] = p, q
            world = placement.point_to_world(tuple(own))
            corners.append((world[(axis + 1) % 3], world[(axis + 2) % 3]))
        ends = sorted(placement.origin[axis] + sign * at for at in (self.low, self.high))
        outline = tuple(corners)
        return Prism(axis, outline if twice_area(outline) > 0 else outline[::-1], *ends)

    def along(self, axis: int) -> Self | None:
        """The same solid as an outline run along another axis; None where it is no box."""
        if axis == self.axis:
            return self
        corners = {(p, q) for p in extent(self.outline, 0) for q in extent(self.outline, 1)}
        if set(self.outline) != corners:
            return None
        low, high = zip(*map(self.reach, range(3)), strict=True)
        return Prism.of(Box(low, high), axis)

    def without(self, hole: Self) -> list[Self]:
        """What is left when a prism along the same axis is taken out, as prisms that do not overlap."""
        low, high = max(self.low, hole.low), min(self.high, hole.high)
        if low >= high or not _meet(self.outline, hole.outline):
            return [self]
        beyond = outside(self.outline, hole.outline)
        rest = [Prism(self.axis, outline, low, high) for outline in beyond]
        rest += [Prism(self.axis, self.outline, a, b) for a, b in ((self.low, low), (high, self.high)) if a < b]
        return rest

    def inside(self, box: Box) -> Self | None:
        """The part that lies in the box, or None."""
        outline = self.outline
        for side in (0, 1):
            axis = (self.axis + 1 + side) % 3
            outline = between(outline, side, box.low[axis], box.high[axis]) if outline else ()
        low, high = max(self.low, box.low[self.axis]), min(self.high, box.high[self.axis])
        return Prism(self.axis, outline, low, high) if outline and low < high else None


def _past_each_other(one: Prism, other: Prism, axis: int) -> bool:
    """Whether the boxes round the two lie clear of each other beside the axis: then no move along it brings them in."""
    spans = [(one.reach(a), other.reach(a)) for a in range(3) if a != axis]
    return any(a >= d or c >= b for (a, b), (c, d) in spans)


def shared_shifts(one: Prism, other: Prism, axis: int) -> Range | None:
    """How far `one` would be moved along the world axis to share wood with `other`: all between the two, open.

    None where it never does. They share wood where they stand if 0 lies between.

    >>> shared_shifts(Prism.of(Box((0, 0, 0), (1, 1, 1)), 0), Prism.of(Box((3, 0, 0), (5, 1, 1)), 0), 0)
    (2, 5)
    """
    if _past_each_other(one, other, axis):
        return None
    for seen in (one.axis, other.axis):
        first, second = one.along(seen), other.along(seen)
        if first is not None and second is not None:
            return _same_way(first, second, axis)
    return _crosswise(one, other, axis)


def _same_way(one: Prism, other: Prism, axis: int) -> Range | None:
    if axis != one.axis:
        if one.low >= other.high or other.low >= one.high:
            return None
        return _slides(one.outline, other.outline, one._side(axis))
    if not _meet(one.outline, other.outline):
        return None
    return other.low - one.high, other.high - one.low


def _meet(one: Outline, other: Outline) -> bool:
    """Whether two convex outlines share some area: no side of either has all of the other beyond it."""
    return not _parted(one, other) and not _parted(other, one)


def _parted(outline: Outline, other: Outline) -> bool:
    return any(
        all((r - p) * (d - q) <= (s - q) * (c - p) for c, d in other)
        for (p, q), (r, s) in pairwise((*outline, *outline[:1]))
    )


def _slides(one: Outline, other: Outline, side: int) -> Range | None:
    """The shifts along one coordinate: widest where a corner of either lies, for between corners edges are straight."""
    (a, b), (c, d) = extent(one, 1 - side), extent(other, 1 - side)
    low, high = max(a, c), min(b, d)
    if low >= high:
        return None
    if _is_level(one) and _is_level(other):
        (a, b), (c, d) = extent(one, side), extent(other, side)
        return c - b, d - a
    places = {low, high, *(corner[1 - side] for corner in (*one, *other) if low < corner[1 - side] < high)}
    spans = [(_span_at(one, side, at), _span_at(other, side, at)) for at in places]
    return min(theirs[0] - ours[1] for ours, theirs in spans), max(theirs[1] - ours[0] for ours, theirs in spans)


def _is_level(outline: Outline) -> bool:
    """Whether it is a rectangle whose edges run along the axes, as nearly all pieces are."""
    if len(outline) != 4:
        return False
    (a, b), (c, d), (e, f), (g, h) = outline
    return (a == c and d == f and e == g and h == b) or (b == d and c == e and f == h and g == a)


def _span_at(outline: Outline, side: int, at: Number) -> Range:
    """From where to where the outline reaches along `side` where its other coordinate is `at`."""
    found = []
    for one, other in pairwise((*outline, *outline[:1])):
        (p, s), (q, t) = (one[side], one[1 - side]), (other[side], other[1 - side])
        if s == at:
            found.append(p)
        if (s - at) * (t - at) < 0:
            found.append(_plain(p + Fraction(at - s) / (t - s) * (q - p)))
    return min(found), max(found)


def _crosswise(one: Prism, other: Prism, axis: int) -> Range | None:
    """Outlines run along two different axes: they can only meet at a place along the third where both reach."""
    a, b = one.axis, other.axis
    third = 3 - a - b
    ours = between(one.outline, one._side(b), other.low, other.high)
    theirs = between(other.outline, other._side(a), one.low, one.high)
    if axis == third:
        if not ours or not theirs:
            return None
        (k, m), (p, q) = extent(ours, one._side(third)), extent(theirs, other._side(third))
        return p - m, q - k
    if axis == a:
        part = between(other.outline, other._side(third), *extent(ours, one._side(third))) if ours else ()
        if not part:
            return None
        low, high = extent(part, other._side(a))
        return low - one.high, high - one.low
    part = between(one.outline, one._side(third), *extent(theirs, other._side(third))) if theirs else ()
    if not part:
        return None
    low, high = extent(part, one._side(b))
    return other.low - high, other.high - low
