"""The rows of the slide table in both units: numbers that a shop has, and the unit that a project is shown in.

A shop's finest marks are 1/64 in and half a millimetre; common practice, no source.
"""

from dataclasses import fields, replace

import pytest

from shoplib.documents.project_file import project_from_text
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.model.cabinet import solve
from shoplib.tables.slides import slides
from tests.model.plain_case import MM as MILLIMETRES
from tests.model.plain_case import drawer_case, refusal

MARK = {"in": INCH // 64, "mm": MM // 2}
MADE = {("side-mount ball-bearing, metric lengths", "in", "lengths"), ("side-mount ball-bearing", "mm", "lengths")}
"""A bought slide is as long as it is, in either unit; 12.7 mm is what the usual ones take at a side."""


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_every_length_of_the_table_is_a_mark_of_its_unit(unit):
    odd = set()
    for row in slides(unit).values():
        for field in fields(row):
            value = getattr(row, field.name)
            sizes = value if isinstance(value, tuple) else (value,) if isinstance(value, int) else ()
            usual = unit == "mm" and field.name == "side" and value == MM * 127 // 10
            if any(size % MARK[unit] for size in sizes) and not usual and (row.name, unit, field.name) not in MADE:
                odd.add((row.name, field.name, value))
    assert odd == set()


def test_both_units_have_the_same_rows_a_few_sizes_apart():
    inch, mm = slides("in"), slides("mm")
    assert list(inch) == list(mm) and inch != mm
    for name, row in inch.items():
        for field in fields(row):
            one, other = getattr(row, field.name), getattr(mm[name], field.name)
            if isinstance(one, int):  # a strip is sold as 3/4 in or 20 mm: no twin is farther off than these
                assert abs(one - other) <= MM * 13 // 10, (name, field.name)


FILE = """format = 1
name = "parts case"
[show]
unit = "{unit}"
step = "{step}"
[sheets.ply]
kind = "plywood"
nominal = "18 mm"
[size]
width = "600 mm"
height = "700 mm"
depth = "500 mm"
[carcass]
sheet = "ply"
"""


@pytest.mark.parametrize(("style", "step"), [(INCH_STYLE, "1/64 in"), (MM_STYLE, "0.1 mm")])
def test_a_project_takes_the_rows_of_the_unit_it_is_shown_in(style, step):
    project = project_from_text(FILE.format(unit=style.unit, step=step))
    assert project.slides == slides(style.unit)
    own = {"ours": replace(slides("in")["undermount"], name="ours")}
    assert replace(project, slides=own).slides == own


def test_the_thickest_side_of_an_undermount_slide_is_told_in_round_numbers():
    """A learner met `5/8 in (+0.0049213 in)`."""
    for style, most in ((INCH_STYLE, "5/8 in"), (MM_STYLE, "16 mm")):
        case = drawer_case(MILLIMETRES, s=["18"], rule={"slide": "undermount"})
        case = replace(case, style=style, slides=slides(style.unit))
        assert refusal(case) == "bays[1].drawers.box_sheet"
        with pytest.raises(ValueError, match=rf"takes sides up to {most};"):
            solve(case)
