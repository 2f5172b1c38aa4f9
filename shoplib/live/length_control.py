"""A length asked for with a slider and a text box: shop fractions or millimetres, mouse, keys or typing."""

from pathlib import Path

import anywidget
from traitlets import Bool, Int, Unicode, validate

from shoplib.measure import (
    INCH,
    INCH_STYLE,
    MM,
    LengthError,
    Style,
    read_length,
    to_step,
    write_brief,
)
from shoplib.words.quoted import in_quotes

_PAGE = {"in": INCH, "mm": 10 * MM}


class LengthControl(anywidget.AnyWidget):
    """A slider, a text box and the unit beside it, for one length between two limits.

    `value`, `low` and `high` are lengths as text with a unit, or pint quantities. `style` says in which
    unit and to which finest step the value is shown. `step` is one arrow key (the style's step if not
    given); PageUp and PageDown move by 1 in or 10 mm, or a tenth of a short range. What is typed is kept
    exactly, also between steps; what is shown of it is no finer than a shop can set. `measured` shows a
    decimal, as the caliper does, never a shop fraction.

    Raises LengthError if a length cannot be read or the value lies outside the limits.

    >>> width = LengthControl("Width", value="34 1/2 in", low="8 in", high="96 in")
    >>> width
    LengthControl('Width', '34 1/2 in')
    >>> width.enter("860 mm")
    >>> width.text
    '33 55/64 in'
    >>> width.enter("9 ft")
    Traceback (most recent call last):
    ...
    shoplib.measure.ticks.LengthError: Width goes from 8 in to 96 in here; 108 in is outside.
    """

    _esm = Path(__file__).with_name("length_control.js")
    _css = Path(__file__).with_name("length_control.css")

    ticks = Int().tag(sync=True)
    low = Int().tag(sync=True)
    high = Int().tag(sync=True)
    step = Int().tag(sync=True)
    page = Int().tag(sync=True)
    unit = Unicode().tag(sync=True)
    finest = Int().tag(sync=True)
    label = Unicode().tag(sync=True)
    measured = Bool(False).tag(sync=True)
    enabled = Bool(True).tag(sync=True)

    def __init__(self, label: str, value, low, high, style: Style = INCH_STYLE, step=None, *, measured: bool = False):
        lowest = read_length(low, what=f"{label}, lowest value", zero=True)
        super().__init__(
            label=label,
            ticks=read_length(value, what=label, zero=lowest == 0),
            low=lowest,
            high=read_length(high, what=f"{label}, highest value"),
            step=self._arrow(style, step),
            unit=style.unit,
            finest=style.step,
            measured=measured,
        )
        self.page = self._far()
        self.on_msg(self._answer)

    def __repr__(self) -> str:
        return f"LengthControl({self.label!r}, {self.text!r})"

    @property
    def shown_in(self) -> Style:
        """The unit and finest step in which the value is shown."""
        return Style(self.unit, self.finest)

    @property
    def text(self) -> str:
        """The value as the shop reads it; `ticks` is exact."""
        return self._written(self.ticks)

    def enter(self, length) -> None:
        """Take a length as if it had been typed: the control's own unit applies where none is written.

        Raises LengthError and keeps the old value if it cannot be read or lies outside the limits.
        """
        self.ticks = read_length(length, what=self.label, unit=self.unit, zero=self.low == 0)

    def limit(self, low, high) -> None:
        """Set new limits; a value outside them moves to the nearer one."""
        lowest = read_length(low, what=f"{self.label}, lowest value", zero=True)
        highest = read_length(high, what=f"{self.label}, highest value")
        with self.hold_trait_notifications():
            self.low, self.high = lowest, highest
            self.ticks = min(max(self.ticks, lowest), highest)
            self.page = self._far()

    def show_in(self, style: Style, step=None) -> None:
        """Show the same value in another style; an arrow key then moves `step`, or the style's own step."""
        with self.hold_trait_notifications():
            self.unit, self.finest = style.unit, style.step
            self.step = self._arrow(style, step)
            self.page = self._far()

    @staticmethod
    def _arrow(style: Style, step) -> int:
        return style.step if step is None else read_length(step, what="step of an arrow key")

    def _far(self) -> int:
        tenth = max(self.step, to_step((self.high - self.low) // 10, self.step, "down"))
        return min(_PAGE[self.unit], tenth)

    def _written(self, ticks: int) -> str:
        return write_brief(ticks, self.shown_in, self.measured)

    @property
    def _reach(self) -> str:
        return f"{self.label} goes from {self._written(self.low)} to {self._written(self.high)} here"

    @validate("ticks")
    def _within_limits(self, proposal):
        ticks = proposal["value"]
        if not self.low <= ticks <= self.high:
            raise LengthError(f"{self._reach}; {self._written(ticks)} is outside.")
        return ticks

    def _answer(self, _widget, content, _buffers) -> None:
        """Read what the text box could not read itself, and answer with the sentence that helps."""
        if "read" not in content:
            return
        problem = ""
        try:
            self.enter(str(content["read"]))
        except LengthError as error:
            problem = self._sentences(str(error))
        self.send({"read": content["read"], "problem": problem})

    def _sentences(self, reason: str) -> str:
        """What is wrong, the limits if they were not told, and that nothing has moved yet."""
        limits = "" if self._reach in reason else f" {self._reach}."
        return f"{in_quotes(reason)}{limits} What is drawn still has {self.text}."
