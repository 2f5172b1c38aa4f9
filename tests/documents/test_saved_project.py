"""A saved project read again gives the same plan, byte for byte."""

import random
from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.plan_file import plan_text
from shoplib.documents.project_file import project_from_text, read_project
from shoplib.documents.project_text import project_text
from shoplib.live.joint_project import JointChoices, joint_project
from shoplib.measure import INCH, INCH_STYLE, MM, Style, read_length
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


@pytest.mark.parametrize(
    "show", [Style("in", INCH // 64), Style("in", INCH // 16), Style("mm", MM), Style("mm", MM // 10)]
)
def test_what_was_read_off_calipers_is_saved_as_it_was_typed(show: Style) -> None:
    """A beginner edits such a file by hand: "0.703 in", and never "45/64 in (-0.000125 in)" (a cabinetmaker's find)."""
    per, last = ("in", 3) if show.unit == "in" else ("mm", 2)
    stream, before = random.Random(5), project(3)
    for _ in range(60):
        typed = [f"{stream.uniform(0.4, 0.9) if per == 'in' else stream.uniform(10, 20):.{last}f}" for _ in range(3)]
        readings = tuple(read_length(f"{number} {per}") for number in typed)
        sheets = {name: replace(sheet, readings=readings) for name, sheet in before.sheets.items()}
        text = project_text(replace(before, style=show, sheets=sheets))
        assert project_from_text(text).sheets == sheets
        assert "(" not in text
        for number, reading in zip(typed, readings, strict=True):
            assert reading % show.step == 0 or f'"{number.rstrip("0").rstrip(".")} {per}"' in text


def test_a_joint_kept_has_no_made_up_name() -> None:
    """Its sheet goes by the mean of its readings, so no plan finds it other than "its name says"."""
    readings = tuple(read_length(text) for text in ("0.703 in", "0.699 in", "0.71 in"))
    kept = joint_project(JointChoices("dado", readings, INCH // 4, fit=read_length("0.004 in")), INCH_STYLE)
    text = project_text(kept)
    assert all(f'"{number} in"' in text for number in ("0.703", "0.699", "0.71", "0.004"))
    again = project_from_text(text)
    assert again == kept
    assert not [finding.text for finding in check(solve(again)) if "name says" in finding.text]
