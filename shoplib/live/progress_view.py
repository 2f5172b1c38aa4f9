"""What was tried and found, lesson by lesson, and a button that forgets it once it has asked again."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from html import escape

import ipywidgets
from IPython.display import display

from shoplib.documents.atomic import WriteError
from shoplib.live.large_type import enlarge
from shoplib.live.wake import left_behind

_KEPT = "Nothing was forgotten."


@dataclass(frozen=True, slots=True)
class Standing:
    """One lesson by `name`, and its exercises as rows of (title, how it stands, whether it was right).

    How it stands is empty for one that was not tried.
    """

    name: str
    rows: Sequence[tuple[str, str, bool]]

    @property
    def tried(self) -> int:
        """How many of its exercises were tried."""
        return sum(bool(how) for _, how, _ in self.rows)

    def __str__(self) -> str:
        right = sum(found for _, _, found in self.rows)
        begun = self.tried - right
        return f"{self.name}: {right} of {len(self.rows)} right" + (f", {begun} begun" if begun else "")


class ProgressView:
    """Lessons with how their exercises stand. `look` gives them as they are now; `forget` clears them.

    `forget` may raise WriteError; `large` shows it in large type. Clearing takes two presses: the first only asks.

    >>> view = ProgressView(lambda: [Standing("02 Carcass sizing", [("Equal bays", "", False)])], print)
    >>> view
    02 Carcass sizing: 0 of 1 right
    """

    def __init__(self, look: Callable[[], Sequence[Standing]], forget: Callable[[], object], large: bool = False):
        self._look, self._forget = look, forget
        self._list, self._says = ipywidgets.HTML(), ipywidgets.HTML()
        self.again, self.clear = _button("Look again"), _button("Clear ...")
        self.yes, self.no = _button("Yes, forget it all"), _button("No, keep it")
        self.again.on_click(lambda _button: self.look_again())
        self.clear.on_click(lambda _button: self._ask())
        self.yes.on_click(lambda _button: self._clear())
        self.no.on_click(lambda _button: self._keep())
        self._asked = ipywidgets.HBox([self.yes, self.no])
        buttons = ipywidgets.HBox([self.again, self.clear])
        self.widget = ipywidgets.VBox([self._list, buttons, self._says, self._asked]).add_class("shop-awake")
        if large:
            enlarge(self.widget)
        self._tell("", asking=False)
        self._show()

    def __repr__(self) -> str:
        return "\n".join(str(lesson) for lesson in self.lessons)

    @property
    def asking(self) -> bool:
        """Whether it waits for a yes before it forgets."""
        return self._asked.layout.display is None

    @property
    def says(self) -> str:
        """The line under the buttons."""
        return self._line

    def look_again(self) -> None:
        """Show how it stands now; other pages may have added to it."""
        self._show()
        self._tell("This is how it stands now.", asking=False)

    def _ask(self) -> None:
        self._show()
        tried = sum(lesson.tried for lesson in self.lessons)
        if not tried:
            self._tell("There is nothing to forget: no exercise was tried yet.", asking=False)
            return
        what = "1 exercise that was" if tried == 1 else f"{tried} exercises that were"
        self._tell(f"Forget the {what} tried? It cannot be brought back.", asking=True)
        self.no.focus()

    def _clear(self) -> None:
        if not self.asking:
            return
        try:
            self._forget()
        except WriteError as fault:
            self._tell(f"{_KEPT} {fault}", asking=False)
        else:
            self._tell("Forgotten. Exercises on pages that are open: menu Run, then Run All Cells.", asking=False)
        self._show()
        self.again.focus()

    def _keep(self) -> None:
        self._tell(_KEPT, asking=False)
        self.clear.focus()

    def _show(self) -> None:
        self.lessons = tuple(self._look())
        self._list.value = "".join(_html(lesson) for lesson in self.lessons)

    def _tell(self, line: str, asking: bool) -> None:
        self._line = line
        self._says.value = f'<div role="status">{escape(line)}</div>'
        self._asked.layout.display = None if asking else "none"

    def _ipython_display_(self) -> None:
        """Show the list, and leave a line in the notebook for reading without a kernel."""
        display({**self.widget._repr_mimebundle_(), "text/plain": repr(self)}, raw=True)
        still = left_behind("<p>What you have tried, lesson by lesson. To see it: menu Run, then Run All Cells.</p>")
        display({"text/html": still, "text/plain": "What was tried, lesson by lesson"}, raw=True)


def _button(text: str) -> ipywidgets.Button:
    return ipywidgets.Button(description=text, layout=ipywidgets.Layout(width="auto"))


def _html(lesson: Standing) -> str:
    """One lesson, folded to a line; a sign and words say how each exercise stands, colour does not."""
    rows = "".join(
        f"<li>{escape(title)}: {'✓ ' if right else '○ ' if how else ''}{escape(how or 'not tried')}</li>"
        for title, how, right in lesson.rows
    )
    return f"<details><summary>{escape(str(lesson))}</summary><ul>{rows}</ul></details>"
