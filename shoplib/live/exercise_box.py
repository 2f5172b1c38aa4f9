"""An exercise on the page: question, answer field, and the buttons Check, Hint and Show working.

The box shows and sends; what it is given (`posed`) knows the question and judges.
"""

from base64 import b64encode
from collections.abc import Callable, Mapping, Sequence
from html import escape
from pathlib import Path
from typing import Protocol

import anywidget
from IPython.display import display
from traitlets import Bool, Dict, Int, List, Unicode

from shoplib.draw.letters import LARGE, ORDINARY, drawn_with
from shoplib.live.large_type import LARGE_CSS
from shoplib.live.picture import Drawing
from shoplib.live.wake import left_behind

EXERCISE_CSS = Path(__file__).with_name("exercise_box.css").read_text(encoding="utf-8") + LARGE_CSS

_WAKE = "To answer here: menu Run, then Run All Cells."


class Said(Protocol):
    """What is said to one field, by its label."""

    label: str
    parts: Sequence[str]


class Judged(Protocol):
    """What is said to an answer: of the whole, of single fields, and a picture where there is one."""

    kind: str
    heading: str
    parts: Sequence[str]
    items: Sequence[Said]
    picture: Drawing | None


class Posed(Protocol):
    """An exercise with its numbers, as the box needs it.

    `fields` are the name and label of each answer where there are several; empty for a single one. `beside` is the
    unit printed beside each field, or what is counted in it.
    """

    id: str
    title: str
    question: str
    facts: Sequence[tuple[str, str]]
    fields: Sequence[tuple[str, str]]
    beside: str
    unit_word: str
    hints: Sequence[str]
    working: Sequence[str]
    own_working: Sequence[str]

    def check(self, answer: object, unit: str | None = None) -> Judged:
        """What to say to an answer; `unit` applies to text that has none."""


class _Face(anywidget.AnyWidget):
    """What the browser draws; see exercise_box.js."""

    _esm = Path(__file__).with_name("exercise_box.js")
    _css = EXERCISE_CSS

    title = Unicode().tag(sync=True)
    question = Unicode().tag(sync=True)
    note = Unicode().tag(sync=True)
    standing = Unicode().tag(sync=True)
    facts = List().tag(sync=True)
    fields = List().tag(sync=True)
    unit = Unicode().tag(sync=True)
    unit_word = Unicode().tag(sync=True)
    answer = Unicode().tag(sync=True)
    answers = Dict().tag(sync=True)
    said = Dict().tag(sync=True)
    picture = Dict().tag(sync=True)
    hints = List().tag(sync=True)
    hints_left = Unicode().tag(sync=True)
    more_hints = Bool(True).tag(sync=True)
    heard = Int(0).tag(sync=True)
    working = List().tag(sync=True)
    own_working = List().tag(sync=True)


