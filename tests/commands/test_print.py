"""`print` writes all papers of a project, whole or not at all, each page with the same stamp."""

import json
import os
import re
import shutil
import signal
import subprocess
import sys
from functools import cache
from pathlib import Path
from xml.etree import ElementTree

import pypdf
import pytest

from shoplib.commands import plan
from shoplib.commands import print as command
from shoplib.documents.atomic import HALFWAY
from shoplib.documents.before_cutting import STOPPED
from shoplib.documents.examples import project_path
from shoplib.documents.last_print import LastPrint, last_print, record
from shoplib.printed import into_folder
from shoplib.printed.told.readings import OLD_PAGES

ROOT = Path(__file__).parents[2]
PRINTED = ("plan_set.pdf", "labels.pdf", "story_stick.pdf", "templates.pdf")


@cache
def texts(pdf: Path) -> list[str]:
    return [page.extract_text() for page in pypdf.PdfReader(pdf).pages]


def stamped(pdf: Path) -> list[tuple[str, ...]]:
    """Of each page: fingerprint, number, number of pages."""
    return [(*re.search(r"plan ([0-9A-Z]{4}-[0-9A-Z]{4})", text).groups(),
             *re.search(r"page (\d+) of (\d+)", text).groups()) for text in texts(pdf)]


@pytest.fixture(scope="module")
def printed(tmp_path_factory):
    """The smallest example, printed with a date."""
    to = tmp_path_factory.mktemp("printed") / "out"
    assert command.run(str(project_path("wheel_wall_drawers")), str(to), "a4", "29 May", "0") == 0
    return to


def test_everything_is_written(printed):
    names = {str(path.relative_to(printed)) for path in printed.rglob("*") if path.is_file()}
    assert names >= {*PRINTED, "cut_list.csv", "cut_list_comma.csv", "exploded-view.svg", "assembled-view.svg"}
    assert any(name.startswith("templates/") for name in names)
    assert [name for name in names if "part" in Path(name).suffix or HALFWAY in name] == []


@pytest.mark.parametrize("name", PRINTED)
def test_each_page_has_the_name_the_date_the_fingerprint_and_its_number(printed, name):
    pages = pypdf.PdfReader(printed / name).pages
    marks = stamped(printed / name)
    assert [int(number) for _, number, _ in marks] == list(range(1, len(pages) + 1))
    assert {int(of) for _, _, of in marks} == {len(pages)}
    assert {mark for mark, _, _ in marks} == {stamped(printed / "labels.pdf")[0][0]}
    for page, text in zip(pages, texts(printed / name), strict=True):
        assert "29 May" in text and "Two drawers over the wheel bench" in " ".join(text.split())
        # ISO 216: A4 is 210 mm x 297 mm, lying or standing.
        assert sorted(round(float(side) * 25.4 / 72) for side in page.mediabox[2:]) == [210, 297]


def test_another_size_gives_another_fingerprint_and_the_same_project_the_same(printed, tmp_path):
    text = project_path("wheel_wall_drawers").read_text(encoding="utf-8")
    changed = tmp_path / "changed.toml"
    changed.write_text(text.replace('projection = "7/8 in"', 'projection = "1 in"'), encoding="utf-8")
    marks = set()
    for number, file in enumerate((changed, project_path("wheel_wall_drawers"))):
        command.run(str(file), str(tmp_path / f"{number}"), "a4", "29 May", "0")
        marks.add(stamped(tmp_path / f"{number}" / "labels.pdf")[0][0])
    assert len(marks) == 2
    assert (tmp_path / "1" / "plan_set.pdf").read_bytes() == (printed / "plan_set.pdf").read_bytes()


def test_a_plan_that_stops_says_so_across_each_page(tmp_path, capsys):
    text = project_path("wheel_wall_drawers").read_text(encoding="utf-8")
    low = tmp_path / "low.toml"
    low.write_text(text.replace('setback = "3/4 in"', 'setback = "1/16 in"'), encoding="utf-8")
    assert command.run(str(low), str(tmp_path / "out"), "", "", "0") == command.STOPPED
    said = " ".join(capsys.readouterr().out.split())
    assert "STOP: left side" in said and "cut nothing before" in said
    for name in PRINTED:
        for text in texts(tmp_path / "out" / name):
            assert STOPPED in " ".join(text.split())


