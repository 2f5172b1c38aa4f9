"""Stacked dado sets: outer cutters, chippers and shims (`data/dado_sets.toml`)."""

import tomllib
from dataclasses import dataclass
from functools import cache

from shoplib.measure import read_length
from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class DadoSet:
    """The cutters and shims that a person owns, lengths in ticks.

    `outer` is the width that one of the two outer cutters cuts. Of `chippers` and `shims` each piece stands by
    itself, as often as it is owned.

    Raises ValueError for a piece without thickness, TypeError for one that is no whole number of ticks.
    """

    name: str
    unit: str
    diameter: int
    outer: int
    chippers: tuple[int, ...] = ()
    shims: tuple[int, ...] = ()
    source: str = ""

    def __post_init__(self) -> None:
        for piece in (self.diameter, self.outer, *self.chippers, *self.shims):
            if not isinstance(piece, int):
                raise TypeError(f"{self.name}: a length is a whole number of ticks, not {piece!r}.")
            if piece < 1:
                raise ValueError(f"{self.name}: every cutter and shim has a thickness; one is given with none.")


@cache
def dado_sets() -> dict[str, DadoSet]:
    """Every set by name.

    >>> inch = dado_sets()["8 in set, inch sizes"]
    >>> inch.outer == read_length("1/8 in"), len(inch.chippers), inch.diameter == read_length("8 in")
    (True, 6, True)
    """
    with (DATA / "dado_sets.toml").open("rb") as file:
        rows = tomllib.load(file)["set"]
    return {row["name"]: _set(row) for row in rows}


def _set(row: dict) -> DadoSet:
    def length(text: str) -> int:
        return read_length(text, what=f"dado_sets.toml {row['name']}")

    return DadoSet(
        row["name"],
        row["unit"],
        length(row["diameter"]),
        length(row["outer"]),
        tuple(map(length, row["chippers"])),
        tuple(map(length, row["shims"])),
        row["source"],
    )
