"""Loads and limits that standards name (`data/loads.toml`): what is put in, how far it may sag."""

import tomllib
from dataclasses import dataclass
from functools import cache

from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class Load:
    """One row: `value` is text with a unit, `mark` says whether it was read in its source or is from memory."""

    value: str
    what: str
    source: str
    mark: str


@cache
def loads() -> dict[str, Load]:
    """The rows by name.

    >>> loads()["put_in"].value, loads()["put_in"].mark
    ('15 lb/ft2', 'read')
    """
    with (DATA / "loads.toml").open("rb") as file:
        return {name: Load(**row) for name, row in tomllib.load(file).items()}
