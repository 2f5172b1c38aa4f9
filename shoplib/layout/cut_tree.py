"""From where the parts of a sheet lie to the cuts that free them, one after the other.

The same places can often be cut in several ways: rips first or crosscuts first, a large offcut taken off before the
rest is cut up, or the sheet parted near its middle first. Each is worked out, and the shop's cost decides.
"""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction
from functools import cache, lru_cache
from itertools import pairwise
from operator import itemgetter

from shoplib.layout.longer_first import LongerFirst
from shoplib.layout.offcuts import LEAST, Least, room_beside, worth_keeping
from shoplib.layout.own_cut import wants_room, with_own_cuts
from shoplib.layout.pieces import Job, Laid, Rect
from shoplib.layout.sawn import SawCut, Sawn
from shoplib.layout.set_by import with_awkward
from shoplib.layout.shop_cost import ShopCost, Wish, best_of
from shoplib.layout.slabs import KEPT, Item, Slab, locked, span, taken_apart, usable, within

_Span = tuple[int, int]
_Split = tuple[_Span, _Span, _Span | None]
"""A piece from end to end, what is between fence and blade, and what else is left of it."""

_SMALLER = Fraction(3, 4)
"""Where other ways to cut are asked for, offcuts of this share of the largest are tried to be kept whole as well."""

_OFFCUTS_TRIED = 3
"""So many large offcuts are tried to be kept whole, one at a time."""


def sawn(job: Job, laid: Laid, wish: Wish | None = None, least: Least = LEAST) -> Sawn:
    """The cuts that free the parts of one sheet, and what is left of it.

    Of the ways to cut, the one with the fewest stages is taken, then with the fewest settings, then with the
    largest offcut of at least the size `least`; or first of all the one that does best in what is wished. Raises
    LayoutError where parts lie over one another or over the trim, or where no cuts from edge to edge free them all.

    >>> from shoplib.layout.pieces import Part, Placed, Stock
    >>> job = Job((Part("shelf", 60, 20, 2),), (Stock("ply", 100, 50),), kerf=2)
    >>> found = sawn(job, Laid(0, (Placed(0, Rect(0, 0, 60, 20)), Placed(0, Rect(0, 22, 60, 20)))))
    >>> [(cut.kind, cut.fence, cut.finishes) for cut in found.cuts]
    [('crosscut', 60, ()), ('rip', 20, (0,)), ('rip', 20, (1,))]
    >>> found.offcuts, found.kerf
    ((Rect(x=62, y=0, w=38, h=50), Rect(x=0, y=44, w=60, h=6)), 340)
    """
    return _best(job, laid, wish, least)[1]


def other_ways(job: Job, laid: Laid, wish: Wish | None = None, least: Least = LEAST) -> tuple[Sawn, ...]:
    """Other cuts that free the same parts and leave other pieces, the best first: what is left may be wanted later.

    >>> from shoplib.layout.pieces import Part, Placed, Stock
    >>> job = Job((Part("back", 60, 30),), (Stock("ply", 100, 50),))
    >>> laid = Laid(0, (Placed(0, Rect(0, 0, 60, 30)),))
    >>> sawn(job, laid).offcuts[0], [found.offcuts[0] for found in other_ways(job, laid)]
    (Rect(x=60, y=0, w=40, h=50), [Rect(x=0, y=30, w=100, h=20)])
    """
    best, found = _best(job, laid, wish, least)[1], {}
    ways = _all_ways(job, laid, wish, least, smaller=_SMALLER)
    for _, cuts, _ in sorted(ways, key=lambda way: way[0].ranked(wish)):
        found.setdefault(cuts.offcuts, cuts)
    return tuple(cuts for offcuts, cuts in found.items() if offcuts != best.offcuts)


def tidied(
    job: Job, laid: Laid, wish: Wish | None = None, least: Least = LEAST, all_at_once: bool = True
) -> Laid:
    """The same cuts with equal strips side by side, wide ones first, and what is left at the far edges.

    It lies on the saw as easily, and needs no more settings: a fence that has been set is not set again for a strip
    that lies behind others. Pieces that are best cut as one are found first (`longer_first`) unless it is done by the
    cuts that each direction allows `all_at_once`.

    >>> from shoplib.layout.pieces import Part, Placed, Stock
    >>> job = Job((Part("side", 50, 10, 2), Part("shelf", 50, 12)), (Stock("ply", 50, 40),), kerf=1)
    >>> mixed = [Placed(0, Rect(0, 0, 50, 10)), Placed(1, Rect(0, 11, 50, 12)), Placed(0, Rect(0, 24, 50, 10))]
    >>> [(one.part, one.at.y) for one in tidied(job, Laid(0, tuple(mixed))).placed]
    [(0, 13), (1, 0), (0, 24)]
    """
    if not laid.placed:
        return laid
    tree = _best(job, laid, wish, least, all_at_once)[2]
    moved: dict[int, Rect] = {}
    _settle(tree, tree.at, job, laid, moved)
    return replace(laid, placed=tuple(replace(one, at=moved[place]) for place, one in enumerate(laid.placed)))


