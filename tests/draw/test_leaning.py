"""An opening out of square: each diagonal carries its own length."""

import pytest

from shoplib.draw.leaning import leaning_opening
from shoplib.draw.scene import Label, Line
from shoplib.measure import INCH, INCH_STYLE


@pytest.mark.parametrize(("kind", "text"), [("hidden", "26"), ("centre", "25 1/2")])
def test_each_diagonal_is_named_by_its_own_length(kind, text):
    """The sides lean to the right, so the diagonal that rises to the right is the longer one."""
    scene = leaning_opening(16 * INCH, 20 * INCH, 26 * INCH, 25 * INCH + INCH // 2, INCH_STYLE)
    (line,) = [item for item in scene.items if isinstance(item, Line) and item.kind == kind]
    (label,) = [item for item in scene.items if isinstance(item, Label) and item.texts == (text,)]
    left, low, right, high = label.room
    rise = (line.end[1] - line.start[1]) / (line.end[0] - line.start[0])
    on_line = line.start[1] + ((left + right) / 2 - line.start[0]) * rise
    assert abs(on_line - (low + high) / 2) < INCH // 8
    assert (rise > 0) == (text == "26")
    assert "the diagonals 26 in and 25 1/2 in" in scene.alt
