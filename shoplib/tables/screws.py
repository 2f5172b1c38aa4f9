"""Screw lengths as sold, by unit and use (`data/screws.toml`)."""

import tomllib
from dataclasses import dataclass
from functools import cache

from shoplib.measure import read_length
from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class ScrewRow:
    """A gauge, the lengths it is sold in, and the wood that must stay before its point; ticks.

    `spare` is 0 for screws into an end, before which no face lies.
    """

    use: str
    gauge: str
    lengths: tuple[int, ...]
    spare: int


@cache
def screws(unit: str) -> dict[str, ScrewRow]:
    """The rows by use, of the screws that a shop working in this unit ("in" or "mm") buys.

    >>> screws("in")["slide"].gauge, screws("mm")["slide"].gauge
    ('No. 6', '3.5 mm')
    """
    with (DATA / "screws.toml").open("rb") as file:
        rows = tomllib.load(file)["screw"]
    return {
        row["use"]: ScrewRow(
            row["use"],
            row["gauge"],
            tuple(map(read_length, row["lengths"])),
            read_length(row["spare"]) if "spare" in row else 0,
        )
        for row in rows
        if row["unit"] == unit
    }
