"""Runners on both faces of a divider: their screws must not meet in it. Sums by hand; lengths of data/screws.toml."""

from dataclasses import replace

from shoplib.checks import check
from shoplib.checks.runner_points import driven_at_each_other, find_meeting_runner_screws
from shoplib.measure import INCH
from shoplib.model.cabinet import solve
from tests.building.cases import shipped


def made_of(*readings):
    """The wheel drawers of ash that reads so."""
    drawn = shipped("wheel_wall_drawers").project
    ash = replace(drawn.sheets["ash"], readings=readings)
    return solve(replace(drawn, sheets=drawn.sheets | {"ash": ash}))


def test_points_that_pass_one_another_are_told_by_how_much():
    """Through runners of 3/8 in: 3/4 in long is what 3/8 + 0.748 - 1/8 allows, so 3/8 in stands in from each face."""
    cabinet = shipped("wheel_wall_drawers")
    [found] = find_meeting_runner_screws(cabinet)
    assert found in check(cabinet) and found.level == "warn"
    assert found.boards == ("divider 1", "bay 1 drawer 1 right runner", "bay 2 drawer 1 left runner")
    assert found.amount == 2 * (3 * INCH // 4 - 3 * INCH // 8) - 748 * INCH // 1000
    assert "0.002 in longer than it is thick" in found.text
    # 0.700 in still takes 3/4 in (3/8 + 0.700 - 1/8 = 0.95): 0.050 in too much.
    [thinner] = find_meeting_runner_screws(made_of(700 * INCH // 1000))
    assert thinner.amount == 50 * INCH // 1000


def test_a_longer_screw_that_fits_reaches_deeper():
    """0.750 in takes 1 in (3/8 + 3/4 - 1/8), 5/8 in from each face: 1/2 in too much.

    A divider of 2 1/2 in is out of reach.
    """
    [found] = find_meeting_runner_screws(made_of(3 * INCH // 4))
    assert found.amount == INCH // 2
    thick = shipped("wheel_wall_drawers")
    divider = thick.by_name["divider 1"]
    deep = replace(divider, thickness=5 * INCH // 2)
    boards = tuple(deep if board is divider else board for board in thick.boards)
    assert driven_at_each_other(replace(thick, boards=boards)) == ()


def test_where_slides_are_bought_no_runner_is_screwed():
    assert find_meeting_runner_screws(shipped("under_bench_case")) == ()
