"""Large type for a projector: what a widget needs to show all that is in it half as large again."""

from pathlib import Path

import ipywidgets

LARGE_CSS = Path(__file__).with_name("large.css").read_text(encoding="utf-8")


def enlarge(box: ipywidgets.Box) -> None:
    """Show everything in a box in large type; it brings its own style, which draws nothing itself.

    >>> box = ipywidgets.VBox([ipywidgets.Button(description="Save")])
    >>> enlarge(box)
    >>> box._dom_classes, len(box.children)
    (('shop-large',), 2)
    """
    box.add_class("shop-large")
    style = ipywidgets.HTML(f"<style>{LARGE_CSS}</style>", layout=ipywidgets.Layout(display="none"))
    box.children = (*box.children, style)
