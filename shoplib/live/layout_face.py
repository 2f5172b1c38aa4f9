"""What the browser shows of a layout by hand: the values that page and kernel share."""

from pathlib import Path

import anywidget
from traitlets import Bool, Dict, Int, List, Unicode

from shoplib.live.exercise_box import EXERCISE_CSS
from shoplib.live.layout_says import KINDS, WAYS
from shoplib.live.practice_face import UNITS
from shoplib.live.whole_lengths import script


class LayoutFace(anywidget.AnyWidget):
    """What the browser draws; see layout_panel.js."""

    _esm = script("practice_parts.js", "layout_panel.js")
    _css = EXERCISE_CSS + "".join(
        Path(__file__).with_name(f"{name}_panel.css").read_text(encoding="utf-8") for name in ("practice", "layout")
    )

    title = Unicode().tag(sync=True)
    note = Unicode().tag(sync=True)
    task = Unicode().tag(sync=True)
    unit = Unicode().tag(sync=True)
    unit_word = Unicode().tag(sync=True)
    parts = List().tag(sync=True)
    part = Int(0).tag(sync=True)
    turned = Bool(False).tag(sync=True)
    places = List().tag(sync=True)
    place = Unicode().tag(sync=True)
    ways = List().tag(sync=True)
    way = Unicode().tag(sync=True)
    kinds = List().tag(sync=True)
    strip = Dict().tag(sync=True)
    fields = List().tag(sync=True)
    pictures = List().tag(sync=True)
    figures = Dict().tag(sync=True)
    best_shown = Bool(False).tag(sync=True)
    said = Dict().tag(sync=True)
    result = Dict().tag(sync=True)


def layout_face(task: str, unit: str, *, large: bool, note: str) -> LayoutFace:
    """The face of a panel before anything is laid.

    >>> layout_face("Lay 14 parts.", "mm", large=False, note="").unit_word
    'millimetres'
    """
    face = LayoutFace(
        title="A sheet laid out by hand", note=note, task=task, unit=unit, unit_word=UNITS[unit],
        ways=[list(way) for way in WAYS.items()], kinds=[list(kind) for kind in KINDS.items()],
        strip={"name": "strip", "label": "Width of the strip", "typed": "", "stands": "", "fault": ""},
    )
    face.add_class("shop-practice-widget")
    if large:
        face.add_class("shop-large")
    return face
