"""Drawings of tape, saw and calipers: every size told in words, marks where they belong, nothing outside."""

import re
from fractions import Fraction
from itertools import pairwise
from xml.etree import ElementTree

import pytest

from shoplib.draw.caliper import reading_places, thickness_line
from shoplib.draw.pen import draw
from shoplib.draw.saw_line import saw_line, sawn_strip
from shoplib.draw.scene import Chain, Line, Shape
from shoplib.draw.tape import tape
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, Style, read_length
from shoplib.model.strip import cut_at, marked_without_kerf

STYLES = [Style("in", INCH // below) for below in (8, 16, 32, 64)] + [Style("mm", MM), Style("mm", MM // 2)]


def whole(scene):
    """The scene drawn: well-formed, with title and description."""
    svg = draw(scene, (420.0, 280.0))
    root = ElementTree.fromstring(svg)
    assert root.find("{*}title").text == scene.title and root.find("{*}desc").text == scene.alt
    return svg


@pytest.mark.parametrize("style", STYLES, ids=str)
@pytest.mark.parametrize("far", [0, 1, 7, 100, 1234])
def test_a_tape_has_every_mark_once_and_its_pointer_in_sight(style, far):
    ticks = far * style.step
    scene = tape(ticks, style, "pointer")
    left, _, right, _ = scene.bounds
    lines = [item for item in scene.items if isinstance(item, Line) and item.kind in ("edge", "thin")]
    marks = [item.start[0] for item in lines]
    assert len(set(marks)) == len(marks) and all(b - a == style.step for a, b in pairwise(marks))
    assert left <= ticks <= right and ticks in marks
    chains = [item for item in scene.items if isinstance(item, Chain)]
    assert all(chain.at[-1] == ticks for chain in chains)
    reach = {item.start[0]: item.start[1] - item.end[1] for item in lines}
    figure = INCH if style.unit == "in" else 10 * MM
    longest = {at for at in marks if at % figure == 0}
    assert longest and min(reach[at] for at in longest) > max(reach[at] for at in set(marks) - longest)
    whole(scene)


@pytest.mark.parametrize("style", STYLES, ids=str)
def test_a_tape_to_be_read_does_not_tell_its_reading(style):
    ticks = 7 * (INCH if style.unit == "in" else 10 * MM) + 3 * style.step
    scene = tape(ticks, style, told=False)
    svg = whole(scene)
    said = re.sub(r"<[^>]+>", " ", svg)
    reading = tape(ticks, style, "pointer").title.removeprefix("The pointer: ")
    assert reading not in said and reading not in scene.alt and "past the figure 7" in scene.alt


@pytest.mark.parametrize("side", ["waste side", "on the line", "keep side"])
@pytest.mark.parametrize("unit", ["in", "mm"])
def test_the_kerf_lies_where_the_blade_ran(side, unit):
    line, board, kerf, style = (
        (12 * INCH, 48 * INCH, INCH // 8, INCH_STYLE) if unit == "in" else (300 * MM, 1200 * MM, 3 * MM, MM_STYLE)
    )
    pieces = cut_at(board, line, kerf, side)
    scene = saw_line(line, pieces, side, style)
    ((left, _, right, _),) = [item.rects[0] for item in scene.items if isinstance(item, Shape) and item.name == "kerf"]
    assert right - left == kerf
    assert {"waste side": left == line, "on the line": left < line < right, "keep side": right == line}[side]
    assert "drawn larger than it is" in scene.note
    whole(scene)


def test_a_strip_tells_what_its_last_piece_lacks():
    pieces = marked_without_kerf(36 * INCH, 3, INCH // 8)
    scene = sawn_strip(36 * INCH, pieces, INCH // 8, INCH_STYLE, 12 * INCH)
    assert "12 in, 12 in, 11 3/4 in" in scene.alt and "lacks 1/4 in" in scene.alt
    assert "drawn larger than it is" in scene.note
    assert "missing 1/4" in whole(scene)


@pytest.mark.parametrize("count", [1, 2, 4])
def test_readings_lie_on_the_line_of_thicknesses(count):
    readings = [(f"place {k}", read_length(text)) for k, text in
                enumerate(("0.722 in", "0.727 in", "0.72 in", "0.731 in"))][:count]
    limits = read_length("0.719 in"), read_length("0.781 in")
    scene = thickness_line(read_length("3/4 in"), readings, INCH_STYLE, limits)
    left, _, right, _ = scene.bounds
    assert left < limits[0] and limits[1] < right
    mean = sum(Fraction(ticks) for _, ticks in readings) / count
    lines = [item.start[0] for item in scene.items if isinstance(item, Line)]
    assert any(abs(at - mean) <= Fraction(1, 2) for at in lines)
    for text in ("sold as 3/4 in", "least 0.719", "greatest 0.781", "thickest"):
        assert text in whole(scene)
    assert "0.722" in whole(reading_places(readings, INCH_STYLE))
