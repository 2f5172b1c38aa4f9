"""Screw lengths as sold, by use (`data/screws.toml`)."""

import tomllib
from dataclasses import dataclass
from functools import cache

from shoplib.measure import read_length
from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class ScrewRow:
    """A gauge and the lengths it is sold in, in ticks."""

    use: str
    gauge: str
    lengths: tuple[int, ...]


@cache
def screws() -> dict[str, ScrewRow]:
    """The rows by use.

    >>> screws()["slide"].gauge
    'No. 6'
    """
    rows = _file()["screw"]
    return {r["use"]: ScrewRow(r["use"], r["gauge"], tuple(map(read_length, r["lengths"]))) for r in rows}


@cache
def wood_before_point() -> int:
    """The wood that must stay in front of the point of a screw, in ticks (common practice, no source)."""
    return read_length(_file()["spare"])


@cache
def _file() -> dict:
    with (DATA / "screws.toml").open("rb") as file:
        return tomllib.load(file)
