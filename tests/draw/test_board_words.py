"""Words on the drawing of a board hide no hole and are struck through by no line. Common practice of drawing, no
source."""

from functools import cache
from pathlib import Path

import pytest

from shoplib.documents.project_file import read_project
from shoplib.draw.board_drawing import board_drawing
from shoplib.draw.lettering import text_width
from shoplib.draw.marks import NORMAL
from shoplib.draw.scene import Disc, EdgeText, Leader, Running
from shoplib.draw.slide_lines import worked_faces
from shoplib.lists.cut_list import kinds
from shoplib.model.cabinet import solve

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
SMALL_DRAWING = 160.0
"""So many units of the page is a board long that is drawn small: 40 mm."""


@cache
def drawings(path):
    cabinet = solve(read_project(path))
    return [
        board_drawing(board, cabinet, cabinet.style, face)
        for kind in kinds(cabinet) for board in (cabinet.by_name[kind.first.name],)
        for face in worked_faces(board, cabinet)
    ]


def word_boxes(scene, scale):
    """The words along edges, as the page has them: left, bottom, right, top in units of the page."""
    for item in scene.items:
        if isinstance(item, EdgeText):
            a, b, c, d = (side * scale for side in item.room)
            wide, high, off = text_width(item.text, NORMAL) / 2, NORMAL * 0.6, 4 + NORMAL * 0.6
            x, y = (a + c) / 2, (b + d) / 2
            if item.side in ("below", "above"):
                y = b - off if item.side == "below" else d + off
                yield item, (x - wide, y - high, x + wide, y + high)


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_the_word_grain_hides_no_hole_for_a_pull(path):
    for scene in drawings(path):
        holes = [item for item in scene.items if isinstance(item, Disc) and item.name == "pull"]
        scale = SMALL_DRAWING / scene.size[0]
        for item, (a, b, c, d) in word_boxes(scene, scale):
            if item.text == "grain":
                for hole in holes:
                    x, y = hole.centre[0] * scale, hole.centre[1] * scale
                    assert not (a < x < c and b < y < d), (scene.title, hole)


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_no_leader_of_one_hole_and_no_size_of_it_strikes_out_the_name_of_an_edge(path):
    for scene in drawings(path):
        scale = SMALL_DRAWING / scene.size[0]
        lines = {side: [] for side in ("above", "below")}
        for item in scene.items:
            if isinstance(item, Leader) and item.side in lines:
                lines[item.side].append(item.point[0] * scale)
            elif isinstance(item, Running) and item.side in lines:
                lines[item.side] += [at * scale for at in item.at]
        for item, (a, _, c, _) in word_boxes(scene, scale):
            # A long name, edging and all, has no room on a small drawing.
            if item.text != "grain" and len(lines[item.side]) == 1 and c - a < SMALL_DRAWING * 0.4:
                assert not a < lines[item.side][0] < c, (scene.title, item.text)