_Way = tuple[ShopCost, Sawn, Slab]
"""What a way to cut costs, the cuts, and the tree that they come from."""


@lru_cache(maxsize=64)
def _best(job: Job, laid: Laid, wish: Wish | None, least: Least, all_at_once: bool = False) -> _Way:
    return best_of(_all_ways(job, laid, wish, least, all_at_once), itemgetter(0), wish)


def _all_ways(
    job: Job, laid: Laid, wish: Wish | None, least: Least, all_at_once: bool = False, smaller: Fraction = Fraction(1)
) -> list[_Way]:
    """The ways to cut a sheet; offcuts are kept whole if they are larger than `smaller` of what is left without it."""
    stock = job.stock[laid.stock]
    whole, trimmed = Rect(0, 0, stock.length, stock.width), usable(job, laid)
    if not laid.placed:
        found = Sawn((), (whole,), 0, 0)
        return [(one_sheet(found, least), found, Slab(whole))]
    trims = tuple(trim_cuts(whole, trimmed, laid))

    longer = LongerFirst(job)

    @cache
    def trees(items: tuple[Item, ...]) -> tuple[Slab, ...]:
        """Either direction first, by all cuts that it allows or long pieces before short ones."""
        found = [taken_apart(trimmed, items, axis, job.kerf) for axis in (0, 1)]
        if not all_at_once:
            found += [longer.taken_apart(trimmed, items, axis) for axis, tree in enumerate(found) if tree]
        return tuple(dict.fromkeys(filter(None, found)))

    def ways(items: tuple[Item, ...]) -> Iterator[_Way]:
        """For light pieces, also parted near the middle first."""
        for tree in trees(items):
            usual = Counter(_settings(tree))
            for parted in (False, True) if wish == "light pieces" else (False,):
                cuts = _in_stages(tree, job, usual, parted, laid)
                found = with_awkward(job, laid, _swept(whole, (*trims, *cuts), laid))
                yield one_sheet(found, least), found, tree

    def with_room(items: tuple[Item, ...]) -> Iterator[tuple[Item, ...]]:
        yield from dict.fromkeys(with_own_cuts(tree, items, job) for tree in trees(items))

    exact = tuple(Item(one.at, place) for place, one in enumerate(laid.placed))
    each = [(way, items) for items in with_room(exact) for way in ways(items)]
    if not each:
        raise locked(job, laid)
    items = best_of(each, lambda one: one[0][0], wish)[1]
    found = [way for way, _ in each]
    offcut = int(smaller * min(cost.offcut for cost, *_ in found))
    kept = 0
    for room in room_beside(trimmed, [item.at for item in items], job.kerf, least, offcut):
        more = [way for beside in with_room((*items, Item(room, KEPT))) for way in ways(beside)]
        found += more
        kept += bool(more)  # some rooms lie so that no cuts from edge to edge free them
        if kept == _OFFCUTS_TRIED:
            break
    return found


def one_sheet(found: Sawn, least: Least = LEAST) -> ShopCost:
    """What one sheet costs at the saw, every setting of a stage counted once."""
    cuts = [cut for cut in found.cuts if cut.kind != "trim"]
    rips = {(cut.stage, cut.fence) for cut in cuts if cut.kind == "rip"}
    crosscuts = {(cut.stage, cut.fence) for cut in cuts if cut.kind == "crosscut"}
    kept = worth_keeping(found.offcuts, least)
    return ShopCost(
        offcut=kept[0].area if kept else 0,
        rips=len(rips),
        settings=len(rips) + len(crosscuts),
        stages=cuts[-1].stage if cuts else 0,
        heaviest=max((piece.area for cut in cuts[:1] for piece in (cut.off, cut.left) if piece), default=0),
        cuts=len(cuts),
        short=found.short,
        skims=found.skims,
        left_to_size=found.left_to_size,
    )


