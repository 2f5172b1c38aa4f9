"""Sheets and boards to buy, by size, and what is taken from the shop."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from shoplib.buying.board_measure import write_volume
from shoplib.buying.laid import LaidSheet
from shoplib.buying.lifts import needs_two, weight_of
from shoplib.buying.line import Line, read_price
from shoplib.buying.rough import as_it_comes, boards_by_sheet
from shoplib.buying.thickness import rough_words, thick_words
from shoplib.buying.waiting import not_before, stage_waits
from shoplib.measure import Style, write_brief
from shoplib.model.cutting import USUAL_CUTTING
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list
from shoplib.words.stages import STAGES


@dataclass(frozen=True, slots=True)
class Stocked:
    """One sheet or board that parts were laid out on: of which sheet, for which stages, its size in ticks.

    `bought`: it comes from the yard; else it lies in the shop.
    """

    sheet: str
    stages: tuple[int, ...]
    length: int
    width: int
    bought: bool = True


def stocked(sheets: Iterable[LaidSheet]) -> tuple[Stocked, ...]:
    """The sheets and boards that a cabinet was laid out on, but for what an earlier stage leaves."""
    return tuple(
        Stocked(one.sheet.name, one.stages, one.stock.length, one.stock.width, one.bought)
        for one in sheets
        if one.bought or not one.held.left_of
    )


def stock_lines(cabinet: Cabinet, used: Iterable[Stocked]) -> tuple[Line, ...]:
    """What is bought, a line for each size and each moment: what the case needs, and what only later stages need."""
    return tuple(
        _line(cabinet, key, count) for key, count in _counted(one for one in used if one.bought).items()
    )


def from_shop(cabinet: Cabinet, used: Iterable[Stocked]) -> tuple[str, ...]:
    """What lies in the shop and is used: "2 x thin sheet, 24 in x 23 in"."""
    counted = Counter((one.sheet, one.length, one.width) for one in used if not one.bought)
    return tuple(
        f"{count} x {sheet}, {size_words(length, width, cabinet.style)}"
        for (sheet, length, width), count in counted.items()
    )


def not_laid_out(cabinet: Cabinet, used: Iterable[Stocked]) -> tuple[str, ...]:
    """The sheets of the project that boards are cut from and that no stock was laid out for."""
    laid = {one.sheet for one in used}
    cut = boards_by_sheet(cabinet) if cabinet.project else {board.sheet: [board] for board in cabinet.boards}
    return tuple(name for name, boards in cut.items() if boards and name not in laid)


def size_words(length: int, width: int, style: Style) -> str:
    """Length by width, as the shop writes them."""
    return f"{write_brief(length, style)} x {write_brief(width, style)}"


_Key = tuple[str, int, int, tuple[int, ...]]


def _counted(used: Iterable[Stocked]) -> dict[_Key, int]:
    """Equal ones together; those that the case needs too are one purchase, whatever else is cut from them later."""
    return Counter((one.sheet, one.length, one.width, one.stages) for one in used)


def _line(cabinet: Cabinet, key: _Key, count: int) -> Line:
    name, length, width, stages = key
    sheet = cabinet.sheets[name]
    solid = sheet.kind == "solid"
    thick = as_it_comes(sheet, cabinet.project.cutting if cabinet.project else USUAL_CUTTING)
    return Line(
        "board" if solid else "sheet",
        f"{name}, {size_words(length, width, cabinet.style)}",
        Decimal(count),
        "each",
        size=(length, width, thick),
        stage=min(stages),
        waits=stage_waits(stages, cabinet),
        after=not_before(stages, cabinet),
        uses=_uses(sheet, key, count, thick, cabinet),
        price=read_price(_price(sheet, length, width)),
    )


def _price(sheet: Sheet, length: int, width: int) -> str:
    """What one of this size costs: each size has its own price."""
    if (length, width) == (sheet.length, sheet.width):
        return sheet.price
    return next((size.price for size in sheet.sizes if (size.length, size.width) == (length, width)), "")


def _uses(sheet: Sheet, key: _Key, count: int, thick: int, cabinet: Cabinet) -> str:
    _, length, width, stages = key
    style = cabinet.style
    what = f"for the {and_list([STAGES[number] for number in stages])}{_weighs(sheet, key, thick, cabinet)}"
    if sheet.kind != "solid":
        return f"{sheet.kind}, {thick_words(sheet.nominal, style)} by name, {what}"
    volume = write_volume(count * length * width * thick, style.unit)
    return f"solid, {rough_words(thick, style)}, {volume}, {what}"


def _weighs(sheet: Sheet, key: _Key, thick: int, cabinet: Cabinet) -> str:
    """What one of them weighs, for whoever carries it; nothing where no table says."""
    _, length, width, _ = key
    weight = weight_of(sheet, length, width, thick)
    if weight is None:
        return ""
    limit = (cabinet.project.cutting if cabinet.project else USUAL_CUTTING).one_lifts
    two = ", carried by two" if needs_two(sheet, length, width, limit, thick) else ""
    return f"; {weight.told(cabinet.style.unit)} each{two}"
