"""Places of slides, pulls and tools, read off solved cases, against sums by hand (common practice, no source)."""

import pytest

from shoplib.documents.examples import cabinet_from
from shoplib.measure import INCH, MM
from shoplib.model.hardware_places import front_screw, pull_places, slides_on
from shoplib.model.project import ImpossibleProject
from shoplib.model.screw_room import room_for_screw
from shoplib.model.tool_row import tool_row


@pytest.mark.parametrize("name", ["under_bench_case", "rolling_stand"])
def test_spacers_are_those_that_the_plan_prints(name):
    case = cabinet_from(name)
    printed = {one.group: one.height for one in case.spacers if "drawer" in one.group}
    for upright in (board.name for board in case.boards if board.role in ("side", "divider")):
        for face in (1, -1):
            for place in slides_on(case, upright, face):
                if place.fitting.group in printed:
                    assert place.spacer == printed[place.fitting.group]


def test_left_and_right_side_have_the_same_spacers():
    case = cabinet_from("under_bench_case")
    left = slides_on(case, "left side")
    right = slides_on(case, "divider 1", -1)
    assert [(one.spacer, one.setback) for one in left] == [(one.spacer, one.setback) for one in right] != []


def test_pulls_and_screws_of_a_case():
    case = cabinet_from("under_bench_case")
    front = case.by_name["bay 1 drawer 1 front"]
    one, two = pull_places(case, front.name)
    assert one.left + two.left == front.box.size[0] and one.up == two.up
    fixed = front_screw(case, "bay 1 drawer 1")
    assert fixed.left >= INCH // 8 and fixed.screw.into == front.name
    with pytest.raises(LookupError):
        front_screw(case, "case")
    with pytest.raises(KeyError):
        slides_on(case, "no such board")


def test_room_for_a_screw():
    assert room_for_screw(472, 703, 125) == 1050


def test_tools_fill_the_panel():
    row = tool_row(500 * MM, [28 * MM, 76 * MM, 56 * MM, 39 * MM], MM)
    # (500 - 199) / 5 = 60.2
    assert (row.space, row.rest) == (60 * MM, MM)
    assert [place // MM for place in row.lefts] == [60, 148, 284, 400]
    assert [place // MM for place in row.middles] == [74, 186, 312, 419]
    assert row.lefts[-1] + row.tools[-1] + row.space + row.rest == row.width


@pytest.mark.parametrize(("width", "tools"), [(100, []), (100, [60, 40]), (100, [99]), (10, [20])])
def test_tools_without_room_are_refused(width, tools):
    with pytest.raises(ImpossibleProject) as told:
        tool_row(width * MM, [tool * MM for tool in tools], MM)
    assert told.value.key == "tools"