def _swept(whole: Rect, cuts: tuple[SawCut, ...], laid: Laid) -> Sawn:
    """The cuts made in thought: what is left that is no part, and what the blade takes."""
    pieces, kerf, trim = {whole}, 0, 0
    for cut in cuts:
        pieces.remove(cut.piece)
        made = [piece for piece in (cut.off, cut.left) if piece is not None]
        pieces.update(made)
        lost = cut.piece.area - sum(piece.area for piece in made)
        if cut.kind == "trim":
            trim += lost
        else:
            kerf += lost
    offcuts = pieces - {one.at for one in laid.placed}
    return Sawn(cuts, tuple(sorted(offcuts, key=lambda offcut: (-offcut.area, offcut))), kerf, trim)


def trim_cuts(whole: Rect, trimmed: Rect, laid: Laid) -> Iterator[SawCut]:
    """The bought edges off, long ones first: each cut keeps what is between fence and blade."""
    places = {one.at: place for place, one in enumerate(laid.placed)}
    piece = whole
    for axis in (1, 0):
        low, high = span(trimmed, axis)
        for kept in ((low, span(piece, axis)[1]), (low, high)):
            off = within(piece, axis, *kept)
            if off != piece:
                done = (places[off],) if off in places else ()
                yield SawCut("trim", 0, piece, kept[1] - kept[0], off, None, done)
                piece = off


def _in_stages(tree: Slab, job: Job, usual: Counter, parted: bool, laid: Laid) -> Iterator[SawCut]:
    """All cuts of the first stage, then all of the next."""
    places = {one.at: place for place, one in enumerate(laid.placed)}
    stage, level = 0, [tree]
    while level:
        stage += any(slab.cut for slab in level)
        below = []
        for slab in level:
            if slab.cut:
                for piece, off, left in _splits(slab, job, usual, parted and slab is tree, laid):
                    at, kept = within(slab.at, slab.axis, *piece), within(slab.at, slab.axis, *off)
                    rest = None if left is None else within(slab.at, slab.axis, *left)
                    done = tuple(places[made] for made in (kept, rest) if made in places)
                    yield SawCut("crosscut" if slab.axis == 0 else "rip", stage, at, off[1] - off[0], kept, rest, done)
            below += slab.wanted
        level = below


def _splits(slab: Slab, job: Job, usual: Counter, parted: bool, laid: Laid) -> Iterator[_Split]:
    """The cuts across one piece, in their order."""
    low, high = span(slab.at, slab.axis)
    spans, kerf = [span(part.at, slab.axis) for part in slab.wanted], job.kerf

    def one_by_one(low: int, high: int, slabs: Sequence[Slab]) -> Iterator[_Split]:
        spans, waits = [span(part.at, slab.axis) for part in slabs], _first_that_waits(slabs, job, laid)
        return _one_by_one(low, high, spans, kerf, _left_over(low, high, spans, job, usual, slab.axis, waits))

    ends = [n for n, (_, end) in enumerate(spans, start=1) if end < high] if parted else []
    first = min(ends, key=lambda n: max(spans[n - 1][1] - low, high - spans[n - 1][1] - kerf), default=0)
    if not first:
        yield from one_by_one(low, high, slab.wanted)
        return
    end = spans[first - 1][1]
    rest = (end + kerf, high) if end + kerf < high else None
    yield (low, high), (low, end), rest
    yield from one_by_one(low, end, slab.wanted[:first])
    if spans[first:]:
        yield from one_by_one(end + kerf, high, slab.wanted[first:])


def _left_over(
    low: int, high: int, spans: Sequence[_Span], job: Job, usual: Counter, axis: int, waits: int
) -> tuple[int, int]:
    """So many slabs are taken off from the low end, and those from the second number on from the high end.

    What remains between them is the widest place that nothing comes out of, so that it takes what blade and sheet are
    off. Where slabs fill the piece, it is the one whose size the fewest other parts of the job have: parts that are
    left to size are equal to each other at least, and none that must match them is cut elsewhere. Slabs before `waits`
    hold parts that are cut before those of the last ones, so that they come off first, from the low end.
    """
    beside = [spans[0][0] - low, *(b[0] - a[1] - job.kerf for a, b in pairwise(spans)), high - spans[-1][1]]
    if any(beside):
        behind = waits if any(beside[waits:]) else 0
        widest = max(range(behind, len(beside)), key=lambda n: (beside[n], n))
        return widest, widest
    sizes = [end - start for start, end in spans]
    in_job = Counter(size for part in job.parts for size in (part.length, part.width) for _ in range(part.count))
    rarest = min(range(waits, len(spans)), key=lambda n: (usual[axis, sizes[n]], in_job[sizes[n]], -n))
    return rarest, rarest + 1


