"""A sheet as bought and as measured: its name is not its thickness."""

from dataclasses import dataclass
from typing import Literal

from shoplib.measure import mean, narrowest, thickest
from shoplib.measure.traced import named
from shoplib.model.cutting import OnHand, StockSize
from shoplib.model.marks import Length, Price, Reading, Room, WholeTicks


@dataclass(frozen=True, slots=True)
class Sheet(WholeTicks):
    """Stock that boards are cut from, lengths in ticks.

    `readings` are caliper readings of the thickness; with none, the nominal thickness stands in
    for them and the plan says so. `grain` is "length" where the boards must follow the grain of
    the sheet, "none" where they may turn. `price` is what one of `length` by `width` costs. `species` names the wood
    of a solid sheet, as the tables of stiffness or of movement call it; empty where it is not said.

    `trim` comes off each bought edge before anything else is cut, blade included, and `trim_ends` off each end (None:
    as `trim`). `sizes` can be bought besides, `on_hand` lies in the shop and is used first. Where `kind` is "solid",
    these are boards: the sizes are stock sizes, and parts are laid out at their rough size.
    """

    name: str
    kind: Literal["plywood", "MDF", "particleboard", "hardboard", "solid"]
    nominal: Length
    readings: tuple[Reading, ...] = ()
    length: Length | None = None
    width: Length | None = None
    grain: Literal["length", "none"] = "length"
    price: Price = ""
    species: str = ""
    trim: Room = 0
    trim_ends: Room | None = None
    sizes: tuple[StockSize, ...] = ()
    on_hand: tuple[OnHand, ...] = ()

    @property
    def thickness(self) -> int:
        """What sums use: the mean of the readings, to the nearest tick.

        >>> Sheet("case sheet", "plywood", 100, (90, 93)).thickness
        92
        """
        return named(mean(self.readings), f"thickness of {self.name}") if self.readings else self.nominal

    @property
    def thickest(self) -> int:
        """What a cut that receives the sheet uses: the thickest reading, or that corner stays out."""
        return named(thickest(self.readings), f"thickest reading of {self.name}") if self.readings else self.nominal

    @property
    def thinnest(self) -> int:
        """What a screw or a bored hole must not come through: the thinnest reading."""
        return named(narrowest(self.readings), f"thinnest reading of {self.name}") if self.readings else self.nominal