def test_what_another_plan_left_in_the_folder_is_told(tmp_path, capsys):
    (tmp_path / "templates").mkdir()
    for name in ("exploded-bay-9-drawer-9.svg", "templates/99-holes-for-pegs.svg"):
        (tmp_path / name).write_text("old", encoding="utf-8")
    command.run(str(project_path("wheel_wall_drawers")), str(tmp_path), "", "", "0")
    said = " ".join(capsys.readouterr().out.split())
    left = "exploded-bay-9-drawer-9.svg and templates/99-holes-for-pegs.svg"
    assert f"Not of this print, and best taken out of the folder if you do not know it: {left}." in said


def test_the_next_print_takes_away_what_the_last_one_wrote_and_nothing_else(tmp_path, capsys):
    """Of two projects in one folder: drawings of the first go, a file changed by hand and one's own stay."""
    to, first = tmp_path / "out", str(project_path("wheel_wall_drawers"))
    command.run(first, str(to), "", "", "0")
    plan = stamped(to / "labels.pdf")[0][0]
    first_names = set(last_print(to).digests)
    mine = {"templates/my-own.svg": b"mine", "notes.txt": b"mine"}
    for name, content in mine.items():
        (to / name).write_bytes(content)
    (to / "to_measure.toml").write_bytes(b"filled in")
    capsys.readouterr()
    command.run(str(project_path("finger_jointed_drawers")), str(to), "", "", "0")
    said = " ".join(capsys.readouterr().out.split())
    there = {str(path.relative_to(to)): path for path in to.rglob("*") if path.is_file()}
    gone = first_names - set(last_print(to).digests)
    assert gone and not gone & set(there) and f"print does not have it: {min(gone)}" in said
    assert all(there[name].read_bytes() == content for name, content in mine.items())
    assert there["to_measure-as-you-left-it.toml"].read_bytes() == b"filled in"
    assert "best taken out of the folder if you do not know it: templates/my-own.svg." in said
    assert f"Before, plan {plan} lay there. {OLD_PAGES}" in said
    assert "What you had changed there is kept: to_measure-as-you-left-it.toml." in said


@pytest.mark.parametrize("first", ["plan", "print without its record", "print that was killed"])
def test_readings_written_into_the_folder_are_kept_whatever_is_known_of_the_print_before(tmp_path, capsys, first):
    project, to = str(project_path("wheel_wall_drawers")), tmp_path / "out"
    if first == "plan":
        plan.run(project, str(to))
    else:
        command.run(project, str(to), "", "", "0")
        if "record" in first:
            (to / ".last_print.json").unlink()
        else:
            (to / HALFWAY).write_bytes(b"")
    listed = (to / "to_measure.toml").read_text(encoding="utf-8")
    filled = re.sub('front = ""', 'front = "7 in"', listed, count=1)
    assert filled != listed
    (to / "to_measure.toml").write_text(filled, encoding="utf-8")
    capsys.readouterr()
    command.run(project, str(to), "", "", "0")
    assert (to / "to_measure-as-you-left-it.toml").read_text(encoding="utf-8") == filled
    assert "What you had changed there is kept: to_measure-as-you-left-it.toml." in " ".join(
        capsys.readouterr().out.split()
    )
    plan.run(project, str(to))
    assert not (to / "to_measure-as-you-left-it-2.toml").exists(), "there was nothing in it that could be lost"


def test_signs_without_a_letter_are_told_of_every_name(tmp_path, capsys):
    text = project_path("wheel_wall_drawers").read_text(encoding="utf-8")
    renamed = tmp_path / "case.toml"
    renamed.write_text(text.replace("Two drawers", "二 drawers").replace("thin sheet", "薄 sheet"), encoding="utf-8")
    command.run(str(renamed), str(tmp_path / "out"), "", "", "0")
    said = " ".join(capsys.readouterr().out.split())
    assert "The papers have no letter for 二 and 薄; an empty box stands for each." in said


def test_planning_again_keeps_readings_too(tmp_path, capsys):
    project, listed = str(project_path("wheel_wall_drawers")), tmp_path / "to_measure.toml"
    for written in ('[measured.openings]\n"bay 1 drawer 1" = { front = "7 in", back = "7 in" }', "front = 7 in"):
        listed.write_text(written, encoding="utf-8")
        plan.run(project, str(tmp_path))
        assert "What you had filled in there is kept: to_measure-as-you-left-it" in capsys.readouterr().out
    assert (tmp_path / "to_measure-as-you-left-it-2.toml").read_text(encoding="utf-8") == "front = 7 in"


