"""Tables, closing sums and findings as HTML that a screen reader can walk through."""

import re
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from html import escape

from shoplib.live.whole_lengths import whole_lengths
from shoplib.measure.noted import Sentence
from shoplib.model.solved import Finding

# Each level has a word and a shape, so that colour is never the only signal.
LEVELS = {"stop": ("■", "Stop"), "warn": ("▲", "Look"), "note": ("●", "Note")}


@dataclass(frozen=True, slots=True)
class Table:
    """A table of text: the first cell of each row names the row.

    The cells of the columns `asked` that hold a number can be picked to ask why; the name of a cell is the row and
    the column, counted from 0, after `name`. Cells in the rows `no_lengths` hold a number that is none, such as a
    count, and are asked for nothing.
    """

    caption: str
    head: Sequence[str]
    rows: Sequence[Sequence[str]]
    asked: Sequence[int] = ()
    name: str = "table/"
    no_lengths: Collection[int] = ()

    def html(self) -> str:
        """The table with its caption and the headings of columns and rows marked as such.

        It lies in a room of its own, which can be gone to by keyboard and scrolled where the page is narrower.
        """
        head = "".join(f'<th scope="col">{escape(cell)}</th>' for cell in self.head)
        rows = "".join(
            f'<tr><th scope="row">{escape(first)}</th>'
            + "".join(f"<td>{self._cell(row, column, cell)}</td>" for column, cell in enumerate(rest, 1))
            + "</tr>"
            for row, (first, *rest) in enumerate(self.rows)
        )
        return (
            f'<div class="shop-table-room" role="region" tabindex="0" aria-label="{escape(self.caption)}">'
            f'<table class="shop-table"><caption>{escape(self.caption)}</caption>'
            f"<thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table></div>"
        )

    def _cell(self, row: int, column: int, text: str) -> str:
        if column not in self.asked or row in self.no_lengths or not any(sign.isdigit() for sign in text):
            return whole_lengths(text)
        said = f"{text}, {self.head[column].lower()} of {self.rows[row][0]}: why?"
        ask = f"{self.name}{row}/{column}"
        return f'<button type="button" data-ask="{ask}" aria-label="{escape(said)}">{whole_lengths(text)}</button>'


LENGTH = re.compile(r"\d[\d./]*(?: \d+/\d+)? (?:in|mm)\b(?: \([+-][\d.]+ (?:in|mm)\))?")
"""A length as it stands in a closing sum."""


def sums_html(sums: Iterable[str], asked: bool = False) -> str:
    """The closing sums, each as it is written out, as a list; nothing if there are none.

    Where their lengths can be `asked`, each can be picked by "sum/", the number of its sum and its own in it.

    >>> sums_html(["inside + top = height: 9 in + 1/2 in = 9 1/2 in"], asked=True).count('data-ask="sum/0/')
    3
    """
    told = [_sum(number, line) if asked else whole_lengths(line) for number, line in enumerate(sums)]
    lines = "".join(f"<li>{line}</li>" for line in told)
    return f'<p class="shop-heading">Closing sums</p><ul class="shop-sums">{lines}</ul>' if lines else ""


def _sum(number: int, line: str) -> str:
    """One closing sum whose lengths can be picked."""
    told, at = "", 0
    for k, found in enumerate(LENGTH.finditer(line)):
        told += escape(line[at : found.start()]) + _asks(f"sum/{number}/{k}", found[0], "in this sum")
        at = found.end()
    return told + escape(line[at:])


def findings_html(findings: Iterable[Finding]) -> str:
    """The findings as a list, the gravest first.

    The lengths that a text knows can be picked, by "finding/", its number in the list and theirs in it.
    """
    order = list(LEVELS)
    lines = []
    for number, finding in enumerate(sorted(findings, key=lambda each: order.index(each.level))):
        shape, word = LEVELS[finding.level]
        lines.append(
            f'<li class="shop-{finding.level}"><span aria-hidden="true">{shape}</span> '
            f"<strong>{word}:</strong> {_finding(number, finding.text)}</li>"
        )
    if not lines:
        return ""
    return f'<p class="shop-heading">Findings</p><ul class="shop-findings">{"".join(lines)}</ul>'


def _finding(number: int, text: str) -> str:
    told, at = "", 0
    for k, (start, end, _) in enumerate(text.lengths if isinstance(text, Sentence) else ()):
        told += whole_lengths(text[at:start])
        told += _asks(f"finding/{number}/{k}", text[start:end], "in this finding")
        at = end
    return told + whole_lengths(text[at:])


def _asks(name: str, text: str, where: str) -> str:
    """A length within a sentence, as a button that asks why."""
    said = f"{escape(text)}, {where}: why?"
    return f'<button type="button" data-ask="{name}" aria-label="{said}">{whole_lengths(text)}</button>'
