"""The page on measuring in real JupyterLab: read, halve, pick a number, drill by keyboard, answer wrong and right."""

import pytest

from shoplib.lessons.choice import BEFORE_ANY
from shoplib.lessons.drill import drill_readings
from shoplib.lessons.lesson_01 import EQUAL, ONE_STRIP
from shoplib.lessons.posed_set import pose_set
from tests.browser.learner import opened_and_run, wrong_then_right

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def page(lab):
    opened = opened_and_run(lab, "01_measuring.ipynb", awake=11)
    yield opened
    opened.close()


def panel(page, heading):
    return page.page.locator(".shop-panel", has_text=heading).first


def test_the_tape_reads_itself_out_and_a_half_says_why(page):
    tape = panel(page, "A tape and a pointer")
    pointer = tape.get_by_role("textbox", name="Pointer, typed in")
    pointer.fill("4-7/16")
    pointer.press("Enter")
    page.settle()
    assert "4 inches, then a quarter, then an eighth, then a sixteenth" in tape.inner_text().replace("\xa0", " ")
    tape.get_by_role("button", name="Next: halves").click()
    page.settle()
    half = tape.locator("button[data-ask='table/1/1']")
    assert half.inner_text() == "2 7/32 in"
    half.focus()
    page.page.keyboard.press("Enter")
    page.settle()
    assert "half 2 7/32 in = half of pointer 4 7/16 in" in tape.inner_text().replace("\xa0", " ")


def test_the_drill_goes_on_by_the_keyboard_alone(page):
    drill = page.page.locator(".shop-drill")
    readings = drill_readings(BEFORE_ANY.learner, BEFORE_ANY.unit)
    drill.get_by_role("textbox").focus()
    page.page.keyboard.type("1/8")
    page.page.keyboard.press("Enter")
    page.settle()
    assert "Not yet." in drill.inner_text() and "Reading 1 of 10" in drill.inner_text()
    for number, reading in enumerate(readings, 1):
        assert f"Reading {number} of 10" in drill.inner_text()
        page.page.keyboard.press("Control+a")
        page.page.keyboard.type(reading.answer.removesuffix(" in"))
        page.page.keyboard.press("Enter")
        page.settle()
        assert "Right." in drill.inner_text()
        if number < len(readings):
            page.page.keyboard.press("Enter")
            page.settle()
    assert "All 10 are done, 9 of them right at the first try" in drill.inner_text()


def test_a_sheet_outside_its_standard_is_told(page):
    sheet = panel(page, "A sheet and two readings")
    reading = sheet.get_by_role("textbox", name="Near left, typed in")
    reading.fill("0.703")
    reading.press("Enter")
    page.settle()
    assert "23/32 in would allow what was read" in sheet.inner_text().replace("\xa0", " ")


def test_the_saw_says_what_the_piece_loses(page):
    saw = panel(page, "A line and a saw")
    saw.get_by_role("combobox", name="Saw").select_option("on the line")
    page.settle()
    assert "comes out 11 15/16 in: 1/16 in short of the line" in saw.text_content().replace("\xa0", " ")


def test_an_exercise_is_answered_wrong_and_right(page):
    wrong_then_right(page, EQUAL, "no-kerf")


def test_a_box_out_of_one_strip_is_put_together(page):
    posed = pose_set(ONE_STRIP, BEFORE_ANY.learner, BEFORE_ANY.unit)
    box = page.page.locator(".shop-exercise", has_text=ONE_STRIP.title)
    for (_, label), text in zip(posed.fields, posed.answer.values(), strict=True):
        box.get_by_role("textbox", name=f"{label} in inches").fill(text)
    box.get_by_role("button", name="Check").click()
    page.settle()
    assert "Right." in box.get_by_role("status").inner_text()
    assert box.get_by_role("img").count() == 1
    assert page.complaints == []
