"""A drill on the page: one small question after another, each with a picture, a field, and what is said to the answer.

The box shows and sends; each reading that it is given judges itself. Nothing of an answer leaves the kernel before it
is found or asked for.
"""

from collections.abc import Callable, Sequence
from html import escape
from pathlib import Path
from typing import Protocol

import anywidget
from IPython.display import display
from traitlets import Bool, Dict, Int, Unicode

from shoplib.draw.letters import LARGE, ORDINARY, drawn_with
from shoplib.live.exercise_box import EXERCISE_CSS, Judged, sent_picture, typed_line
from shoplib.live.picture import Drawing
from shoplib.live.wake import left_behind

_WAKE = "To do the drill: menu Run, then Run All Cells."


class Asked(Protocol):
    """One question of a drill, as the box needs it."""

    picture: Drawing
    unit_word: str
    told: Sequence[str]

    def check(self, answer: object, unit: str | None = None) -> Judged:
        """What to say to an answer; `unit` applies to text that has none."""


class _Face(anywidget.AnyWidget):
    """What the browser draws; see drill_box.js."""

    _esm = Path(__file__).with_name("drill_box.js")
    _css = EXERCISE_CSS

    title = Unicode().tag(sync=True)
    question = Unicode().tag(sync=True)
    note = Unicode().tag(sync=True)
    standing = Unicode().tag(sync=True)
    unit = Unicode().tag(sync=True)
    unit_word = Unicode().tag(sync=True)
    place = Unicode().tag(sync=True)
    picture = Dict().tag(sync=True)
    said = Dict().tag(sync=True)
    turn = Int().tag(sync=True)
    answered = Bool(False).tag(sync=True)
    done = Unicode().tag(sync=True)


class DrillBox:
    """Questions one after another. `rounds` gives those of a round, 0 being the first.

    The same can be done from a cell: `box.check("2 5/8 in")`, `box.show()`, `box.go_on()`. `note` stands above,
    `standing` tells how it stood before, and `keep` is told of each answer that was judged, and whether with it the
    last question of a round is answered; it says how it stands now. `large` shows it in large type.
    """

    def __init__(
        self, title: str, question: str, unit: str, rounds: Callable[[int], Sequence[Asked]], note: str = "",
        standing: str = "", keep: Callable[[Judged, bool], str] = lambda _judged, _done: "", large: bool = False,
    ):
        self.rounds, self._keep, self.round = rounds, keep, 0
        first = rounds(0)[0]
        self.face = _Face(title=title, question=question, note=note, standing=standing, unit=unit,
                          unit_word=first.unit_word)
        if large:
            self.face.add_class("shop-large")
        self._letters = LARGE if large else ORDINARY
        self.face.on_msg(self._press)
        self._begin()

    def __repr__(self) -> str:
        return f"DrillBox({self.face.title!r}, {self.face.place!r})"

    @property
    def asked(self) -> Asked:
        """The question that is asked now."""
        return self.questions[self.number]

    def _begin(self) -> None:
        self.questions = tuple(self.rounds(self.round))
        self.number, self.at_once = 0, 0
        self._ask()

    def _ask(self) -> None:
        self._missed = False
        with drawn_with(self._letters), self.face.hold_sync():
            self.face.place = f"Reading {self.number + 1} of {len(self.questions)}"
            self.face.picture = sent_picture(self.asked.picture)
            self.face.said = {}
            self.face.answered = False
            self.face.done = ""
            self.face.turn += 1

    def check(self, answer: object = None, unit: str | None = None) -> Judged:
        """Judge an answer to the question that is asked now; right at the first try counts."""
        judged = self.asked.check(answer, unit)
        counted = judged.kind not in ("not tried", "not a length", "no unit")
        if judged.kind == "right" and not self.face.answered:
            self.at_once += not self._missed
            self._answered()
        elif counted:
            self._missed = True
        self._say(judged.kind, judged.heading, judged.parts)
        if counted:
            self.face.standing = self._keep(judged, judged.kind == "right" and self._last)
        return judged

    def show(self) -> tuple[str, ...]:
        """Tell the reading, and how one comes by it; it no longer counts."""
        self._missed = True
        told = tuple(self.asked.told)
        self._answered()
        self._say("told", "The reading", told)
        return told

    def go_on(self) -> None:
        """The next question once this one is answered or told; after the last one a new round."""
        if not self.face.answered:
            return
        if self._last:
            self.round += 1
            self._begin()
        else:
            self.number += 1
            self._ask()

    @property
    def _last(self) -> bool:
        return self.number == len(self.questions) - 1

    def _answered(self) -> None:
        self.face.answered = True
        if self._last:
            self.face.done = (
                f"All {len(self.questions)} are done, {self.at_once} of them right at the first try. "
                "Go on, and there are ten others."
            )

    def _say(self, kind: str, heading: str, parts: Sequence[str]) -> None:
        turn = self.face.said.get("turn", 0) + 1  # the same words are said again at the next press
        self.face.said = {"kind": kind, "heading": heading, "parts": list(parts), "turn": turn}

    def _press(self, _face: _Face, content: dict, _buffers: object) -> None:
        pressed = content.get("press")
        if pressed == "check":
            self.check(typed_line(content.get("answer", "")), self.face.unit)
        elif pressed == "show":
            self.show()
        elif pressed == "next":
            self.go_on()

    def still_html(self) -> str:
        """The first question as plain HTML, for a saved page that is read without a kernel."""
        picture = self.face.picture
        return left_behind(
            f"<p><strong>{escape(self.face.title)}</strong></p><p>{escape(self.face.question)}</p>"
            f'<figure><img alt="{escape(picture["alt"])}" src="{picture["source"]}"/></figure><p>{_WAKE}</p>'
        )

    def _ipython_display_(self) -> None:
        """Show the living box, and leave its first question in the notebook for reading without a kernel."""
        display({**self.face._repr_mimebundle_()[0], "text/plain": self.face.title}, raw=True)
        display({"text/html": self.still_html(), "text/plain": f"First question of {self.face.title}"}, raw=True)
