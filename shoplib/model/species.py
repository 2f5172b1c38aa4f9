"""Names of woods: which there are, which are like a name that is in no table, and how much each wood moves."""

from difflib import get_close_matches

from shoplib.model.project import ImpossibleProject
from shoplib.model.sheet import Sheet
from shoplib.tables.properties import wood_properties
from shoplib.tables.wood import Wood, woods


def moves_as(species: str) -> Wood | None:
    """The row of how much this wood moves; None where the table has none.

    >>> moves_as("northern red oak").species, moves_as("black ash")
    ('red oak, commercial', None)
    """
    row = wood_properties().get(species)
    return woods().get(row.moves_as if row else species)


def known_species() -> tuple[str, ...]:
    """Every name that a solid sheet may have: those of either table."""
    return tuple(dict.fromkeys([*wood_properties(), *woods()]))


def near_species(name: str) -> tuple[str, ...]:
    """Names of the tables that are like a name which is in none of them, at most four.

    >>> near_species("red oak")
    ('northern red oak', 'red oak, commercial')
    """
    have = known_species()
    words = {word for word in name.lower().split() if len(word) > 2}
    alike = [one for one in have if words and words <= set(one.lower().replace(",", " ").split())]
    return tuple(dict.fromkeys([*alike, *(get_close_matches(name, have, 4, 0.8) if not alike else [])]))[:4]


def refuse_unknown_species(sheets: dict[str, Sheet]) -> None:
    """Raises ImpossibleProject for a species that no table knows, or that stands on a sheet that is not solid."""
    for name, sheet in sheets.items():
        key = f'sheets."{name}".species'
        if sheet.species and sheet.kind != "solid":
            raise ImpossibleProject(key, f'only solid wood has one, and this sheet is "{sheet.kind}"; take it out')
        if sheet.species and sheet.species not in known_species():
            near = near_species(sheet.species)
            meant = ", ".join(f'"{one}"' for one in near or ("sugar maple", "white oak", "eastern white pine"))
            raise ImpossibleProject(
                key, f'no table knows "{sheet.species}"; {"is it one of" if near else "write a name such as"} {meant}'
                f"{'?' if near else ''}"
            )
