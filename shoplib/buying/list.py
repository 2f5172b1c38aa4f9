"""The buying list of a cabinet: its lines, what is asked of the person before buying, and what it does not hold."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal
from difflib import get_close_matches

from shoplib.buying.assumed import assumed, measure_first, not_counted
from shoplib.buying.by_area import area_lines
from shoplib.buying.edging import edging_lines
from shoplib.buying.fittings import fitting_lines
from shoplib.buying.line import Line, read_price, total
from shoplib.buying.screws import screw_lines
from shoplib.buying.slides import slide_lines
from shoplib.buying.stock_lines import Stocked, from_shop, stock_lines
from shoplib.buying.strips import strip_lines
from shoplib.buying.waiting import HANG, STANDS
from shoplib.measure import INCH_STYLE, Style
from shoplib.model.board import CASE
from shoplib.model.cutting import NO_PRICES
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list
from shoplib.words.stages import STAGES


@dataclass(frozen=True, slots=True)
class BuyingList:
    """What is bought, in the order of the shop: stock, edging, hardware, screws, glue and finish.

    `first` names the parts that could not be made again from what is left; it stands before everything else;
    `first_stage` is the first that is still to be cut, and `left_out` says what is not listed for it was bought with
    those before. `in_shop` is what is taken from the shop; `measure` what to measure before buying; `assumed` what the
    list takes for granted; `missing` what it does not hold; `unasked` the names under the prices that no line has, with
    the items that may be meant.
    """

    name: str
    lines: tuple[Line, ...]
    currency: str = "USD"
    first: tuple[str, ...] = ()
    first_stage: int = CASE
    left_out: str = ""
    in_shop: tuple[str, ...] = ()
    measure: tuple[str, ...] = ()
    assumed: tuple[str, ...] = ()
    missing: tuple[str, ...] = ()
    unasked: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    style: Style = INCH_STYLE

    @property
    def total(self) -> Decimal:
        """The cost of all lines that have a price, exactly.

        >>> from shoplib.buying.line import Price
        >>> wanted = (Line("pull", "pull with one hole", Decimal(3), "each", price=Price(Decimal("4.10"))),
        ...           Line("glue", "wood glue", Decimal(5), "fl oz"))
        >>> BuyingList("case", wanted).total, len(BuyingList("case", wanted).unpriced)
        (Decimal('12.30'), 1)
        """
        return total(self.lines)

    @property
    def unpriced(self) -> tuple[Line, ...]:
        """The lines without a price: the total is so much short."""
        return tuple(line for line in self.lines if line.price is None)

    @property
    def now(self) -> tuple[Line, ...]:
        """What the first stage needs that is still to be cut, and waits for nothing."""
        return tuple(line for line in self.lines if line.stage == self.first_stage and not line.after)

    @property
    def later(self) -> tuple[Line, ...]:
        """What can wait until that stage is built, or had better wait until it is measured."""
        return tuple(line for line in self.lines if line not in self.now)

    @property
    def later_after(self) -> dict[str, tuple[Line, ...]]:
        """What comes later by what had better be done before it is bought, first what waits for nothing ("").

        >>> front = Line("sheet", "front sheet", Decimal(1), "each", stage=3, after="the case stands and is measured")
        >>> pull = Line("pull", "pull with one hole", Decimal(3), "each", stage=3)
        >>> list(BuyingList("case", (front, pull)).later_after)
        ['', 'the case stands and is measured']
        """
        return {after: lines for after in ("", STANDS, HANG)
                if (lines := tuple(line for line in self.later if line.after == after))}


def buying_list(
    cabinet: Cabinet, stock: Iterable[Stocked] = (), first: Iterable[str] = (), seams: int = 0
) -> BuyingList:
    """Everything to buy for a cabinet whose parts were laid out on this stock.

    `seams` is how much is glued where boards are glued up from staves (`seam_area`). Prices are those of the project,
    found by the name of the line. Nothing is written; a sheet without stock is named among what is missing. What a
    stage needed that is cut already was bought with it, for later stages too, and is left out.
    """
    stock = tuple(stock)
    wishes = cabinet.project.buying if cabinet.project else NO_PRICES
    prices = {_key(name): text for name, text in wishes.prices.items()}
    lines = (
        *stock_lines(cabinet, stock),
        *edging_lines(cabinet),
        *strip_lines(cabinet),
        *slide_lines(cabinet),
        *fitting_lines(cabinet),
        *screw_lines(cabinet, wishes.spare_screws),
        *area_lines(cabinet, seams),
    )
    priced = tuple(
        replace(line, price=read_price(prices[_key(line.item)])) if _key(line.item) in prices else line
        for line in lines
    )
    known = {_key(line.item) for line in lines}
    kept = tuple(line for line in priced if line.stage >= cabinet.first_stage)
    unasked = [name for name in wishes.prices if _key(name) not in known]
    return BuyingList(
        name=cabinet.name,
        lines=kept,
        currency=wishes.currency,
        first=tuple(first),
        first_stage=cabinet.first_stage,
        left_out=_left_out(cabinet, [line.item for line in priced if line.stage < cabinet.first_stage]),
        in_shop=from_shop(cabinet, stock),
        measure=measure_first(cabinet, kept),
        assumed=assumed(cabinet, kept),
        missing=not_counted(cabinet, stock),
        unasked={name: _meant(name, lines) for name in unasked},
        style=cabinet.style,
    )


def _left_out(cabinet: Cabinet, items: Sequence[str]) -> str:
    """What was bought with the stages that are cut, in one line; empty where none is."""
    if cabinet.first_stage == CASE:
        return ""
    cut = and_list([f"the {STAGES[stage]}" for stage in range(CASE, cabinet.first_stage)])
    more = f", and what was bought with them, for later stages too: {'; '.join(items)}" if items else ""
    return f"Already cut: {cut}. This list leaves out the sheets and boards of what is cut{more}."


def _meant(name: str, lines: Iterable[Line]) -> tuple[str, ...]:
    """The items that a name may stand for: those that have it in them, or else the likeliest one."""
    items = {_key(line.item): line.item for line in lines}
    found = [item for key, item in items.items() if _key(name) in key]
    return tuple(found or (items[key] for key in get_close_matches(_key(name), items, 1)))


def _key(name: str) -> str:
    """A name as it is looked up: as written, but for capitals and the number of spaces."""
    return " ".join(name.casefold().split())
