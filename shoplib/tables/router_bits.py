"""Straight router bits as sold, the undersize ones too (`data/router_bits.toml`): common practice, no source."""

import tomllib
from functools import cache

from shoplib.measure import read_length
from shoplib.tables.slides import DATA


@cache
def straight_bits(unit: str) -> tuple[int, ...]:
    """The widths in ticks, narrowest first, that a shop working in "in" or "mm" buys, without the undersize ones.

    >>> straight_bits("in")[-1] == read_length("3/4 in"), straight_bits("mm")[-1] == read_length("18 mm")
    (True, True)
    """
    return next(tuple(map(read_length, row["sizes"])) for row in _rows()["bit"] if row["unit"] == unit)


@cache
def undersize_bits() -> dict[int, int]:
    """The nominal thickness of the sheet that each undersize bit is made for, by the width of the bit; in ticks.

    >>> undersize_bits()[read_length("23/32 in")] == read_length("3/4 in")
    True
    """
    return {read_length(row["size"]): read_length(row["for"]) for row in _rows()["undersize"]}


def _rows() -> dict:
    with (DATA / "router_bits.toml").open("rb") as file:
        return tomllib.load(file)
