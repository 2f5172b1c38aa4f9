"""What drawer slides are tested to carry, class by class (`data/slide_ratings.csv`, from AWS 2009)."""

import csv
from dataclasses import dataclass
from functools import cache

from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class SlideRating:
    """One class: the load in pounds that the pair carries standing still, and running in and out so many times."""

    static: int
    moving: int
    cycles: int
    confidence: str
    source: str


@cache
def slide_ratings() -> tuple[SlideRating, ...]:
    """The classes, the lightest first.

    >>> [(row.static, row.moving, row.cycles) for row in slide_ratings()]
    [(50, 30, 35000), (75, 50, 50000), (100, 75, 100000)]
    """
    with (DATA / "slide_ratings.csv").open(newline="", encoding="utf-8") as file:
        return tuple(
            SlideRating(int(row["static_lb"]), int(row["moving_lb"]), int(row["cycles"]), row["confidence"],
                        row["source"])
            for row in csv.DictReader(file)
        )
