"""Heights that are given: from where shelves count, and drawers whose heights leave a rest."""

from dataclasses import replace
from pathlib import Path

from shoplib.documents.project_file import read_project
from shoplib.measure import INCH, read_length
from shoplib.model.cabinet import designed_sizes, solve
from shoplib.model.project import Base, Bay, Shelves

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
