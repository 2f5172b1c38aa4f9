"""Where a panel says why a size is what it is, once it was picked."""

from collections.abc import Callable
from pathlib import Path

import anywidget
from traitlets import List, Unicode

from shoplib.live.whole_lengths import script


class NotShown(LookupError):
    """A size was asked that the panel does not show, or no longer."""


class WorkingBox(anywidget.AnyWidget):
    """The working of the size that was picked last; `explain` gives its lines, or NotShown.

    It listens to the whole panel that it stands in: whatever carries a `data-ask` can be picked, by the
    pointer or from the keyboard.

    >>> box = WorkingBox(lambda name: ("bottom 22 in = case width 23 in - 1 in",))
    >>> box.ask("table/0/2"), box.lines
    (None, ['bottom 22 in = case width 23 in - 1 in'])
    """

    _esm = script("working_box.js")
    _css = Path(__file__).with_name("panel.css")

    asked = Unicode().tag(sync=True)
    lines = List().tag(sync=True)

    def __init__(self, explain: Callable[[str], tuple[str, ...]]):
        super().__init__()
        self._explain = explain
        self.on_msg(self._hear)

    def ask(self, name: str) -> None:
        """Say why; a size that is no longer shown closes the box, and only that: a fault of ours stays one."""
        try:
            lines = list(self._explain(name))
        except NotShown:
            name, lines = "", []
        with self.hold_sync():
            self.asked, self.lines = name, lines

    def _hear(self, _box: anywidget.AnyWidget, content: dict, _buffers: object) -> None:
        self.ask(str(content.get("ask", "")))
