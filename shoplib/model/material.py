"""What a sheet is made of, as far as its strength, weight and movement go: ranges, for no board is an average."""

from dataclasses import dataclass
from functools import cache

import pint

from shoplib.measure import ureg
from shoplib.model.sheet import Sheet
from shoplib.tables.properties import SheetProperties, WoodProperties, sheet_properties, wood_properties

MOISTURE = 12
"""Percent of moisture at which the properties of the woods stand in the table."""

Range = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Material:
    """`gravity` is the specific gravity, `stiffness` E in megapascals, each (low, high); `weighs` the weight by space.

    `solid` tells wood as it grows from sheets. `known_as` says whose figures these are, in words for a finding.
    """

    known_as: str
    solid: bool
    gravity: Range
    stiffness: Range
    confidence: str
    source: str

    @property
    def weighs(self) -> tuple[pint.Quantity, pint.Quantity]:
        """Weight by volume, least and most.

        The specific gravity of a wood is its dry weight over its volume at 12 %, so 12 % of water comes on top: 1,000 G
        (1 + 12/100) kg/m3 (Wood Handbook, chapter 4, from memory). That of a sheet is taken as it stands in the table.
        """
        return _weighs(self.gravity, self.solid)

    @property
    def stiffnesses(self) -> tuple[pint.Quantity, pint.Quantity]:
        """E, least and most, as pint quantities."""
        return tuple(ureg.Quantity(e, "megapascal") for e in self.stiffness)


@cache  # in newtons by the cubic metre, which `weight.weight` relies on
def _weighs(gravity: Range, solid: bool) -> tuple[pint.Quantity, pint.Quantity]:
    with_water = 1 + MOISTURE / 100 if solid else 1
    return tuple(weight_of_water() * (g * with_water) for g in gravity)


@cache
def weight_of_water() -> pint.Quantity:
    """What 1 kg/m3 thousandfold weighs: the weight of water by its volume."""
    return (ureg.Quantity(1000, "kilogram / meter ** 3") * ureg.standard_gravity).to("newton / meter ** 3")


def material_of(sheet: Sheet) -> Material | None:
    """The figures for a sheet, by its species where it is solid; None where none were read (hardboard).

    A solid sheet without a species gets the range over all woods of the table.

    >>> from shoplib.measure import MM
    >>> material_of(Sheet("shelf stock", "solid", 19 * MM, species="northern red oak")).gravity
    (0.63, 0.63)
    >>> material_of(Sheet("shelf stock", "solid", 19 * MM)).gravity
    (0.32, 0.72)
    """
    return _material(sheet.kind, sheet.species)


@cache
def _material(kind: str, species: str) -> Material | None:
    if kind != "solid":
        row = sheet_properties().get(kind)
        return None if row is None else _of_sheet(row)
    row = wood_properties().get(species)
    return _any_wood() if row is None else _of_wood(row)


def _of_sheet(row: SheetProperties) -> Material:
    return Material(row.material, False, row.gravity, row.stiffness, row.confidence, row.source)


def _of_wood(row: WoodProperties) -> Material:
    return Material(row.species, True, (row.gravity,) * 2, (row.stiffness,) * 2, row.confidence, row.source)


def _any_wood() -> Material:
    rows = wood_properties().values()
    gravity, stiffness = (sorted(values) for values in ([r.gravity for r in rows], [r.stiffness for r in rows]))
    return Material(
        "any wood of the table", True, (gravity[0], gravity[-1]), (stiffness[0], stiffness[-1]),
        "some read, some from memory", next(iter(rows)).source,
    )
