"""Laying a cut list out by hand: part after part into a free place, each freed by cuts right through that place.

A move gives the state after it (`hand.Hand`), or `Refused` with one sentence, and never changes the state before, which
`taken_back` gives again.
"""

from collections.abc import Iterator
from dataclasses import replace
from itertools import count

from shoplib.layout import hand_refused as no
from shoplib.layout.hand import Hand, HandSheet, Place, Refused, Step, Way
from shoplib.layout.hand_cut import cut_piece
from shoplib.layout.marks import letter
from shoplib.layout.pieces import Job, Placed, Rect
from shoplib.measure import Style

SIDES = ("right", "above")
"""Of what is laid or cut off by a rip: where the rest of its strip is, and where the next strip begins."""


def begin(job: Job, style: Style) -> Hand:
    """Nothing is laid yet, and no sheet taken; `style` is how lengths are told.

    >>> from shoplib.layout.pieces import Part, Stock
    >>> from shoplib.measure import INCH, INCH_STYLE, write_brief
    >>> side, ply = Part("side", 30 * INCH, 15 * INCH, 2), Stock("plywood", 96 * INCH, 48 * INCH)
    >>> hand = lay(begin(Job((side,), (ply,), INCH // 8), INCH_STYLE), 0, 0)
    >>> [(place.letter, write_brief(place.at.w, INCH_STYLE)) for place in hand.places]
    [('a', '65 7/8 in'), ('b', '96 in')]
    >>> lay(hand, 0, "a", turned=True).said[:60]
    'The side, 30 in x 15 in, cannot be turned: its grain runs al'
    >>> lay(hand, 0, "a").done
    True
    """
    return Hand(job, style, tuple(part.count for part in job.parts))


def lay(hand: Hand, part: int, where: str | int, *, turned: bool = False, way: Way | None = None) -> Hand | Refused:
    """Lay one part into the corner of a free place, named by its letter, or of a new sheet, by the number of its stock.

    `way` is the cut that is made first: a rip frees a strip along the sheet, a crosscut one across it. Where none is
    said, a strip is cut on as it runs, and a new one is ripped.
    """
    if not hand.to_lay[part]:
        return no.none_left(hand, part)
    if turned and not hand.job.parts[part].may_turn:
        return no.against_grain(hand, part)
    target = _target(hand, where)
    if isinstance(target, Refused):
        return target
    place, sheet = target
    wide, high = hand.size_of(part, turned)
    if wide > place.at.w or high > place.at.h:
        return no.no_room(hand, place, part, turned)
    way = way or ("crosscut" if place.strip == "along" else "rip")
    number, at = len(hand.steps), Rect(place.at.x, place.at.y, wide, high)
    first = cut_piece(place.at, at, way, hand.job.kerf, place.stage, place.freed)
    then = cut_piece(first.off, at, "crosscut" if way == "rip" else "rip", hand.job.kerf, first.stage, first.freed)
    # A strip that is cut on across its run stays a strip; what lies beside a part in it is an offcut of its own.
    runs, (along, beside) = ("along", SIDES) if way == "rip" else ("up", SIDES[::-1])
    goes_on = place.strip not in ("", runs)
    strips = [("", None), (place.strip, place.beside)] if goes_on else [(runs, (number, beside)), ("", None)]
    free = [
        Place("", place.sheet, cut.left, (number, side), *strip, cut.stage, cut.freed)
        for cut, side, strip in zip((then, first), (along, beside), strips, strict=True) if cut.left
    ]
    laid = replace(
        sheet, placed=(*sheet.placed, Placed(part, at, turned)), cuts=(*sheet.cuts, *first.cuts, *then.cuts)
    )
    return replace(
        _done(hand, place, laid, free, Step(place.key if isinstance(where, str) else where, way, part, turned)),
        to_lay=tuple(there - (n == part) for n, there in enumerate(hand.to_lay)),
        along=(number, beside if goes_on else along),
        beside=place.beside if goes_on else (number, beside),
    )


def lay_along(
    hand: Hand, part: int, where: str | int, *, turned: bool = False, way: Way | None = None
) -> Hand | Refused:
    """Lay this part, and behind it as many more of its kind as the strip holds; all of that is one move."""
    laid = lay(hand, part, where, turned=turned, way=way)
    while isinstance(laid, Hand):
        rest = laid.place_of(laid.along)
        more = lay(laid, part, rest.letter, turned=turned) if rest else None
        if not isinstance(more, Hand):
            return replace(laid, before=hand)
        laid = more
    return laid


def cut_off(hand: Hand, where: str | int, way: Way, size: int) -> Hand | Refused:
    """Cut a strip of this size off a free place, or a new sheet, without laying anything yet."""
    target = _target(hand, where)
    if isinstance(target, Refused):
        return target
    place, sheet = target
    if not 0 < size < (place.at.h if way == "rip" else place.at.w):
        return no.no_strip(hand, place, way, size)
    number, (x, y, wide, high) = len(hand.steps), place.at
    wanted = Rect(x, y, wide, size) if way == "rip" else Rect(x, y, size, high)
    cut = cut_piece(place.at, wanted, way, hand.job.kerf, place.stage, place.freed)
    runs, (along, beside) = ("along", SIDES) if way == "rip" else ("up", SIDES[::-1])
    free = [Place("", place.sheet, cut.off, (number, along), runs, (number, beside), cut.stage, cut.freed)]
    if cut.left:
        free.append(Place("", place.sheet, cut.left, (number, beside), "", None, cut.stage, cut.freed))
    parted = replace(sheet, cuts=(*sheet.cuts, *cut.cuts))
    new = _done(hand, place, parted, free, Step(place.key if isinstance(where, str) else where, way, size=size))
    return replace(new, along=(number, along), beside=(number, beside))


def taken_back(hand: Hand) -> Hand | Refused:
    """The state before the last move, whatever it was.

    >>> from shoplib.measure import INCH_STYLE
    >>> taken_back(begin(Job((), ()), INCH_STYLE)).said
    'Nothing has been done yet, so there is nothing to take back.'
    """
    return hand.before or Refused("Nothing has been done yet, so there is nothing to take back.")


def begun_again(hand: Hand) -> Hand:
    """All parts back in the list; that can be taken back too."""
    return replace(begin(hand.job, hand.style), before=hand)


def _target(hand: Hand, where: str | int) -> tuple[Place, HandSheet] | Refused:
    """The place that is meant, and its sheet; a new sheet stands behind those that are taken."""
    if isinstance(where, str):
        place = hand.place(where)
        return (place, hand.sheets[place.sheet]) if place else Refused(f"There is no free place {where}.")
    if not hand.in_stock(where):
        return no.none_in_stock(hand, where)
    return Place("", len(hand.sheets), hand.job.stock[where].usable, (len(hand.steps), "whole")), HandSheet(where)


def _done(hand: Hand, used: Place, sheet: HandSheet, free: list[Place], step: Step) -> Hand:
    """With this place used up, its sheet as it now is, and what is free now; an offcut keeps its letter."""
    kept = [place for place in hand.places if place.key != used.key]
    taken = {place.letter for place in kept}
    free_letters = (free for free in letters() if free not in taken)
    return replace(
        hand,
        sheets=(*hand.sheets[: used.sheet], sheet, *hand.sheets[used.sheet + 1 :]),
        places=(*kept, *(replace(place, letter=next(free_letters)) for place in free)),
        steps=(*hand.steps, step),
        before=hand,
    )


def letters() -> Iterator[str]:
    """From a to z, then aa, ab and so on; large letters are those of the parts."""
    return (letter(number).lower() for number in count())
