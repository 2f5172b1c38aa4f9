"""What both practice benches do with their fields and keys: type, mend, press, and stand in a saved page."""

from collections.abc import Callable, Mapping
from typing import Any

from shoplib.draw.letters import LARGE, ORDINARY
from shoplib.live.exercise_box import typed_line
from shoplib.live.practice_face import UNITS, PracticeFace, show, still_html
from shoplib.words.naming import and_list
from shoplib.words.quoted import in_quotes

_WAKE = "To practise here: menu Run, then Run All Cells."


class PracticeBase:
    """A bench of one learner in one unit. A bench of its own has `labels` of its fields, and `cut`: what is said of
    anything that is asked once the pair is cut. `_say` shows all as it is, `_done` tells whether the pair is cut,
    `_set_field` sets what was typed, `_keys` has what is pressed, `_press_more` what is pressed with a choice.
    """

    face: PracticeFace
    session: Any
    labels: Mapping[str, str]
    cut: str

    def __init__(self, unit: str, learner: str, large: bool):
        if unit not in UNITS:
            raise ValueError(f'the unit is "in" or "mm", not {unit!r}')
        self._learner, self._unit, self._large, self._machines = learner, unit, large, 0
        self._letters = LARGE if large else ORDINARY

    def enter(self, name: str, typed: str) -> str:
        """Set what has this name; the bench's unit where none is written.

        What cannot be set stays in its field, and until it is mended nothing is cut.
        """
        if self._done:
            return self._say(self.cut)
        self._typed[name] = typed
        if not typed:
            self._faults.pop(name, None)
            return self._say(f"{self.labels[name]}: {self._stands(name) or 'not set yet'}.")
        return self._set(name, self._set_field(name, typed))

    def still_html(self) -> str:
        """The bench as plain HTML, for a saved page that is read without a kernel: task, cautions, and the drawing."""
        task = self.face.task
        return still_html(self.face, (task,) if isinstance(task, str) else tuple(task), _WAKE)

    def _ipython_display_(self) -> None:
        """Show the living bench, and leave its task, its cautions and a picture in the notebook."""
        show(self.face, self.still_html())

    def _put_up(self, face: PracticeFace) -> None:
        self.face = face
        face.add_class("shop-practice-widget")
        if self._large:
            face.add_class("shop-large")
        face.on_msg(self._press)

    def _next_machine(self, called: str) -> str:
        """Nothing is typed at another machine; whose it is, so that its errors are others."""
        self._machines += 1
        self._typed, self._faults, self._turn, self._shown = dict.fromkeys(self.labels, ""), {}, 0, None
        return self._learner if self._machines == 1 else f"{self._learner}/{called} {self._machines}"

    def _set(self, name: str, step: Any) -> str:
        """What comes of setting something: where it is refused, the sentence stays beside its field."""
        self.session = step.session
        if step.done:
            self._faults.pop(name, None)
        else:
            self._faults[name] = in_quotes(step.said)
        return self._say(step.said)

    def _mended(self) -> str:
        """What must be mended in the fields before a cut; empty where nothing must."""
        if self._done or not self._faults:
            return ""
        return self._say(f"First mend {and_list([self.labels[name].lower() for name in self._faults])}: what stands "
                         "there cannot be set.")

    def _press(self, _face: PracticeFace, content: object, _buffers: object) -> None:
        """What was pressed or typed on the page; what is none of that changes nothing."""
        if not isinstance(content, Mapping):
            return
        keys: dict[str, Callable[[], str]] = self._keys()
        pressed = content.get("press")
        if isinstance(pressed, str) and pressed in keys:
            keys[pressed]()
        elif pressed == "enter" and content.get("name") in list(self.labels):
            self.enter(content["name"], typed_line(content.get("text", "")))
        else:
            self._press_more(pressed, content)
