"""Pictures of whole cases on page 02: the words under each are true of it, and its names can be read."""

import re

import pytest

from shoplib.draw.marks import SMALL
from shoplib.draw.scene import Region
from shoplib.draw.solid_view import END_GRAIN
from shoplib.draw.whole_view import assembled_view, exploded_view
from shoplib.lessons import page_02
from shoplib.lessons.each_size import HEADING
from shoplib.lessons.worked_case import lesson_case

PICTURES = (page_02.case_closed, page_02.case_apart, page_02.bench_apart)
ON_THE_PAGE = 450.0
"""So many pixels are left for a picture in a window 800 wide, beside the list of files. Reckoned, not measured."""
READ = 8.0
"""Letters of so many pixels can be read; from memory."""


@pytest.mark.parametrize("picture", PICTURES, ids=lambda picture: picture.__name__)
def test_names_are_read_in_a_narrow_window(picture):
    wide = float(re.search(r'viewBox="\S+ \S+ (\S+)', picture().svg)[1])
    assert SMALL * min(1.0, ON_THE_PAGE / wide) >= READ


@pytest.mark.parametrize("picture", PICTURES, ids=lambda picture: picture.__name__)
def test_dots_are_told_of_where_they_are_drawn(picture):
    svg = picture().svg
    assert (END_GRAIN[:20] in svg) == ('stroke-width="1.3"' in svg)


@pytest.mark.parametrize("view", [assembled_view, exploded_view])
def test_the_words_point_at_steps_that_are_drawn(view, unit):
    """Both front edges have a step at each end, whole in the picture: four corners of a board, and two more a step."""
    assert "At the corners, on the front edges" in page_02.case_closed().words[0]
    told = page_02.case_apart().words[0]
    assert "steps at both ends of each side" in told and "front edge of the right one" in told
    assert "too small" not in told
    regions = [item for item in view(lesson_case(unit)).items if isinstance(item, Region)]
    for side in ("left side", "right side"):
        assert [len(item.rings[0]) for item in regions if item.name == side].count(8) == 1


@pytest.mark.parametrize("picture", PICTURES, ids=lambda picture: picture.__name__)
def test_why_each_size_has_a_line_for_width_depth_and_height_and_for_the_boards_that_make_them(picture):
    """Sizes over all are chosen and end there; a board between others has a sum."""
    why = picture().why
    for called in ("width over all", "depth over all", "height over all", "side, upward"):
        [line] = [line for line in why if line.startswith(called)]
        assert " = case " in line
    for called in ("bottom, left to right", "back, left to right", "back, upward"):
        [line] = [line for line in why if line.startswith(called)]
        assert " - 2 x thickness of case sheet" in line and " + 2 x rabbet" in line
    assert any("chosen" in line and HEADING in line for line in picture().words)
