"""Heights that are given: from where shelves count, and drawers whose heights leave a rest."""

from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest

from shoplib.documents.project_file import read_project
from shoplib.measure import INCH, MM, read_length
from shoplib.model.cabinet import designed_sizes, solve
from shoplib.model.heights import heights
from shoplib.model.project import Base, Bay, Drawers, ImpossibleProject, Shelves

UNDER_BENCH = Path(__file__).parents[2] / "data" / "projects" / "under_bench_case.toml"


def test_a_shelf_stands_above_the_underside_of_the_sides_over_a_plinth_too():
    plan = read_project(UNDER_BENCH)
    shelf = (Bay("shelves", shelves=Shelves(at=(15 * INCH,))),)
    case = solve(replace(plan, base=Base("plinth", 4 * INCH), bays=shelf))
    assert case.by_name["bay 1 shelf 1"].box.low[2] - case.by_name["left side"].box.low[2] == 15 * INCH


def test_given_heights_that_fall_short_by_less_than_a_step_each_have_a_designed_size_too():
    plan = read_project(UNDER_BENCH)
    given = tuple(map(read_length, ("8 13/32 in", "7 11/32 in", "6 11/32 in", "5 11/32 in")))
    rule = replace(plan.bays[0].drawers, heights="given", given=given, difference=0)
    plan = replace(plan, bays=(replace(plan.bays[0], drawers=rule), *plan.bays[1:]))
    assert set(designed_sizes(plan)) == {board.name for board in solve(plan).boards}


@pytest.mark.parametrize(
    ("rule", "key"),
    [
        (Drawers(4, "stepped", difference=200 * MM), "difference"),
        (Drawers(3, "ratio", ratio=(10_000, 1, 10_000)), "ratio[2]"),
        (Drawers(3, "given", given=(350 * MM, "rest", 350 * MM)), "given[2]"),
        (Drawers(800, "equal"), "count"),
        (Drawers(800, "stepped", difference=MM), "count"),
    ],
)
def test_the_rule_that_leaves_a_drawer_no_height_is_the_one_that_is_blamed(rule, key):
    """700 mm in whole mm: 800 drawers have no room at all, 3 or 4 of one height have plenty."""
    with pytest.raises(ImpossibleProject) as refused:
        heights(rule, 700 * MM, MM, "drawers")
    assert refused.value.key == f"drawers.{key}"


def test_stepped_fronts_above_the_bottom_one_are_whole_steps_whatever_the_difference():
    found = heights(Drawers(4, "stepped", difference=read_length("0.3 in")), 30 * INCH + 7, INCH // 32, "drawers")
    assert sum(found) == 30 * INCH + 7
    assert [height % (INCH // 32) for height in found[1:]] == [0, 0, 0]
    # 0.3 in is 9.6 of 1/32 in: ten steps. The bottom one has what will not divide beside, less than a step a drawer.
    assert [below - above for below, above in pairwise(found[1:])] == [10 * INCH // 32] * 2
    assert 0 <= found[0] - found[1] - 10 * INCH // 32 < 4 * INCH // 32
