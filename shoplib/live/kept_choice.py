"""One choice for the whole workbook, asked on the start page and kept."""

from collections.abc import Callable, Mapping
from typing import Generic, TypeVar

import ipywidgets
from IPython.display import display

from shoplib.documents.atomic import WriteError
from shoplib.live.large_type import enlarge
from shoplib.live.wake import left_behind

T = TypeVar("T")


class KeptChoice(Generic[T]):
    """Radio buttons; `keep` is called with what is chosen and may raise WriteError.

    `options` maps each value to its words, `named` is what is chosen ("unit"), `asks` the words beside the buttons.
    `chosen` is the value of before, or None: then the line under the buttons says `invites`. `large` shows all in
    large type.

    >>> kept = []
    >>> choice = KeptChoice("unit", "I work in", {"in": "inches", "mm": "millimetres"}, None, kept.append)
    >>> choice.choose("mm"), kept
    ('Unit: millimetres, for all pages. Pages that are open: menu Run, then Run All Cells.', ['mm'])
    """

    def __init__(
        self, named: str, asks: str, options: Mapping[T, str], chosen: T | None, keep: Callable[[T], object],
        invites: str = "", large: bool = False,
    ):
        self._named, self._options, self._keep = named, options, keep
        self._says = ipywidgets.HTML()
        self.buttons = ipywidgets.RadioButtons(
            options=[(word, value) for value, word in options.items()], value=chosen, description=asks
        )
        self._tell(invites if chosen is None else f"{self!r}, for all pages.")
        self.buttons.observe(lambda change: self.choose(change["new"]), names="value")
        self.widget = ipywidgets.VBox([self.buttons, self._says]).add_class("shop-awake")
        if large:
            enlarge(self.widget)

    def __repr__(self) -> str:
        chosen = self.buttons.value
        return f"{self._named.capitalize()}: {'not chosen yet' if chosen is None else self._options[chosen]}"

    def choose(self, value: T) -> str:
        """Choose as a click does; gives back what the page then says."""
        if self.buttons.value != value:
            self.buttons.value = value  # comes back here through the observer
            return self.says
        try:
            self._keep(value)
        except WriteError as fault:
            return self._tell(f"The choice could not be kept. {fault}")
        return self._tell(f"{self!r}, for all pages. Pages that are open: menu Run, then Run All Cells.")

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
        display({"text/html": still, "text/plain": f"{self._named.capitalize()} of the workbook"}, raw=True)
