"""What a panel leaves in a saved notebook: a still picture, and how to make it move again."""

from base64 import b64encode
from collections.abc import Iterable
from html import escape

from shoplib.live.picture import Drawing

WAKE = "Still picture of this panel. To make it move: menu Run, then Run All Cells."

_ALONE = (
    ".jp-OutputArea-child:has(> .jp-OutputArea-output.jupyter-widgets):not(:has(.shop-awake))"
    ":has(+ .jp-OutputArea-child .shop-still) { display: none; }"
)
"""Hides what JupyterLab writes in place of a panel whose kernel is gone ("model not found"), where what
we left for that case stands right below it: the output itself gets the class of widgets, and holds none."""


def left_behind(inside: str) -> str:
    """HTML to leave in a notebook beside a living panel, which hides it (panel.css)."""
    return f'<div class="shop-still"><style>{_ALONE}</style>{inside}</div>'


def still_html(title: str, drawings: Iterable[Drawing]) -> str:
    """The drawings as plain HTML that needs neither kernel, script nor network.

    Each SVG stands in an `img`: that passes the cleaning which JupyterLab and web viewers give to
    the saved output of a notebook that was not run here.
    """
    figures = "".join(
        f'<figure><img alt="{escape(drawing.alt)}" src="data:image/svg+xml;base64,'
        f'{b64encode(drawing.svg.encode()).decode()}"/></figure>'
        for drawing in drawings
    )
    return left_behind(f"<p><strong>{escape(title)}.</strong> {WAKE}</p>{figures}")
