"""A whole percentage asked for with a slider and a box beside it, such as the humidity of a room."""

from pathlib import Path

import anywidget
from traitlets import Int, TraitError, Unicode, validate


class PercentControl(anywidget.AnyWidget):
    """A slider and a number box from `low` to `high`, both in percent.

    Raises TraitError for a value outside them.

    >>> PercentControl("Humidity", 45, 30, 70)
    PercentControl('Humidity', 45)
    """

    _esm = Path(__file__).with_name("percent_control.js")
    _css = Path(__file__).with_name("length_control.css")

    value = Int().tag(sync=True)
    low = Int().tag(sync=True)
    high = Int().tag(sync=True)
    label = Unicode().tag(sync=True)

    def __init__(self, label: str, value: int, low: int, high: int):
        super().__init__(label=label, low=low, high=high, value=value)

    def __repr__(self) -> str:
        return f"PercentControl({self.label!r}, {self.value})"

    @validate("value")
    def _within_limits(self, proposal):
        if not self.low <= proposal["value"] <= self.high:
            raise TraitError(f"{self.label} goes from {self.low} to {self.high} % here.")
        return proposal["value"]
