"""No command writes among the workbook's own files; the sentence names a folder that is good."""

from pathlib import Path

import pytest

from shoplib.commands import plan, practice, sheets
from shoplib.commands import print as printing
from shoplib.documents.asked import NotUnderstood, folder_called
from shoplib.documents.examples import project_path

ROOT = Path(__file__).parents[2]
PROJECT = str(project_path("wheel_wall_drawers"))
COMMANDS = {
    "plan": ("my_case", lambda to: plan.run(PROJECT, to)),
    "sheets": ("my_sheets", lambda to: sheets.run(PROJECT, to, "0")),
    "print": ("my_prints/my_case", lambda to: printing.run(PROJECT, to, "", "", "0")),
    "practice": ("my_practice", lambda to: practice.run("dado", to, "18 mm", "", "", "", "", "", "", "")),
}
OWN = (".", "notebooks", "notebooks/", "notebooks/joints", "shoplib", "shoplib/live", "tests", "data",
       "data/projects", "data/new", "notebooks/../data")


@pytest.mark.parametrize("command", COMMANDS)
@pytest.mark.parametrize("to", [".", "notebooks", "data/new"])
def test_a_command_writes_nothing_there_and_names_a_good_folder(command, to, capsys, monkeypatch):
    monkeypatch.chdir(ROOT)
    folder = ROOT / to
    before = sorted(folder.iterdir()) if folder.exists() else None
    good, run = COMMANDS[command]
    assert run(to) == 2
    said = " ".join(capsys.readouterr().err.split())
    assert "has files of the workbook itself" in said and said.endswith(f"such as --to {good}.")
    assert (sorted(folder.iterdir()) if folder.exists() else None) == before
    assert folder_called(good, good) == good


@pytest.mark.parametrize("to", OWN)
def test_folders_of_the_workbook(to, monkeypatch):
    monkeypatch.chdir(ROOT)
    for written in (to, str(ROOT / to)):
        with pytest.raises(NotUnderstood, match="itself"):
            folder_called(written, "my_case")


@pytest.mark.parametrize("to", ["my_case", "my_prints/data", "notebooks/my_prints/examples/my_case", "..", "../data"])
def test_folders_of_the_reader(to, monkeypatch):
    monkeypatch.chdir(ROOT)
    assert folder_called(to, "my_case") == to
