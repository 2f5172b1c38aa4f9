"""What the glossary shows: the words of all lessons, each with its meaning, a sketch, and where it first stands."""

from base64 import b64encode
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from html import escape

from shoplib.draw.letters import drawn_with
from shoplib.draw.pen import draw
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.course import Entry, Lesson, entries
from shoplib.lessons.large_type import letters_in_use, sized

SKETCH = (250.0, 140.0)
"""Width and height that a sketch is fitted to, in units of the drawing."""


@dataclass(frozen=True, repr=False)
class Glossary:
    """Words with their meanings, for a learner who works in `unit`; `repr` gives them in plain text."""

    entries: Sequence[Entry]
    unit: str

    def __repr__(self) -> str:
        return "\n".join(
            f"{each.word.name}: {each.word.meaning} ({_where(each, lambda lesson: lesson.name)})"
            for each in self.entries
        )

    def _repr_html_(self) -> str:
        with drawn_with(letters_in_use()):
            return sized("".join(self._html(each) for each in self.entries))

    def _html(self, entry: Entry) -> str:
        word = entry.word
        where = _where(entry, lambda lesson: f'first in <a href="{lesson.page}">{escape(lesson.name)}</a>')
        picture = ""
        if word.sketch:
            scene = word.sketch(self.unit)
            svg = b64encode(draw(scene, SKETCH).encode()).decode()
            # An `img` passes the cleaning that JupyterLab and web viewers give to a saved page.
            picture = f'<p><img alt="{escape(scene.alt)}" src="data:image/svg+xml;base64,{svg}"/></p>'
        name = escape(word.name)
        return f"<h4>{name[:1].upper()}{name[1:]}</h4><p>{escape(word.meaning)} <em>({where})</em></p>{picture}"


def _where(entry: Entry, named: Callable[[Lesson], str]) -> str:
    """Where a word stands: in the lesson that teaches it, or in papers or cautions, and the lesson that uses it."""
    if entry.lesson:
        return named(entry.lesson)
    return f"{named(entry.used)}, and {entry.papers}" if entry.used else entry.papers


def glossary(first: str, last: str) -> Glossary:
    """The words that begin with the letters from `first` to `last`, in the learner's unit."""
    found = [each for each in entries() if first <= each.word.name[0].casefold() <= last]
    return Glossary(found, unit_in_use())
