"""The papers keep true: links lead somewhere, the picture is the example's, every dependency has its reason."""

import re
from pathlib import Path

import pytest

from shoplib.documents.drawings import drawing_files
from shoplib.documents.project_file import read_project
from shoplib.model.cabinet import solve

ROOT = Path(__file__).parents[1]


@pytest.mark.parametrize("paper", ["README.md", "DEVELOPERS.md"])
def test_files_that_a_paper_links_to_are_there(paper: str) -> None:
    links = re.findall(r"\]\(([^)#]+)\)", (ROOT / paper).read_text(encoding="utf-8"))
    gone = [link for link in links if not link.startswith("https://") and not (ROOT / link).exists()]
    assert not gone


def test_the_picture_of_the_readme_is_what_the_example_gives() -> None:
    case = solve(read_project(ROOT / "data" / "projects" / "under_bench_case.toml"))
    drawn = drawing_files(case)["front-elevation.svg"]
    shown = (ROOT / "data" / "pictures" / "under_bench_case.svg").read_bytes()
    assert drawn == shown.replace(b"\r\n", b"\n"), "draw it anew: plan the case, copy front-elevation.svg there"


def test_every_dependency_has_its_reason() -> None:
    pins = re.findall(r"^([\w-]+)==", (ROOT / "requirements.txt").read_text(encoding="utf-8"), re.MULTILINE)
    reasons = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert len(pins) > 10
    assert [name for name in pins if f"`{name}`" not in reasons] == []


def test_every_room_is_described() -> None:
    rooms = [path.parent.name for path in (ROOT / "shoplib").glob("*/__init__.py")]
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert [room for room in rooms if f"`shoplib/{room}/`" not in text] == []
