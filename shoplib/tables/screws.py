"""Screw lengths as sold, by use (`data/screws.toml`)."""

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
def screws() -> dict[str, ScrewRow]:
    """The rows by use.

    >>> screws()["slide"].gauge
    'No. 6'
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
    }
