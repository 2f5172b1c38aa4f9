"""Plans to judge: one made by hand, and those of the projects that ship, as their plan.json says."""

import json
from pathlib import Path

import pytest

from shoplib.documents.plan_file import plan_text
from shoplib.documents.project_file import read_project
from shoplib.model.cabinet import solve
from tests.judge.hand_made import tool_box

SHIPPED = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


@pytest.fixture
def plan():
    """A sound plan that a test may spoil."""
    return tool_box()


@pytest.fixture(scope="session", params=SHIPPED, ids=lambda path: path.stem)
def shipped(request):
    """The plan of one shipped project. Not to be spoiled: take a deep copy."""
    return json.loads(plan_text(solve(read_project(request.param)), ()))
