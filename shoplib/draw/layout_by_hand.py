"""A sheet that is laid out by hand: its parts, the free places with their letters, each kerf and the trim, and where
the next part would lie.
"""

from shoplib.draw.chains import unit_note
from shoplib.draw.scene import Chain, Item, Label, Line, Scene, Shape
from shoplib.draw.sheet_layout import LEFT, SAW_CUT
from shoplib.layout.hand import Hand, Place
from shoplib.layout.marks import letter
from shoplib.layout.pieces import Rect, Stock
from shoplib.layout.sawn import SawCut
from shoplib.lists.writing import Writing
from shoplib.measure import Style, write_brief
from shoplib.words.amounts import surely
from shoplib.words.naming import and_list

CHOSEN, NEXT = "box", "air"
"""Fills: the place where the next part goes, and the part itself, which is dashed."""

_LETTER = 30
"""A letter has room where a place is wider than this part of the sheet's length."""


def sheet_by_hand(hand: Hand, number: int, chosen: str = "", next_part: Rect | None = None) -> Scene:
    """The sheet with this number, from 0; `chosen` is the letter of the place that is meant, `next_part` where the next
    part would lie. Each free place has its name, as `offcut b`, to be pointed at.

    >>> from shoplib.layout.by_hand import begin, lay
    >>> from shoplib.layout.pieces import Job, Part
    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> job = Job((Part("side", 30 * INCH, 15 * INCH, 2),), (Stock("plywood", 96 * INCH, 48 * INCH),), INCH // 8)
    >>> print(sheet_by_hand(lay(begin(job, INCH_STYLE), 0, 0), 0).alt)
    Sheet 1, plywood, 96 in x 48 in, its grain from left to right. On it lies 1 side. Free are offcut a, 65 7/8 in x \
15 in, and offcut b, 96 in x 32 7/8 in. Nothing is trimmed, the kerf is 1/8 in.
    """
    sheet = hand.sheets[number]
    stock, style, kerf = hand.job.stock[sheet.stock], hand.style, hand.job.kerf
    items = _bare_sheet(stock, style)
    free = [place for place in hand.places if place.sheet == number]
    for place in free:
        items.append(Shape((_corners(place.at),), CHOSEN if place.letter == chosen else LEFT, offcut(place)))
        if min(place.at.w, place.at.h) * _LETTER > stock.length:
            size = f"{_bare(surely(place.at.w, style), style)} × {_bare(surely(place.at.h, style), style)}"
            texts = (f"{place.letter}\n{size}", place.letter)
            rooms = _beside(place.at, next_part) if next_part and place.letter == chosen else [_corners(place.at)]
            items.append(Label(rooms[0], texts, rooms=tuple(rooms[1:])))
    for placed in sheet.placed:
        part = hand.job.parts[placed.part]
        size = " × ".join(_bare(side, style) for side in (placed.at.w, placed.at.h))
        turned = "\nturned" if placed.turned else ""
        tag = letter(placed.part)
        items.append(Shape((_corners(placed.at),), "case", part.name))
        items.append(Label(_corners(placed.at), (f"{tag} {part.name}\n{size}{turned}", f"{tag}\n{size}", tag)))
    items += [_kerf(cut, kerf) for cut in sheet.cuts]
    if next_part is not None:
        items.append(Shape((_corners(next_part),), NEXT, "where the next part would lie"))
    return Scene(
        f"Sheet {number + 1}: {stock.name}",
        unit_note(style, "The grain runs from left to right. Sizes are along it × across it."),
        f"Sheet {number + 1}, {_stock(stock, style)}, its grain from left to right. {_lying(hand, number)} "
        f"{_free(free, style)} {_lost(stock, kerf, style)}",
        (0, 0, stock.length, stock.width),
        tuple(items),
        legend=(_key(stock, kerf, style, next_part is not None),),
    )


def sheet_to_take(hand: Hand, stock: int, next_part: Rect | None = None) -> Scene:
    """A new sheet, from which nothing is cut yet."""
    one = hand.job.stock[stock]
    items = _bare_sheet(one, hand.style)
    items.append(Shape((_corners(one.usable),), CHOSEN, "new sheet"))
    if next_part is not None:
        items.append(Shape((_corners(next_part),), NEXT, "where the next part would lie"))
    return Scene(
        f"A new sheet: {one.name}",
        unit_note(hand.style, "The grain runs from left to right."),
        f"A new sheet, {_stock(one, hand.style)}, its grain from left to right; nothing lies on it yet. "
        f"{_lost(one, hand.job.kerf, hand.style)}",
        (0, 0, one.length, one.width),
        tuple(items),
        legend=(_key(one, hand.job.kerf, hand.style, next_part is not None),),
    )


