"""One learner's bench: its saw, its sheet and its panels, each drawn from the learner's own seed."""

from dataclasses import dataclass

from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, Style, thickest
from shoplib.measure.seeded import bell, below, seed_of
from shoplib.practice.spreads import STATED, Spreads

VERSION = 1
"""Another version gives every learner another saw."""

USUAL = {"in": INCH * 705 // 1000, "mm": MM * 178 // 10}
"""What a sheet sold as 3/4 in or 18 mm is taken to measure. Invented for the bench; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Saw:
    """What is off with one saw, the same in every cut (ticks): see `Spreads`."""

    cutter: int
    runout: int
    depth: int
    fence: int


@dataclass(frozen=True, slots=True)
class Bench:
    """The bench of `learner` for `exercise`, in `unit` ("in" or "mm"). Nothing on it changes; all follows from these.

    `used_up` is how many sheets were cut at this saw before: with another sheet all but the saw is drawn anew.

    >>> here, there = Bench("Noor", "dado", "in"), Bench("Ilse", "dado", "in")
    >>> here.saw == Bench("Noor", "dado", "in").saw, here.saw == there.saw
    (True, False)
    >>> again = Bench("Noor", "dado", "in", used_up=1)
    >>> again.saw == here.saw, again.sheet == here.sheet
    (True, False)
    """

    learner: str
    exercise: str
    unit: str
    spreads: Spreads = STATED
    used_up: int = 0

    @property
    def style(self) -> Style:
        """How its lengths are written."""
        return INCH_STYLE if self.unit == "in" else MM_STYLE

    @property
    def seed(self) -> str:
        """What the saw is drawn from."""
        return seed_of(self.learner, f"practice cuts/{self.exercise}", self.unit, VERSION)

    @property
    def seed_of_sheet(self) -> str:
        """What all else is drawn from: the sheet, its cuts and readings, and a slip."""
        return f"{self.seed}/sheet {self.used_up + 1}" if self.used_up else self.seed

    @property
    def saw(self) -> Saw:
        """The saw with its hidden errors."""
        off, seed = self.spreads, self.seed
        return Saw(
            bell(off.cutter, seed, "cutter"), below(off.runout + 1, seed, "runout"),
            bell(off.depth, seed, "depth"), bell(off.fence, seed, "fence"),
        )

    @property
    def sheet(self) -> int:
        """The mean thickness of the whole sheet, in ticks."""
        return USUAL[self.unit] + bell(self.spreads.sheet, self.seed_of_sheet, "sheet")

    def spot(self, where: str) -> int:
        """The thickness at one spot of the sheet."""
        return self.sheet + bell(self.spreads.spot, self.seed_of_sheet, "spot", where)

    def thickness(self, board: str) -> int:
        """A board as a dado meets it: the thicker of the spots near its two ends."""
        return thickest([self.spot(f"{board} {end}") for end in ("one end", "other end")])

    def bow(self, board: str) -> int:
        """How far a panel of this name rides up in the middle, where nothing presses it down."""
        return below(self.spreads.bow + 1, self.seed_of_sheet, "bow", board)

    def shift(self, spread: int, *names: str) -> int:
        """What one cut or one reading is off: 0 in the mean, with this spread, drawn by its names."""
        return bell(spread, self.seed_of_sheet, *names)
