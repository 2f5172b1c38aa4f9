"""What stands on the carcass panel is kept in a project file and comes back the same, or is refused kindly."""

import random
import subprocess
import sys
from pathlib import Path

import pytest

from shoplib.documents.examples import example
from shoplib.documents.project_file import project_from_text, read_project
from shoplib.documents.project_text import project_text
from shoplib.live.carcass_panel import carcass_panel, style_for
from shoplib.live.carcass_project import CaseChoices, case_project
from shoplib.live.case_choices import case_choices
from shoplib.live.keep_box import NotKept, file_name
from shoplib.live.kept_choices import OtherProject
from shoplib.live.length_control import LengthControl
from tests.live.test_carcass_panel import ends, put

UNITS = pytest.mark.parametrize("unit", ["in", "mm"])


class Kept:
    """A panel with its fields and buttons for keeping."""

    def __init__(self, unit, folder):
        self.panel = carcass_panel(unit, folder)
        self.name, self.save, self.saved, self.load, self._says = self.panel.groups[-1].others

    def says(self):
        return self._says.value

    def keep(self, name):
        self.name.value = name
        self.save.click()

    def bring(self, name):
        self.saved.value = name
        self.load.click()

    def choices(self):
        values = vars(self.panel.values).copy()
        values.pop("opened")
        return CaseChoices(**values)


@pytest.fixture
def folder(tmp_path):
    return tmp_path / "my_projects"


def settings(panel):
    """The panel at both ends of each control, the others as at first; then 100 times at random."""
    for control in panel.controls.values():
        before = control.ticks if isinstance(control, LengthControl) else control.value
        for end in ends(control):
            put(control, end)
            yield
        put(control, before)
    draw = random.Random(11)
    for _ in range(100):
        panel.put({
            name: draw.randint(control.low, control.high) if isinstance(control, LengthControl)
            else draw.choice(control.options)
            for name, control in panel.controls.items()
        })
        yield


@UNITS
def test_every_setting_comes_back_from_its_text(unit, folder):
    kept, style = Kept(unit, folder), style_for(unit)
    for _ in settings(kept.panel):
        project = case_project(kept.choices(), style)
        back = case_choices(project_from_text(project_text(project)), style)
        assert case_project(back, style) == project


@UNITS
def test_a_saved_panel_is_loaded_into_a_new_one(unit, folder):
    first, second = Kept(unit, folder), Kept(unit, folder)
    for values in (
        {"width": "800 mm", "bays": 3, "holds": "drawers", "drawers": 4, "fronts": "overlay", "base": "plinth"},
        {"height": "50 in", "holds": "shelves", "back": "in a groove", "base": "casters", "base_height": "3 in"},
        {"bays": 3, "holds": "drawers and a pull-out", "fronts": "none", "base": "none"},
    ):
        for name, value in values.items():
            first.panel.enter(name, value)
        assert not first.panel.stale
        first.keep("tool case")
        first.save.click()  # replaces the one before, which was asked for at the first press
        second.load.click()  # the list is read anew, with what the other panel saved
        second.bring("tool case")
        assert "on the panel now" in second.says()
        assert second.panel.outcome.tables == first.panel.outcome.tables
        assert second.panel.outcome.findings == first.panel.outcome.findings


def test_a_kept_file_is_planned_by_the_command_that_the_panel_tells(folder, tmp_path):
    kept = Kept("in", folder)
    kept.keep("tool case")
    path = folder / "tool case.toml"
    assert f'python3 -m shoplib plan &quot;{path.as_posix()}&quot; --to &quot;tool case&quot;' in kept.says()
    command = [sys.executable, "-m", "shoplib", "plan", str(path), "--to", str(tmp_path / "tool case")]
    done = subprocess.run(command, capture_output=True, text=True, cwd=Path(__file__).parents[2])
    assert done.returncode == 0, done.stdout + done.stderr
    assert (tmp_path / "tool case" / "cut_list.csv").is_file()
    assert read_project(path).name == "tool case"