def _first_that_waits(slabs: Sequence[Slab], job: Job, laid: Laid) -> int:
    """Where the slabs begin of which all is cut in the last turn; 0 where one cut before that lies behind them."""
    turns = [_turn(slab, job, laid) for slab in slabs]
    first = max((n for n, turn in enumerate(turns, start=1) if turn < max(turns)), default=0)
    return first if first < len(slabs) else 0


def _turn(slab: Slab, job: Job, laid: Laid) -> int:
    """The turn at the saw in which a piece is first wanted."""
    return min(job.parts[part].turn for part in _made_of(slab, laid) if part != KEPT)


def _one_by_one(
    low: int, high: int, spans: Sequence[_Span], kerf: int, left_over: tuple[int, int]
) -> Iterator[_Split]:
    """Slabs taken off from both ends, so that what needs no setting of its own is left over in the middle."""
    from_low, from_high = spans[: left_over[0]], spans[left_over[1] :]
    for start, end in from_low:
        if low < start:  # what is beside the slab goes first, the slab's own side against the fence
            yield (low, high), (start, high), ((low, start - kerf) if start - kerf > low else None)
            low = start
        if end < high:
            rest = (end + kerf, high) if end + kerf < high else None
            yield (low, high), (start, end), rest
            low = end + kerf
    for start, end in reversed(from_high):
        if end < high:
            yield (low, high), (low, end), ((end + kerf, high) if end + kerf < high else None)
            high = end
        if low < start:
            rest = (low, start - kerf) if low < start - kerf else None
            yield (low, high), (start, end), rest
            high = start - kerf


def _settings(slab: Slab) -> Iterator[tuple[int, int]]:
    """The sizes that slabs are cut to, with the axis across which they lie."""
    for part in slab.slabs:
        yield slab.axis, part.at[slab.axis + 2]
        yield from _settings(part)


def _settle(slab: Slab, into: Rect, job: Job, laid: Laid, moved: dict[int, Rect]) -> None:
    """Give every part under this piece its place, once the piece lies at the corner of `into` and has room there."""
    if slab.place is not None:
        if slab.place != KEPT:
            moved[slab.place] = slab.at._replace(x=into.x, y=into.y)
        return
    axis, parts = slab.axis, _in_order(slab, job, laid)
    low, end = span(into, axis)
    room = end - low - _size(slab, axis, job, laid)
    for part in parts:
        high = end if part is parts[-1] else low + part.at[axis + 2]
        _settle(part, within(into, axis, low, high), job, laid, moved)
        low += part.at[axis + 2] + job.kerf
        if room >= job.kerf and wants_room(part, axis, job):
            low, room = low + job.kerf, room - job.kerf


def _in_order(slab: Slab, job: Job, laid: Laid) -> list[Slab]:
    """What parts come out of: what is cut first, of that wide pieces first, and equal ones side by side."""

    def key(part: Slab) -> tuple:
        return _turn(part, job, laid), -_cut_down_to(part, job), -part.at[slab.axis + 2], _made_of(part, laid)

    return sorted(slab.wanted, key=key)


def _size(slab: Slab, axis: int, job: Job, laid: Laid) -> int:
    """How far the parts of a piece reach along an axis once they are in order."""
    if slab.place is not None:
        return slab.at[axis + 2]
    if slab.axis != axis:
        return max(_size(part, axis, job, laid) for part in slab.wanted)
    *others, last = _in_order(slab, job, laid)
    return sum(part.at[axis + 2] + job.kerf for part in others) + _size(last, axis, job, laid)


def _cut_down_to(slab: Slab, job: Job) -> int:
    """How wide a piece is, or what it is cut down to by one awkward cut: such pieces lie together, to be cut as one."""
    width = slab.at[slab.axis + 2]
    if len(slab.wanted) != 1:
        return width
    size = slab.wanted[0].at[slab.axis + 2]
    is_short = job.grained and slab.axis == 1 and slab.at.w < job.shortest
    return size if size < width and (is_short or width - size < job.kerf) else width


def _made_of(slab: Slab, laid: Laid) -> list[int]:
    """The kinds of parts that come out of a piece."""
    if slab.place is not None:
        return [KEPT if slab.place == KEPT else laid.placed[slab.place].part]
    return sorted(part for below in slab.slabs for part in _made_of(below, laid))
