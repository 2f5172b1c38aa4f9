"""Ordinary or large type, asked once for the whole workbook."""

from collections.abc import Callable

import ipywidgets
from IPython.display import display

from shoplib.documents.atomic import WriteError
from shoplib.live.large_type import enlarge
from shoplib.live.wake import left_behind

_WORDS = {False: "ordinary", True: "large, for a projector"}


class TypeChoice:
    """Two radio buttons; `keep` is called with whether the type is large, and may raise WriteError.

    >>> kept = []
    >>> choice = TypeChoice(False, kept.append)
    >>> choice.choose(True), kept
    ('Type: large, for a projector, on all pages. Pages that are open: menu Run, then Run All Cells.', [True])
    """

    def __init__(self, large: bool, keep: Callable[[bool], object]):
        self._keep = keep
        self._says = ipywidgets.HTML()
        self.buttons = ipywidgets.RadioButtons(
            options=[(word, which) for which, word in _WORDS.items()], value=large, description="Type",
        )
        self._tell(f"{self!r}.")
        self.buttons.observe(lambda change: self.choose(change["new"]), names="value")
        self.widget = ipywidgets.VBox([self.buttons, self._says]).add_class("shop-awake")
        if large:
            enlarge(self.widget)

    def __repr__(self) -> str:
        return f"Type: {_WORDS[self.buttons.value]}"

    def choose(self, large: bool) -> str:
        """Choose as a click does; gives back what the page then says."""
        if self.buttons.value != large:
            self.buttons.value = large  # comes back here through the observer
            return self.says
        try:
            self._keep(large)
        except WriteError as fault:
            return self._tell(f"The choice could not be kept. {fault}")
        return self._tell(f"{self!r}, on all pages. Pages that are open: menu Run, then Run All Cells.")

    @property
    def says(self) -> str:
        """The line under the buttons."""
        return self._line

    def _tell(self, line: str) -> str:
        self._line = line
        self._says.value = f'<div role="status">{line}</div>'
        return line

    def _ipython_display_(self) -> None:
        """Show the buttons, and leave a line in the notebook for reading without a kernel."""
        display({**self.widget._repr_mimebundle_(), "text/plain": repr(self)}, raw=True)
        still = left_behind(f"<p>{self!r}. To choose: menu Run, then Run All Cells.</p>")
        display({"text/html": still, "text/plain": "Type of the workbook"}, raw=True)