@pytest.mark.parametrize("name", [
    "", "  ", ".toml", "../up", "a/b", "a\\b", ".hidden", "C:", "a\nb", "nul", "Com1", "x" * 61, "-rf", "a.b", "a\0b",
])
def test_a_name_that_is_no_plain_file_name_is_refused_kindly(name, folder):
    with pytest.raises(NotKept, match=r"\.$"):
        file_name(name)
    kept = Kept("in", folder)
    kept.keep(name)
    assert "Saved" not in kept.says() and kept.says() != Kept("in", folder).says()
    assert not folder.exists()


@pytest.mark.parametrize("name", ["tool case", "Werkzeugkasten für Noor", "case_2-b", "2 bays.toml"])
def test_other_names_are_taken(name):
    assert file_name(name) == f"{name.removesuffix('.toml')}.toml"


def test_an_existing_file_is_replaced_only_at_the_second_press(folder):
    kept = Kept("in", folder)
    kept.keep("case")
    before = (folder / "case.toml").read_bytes()
    kept.panel.enter("width", "40 in")
    kept.save.click()
    assert "Press Save once more" in kept.says() and (folder / "case.toml").read_bytes() == before
    kept.name.value = "Case"  # another name asks anew, though a disk may take it for the same file
    kept.save.click()
    assert "Press Save once more" in kept.says() and (folder / "case.toml").read_bytes() == before
    kept.save.click()
    assert "Saved as case.toml" in kept.says() and (folder / "case.toml").read_bytes() != before
    assert [path.name for path in folder.iterdir()] == ["case.toml"]
    assert tuple(kept.saved.options) == ("case",) and kept.saved.value == "case"


def test_a_project_with_more_than_the_controls_is_refused_and_changes_nothing(folder):
    folder.mkdir()
    (folder / "bench.toml").write_bytes(Path(example("under_bench_case")).read_bytes())
    kept = Kept("in", folder)
    before = kept.choices()
    kept.bring("bench")
    assert "there is more in it than these controls can set" in kept.says() and "shoplib plan" in kept.says()
    assert kept.choices() == before


@pytest.mark.parametrize(("line", "told"), [
    ('width = "34 1/2 in"|width = "90 in"', "Width goes from 12 in to 72 in here"),
    ('[carcass]|[carcass]\noverhang_front = "1/2 in"', "there is more in it"),
    ('width = "34 1/2 in"|width = "34 1/2"', "size.width"),
    ("format = 1|format = 7", "format"),
])
def test_a_file_that_was_changed_by_hand_is_read_with_the_same_care(line, told, folder):
    kept = Kept("in", folder)
    kept.keep("case")
    text, (old, new) = (folder / "case.toml").read_text(), line.split("|")
    assert old in text
    (folder / "case.toml").write_text(text.replace(old, new))
    kept.panel.enter("height", "40 in")
    before = kept.choices()
    kept.bring("case")
    assert told in kept.says() and kept.choices() == before


def test_a_file_in_the_other_unit_is_told(folder):
    Kept("mm", folder).keep("case")
    kept = Kept("in", folder)
    kept.bring("case")
    assert "it was kept in millimetres" in kept.says()
    with pytest.raises(OtherProject):
        case_choices(read_project(folder / "case.toml"), style_for("in"))


def test_what_cannot_be_built_is_not_saved(folder):
    kept = Kept("in", folder)
    kept.panel.enter("thickness", "0.5")
    kept.panel.enter("joint_depth", "5/8")
    kept.keep("case")
    assert "What cannot be built is not saved" in kept.says() and not folder.exists()


def test_nothing_saved_and_a_file_that_went_away(folder):
    kept = Kept("in", folder)
    kept.load.click()
    assert "Nothing was saved here yet." in kept.says()
    kept.keep("case")
    (folder / "case.toml").unlink()
    kept.load.click()
    assert "case is no longer there." in kept.says() and kept.saved.options == ()


def test_a_folder_that_cannot_be_written_is_told(folder):
    folder.write_text("a file where the folder should be")
    kept = Kept("in", folder)
    kept.keep("case")
    assert "nothing was written" in kept.says()
