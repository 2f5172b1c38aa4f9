"""What a panel leaves in a saved notebook: a still picture, and how to make it move again."""

from base64 import b64encode
from collections.abc import Iterable
from html import escape

from shoplib.live.picture import Drawing

WAKE = "Still picture of this panel. To make it move: menu Run, then Run All Cells."


def still_html(title: str, drawings: Iterable[Drawing]) -> str:
    """The drawings as plain HTML that needs neither kernel, script nor network.

    Each SVG stands in an `img`: that passes the cleaning which JupyterLab and web viewers give to
    the saved output of a notebook that was not run here. A living panel hides it (panel.css).
    """
    figures = "".join(
        f'<figure><img alt="{escape(drawing.alt)}" src="data:image/svg+xml;base64,'
        f'{b64encode(drawing.svg.encode()).decode()}"/></figure>'
        for drawing in drawings
    )
    return f'<div class="shop-still"><p><strong>{escape(title)}.</strong> {WAKE}</p>{figures}</div>'
