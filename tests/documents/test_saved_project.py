"""A saved project read again gives the same plan, byte for byte."""

from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.plan_file import plan_text
from shoplib.documents.project_file import project_from_text, read_project
from shoplib.documents.project_text import project_text
from shoplib.model.cabinet import solve
from shoplib.model.project import Project
from tests.random_projects import project

SHIPPED = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


def plan_of(plan: Project) -> str:
    cabinet = solve(plan)
    return plan_text(cabinet, check(cabinet))


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)
def test_a_shipped_project_survives_saving(path: Path) -> None:
    before = read_project(path)
    after = project_from_text(project_text(before))
    assert after == before
    assert plan_of(after) == plan_of(before)
    assert project_text(after) == project_text(before)


@pytest.mark.parametrize("seed", range(50))
def test_a_random_project_survives_saving(seed: int) -> None:
    before = project(seed)
    after = project_from_text(project_text(before))
    assert after == before
    assert plan_of(after) == plan_of(before)
