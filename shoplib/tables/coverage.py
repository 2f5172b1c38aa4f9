"""How far glue and finish go, and what is bought over the count (`data/coverage.toml`)."""

import tomllib
from dataclasses import dataclass
from decimal import Decimal
from functools import cache

from shoplib.measure import read_length
from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class Coverage:
    """Something bought by area: how many square metres a litre covers in one coat, and how many coats are counted."""

    what: str
    square_metres: Decimal
    coats: int
    mark: str


@dataclass(frozen=True, slots=True)
class ButtScrews:
    """One screw for `every` so much of the length at which two boards meet (ticks), never fewer than `least`."""

    every: int
    least: int
    mark: str


@cache
def _rows() -> dict[str, dict]:
    with (DATA / "coverage.toml").open("rb") as file:
        return tomllib.load(file)


def coverage(name: str) -> Coverage:
    """The row of "glue" or "finish".

    >>> coverage("finish").square_metres, coverage("finish").coats
    (Decimal('10'), 3)
    """
    row = _rows()[name]
    return Coverage(row["what"], Decimal(row["litre_covers_m2"]), row["coats"], row["mark"])


def butt_screws(unit: str) -> ButtScrews:
    """How many screws are counted for a butted joint, in a shop that works in this unit.

    >>> from shoplib.measure import INCH
    >>> butt_screws("in").every == 6 * INCH
    True
    """
    row = _rows()["screws_in_butts"]
    return ButtScrews(read_length(row["every"][unit]), row["least"], row["mark"])


def edging_over(unit: str) -> int:
    """What a piece of edging is longer than its edge, at each end (ticks).

    >>> from shoplib.measure import MM
    >>> edging_over("mm") == 12 * MM
    True
    """
    return read_length(_rows()["edging_over"]["each_end"][unit])
