"""Layouts that leave one large piece whole: the piece is laid out like a part, as large as it can be.

Whoever lays out by hand pushes the parts together and keeps the rest. A search that looks at cost alone has no reason
to; so a room is added to the parts and made larger, in one direction at a time, until the parts no longer fit beside
it for the same cost.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace

from shoplib.layout.beam import Beam
from shoplib.layout.grown import grown
from shoplib.layout.offcuts import Least, room_beside
from shoplib.layout.pieces import Job, Laid, Layout, Part

WIDTH = 32
"""Width of the beam that tries whether the parts fit beside a room."""

GUIDES = ((0.1, 1.0), (0.0, 1.0))
"""How it compares unfinished layouts (see `Beam._score`)."""

SEEDS = 6
"""So many of the largest rooms that are known are made larger."""

SMALLEST = 16
"""A room is larger than this share of the sheet's side."""

NEAR = 64
"""The room is as large as can be but for this share of the sheet's side."""


def largest_room(job: Job, layout: Layout) -> tuple[int, int, int, int]:
    """The largest piece that no part lies on: square ticks, which sheet of the layout, length and width.

    >>> from shoplib.layout.pieces import Placed, Rect, Stock
    >>> job = Job((Part("side", 60, 30),), (Stock("ply", 100, 100),), kerf=2)
    >>> largest_room(job, Layout((Laid(0, (Placed(0, Rect(0, 0, 60, 30)),)),), 0, 0))
    (6800, 0, 100, 68)
    """
    best = 0, 0, 0, 0
    for number, laid in enumerate(layout.sheets):
        usable = job.stock[laid.stock].usable
        if usable.area - sum(one.at.area for one in laid.placed) > best[0]:
            for room in room_beside(usable, [one.at for one in laid.placed], job.kerf, Least(1, 1), best[0])[:1]:
                best = room.area, number, room.w, room.h
    return best


def with_room(
    job: Job, cost: int, known: Sequence[Layout], stop: Callable[[], bool]
) -> Iterator[Layout | None]:
    """Layouts that cost at most `cost` and leave a large piece whole, larger and larger; None for a try that failed.

    The rooms of layouts that are `known` are made larger, each in both directions. Pieces in the shop are in the job
    only as often as they are to be used: a room on one that is not is no gain.

    >>> from shoplib.layout.pieces import Placed, Rect, Stock
    >>> job = Job((Part("side", 60, 30, 2),), (Stock("ply", 100, 100, cost=1),))
    >>> places = Placed(0, Rect(0, 0, 60, 30)), Placed(0, Rect(40, 35, 60, 30))
    >>> *_, best = filter(None, with_room(job, 1, [Layout((Laid(0, places),), 1, 1)], lambda: False))
    >>> largest_room(job, best)[0]
    4000
    """
    rooms = sorted(((*largest_room(job, layout), layout) for layout in known), key=lambda room: -room[0])
    largest = rooms[0][0] if rooms else 0
    for stock, axis, fixed in dict.fromkeys(_sides(job, rooms)):
        full = high = job.stock[stock].usable[3 - axis]
        low = max(largest // fixed, high // SMALLEST)
        size = low + 1  # a room that is no larger is nothing new
        while low < size <= high and not stop():
            found = _beside(job, Part("room", *((size, fixed) if axis else (fixed, size))), cost, stop)
            yield found
            if found is None:
                high = size - 1
            else:
                low = size
                largest = max(largest, largest_room(job, found)[0])
            if high - low <= full // NEAR:
                break
            size = (low + high + 1) // 2


def _sides(job: Job, rooms: list) -> Iterator[tuple[int, int, int]]:
    """Stock, along which side the room's size is given, and that size: whole sides first, then those that are known."""
    by_area = sorted(range(len(job.stock)), key=lambda n: -job.stock[n].usable.area)
    for stock in by_area:
        if job.stock[stock].count != 0:
            for axis in (1, 0):
                yield stock, axis, job.stock[stock].usable[2 + axis]
    seen: set[tuple[int, int, int]] = set()
    for _, number, long, wide, layout in rooms:
        stock = layout.sheets[number].stock if layout.sheets else 0
        seed = stock, long, wide
        if seed not in seen and long and len(seen) < SEEDS:
            seen.add(seed)
            yield stock, 1, wide
            yield stock, 0, long


def _beside(job: Job, room: Part, cost: int, stop: Callable[[], bool]) -> Layout | None:
    """The parts laid out beside the room, which is taken away again; None where no way was found."""
    number = len(job.parts)
    g = grown(replace(job, parts=(*job.parts, room)))
    beam = Beam(g)
    for guide in GUIDES:
        for sheets in beam.run(WIDTH, guide, cost, stop):
            if g.missing is None or all(sheet.stock != g.missing for sheet in sheets):
                layout = g.layout(sheets, 0)
                laid = tuple(
                    replace(one, placed=tuple(place for place in one.placed if place.part != number))
                    for one in layout.sheets
                )
                if all(one.placed for one in laid):
                    return replace(layout, sheets=laid)
        if not beam.cut_short:
            return None
    return None


def sheet_by_sheet(
    job: Job, known: Sequence[Layout], stop: Callable[[], bool]
) -> Iterator[Layout | None]:
    """The layouts that are known with one sheet laid out anew, so that its room is larger; None for a failed try.

    >>> from shoplib.layout.pieces import Placed, Rect, Stock
    >>> job = Job((Part("side", 60, 30, 2),), (Stock("ply", 100, 100, cost=1),))
    >>> places = Placed(0, Rect(0, 0, 60, 30)), Placed(0, Rect(40, 35, 60, 30))
    >>> *_, best = filter(None, sheet_by_sheet(job, [Layout((Laid(0, places),), 1, 1)], lambda: False))
    >>> largest_room(job, best)[0]
    4000
    """
    rooms = sorted(((*largest_room(job, layout), layout) for layout in known), key=lambda room: -room[0])
    for _, number, _, _, layout in rooms[:SEEDS]:
        laid = layout.sheets[number]
        alone, numbers = _alone(job, laid)
        one = Layout((Laid(0, tuple(replace(place, part=numbers.index(place.part)) for place in laid.placed)),), 1, 1)
        for found in with_room(alone, 1, [one], stop):
            if found is None:
                yield None
                continue
            placed = tuple(replace(place, part=numbers[place.part]) for place in found.sheets[0].placed)
            yield replace(
                layout, sheets=(*layout.sheets[:number], replace(laid, placed=placed), *layout.sheets[number + 1 :])
            )


def _alone(job: Job, laid: Laid) -> tuple[Job, list[int]]:
    """One sheet and its parts as a job, and which parts of the whole job they are."""
    numbers = sorted({one.part for one in laid.placed})
    parts = tuple(
        replace(job.parts[number], count=sum(one.part == number for one in laid.placed)) for number in numbers
    )
    return Job(parts, (replace(job.stock[laid.stock], count=None, cost=1),), job.kerf), numbers
