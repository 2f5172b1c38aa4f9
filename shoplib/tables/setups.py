"""How each joint is set up and cut, tool by tool, with the cautions that belong to it (`data/setups/`).

A set-up carries the cautions of its tools and kinds of cut (`data/cautions.toml`) and cannot be made without them.
"""

import tomllib
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from shoplib.tables.claims import Claim, FactError, claims, refuse_others
from shoplib.tables.joint_facts import JOINT_NAMES
from shoplib.tables.slides import DATA

ALWAYS = "every tool"
"""What the cautions that belong to every set-up stand under."""

HEADINGS = ("reference", "stops", "order", "test", "measure", "tear_out")
"""What is said of a set-up: reference faces, stops, the order of cuts, the test piece, what to measure, tear-out."""


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution, with its source; `of` is the tool or the kind of cut that it belongs to."""

    of: str
    claim: Claim


@dataclass(frozen=True, slots=True)
class Way:
    """A way to make a joint: its tools, and the kinds of cut that it always has.

    Raises FactError where it has no tool.
    """

    name: str
    tools: tuple[str, ...]
    cuts: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if not self.tools:
            raise FactError(f'the way "{self.name}" names no tool, so it would have no cautions.')


@dataclass(frozen=True, slots=True)
class Cautions:
    """All cautions and all ways, as `data/cautions.toml` has them.

    Raises FactError where a tool or kind of cut of a way has no caution.
    """

    cautions: tuple[Caution, ...]
    ways: dict[str, Way]

    def __post_init__(self) -> None:
        for way in self.ways.values():
            self.of((*way.tools, *way.cuts))

    def of(self, names: Iterable[str]) -> tuple[Caution, ...]:
        """The cautions of these tools and kinds of cut after those of every tool, in the order of the file.

        Raises FactError where one of the names has none.

        >>> [caution.of for caution in cautions().of(["router"])][-1]
        'router'
        """
        return self.only((ALWAYS, *names))

    def only(self, names: Iterable[str]) -> tuple[Caution, ...]:
        """The cautions under these names alone, in the order of the file: where no tool is in the hand.

        Raises FactError where one of the names has none.

        >>> {caution.of for caution in cautions().only(["carrying"])}
        {'carrying'}
        """
        wanted = set(names)
        _refuse_bare(wanted, self.cautions, "cautions.toml")
        return tuple(caution for caution in self.cautions if caution.of in wanted)


@dataclass(frozen=True, slots=True)
class Setup:
    """How one joint is cut in one way; each step is one short sentence with its source.

    `cuts` are the kinds of cut that this joint adds to those of the way. Raises FactError where `cautions` lacks
    those of one of its tools or kinds of cut, or of every tool, or where an order, a test piece, a reference, what to
    measure or what keeps tear-out away is missing.
    """

    joint: str
    way: Way
    cuts: tuple[str, ...]
    cautions: tuple[Caution, ...]
    reference: tuple[Claim, ...]
    stops: tuple[Claim, ...]
    order: tuple[Claim, ...]
    test: tuple[Claim, ...]
    measure: tuple[Claim, ...]
    tear_out: tuple[Claim, ...]

    def __post_init__(self) -> None:
        where = f"{self.joint} by {self.way.name}"
        _refuse_bare({ALWAYS, *self.way.tools, *self.way.cuts, *self.cuts}, self.cautions, where)
        for heading in HEADINGS:
            if heading != "stops" and not getattr(self, heading):
                raise FactError(f"{where}: nothing stands under {heading}.")


@cache
def cautions() -> Cautions:
    """Every caution and every way.

    >>> list(cautions().ways)
    ['stacked dado set', 'single blade in passes', 'router', 'hand tools', 'drill']
    """
    return read_cautions(DATA / "cautions.toml")


@cache
def all_setups() -> dict[str, tuple[Setup, ...]]:
    """The set-ups of every joint by its name.

    >>> tuple(all_setups()) == JOINT_NAMES
    True
    """
    return {
        name: read_setups(DATA / "setups" / f"{name.replace(' ', '_')}.toml", name, cautions()) for name in JOINT_NAMES
    }


def setups(joint: str) -> tuple[Setup, ...]:
    """The ways to cut this joint, in the order of the file; KeyError for a joint that is none."""
    return all_setups()[joint]


def setup(joint: str, way: str) -> Setup:
    """The set-up of this joint in that way; KeyError where it is not cut so.

    >>> dado = setup("dado", "stacked dado set")
    >>> sorted({caution.of for caution in dado.cautions})
    ['dado set', 'every tool', 'non-through cut', 'table saw']
    """
    return {one.way.name: one for one in setups(joint)}[way]


def read_cautions(path: Path) -> Cautions:
    """The cautions and ways of this file; raises FactError where it cannot be used."""
    with path.open("rb") as file:
        row = tomllib.load(file)
    refuse_others(row, {"caution", "way"}, path.name)
    found = []
    for of, rows in row["caution"].items():
        found += [Caution(of, one) for one in claims(rows, f"{path.name} {of}")]
    ways = {}
    for way in row["way"]:
        refuse_others(way, {"name", "tools", "cuts"}, f"{path.name} way")
        ways[way["name"]] = Way(way["name"], tuple(way["tools"]), tuple(way.get("cuts", ())))
    return Cautions(tuple(found), ways)


def read_setups(path: Path, joint: str, known: Cautions) -> tuple[Setup, ...]:
    """The set-ups of this file, with their cautions from `known`; raises FactError where it cannot be used."""
    with path.open("rb") as file:
        row = tomllib.load(file)
    where = f"{path.parent.name}/{path.name}"
    refuse_others(row, {"joint", "setup"}, where)
    if row["joint"] != joint:
        raise FactError(f'{where}: it is of the joint "{row["joint"]}", not of "{joint}".')
    return tuple(_setup(one, joint, known, where) for one in row["setup"])


def _setup(row: dict, joint: str, known: Cautions, where: str) -> Setup:
    refuse_others(row, {"way", "cuts", *HEADINGS}, f"{where} setup")
    if row["way"] not in known.ways:
        raise FactError(f'{where}: "{row["way"]}" is no way; the ways are {", ".join(known.ways)}.')
    way, cuts = known.ways[row["way"]], tuple(row.get("cuts", ()))
    said = {heading: claims(row.get(heading, ()), f"{where} {way.name}") for heading in HEADINGS}
    return Setup(joint, way, cuts, known.of((*way.tools, *way.cuts, *cuts)), **said)


def _refuse_bare(names: set[str], given: tuple[Caution, ...], where: str) -> None:
    bare = sorted(names - {caution.of for caution in given})
    if bare:
        raise FactError(f'{where}: "{bare[0]}" has no cautions, and no set-up is shown without them.')
