"""A layout that is made by hand, as it stands: sheets with their parts, and the free places that cuts leave."""

from dataclasses import dataclass, field
from typing import Literal, Self

from shoplib.layout.pieces import Job, Laid, Placed, Rect
from shoplib.layout.sawn import SawCut
from shoplib.measure import Style

Way = Literal["rip", "crosscut"]
Key = tuple[int, str]
"""Where a place came from: the number of the step that left it, and on which side of what was laid."""


@dataclass(frozen=True, slots=True)
class Refused:
    """A move that cannot be made: `said` is one sentence, with the amounts."""

    said: str


@dataclass(frozen=True, slots=True)
class Place:
    """A free piece of a sheet, with nothing round it but edges and cuts from edge to edge.

    `strip` says how the strip runs that it is the rest of, "along" the sheet or "up" its width, and `beside` where the
    next strip begins; "" and None where it is none. `stage` and `freed` are stage and kind of the last cut that freed
    it; 0 and "" for a whole sheet.
    """

    letter: str
    sheet: int
    at: Rect
    key: Key
    strip: str = ""
    beside: Key | None = None
    stage: int = 0
    freed: str = ""


@dataclass(frozen=True, slots=True)
class HandSheet:
    """A sheet that is being laid out: `stock` counts in the job's list, `cuts` are those after its trimming."""

    stock: int
    placed: tuple[Placed, ...] = ()
    cuts: tuple[SawCut, ...] = ()


@dataclass(frozen=True, slots=True)
class Step:
    """What was done: a part laid, or with `part` None a strip of `size` cut off. `where` is a place, or the number of
    the stock that was taken new.
    """

    where: Key | int
    way: Way
    part: int | None = None
    turned: bool = False
    size: int = 0


@dataclass(frozen=True, slots=True)
class Hand:
    """What is laid so far: sheets with their parts, free places, and how many of each part are still to lay.

    `along` is where the rest of the strip is that the last part lies in, `beside` where the next strip begins; either
    may be used up.
    """

    job: Job
    style: Style
    to_lay: tuple[int, ...]
    sheets: tuple[HandSheet, ...] = ()
    places: tuple[Place, ...] = ()
    along: Key | None = None
    beside: Key | None = None
    steps: tuple[Step, ...] = ()
    before: Self | None = field(default=None, compare=False, repr=False)

    @property
    def done(self) -> bool:
        """Whether all parts lie."""
        return not any(self.to_lay)

    @property
    def cuts(self) -> int:
        """How many cuts all sheets take as they are planned, trimming included."""
        trims = (self.job.stock[sheet.stock] for sheet in self.sheets)
        return sum(2 * bool(one.trim_ends) + 2 * bool(one.trim_edges) for one in trims) + sum(
            len(sheet.cuts) for sheet in self.sheets
        )

    @property
    def area_left(self) -> int:
        """Square ticks of all free places."""
        return sum(place.at.area for place in self.places)

    @property
    def largest(self) -> Place | None:
        """The largest free place."""
        return max(self.places, key=lambda place: place.at.area, default=None)

    def place(self, letter: str) -> Place | None:
        """The free place with this letter."""
        return next((place for place in self.places if place.letter == letter), None)

    def place_of(self, key: Key | None) -> Place | None:
        """The free place that came from there, None where it is used up."""
        return next((place for place in self.places if place.key == key), None)

    def in_stock(self, stock: int) -> bool:
        """Whether there is one more sheet of this stock to take."""
        there = self.job.stock[stock].count
        return there is None or sum(sheet.stock == stock for sheet in self.sheets) < there

    def size_of(self, part: int, turned: bool = False) -> tuple[int, int]:
        """How far a part reaches along the sheet, and across it."""
        one = self.job.parts[part]
        return (one.width, one.length) if turned else (one.length, one.width)

    def laid(self) -> tuple[Laid, ...]:
        """The sheets as a layout has them."""
        return tuple(Laid(sheet.stock, sheet.placed) for sheet in self.sheets)
