"""What the practice benches of all joints have on the page: cautions first, fields, a log, a picture, what came."""

from dataclasses import asdict
from html import escape
from pathlib import Path

import anywidget
from IPython.display import display
from traitlets import Dict, List, Unicode

from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.live.exercise_box import EXERCISE_CSS, sent_picture
from shoplib.live.picture import Drawing
from shoplib.live.practice_says import Section
from shoplib.live.wake import left_behind

UNITS = {"in": "inches", "mm": "millimetres"}


class PracticeFace(anywidget.AnyWidget):
    """What the browser draws of any bench; see practice_parts.js."""

    _css = EXERCISE_CSS + Path(__file__).with_name("practice_panel.css").read_text(encoding="utf-8")

    title = Unicode().tag(sync=True)
    which = Unicode().tag(sync=True)
    note = Unicode().tag(sync=True)
    cautions = Dict().tag(sync=True)
    model = List().tag(sync=True)
    fields = List().tag(sync=True)
    ways = List().tag(sync=True)
    way = Unicode().tag(sync=True)
    log = Dict().tag(sync=True)
    picture = Dict().tag(sync=True)
    said = Dict().tag(sync=True)
    result = Dict().tag(sync=True)


def sent_cautions(tool: str, sections: tuple[Section, ...]) -> dict[str, object]:
    """All cautions, and the first of each tool and kind of cut, which stand in sight above the fold with all.

    >>> from shoplib.live.practice_says import cautions
    >>> sent_cautions("a stacked dado set", cautions())["first"][2][:36]
    'Some saws, and the rules of some cou'
    """
    return {
        "heading": f"Read first: cautions for real work with {tool}",
        "first": [section.lines[0] for section in sections],
        "all": sent_sections(sections),
    }


def sent_sections(sections: tuple[Section, ...]) -> list[dict]:
    """Sections as they go to the browser."""
    return [{**asdict(section), "lines": list(section.lines)} for section in sections]


def sent_scene(scene: Scene, fit: tuple[float, float]) -> dict[str, str]:
    """A drawing as it goes to the browser."""
    return sent_picture(Drawing(scene.title, draw(scene, fit), scene.alt))


def still_html(face: PracticeFace, task: tuple[str, ...], wake: str) -> str:
    """A bench as plain HTML, for a saved page that is read without a kernel: all cautions, the task, and a picture."""
    warned = "".join(
        f"<p><strong>{escape(part['heading'])}</strong></p><ul>"
        + "".join(f"<li>{escape(line)}</li>" for line in part["lines"]) + "</ul>"
        for part in face.cautions["all"]
    )
    told = "".join(f"<p>{escape(line)}</p>" for line in task)
    return left_behind(
        f"<p><strong>{escape(face.title)}.</strong> {wake}</p>{warned}{told}"
        f'<figure><img alt="{escape(face.picture["alt"])}" src="{face.picture["source"]}"/></figure>'
    )


def show(face: PracticeFace, still: str) -> None:
    """Show the living bench, and leave its still form in the notebook."""
    display({**face._repr_mimebundle_()[0], "text/plain": face.title}, raw=True)
    display({"text/html": still, "text/plain": f"Still picture of {face.title}"}, raw=True)
