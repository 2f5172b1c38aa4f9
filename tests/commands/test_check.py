"""`check` as it is run: exit status, what is printed, and to where."""

import csv
import io
from pathlib import Path

import pytest

from shoplib.checks.in_use import check_in_use
from shoplib.commands import check
from shoplib.documents.cut_list_file import cut_list_csv
from shoplib.documents.project_file import read_project
from shoplib.model.cabinet import solve

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


@pytest.fixture
def list_of(tmp_path):
    def write(project: Path, edit=lambda text: text) -> str:
        path = tmp_path / "list.csv"
        path.write_bytes(edit(cut_list_csv(solve(read_project(project)))).encode())
        return str(path)

    return write


@pytest.mark.parametrize("project", PROJECTS, ids=lambda path: path.stem)
def test_the_plans_own_list_agrees(project, list_of, capsys):
    assert check.run(str(project), list_of(project)) == 0
    assert capsys.readouterr().out.startswith("The list agrees with the plan: ")


@pytest.mark.parametrize("project", PROJECTS, ids=lambda path: path.stem)
def test_the_case_in_use_is_told_below_and_stops_nothing(project, list_of, capsys):
    """Whatever `plan` warns of in use, and whether it tips, stands below the list too; the list still agrees."""
    assert check.run(str(project), list_of(project)) == 0
    told, _, below = capsys.readouterr().out.partition("\nIn use: will it hold, will it move (")
    assert told.startswith("The list agrees with the plan: ")
    below, found = " ".join(below.split()), check_in_use(solve(read_project(project)))
    assert {finding.level for finding in found} == {"warn", "note"} or "wall" in project.stem
    for finding in found:
        if finding.level == "warn" or finding.check == "tipping":
            assert f"- {'Look: ' if finding.level == 'warn' else ''}{finding.text}" in below
    assert "notes in cut_list.txt, which plan writes" in below


def test_a_changed_line_is_printed_with_what_it_would_do(list_of, capsys):
    project = next(path for path in PROJECTS if "under_bench" in path.stem)
    changed = list_of(project, lambda text: text.replace("side,case sheet,33 1/2 in,", "side,case sheet,31 1/2 in,"))
    assert check.run(str(project), changed) == 1
    out = " ".join(capsys.readouterr().out.split())
    assert "Line 2: " in out
    assert "Line 3: " in out
    assert "both sides 2 in short" in out.lower()


@pytest.mark.parametrize("broken", ["names,length\n", "names,length,width\n", ""])
def test_a_list_that_cannot_be_read(broken, list_of, capsys):
    assert check.run(str(PROJECTS[0]), list_of(PROJECTS[0], lambda _: broken)) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert len(err.splitlines()) == 1
    assert "line" in err


def test_every_unreadable_cell_is_told_with_what_differs_in_the_rest(list_of, capsys):
    project = next(path for path in PROJECTS if "under_bench" in path.stem)

    def edit(text: str) -> str:
        text = text.replace("left side,case sheet,33 1/2 in,", "left side,case sheet,33 1/2 im,", 1)
        text = text.replace("toe board,case sheet,58 19/32 in (+0.00025 in),4 in,", "toe board,case sheet,58 in,4,", 1)
        return text

    assert check.run(str(project), list_of(project, edit)) == 2
    out, err = capsys.readouterr()
    assert [line.partition(":")[0] for line in err.splitlines()] == ["line 2, length", "line 6, width"]
    assert "toe board: length 58 in, planned 58 19/32 in" in " ".join(out.split())
    assert "left side" not in out


def test_what_was_compared_is_told(list_of, capsys):
    def bare(text: str) -> str:
        rows = list(csv.DictReader(io.StringIO(text)))
        cuts = {"top": "as usual"}
        lines = (f"{row['names']},{row['length']},{row['width']},{cuts.get(row['names'], '')}\n" for row in rows)
        return "names,length,width,cuts\n" + "".join(lines)

    project = next(path for path in PROJECTS if "rolling_stand" in path.stem)
    assert check.run(str(project), list_of(project, bare)) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert out.startswith("The list agrees with the plan in what could be compared: ")
    assert "Compared: names, lengths and widths. " in out
    line = 2 + next(n for n, row in enumerate(bare_rows(project)) if row["names"] == "top")
    assert (
        "Not compared: thickness, sheet, edging and grain, which the list does not say; "
        f"cuts in line {line} (`as usual` is not read)."
    ) in out


def bare_rows(project: Path) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(cut_list_csv(solve(read_project(project))))))


def test_files_that_are_not_there(list_of, capsys):
    assert check.run("none.toml", list_of(PROJECTS[0])) == 2
    assert check.run(str(PROJECTS[0]), "none.csv") == 2
    assert len(capsys.readouterr().err.splitlines()) == 2
