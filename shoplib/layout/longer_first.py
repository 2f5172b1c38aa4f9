"""A sheet taken apart so that few cuts are awkward: several pieces are cut while they are still one longer piece.

Where slabs lie end to end that all must be cut to one width, they are best ripped before they are parted: one long rip
instead of several short ones, and the pieces are equally wide.
"""

from typing import NamedTuple

from shoplib.layout.pieces import Job, Rect
from shoplib.layout.slabs import Item, Slab, apart, span, within

_Items = tuple[Item, ...]

class _Found(NamedTuple):
    """A tree with how many of its cuts are awkward, and how many there are."""

    awkward: int
    cuts: int
    slab: Slab


class LongerFirst:
    """Takes pieces apart for one job, and keeps what it found: equal pieces are met over and over.

    >>> from shoplib.layout.pieces import Part
    >>> shelves = (Item(Rect(0, 0, 30, 20), 0), Item(Rect(32, 0, 30, 19), 1), Item(Rect(64, 0, 30, 19), 2))
    >>> job = Job((Part("shelf", 30, 20),), (), kerf=2, shortest=40)
    >>> [slab.at for slab in LongerFirst(job).taken_apart(Rect(0, 0, 94, 20), shelves, 0).slabs]
    [Rect(x=0, y=0, w=30, h=20), Rect(x=32, y=0, w=62, h=20)]
    """

    def __init__(self, job: Job) -> None:
        self.job = job
        self.known: dict[tuple[Rect, _Items, int], _Found | None] = {}

    def taken_apart(self, at: Rect, items: _Items, axis: int) -> Slab | None:
        """The piece with all that must come out of it, cut across `axis` first; None where items lock one another.

        Unlike `slabs.taken_apart` it does not make all cuts of one direction at once where fewer cuts are awkward
        (`set_by.short`, `set_by.skims`) if neighbours stay together for one more cut of the other direction.
        """
        found = self._taken(at, items, axis)
        return found and found.slab

    def _taken(self, at: Rect, items: _Items, axis: int) -> _Found | None:
        key = at, items, axis
        if key not in self.known:
            self.known[key] = self._found(at, items, axis)
        return self.known[key]

    def _found(self, at: Rect, items: _Items, axis: int) -> _Found | None:
        if len(items) == 1 and items[0].at == at:
            own_cuts = sum(a != b for a, b in zip(at[2:], items[0].made[2:], strict=True))
            return _Found(0, own_cuts, items[0].slab(axis))
        job = self.job
        groups = [(low, high, tuple(group)) for low, high, group in apart(items, axis, job.kerf)]
        if len(groups) == 1 and len(items) > 1 and len(list(apart(items, 1 - axis, job.kerf))) == 1:
            return None
        singly = [self._taken(within(at, axis, low, high), group, 1 - axis) for low, high, group in groups]
        if None in singly:
            return None
        ways = [_put_together(job, at, axis, singly)]
        if ways[0].awkward and len(groups) > 1:
            ways.append(_put_together(job, at, axis, self._in_blocks(at, axis, groups, singly)))
        return min(ways, key=lambda way: way[:2])

    def _in_blocks(
        self, at: Rect, axis: int, groups: list[tuple[int, int, _Items]], singly: list[_Found]
    ) -> list[_Found]:
        """The groups from one end of the piece to the other, some of them together, with the fewest awkward cuts."""
        end = span(at, axis)[1]
        best: list[tuple[int, int, list[_Found]]] = [(0, 0, [])]
        for n in range(1, len(groups) + 1):
            one = singly[n - 1]
            ways = [(best[n - 1][0] + one.awkward, best[n - 1][1] + one.cuts, [*best[n - 1][2], one])]
            for first in range(n):
                # What is left over at the end of the piece stays with its last block.
                block = within(at, axis, groups[first][0], end if n == len(groups) else groups[n - 1][1])
                if block == at or not all(one.awkward for one in singly[first:n]):
                    continue
                items = tuple(item for _, _, group in groups[first:n] for item in group)
                if _parts(self.job, block, items, 1 - axis):
                    together = self._taken(block, items, 1 - axis)
                    before = best[first]
                    ways.append((before[0] + together.awkward, before[1] + together.cuts, [*before[2], together]))
            best.append(min(ways, key=lambda way: way[:2]))
        return best[-1][2]


def _parts(job: Job, at: Rect, items: _Items, axis: int) -> bool:
    """Whether a cut across this axis is made in the piece."""
    groups = list(apart(items, axis, job.kerf))
    return len(groups) > 1 or groups[0][:2] != span(at, axis)


def _put_together(job: Job, at: Rect, axis: int, found: list[_Found]) -> _Found:
    """The piece cut into these, its own cuts counted with theirs."""
    slab = Slab(at, axis, tuple(one.slab for one in found))
    awkward, cuts = sum(one.awkward for one in found), sum(one.cuts for one in found)
    if slab.cut:
        low, high = span(at, axis)
        wanted = [span(part.at, axis) for part in slab.wanted]
        beside = (wanted[0][0] - low, high - wanted[-1][1])
        own = len(wanted) - 1 + sum(gap > 0 for gap in beside)
        is_short = job.grained and axis == 1 and at.w < job.shortest
        awkward += own * is_short + sum(0 < gap < job.kerf for gap in beside)
        cuts += own
    return _Found(awkward, cuts, slab)
