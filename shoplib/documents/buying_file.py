"""buying.csv for a spreadsheet, and the buying list to read: at the desk, and in the yard."""

import csv
import io
import textwrap
from collections.abc import Iterable, Sequence
from decimal import Decimal

from shoplib.buying.line import Line, total
from shoplib.buying.list import BuyingList
from shoplib.documents.cut_list_file import safe_cell
from shoplib.lists.writing import Writing
from shoplib.measure import write_mm
from shoplib.model.board import CASE
from shoplib.tables.setups import cautions
from shoplib.words.stages import STAGES

COLUMNS = (
    "kind", "item", "quantity", "unit", "needed", "spare",
    "length", "width", "thickness", "length_mm", "width_mm", "thickness_mm",
    "price", "price_for", "packs", "cost", "currency", "when", "measure_first", "estimate", "for",
)  # fmt: skip
"""The columns of buying.csv, in order. `price` is that of `price_for` units together."""

NOW, LATER = "now", "can wait until the case stands"
"""When a line is bought that waits for no reading, in words."""

AFTER_BOXES = "can wait until the boxes hang"
"""The same where the case is cut already."""

FIRST = "Before you buy: what, once spoiled, could not be made again from what is left"
"""The heading of the parts that need the most care, or one sheet more."""

NO_PRICE = "price not given"

UNUSED = "Prices that were not used"
"""The heading of prices whose name no line has."""

CARRYING = "Before you lift and load"
"""The heading of the cautions for carrying sheets and boards, and for having them cut at the yard."""

_HOW = "Prices stand in the project: of sheets beside their size, of the rest under [buying.prices] by its name here."

_AT_THE_YARD = {"sheet": "sheets at the yard", "board": "boards at the yard"}
"""What the cautions for a kind of line stand under in `data/cautions.toml`, beside those for carrying any of them."""

_WIDTH = 79


def can_wait(wanted: BuyingList) -> str:
    """Until when all can wait that is not bought now and waits for no reading.

    >>> can_wait(BuyingList("case", ()))
    'can wait until the case stands'
    """
    return LATER if wanted.first_stage == CASE else AFTER_BOXES


def when(line: Line, wanted: BuyingList) -> str:
    """When a line is bought: what is measured for, once that is done."""
    if line in wanted.now:
        return NOW
    return f"when {line.after}" if line.after else can_wait(wanted)


def buying_csv(wanted: BuyingList) -> str:
    """The text of buying.csv, one row a line. Save it as UTF-8.

    Numbers have a point and no currency beside them; no cell begins with a sign that a spreadsheet takes for a formula.
    """
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for line in wanted.lines:
        writer.writerow([safe_cell(cell) for cell in _cells(line, wanted)])
    return out.getvalue()


def _cells(line: Line, wanted: BuyingList) -> list[str]:
    exact = Writing(wanted.style, exact=True)
    price = line.price
    return [
        line.kind,
        line.item,
        plain(line.quantity),
        line.unit,
        plain(line.needed),
        plain(line.spare),
        *(exact.setting(ticks) if ticks else "" for ticks in line.size),
        *(write_mm(ticks) if ticks else "" for ticks in line.size),
        str(price.amount) if price else NO_PRICE,
        plain(price.pack) if price else "",
        str(line.packs) if price else "",
        str(line.cost) if price else "",
        wanted.currency if price else "",
        when(line, wanted),
        line.waits,
        line.estimate,
        line.uses,
    ]


def plain(number: Decimal) -> str:
    """A count without needless zeros, and never as a power of ten.

    >>> plain(Decimal("1E+1")), plain(Decimal("2.10")), plain(Decimal(0))
    ('10', '2.1', '0')
    """
    text = f"{number:f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def buying_text(wanted: BuyingList, width: int = _WIDTH) -> str:
    """The list to read: cautions, what cannot be replaced, what is bought now, what can wait, what is assumed."""
    lines = [f"Buying list: {wanted.name}", ""]
    lines += _told(CARRYING, yard_cautions(wanted), width)
    lines += _told(FIRST, wanted.first, width)
    lines += _told("In the shop already, used first", wanted.in_shop, width)
    lines += [*_wrapped(wanted.left_out, "", width), ""] if wanted.left_out else []
    lines += _bought(f"Buy now, for the {STAGES[wanted.first_stage]}", wanted.now, wanted, width)
    for after, later in wanted.later_after.items():
        title = f"Better not before {after}" if after else can_wait(wanted).capitalize()
        lines += _bought(title, later, wanted, width)
    lines += [*_wrapped(f"{total_words(wanted)}{f' {_HOW}' if wanted.unpriced else ''}", "", width), ""]
    lines += _told(UNUSED, unused_words(wanted), width)
    lines += _told("Before you buy, measure or read", wanted.measure, width)
    lines += _told("What this list assumes", wanted.assumed, width)
    lines += _told("Not in this list", wanted.missing, width)
    return "\n".join(lines)


