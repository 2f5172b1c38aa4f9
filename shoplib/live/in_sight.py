"""What keeps the drawing of a panel in sight, as high as the window allows."""

from pathlib import Path

import anywidget


class InSight(anywidget.AnyWidget):
    """Draws nothing itself: it measures the panel that it stands in, and divides it; see in_sight.js."""

    _esm = Path(__file__).with_name("in_sight.js")
