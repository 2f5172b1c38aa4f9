"""Workings of sizes that a panel's own function gave, where no project is solved: by the name each carries."""

from collections.abc import Callable, Mapping

from shoplib.measure import Style
from shoplib.words.working import working

Sizes = Mapping[str, tuple[str, int]]
"""By the name that a table gives its cell: what the size is called, and the size, which may carry its working."""


def why_of(sizes: Callable[[], Sizes], style: Style) -> Callable[[str], tuple[str, ...]]:
    """An answer to "why" for a panel: `sizes` works all of them out anew, on numbers that carry their names.

    It is called only when a size is picked. The answer raises LookupError for a name that is not there.

    >>> from shoplib.measure import INCH, INCH_STYLE, share
    >>> from shoplib.measure.traced import leaf
    >>> why = why_of(lambda: {"table/0/1": ("half", share(leaf(5 * INCH, "the reading"), 2, 1)[0])}, INCH_STYLE)
    >>> why("table/0/1")
    ('half 2 1/2 in = half of the reading 5 in',)
    """

    def explain(name: str) -> tuple[str, ...]:
        called, size = sizes()[name]
        return working(size, called, style)

    return explain
