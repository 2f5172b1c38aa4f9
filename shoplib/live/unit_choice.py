"""Inches or millimetres, asked once for the whole workbook."""

from collections.abc import Callable

import ipywidgets
from IPython.display import display

from shoplib.documents.atomic import WriteError
from shoplib.live.large_type import enlarge
from shoplib.live.wake import left_behind

_WORDS = {"in": "inches", "mm": "millimetres"}
_ASKED = "Choose inches or millimetres. Whichever it is, the other is read too, wherever you write its unit."


class UnitChoice:
    """Two radio buttons; `keep` is called with "in" or "mm" and may raise WriteError.

    `unit` is what was chosen before, or None; `large` shows them in large type.

    >>> kept = []
    >>> choice = UnitChoice(None, kept.append)
    >>> choice.choose("mm"), kept
    ('Chosen: millimetres, for all pages. Pages that are open: menu Run, then Run All Cells.', ['mm'])
    """

    def __init__(self, unit: str | None, keep: Callable[[str], object], large: bool = False):
        self._keep = keep
        self._says = ipywidgets.HTML()
        self.buttons = ipywidgets.RadioButtons(
            options=[(word, unit) for unit, word in _WORDS.items()], value=unit, description="I work in"
        )
        self._tell(f"Chosen: {_WORDS[unit]}, for all pages." if unit else _ASKED)
        self.buttons.observe(lambda change: self.choose(change["new"]), names="value")
        self.widget = ipywidgets.VBox([self.buttons, self._says]).add_class("shop-awake")
        if large:
            enlarge(self.widget)

    def __repr__(self) -> str:
        chosen = self.buttons.value
        return f"Unit: {_WORDS[chosen]}" if chosen else "Unit: not chosen yet"

    def choose(self, unit: str) -> str:
        """Choose "in" or "mm" as a click does; gives back what the page then says."""
        if self.buttons.value != unit:
            self.buttons.value = unit  # comes back here through the observer
            return self.says
        try:
            self._keep(unit)
        except WriteError as fault:
            return self._tell(f"The choice could not be kept. {fault}")
        return self._tell(
            f"Chosen: {_WORDS[unit]}, for all pages. Pages that are open: menu Run, then Run All Cells."
        )

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
        display({"text/html": still, "text/plain": "Unit of the workbook"}, raw=True)
