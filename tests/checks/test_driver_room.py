"""Pocket screws must be driven: their pockets look where a bit can reach them when the board goes in."""

from dataclasses import replace

import pytest

import shoplib.model.assembly
from shoplib.building.order import build_order
from shoplib.checks import check
from shoplib.checks.driver_between import find_bays_too_narrow_for_a_driver
from shoplib.checks.driver_room import find_pockets_out_of_reach, pocket_face
from shoplib.documents.cautions import hangs
from shoplib.measure import INCH, MM
from shoplib.model.cabinet import solve
from shoplib.model.project import Back
from tests.building.cases import SHIPPED, shipped


def test_before_a_back_in_grooves_the_pockets_of_a_rail_open_to_the_front():
    """A bit does not pass a back that stands in its grooves (read off the drawing: it begins where the rail ends)."""
    cabinet = shipped("finger_jointed_drawers")
    assert pocket_face(cabinet.by_name["rail 1"]) == "front"
    assert find_pockets_out_of_reach(cabinet) == ()


def with_tongues():
    """Its top cannot go on last: its tongues go into the sides as these go on."""
    drawn = shipped("finger_jointed_drawers").project
    return replace(drawn, carcass=replace(drawn.carcass, corner=replace(drawn.carcass.corner, kind="tongue")))


def test_pockets_behind_which_the_back_stands_stop_the_plan(monkeypatch):
    """As it was drawn once: the pockets in the rear face; where top and bottom hold the back, it stands before them."""
    drill = shoplib.model.assembly.drill_pockets
    monkeypatch.setattr(shoplib.model.assembly, "drill_pockets", lambda *given: drill(*given[:5]))
    cabinet = solve(with_tongues())
    assert pocket_face(cabinet.by_name["rail 1"]) == "rear"
    told = [finding for finding in check(cabinet) if finding.check == "driver room"]
    assert [(finding.level, finding.boards) for finding in told] == [("stop", ("rail 1", "back"))]
    assert "rear face of rail 1 cannot be reached: back stands before them" in told[0].text


def test_a_back_that_is_nailed_on_last_leaves_the_rear_free():
    drawn = shipped("finger_jointed_drawers").project
    back = Back("applied", sheet="thin sheet")
    cabinet = solve(replace(drawn, carcass=replace(drawn.carcass, back=back)))
    assert pocket_face(cabinet.by_name["rail 1"]) == "rear"
    assert find_pockets_out_of_reach(cabinet) == ()


def test_a_rail_close_under_the_top_is_screwed_before_the_top_goes_on():
    """Its pockets lie 10 mm under a top that rests in rabbets: a chuck is twice as thick (from memory), so the top is
    set on last, from above."""
    entries = [entry for step in build_order(shipped("finger_jointed_drawers")) if step.go for entry in step.entries]
    assert [(entry.board, entry.way) for entry in entries[-2:]] == [("back", "-z"), ("top", "-z")]
    assert "rail 1" in entries[-1].onto


def test_a_top_that_must_stand_before_the_rail_leaves_no_room_for_a_chuck():
    """The rail lies between the sides, which close the top: no order helps."""
    told = find_pockets_out_of_reach(solve(with_tongues()))
    assert [(finding.level, finding.boards) for finding in told] == [("warn", ("rail 1", "top"))]
    assert "leave no room for a chuck" in told[0].text and "right-angle driver" in told[0].text


def test_a_rail_that_only_stiffens_does_not_hang_a_case():
    """By what the project says of it (`in_use.stands`), not by having a rail."""
    cabinet = shipped("finger_jointed_drawers")
    assert not hangs(cabinet)
    assert hangs(shipped("wheel_wall_drawers"))


@pytest.mark.parametrize(("width", "told"), [(130, True), (199, True), (201, False)])
def test_a_driver_does_not_stand_between_the_uprights_of_a_narrow_bay(width, told):
    """A drill driver with a bit is some 200 mm long (from memory); screws of slides go straight into the uprights."""
    drawn = shipped("rolling_stand").project
    narrow = replace(drawn, bays=(replace(drawn.bays[0], width=width * MM), *drawn.bays[1:]))
    found = find_bays_too_narrow_for_a_driver(solve(narrow))
    assert [(one.level, one.boards, one.amount) for one in found] == (
        [("warn", ("left side", "divider 1"), (200 - width) * MM)] if told else [])
    for one in found:
        assert one.text.startswith(f"bay 1: {width} mm lie between") and "right-angle driver" in one.text
        assert "before the case is glued" in one.text and one in check(solve(narrow))
    glued = solve(replace(narrow, cutting=replace(narrow.cutting, already_cut="case")))
    assert all("before the case is glued" not in one.text for one in find_bays_too_narrow_for_a_driver(glued))


def test_runners_of_wood_are_screwed_from_inside_the_bay_too():
    """By hand: 14 in outside less three uprights of 3/4 in (0.750) leave two bays of 5 7/8 in."""
    drawn = shipped("wheel_wall_drawers").project
    found = find_bays_too_narrow_for_a_driver(solve(replace(drawn, size=replace(drawn.size, width=14 * INCH))))
    assert [(one.boards, one.text.partition(",")[0]) for one in found] == [
        (("left side", "divider 1"), "bay 1: 5 7/8 in lie between its uprights"),
        (("divider 1", "right side"), "bay 2: 5 7/8 in lie between its uprights"),
    ]
    assert all("screws of the runners" in one.text for one in found)


@pytest.mark.parametrize("name", SHIPPED)
def test_the_bays_of_the_projects_are_wide_enough_for_a_driver(name):
    """By hand: the narrowest with slides or runners is the pull-out of 12 in; boxes on shelves have neither."""
    assert find_bays_too_narrow_for_a_driver(shipped(name)) == ()
