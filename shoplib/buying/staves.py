"""Parts that are wider than every board, glued up from staves side by side."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from shoplib.buying.jobs import Ask, Held, all_stock
from shoplib.layout.pieces import LayoutError, Part, Stock
from shoplib.measure import Style, to_step, write_brief
from shoplib.model.board import Board

Staved = tuple[Part, tuple[Board, ...]]
"""A part and the boards that it stands for; a board that is glued up stands there once for each stave."""


def from_boards(ask: Ask, held: Iterable[Held], jointing: int, style: Style) -> Ask:
    """The ask itself, or where its sheet is solid wood, what is cut from the boards that there are (`glued_up`)."""
    if ask.sheet.kind != "solid":
        return ask
    return glued_up(ask, [stock for stock, _ in all_stock(ask.sheet, held, style)], jointing, style)


def glued_up(ask: Ask, stock: Iterable[Stock], jointing: int, style: Style) -> Ask:
    """The ask, with what no board is wide enough for as staves: as few as the boards give, and equally wide.

    Equal parts are made in one way: where the wide boards in the shop have not room for all of them, beside what else
    needs those boards, all are glued up. A stave has `jointing` over. Where no board is known, nothing is glued up.
    Raises LayoutError, one sentence, where a part is longer than every board, or the boards are too few or too narrow
    for it.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.model.placement import Placement
    >>> from shoplib.model.sheet import Sheet
    >>> top = Board("top", "case", 1, "oak", 30 * INCH, 11 * INCH, INCH, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> ask = Ask(Sheet("oak", "solid", INCH), (1,), (Part("top", 30 * INCH, 11 * INCH),), ((top,),), ("A",), 0)
    >>> made = glued_up(ask, [Stock("board", 96 * INCH, 6 * INCH)], INCH // 8, INCH_STYLE)
    >>> made.parts[0].name, made.parts[0].count, made.parts[0].width == INCH * 45 // 8
    ('staves of top', 2, True)
    """
    stock = list(stock)
    if not stock:
        return ask
    shop = [_Lying(size, size.usable.w) for size in stock if size.count is not None for _ in range(size.count)]
    made: dict[int, Staved] = {}
    # The widest first: they have the fewest boards to come from.
    for index in sorted(range(len(ask.parts)), key=lambda one: (-ask.parts[one].width, -ask.parts[one].length)):
        ways = _ways(ask.parts[index], ask.boards[index], stock, jointing, style)
        made[index] = next((way for way in ways if _kept_free(way[0], stock, shop, ask.kerf)), ways[0])
    parts, boards = zip(*(made[index] for index in range(len(made))), strict=True)
    return replace(ask, parts=parts, boards=boards)


@dataclass
class _Lying:
    """A board in the shop, and how much of its length no wide part has been given yet."""

    size: Stock
    free: int


def _ways(
    part: Part, boards: tuple[Board, ...], stock: list[Stock], jointing: int, style: Style
) -> list[Staved]:
    """The part in one piece, then from ever narrower boards, as far as there are enough of them for this part alone."""
    long_enough = [size for size in stock if size.usable.w >= part.length]
    if not long_enough:
        raise LayoutError(
            f"{part.name}: {write_brief(part.length, style)} long at rough size, and the longest board leaves "
            f"{write_brief(max(size.usable.w for size in stock), style)} when its ends are trimmed; get a longer one, "
            "for boards are not joined end to end"
        )
    found = {}
    for widest in sorted({size.usable.h for size in long_enough}, reverse=True):
        staves, width = _from_boards(part.width, widest, jointing, style)
        if staves and _room_for(replace(part, width=width, count=part.count * staves), long_enough):
            found.setdefault(staves, _staved(part, boards, staves, width))
    if not found:
        raise LayoutError(
            f"{part.name}: the boards that are {write_brief(part.length, style)} long are too few or too narrow for "
            "it, even glued up from staves; get more of them, or give a size that can be bought"
        )
    return list(found.values())


def _staved(part: Part, boards: tuple[Board, ...], staves: int, width: int) -> Staved:
    if staves == 1:
        return part, boards
    each = tuple(board for board in boards for _ in range(staves))
    return replace(part, name=f"staves of {part.name}", width=width, count=part.count * staves), each


def _from_boards(width: int, widest: int, jointing: int, style: Style) -> tuple[int, int]:
    """How many pieces of boards of this width, and how wide each; none where jointing leaves no step of a stave."""
    if width <= widest:
        return 1, width
    most = to_step(widest - jointing, style.step, "down")
    if most <= 0:
        return 0, 0
    staves = -(-width // most)
    return staves, to_step(-(-width // staves), style.step, "up") + jointing


def _room_for(part: Part, stock: list[Stock]) -> bool:
    """Whether the boards hold all of this part, if nothing else were cut from them and the saw took nothing."""
    wide = [size for size in stock if size.usable.h >= part.width]
    if any(size.count is None for size in wide):
        return True
    return sum(s.count * (s.usable.w // part.length) * (s.usable.h // part.width) for s in wide) >= part.count


def _kept_free(part: Part, stock: list[Stock], shop: list[_Lying], kerf: int) -> bool:
    """Whether it can be bought for, or boards in the shop have length for it that no other part was given.

    It is given that length: of the narrowest boards that will do, side by side and one behind another.
    """
    if any(size.count is None and size.usable.w >= part.length and size.usable.h >= part.width for size in stock):
        return True
    needed, given = part.count, []
    for board in sorted(shop, key=lambda one: one.size.usable.h):
        abreast = (board.size.usable.h + kerf) // (part.width + kerf)
        free = board.free
        while needed > 0 and abreast and free >= part.length:
            needed, free = needed - abreast, free - part.length - kerf
        given.append((board, free))
    if needed > 0:
        return False
    for board, free in given:
        board.free = free
    return True
