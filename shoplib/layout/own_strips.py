"""Parts of one width in strips of their own, so that each width is ripped over the whole length of a sheet."""

from collections.abc import Iterator
from dataclasses import replace

from shoplib.layout.pieces import Job, Laid, Placed, Rect


def own_strips(job: Job, laid: Laid) -> Iterator[Laid]:
    """The parts of one sheet laid again in strips that hold one width each, where the sheet has room for them.

    First as they are turned now, then, where some may be turned, with the long sides of those along the strips.

    >>> from shoplib.layout.pieces import Part, Stock
    >>> job = Job((Part("front", 30, 20, 2), Part("back", 30, 19, 2)), (Stock("ply", 62, 60),), kerf=2)
    >>> mixed = [Placed(0, Rect(0, 0, 30, 20)), Placed(1, Rect(32, 0, 30, 19)),
    ...          Placed(1, Rect(0, 22, 30, 19)), Placed(0, Rect(32, 22, 30, 20))]
    >>> [[one.at[:2] for one in again.placed] for again in own_strips(job, Laid(0, tuple(mixed)))]
    [[(0, 0), (0, 22), (32, 22), (32, 0)]]
    """
    turned = tuple(_along(job, one) for one in laid.placed)
    for placed in dict.fromkeys((laid.placed, turned)):
        found = _in_strips(job, laid, placed)
        if found is not None:
            yield found


def _along(job: Job, one: Placed) -> Placed:
    """A part that may be turned with its long side along the sheet."""
    if not job.parts[one.part].may_turn or one.at.w >= one.at.h:
        return one
    return replace(one, at=one.at._replace(w=one.at.h, h=one.at.w), turned=not one.turned)


def _in_strips(job: Job, laid: Laid, placed: tuple[Placed, ...]) -> Laid | None:
    """Wide strips first; in a strip long parts first, each in the first strip of its width that has room for it."""
    room, moved = job.stock[laid.stock].usable, {}
    y = room.y
    for width in sorted({one.at.h for one in placed}, reverse=True):
        places = [place for place, one in enumerate(placed) if one.at.h == width]
        ends: list[int] = []
        rows: list[tuple[int, int, int]] = []
        for place in sorted(places, key=lambda place: (-placed[place].at.w, placed[place].part)):
            long = placed[place].at.w
            row = next((n for n, end in enumerate(ends) if end + long <= room.x + room.w), len(ends))
            if row == len(ends):
                ends.append(room.x)
            rows.append((place, row, ends[row]))
            ends[row] += long + job.kerf
        for place, row, x in rows:
            at = placed[place].at
            moved[place] = Rect(x, y + row * (width + job.kerf), at.w, at.h)
        y += len(ends) * (width + job.kerf)
    if y - job.kerf > room.y + room.h or any(at.x + at.w > room.x + room.w for at in moved.values()):
        return None
    return replace(laid, placed=tuple(replace(one, at=moved[place]) for place, one in enumerate(placed)))
