"""A sheet taken apart into slabs, and each slab into slabs across: which cuts there can be, from places alone.

All cuts that one direction allows are made before the pieces are turned about. No more stages are needed than so:
whatever can be cut apart can still be when it has been cut once more.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import combinations
from typing import NamedTuple

from shoplib.layout.pieces import Job, Laid, LayoutError, Rect

KEPT = -1
"""Stands for a part where there is an offcut that is to stay in one piece."""


class Item(NamedTuple):
    """What must come out whole: a part, counted in `Laid.placed`, or an offcut (`KEPT`).

    `part` is where the part lies in it if it has wood for a cut of its own besides (`own_cut`).
    """

    at: Rect
    place: int
    part: Rect | None = None

    @property
    def made(self) -> Rect:
        """What is left when it has been cut to size."""
        return self.part or self.at

    def slab(self, axis: int) -> "Slab":
        """The piece that it fills, cut across `axis` first where it has to be cut to size.

        >>> Item(Rect(0, 0, 22, 9), 0, Rect(0, 0, 20, 9)).slab(0).slabs
        (Slab(at=Rect(x=0, y=0, w=20, h=9), axis=0, slabs=(), place=0, kept=False),)
        """
        if self.at == self.made:
            return Slab(self.at, place=self.place)
        inside = self._replace(at=within(self.at, axis, *span(self.made, axis)))
        return Slab(self.at, axis, (inside.slab(1 - axis),))


@dataclass(frozen=True, slots=True)
class Slab:
    """A piece of the sheet. Either one item fills it, or cuts across `axis` part it into `slabs`, low to high.

    Across axis 0 (x) means crosscuts, across axis 1 (y) rips. Between slabs, and beside the outer ones, there may be
    wood that nothing is made of. `kept`: nothing comes out of it but an offcut that stays whole. `wanted` are the slabs
    that parts come out of: an offcut is never cut to a size, it is what remains beside them.
    """

    at: Rect
    axis: int = 0
    slabs: tuple["Slab", ...] = ()
    place: int | None = None
    kept: bool = field(init=False, compare=False)
    wanted: tuple["Slab", ...] = field(init=False, compare=False, repr=False)

    def __post_init__(self) -> None:
        """Found once, for both are asked of each slab many times."""
        wanted = tuple(slab for slab in self.slabs if not slab.kept)
        object.__setattr__(self, "wanted", wanted)
        object.__setattr__(self, "kept", self.place == KEPT or (self.place is None and not wanted))

    @property
    def cut(self) -> bool:
        """Whether any cut across its axis is made in it."""
        wanted = self.wanted
        return len(wanted) > 1 or (len(wanted) == 1 and wanted[0].at != self.at)


def span(at: Rect, axis: int) -> tuple[int, int]:
    """From where to where a rectangle reaches along x (0) or y (1).

    >>> span(Rect(2, 3, 10, 20), 1)
    (3, 23)
    """
    return at[axis], at[axis] + at[axis + 2]


def within(at: Rect, axis: int, low: int, high: int) -> Rect:
    """The part of a rectangle between two places along an axis.

    >>> within(Rect(2, 3, 10, 20), 1, 8, 9)
    Rect(x=2, y=8, w=10, h=1)
    """
    return Rect(low, at.y, high - low, at.h) if axis == 0 else Rect(at.x, low, at.w, high - low)


def taken_apart(at: Rect, items: Sequence[Item], axis: int, kerf: int) -> Slab | None:
    """The piece with all that must come out of it, cut across `axis` first; None where items lock one another."""
    if len(items) == 1 and items[0].at == at:
        return items[0].slab(axis)
    groups = list(apart(items, axis, kerf))
    if len(groups) == 1 and len(items) > 1 and len(list(apart(items, 1 - axis, kerf))) == 1:
        return None
    slabs = []
    for low, high, group in groups:
        slab = taken_apart(within(at, axis, low, high), group, 1 - axis, kerf)
        if slab is None:
            return None
        slabs.append(slab)
    return Slab(at, axis, tuple(slabs))


def apart(items: Sequence[Item], axis: int, kerf: int) -> Iterator[tuple[int, int, list[Item]]]:
    """Groups of items that the blade passes between, each with its ends along the axis.

    >>> [(low, high) for low, high, _ in apart([Item(Rect(0, 0, 9, 4), 0), Item(Rect(0, 6, 9, 4), 1)], 1, 2)]
    [(0, 4), (6, 10)]
    """
    group: list[Item] = []
    start = reach = 0
    for item in sorted(items, key=lambda item: item.at[axis]):
        low, high = span(item.at, axis)
        if group and low - reach >= kerf:
            yield start, reach, group
            group = []
        if not group:
            start = reach = low
        group.append(item)
        reach = high if high > reach else reach
    yield start, reach, group


def usable(job: Job, laid: Laid) -> Rect:
    """The trimmed sheet; LayoutError where a part reaches over it or over another part."""
    trimmed = job.stock[laid.stock].usable
    ends = [span(trimmed, axis) for axis in (0, 1)]
    for one in laid.placed:
        for axis in (0, 1):
            low, high = span(one.at, axis)
            if low < ends[axis][0] or high > ends[axis][1]:
                raise LayoutError(f"{job.parts[one.part].name} reaches over the edge of the trimmed sheet.")
    for one, other in combinations(laid.placed, 2):
        a, b = one.at, other.at
        if a.x < b.x + b.w and b.x < a.x + a.w and a.y < b.y + b.h and b.y < a.y + a.h:
            raise LayoutError(f"{job.parts[one.part].name} and {job.parts[other.part].name} lie over one another.")
    return trimmed


def locked(job: Job, laid: Laid) -> LayoutError:
    """Which parts of a layout lock one another, as an error to raise."""
    group = stuck([Item(one.at, place) for place, one in enumerate(laid.placed)], job.kerf)
    assert group, "all parts come apart"
    names = sorted({job.parts[laid.placed[item.place].part].name for item in group})
    told = ", ".join(names[:4]) + (" and others" if len(names) > 4 else "")
    return LayoutError(f"No cut right through the piece, with room for the blade, frees any of these parts: {told}.")


def stuck(items: Sequence[Item], kerf: int) -> list[Item]:
    """Items that no cut right through the piece parts; none where all come apart.

    >>> wheel = [Rect(0, 0, 6, 4), Rect(6, 0, 4, 6), Rect(4, 6, 6, 4), Rect(0, 4, 4, 6)]
    >>> len(stuck([Item(at, 0) for at in wheel], 0)), stuck([Item(at, 0) for at in wheel[:3]], 0)
    (4, [])
    """
    waiting = [list(items)]
    while waiting:
        group = waiting.pop()
        for axis in (0, 1):
            groups = [some for _, _, some in apart(group, axis, kerf)]
            if len(groups) > 1:
                waiting += groups
                break
        else:
            if len(group) > 1:
                return group
    return []
