"""Diameters of wood screws by gauge, and the holes for them (`data/screw_sizes.csv`; metric: `screw_sizes_mm.csv`)."""

import csv
from dataclasses import dataclass
from functools import cache

from shoplib.measure import read_length
from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class ScrewSize:
    """One gauge, lengths in ticks.

    `diameter` is that of the shank (ASME B18.6.1). `root`, `clearance` and the pilot holes for soft and hard wood are
    from open tables, which differ: none of them is a standard. None where no figure was read. Those of metric gauges
    are worked out from the inch row as thick.
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
    return _read("screw_sizes.csv", "in", "No. {}")


@cache
def metric_screw_sizes() -> dict[str, ScrewSize]:
    """The rows of metric gauges.

    >>> metric_screw_sizes()["4.0 mm"].clearance == read_length("4.5 mm")
    True
    """
    return _read("screw_sizes_mm.csv", "mm", "{} mm")


def size_of(gauge: str) -> ScrewSize:
    """The row of an inch or a metric gauge. KeyError where none was read.

    >>> [size_of(gauge).gauge for gauge in ("No. 8", "3.5 mm")]
    ['No. 8', '3.5 mm']
    """
    return (metric_screw_sizes() if gauge.endswith(" mm") else screw_sizes())[gauge]


def _read(name: str, unit: str, called: str) -> dict[str, ScrewSize]:
    with (DATA / name).open(newline="", encoding="utf-8") as file:
        rows = [_row(row, unit, called) for row in csv.DictReader(file)]
    return {row.gauge: row for row in rows}


def _row(row: dict[str, str], unit: str, called: str) -> ScrewSize:
    columns = ("diameter", "root", "clearance_hole", "pilot_softwood", "pilot_hardwood")
    given = [row[f"{column}_{unit}"] for column in columns]
    sizes = [read_length(f"{size} {unit}") if size else None for size in given]
    return ScrewSize(called.format(row["gauge"]), *sizes, row["confidence"], row["source"])
