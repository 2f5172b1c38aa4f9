"""The box over all boards against the stated outside."""

from dataclasses import replace

import pytest

from shoplib.checks.outside import find_outside_difference, tell_height_on_casters
from shoplib.model.project import Size
from shoplib.model.solved import Hardware
from tests.checks.cabinets import box, cabinet, case_boards, ticks, tool_case


def stated(low, high):
    return find_outside_difference(cabinet(case_boards(), outside=box(low, high)))


def test_the_boards_come_to_the_outside():
    assert find_outside_difference(tool_case()) == ()
    assert stated((0, 0, 0), (500, 300, 400)) == ()


def test_a_case_wider_than_stated():
    (found,) = stated((0, 0, 0), (498, 300, 400))
    assert (found.level, found.amount, found.boards) == ("stop", ticks(2), ("right side",))
    assert found.text == (
        "The boards together come to a width of 500 mm, 2 mm more than the outside width of 498 mm. "
        "Look at right side first: it reaches the end that is off."
    )


def test_a_case_lower_and_shallower_than_stated():
    depth, height = stated((0, -5, 0), (500, 300, 401.5))
    assert (depth.amount, height.amount) == (ticks(-5), ticks(-1.5))
    assert "1.5 mm less than the outside height of 401.5 mm" in height.text


def test_a_case_of_the_right_size_in_the_wrong_place():
    (found,) = stated((3, 0, 0), (503, 300, 400))
    assert found.amount == ticks(3)
    assert found.text == (
        "The boards come to the stated width but stand 3 mm too far to the left. "
        "Move left side and what is joined to it back by as much."
    )


def test_a_cabinet_without_boards():
    assert find_outside_difference(cabinet([])) == ()


@pytest.mark.parametrize(
    ("what", "by", "words"),
    [("caster", "outside", "size.height is that of the boards alone"),
     ("foot", "space", "the height of the space counts the feet in")],
)  # fmt: skip
def test_the_height_on_casters_or_feet_is_told_apart_from_that_of_the_boards(what, by, words):
    whole = box((0, 0, -60), (500, 300, 400))
    plain = tool_case()
    project = replace(plain.project, size=Size(by))
    on = replace(plain, project=project, envelope=whole, hardware=(Hardware(what, "bottom", "case", whole),))
    (found,) = tell_height_on_casters(on)
    assert (found.level, found.amount) == ("note", ticks(460))
    assert "460 mm high: 400 mm of boards and 60 mm below them" in found.text and words in found.text
    assert tell_height_on_casters(plain) == ()
