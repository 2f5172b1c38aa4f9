"""Words on the drawing of a board, drawn small, hide no hole and are struck through by no line. Common practice of
drawing, no source."""

import re
from functools import cache
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from shoplib.documents.project_file import read_project
from shoplib.draw.board_drawing import board_drawing
from shoplib.draw.empty_rooms import empty_rooms
from shoplib.draw.pen import UNIT_MM, draw_to_scale
from shoplib.draw.slide_lines import worked_faces
from shoplib.lists.cut_list import kinds
from shoplib.measure import MM
from shoplib.model.cabinet import solve
from tests.draw.leaders_read import meets, strokes
from tests.draw.test_pen import SVG, overlaps, text_boxes

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
SMALL_DRAWING = 160.0
"""So many units of the page is a board long that is drawn small: 40 mm."""
EACH = pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)


@cache
def drawings(path):
    """Each face of each kind of board, its title and its SVG."""
    cabinet = solve(read_project(path))
    scenes = [
        board_drawing(board, cabinet, cabinet.style, face)
        for kind in kinds(cabinet) for board in (cabinet.by_name[kind.first.name],)
        for face in worked_faces(board, cabinet)
    ]
    ratios = (scene.size[0] / (SMALL_DRAWING * UNIT_MM * MM) for scene in scenes)
    return [(scene.title, draw_to_scale(scene, ratio).svg) for scene, ratio in zip(scenes, ratios, strict=True)]


@EACH
def test_the_word_grain_hides_no_hole(path):
    words = 0
    for title, svg in drawings(path):
        holes = [node for node in ET.fromstring(svg).iter() if node.tag == f"{SVG}circle" and len(node)]
        for text, (a, b, c, d) in text_boxes(svg):
            if "grain" in text:
                words += 1
                for hole in holes:
                    x, y = float(hole.get("cx")), float(hole.get("cy"))
                    assert not (a < x < c and b < y < d), title
    assert words > 5


@EACH
def test_no_leader_and_no_size_strikes_out_the_name_of_an_edge_nor_does_one_lie_on_other_words(path):
    for title, svg in drawings(path):
        assert overlaps(svg) == [], title
        for text, box in text_boxes(svg):
            if re.match(r"(top|bottom|left|right|front|back) (end|edge)\b", text):
                assert not any(meets(stroke, box) for stroke in strokes(svg)), (title, text)


def test_empty_rooms_are_free_and_none_could_be_larger():
    """Against a count of unit squares: each room holds none that is taken, and no row more of it is free."""
    taken = [(3, 4, 5, 6), (7, 0, 9, 5), (0, 8, 2, 10)]
    squares = {(x, y) for a, b, c, d in taken for x in range(a, c) for y in range(b, d)}

    def free(a, b, c, d):
        inside = {(x, y) for x in range(a, c) for y in range(b, d)}
        return a >= 0 and b >= 0 and c <= 12 and d <= 10 and not inside & squares

    rooms = empty_rooms((0, 0, 12, 10), taken)
    assert rooms and all(free(*room) for room in rooms)
    for a, b, c, d in rooms:
        larger = ((a - 1, b, c, d), (a, b - 1, c, d), (a, b, c + 1, d), (a, b, c, d + 1))
        assert not any(free(*room) for room in larger)
