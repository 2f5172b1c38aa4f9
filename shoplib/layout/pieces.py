"""What is laid out, on what, and what comes of it: plain rectangles in whole ticks.

On every sheet and board x runs along its length, which is the way of its grain, and y along its width, both from
the same corner. `w` is a size along x, `h` one along y.
"""

from dataclasses import dataclass
from typing import NamedTuple


class LayoutError(ValueError):
    """The parts cannot be laid out as asked; the message is one sentence that says what would be right."""


class Rect(NamedTuple):
    """A rectangle on a sheet: its corner nearest the sheet's own, and its sizes, in ticks."""

    x: int
    y: int
    w: int
    h: int

    @property
    def area(self) -> int:
        """Square ticks.

        >>> Rect(5, 5, 30, 20).area
        600
        """
        return self.w * self.h

    def holds(self, other: "Rect") -> bool:
        """Whether the other lies in this one, or is as large.

        >>> Rect(0, 0, 30, 20).holds(Rect(10, 0, 20, 20)), Rect(0, 0, 30, 20).holds(Rect(10, 5, 20, 20))
        (True, False)
        """
        along = self.x <= other.x and other.x + other.w <= self.x + self.w
        return along and self.y <= other.y and other.y + other.h <= self.y + self.h


@dataclass(frozen=True, slots=True)
class Part:
    """A kind of part as it leaves the saw: `count` equal ones, `length` along the grain, lengths in ticks.

    `may_turn`: it may lie across the grain of the sheet as well. `turn` is the turn at the saw in which it is cut: what
    has a greater number waits until all with a smaller one are done.
    """

    name: str
    length: int
    width: int
    count: int = 1
    may_turn: bool = False
    turn: int = 0

    def fits(self, stock: "Stock") -> bool:
        """Whether it comes out of the stock at all, the edges trimmed.

        >>> Part("shelf", 600, 300).fits(Stock("ply", 400, 700)), Part("back", 600, 300, 1, True).fits(
        ...     Stock("ply", 400, 700))
        (False, True)
        """
        usable = stock.usable
        along = self.length <= usable.w and self.width <= usable.h
        return along or (self.may_turn and self.width <= usable.w and self.length <= usable.h)


@dataclass(frozen=True, slots=True)
class Stock:
    """A size of sheet or board, lengths in ticks; `count` is how many there are, None as many as are bought.

    `cost` is what one costs, a whole number: any measure that is the same for all stock of a layout (money in the
    smallest coin, or area where no price is known); 0 for what lies in the shop already. `trim_ends` comes off each
    end (along x), `trim_edges` off each long edge (along y), blade included, before anything else is cut.
    """

    name: str
    length: int
    width: int
    count: int | None = None
    cost: int = 0
    trim_ends: int = 0
    trim_edges: int = 0

    @property
    def usable(self) -> Rect:
        """What is left for parts when the edges are trimmed.

        >>> Stock("ply", 2440, 1220, trim_ends=10, trim_edges=5).usable
        Rect(x=10, y=5, w=2420, h=1210)
        """
        return Rect(
            self.trim_ends, self.trim_edges, self.length - 2 * self.trim_ends, self.width - 2 * self.trim_edges
        )


@dataclass(frozen=True, slots=True)
class Placed:
    """One part where it lies: `part` counts in the list of parts, from 0; `turned` across the grain."""

    part: int
    at: Rect
    turned: bool = False


@dataclass(frozen=True, slots=True)
class Laid:
    """One sheet with its parts; `stock` counts in the list of stock, from 0."""

    stock: int
    placed: tuple[Placed, ...]


@dataclass(frozen=True, slots=True)
class Layout:
    """All parts on sheets, with the `cost` of the stock and the least cost that any layout can have (`bound`)."""

    sheets: tuple[Laid, ...]
    cost: int
    bound: int

    def __post_init__(self) -> None:
        if self.cost < self.bound:
            raise AssertionError(f"a layout costs {self.cost}, and none was to cost less than {self.bound}")

    @property
    def proven(self) -> bool:
        """Whether no layout can cost less."""
        return self.cost == self.bound


@dataclass(frozen=True, slots=True)
class Job:
    """What is to be laid out together: parts and stock of one thickness, and the width of the saw cut."""

    parts: tuple[Part, ...]
    stock: tuple[Stock, ...]
    kerf: int = 0
    shortest: int = 0

    @property
    def grained(self) -> bool:
        """Whether any part has to lie along the grain, so that it makes a difference which way a cut runs.

        >>> Job((Part("side", 60, 20),), ()).grained, Job((Part("bottom", 60, 20, may_turn=True),), ()).grained
        (True, False)
        """
        return not all(part.may_turn for part in self.parts)
