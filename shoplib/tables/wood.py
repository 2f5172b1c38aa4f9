"""How much wood moves across its grain, species by species (`data/wood_movement.csv`, from the Wood Handbook)."""

import csv
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class Wood:
    """One row: change of width for each 1 % of moisture content, as a part of the width.

    `radial` is for quartersawn boards, `tangential` for flatsawn ones (Wood Handbook FPL-GTR-190, 2010, Table 13-5).
    `confidence` says whether the figures were read in the handbook or are from memory.
    """

    species: str
    group: str
    radial: Fraction
    tangential: Fraction
    confidence: str
    source: str

    def coefficient(self, cut: str) -> Fraction:
        """The one for boards "flatsawn" or "quartersawn"; ValueError for another cut."""
        if cut not in ("flatsawn", "quartersawn"):
            raise ValueError(f'a board is "flatsawn" or "quartersawn", not {cut!r}.')
        return self.tangential if cut == "flatsawn" else self.radial


@cache
def woods() -> dict[str, Wood]:
    """All rows by the name of the species.

    >>> float(woods()["white fir"].coefficient("flatsawn"))
    0.00245
    """
    with (DATA / "wood_movement.csv").open(newline="", encoding="utf-8") as file:
        rows = [
            Wood(row["species"], row["group"], Fraction(row["radial_per_pct"]), Fraction(row["tangential_per_pct"]),
                 row["confidence"], row["source"])
            for row in csv.DictReader(file)
        ]
    return {row.species: row for row in rows}
