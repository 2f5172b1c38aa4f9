"""Slides that stand in wood are told; those of the shipped projects do not."""

from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks.fittings import find_slides_in_wood
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH
from shoplib.model.cabinet import solve

PROJECTS = Path(__file__).parents[2] / "data" / "projects"


@pytest.mark.parametrize("path", sorted(PROJECTS.glob("*.toml")), ids=lambda path: path.stem)
def test_the_slides_of_the_shipped_projects_have_their_place(path):
    assert find_slides_in_wood(solve(read_project(path))) == ()


def test_slides_higher_than_their_openings_stand_in_the_shelves_between():
    plan = read_project(PROJECTS / "under_bench_case.toml")
    low = replace(plan.bays[0].drawers, count=12, heights="equal", difference=0, room_above=INCH // 8)
    low = replace(low, between="shelf")
    crowded = solve(replace(plan, bays=(replace(plan.bays[0], drawers=low), *plan.bays[1:2])))
    found = find_slides_in_wood(crowded)
    assert found and {finding.level for finding in found} == {"stop"}
    assert any("bay 1 shelf" in name for finding in found for name in finding.boards)
