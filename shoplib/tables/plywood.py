"""Least and greatest thickness of plywood by its name (`data/plywood_limits.csv`, from PS 1)."""

import csv
from dataclasses import dataclass
from functools import cache

from shoplib.measure import read_length
from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class PlywoodLimits:
    """One printed row, lengths in ticks.

    `surface` is "unsanded" (touch-sanded and overlaid sheets too) or "sanded". `confidence` says whether
    the limits were read in the standard or computed from a rule read there.
    """

    surface: str
    nominal: int
    least: int
    greatest: int
    confidence: str
    source: str


@cache
def plywood_limits(surface: str = "unsanded") -> dict[int, PlywoodLimits]:
    """The rows for this surface by nominal thickness in ticks; empty for a surface that has none.

    >>> plywood_limits()[read_length("23/32 in")].least == read_length("0.688 in")
    True
    """
    with (DATA / "plywood_limits.csv").open(newline="", encoding="utf-8") as file:
        rows = [_row(row) for row in csv.DictReader(file) if row["surface"] == surface]
    return {row.nominal: row for row in rows}


def _row(row: dict[str, str]) -> PlywoodLimits:
    nominal, least, greatest = (
        read_length(f"{row[column]} in", what=f"plywood_limits.csv {column}")
        for column in ("nominal_in", "min_in", "max_in")
    )
    return PlywoodLimits(row["surface"], nominal, least, greatest, row["confidence"], row["source"])
