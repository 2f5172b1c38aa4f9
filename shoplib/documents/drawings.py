"""The drawings of a plan: SVG files to look at, and one PDF to print."""

import re
from collections.abc import Iterable, Iterator

from shoplib.documents.typeset import typeset
from shoplib.draw.board_drawing import board_drawing
from shoplib.draw.board_face import faces
from shoplib.draw.chains import bays
from shoplib.draw.elevation import front_elevation
from shoplib.draw.pen import Drawn, draw, draw_to_scale
from shoplib.draw.scene import Scene, Shape
from shoplib.draw.section import section_plan, section_side
from shoplib.lists.cut_list import kinds
from shoplib.measure import MM, write_brief
from shoplib.model.solved import Cabinet

_PAPER = {"in": ("us-letter", 215.9, 279.4), "mm": ("a4", 210.0, 297.0)}
"""Paper by unit: Typst's name, width and height in mm (ANSI/ASME Y14.1 size A; ISO 216 A4)."""

_RATIOS = {
    "in": (1, 2, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96, 192),
    "mm": (1, 2, 5, 10, 15, 20, 25, 50, 75, 100, 200),
}
"""Scales to choose from: those of the inch rule and of the metric scale rule (common practice, no source)."""

_ACROSS, _DOWN = 24.0, 26.0
"""Margins of the page in mm, both sides together, as the template sets them."""
_HEADING = 27.0
"""What the headings and the note take on the first page, in mm."""
_BOARD_HEIGHT = 92.0
"""Height for one board's drawing in mm, so that two and their legends stand on a page."""


def drawing_files(cabinet: Cabinet) -> dict[str, bytes]:
    """File name to content: every drawing as SVG, and `drawings.pdf` with all of them.

    Equal boards share one drawing, which names them all. Raises ValueError where the cabinet has no boards.
    """
    views = dict(_views(cabinet))
    boards = dict(_boards(cabinet))
    found = {f"{name}.svg": draw(scene).encode() for name, scene in {**views, **boards}.items()}
    found["drawings.pdf"] = _pdf(cabinet, views.values(), boards.values())
    return found


def _views(cabinet: Cabinet) -> Iterator[tuple[str, Scene]]:
    """The whole from outside and cut; bays that are cut alike are drawn once."""
    style = cabinet.style
    yield "front-elevation", front_elevation(cabinet, style)
    yield "front-elevation-fronts-off", front_elevation(cabinet, style, fronts=False)
    drawn = set()
    for number in range(1, len(bays(cabinet)) + 1):
        scene = section_side(cabinet, style, number)
        shapes = [item for item in scene.items if isinstance(item, Shape)]
        cut = tuple(shape.rects for shape in shapes if shape.fill.startswith("cut"))
        if cut not in drawn:
            drawn.add(cut)
            yield f"section-bay-{number}", scene
    yield "plan-section", section_plan(cabinet, style)


def _boards(cabinet: Cabinet) -> Iterator[tuple[str, Scene]]:
    """Each kind of board, once for each face that is worked on."""
    taken: set[str] = set()
    for kind in kinds(cabinet):
        for face in faces(kind.first):
            scene = board_drawing(kind.first, cabinet, cabinet.style, face, kind.names[1:])
            yield _file_name(f"board {kind.first.name} {face}", taken), scene


def _file_name(text: str, taken: set[str]) -> str:
    """A name that every file system takes: small letters, digits, hyphens; numbered where it stands already.

    >>> _file_name("board 1/2 in: Seitenwand links", set())
    'board-1-2-in-seitenwand-links'
    """
    stem = re.sub(r"[^a-z0-9]+", "-", text.lower()).strip("-")[:80] or "board"
    name, number = stem, 1
    while name in taken:
        number += 1
        name = f"{stem}-{number}"
    taken.add(name)
    return name


def _pdf(cabinet: Cabinet, views: Iterable[Scene], boards: Iterable[Scene]) -> bytes:
    paper, width, height = _PAPER[cabinet.style.unit]
    unit = "inches" if cabinet.style.unit == "in" else "millimetres"
    wide, deep, high = (write_brief(s, cabinet.style) for s in _outside(cabinet))
    lying = (height - _ACROSS, width - _DOWN - _HEADING)
    standing = (width - _ACROSS, _BOARD_HEIGHT)
    return typeset("drawings.typ", {
        "title": cabinet.name,
        "paper": paper,
        "unit": f"sizes in {unit}",
        "caution": "Work to the written sizes; do not measure from the paper.",
        "summary": f"Outside: {wide} wide, {deep} deep, {high} high.",
        "views": [_entry(scene, lying, cabinet.style.unit) for scene in views],
        "boards": [_entry(scene, standing, cabinet.style.unit) for scene in boards],
    })


def _outside(cabinet: Cabinet) -> tuple[int, int, int]:
    boxes = [board.box for board in cabinet.boards]
    return tuple(max(b.high[k] for b in boxes) - min(b.low[k] for b in boxes) for k in range(3))


def _entry(scene: Scene, room: tuple[float, float], unit: str) -> dict:
    """One picture for the template: the largest usual scale that fits the room (mm)."""
    drawn, ratio = _to_fit(scene, room, unit)
    width, height = drawn.size_mm
    shrink = min(1.0, room[0] / width, room[1] / height)
    scale = f"Scale 1 : {ratio} when printed at full size." if shrink == 1.0 else "Not to scale."
    return {
        "title": scene.title, "note": scene.note, "alt": scene.alt, "scale": scale, "svg": drawn.svg,
        "width": round(width * shrink, 4), "legend": scene.legend,
    }


def _to_fit(scene: Scene, room: tuple[float, float], unit: str) -> tuple[Drawn, int]:
    """At the largest scale that fits, dimensions included; where none does, at the one nearest to fitting."""
    tried = []
    for ratio in _RATIOS[unit]:
        if max(scene.size[0] / room[0], scene.size[1] / room[1]) > MM * ratio:
            continue
        drawn = draw_to_scale(scene, ratio)
        width, height = drawn.size_mm
        if width <= room[0] and height <= room[1]:
            return drawn, ratio
        tried.append((max(width / room[0], height / room[1]), ratio, drawn))
    _, ratio, drawn = min(tried, key=lambda t: t[:2])
    return drawn, ratio
