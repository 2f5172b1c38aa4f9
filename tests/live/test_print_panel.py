"""The button prints what the command prints, and says what came of it."""

import re
from html import unescape

import pytest

from shoplib.commands import print as command
from shoplib.documents.examples import project_path
from shoplib.documents.project_file import read_project
from shoplib.documents.to_measure import to_measure_text
from shoplib.live.print_panel import PrintPanel
from shoplib.model.cabinet import solve

PROJECT = project_path("wheel_wall_drawers")


@pytest.fixture
def panel(tmp_path):
    made = PrintPanel(tmp_path, 0.0)
    made.project.value = str(PROJECT)
    made.date.value = "29 May"
    return made


def test_it_writes_and_says_what_the_command_writes_and_says(panel, tmp_path, capsys):
    panel.paper.value = "a4"
    panel.button.click()
    assert command.run(str(PROJECT), str(tmp_path / "typed"), "a4", "29 May", "0") == 0
    answer = " ".join(capsys.readouterr().out.split())
    typed = {path.relative_to(tmp_path / "typed"): path.read_bytes()
             for path in (tmp_path / "typed").rglob("*") if path.is_file()}
    pressed = tmp_path / "my_prints" / "examples" / PROJECT.stem
    assert {path.relative_to(pressed): path.read_bytes() for path in pressed.rglob("*") if path.is_file()} == typed
    said = unescape(panel.says.value)
    assert 'role="status"' in said and "the folder my_prints/examples/wheel_wall_drawers, in the list" in said
    assert " on A4 paper, plan " in said
    for line in re.findall("<p>(.*?)</p>", said):
        if "Printed into" not in line:
            assert line in answer
    html = panel.links.outputs[0]["data"]["text/html"]
    assert 'href="my_prints/examples/wheel_wall_drawers/plan_set.pdf"' in html
    assert all(f">{name}</a>" in html for name in map(str, typed)
               if "/" not in name and not name.endswith(".svg") and not name.startswith("."))


def test_a_date_without_room_is_told_and_nothing_is_written(panel, tmp_path):
    panel.date.value = "x" * 40
    panel.button.click()
    assert "room for 30" in panel.says.value and panel.links.outputs == () and not panel.button.disabled
    assert list(tmp_path.iterdir()) == []


def test_a_project_copied_beside_the_page_can_be_chosen(tmp_path):
    (tmp_path / "my_case.toml").write_text(PROJECT.read_text(encoding="utf-8"), encoding="utf-8")
    panel = PrintPanel(tmp_path, 0.0)
    assert panel.project.options[0] == ("beside this page: my_case", str(tmp_path / "my_case.toml"))
    assert not any("pyproject" in name for name, _ in panel.project.options)


def test_only_projects_can_be_chosen(tmp_path):
    """What a print wrote to be filled in is none, nor is another program's TOML; a project with a slip is, and the
    slip is told when it is printed."""
    (tmp_path / "tool case.toml").write_text(PROJECT.read_text(encoding="utf-8"), encoding="utf-8")
    (tmp_path / "slip.toml").write_text('format = 1\nname = "no end', encoding="utf-8")
    (tmp_path / "empty.toml").write_text("", encoding="utf-8")
    (tmp_path / "other.toml").write_text('[project]\nname = "other"\n', encoding="utf-8")
    cabinet = solve(read_project(PROJECT))
    for name in ("to_measure.toml", "to_measure-as-you-left-it.toml"):
        (tmp_path / name).write_text(to_measure_text(cabinet), encoding="utf-8")
    panel = PrintPanel(tmp_path, 0.0)
    beside = [name for name, _ in panel.project.options if name.startswith("beside")]
    assert beside == ["beside this page: slip", "beside this page: tool case"]
    panel.project.value = str(tmp_path / "slip.toml")
    panel.button.click()
    assert "slip.toml" in panel.says.value


def test_a_stop_is_told_with_its_reason(panel, tmp_path):
    text = PROJECT.read_text(encoding="utf-8").replace('setback = "3/4 in"', 'setback = "1/16 in"')
    (tmp_path / "thin.toml").write_text(text, encoding="utf-8")
    panel = PrintPanel(tmp_path, 0.0)
    panel.project.value = str(tmp_path / "thin.toml")
    panel.button.click()
    said = unescape(panel.says.value)
    assert "STOP: left side" in said and "cut nothing before" in said


