"""The spacers of a project as a table, the same wherever they are listed."""

from collections.abc import Iterable

from shoplib.building.spacers import Spacer
from shoplib.lists.writing import Writing

CUT_OFF = (
    "Cut a spacer for each size of the table off a long straight strip, for a short piece leaves the hand no room at "
    "the saw. Check each against its line on the story stick, which shows them in true size."
)
"""How spacers for slides are cut, the same wherever they are listed (common practice, no source)."""


def spacer_table(spacers: Iterable[Spacer], page: Writing) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    """Head and rows, the same wherever spacers are listed: size, how many, what for.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> spacer_table([Spacer(INCH // 8, 4, "between fronts")], Writing(INCH_STYLE))[1]
    (('1/8 in', '4', 'between fronts'),)
    """
    rows = tuple((page.length(spacer.size), str(spacer.count), spacer.purpose) for spacer in spacers)
    return ("size", "how many", "what for"), rows
