"""Drawings on the screen: SVG text shown at once, dimmed when it is no longer what was asked for."""

from collections.abc import Iterable
from dataclasses import asdict, dataclass
from pathlib import Path

import anywidget
from traitlets import Bool, List, Unicode

from shoplib.live.whole_lengths import script
from shoplib.measure.noted import Sentence


@dataclass(frozen=True, slots=True)
class Drawing:
    """A drawing as it is shown: its title, its SVG text (which shows that title), and the words for
    whoever cannot see it.
    """

    title: str
    svg: str
    alt: str


class Picture(anywidget.AnyWidget):
    """One or more drawings, side by side where there is room, under one line of message.

    `asked` says where the lengths stand in the message that can be picked, each by "message/" and its number.

    >>> picture = Picture([Drawing("Front", "<svg/>", "A case 30 in wide.")])
    >>> picture.dim("The dado is deeper than the side is thick.")
    >>> picture
    Picture('Front', last picture that could be drawn)
    """

    _esm = script("picture.js")
    _css = Path(__file__).with_name("panel.css")

    drawings = List().tag(sync=True)
    message = Unicode().tag(sync=True)
    asked = List().tag(sync=True)
    stale = Bool(False).tag(sync=True)

    def __init__(self, drawings: Iterable[Drawing] = (), message: str = ""):
        super().__init__(drawings=[asdict(drawing) for drawing in drawings], message=message)

    def __repr__(self) -> str:
        titles = ", ".join(repr(drawing["title"]) for drawing in self.drawings)
        return f"Picture({titles}, last picture that could be drawn)" if self.stale else f"Picture({titles})"

    def show(self, drawings: Iterable[Drawing], message: str = "") -> None:
        """Show new drawings, in one message to the browser."""
        with self.hold_sync():
            self.drawings = [asdict(drawing) for drawing in drawings]
            self.message = str(message)
            self.asked = [[start, end] for start, end, _ in message.lengths] if isinstance(message, Sentence) else []
            self.stale = False

    def dim(self, message: str) -> None:
        """Keep the last drawings, dimmed, and say why."""
        with self.hold_sync():
            self.message, self.asked = message, []
            self.stale = True