def test_a_project_that_is_gone_is_told(tmp_path):
    (tmp_path / "my_projects").mkdir()
    saved = tmp_path / "my_projects" / "tool case.toml"
    saved.write_text(PROJECT.read_text(encoding="utf-8"), encoding="utf-8")
    panel = PrintPanel(tmp_path, 0.0)
    assert panel.project.options[0] == ("saved on a panel: tool case", str(saved))
    saved.unlink()
    panel.project.value = str(saved)
    panel.button.click()
    assert "tool case.toml" in panel.says.value and not (tmp_path / "my_prints").exists()


def test_projects_of_one_name_are_told_apart_and_printed_apart(tmp_path):
    """An example, one saved under its name, and a copy beside the page: three folders."""
    (tmp_path / "my_projects").mkdir()
    for folder in (tmp_path / "my_projects", tmp_path):
        (folder / PROJECT.name).write_text(PROJECT.read_text(encoding="utf-8"), encoding="utf-8")
    panel = PrintPanel(tmp_path, 0.0)
    chosen = [(name, path) for name, path in panel.project.options if PROJECT.stem in path]
    assert len({name for name, _ in chosen}) == 3
    said = []
    for _, path in chosen:
        panel.project.value = path
        panel.button.click()
        said.append(unescape(panel.says.value))
    assert len({re.search("Printed into (.*?), in", one)[1] for one in said}) == 3
    assert len(list((tmp_path / "my_prints").rglob("plan_set.pdf"))) == 3


def test_what_is_said_of_the_print_before_is_said_here_too(panel, tmp_path):
    panel.button.click()
    (tmp_path / "my_prints" / "examples" / PROJECT.stem / "to_measure.toml").write_bytes(b"filled in")
    panel.button.click()
    assert "What you had changed there is kept: to_measure-as-you-left-it.toml." in unescape(panel.says.value)


def test_a_folder_that_cannot_be_written_to_is_told_before_the_laying_out(panel, tmp_path, monkeypatch):
    (tmp_path / "my_prints").write_bytes(b"mine")
    monkeypatch.setattr("shoplib.live.print_panel.print_project", lambda *_: pytest.fail("the long work was begun"))
    panel.button.click()
    assert "my_prints is a file where a folder is needed" in unescape(panel.says.value)


def test_an_interrupted_kernel_leaves_a_button_that_can_be_pressed(panel, tmp_path, monkeypatch):
    def stopped(*_):
        raise KeyboardInterrupt

    monkeypatch.setattr("shoplib.live.print_panel.print_project", stopped)
    panel.button.click()
    assert "Stopped; nothing is written." in panel.says.value and not panel.button.disabled
    assert list(tmp_path.iterdir()) == []


def test_a_print_that_is_stopped_while_files_are_put_in_place_is_not_called_unwritten(panel, tmp_path, monkeypatch):
    def written_then_stopped(folder, printed, called):
        folder.mkdir(parents=True)
        raise KeyboardInterrupt

    monkeypatch.setattr("shoplib.live.print_panel.put_into", written_then_stopped)
    panel.button.click()
    assert "put into my_prints/examples/wheel_wall_drawers: press the button again" in panel.says.value
    assert not panel.button.disabled


def test_a_project_that_is_a_link_is_printed_under_the_name_of_the_link(tmp_path):
    """Two links to projects of one name, kept elsewhere, are two projects."""
    page = tmp_path / "page"
    page.mkdir()
    for name in ("first", "second"):
        kept = tmp_path / name / "case.toml"
        kept.parent.mkdir()
        kept.write_text(PROJECT.read_text(encoding="utf-8"), encoding="utf-8")
        (page / f"{name}.toml").symlink_to(kept)
    panel = PrintPanel(page, 0.0)
    for name in ("first", "second"):
        panel.project.value = dict(panel.project.options)[f"beside this page: {name}"]
        panel.button.click()
        assert f"Printed into the folder my_prints/beside_the_page/{name}," in unescape(panel.says.value)


def test_a_project_saved_since_is_found_and_the_chosen_one_stays(panel, tmp_path):
    (tmp_path / "my_projects").mkdir()
    (tmp_path / "my_projects" / "tool case.toml").write_text(PROJECT.read_text(encoding="utf-8"), encoding="utf-8")
    panel.again.click()
    assert "saved on a panel: tool case" in [name for name, _ in panel.project.options]
    assert panel.project.value == str(PROJECT)