def yard_cautions(wanted: BuyingList) -> tuple[str, ...]:
    """The cautions for getting sheets and boards home; none where neither is bought.

    >>> yard_cautions(BuyingList("case", ()))
    ()
    """
    bought = {line.kind for line in wanted.lines}
    places = [place for kind, place in _AT_THE_YARD.items() if kind in bought]
    return tuple(caution.claim.say for caution in cautions().only(["carrying", *places])) if places else ()


def total_words(wanted: BuyingList) -> str:
    """The total, and how many lines it leaves out.

    >>> from shoplib.buying.line import Price
    >>> pull = Line("pull", "pull with one hole", Decimal(3), "each", price=Price(Decimal("4.10")))
    >>> total_words(BuyingList("case", (pull,)))
    'Total: 12.30 USD for all 1 line.'
    """
    return _summed("Total", wanted.lines, wanted.currency)


def unused_words(wanted: BuyingList) -> list[str]:
    """A sentence for each price whose name no line has, with the names that may be meant.

    >>> unused_words(BuyingList("case", (), unasked={"edge band 0.5 mm": ("edge band 0.5 mm, for the case sheet",)}))
    ['"edge band 0.5 mm": no line is called so; perhaps "edge band 0.5 mm, for the case sheet" is meant.']
    """
    return [f'"{name}": no line is called so; {_perhaps(meant)}.' for name, meant in wanted.unasked.items()]


def _perhaps(meant: Iterable[str]) -> str:
    names = " or ".join(f'"{item}"' for item in meant)
    return f"perhaps {names} is meant" if names else "buying.csv has the names"


def _summed(title: str, lines: Sequence[Line], currency: str) -> str:
    """What the lines cost together, and how many of them it leaves out."""
    without = sum(line.price is None for line in lines)
    count = f"{len(lines)} {'line' if len(lines) == 1 else 'lines'}"
    if without == len(lines):
        return f"{title}: not known; no price is given for any of the {count}."
    if not without:
        return f"{title}: {total(lines)} {currency} for all {count}."
    have = "has" if without == 1 else "have"
    return f"{title} of what has a price: {total(lines)} {currency}; {without} of the {count} {have} none yet."


def _bought(title: str, lines: Iterable[Line], wanted: BuyingList, width: int) -> list[str]:
    lines = tuple(lines)
    if not lines:
        return []
    found = [title]
    for line in lines:
        found += _wrapped(f"{amount(line)} {line.item}: {_cost(line, wanted)}", "  [ ] ", width)
        for words in (_spare(line), line.uses):
            found += _wrapped(words, "        ", width) if words else []
    if any(line.price for line in lines):
        found += _wrapped(_summed("Together", lines, wanted.currency), "  ", width)
    return [*found, ""]


def amount(line: Line) -> str:
    """How much of it, up to its name: "3 x", "2 pairs of slides,", "5 fl oz of"."""
    if line.unit == "each":
        return f"{plain(line.quantity)} x"
    if line.unit == "pair":
        return f"{plain(line.quantity)} {'pair' if line.quantity == 1 else 'pairs'} of slides,"
    return f"{plain(line.quantity)} {line.unit} of"


def _cost(line: Line, wanted: BuyingList) -> str:
    """The sum, and of what: a price that was meant for another amount, a can say, must catch the eye."""
    if line.price is None:
        return NO_PRICE
    one, several = line.price.amount, plain(line.price.pack)
    cost = f"{line.cost} {wanted.currency}"
    if line.unit not in ("each", "pair"):
        per = f"per {line.unit}" if line.price.pack == 1 else f"for each {several} {line.unit}"
        return f"{line.packs} x {one} {per} = {cost}"
    if line.price.pack == 1:
        return cost if line.packs == 1 else f"{line.packs} x {one} = {cost}"
    return f"1 pack of {several}, {cost}" if line.packs == 1 else f"{line.packs} packs of {several} x {one} = {cost}"


def _spare(line: Line) -> str:
    words = []
    if line.spare:
        words.append(f"{plain(line.spare)} of them spare" if line.unit == "each" else
                     f"{plain(line.spare)} {line.unit} of it spare")
    if line.estimate:
        words.append(line.estimate)
    return "; ".join(words)


def _told(title: str, sentences: Iterable[str], width: int) -> list[str]:
    sentences = tuple(sentences)
    if not sentences:
        return []
    return [title, *(line for text in sentences for line in _wrapped(text, "  - ", width)), ""]


def _wrapped(text: str, indent: str, width: int) -> list[str]:
    return textwrap.wrap(text, width, initial_indent=indent, subsequent_indent=" " * len(indent),
                         break_on_hyphens=False)