def test_what_was_changed_by_hand_is_not_taken_away(tmp_path):
    for name in ("same.svg", "changed.svg"):
        (tmp_path / name).write_bytes(b"new")
    before = LastPrint("2222-3333", json.loads(record("", {"same.svg": b"new", "changed.svg": b"old"}))["files"])
    assert before.no_longer_made(tmp_path, {}) == ["same.svg"]
    assert before.changed_by_hand(tmp_path, {}) == {}
    assert before.changed_by_hand(tmp_path, {"changed.svg": b"newer"}) == {"changed-as-you-left-it.svg": b"new"}
    (tmp_path / "changed-as-you-left-it.svg").write_bytes(b"")
    assert list(before.changed_by_hand(tmp_path, {"changed.svg": b"newer"})) == ["changed-as-you-left-it-2.svg"]


def test_a_print_of_an_older_kind_that_says_nothing_of_itself_is_left_alone(tmp_path):
    (tmp_path / ".last_print.json").write_text('{"plan": "2222-3333", "files": {"../a.txt": "x"}}', encoding="utf-8")
    assert last_print(tmp_path) is None
    (tmp_path / ".last_print.json").write_text("[]", encoding="utf-8")
    assert last_print(tmp_path) is None
    (tmp_path / ".last_print.json").write_bytes(record("2222-3333", {"a.txt": b"a"}))
    assert last_print(tmp_path).plan == "2222-3333"
    (tmp_path / HALFWAY).write_bytes(b"")
    assert last_print(tmp_path) is None, "after a killed run nobody knows which file is whose"


@pytest.mark.parametrize(("to", "said"), [("file", "is a file where a folder is needed"), (" ", "No folder is named")])
def test_where_nothing_can_be_written_is_told_before_anything_is_worked_out(tmp_path, capsys, monkeypatch, to, said):
    (tmp_path / "file").write_bytes(b"mine")
    monkeypatch.setattr(command, "print_project", lambda *_: pytest.fail("the long work was begun"))
    to = str(tmp_path / to) if to.strip() else to
    assert command.run(str(project_path("wheel_wall_drawers")), to, "", "", "0") == command.NOTHING
    assert said in " ".join(capsys.readouterr().err.split())
    assert [path.name for path in tmp_path.iterdir()] == ["file"]


MARKUP = "#set text(red) _it_ $x$ [y] @ref & co `raw` ~ -- 'q' #1"


def test_odd_names_and_dates_are_printed_as_they_are_typed(tmp_path):
    """Nothing is run as markup, neither by the typesetter nor in the drawings."""
    text = project_path("wheel_wall_drawers").read_text(encoding="utf-8")
    (tmp_path / "odd.toml").write_text(text.replace("Two drawers over the wheel bench", MARKUP), encoding="utf-8")
    date = "*3* #[May] <b> & \\u{41}"
    assert command.run(str(tmp_path / "odd.toml"), str(tmp_path / "out"), "letter", date, "0") == 0
    for name in PRINTED:
        for text in texts(tmp_path / "out" / name):
            assert MARKUP in " ".join(text.split()) and date in " ".join(text.split())
    for path in (tmp_path / "out").rglob("*.svg"):
        ElementTree.parse(path)
    template = next((tmp_path / "out" / "templates").glob("*.svg"))
    assert MARKUP in " ".join(ElementTree.parse(template).getroot().itertext())


def test_the_longest_name_and_date_have_room_at_the_head_of_the_page(tmp_path):
    text = project_path("wheel_wall_drawers").read_text(encoding="utf-8")
    name, date = "Wide " * 15 + "words", "Sunday, 29th of November, 2026"
    (tmp_path / "long.toml").write_text(text.replace("Two drawers over the wheel bench", name), encoding="utf-8")
    command.run(str(tmp_path / "long.toml"), str(tmp_path / "out"), "letter", date, "0")
    for paper in PRINTED:
        for text in texts(tmp_path / "out" / paper):
            assert any(date in line for line in text.splitlines()), "the date stands in one line"


