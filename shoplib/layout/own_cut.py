"""A blade more at the end of pieces that their parts fill, so that each part has a cut of its own.

Where parts fill a piece exactly, one of them is only what the others leave, and all that blade and sheet are off is in
it. As long as wood that nothing is made of lies beside such a piece, it is cut a blade wider, and the offcut takes the
error.
"""

from itertools import pairwise

from shoplib.layout.pieces import Job
from shoplib.layout.slabs import KEPT, Item, Slab, span, within


def with_own_cuts(tree: Slab, items: tuple[Item, ...], job: Job) -> tuple[Item, ...]:
    """The same items, those with a blade more that would be left to size else and beside which there is wood.

    >>> from shoplib.layout.pieces import Rect
    >>> from shoplib.layout.slabs import taken_apart
    >>> items = (Item(Rect(0, 0, 20, 9), 0), Item(Rect(22, 0, 20, 9), 1), Item(Rect(0, 11, 30, 9), 2))
    >>> tree = taken_apart(Rect(0, 0, 90, 20), items, 0, 2)
    >>> [item.at.w for item in with_own_cuts(tree, items, Job((), (), kerf=2))]
    [20, 22, 30]
    """
    wanted = tree.wanted
    for slab, behind in zip(wanted, [*wanted[1:], None], strict=False):
        end = span(behind.at, tree.axis)[0] - job.kerf if behind else span(tree.at, tree.axis)[1]
        room = end - span(slab.at, tree.axis)[1]
        if room >= job.kerf and wants_room(slab, tree.axis, job):
            items = _with_a_blade(items, slab, tree.axis, job.kerf)
        items = with_own_cuts(slab, items, job)
    return items


def wants_room(slab: Slab, axis: int, job: Job) -> bool:
    """Whether a part in this piece gets its size along an axis only from what other cuts leave, and need not.

    Pieces too short for the fence get no cut more.
    """
    if not job.kerf or not _is_filled(slab, axis, job.kerf):
        return False
    return axis == 0 or not job.grained or not _cuts_short(slab, job)


def _is_filled(slab: Slab, axis: int, kerf: int) -> bool:
    """Whether parts fill the piece, or one right across it, but for the blades between them."""
    if slab.place is not None:
        return False
    if slab.axis != axis or not slab.cut:
        return any(_is_filled(part, axis, kerf) for part in slab.wanted)
    low, high = span(slab.at, axis)
    spans = [span(part.at, axis) for part in slab.wanted]
    return (spans[0][0], spans[-1][1]) == (low, high) and all(b[0] - a[1] == kerf for a, b in pairwise(spans))


def _cuts_short(slab: Slab, job: Job) -> bool:
    """Whether a rip more in this piece is one in a piece too short for the fence."""
    if slab.place is not None or (slab.axis == 1 and slab.cut):
        return slab.at.w < job.shortest
    return any(_cuts_short(part, job) for part in slab.wanted)


def _with_a_blade(items: tuple[Item, ...], slab: Slab, axis: int, kerf: int) -> tuple[Item, ...]:
    """The parts that reach to the end of this piece along the axis with a blade more, offcuts out of their way."""
    end = span(slab.at, axis)[1]
    made = []
    for item in items:
        ends = span(item.made, axis)[1] == end and slab.at.holds(item.made)
        if item.place == KEPT and span(item.at, axis)[0] == end + kerf:
            low, high = span(item.at, axis)
            item = Item(within(item.at, axis, low + kerf, high), KEPT)
        elif item.place != KEPT and ends:
            item = Item(item.at._replace(**{"wh"[axis]: item.made[axis + 2] + kerf}), item.place, item.made)
        made.append(item)
    return tuple(made)
