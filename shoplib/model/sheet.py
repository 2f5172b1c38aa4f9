"""A sheet as bought and as measured: its name is not its thickness."""

from dataclasses import dataclass
from typing import Literal

from shoplib.measure import mean, narrowest, thickest
from shoplib.measure.traced import named
from shoplib.model.marks import Length, Reading, WholeTicks


@dataclass(frozen=True, slots=True)
class Sheet(WholeTicks):
    """Stock that boards are cut from, lengths in ticks.

    `readings` are caliper readings of the thickness; with none, the nominal thickness stands in
    for them and the plan says so. `grain` is "length" where the boards must follow the grain of
    the sheet, "none" where they may turn. `price` is text as the yard gives it. `species` names the wood of a
    solid sheet, as the tables of stiffness or of movement call it; empty where it is not said.
    """

    name: str
    kind: Literal["plywood", "MDF", "particleboard", "hardboard", "solid"]
    nominal: Length
    readings: tuple[Reading, ...] = ()
    length: Length | None = None
    width: Length | None = None
    grain: Literal["length", "none"] = "length"
    price: str = ""
    species: str = ""

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
