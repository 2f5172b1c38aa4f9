"""How stiff and how heavy woods and sheets are (`data/wood_properties.csv`, `data/sheet_stiffness.csv`)."""

import csv
from dataclasses import dataclass
from functools import cache

from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class WoodProperties:
    """One wood at 12 % of moisture (Wood Handbook, Table 5-3).

    `gravity` is its specific gravity (dry weight, volume at 12 %), `stiffness` its modulus of elasticity in
    megapascals from a test on a short span, without correction for shear. `moves_as` is its row of
    `data/wood_movement.csv`, empty where it has none. `confidence` says whether the figures were read or are from
    memory.
    """

    species: str
    gravity: float
    stiffness: float
    moves_as: str
    confidence: str
    source: str


@dataclass(frozen=True, slots=True)
class SheetProperties:
    """One family of sheets (Wood Handbook, Table 12-1): ranges (low, high).

    `gravity` is the specific gravity, `stiffness` the modulus of elasticity in bending, in megapascals, along the
    stiffer way of the sheet.
    """

    material: str
    gravity: tuple[float, float]
    stiffness: tuple[float, float]
    confidence: str
    source: str


@cache
def wood_properties() -> dict[str, WoodProperties]:
    """All woods by name.

    >>> wood_properties()["northern red oak"].gravity
    0.63
    """
    return {
        row["species"]: WoodProperties(
            row["species"], float(row["specific_gravity"]), float(row["moe_mpa"]), row["moves_as"],
            row["confidence"], row["source"],
        )
        for row in _rows("wood_properties.csv")
    }


@cache
def sheet_properties() -> dict[str, SheetProperties]:
    """All families of sheets by name; hardboard is not among them, for no figure was read.

    >>> sheet_properties()["plywood"].stiffness
    (6960.0, 8550.0)
    """
    return {
        row["material"]: SheetProperties(
            row["material"],
            (float(row["specific_gravity_low"]), float(row["specific_gravity_high"])),
            (1000 * float(row["moe_gpa_low"]), 1000 * float(row["moe_gpa_high"])),
            row["confidence"],
            row["source"],
        )
        for row in _rows("sheet_stiffness.csv")
    }


def _rows(name: str) -> list[dict[str, str]]:
    with (DATA / name).open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))
