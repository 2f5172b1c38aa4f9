"""Each drawing of the plan sets as it is printed: no words on others or cut off, no leader through words, no size on a
line of another, no arrowhead in another, no line through a name on an edge, no word over a hole, no letters too small
to read.

Common practice of drawing, no source, but for the height of letters.
"""

import re
from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from functools import cache
from itertools import combinations
from xml.etree import ElementTree as ET

import pytest

from shoplib.documents.paper import PAPERS
from shoplib.printed.plan.plan_set import plan_set
from shoplib.printed.typeset.blocks import Picture
from tests.draw.leaders_read import heads, meets, rings, run_through, strokes
from tests.draw.test_pen import SVG, outside, overlaps, text_boxes
from tests.printed.sets import PROJECTS, solved

CAPITAL = 0.73
"""The height of a capital of DejaVu Sans by its size (the font's own table)."""
LEAST_MM = 1.8
"""ISO 3098-1 begins at 1.8 mm for the height of capitals on technical drawings (from memory)."""
NEAR = 2.0
"""A leader within half a millimetre of words touches the highest letters, in units of the page. Judged by eye."""

EACH = [
    pytest.mark.parametrize("project", PROJECTS), pytest.mark.parametrize("paper", list(PAPERS)),
]


def each(test):
    for mark in EACH:
        test = mark(test)
    return test


def found_in(block) -> Iterator[Picture]:
    """The pictures of a block, however deep they stand in it."""
    if isinstance(block, Picture):
        yield block
    elif isinstance(block, list | tuple):
        for one in block:
            yield from found_in(one)
    elif is_dataclass(block):
        for field in fields(block):
            yield from found_in(getattr(block, field.name))


@cache
def pictures(project: str, paper: str) -> tuple[Picture, ...]:
    of = solved(project)
    return tuple(found_in(plan_set(of.cabinet, of.findings, of.in_use, of.found, PAPERS[paper])))


@each
def test_no_words_lie_on_others_or_are_cut_off(project, paper):
    assert len(pictures(project, paper)) > 20
    for picture in pictures(project, paper):
        assert overlaps(picture.svg) == [] and outside(picture.svg) == [], picture.alt


@each
def test_no_leader_runs_through_words(project, paper):
    for picture in pictures(project, paper):
        assert run_through(picture.svg, NEAR) == [], picture.alt


@each
def test_no_size_stands_on_a_line_of_another(project, paper):
    for picture in pictures(project, paper):
        lines = strokes(picture.svg)
        on_lines = [text for text, box in text_boxes(picture.svg) if any(meets(stroke, box) for stroke in lines)]
        assert on_lines == [], picture.alt


@each
def test_no_arrowhead_lies_in_another_or_on_a_ring(project, paper):
    seen = 0
    for picture in pictures(project, paper):
        boxes = [*heads(picture.svg), *rings(picture.svg)]
        seen += len(boxes)
        lying = [
            (one, two) for one, two in combinations(boxes, 2)
            if min(one[2], two[2]) - max(one[0], two[0]) > 1 and min(one[3], two[3]) - max(one[1], two[1]) > 1
        ]
        assert lying == [], picture.alt
    assert seen > 100


@each
def test_no_line_runs_through_the_name_of_an_edge(project, paper):
    named = 0
    for picture in pictures(project, paper):
        for text, box in text_boxes(picture.svg):
            if re.match(r"(top|bottom|left|right|front|back) (end|edge)\b", text):
                named += 1
                assert not any(meets(stroke, box) for stroke in strokes(picture.svg)), (picture.alt, text)
    assert named > 40


@each
def test_the_grain_and_its_word_hide_no_hole_and_meet_no_leader(project, paper):
    words = 0
    for picture in pictures(project, paper):
        circles = [
            tuple(float(node.get(key)) for key in ("cx", "cy", "r")) for node in ET.fromstring(picture.svg).iter()
            if node.tag == f"{SVG}circle"
        ]
        for text, (a, b, c, d) in text_boxes(picture.svg):
            if text in ("grain", "grain either way", "any grain"):
                words += 1
                for x, y, r in circles:
                    assert not (a < x + r and x - r < c and b < y + r and y - r < d), (picture.alt, text)
    assert words > 10


@each
def test_capitals_are_high_enough_to_read(project, paper):
    for picture in pictures(project, paper):
        root = ET.fromstring(picture.svg)
        mm = picture.width / float(root.get("viewBox").split()[2])
        sizes = [float(node.get("font-size")) for node in root.iter() if node.get("font-size")]
        assert min(sizes) * CAPITAL * mm >= LEAST_MM, picture.alt
