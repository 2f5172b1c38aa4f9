"""Why a part cannot be laid as it is asked for: one sentence each, with the amounts."""

from shoplib.layout.hand import Hand, Place, Refused, Way
from shoplib.measure import write_brief


def none_left(hand: Hand, part: int) -> Refused:
    """All of a kind lie already."""
    one = hand.job.parts[part]
    return Refused(f"Nothing is left to lay of the {one.name}: all {one.count} of them lie already.")


def against_grain(hand: Hand, part: int) -> Refused:
    """It was to be turned, and must not be."""
    return Refused(f"{_the(hand, part)}, cannot be turned: its grain runs along its "
                   f"{write_brief(hand.job.parts[part].length, hand.style)} and must run along the sheet.")


def none_in_stock(hand: Hand, stock: int) -> Refused:
    """No more sheets of this kind are there."""
    one = hand.job.stock[stock]
    return Refused(f"There is no other {one.name}, {sizes(hand, one.length, one.width)}: "
                   f"{'the only one is' if one.count == 1 else f'all {one.count} are'} in use.")


def no_room(hand: Hand, place: Place, part: int, turned: bool) -> Refused:
    """It is larger than the place; where the bare sheet would hold it, the cut that is in its way is told."""
    wide, high = hand.size_of(part, turned)
    over = [f"{write_brief(by, hand.style)} too {what}"
            for by, what in ((wide - place.at.w, "long"), (high - place.at.h, "wide")) if by > 0]
    how = ", turned," if turned else ","
    why = f"{_the(hand, part)}{how} does not fit {into(hand, place)}: it is {' and '.join(over)}"
    fits_turned, may_turn = high <= place.at.w and wide <= place.at.h, hand.job.parts[part].may_turn
    if fits_turned and may_turn:
        return Refused(f"{why}; it would fit {'along the sheet' if turned else 'turned'}.")
    if _bare(hand, place, wide, high):
        return Refused(f"{why}, and would lie across a cut; a cut goes from edge to edge, so make that one the other "
                       "way first, or lay this part before it.")
    return Refused(f"{why}; it would fit turned, but its grain must run along the sheet." if fits_turned else f"{why}.")


def no_place(hand: Hand, part: int | None) -> Refused:
    """The place where it lay is no more."""
    what = "The strip" if part is None else f"{_the(hand, part)},"
    return Refused(f"{what} does not fit any more: where it lay the saw leaves nothing now.")


def no_strip(hand: Hand, place: Place, way: Way, size: int) -> Refused:
    """A strip as wide as the place, or wider, or of no width."""
    has, what = (place.at.h, "wide") if way == "rip" else (place.at.w, "long")
    return Refused(f"A {way} at {write_brief(size, hand.style)} cuts nothing off {_called(place)}, which is "
                   f"{write_brief(has, hand.style)} {what}.")


def into(hand: Hand, place: Place) -> str:
    """The place with its sizes, as something is laid into it.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.layout.pieces import Job, Rect
    >>> into(Hand(Job((), ()), INCH_STYLE, ()), Place("b", 0, Rect(0, 0, 24 * INCH, 15 * INCH), (0, "right")))
    'into offcut b, 24 in x 15 in'
    """
    return f"into {_called(place)}, {sizes(hand, place.at.w, place.at.h)}"


def sizes(hand: Hand, long: int, wide: int) -> str:
    """Length x width."""
    return f"{write_brief(long, hand.style)} x {write_brief(wide, hand.style)}"


def _called(place: Place) -> str:
    return f"offcut {place.letter}" if place.letter else "what is left of a new sheet inside its trim"


def _the(hand: Hand, part: int) -> str:
    one = hand.job.parts[part]
    return f"The {one.name}, {sizes(hand, one.length, one.width)}"


def _bare(hand: Hand, place: Place, wide: int, high: int) -> bool:
    """Whether nothing but cuts is in the way: the sheet lies bare there, less a kerf round each part."""
    if place.sheet >= len(hand.sheets):
        return False
    sheet, kerf = hand.sheets[place.sheet], hand.job.kerf
    x, y, room = place.at.x, place.at.y, hand.job.stock[sheet.stock].usable
    return x + wide <= room.x + room.w and y + high <= room.y + room.h and all(
        x + wide + kerf <= at.x or at.x + at.w + kerf <= x or y + high + kerf <= at.y or at.y + at.h + kerf <= y
        for at in (placed.at for placed in sheet.placed)
    )
