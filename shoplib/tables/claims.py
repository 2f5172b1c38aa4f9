"""A claim: what is said, where it stands, and how far to trust that (`data/sources.toml` has the titles)."""

import tomllib
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache

from shoplib.tables.slides import DATA

MARKS = ("read", "second hand", "follows", "from memory", "common practice")
"""How a claim is known: read in the source; read elsewhere that the source says so; worked out from geometry or from
what was read; known without reading; what shops do and nobody wrote down that we have read."""


class FactError(ValueError):
    """A file of facts or set-ups that cannot be used; one sentence that says where and what is wrong."""


@dataclass(frozen=True, slots=True)
class Claim:
    """One plain sentence or value with its source (whole titles; "" where there is none) and its mark (`MARKS`).

    Raises FactError where the mark is none of those, where something is read in no source, or where nothing is said.
    """

    say: str
    source: str = ""
    mark: str = "common practice"

    def __post_init__(self) -> None:
        if not self.say.strip():
            raise FactError("a claim says nothing.")
        if self.mark not in MARKS:
            raise FactError(f'"{self.say}" is marked {self.mark!r}; a mark is one of {", ".join(MARKS)}.')
        if self.mark in ("read", "second hand") and not self.source:
            raise FactError(f'"{self.say}" is marked {self.mark!r} and names no source.')
        if self.mark == "common practice" and self.source:
            raise FactError(f'"{self.say}" names a source and is marked "common practice"; it is one or the other.')

    @property
    def cited(self) -> str:
        """Source and mark in the words that stand behind the claim.

        >>> Claim("Knife across the grain.", "Fairham, p. 31", "read").cited, Claim("Cut a test piece.").cited
        ('Fairham, p. 31 (read)', 'common practice, no source')
        >>> Claim("Offset = mate less tongue.", mark="follows").cited
        'follows from the geometry'
        """
        if self.source:
            return f"{self.source} ({self.mark})"
        return {"common practice": "common practice, no source", "follows": "follows from the geometry"}.get(
            self.mark, self.mark
        )


def claim(row: dict, where: str, also: Iterable[str] = ()) -> Claim:
    """The claim of one row of a file: `say`, and `source` and `mark` where they are given.

    With a source and no mark it was read there; with neither it is common practice. `where` names the place in the
    sentence of a refusal, `also` the keys of the row that others read. Raises FactError.

    >>> claim({"say": "Gauge from the face side.", "source": "G p. 99; N p. 161"}, "dado.toml").source
    'Griffith, Essentials of Woodworking (1908), p. 99; Noyes, Handwork in Wood (1910), p. 161'
    """
    refuse_others(row, {"say", "source", "mark", *also}, where)
    if "say" not in row:
        raise FactError(f"{where}: a claim has no `say`.")
    short = row.get("source", "")
    try:
        return Claim(row["say"], _in_full(short), row.get("mark", "read" if short else "common practice"))
    except FactError as fault:
        raise FactError(f"{where}: {fault}") from None


def claims(rows: Iterable[dict], where: str) -> tuple[Claim, ...]:
    """The claims of these rows, in their order."""
    return tuple(claim(row, where) for row in rows)


def refuse_others(row: dict, known: set[str], where: str) -> None:
    """Refuse a key that nobody reads, such as a misspelt one: what it says would be lost without a word."""
    unknown = sorted(set(row) - known)
    if unknown:
        raise FactError(f"{where}: `{unknown[0]}` is no key here; the keys are {', '.join(sorted(known))}.")


def _in_full(short: str) -> str:
    """The source with its titles in full; raises FactError for a title that `data/sources.toml` has not."""
    if not short:
        return ""
    parts = []
    for part in short.split("; "):
        key, _, place = part.partition(" ")
        if key not in titles():
            raise FactError(f"`{key}` is no source of data/sources.toml.")
        parts.append(f"{titles()[key]}, {place}" if place else titles()[key])
    return "; ".join(parts)


@cache
def titles() -> dict[str, str]:
    """The whole title of each source by its short name.

    >>> titles()["F"]
    'Fairham, Woodwork Joints (1920)'
    """
    with (DATA / "sources.toml").open("rb") as file:
        return tomllib.load(file)
