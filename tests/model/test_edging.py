"""Edging: which edges get it, what the saw cuts, and what is refused."""

from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.documents.project_file import read_project
from shoplib.measure import MM, read_length
from shoplib.model.cabinet import solve
from shoplib.model.project import Edging, ImpossibleProject, Project

PROJECTS = Path(__file__).parents[2] / "data" / "projects"


@pytest.fixture(scope="module")
def case() -> Project:
    return read_project(PROJECTS / "under_bench_case.toml")


def test_the_saw_cuts_the_finished_size_less_the_edging(case: Project) -> None:
    strip = Edging("fronts", "strip", read_length("1/4 in"), ("top", "left", "right"))
    front = solve(replace(case, edging=(strip,))).by_name["bay 1 drawer 1 front"]
    length, width, _ = front.size
    assert front.cut_size[:2] == (length - 2 * strip.thickness, width - strip.thickness)


def test_edging_changes_no_finished_size_and_no_joint(case: Project) -> None:
    plain, edged = solve(replace(case, edging=())), solve(case)
    assert [board.size for board in plain.boards] == [board.size for board in edged.boards]
    assert plain.joints == edged.joints


@pytest.mark.parametrize(
    ("edging", "word"),
    [
        ((Edging("case", "band", MM, ("top",)),), "front, back"),
        ((Edging("fronts", "band", MM), Edging("fronts", "strip", MM, ("top",))), "already"),
    ],
)
def test_an_edge_that_is_not_there_or_edged_twice_is_refused(case: Project, edging: tuple, word: str) -> None:
    with pytest.raises(ImpossibleProject, match=word) as refused:
        solve(replace(case, edging=edging))
    assert refused.value.key.startswith("edging[")
