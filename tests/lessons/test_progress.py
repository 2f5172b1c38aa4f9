"""What was tried is kept: through a new kernel, a crash in the middle of a save, and a file that went bad."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from shoplib.documents.atomic import WriteError
from shoplib.lessons.ask import ask
from shoplib.lessons.choice import save_unit
from shoplib.lessons.lesson_02 import BACK, BOTTOM
from shoplib.lessons.progress import ASIDE, FILE, Tried, clear_progress, note_answer, read_progress
from shoplib.lessons.whole_case import WHOLE_CASE


def test_answers_are_counted_and_right_stays_right(own_folder):
    assert read_progress() == {}
    note_answer("02-back", 1, False)
    note_answer("02-back", 1, True)
    assert note_answer("02-back", 1, False) == Tried(3, True)
    assert read_progress() == {"02-back": Tried(3, True)}


def test_new_numbers_are_a_new_question(own_folder):
    note_answer("02-back", 1, True)
    assert note_answer("02-back", 2, False) == Tried(1, False, 2)


def test_another_process_reads_what_this_one_kept(own_folder):
    note_answer("02-back", 1, True)
    code = "from shoplib.lessons.progress import read_progress; print(read_progress()['02-back'])"
    told = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert told.stdout.strip() == "right, tried once"


@pytest.mark.parametrize("at", ["write", "replace"])
def test_a_crash_in_the_middle_of_a_save_loses_nothing(own_folder, monkeypatch, at):
    note_answer("02-back", 1, True)

    def crash(*_):
        raise KeyboardInterrupt

    monkeypatch.setattr(os, "fsync" if at == "write" else "replace", crash)
    with pytest.raises(KeyboardInterrupt):
        note_answer("02-back", 1, False)
    monkeypatch.undo()
    monkeypatch.setenv("SHOPLIB_WORKBOOK", str(own_folder))
    assert read_progress() == {"02-back": Tried(1, True)}
    assert [path.name for path in own_folder.iterdir()] == [FILE]


BAD = {
    "cut short": b'{"format": 1, "exerc',
    "not UTF-8": b"\xff\xfe{}",
    "a list": b"[]",
    "rows of another kind": b'{"exercises": {"02-back": 3}}',
    "a unit that is none": b'{"exercises": {"02-back": {"tries": 3, "right": true, "version": 1, "unit": "ft"}}}',
    "a text for a count": b'{"exercises": {"02-back": {"tries": "3", "right": true, "version": 1}}}',
}


@pytest.mark.parametrize("content", BAD.values(), ids=BAD)
def test_a_file_that_cannot_be_read_is_put_aside(own_folder, content):
    own_folder.mkdir()
    (own_folder / FILE).write_bytes(content)
    assert read_progress() == {}
    note_answer("02-back", 1, True)
    assert (own_folder / ASIDE).read_bytes() == content
    assert read_progress() == {"02-back": Tried(1, True)}


def test_a_file_that_is_held_just_now_is_not_taken_for_none(own_folder, monkeypatch):
    note_answer("02-back", 1, True)
    before = (own_folder / FILE).read_bytes()

    def held(path):
        raise PermissionError(13, "Permission denied", str(path))

    monkeypatch.setattr(Path, "read_bytes", held)
    assert read_progress() == {}
    with pytest.raises(WriteError, match=r"cannot be read just now .*; nothing was changed"):
        note_answer("02-bottom", 1, True)
    box = ask(BACK)
    assert box.check(box.posed.answer).right and "could not be kept" in box.face.standing
    monkeypatch.undo()
    assert (own_folder / FILE).read_bytes() == before and list(own_folder.iterdir()) == [own_folder / FILE]


KILLED = """
import os, sys
from shoplib.lessons import progress
at = sys.argv[1]
real = getattr(os, at)
def die(*given):
    os._exit(9)
setattr(os, at, die)
progress.note_answer("02-bottom", 1, True)
"""


@pytest.mark.parametrize("at", ["fsync", "replace"])
def test_a_kernel_killed_outright_in_a_save_loses_nothing_that_was_kept(own_folder, at):
    note_answer("02-back", 1, True)
    done = subprocess.run([sys.executable, "-c", KILLED, at], timeout=60)
    assert done.returncode == 9
    assert read_progress() == {"02-back": Tried(1, True)}
    assert note_answer("02-bottom", 1, True) == Tried(1, True)
    assert set(read_progress()) == {"02-back", "02-bottom"}


def test_it_can_be_cleared(own_folder):
    clear_progress()
    assert not own_folder.exists()
    note_answer("02-back", 1, True)
    clear_progress()
    assert read_progress() == {}


def test_the_box_keeps_what_was_judged_and_shows_it_again(own_folder):
    box = ask(BACK)
    box.check("three feet or so")
    assert read_progress() == {} and box.face.standing == ""
    box.check(box.posed.givens.texts["W"])
    assert box.face.standing == "not yet right, tried once"
    box.check(box.posed.answer)
    assert ask(BACK).face.standing == "right, tried 2 times"
    assert ask(BOTTOM).face.standing == ""


def test_what_was_right_in_inches_is_told_as_such_once_the_unit_is_another(own_folder):
    save_unit("in")
    box = ask(BACK)
    box.check(box.posed.answer)
    save_unit("mm")
    box = ask(BACK)
    assert box.face.standing == "right with its numbers in inches, tried once"
    box.check("1 mm")
    assert box.face.standing == "right with its numbers in inches, tried 2 times"
    box.check(box.posed.answer)
    assert box.face.standing == "right, tried 3 times"


def test_a_file_from_before_the_unit_was_kept_is_read(own_folder):
    own_folder.mkdir(exist_ok=True)
    row = f'{{"tries": 2, "right": true, "version": {BACK.version}}}'.encode()
    (own_folder / FILE).write_bytes(b'{"format": 1, "exercises": {"02-back": ' + row + b"}}")
    assert ask(BACK).face.standing == "right, tried 2 times"


def test_a_whole_set_is_kept_like_any_other(own_folder):
    box = ask(WHOLE_CASE)
    box.check({"bottom": "a yard"})
    assert read_progress() == {}
    box.check(box.posed.answer | {"side": "3 in"})
    box.check(box.posed.answer)
    assert read_progress() == {"02-whole-case": Tried(2, True, WHOLE_CASE.version, "in")}
    assert ask(WHOLE_CASE).face.standing == "right, tried 2 times"


def test_an_answer_is_judged_though_it_cannot_be_kept(own_folder, monkeypatch):
    def refuse(*_, **__):
        raise WriteError("The disk is full; nothing was written.")

    monkeypatch.setattr("shoplib.lessons.progress.write_files", refuse)
    box = ask(BACK)
    assert box.check(box.posed.answer).right
    assert box.face.standing == "This could not be kept. The disk is full; nothing was written."


def test_the_file_says_its_format(own_folder):
    note_answer("02-back", 1, True, unit="in")
    kept = json.loads((own_folder / FILE).read_text())
    assert kept == {"format": 1, "exercises": {"02-back": {"tries": 1, "right": True, "version": 1, "unit": "in"}}}
