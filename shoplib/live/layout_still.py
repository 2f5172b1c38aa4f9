"""A layout by hand as plain HTML, for a saved page that is read without a kernel."""

from html import escape

from shoplib.live.exercise_box import sent_picture
from shoplib.live.layout_face import LayoutFace
from shoplib.live.picture import Drawing
from shoplib.live.wake import left_behind

_WAKE = "To lay parts out here: menu Run, then Run All Cells."


def still_html(face: LayoutFace) -> str:
    """The task, the parts and the drawings as they stand, and how to wake them."""
    told = "".join(f"<li>{escape(part['text'])}</li>" for part in face.parts)
    sent = [sent_picture(Drawing("", one["svg"], one["alt"])) for one in face.pictures]
    drawn = "".join(f'<figure><img alt="{escape(one["alt"])}" src="{one["source"]}"/></figure>' for one in sent)
    return left_behind(f"<p><strong>{escape(face.title)}.</strong> {_WAKE}</p><p>{escape(face.task)}</p>"
                       f"<ul>{told}</ul>{drawn}")
