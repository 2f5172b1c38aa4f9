"""An exercise on the page: question, answer field, and the buttons Check, Hint and Show working.

The box shows and sends; what it is given (`posed`) knows the question and judges.
"""

from collections.abc import Callable, Sequence
from html import escape
from pathlib import Path
from typing import Protocol

import anywidget
from IPython.display import display
from traitlets import Dict, List, Unicode

from shoplib.live.wake import left_behind

_WAKE = "To answer here: menu Run, then Run All Cells."


class Judged(Protocol):
    """What is said to one answer."""

    kind: str
    heading: str
    parts: Sequence[str]


class Posed(Protocol):
    """An exercise with its numbers, as the box needs it."""

    id: str
    title: str
    question: str
    facts: Sequence[tuple[str, str]]
    unit: str
    unit_word: str
    hints: Sequence[str]
    working: Sequence[str]

    def check(self, answer: object, unit: str | None = None) -> Judged:
        """What to say to an answer; `unit` applies to text that has none."""


class _Face(anywidget.AnyWidget):
    """What the browser draws; see exercise_box.js."""

    _esm = Path(__file__).with_name("exercise_box.js")
    _css = Path(__file__).with_name("exercise_box.css")

    title = Unicode().tag(sync=True)
    question = Unicode().tag(sync=True)
    note = Unicode().tag(sync=True)
    standing = Unicode().tag(sync=True)
    facts = List().tag(sync=True)
    unit = Unicode().tag(sync=True)
    unit_word = Unicode().tag(sync=True)
    answer = Unicode().tag(sync=True)
    said = Dict().tag(sync=True)
    hints = List().tag(sync=True)
    hints_left = Unicode().tag(sync=True)
    working = List().tag(sync=True)


class ExerciseBox:
    """One exercise on the page. The same can be asked from a cell, where the unit is written out.

    `note` stands above the question, `standing` tells how it stood before, and `keep` is told of each
    answer that was judged and says how it stands now. Nothing of the answer leaves the kernel before it is
    asked for.
    """

    def __init__(
        self, posed: Posed, note: str = "", standing: str = "", keep: Callable[[Judged], str] = lambda _judged: ""
    ):
        self.posed = posed
        self._keep = keep
        self._hints_shown = 0
        self.face = _Face(
            title=posed.title, question=posed.question, facts=[list(row) for row in posed.facts], note=note,
            standing=standing, unit=posed.unit, unit_word=posed.unit_word, hints_left=self._hints_left(),
        )
        self.face.on_msg(self._press)

    def __repr__(self) -> str:
        return f"Exercise {self.posed.id}: {self.posed.question}"

    def check(self, answer: object = None) -> Judged:
        """Judge an answer given in a cell, such as `check("2 3/8 in")`; the box shows it too."""
        self.face.answer = answer if isinstance(answer, str) else ""
        return self._judge(answer, None)

    def hint(self) -> str:
        """The next hint, the last one again when there are no more."""
        self._hints_shown = min(self._hints_shown + 1, len(self.posed.hints))
        self.face.hints = list(self.posed.hints[: self._hints_shown])
        self.face.hints_left = self._hints_left()
        return self.posed.hints[self._hints_shown - 1]

    def show_working(self) -> tuple[str, ...]:
        """The solution, line by line."""
        self.face.working = list(self.posed.working)
        return tuple(self.posed.working)

    def _judge(self, answer: object, unit: str | None) -> Judged:
        judged = self.posed.check(answer, unit)
        turn = self.face.said.get("turn", 0) + 1
        said = {"kind": judged.kind, "heading": judged.heading, "parts": list(judged.parts)}
        self.face.said = {**said, "turn": turn}  # the same words are said again at the next press
        self.face.standing = self._keep(judged)
        return judged

    def _hints_left(self) -> str:
        left = len(self.posed.hints) - self._hints_shown
        return f"Hint ({left} left)" if left else "No more hints"

    def _press(self, _face: _Face, content: dict, _buffers: object) -> None:
        pressed = content.get("press")
        if pressed == "check":
            self.face.answer = " ".join(str(content.get("answer", ""))[:200].split())
            self._judge(self.face.answer, self.posed.unit)
        elif pressed == "hint":
            self.hint()
        elif pressed == "working":
            self.show_working()

    def still_html(self) -> str:
        """The exercise as plain HTML, for a saved page that is read without a kernel."""
        rows = "".join(
            f'<tr><th scope="row">{escape(what)}</th><td>{escape(text)}</td></tr>'
            for what, text in self.posed.facts
        )
        return left_behind(
            f'<p><strong>Exercise: {escape(self.posed.title)}</strong></p>'
            f"<p>{escape(self.posed.question)}</p><table><caption>What is given</caption>"
            f"<tbody>{rows}</tbody></table><p>{_WAKE}</p>"
        )

    def _ipython_display_(self) -> None:
        """Show the living box, and leave its question in the notebook for reading without a kernel."""
        display({**self.face._repr_mimebundle_()[0], "text/plain": f"Exercise {self.posed.id}"}, raw=True)
        display({"text/html": self.still_html(), "text/plain": f"Question of {self.posed.id}"}, raw=True)