def offcut(place: Place) -> str:
    """What a free place is called.

    >>> offcut(Place("b", 0, Rect(0, 0, 9, 9), (0, "right")))
    'offcut b'
    """
    return f"offcut {place.letter}"


def _bare_sheet(stock: Stock, style: Style) -> list[Item]:
    """The whole sheet with its sizes; what is trimmed off stays hatched round what covers the rest."""
    whole = (0, 0, stock.length, stock.width)
    return [
        Shape((whole,), LEFT, "trimmed off", "\\" if stock.trim_ends or stock.trim_edges else ""),
        Chain("below", 0, (0, stock.length), (_bare(stock.length, style),), 0),
        Chain("left", 0, (0, stock.width), (_bare(stock.width, style),), 0),
    ]


def _bare(ticks: int, style: Style) -> str:
    """A size as the cut list writes it; the drawing states the unit."""
    return Writing(style, units=False).length(ticks)


def _corners(at: Rect) -> tuple[int, int, int, int]:
    return at.x, at.y, at.x + at.w, at.y + at.h


def _beside(place: Rect, part: Rect) -> list[tuple[int, int, int, int]]:
    """Where a letter has room in a place beside the part that would lie there, the larger room first; or over it."""
    x, y, right, high = _corners(place)
    right_of, above = (x + part.w, y, right, high), (x, y + part.h, right, high)
    rooms = [right_of, above]
    if (place.h - part.h) * place.w > (place.w - part.w) * place.h:
        rooms.reverse()
    return [*rooms, (x, y, right, high)]


def _kerf(cut: SawCut, kerf: int) -> Item:
    """What the blade takes, as wide as it is; at the far edge it may run half off the piece."""
    piece, off = _corners(cut.piece), _corners(cut.off)
    if cut.kind == "rip":
        left, low, right, high = piece[0], off[3], piece[2], min(off[3] + kerf, piece[3])
    else:
        left, low, right, high = off[2], piece[1], min(off[2] + kerf, piece[2]), piece[3]
    if not kerf:
        return Line((left, low), (right, high), "edge")
    return Shape(((left, low, right, high),), SAW_CUT, "kerf")


def _stock(stock: Stock, style: Style) -> str:
    return f"{stock.name}, {write_brief(stock.length, style)} x {write_brief(stock.width, style)}"


def _lying(hand: Hand, number: int) -> str:
    found: dict[int, int] = {}
    for placed in hand.sheets[number].placed:
        found[placed.part] = found.get(placed.part, 0) + 1
    if not found:
        return "Nothing lies on it yet."
    lie = "lies" if sum(found.values()) == 1 else "lie"
    return f"On it {lie} {and_list([f'{many} {hand.job.parts[part].name}' for part, many in found.items()])}."


def _free(free: list[Place], style: Style) -> str:
    told = []
    for one in free:
        size = " x ".join(write_brief(surely(side, style), style) for side in (one.at.w, one.at.h))
        told.append(f"{offcut(one)}, {size}")
    if not told:
        return "Nothing of it is free."
    *first, last = told
    return f"Free {'are' if first else 'is'} {', '.join(first)}{', and ' if first else ''}{last}."


def _lost(stock: Stock, kerf: int, style: Style) -> str:
    ends, edges = (write_brief(each, style) for each in (stock.trim_ends, stock.trim_edges))
    if not stock.trim_ends and not stock.trim_edges:
        trim = "Nothing is trimmed"
    elif ends == edges:
        trim = f"{ends} is trimmed off each edge"
    else:
        trim = f"{ends} is trimmed off each end, {edges} off each long edge"
    return f"{trim}, the kerf is {write_brief(kerf, style)}."


def _key(stock: Stock, kerf: int, style: Style, meant: bool) -> str:
    """What the signs of the drawing mean."""
    ends, edges = (write_brief(each, style) for each in (stock.trim_ends, stock.trim_edges))
    trim = f"{ends} at each edge" if ends == edges else f"{ends} at each end, {edges} at each long edge"
    where = " Dashed: the next part." if meant else ""
    return f"Dark lines: kerf, {write_brief(kerf, style)}. Band round the edge: trim, {trim}.{where}"
