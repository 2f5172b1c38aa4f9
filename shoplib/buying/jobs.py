"""From the solved cabinet to what is laid out together: of each sheet its parts, and the stock there is for them."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from decimal import Decimal

from shoplib.buying.rough import boards_by_sheet, rough_size
from shoplib.buying.waiting import turn_at_the_saw
from shoplib.layout.marks import letter
from shoplib.layout.offcuts import LEAST, Least
from shoplib.layout.pieces import Job, Part, Rect, Stock
from shoplib.measure import MM, Style, write_brief
from shoplib.model.board import Board
from shoplib.model.project import ImpossibleProject
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.words.naming import boards_in_short


@dataclass(frozen=True, slots=True)
class Ask:
    """What is laid out together: parts of one sheet in these `stages`, and the boards that each part stands for.

    Equal parts are one, whatever is cut into them later: any of them may be any of its boards; but what waits is no
    part with what is cut before it. `letters` tell the parts of a sheet apart, through all its stages.
    """

    sheet: Sheet
    stages: tuple[int, ...]
    parts: tuple[Part, ...]
    boards: tuple[tuple[Board, ...], ...]
    letters: tuple[str, ...]
    kerf: int


def least_kept(sheet: Sheet) -> Least:
    """The smallest offcut of a sheet that is worth keeping: without grain, whichever way it lies.

    >>> [least_kept(Sheet("ply", "plywood", 18 * MM, grain=grain)).either_way for grain in ("length", "none")]
    [False, True]
    """
    return LEAST._replace(either_way=sheet.grain == "none" and sheet.kind != "solid")


@dataclass(frozen=True, slots=True)
class Held:
    """A piece that lies in the shop, or will when an earlier stage is cut.

    `left_of` names the sheet, board or piece that it is left of, and `name` says what is written on it; both are empty
    for what lies there before anything is cut. What is left and too small to keep has no name.
    """

    length: int
    width: int
    trim_ends: int = 0
    trim_edges: int = 0
    left_of: str = ""
    name: str = ""

    @property
    def usable(self) -> Rect:
        """What is left of it when its edges are trimmed."""
        return Rect(
            self.trim_ends, self.trim_edges, self.length - 2 * self.trim_ends, self.width - 2 * self.trim_edges
        )


@dataclass(frozen=True, slots=True)
class Offered:
    """The stock for a job, and of each the pieces that lie in the shop; none of what is bought.

    `priced`: the stock costs money in its smallest coin; else its area in mm2, for a price is missing.
    """

    stock: tuple[Stock, ...]
    held: tuple[tuple[Held, ...], ...]
    priced: bool


def usable_again(held: Iterable[Held]) -> tuple[Held, ...]:
    """What parts may be cut from: of what is left over only what is worth keeping.

    On a smaller piece the hands come near the blade, and a short one can turn on the saw (common practice, no source).
    It holds for parts of a later stage, and for those that are made again.

    >>> scrap, shop = Held(20, 10, left_of="ply 1"), Held(20, 10)
    >>> usable_again([scrap, shop]) == (shop,)
    True
    """
    return tuple(one for one in held if one.name or not one.left_of)


def asks(cabinet: Cabinet) -> tuple[Ask, ...]:
    """What is to be laid out, in the order in which it is cut: stage by stage if so asked, and sheet by sheet as in the
    project.

    Raises ImpossibleProject where all of it is cut already.
    """
    project, found = cabinet.project, []
    for name, boards in boards_by_sheet(cabinet).items():
        stages = sorted({board.stage for board in boards})
        if not stages:
            continue
        lettered = 0
        for together in [stages] if project.cutting.lay_out == "all together" else [[stage] for stage in stages]:
            cut_now = [board for board in boards if board.stage in together]
            found.append(_ask(cabinet, cabinet.sheets[name], tuple(together), cut_now, lettered))
            lettered += len(found[-1].parts)
    if cabinet.boards and not found:
        raise ImpossibleProject(
            "cutting.already_cut",
            f'with "{project.cutting.already_cut}" no board is left to lay out; take the key out, or cut by the '
            "layouts that you have",
        )
    return tuple(sorted(found, key=lambda ask: ask.stages[0]))


def _ask(cabinet: Cabinet, sheet: Sheet, stages: tuple[int, ...], boards: Iterable[Board], lettered: int) -> Ask:
    cutting, alike = cabinet.project.cutting, {}
    for board in boards:
        solid = sheet.kind == "solid"
        length, width = rough_size(board, sheet, cutting, cabinet.style) if solid else board.cut_size[:2]
        key = length, width, board.grain == "none" and not solid, turn_at_the_saw(board.stage, stages, cabinet)
        alike.setdefault(key, []).append(board)
    parts = tuple(
        Part(boards_in_short(same), length, width, len(same), turns, turn)
        for (length, width, turns, turn), same in alike.items()
    )
    letters = tuple(letter(lettered + number) for number in range(len(parts)))
    return Ask(sheet, stages, parts, tuple(map(tuple, alike.values())), letters, cutting.kerf)


def in_shop(sheet: Sheet) -> tuple[Held, ...]:
    """The offcuts and boards that the project says lie in the shop, one by one."""
    ends, edges = _trims(sheet)
    return tuple(
        Held(
            one.length,
            one.width,
            _first(one.trim_ends, one.trim, ends),
            _first(one.trim, edges),
        )
        for one in sheet.on_hand
        for _ in range(one.count)
    )


def _trims(sheet: Sheet) -> tuple[int, int]:
    return _first(sheet.trim_ends, sheet.trim), sheet.trim


def _first(*given: int | None) -> int:
    return next(one for one in given if one is not None)


def offered(ask: Ask, held: Iterable[Held], style: Style) -> Offered:
    """What the parts may be cut from: what lies in the shop and can hold one of them, and what can be bought.

    Raises ImpossibleProject where there is nothing at all, or a part is larger than everything.
    """
    known = [
        (stock, pieces)
        for stock, pieces in all_stock(ask.sheet, held, style)
        if stock.count is None or any(part.fits(stock) for part in ask.parts)
    ]
    stock = [one for one, _ in known]
    _refuse_what_cannot_be(ask, stock, style)
    return Offered(tuple(stock), tuple(pieces for _, pieces in known), _all_priced(ask.sheet, style))


def all_stock(sheet: Sheet, held: Iterable[Held], style: Style) -> list[tuple[Stock, tuple[Held, ...]]]:
    """What lies in the shop, whatever comes out of it, with the pieces themselves, then what can be bought."""
    sizes, priced = _to_buy(sheet, style), _all_priced(sheet, style)
    ends, edges = _trims(sheet)
    found = []
    alike: dict[tuple[int, int, int, int], list[Held]] = {}
    for one in held:
        alike.setdefault((one.length, one.width, one.trim_ends, one.trim_edges), []).append(one)
    for (length, width, *trims), same in alike.items():
        found.append((Stock(f"{sheet.name} on hand", length, width, len(same), 0, *trims), tuple(same)))
    for length, width, price in sizes:
        cost = coins(price) if priced else length * width // MM**2
        found.append((Stock(sheet.name, length, width, None, cost, ends, edges), ()))
    return found


def _all_priced(sheet: Sheet, style: Style) -> bool:
    return all(price for _, _, price in _to_buy(sheet, style))


def _to_buy(sheet: Sheet, style: Style) -> list[tuple[int, int, str]]:
    """Length, width and price of each size that can be bought, the sheet's own first."""
    key = f'sheets."{sheet.name}"'
    if (sheet.length is None) != (sheet.width is None):
        missing = "length" if sheet.length is None else "width"
        raise ImpossibleProject(f"{key}.{missing}", "it is missing, and parts are laid out on a known size; give it")
    own = [] if sheet.length is None else [(sheet.length, sheet.width, sheet.price)]
    found = list(dict.fromkeys(own + [(size.length, size.width, size.price) for size in sheet.sizes]))
    for length, width, price in found:
        twice = [other for *size, other in found if size == [length, width]]
        if len(twice) > 1:
            told = " and ".join(other or "none" for other in twice)
            size = _size(length, width, style)
            raise ImpossibleProject(key, f"{size} stands there with several prices ({told}); give it once")
        if price and not coins(price):
            raise ImpossibleProject(
                key, f"a price is {price}, as if sheets were free without end; what lies in the shop is on_hand, and a "
                "price that is not known is left out"
            )
    if not found and not sheet.on_hand:
        raise ImpossibleProject(
            key, "no size is given, so nothing can be laid out on it; give length and width, or sizes, or on_hand"
        )
    return found


