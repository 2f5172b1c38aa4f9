"""Measured in the drawings in true scale: the middle line of a slide, and the ticks that the tape is held to.

A middle is that of the slide's own box in the solved cabinet; ticks every 5 in or 100 mm are common practice, no
source.
"""

import pytest

from shoplib.building.riding import riding
from shoplib.draw.true_scale import Area, Stroke, TextLine
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, read_length
from shoplib.printed.true_scale.slide_templates import slide_templates
from shoplib.printed.true_scale.stick_drawn import sheet_drawn, sheets_of
from shoplib.printed.true_scale.sticks import across_stick, bay_sticks
from tests.building.cases import SHIPPED, shipped

ROOM = 180 * MM
"""As much as a page of either paper holds beside its edges."""


@pytest.mark.parametrize("name", [name for name in SHIPPED if name != "small_parts_wall_case"])
def test_the_middle_line_lies_where_the_middle_of_the_slide_lies(name):
    """Half as high as the slide over the lower heavy line, over all of it that is drawn, from its front end on."""
    cabinet = shipped(name)
    [high] = {item.box.high[2] - item.box.low[2] for item in riding(cabinet)}
    [back] = {item.box.low[1] - cabinet.by_name[item.on].box.low[1] for item in riding(cabinet)}
    for template in slide_templates(cabinet):
        strokes = [item for item in template.drawing.items if isinstance(item, Stroke)]
        [middle] = [stroke.points for stroke in strokes if stroke.kind == "centre"]
        [slide] = [item.around for item in template.drawing.items if isinstance(item, Area)]
        level = [stroke.points for stroke in strokes if stroke.kind == "edge" and
                 stroke.points[0][1] == stroke.points[1][1]]
        [lower] = {y for points in level for _, y in points}
        assert {y - lower for _, y in middle} == {high // 2}
        assert (slide[1] - lower, slide[3] - lower) == (0, high)
        assert sorted(x for x, _ in middle) == [slide[0], slide[2]]
        assert min(abs(x) for x, _ in middle) == back


@pytest.mark.parametrize("name", SHIPPED)
def test_each_tick_for_the_tape_is_as_far_from_line_0_as_it_says(name):
    """Every 5 inches or 100 mm, at the right edge of the stick: the tape then tells how the pages were glued."""
    cabinet = shipped(name)
    page, step = Writing(cabinet.style), 5 * INCH if cabinet.style.unit == "in" else 100 * MM
    ticks = 0
    for stick in (*bay_sticks(cabinet), across_stick(cabinet)):
        [sheet] = sheets_of([stick], page, ROOM)
        items = sheet_drawn(sheet, page, "").items
        strokes = [item for item in items if isinstance(item, Stroke)]
        [zero] = [item.points[0][1] for item in strokes if item.kind == "zero"]
        right = max(x for item in strokes for x, _ in item.points)
        at_edge = {item.points[1][1] - zero for item in strokes if item.kind == "thin" and len(item.points) == 2
                   and item.points[1][0] == right and item.points[0][1] == item.points[1][1]}
        told = {item.at[1] - zero: read_length(item.text.removeprefix("tape: ")) for item in items
                if isinstance(item, TextLine) and item.text.startswith("tape: ")}
        assert {*told} == at_edge
        assert all(at == says and at % step == 0 for at, says in told.items())
        assert all(0 < at < stick.marks[-1].at for at in told)
        ticks += len(told)
    assert ticks > 2
