"""Inches or millimetres: remembered once, and asked again wherever the file is no good."""

import json
import os

import pytest

from shoplib.documents.atomic import WriteError
from shoplib.lessons import ask as asking
from shoplib.lessons.choice import Choice, read_choice, save_unit, workbook_folder
from shoplib.lessons.lesson_02 import BOTTOM, THICKNESS


def test_nothing_is_chosen_before_the_first_time(own_folder):
    assert read_choice() is None
    assert not own_folder.exists()


def test_what_is_saved_is_read(own_folder, unit):
    saved = save_unit(unit)
    assert read_choice() == saved
    assert saved.unit == unit
    assert [path.name for path in own_folder.iterdir()] == ["choice.json"]


def test_a_learner_keeps_the_numbers_when_the_unit_changes(own_folder):
    assert save_unit("in").learner == save_unit("mm").learner


def test_two_workbooks_have_numbers_of_their_own(tmp_path):
    assert save_unit("in", tmp_path / "a").learner != save_unit("in", tmp_path / "b").learner


def test_the_folder_lies_hidden_beside_the_notebook(tmp_path, monkeypatch):
    monkeypatch.delenv("SHOPLIB_WORKBOOK", raising=False)
    monkeypatch.chdir(tmp_path)
    assert workbook_folder() == tmp_path / ".workbook"


BROKEN = {
    "empty": b"",
    "cut short": b'{"format": 1, "unit": "m',
    "no JSON": b"unit = in",
    "not UTF-8": b"\xff\xfe{}",
    "a list": b"[]",
    "a number": b"3",
    "null": b"null",
    "no unit": b'{"learner": "a"}',
    "unknown unit": b'{"unit": "cubits", "learner": "a"}',
    "unit of a wrong type": b'{"unit": ["in"], "learner": "a"}',
    "no learner": b'{"unit": "in"}',
    "empty learner": b'{"unit": "in", "learner": ""}',
    "learner of a wrong type": b'{"unit": "in", "learner": 3}',
    "nested too deep": b"[" * 100_000,
}


@pytest.mark.parametrize("content", BROKEN.values(), ids=BROKEN)
def test_a_broken_file_counts_as_no_choice_and_is_mended_by_choosing(own_folder, content):
    own_folder.mkdir()
    (own_folder / "choice.json").write_bytes(content)
    assert read_choice() is None
    assert "choose near the top of 00 Start here" in asking.ask(THICKNESS).face.note
    assert asking.ask(BOTTOM).face.note == ""  # once a page is enough
    assert "not chosen" in repr(asking.choose_unit())
    save_unit("mm")
    assert read_choice().unit == "mm"


def test_a_folder_in_the_place_of_the_file_counts_as_no_choice(own_folder):
    (own_folder / "choice.json").mkdir(parents=True)
    assert read_choice() is None


def test_a_crash_in_the_middle_of_saving_leaves_the_old_choice(own_folder, monkeypatch):
    before = save_unit("in")

    def crash(*_args, **_kwargs):
        raise KeyboardInterrupt

    monkeypatch.setattr(os, "replace", crash)
    with pytest.raises(KeyboardInterrupt):
        save_unit("mm")
    monkeypatch.undo()
    assert read_choice(own_folder) == before
    assert [path.name for path in own_folder.iterdir()] == ["choice.json"]


def test_another_unit_is_refused(own_folder):
    with pytest.raises(ValueError, match='"in" or "mm"'):
        save_unit("cm")
    assert not own_folder.exists()


def test_the_file_is_plain_text_that_says_what_it_is(own_folder):
    save_unit("mm")
    kept = json.loads((own_folder / "choice.json").read_text(encoding="utf-8"))
    assert kept.pop("learner")
    assert kept == {"format": 1, "unit": "mm"}


def test_exercises_follow_the_choice(own_folder):
    before = asking.ask(BOTTOM)
    assert before.posed.unit == "in"
    save_unit("mm")
    after = asking.ask(BOTTOM)
    assert after.posed.unit == "mm"
    assert " mm" in after.posed.question and " in wide" not in after.posed.question
    assert after.face.note == ""


def test_the_question_of_the_start_page_keeps_the_choice(own_folder):
    question = asking.choose_unit()
    question.buttons.value = "mm"  # what a click does
    assert read_choice().unit == "mm"
    assert "millimetres" in question.says
    assert repr(asking.choose_unit()) == "Unit: millimetres"


def test_a_choice_that_cannot_be_kept_is_told_in_a_sentence(own_folder, monkeypatch):
    def refuse(*_args):
        raise WriteError("The folder is read-only; choose another.")

    monkeypatch.setattr("shoplib.lessons.choice.write_files", refuse)
    question = asking.choose_unit()
    question.buttons.value = "mm"
    assert question.says == "The choice could not be kept. The folder is read-only; choose another."
    assert read_choice() is None


def test_a_choice_is_a_plain_value():
    assert Choice() == Choice("in", "workbook")