class ExerciseBox:
    """One exercise on the page. The same can be asked from a cell, where the unit is written out.

    `note` stands above the question, `standing` tells how it stood before, and `keep` is told of each
    answer that was judged and says how it stands now. `large` shows it in large type. Nothing of the answer
    leaves the kernel before it is asked for.
    """

    def __init__(
        self, posed: Posed, note: str = "", standing: str = "", keep: Callable[[Judged], str] = lambda _judged: "",
        large: bool = False,
    ):
        self.posed = posed
        self._keep = keep
        self._hints_shown = 0
        self.face = _Face(
            title=posed.title, question=posed.question, facts=[list(row) for row in posed.facts], note=note,
            standing=standing, unit=posed.beside, unit_word=posed.unit_word, hints_left=self._hints_left(),
            fields=[list(field) for field in posed.fields],
        )
        if large:
            self.face.add_class("shop-large")
        self._letters = LARGE if large else ORDINARY
        self.face.on_msg(self._press)

    def __repr__(self) -> str:
        return f"Exercise {self.posed.id}: {self.posed.question}"

    def check(self, answer: object = None) -> Judged:
        """Judge an answer given in a cell, such as `check("2 3/8 in")`; the box shows it too.

        Where several sizes are asked for: `check({"bottom": "33 1/2 in", ...})`, or a list in their order.
        """
        if self.posed.fields:
            self.face.answers = self._shown(answer)
        else:
            self.face.answer = answer if isinstance(answer, str) else ""
        return self._judge(answer, None)

    def _shown(self, answer: object) -> dict[str, str]:
        """What stands in the fields for a set of answers: texts, by name or in order; else nothing."""
        names = [name for name, _ in self.posed.fields]
        if isinstance(answer, list | tuple) and len(answer) == len(names):
            answer = dict(zip(names, answer, strict=True))
        given = answer if isinstance(answer, dict) else {}
        return {name: given[name] if isinstance(given.get(name), str) else "" for name in names}

    def hint(self) -> str:
        """The next hint, the last one again when there are no more."""
        self._hints_shown = min(self._hints_shown + 1, len(self.posed.hints))
        self.face.hints = list(self.posed.hints[: self._hints_shown])
        self.face.hints_left = self._hints_left()
        self.face.more_hints = self._hints_shown < len(self.posed.hints)
        return self.posed.hints[self._hints_shown - 1]

    def show_working(self) -> tuple[str, ...]:
        """The solution, line by line; the box also has, folded, how the workbook itself came by it."""
        self.face.own_working = list(self.posed.own_working)
        self.face.working = list(self.posed.working)
        return tuple(self.posed.working)

    def _judge(self, answer: object, unit: str | None) -> Judged:
        with drawn_with(self._letters):
            judged = self.posed.check(answer, unit)
        turn = self.face.said.get("turn", 0) + 1
        said = {
            "kind": judged.kind, "heading": judged.heading, "parts": list(judged.parts),
            "items": [{"label": item.label, "parts": list(item.parts)} for item in judged.items],
        }
        self.face.picture = sent_picture(judged.picture)
        self.face.said = {**said, "turn": turn}  # the same words are said again at the next press
        self.face.standing = self._keep(judged)
        return judged

    def _hints_left(self) -> str:
        left = len(self.posed.hints) - self._hints_shown
        return f"Hint ({left} left)" if left else "No more hints"

    def _press(self, _face: _Face, content: dict, _buffers: object) -> None:
        pressed = content.get("press")
        if pressed == "check" and self.posed.fields:
            typed = content.get("answers")
            typed = typed if isinstance(typed, Mapping) else {}
            self.face.answers = {name: typed_line(typed.get(name, "")) for name, _ in self.posed.fields}
            self._judge(self.face.answers, self.posed.beside)
        elif pressed == "check":
            self.face.answer = typed_line(content.get("answer", ""))
            self._judge(self.face.answer, self.posed.beside)
        elif pressed == "hint":
            self.hint()
        elif pressed == "working":
            self.show_working()
        self.face.heard += 1  # an answer changes nothing else where the same is pressed again

    def still_html(self) -> str:
        """The exercise as plain HTML, for a saved page that is read without a kernel."""
        rows = "".join(
            f'<tr><th scope="row">{escape(what)}</th><td>{escape(text)}</td></tr>'
            for what, text in self.posed.facts
        )
        given = f"<table><caption>What is given</caption><tbody>{rows}</tbody></table>"
        return left_behind(
            f'<p><strong>Exercise: {escape(self.posed.title)}</strong></p>'
            f"<p>{escape(self.posed.question)}</p>{given if rows else ''}{self._still_fields()}<p>{_WAKE}</p>"
        )

    def _still_fields(self) -> str:
        if not self.posed.fields:
            return ""
        asked = "".join(f"<li>{escape(label)}</li>" for _, label in self.posed.fields)
        return f"<p>What is asked for</p><ul>{asked}</ul>"

    def _ipython_display_(self) -> None:
        """Show the living box, and leave its question in the notebook for reading without a kernel."""
        display({**self.face._repr_mimebundle_()[0], "text/plain": f"Exercise {self.posed.id}"}, raw=True)
        display({"text/html": self.still_html(), "text/plain": f"Question of {self.posed.id}"}, raw=True)


def typed_line(typed: object) -> str:
    """What was typed, on one short line."""
    return " ".join(str(typed)[:200].split())


def sent_picture(drawing: Drawing | None) -> dict[str, str]:
    """The picture as an image that a browser shows without running anything in it; nothing for none."""
    if drawing is None:
        return {}
    source = f"data:image/svg+xml;base64,{b64encode(drawing.svg.encode()).decode()}"
    return {"title": drawing.title, "source": source, "alt": drawing.alt}