def coins(price: str) -> int:
    """A price in the smallest coin of its currency, of which a hundred make one.

    >>> coins("48.00"), coins("7,5")
    (4800, 750)
    """
    return int(Decimal(price.replace(",", ".")) * 100)


def _refuse_what_cannot_be(ask: Ask, stock: list[Stock], style: Style) -> None:
    for part in ask.parts:
        if not any(part.fits(one) for one in stock):
            turned = "either way round" if part.may_turn else "with its grain along the sheet"
            sizes = dict.fromkeys(_size(one.length, one.width, style) for one in stock)
            there = ", ".join(sizes) or "none that holds any part"
            raise ImpossibleProject(
                f'sheets."{ask.sheet.name}"',
                f"{part.name}, {_size(part.length, part.width, style)}, comes out of no sheet that there is, {turned} "
                f"and with the edges trimmed (there are: {there}); {_what_would_do(part, stock)}",
            )


def _what_would_do(part: Part, stock: list[Stock]) -> str:
    if not any(one.count is None for one in stock):
        return "only pieces in the shop are given: give length and width of the sheet as it can be bought"
    if any(replace(part, may_turn=True).fits(one) for one in stock):
        return "it would only lie across the grain: see whether length (along the grain) and width are swapped"
    return "give a larger one, or make the part in two"


def _size(length: int, width: int, style: Style) -> str:
    return f"{write_brief(length, style)} x {write_brief(width, style)}"


def job_of(ask: Ask, on: Offered) -> Job:
    """The parts and the stock as the search takes them."""
    return Job(ask.parts, on.stock, ask.kerf)
