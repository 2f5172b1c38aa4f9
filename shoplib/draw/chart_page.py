"""The page that a chart stands on: as large as its letters ask, and the same bytes for the same chart."""

import re
from io import StringIO

import matplotlib
from matplotlib.figure import Figure

from shoplib.draw.letters import ORDINARY, letters

_WIDTH, _LARGE_HEIGHT = 6.4, 4.2 / 1.2
"""In inches of the page; larger letters stand on a smaller page that is shown larger."""


def chart_page(height: float) -> Figure:
    """A page for a chart in the letters of now, `height` inches high in ordinary ones. Nothing global is changed.

    >>> chart_page(4.0).get_size_inches().tolist()
    [6.4, 4.0]
    """
    larger = letters()
    return Figure(figsize=(_WIDTH, height) if larger == ORDINARY else (_WIDTH / larger, _LARGE_HEIGHT))


def chart_svg(figure: Figure, salt: str) -> str:
    """The page as SVG text; `salt` keeps the names in it the same from run to run, and apart from another chart's.

    >>> chart_svg(chart_page(4.0), "empty") == chart_svg(chart_page(4.0), "empty")
    True
    """
    with matplotlib.rc_context({"svg.hashsalt": salt, "svg.fonttype": "none"}):
        page = StringIO()
        figure.savefig(page, format="svg", metadata={"Date": None, "Creator": None})
    text = page.getvalue()
    text = text[text.index("<svg"):]
    larger = letters()
    if larger == ORDINARY:
        return text
    return re.sub(r'(width|height)="([\d.]+)pt"', lambda one: f'{one[1]}="{float(one[2]) * larger:g}pt"', text, count=2)
