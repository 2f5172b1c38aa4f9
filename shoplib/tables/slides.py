"""Drawer slides and runners: what each one fixes, takes and needs (`data/slides.toml`)."""

import tomllib
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from shoplib.measure import read_length

DATA = Path(__file__).resolve().parents[2] / "data"


@dataclass(frozen=True, slots=True)
class Slide:
    """One row in one unit, lengths in ticks; the file explains each column.

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

    @property
    def past_box(self) -> int:
        """How far it reaches behind the box: bought, it is as long as the box and begins `setback` behind its front.

        >>> slide("undermount", "mm").past_box == read_length("3 mm"), slide("side-hung wood runner").past_box
        (True, 0)
        """
        return self.setback if self.carries == "hardware" else 0


_TEXT = {"name", "source", "carries", "holds"}


@cache
def slides(unit: str = "in") -> dict[str, Slide]:
    """Every row by name, as it is where lengths are shown in this unit ("in" or "mm").

    >>> slides("mm")["side-hung wood runner"].play == read_length("1 mm")
    True
    """
    with (DATA / "slides.toml").open("rb") as file:
        rows = tomllib.load(file)["slide"]
    return {row["name"]: _slide(row, unit) for row in rows}


def slide(name: str, unit: str = "in") -> Slide:
    """The row of that name in this unit; KeyError where there is none."""
    return slides(unit)[name]


def _slide(row: dict, unit: str) -> Slide:
    usual = {key: value for key, value in row.items() if key != "mm"}
    values = usual | row["mm"] if unit == "mm" else usual
    return Slide(**{key: _value(key, value) for key, value in values.items()})


def _value(key: str, value: str | list[str]) -> str | int | tuple[int, ...]:
    if key in _TEXT:
        return value
    if key == "lengths":
        return tuple(read_length(text, what="a slide length") for text in value)
    return read_length(value, what=f"slides.toml {key}", zero=True)