def test_boards_that_fit_no_sheet_are_printed_without_sheets_and_why(tmp_path, capsys):
    text = project_path("wheel_wall_drawers").read_text(encoding="utf-8")
    small = tmp_path / "small.toml"
    small.write_text(text.replace('length = "60 in"\nwidth = "30 in"', 'length = "6 in"\nwidth = "6 in"'),
                     encoding="utf-8")
    command.run(str(small), str(tmp_path / "out"), "", "", "0")
    said = " ".join(capsys.readouterr().out.split())
    assert "No sheets are in it: " in said
    reason = said.partition("No sheets are in it: ")[2][:40]
    printed_text = " ".join(" ".join(texts(tmp_path / "out" / "plan_set.pdf")).replace("\u00a0", " ").split())
    assert "not laid out on sheets here" in printed_text and reason in printed_text


def test_ctrl_c_while_the_files_are_written_does_not_say_that_nothing_is(tmp_path, monkeypatch, capsys):
    def written_and_stopped(*_):
        raise KeyboardInterrupt  # as it is heard once all files are in place

    monkeypatch.setattr(into_folder, "write_files", written_and_stopped)
    with pytest.raises(KeyboardInterrupt):
        command.run(str(project_path("wheel_wall_drawers")), str(tmp_path / "out"), "", "", "0")
    assert "nothing is written" not in capsys.readouterr().err


def test_before_the_work_it_tries_room_for_the_old_print_and_the_new_one(printed, tmp_path, monkeypatch):
    """Both lie there at once while it writes; the largest shipped project takes not quite twice as much as this one."""
    asked = []
    monkeypatch.setattr(into_folder, "try_folder", lambda folder, names, size: asked.append(size))
    into_folder.try_to_print_into(tmp_path)
    one = sum(path.stat().st_size for path in printed.rglob("*") if path.is_file())
    assert asked[0] >= 2 * 2 * one


@pytest.mark.parametrize(
    ("paper", "date", "said"),
    [("a3", "", 'There is no paper "a3": there are letter and a4.'), ("a4", "x" * 40, "room for 30"),
     ("a4", "\u6708", "no letter for (\u6708)"), ("a4", "a\x1b[31m", "no letter for: write")],
)
def test_what_is_not_understood_is_told_and_nothing_is_written(tmp_path, capsys, paper, date, said):
    words = (str(project_path("wheel_wall_drawers")), str(tmp_path / "out"), paper, date, "0")
    assert command.run(*words) == command.NOTHING
    assert said in " ".join(capsys.readouterr().err.split())
    assert list(tmp_path.iterdir()) == []


@pytest.mark.skipif(os.name == "nt", reason="a signal of this kind cannot be sent there")
def test_a_killed_run_leaves_no_half_written_file(printed, tmp_path, count):
    """Killed at any moment while it writes, each file that is there under its own name is whole."""
    whole = {path.relative_to(printed): path.read_bytes() for path in printed.rglob("*") if path.is_file()}
    words = [sys.executable, "-c", SLOW, "print", str(project_path("wheel_wall_drawers")), "TO", "a4", "29 May", "0"]
    seen = set()
    for number in range(count(3, 20)):
        to = tmp_path / f"{number}"
        shutil.copytree(printed, to)
        for path in to.rglob("*.*"):
            path.write_bytes(b"old")
        words[5] = str(to)
        running = subprocess.Popen(words, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
        placed = 0  # first the note that a run is under way, then the list that was changed by hand
        while placed <= number and (line := running.stdout.readline()):
            placed += line.startswith(str(to))
        running.send_signal(signal.SIGKILL)
        running.communicate(timeout=60)
        there = {path.relative_to(to): path.read_bytes() for path in to.rglob("*") if path.is_file()}
        new = {name for name, old in whole.items() if there[name] == old}
        assert {there[name] for name in whole if name not in new} <= {b"old"}
        assert Path(HALFWAY) in there or len(new) in (0, len(whole)), "a mixture says that it is one"
        seen |= new
    assert seen, "no run came as far as a first file"


SLOW = """
import os, sys, time
from shoplib.commands.__main__ import main

replace = os.replace

def slow(source, target):
    replace(source, target)
    print(target, file=sys.__stdout__, flush=True)
    time.sleep(0.05)

os.replace = slow
sys.exit(main(sys.argv[1:]))
"""
"""The command, slow where it puts its files in their places, so that it can be killed between them."""
