"""A layout made by hand, made again with another kerf or trim."""

from dataclasses import replace

from shoplib.layout import hand_refused as no
from shoplib.layout.by_hand import SIDES, begin, cut_off, lay
from shoplib.layout.hand import Hand, Key, Refused, Step
from shoplib.measure import write_brief

_Where = tuple[int, str | int]
"""A place by its key; or new stock, as the step that took it and the number of the stock."""


def refitted(
    hand: Hand, *, kerf: int | None = None, trim: int | None = None
) -> tuple[Hand, tuple[str, ...]] | Refused:
    """The same parts laid again, step by step, with this kerf, or this trim on all edges of all stock.

    None leaves it as it is. What does not fit any more goes back to the list, which is said once for each kind of
    part, and what lay beside it moves up.

    >>> from shoplib.layout.pieces import Job, Part, Stock
    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> job = Job((Part("side", 48 * INCH, 15 * INCH, 2),), (Stock("plywood", 96 * INCH, 48 * INCH),))
    >>> both = lay(lay(begin(job, INCH_STYLE), 0, 0), 0, "a")
    >>> again, told = refitted(both, kerf=INCH // 8)
    >>> again.to_lay, told[0][-46:]
    ((1,), 'it is 1/8 in too long. It is back in the list.')
    """
    refused = _cannot_be(hand, kerf, trim)
    if refused:
        return refused
    job = hand.job if kerf is None else replace(hand.job, kerf=kerf)
    if trim is not None:
        job = replace(job, stock=tuple(replace(each, trim_ends=trim, trim_edges=trim) for each in job.stock))
    again = begin(job, hand.style)
    now: dict[Key, _Where] = {}  # where a place of before is by now
    back: dict[int, list[str]] = {}
    for number, step in enumerate(hand.steps):
        where = now[step.where] if isinstance(step.where, tuple) else (number, step.where)
        moved = _made_again(again, step, where)
        if isinstance(moved, Refused):
            # What lay beside it takes its place.
            now |= {(number, side): where for side in SIDES}
            if step.part is not None:
                back.setdefault(step.part, []).append(moved.said)
            continue
        new = len(again.steps)
        # Whatever else was to move up into the place that is used now, moves on beside what lies there.
        now |= {old: (new, old[1]) for old, there in now.items() if there == where}
        now |= {(number, side): (new, side) for side in SIDES}
        again = moved
    told = []
    for first, *more in back.values():
        what = f"{len(more) + 1} of them are" if more else "It is"
        told.append(f"{first} {what} back in the list.")
    return replace(again, before=hand), tuple(told)


def _made_again(again: Hand, step: Step, where: _Where) -> Hand | Refused:
    if isinstance(where[1], int):
        there: str | int = where[1]
    else:
        place = again.place_of(where)
        if place is None:
            return no.no_place(again, step.part)
        there = place.letter
    if step.part is None:
        return cut_off(again, there, step.way, step.size)
    return lay(again, step.part, there, turned=step.turned, way=step.way)


def _cannot_be(hand: Hand, kerf: int | None, trim: int | None) -> Refused | None:
    for what, size in (("kerf", kerf), ("trim", trim)):
        if size is not None and size < 0:
            return Refused(f"A {what} of {write_brief(size, hand.style)} cannot be: it is 0 or more.")
    for one in hand.job.stock:
        if trim is not None and 2 * trim >= min(one.length, one.width):
            return Refused(f"A trim of {write_brief(trim, hand.style)} on each edge leaves nothing of the {one.name}, "
                           f"{no.sizes(hand, one.length, one.width)}.")
    return None
