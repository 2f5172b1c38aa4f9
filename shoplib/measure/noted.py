"""Lengths in sentences: where each stands that was written into one, and the number that it was written from.

A sentence is put together from text that the writers gave, in many places and in any order. So inside `noting` they set
marks round what they write, and `Notes.told` takes the marks out again: it gives the sentence with its lengths.
"""

import re
from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from typing import NamedTuple, Self

from shoplib.measure.traced import Sum, Traced

# Three characters for private use: no alphabet has them. Between the first two stands the number of the note.
_MARKED = re.compile("\ue000(\\d*)\ue001([^\ue000-\ue002]*)\ue002")


class Stands(NamedTuple):
    """One length of a sentence: from `start` to `end` of its text, and the ticks with their working.

    `ticks` is None for a plain number, which nothing stands behind.
    """

    start: int
    end: int
    ticks: Traced | None


class Sentence(str):
    """A sentence that knows the lengths in it, in their order: `lengths`."""

    lengths: tuple[Stands, ...]

    def __new__(cls, text: str, lengths: tuple[Stands, ...] = ()) -> Self:
        """The text, with where its lengths stand."""
        told = super().__new__(cls, text)
        told.lengths = lengths
        return told

    def up_to(self, number: int) -> tuple[str, ...]:
        """The words before the length of that number: whatever the lengths are, it is the same one where these are.

        >>> Sentence("a gap of 3 mm, not 4 mm", (Stands(9, 13, None), Stands(19, 23, None))).up_to(1)
        ('a gap of ', ', not ')
        """
        ends = (0, *(one.end for one in self.lengths))
        return tuple(self[end : one.start] for end, one in zip(ends, self.lengths[: number + 1], strict=False))


class Notes:
    """What was written inside `noting`. A plain number gets a mark, and one with its working a note as well."""

    def __init__(self) -> None:
        self._numbers: dict[Sum, int] = {}
        self._sizes: list[Traced] = []

    def mark(self, text: str, ticks: int) -> str:
        """The text between its marks; the same working has the same marks, so equal texts stay equal."""
        number = ""
        if isinstance(ticks, Traced):
            number = self._numbers.setdefault(ticks.sum, len(self._sizes))
            if number == len(self._sizes):
                self._sizes.append(ticks)
        return f"\ue000{number}\ue001{text}\ue002"

    def told(self, sentence: str) -> Sentence:
        """The sentence without marks, with the lengths that stood between them."""
        text, at, lengths = "", 0, []
        for found in _MARKED.finditer(sentence):
            number, length = found.groups()
            text += sentence[at : found.start()]
            lengths.append(Stands(len(text), len(text) + len(length), self._sizes[int(number)] if number else None))
            text, at = text + length, found.end()
        return Sentence(text + sentence[at:], tuple(lengths))


_NOTES: ContextVar[Notes | None] = ContextVar("notes of the lengths that are written", default=None)


@contextmanager
def noting() -> Iterator[Notes]:
    """Inside, whatever writes a length marks it, for `told` to find it in its sentence.

    >>> from shoplib.measure import INCH, INCH_STYLE, write_brief
    >>> from shoplib.measure.traced import leaf
    >>> with noting() as notes:
    ...     text = f"the box is {write_brief(leaf(5 * INCH, 'box width'), INCH_STYLE)} wide"
    >>> told = notes.told(text)
    >>> told, [(told[one.start : one.end], one.ticks.sum.terms[0][0].name) for one in told.lengths]
    ('the box is 5 in wide', [('5 in', 'box width')])
    """
    notes = Notes()
    outside = _NOTES.set(notes)
    try:
        yield notes
    finally:
        _NOTES.reset(outside)


def unmarked(sentence: str) -> str:
    """The sentence as it is read, where nobody will ask for its lengths.

    >>> with noting():
    ...     unmarked(f"at least {stated('3 mm', 240_000)}")
    'at least 3 mm'
    """
    return _MARKED.sub(r"\2", sentence)


def stated(text: str, ticks: int) -> str:
    """A length as it is written, marked where notes are taken: by the writers, and by whoever words one by hand."""
    notes = _NOTES.get()
    return text if notes is None else notes.mark(text, ticks)
