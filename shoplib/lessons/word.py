"""A word of the trade as a lesson teaches it: what it means, and a sketch that shows it."""

from collections.abc import Callable
from dataclasses import dataclass

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
