"""Diameters of wood screws by gauge, and the holes that open tables give for them (`data/screw_sizes.csv`)."""

import csv
from dataclasses import dataclass
from functools import cache

from shoplib.measure import read_length
from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class ScrewSize:
    """One gauge, lengths in ticks.

    `diameter` is that of the shank (ASME B18.6.1). `root`, `clearance` and the pilot holes for soft and hard wood are
    from open tables, which differ: none of them is a standard. None where no figure was read.
    """

    gauge: str
    diameter: int
    root: int | None
    clearance: int | None
    pilot_softwood: int | None
    pilot_hardwood: int | None
    confidence: str
    source: str


@cache
def screw_sizes() -> dict[str, ScrewSize]:
    """The rows by gauge.

    >>> screw_sizes()["No. 8"].diameter == read_length("0.164 in")
    True
    """
    with (DATA / "screw_sizes.csv").open(newline="", encoding="utf-8") as file:
        rows = [_row(row) for row in csv.DictReader(file)]
    return {row.gauge: row for row in rows}


def _row(row: dict[str, str]) -> ScrewSize:
    columns = ("diameter_in", "root_in", "clearance_hole_in", "pilot_softwood_in", "pilot_hardwood_in")
    sizes = [read_length(f"{row[column]} in") if row[column] else None for column in columns]
    return ScrewSize(f"No. {row['gauge']}", *sizes, row["confidence"], row["source"])
