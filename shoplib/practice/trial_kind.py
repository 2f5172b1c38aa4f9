"""What the trial bench needs to know of a joint: its scales, where its boards meet, what is looked at, and its slips.

What came off the machine is the joint's own pair: each board is made with the sizes that its own cuts came out with.
The joint itself (`shoplib.joints`) does the geometry, so there is no second one here.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from typing import Literal

from shoplib.joints.bench_pair import JointKind, Pair, Stock, Values
from shoplib.measure import MM
from shoplib.model.box import Box, Point
from shoplib.practice.assembled import GLUED

FAR = 10_000 * MM
"""Farther than any board reaches."""


@dataclass(frozen=True, slots=True)
class Scale:
    """One thing that is set: `label` names the control, `makes` what it makes, which a caliper reads.

    `sort` says how far it is off (`trial_spreads`), `cuts` names the cuts that are made with it, each by itself: as a
    rule by the board that it is in. `aim` is
    what it is to be for a stock and the plan, `rule` that in words; "{aim}" in it stands for the size where it does
    not hang on how thick the boards are, and `told` gives further lengths that it names. `reach` is how far from the
    usual it can be set. An "angle" is in parts of a degree (`trial_spreads.DEGREE`).
    """

    name: str
    label: str
    makes: str
    sort: str
    cuts: tuple[str, ...]
    aim: Callable[[Stock, Values], int]
    rule: str
    reach: tuple[int, int] = (0, 0)
    told: Callable[[Stock, Values], Values] = lambda stock, plan: {}


@dataclass(frozen=True, slots=True)
class Made:
    """What was cut at one setting: `sizes` by scale and cut, and `again`, a change from cut to cut by its names."""

    sizes: Mapping[tuple[str, str], int]
    again: Callable[..., int]

    def of(self, scale: str, cut: str) -> int:
        """What a scale came out as in that cut."""
        return self.sizes[scale, cut]


@dataclass(frozen=True, slots=True)
class Meet:
    """Where board `mover` meets `against` along a world axis, and what a person does about it.

    "between": it is put between two walls, so that neither stands in it. "home": it is pushed in `way` (-1 or 1)
    until something stops it, at its planned place or before. "sink": pushed until something stops it, wherever that
    is. "read": the room is only looked at. `part` keeps the look to the wood of the mover in a world box.
    """

    name: str
    mover: str
    against: str
    axis: int
    does: Literal["between", "home", "sink", "read"]
    way: int = 0
    part: Callable[[Stock, Values], Box] | None = None


@dataclass(frozen=True)
class Stood:
    """A pair put together as a person would: the boards where they then stand, the room found at each meeting.

    `planned` is the pair as it is meant. `tight` names the meetings at which the mover does not go in. `stopped` is
    how far before its place a slip stops it; nothing is read then. `gone` is how far
    each board was moved.
    """

    pair: Pair
    planned: Pair
    room: Mapping[str, tuple[int | None, int | None]]
    tight: tuple[str, ...] = ()
    stopped: int = 0
    gone: Mapping[str, Point] = field(default_factory=dict)

    def play(self, meet: str) -> int:
        """The play between two walls; less than nothing where the board is too thick for them."""
        back, forth = self.room[meet]
        return (back or 0) + (forth or 0)

    def off(self, board: str, against: str, axis: int, end: Literal["low", "high"]) -> int:
        """How far one board's face stands beyond another's along a world axis, more than is planned."""
        def apart(pair: Pair) -> int:
            one, other = (getattr(pair.by_name[name].box, end)[axis] for name in (board, against))
            return one - other

        return apart(self.pair) - apart(self.planned)


@dataclass(frozen=True, slots=True)
class Look:
    """One thing that is looked at or felt in the joint as it was cut.

    `amount` reads it off the boards: for a "fit" the play, for a "gap" how far it is off what is meant. `more` and
    `less` say what is wrong with it, with {size}, and what can be saved. `brief` says the same in few words for the
    log: that nothing is off, more, and less; of a "fit" its first words name what enters what. `allow` is what a shop
    lets pass. A look that is `felt` is told of a test joint too.
    """

    name: str
    sort: Literal["fit", "gap"]
    amount: Callable[[Stood], int]
    good: str = ""
    more: tuple[str, str] = ("", "")
    less: tuple[str, str] = ("", "")
    brief: tuple[str, str, str] = ("fit", "", "")
    allow: int = GLUED
    felt: bool = True


@dataclass(frozen=True, slots=True)
class TrialSlip:
    """A slip of the shop: how the board lies or is cut, what happened, what it does to the pair, what can be saved.

    `shows` are the looks at which its harm is seen, where it does none as long as little is off: it counts an error
    twice. Any other slip is harm by itself.
    """

    name: str
    way: str
    how: str
    does: Callable[[Pair], Pair]
    saved: str
    shows: tuple[str, ...] = ()


@dataclass(frozen=True)
class Trial:
    """The practice of one joint: what is set, how the pair comes out, how it is put together, and its slips.

    The cautions of the set-up `way` and of the tools `also` stand first. `enters` is how one board is pushed into the
    other, `meets` what is then met, one after the other.
    """

    kind: JointKind
    way: str
    scales: tuple[Scale, ...]
    as_cut: Callable[[JointKind, Stock, Values, Made], Pair]
    enters: Meet
    meets: tuple[Meet, ...]
    looks: tuple[Look, ...]
    slips: tuple[TrialSlip, ...]
    also: tuple[str, ...] = ()

    @property
    def name(self) -> str:
        """The key of the joint."""
        return self.kind.name


def each_board(kind: JointKind, stock: Stock, plan: Values, given: Mapping[str, Values]) -> Pair:
    """The pair of which each board is made with its own values, those of the plan where `given` has none.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> dado, stock = joint("dado"), stock_of(3 * INCH // 4)
    >>> plan = dado.usual(stock)
    >>> deeper = each_board(dado, stock, plan, {"side": {"depth": plan["depth"] + 100}})
    >>> dado.build(stock).by_name["shelf"] == deeper.by_name["shelf"]
    True
    """
    meant = kind.make(stock, plan)
    own = {name: kind.make(stock, {**plan, **values}) for name, values in given.items()}
    boards = tuple(own.get(board.name, meant).by_name[board.name] for board in meant.boards)
    named = {
        part: own.get(board, meant).named.get(part, (board, point)) for part, (board, point) in meant.named.items()
    }
    return replace(meant, boards=boards, named=named)
