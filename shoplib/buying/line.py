"""One line of a buying list, and its price."""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import ROUND_CEILING, Decimal
from typing import Literal

from shoplib.model.board import CASE

Kind = Literal[
    "sheet", "board", "edging", "strip", "slide", "screw", "pull", "peg rod", "shelf pin", "caster", "foot", "glue",
    "finish",
]  # fmt: skip

NONE = Decimal(0)

_COIN = Decimal("0.01")


def up(number: Decimal) -> Decimal:
    """The next whole number, or the number itself.

    >>> up(Decimal("1.01")), up(Decimal(2))
    (Decimal('2'), Decimal('2'))
    """
    return number.to_integral_value(ROUND_CEILING)


@dataclass(frozen=True, slots=True)
class Price:
    """What `pack` of a thing cost together: one, unless it is sold by the box or the roll."""

    amount: Decimal
    pack: Decimal = Decimal(1)


def read_price(text: str) -> Price | None:
    """A price as a project writes it: `14.50`, or `9.80 for 100` where so many are sold together; None for no text.

    Money is decimal through and through, never a float. Raises ValueError for anything else.

    >>> read_price("14.50"), read_price("9,80 for 100").pack, read_price("")
    (Price(amount=Decimal('14.50'), pack=Decimal('1')), Decimal('100'), None)
    """
    if not text:
        return None
    amount, several, pack = text.partition(" for ")
    try:
        price = Price(_coins(_plain(amount)), _plain(pack) if several else Decimal(1))
    except ArithmeticError:
        price = None
    if price is None or price.pack <= 0:
        raise ValueError(f"a price is a number such as `48.00`, or `9.80 for 100` for a box of 100, not {text[:40]!r}")
    return price


def _coins(amount: Decimal) -> Decimal:
    """With two places at least, as money is written: 36.50 and not 36.5."""
    return amount.quantize(_COIN) if amount.as_tuple().exponent > -2 else amount


def _plain(text: str) -> Decimal:
    """A number in plain digits: Decimal would take `1e9` and `NaN` as well.

    After a comma there are two digits at most, so that `1,200` is not read as one and a fifth.
    """
    if not re.fullmatch(r"\d*(\.\d*)?|\d*,\d{1,2}", text):
        raise ArithmeticError(text)
    return Decimal(text.replace(",", "."))


@dataclass(frozen=True, slots=True)
class Line:
    """So much of one thing. `item` is what to ask for, and its name under the prices of the project.

    `needed` is the count of the plan or its estimate, `spare` what is bought over it, both in `unit`. `size` is length,
    width and thickness in ticks, 0 where it has none. `stage` is the first stage of the work that needs it. `waits`
    says what must be measured before it is bought, and `after` what must have been done, both empty where nothing.
    `estimate` says what of it the plan does not
    count itself, and by which rule it was counted here; empty where all is from the plan. `uses` is what for.
    """

    kind: Kind
    item: str
    needed: Decimal
    unit: str
    spare: Decimal = NONE
    size: tuple[int, int, int] = (0, 0, 0)
    stage: int = CASE
    waits: str = ""
    after: str = ""
    estimate: str = ""
    uses: str = ""
    price: Price | None = None

    @property
    def quantity(self) -> Decimal:
        """What is needed, and the spare.

        >>> Line("screw", "flat-head screw No. 8 x 2 in", Decimal(24), "each", spare=Decimal(3)).quantity
        Decimal('27')
        """
        return self.needed + self.spare

    @property
    def packs(self) -> int:
        """How many are bought where it is sold in packs: whole ones, and enough.

        >>> Line("screw", "screw", Decimal(101), "each", price=Price(Decimal("9.80"), Decimal(100))).packs
        2
        """
        pack = self.price.pack if self.price else Decimal(1)
        return int(up(self.quantity / pack))

    @property
    def cost(self) -> Decimal | None:
        """Packs times the price of one, exactly; None where no price is given.

        >>> Line("screw", "screw", Decimal(101), "each", price=Price(Decimal("9.80"), Decimal(100))).cost
        Decimal('19.60')
        """
        return None if self.price is None else self.packs * self.price.amount


def total(lines: Iterable[Line]) -> Decimal:
    """The cost of the lines that have a price, exactly.

    >>> pull = Line("pull", "pull with one hole", Decimal(3), "each", price=Price(Decimal("4.10")))
    >>> total([pull, Line("glue", "wood glue", Decimal(5), "fl oz")])
    Decimal('12.30')
    """
    return sum((line.cost for line in lines if line.cost is not None), NONE)
