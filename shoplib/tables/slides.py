"""Drawer slides and runners: what each one fixes, takes and needs (`data/slides.toml`)."""

import tomllib
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from shoplib.measure import read_length

DATA = Path(__file__).resolve().parents[2] / "data"


@dataclass(frozen=True, slots=True)
class Slide:
    """One row, lengths in ticks; the file explains each column.

    >>> slide("side-mount ball-bearing").side * 2 == read_length("1 in")
    True
    """

    name: str
    source: str
    carries: str
    holds: str
    side: int
    narrow: int
    wide: int
    below: int
    above: int
    height: int
    rear_room: int
    travel_lost: int
    setback: int
    lengths: tuple[int, ...] = ()
    bottom_recess: int = 0
    largest_side: int | None = None
    groove_depth: int = 0
    strip_width: int = 0
    play: int = 0


_TEXT = {"name", "source", "carries", "holds"}


@cache
def slides() -> dict[str, Slide]:
    """Every row by name.

    >>> "undermount" in slides()
    True
    """
    with (DATA / "slides.toml").open("rb") as file:
        rows = tomllib.load(file)["slide"]
    return {row["name"]: Slide(**{key: _value(key, value) for key, value in row.items()}) for row in rows}


def slide(name: str) -> Slide:
    """The row of that name; KeyError where there is none."""
    return slides()[name]


def _value(key: str, value: str | list[str]) -> str | int | tuple[int, ...]:
    if key in _TEXT:
        return value
    if key == "lengths":
        return tuple(read_length(text, what="a slide length") for text in value)
    return read_length(value, what=f"slides.toml {key}", zero=True)
