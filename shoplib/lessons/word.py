"""A word of the trade as a lesson teaches it: what it means, and a sketch that shows it."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Self

from shoplib.documents.glossary import WORDS
from shoplib.draw.scene import Scene


@dataclass(frozen=True, slots=True)
class Word:
    """One new word of a lesson.

    `meaning` is one or two plain sentences, the same where the word first stands and in the glossary. `sketch`
    draws it for a unit, "in" or "mm"; None where a picture would say nothing.
    """

    name: str
    meaning: str
    sketch: Callable[[str], Scene] | None = None

    @classmethod
    def of_plan(cls, name: str, more: str = "", sketch: Callable[[str], Scene] | None = None) -> Self:
        """A word that the papers of a plan explain too, with the meaning it has there, and `more` after it.

        Raises KeyError where those papers explain no such word.

        >>> Word.of_plan("rabbet").meaning
        'A step cut along an edge or end, open to one side.'
        """
        return cls(name, f"{sentence(WORDS[name])} {more}".strip(), sketch)


def sentence(meaning: str) -> str:
    """A meaning of `documents.glossary` as a sentence."""
    return f"{meaning[:1].upper()}{meaning[1:]}."
