"""The drill without a browser: what is pressed, what is said, what counts, and that nothing is told too early."""

import json
import re

import pytest

from shoplib.lessons import page_01
from shoplib.lessons.choice import save_unit
from shoplib.lessons.drill import MARKS, drill_readings
from shoplib.lessons.progress import read_progress


@pytest.fixture
def own_folder(tmp_path, monkeypatch):
    monkeypatch.setenv("SHOPLIB_WORKBOOK", str(tmp_path / "kept"))
    return tmp_path / "kept"


@pytest.fixture(params=["in", "mm"])
def box(request, own_folder):
    save_unit(request.param)
    return page_01.drill()


def press(box, what, answer=""):
    box.face._handle_custom_msg({"press": what, "answer": answer}, [])


def number(box):
    return box.asked.answer.removesuffix(f" {box.face.unit}")


def test_a_round_is_ten_readings_each_answered_from_the_keyboard(box):
    for count in range(1, 11):
        assert box.face.place == f"Reading {count} of 10" and not box.face.answered
        press(box, "check", number(box))
        assert box.face.said["kind"] == "right" and box.face.answered
        press(box, "check", number(box))  # once more changes nothing
        if count < 10:
            press(box, "next")
    assert "All 10 are done, 10 of them right at the first try" in box.face.done
    assert box.face.standing.startswith("right") and read_progress()["01-drill"].right
    before = box.asked.answer
    press(box, "next")
    assert box.face.place == "Reading 1 of 10" and box.face.done == "" and box.round == 1
    assert [each.answer for each in box.questions] != [before]


def test_wrong_or_told_does_not_count_as_at_the_first_try(box):
    press(box, "check", "1")
    assert box.face.said["kind"] in ("other", "slip") and not box.face.answered
    press(box, "next")
    assert box.face.place == "Reading 1 of 10"  # not before it is right, or told
    press(box, "check", number(box))
    press(box, "next")
    press(box, "show")
    assert box.face.answered and box.asked.answer in " ".join(box.face.said["parts"])
    for _ in range(8):
        press(box, "next")
        press(box, "check", number(box))
    assert "8 of them right at the first try" in box.face.done


@pytest.mark.parametrize("typed", ["", "a bit", "12 13", "<b>", "-3 in", "9" * 400])
def test_what_is_no_length_does_not_count(box, typed):
    press(box, "check", typed)
    assert box.face.said["kind"] in ("not tried", "not a length") and not box.face.answered
    assert read_progress() == {}
    press(box, "check", number(box))
    assert box.at_once == 1


def test_malformed_presses_change_nothing(box):
    for content in ({}, {"press": "dance"}, {"press": "check"}, {"press": "check", "answer": None}):
        box.face._handle_custom_msg(content, [])
    assert box.face.place == "Reading 1 of 10" and not box.face.answered


def test_nothing_of_the_answer_is_sent_before_it_is_found_or_asked_for(box):
    for _ in range(10):
        sent = json.dumps({key: value for key, value in box.face.get_state().items() if not key.startswith("_")})
        said = re.sub(r"base64,[^\"]+", "", sent)
        assert box.asked.answer not in said and box.asked.answer not in box.asked.picture.svg
        press(box, "show")
        press(box, "next")


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_readings_are_a_learners_own_stand_on_a_mark_and_slips_are_named(unit):
    seen = set()
    for learner in range(40):
        readings = drill_readings(f"learner {learner}", unit)
        assert [f"{each.style}" for each in readings] == [f"Style({unit!r}, {marks!r})" for marks in MARKS[unit]]
        seen.add(tuple(each.answer for each in readings))
        for each in readings:
            assert each.ticks % each.style.step == 0 and each.check(each.answer).right
            said = {each.check(f"{float(ticks / 80_000):.7f} mm").name for _, ticks, _, _ in each._slips()}
            assert len(said) >= 3 and "other" not in said and "right" not in said
            for _, ticks, _, _ in each._slips():
                told = str(each.check(f"{float(ticks / 80_000):.7f} mm"))
                assert not re.search(rf"(?<![\d./ ]){re.escape(each.answer)}(?![\d/.])", told)
    assert len(seen) == 40
    assert drill_readings("Noor", unit) == drill_readings("Noor", unit) != drill_readings("Noor", unit, 1)
