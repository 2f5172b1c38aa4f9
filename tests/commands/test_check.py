"""`check` as it is run: exit status, what is printed, and to where."""

from pathlib import Path

import pytest

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


def test_a_changed_line_is_printed_with_what_it_would_do(list_of, capsys):
    project = next(path for path in PROJECTS if "under_bench" in path.stem)
    changed = list_of(project, lambda text: text.replace("side,case sheet,33 1/2 in,", "side,case sheet,31 1/2 in,"))
    assert check.run(str(project), changed) == 1
    out = " ".join(capsys.readouterr().out.split())
    assert "Line 2: " in out
    assert "Line 3: " in out
    assert "both sides 2 in short" in out.lower()


@pytest.mark.parametrize("broken", ["names,length\n", "names,length,width\na,1,1 mm\n", ""])
def test_a_list_that_cannot_be_read(broken, list_of, capsys):
    assert check.run(str(PROJECTS[0]), list_of(PROJECTS[0], lambda _: broken)) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert len(err.splitlines()) == 1
    assert "line" in err


def test_files_that_are_not_there(list_of, capsys):
    assert check.run("none.toml", list_of(PROJECTS[0])) == 2
    assert check.run(str(PROJECTS[0]), "none.csv") == 2
    assert len(capsys.readouterr().err.splitlines()) == 2
