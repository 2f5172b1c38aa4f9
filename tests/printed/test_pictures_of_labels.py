"""The small picture of a label and its words, read back: heavy edges, grain, the face, by the axes of plan.json."""

import re
import xml.etree.ElementTree as ET

import pytest

from shoplib.documents.board_scenes import scenes_of
from shoplib.lists.cut_list import kinds
from shoplib.printed.true_scale.labels import label_pages
from shoplib.printed.typeset.blocks import Labels
from tests.printed.cases import NAMES, planned, solved
from tests.printed.test_true_scale import SVG, WITHIN, box

HEAVY, THIN = 0.9, 0.3
LOOKS = {"looks left": (0, -1), "looks right": (0, 1), "looks to the front": (1, -1), "looks to the back": (1, 1),
         "looks up": (2, 1), "looks down": (2, -1)}
NAMED = {"left": (0, -1), "right": (0, 1), "front": (1, -1), "back": (1, 1), "bottom": (2, -1), "top": (2, 1)}
RIGHT = {(0, -1): (1, -1), (0, 1): (1, 1), (1, -1): (0, 1), (1, 1): (0, -1), (2, 1): (0, 1), (2, -1): (0, -1)}
"""What runs to the right for one who stands before a face that looks there: of a level face the back is up, and its
lower one is turned over about its ends. From the right-hand rule."""


def labels_of(name):
    [labels] = [block for block in label_pages(solved(name)) if isinstance(block, Labels)]
    boards = {board["name"]: board for board in planned(name)["boards"]}
    return [(label, boards[label.title]) for label in labels.cells]


def lies_on(label):
    return next(line for line in label.lines if line.startswith("Lies on: ")).removeprefix("Lies on: ")


def way_of(label, board, boards):
    """The way that the face looks which the label names: by its own word, by "looks ...", and both where both stand."""
    called, _, looks = lies_on(label).partition(", ")
    way = LOOKS[looks] if looks else NAMED[called.removesuffix(" face")]
    normal = "xyz".index(board["axes"][2][1])
    assert way[0] == normal, label.title
    if called in ("inside face", "outside face"):
        assert looks
        mine = [box(one) for one in boards.values() if one["group"] == board["group"] and one["role"] != "front"]
        low, high = box(board)
        middle = (min(one[0][normal] for one in mine) + max(one[1][normal] for one in mine)) / 2
        outward = 1 if low[normal] + high[normal] > 2 * middle else -1
        assert (way[1] == outward) == (called == "outside face"), (label.title, lies_on(label))
    return way


def strokes(svg, width):
    found = []
    for node in ET.fromstring(svg).iter(f"{SVG}path"):
        if float(node.get("stroke-width", 0)) == width:
            numbers = [float(number) for number in re.findall(r"-?[\d.]+", node.get("d"))]
            found.append(tuple(zip(numbers[::2], numbers[1::2], strict=True)))
    return found


@pytest.mark.parametrize("name", NAMES)
def test_the_heavy_lines_are_at_the_left_the_front_or_the_bottom_of_the_face_that_it_lies_on(name):
    boards = {board["name"]: board for board in planned(name)["boards"]}
    for label, board in labels_of(name):
        way = way_of(label, board, boards)
        [rect] = ET.fromstring(label.svg).iter(f"{SVG}rect")
        a, b, w, h = (float(rect.get(key)) for key in ("x", "y", "width", "height"))
        heavy = strokes(label.svg, HEAVY)
        [upright] = [line for line in heavy if abs(line[0][0] - line[1][0]) < WITHIN]
        [level] = [line for line in heavy if abs(line[0][1] - line[1][1]) < WITHIN]
        assert level[0][1] == pytest.approx(b + h, abs=WITHIN)
        place = a if RIGHT[way][1] > 0 else a + w
        assert upright[0][0] == pytest.approx(place, abs=WITHIN), (label.title, lies_on(label))


@pytest.mark.parametrize("name", NAMES)
def test_the_arrow_of_the_grain_runs_along_the_length_of_the_board(name):
    """plan.json: a length runs along the first axis."""
    boards, seen = {board["name"]: board for board in planned(name)["boards"]}, set()
    for label, board in labels_of(name):
        way = way_of(label, board, boards)
        two_heads = [line for line in strokes(label.svg, THIN) if len(line) == 2][1:]
        if board["grain"] != "length":
            assert not two_heads and "either way" in label.alt
            continue
        [(start, end)] = two_heads
        along = "xyz".index(board["axes"][0][1])
        level = along == RIGHT[way][0]
        assert (abs(start[1] - end[1]) < WITHIN) == level, label.title
        assert (abs(start[0] - end[0]) < WITHIN) != level, label.title
        tips = {line[1] for line in strokes(label.svg, THIN) if len(line) == 3}
        assert {start, end} <= tips
        said = "across" if level else "up and down" if along == 2 else "from front to back"
        assert f"The grain runs {said}." in label.alt
        seen.add(level)
    assert seen == {True, False}


@pytest.mark.parametrize("name", NAMES)
def test_a_label_lies_on_the_face_that_the_page_of_its_board_draws_first(name):
    """Of the first board of each kind, whose faces are drawn."""
    cabinet, labels = solved(name), {label.title: label for label, _ in labels_of(name)}
    for kind in kinds(cabinet):
        drawn = next(scenes_of(kind, cabinet, ()))
        face = lies_on(labels[kind.first.name]).partition(", ")[0]
        assert drawn.called.partition(" (")[0] == face, kind.first.name
