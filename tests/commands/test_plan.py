"""`plan` as it is run: exit status, what is printed, what is written."""

import json
from pathlib import Path

import pytest

from shoplib.commands import check, plan

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
UNDER_BENCH = next(path for path in PROJECTS if "under_bench" in path.stem)


def edited(tmp_path: Path, old: str, new: str) -> str:
    """The under-bench case with one text replaced."""
    text = UNDER_BENCH.read_text(encoding="utf-8")
    assert old in text
    path = tmp_path / "project.toml"
    path.write_text(text.replace(old, new), encoding="utf-8")
    return str(path)


@pytest.mark.parametrize("project", PROJECTS, ids=lambda path: path.stem)
def test_a_shipped_project_is_planned_and_its_list_agrees(project, tmp_path, capsys):
    assert plan.run(str(project), str(tmp_path / "out")) == 0
    out = capsys.readouterr().out
    written = {path.name for path in (tmp_path / "out").iterdir()}
    assert {"plan.json", "cut_list.csv", "drawings.pdf"} < written
    assert not any(
        finding["level"] == "stop" for finding in json.loads((tmp_path / "out/plan.json").read_bytes())["findings"]
    )
    order = [out.index(text) for text in ("Stage 1", "Stage 2", "Stage 3", "Closing sums", "Dry-fit", "Written into")]
    assert order == sorted(order)
    assert "Both diagonals" in " ".join(out.split())
    assert check.run(str(project), str(tmp_path / "out/cut_list.csv")) == 0


def test_the_same_project_gives_the_same_files(tmp_path):
    for folder in ("one", "two"):
        plan.run(str(UNDER_BENCH), str(tmp_path / folder))
    for path in (tmp_path / "one").iterdir():
        assert path.read_bytes() == (tmp_path / "two" / path.name).read_bytes(), path.name


def test_a_stop_is_written_and_said(tmp_path, capsys):
    project = edited(tmp_path, 'length = "96 in"', 'length = "30 in"')
    assert plan.run(project, str(tmp_path / "out")) == 1
    out = capsys.readouterr().out
    assert "Stop: " in out
    assert "cut nothing before" in out
    levels = [finding["level"] for finding in json.loads((tmp_path / "out/plan.json").read_bytes())["findings"]]
    assert "stop" in levels


def test_what_cannot_be_planned_writes_nothing(tmp_path, capsys):
    for number, (old, new) in enumerate(
        [("format = 1", "format = 9"), ("[carcass]", "[carcase]"), ("[carcass]", "[carcass")]
    ):
        assert plan.run(edited(tmp_path, old, new), str(tmp_path / f"out{number}")) == 2
        out, err = capsys.readouterr()
        assert out == ""
        assert len(err.splitlines()) == 1
        assert not (tmp_path / f"out{number}").exists()


def test_a_folder_that_is_a_file(tmp_path, capsys):
    place = tmp_path / "out"
    place.write_text("mine")
    assert plan.run(str(UNDER_BENCH), str(place)) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert "nothing was written" in err
    assert place.read_text() == "mine"


def test_drawings_left_from_an_earlier_plan_are_named(tmp_path, capsys):
    (tmp_path / "board-old-shelf.svg").write_text("<svg/>")
    assert plan.run(str(UNDER_BENCH), str(tmp_path)) == 0
    assert "Not of this plan, and best taken out of the folder: board-old-shelf.svg." in capsys.readouterr().out
