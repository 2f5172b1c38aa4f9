"""The spacers of a project as a table, the same wherever they are listed."""

from collections.abc import Iterable

from shoplib.building.spacers import Spacer
from shoplib.lists.writing import Writing


def spacer_table(spacers: Iterable[Spacer], page: Writing) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    """Head and rows, the same wherever spacers are listed: size, how many, what for."""
    rows = tuple((page.length(spacer.size), str(spacer.count), spacer.purpose) for spacer in spacers)
    return ("size", "how many", "what for"), rows
