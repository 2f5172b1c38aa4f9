"""A joint on the bench, before any project: the stock it is cut in, what can be set, and the boards it becomes.

Every joint is one module of this room with one `JointKind`; `shoplib.joints` lists them.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from types import MappingProxyType
from typing import Literal

from shoplib.measure import INCH, INCH_STYLE, MM, Style, share, to_step, write_brief
from shoplib.model.board import LEAST_WOOD, Board
from shoplib.model.box import Box, Point
from shoplib.model.marks import Length, WholeTicks, natural
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Joint
from shoplib.model.wood_kept import missing_wood


class CannotCut(ValueError):
    """The joint cannot be cut so; the message is one sentence with the amount.

    `setting` is the name of the value to change, `amount` by how much it is too far (ticks), `what` where wood is
    missing, if that is why.
    """

    def __init__(self, setting: str, sentence: str, amount: int, what: str = "") -> None:
        super().__init__(sentence)
        self.setting, self.sentence, self.amount, self.what = setting, sentence, amount, what


@dataclass(frozen=True, slots=True)
class Stock(WholeTicks):
    """The two boards to be joined, as they lie on the bench. Lengths in ticks.

    `enters` goes into `receives`; their readings are those of a caliper. `width` is the width of the entering board.
    In a case or a drawer both boards are as wide as each other, along the joint; `receives_width` matters where
    boards cross, in frames, legs and rails (None: as wide as the entering one). Lengths are what is shown of them
    beyond the joint. `style` says in which unit round numbers and sentences come.
    """

    enters: Sheet
    receives: Sheet
    width: Length = natural(6 * INCH, 150 * MM)
    receives_width: Length | None = None
    enters_length: Length = natural(10 * INCH, 250 * MM)
    receives_length: Length = natural(10 * INCH, 250 * MM)
    style: Style = INCH_STYLE

    @property
    def across(self) -> int:
        """The width of the receiving board."""
        return self.width if self.receives_width is None else self.receives_width

    def part(self, length: int, parts: int, times: int = 1) -> int:
        """So many parts of a length at the nearest step of the shop: a rule of proportion.

        >>> stock_of(3 * INCH // 4).part(3 * INCH // 4, 3) == INCH // 4
        True
        """
        return to_step(share(length * times, parts, 1)[0], self.style.step)

    def natural(self, inch: int, mm: int) -> int:
        """A round number in the unit of the stock."""
        return inch if self.style.unit == "in" else mm

    def say(self, ticks: int) -> str:
        """A length in a sentence."""
        return write_brief(ticks, self.style)


def stock_of(enters: int, receives: int | None = None, *, kind: str = "plywood", **rest: object) -> Stock:
    """Stock of stated thickness without readings; the rest as in `Stock`.

    >>> stock_of(3 * INCH // 4, INCH // 2).receives.thickness == INCH // 2
    True
    """
    receives = enters if receives is None else receives
    return Stock(Sheet("entering stock", kind, enters), Sheet("receiving stock", kind, receives), **rest)


Values = Mapping[str, int]
"""Settings by name: ticks, counts, degrees, or a slope in tenths (80 is 1 in 8)."""

Of = Callable[[Stock], int]

Sizes = tuple[tuple[str, int], ...]
"""Lengths of a joint in ticks, each after what it is called."""


@dataclass(frozen=True, slots=True)
class Setting:
    """One thing that a joint really varies, with its limits and its usual value for a given stock.

    `unit` is "length" (ticks), "count", "degrees", "slope" (tenths: 80 is 1 in 8) or "choice" (the place in
    `choices`). `rule` says where the usual value comes from: its source and its mark. `only` lists the values
    that can be cut from this stock, rising, where they are no range: fingers close on a width with some sizes only.
    """

    name: str
    label: str
    low: Of
    high: Of
    default: Of
    step: Of
    rule: str
    unit: Literal["length", "count", "degrees", "slope", "choice"] = "length"
    choices: tuple[str, ...] = ()
    only: Callable[[Stock], Sequence[int] | None] = lambda stock: None

    def must_exist(self, stock: Stock, value: int) -> None:
        """Refuse what nobody can cut. Past `low` and `high` a value is free, for so it is shown what goes wrong.

        A choice is one of those there are, a count, a slope or an angle 1 or more, an angle under 90. A length is no
        less than nothing; where something is cut at all, so that `low` is more than nothing, it is one step of the shop
        or more. Raises ValueError for a choice, TypeError for no whole number, else CannotCut with what is too far.
        """
        if not isinstance(value, int):
            raise TypeError(f"the {self.name} is a whole number, not {value!r}.")
        if self.unit == "choice":
            if not 0 <= value < len(self.choices):
                offered = ", ".join(f"{place} ({name})" for place, name in enumerate(self.choices))
                raise ValueError(f"the {self.name} is one of {offered}; there is no {value}.")
            return
        cut = stock.style.step if self.low(stock) else 0
        least, say = (cut, stock.say) if self.unit == "length" else (1, str)
        if value < least:
            told = f"For {self.name}, {say(value)} is given; {say(least)} or more can be cut."
            raise CannotCut(self.name, told, least - value)
        if self.unit == "degrees" and value >= 90:
            told = f"For {self.name}, {value} degrees is given; less than 90 can be cut."
            raise CannotCut(self.name, told, value - 89)


@dataclass(frozen=True, slots=True)
class Clearance:
    """Board `mover`, moved along the world direction `way`, strikes `against` after exactly `gap` ticks.

    Nothing (0) is a shoulder or a floor that bears. `part`, a world box, keeps the look to the wood of the mover that
    lies in it: the tongue alone, where a shoulder bears before the tongue does.
    """

    what: str
    mover: str
    against: str
    way: str
    gap: int
    part: Box | None = None


@dataclass(frozen=True)
class Pair:
    """The boards of one joint, put together, with what is said of it.

    `apart` is how far each board is moved when the pair is drawn apart, `section` the world axis and the place of the
    cut that shows the joint best. `named` are the parts of the joint: the board each belongs to, and a world point of
    it while the pair is together.
    """

    kind: str
    stock: Stock
    values: Values
    boards: tuple[Board, ...]
    joints: tuple[Joint, ...]
    clearances: tuple[Clearance, ...]
    apart: Mapping[str, Point]
    section: tuple[str, int]
    named: Mapping[str, tuple[str, Point]]

    @cached_property
    def by_name(self) -> dict[str, Board]:
        """The boards by name."""
        return {board.name: board for board in self.boards}


_NARROW = (5 * INCH // 2, 60 * MM)


@dataclass(frozen=True)
class JointKind:
    """A joint: `name` is its key everywhere, `title` what the page calls it, `group` its place in the course (1 to 3).

    `make` and `gain` get the stock and all values; `build` and `allowance` fill in those that are left out. `beside`
    tells what nobody could read off the boards: what is set for cuts that are no boxes, how far a screw reaches.

    What it is usually cut in: rails and stiles or legs, which are narrow, where it is the joint of a `frame`, else
    boards so `wide` (inches, millimetres). `boards` are the entering and the receiving one: "thin" or "drawer" for a
    sheet of that kind, "" for what its group is made of.
    """

    name: str
    title: str
    group: int
    settings: tuple[Setting, ...]
    make: Callable[[Stock, Values], Pair]
    gain: Callable[[Stock, Values], int]
    beside: Callable[[Stock, Values], Sizes] = lambda stock, values: ()
    frame: bool = False
    wide: tuple[int, int] = (6 * INCH, 150 * MM)
    boards: tuple[Literal["", "thin", "drawer"], Literal["", "thin", "drawer"]] = ("", "")

    def usual_width(self, unit: str) -> int:
        """How wide its boards are where nobody says so in ticks. Those of a frame: common practice, no source.

        >>> from shoplib.joints import joint
        >>> joint("bridle").usual_width("mm") // MM, joint("dado").usual_width("in") // INCH
        (60, 6)
        """
        return (_NARROW if self.frame else self.wide)[unit == "mm"]

    def usual(self, stock: Stock) -> dict[str, int]:
        """The usual value of every setting for this stock."""
        return {setting.name: setting.default(stock) for setting in self.settings}

    def values(self, stock: Stock, given: Values = MappingProxyType({})) -> dict[str, int]:
        """All values: those given, and the usual ones for the rest.

        Raises ValueError for a setting or a choice that the joint has not, CannotCut for a value that nobody can cut.
        """
        usual = self.usual(stock)
        unknown = [name for name in given if name not in usual]
        if unknown:
            raise ValueError(f"a {self.name} has no setting {unknown[0]!r}; it has {', '.join(usual)}.")
        for setting in self.settings:
            if setting.name in given:
                setting.must_exist(stock, given[setting.name])
        return usual | dict(given)

    def build(self, stock: Stock, values: Values = MappingProxyType({})) -> Pair:
        """The pair. Raises CannotCut where it would leave too little wood, with the amount."""
        return self.make(stock, self.values(stock, values))

    def allowance(self, stock: Stock, values: Values = MappingProxyType({})) -> int:
        """What the entering board gains at this end, over one that stands against the receiving board's face."""
        return self.gain(stock, self.values(stock, values))


def must_leave(stock: Stock, setting: str, what: str, left: int, least: int = LEAST_WOOD) -> None:
    """Refuse a cut that leaves less wood than `least`: CannotCut says how much is left, and what is missing.

    What is said is on the safe side of what is so, in whole steps of the shop; `amount` stays exact.

    >>> must_leave(stock_of(3 * INCH // 4), "depth", "under the dado", INCH // 16, INCH // 8)
    Traceback (most recent call last):
    ...
    shoplib.joints.bench_pair.CannotCut: Only 1/16 in of wood is left under the dado, and 1/8 in must stay: 1/16 in \
is missing.
    """
    refuse(setting, missing_wood(what, left, stock.style, least), what)


def refuse(setting: str, fault: tuple[str, int] | None, what: str = "") -> None:
    """CannotCut for a fault that the model tells (its sentence and the amount); nothing where it tells none."""
    if fault is not None:
        sentence, short = fault
        raise CannotCut(setting, f"{sentence[0].upper()}{sentence[1:]}.", short, what)
