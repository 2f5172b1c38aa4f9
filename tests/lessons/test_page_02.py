"""Pictures of whole cases on page 02: the words under each are true of it, and its names can be read."""

import re

import pytest

from shoplib.draw.marks import SMALL
from shoplib.draw.solid_view import END_GRAIN
from shoplib.lessons import page_02

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


def test_no_words_point_at_a_step_of_a_few_pixels_half_behind_the_top():
    words = " ".join(page_02.case_apart().words)
    assert "step along" not in words
    assert "too small to be seen" in words
