"""Marks of a rule beside their decimals, in a small table of four columns."""

from collections.abc import Sequence
from dataclasses import dataclass
from html import escape

from shoplib.lessons.large_type import sized
from shoplib.lessons.worked import unbroken

COLUMNS = 4


@dataclass(frozen=True, repr=False)
class MarkTable:
    """A title and pairs of (mark, decimal), four beside each other.

    >>> MarkTable("Quarters", [("1/4 in", "0.25 in"), ("1/2 in", "0.5 in")])
    Quarters
      1/4 in = 0.25 in; 1/2 in = 0.5 in
    """

    title: str
    pairs: Sequence[tuple[str, str]]

    @property
    def rows(self) -> list[list[str]]:
        """Each pair as a line of words, in rows as they are shown."""
        told = [f"{mark} = {decimal}" for mark, decimal in self.pairs]
        return [told[at:at + COLUMNS] for at in range(0, len(told), COLUMNS)]

    def __repr__(self) -> str:
        return "\n  ".join([self.title, *("; ".join(row) for row in self.rows)])

    def _repr_html_(self) -> str:
        rows = "".join(
            "<tr>" + "".join(f'<td style="text-align: left">{escape(unbroken(each))}</td>' for each in row) + "</tr>"
            for row in self.rows
        )
        caption = f'<caption style="text-align: left; font-weight: 600">{escape(self.title)}</caption>'
        return sized(f'<table style="font-size: inherit">{caption}<tbody>{rows}</tbody></table>')
