"""`plan` as it is run: exit status, what is printed, what is written."""

import json
from pathlib import Path

import pytest

from shoplib.commands import check, plan
from shoplib.documents.plan_words import MOST, findings_text
from shoplib.live.table import LEVELS
from shoplib.model.solved import Finding

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
    assert {"plan.json", "cut_list.csv", "cut_list.txt", "to_measure.toml", "drawings.pdf"} < written
    assert not any(
        finding["level"] == "stop" for finding in json.loads((tmp_path / "out/plan.json").read_bytes())["findings"]
    )
    listed = (tmp_path / "out/cut_list.txt").read_text(encoding="utf-8")
    for text, parts in (
        (listed, ("Stage 1", "Stage 2", "Stage 3", "Closing sums", "Dry-fit")),
        (out, ("Stage 1", "Stage 2", "Stage 3", "[measured.openings]", "\nNote (", "Written into")),
    ):
        order = [text.index(part) for part in parts]
        assert order == sorted(order)
    assert "Both diagonals" in " ".join(listed.split())
    assert check.run(str(project), str(tmp_path / "out/cut_list.csv")) == 0


@pytest.mark.parametrize("project", PROJECTS, ids=lambda path: path.stem)
def test_the_terminal_gives_the_verdict_first_and_last_on_a_narrow_screen(project, tmp_path, capsys):
    plan.run(str(project), str(tmp_path / "out"))
    lines = capsys.readouterr().out.splitlines()
    planned = json.loads((tmp_path / "out/plan.json").read_bytes())
    assert lines[1] == lines[-1]
    assert lines[1].startswith(f"{len(planned['boards'])} boards; the dry-fit stops at nothing")
    assert len(lines) <= 70
    assert [line for line in lines if len(line) > 80 and "Written into" not in line] == []
    # Every file is named, and none that is not there.
    where = next(number for number, line in enumerate(lines) if line.startswith("Written into"))
    named = {line.split()[0] for line in lines[where + 1 : -2]}
    assert named == {path.name for path in (tmp_path / "out").iterdir() if path.suffix != ".svg"} | {"*.svg"}


def test_what_is_to_look_at_is_counted_and_called_as_on_the_pages(tmp_path, capsys):
    readings = 'readings = ["0.703 in", "0.699 in", "0.709 in", "0.701 in"]\n'
    assert plan.run(edited(tmp_path, readings, ""), str(tmp_path / "out")) == 0
    out = capsys.readouterr().out
    levels = [finding["level"] for finding in json.loads((tmp_path / "out/plan.json").read_bytes())["findings"]]
    assert levels.count("warn") == 1
    assert "; 1 thing to look at, " in out.splitlines()[-1]
    assert f"\n{LEVELS['warn'][1]} (1)\n  - case sheet: no thickness was measured" in out


def test_measured_planned_again_and_told_what_changed(tmp_path, capsys):
    """The README's walk: plan, fill in the line that the terminal shows, plan again."""
    plan.run(str(UNDER_BENCH), str(tmp_path / "out"))
    lines = capsys.readouterr().out.splitlines()
    head = lines.index("    [measured.openings]")
    project = tmp_path / "measured.toml"
    given = UNDER_BENCH.read_text(encoding="utf-8")
    project.write_text("\n".join([given, lines[head].strip(), lines[head + 1].strip()]), encoding="utf-8")
    assert plan.run(str(project), str(tmp_path / "again")) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert "Note: changed because of what you measured (4)" in out
    assert "bay 1 drawer 1 box front: length 21 3/32 in (-0.003 in), planned 21 1/8 in (-0.003 in)" in out
    assert "bay 1 drawers 2 to 4" in out  # what is left to measure


def test_many_notes_are_cut_short_on_the_screen_but_no_stop_is():
    found = [Finding("check", level, (), f"{level} {letter}.") for level in LEVELS for letter in "abcdefghi"]
    shown = findings_text(found, most=MOST, rest_in="cut_list.txt")
    assert f"  - ... and {9 - MOST} more in cut_list.txt" in shown
    assert [shown.count(f"- {level} ") for level in LEVELS] == [9, 9, MOST]
    assert findings_text(found).count("\n  - ") == 27


def test_a_word_of_the_trade_is_explained_where_it_is_used(tmp_path, capsys):
    plan.run(str(UNDER_BENCH), str(tmp_path / "out"))
    out = capsys.readouterr().out
    listed = (tmp_path / "out/cut_list.txt").read_text(encoding="utf-8")
    assert "\n  shim: " in out
    assert "\n  kicker: " not in out + listed
    assert "\n  near wall: " in listed
    assert "\n  band: " in listed


def test_the_same_project_gives_the_same_files(tmp_path):
    for folder in ("one", "two"):
        plan.run(str(UNDER_BENCH), str(tmp_path / folder))
    for path in (tmp_path / "one").iterdir():
        assert path.read_bytes() == (tmp_path / "two" / path.name).read_bytes(), path.name


def test_a_stop_is_written_and_said(tmp_path, capsys):
    project = edited(tmp_path, 'length = "96 in"', 'length = "30 in"')
    assert plan.run(project, str(tmp_path / "out")) == 1
    out = capsys.readouterr().out
    assert "\nStop (" in out
    assert "STOP: they do not go together yet" in out.splitlines()[1]
    assert out.splitlines()[1] == out.splitlines()[-1]
    assert "cut nothing before" in out
    assert "May be cut" not in out
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


@pytest.mark.parametrize("project", PROJECTS, ids=lambda path: path.stem)
def test_how_it_does_in_use_is_told_apart_from_the_dry_fit(project, tmp_path, capsys):
    """On the screen what is to be looked at, and whether it tips; all of it in the list and in plan.json."""
    plan.run(str(project), str(tmp_path / "out"))
    out = capsys.readouterr().out
    found = json.loads((tmp_path / "out/plan.json").read_bytes())["in_use"]
    looks = [finding for finding in found if finding["level"] == "warn"]
    listed = " ".join((tmp_path / "out/cut_list.txt").read_text(encoding="utf-8").split())
    assert all(finding["text"] in listed for finding in found)
    shown = " ".join(out.split("\nIn use: will it hold, will it move")[1].split("Words\n")[0].split())
    assert all(f"Look: {finding['text']}" in shown for finding in looks)
    assert next(finding["text"] for finding in found if finding["check"] == "tipping") in shown
    assert shown.count(" - ") == len(looks) + (not any(f["check"] == "tipping" for f in looks)) + 1
    assert (f"{len(looks)} thing" in out.splitlines()[-1]) == ("in use" in out.splitlines()[-1]) == bool(looks)
