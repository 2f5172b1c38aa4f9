"""A worked example on the page: a sum line by line, as a table that is read from top to bottom."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from html import escape

from shoplib.lessons.each_size import folded
from shoplib.lessons.large_type import sized


@dataclass(frozen=True, repr=False)
class Worked:
    """A title and lines of (what, how, comes to); `why` are the workings of its sizes, folded below.

    >>> Worked("Bottom", [("between the sides", "30 in - 2 x 3/4 in", "28 1/2 in")])
    Bottom
      between the sides = 30 in - 2 x 3/4 in = 28 1/2 in
    """

    title: str
    lines: Sequence[tuple[str, str, str]]
    why: Sequence[str] = ()

    def __repr__(self) -> str:
        told = (" = ".join(part for part in line if part) for line in self.lines)
        return "\n  ".join([self.title, *told])

    def _repr_html_(self) -> str:
        rows = "".join(
            f'<tr><th scope="row" style="text-align: left; font-weight: normal">{escape(what)}</th>'
            f'<td style="text-align: left">{escape(unbroken(how))}</td>'
            f'<td style="text-align: left"><strong>{escape(unbroken(comes_to))}</strong></td></tr>'
            for what, how, comes_to in self.lines
        )
        caption = f'<caption style="text-align: left; font-weight: 600">{escape(self.title)}</caption>'
        why = folded(map(unbroken, self.why))
        return sized(f'<table style="font-size: inherit">{caption}<tbody>{rows}</tbody></table>{why}')


def unbroken(text: str) -> str:
    """A length stays on one line; all else may go on to the next, so that no column is squeezed."""
    return re.sub(r"(\d) (?=\d+/\d|in\b|mm\b)", "\\1\u00a0", text)
