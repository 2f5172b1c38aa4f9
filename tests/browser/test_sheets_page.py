"""The page from the cut list to the yard as a learner meets it, in real JupyterLab."""

import pytest

from shoplib.lessons.lesson_08 import BANDS, OFFCUT, STRIPS, WHOLE_LIST
from tests.browser.learner import opened_and_run, whole_set_wrong_then_right, wrong_then_right

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def page(lab):
    opened = opened_and_run(lab, "08_cut_list_and_sheets.ipynb", awake=10)
    yield opened
    opened.close()


def test_a_part_is_laid_by_hand_and_taken_back(page):
    panel = page.page.locator(".shop-practice-widget").first
    panel.scroll_into_view_if_needed()
    first = panel.get_by_role("radio").first
    assert first.is_checked()
    panel.get_by_role("button", name="Lay it there").click()
    page.settle()
    assert "Laid on sheet 1: 1 x side" in panel.inner_text().replace("\xa0", " ")
    panel.get_by_role("button", name="Take the last move back").click()
    page.settle()
    assert "The last move is taken back." in panel.inner_text()


def test_the_worked_sheets_are_pictures_with_words(page):
    drawn = page.page.locator('img[alt^="case sheet "]')
    drawn.first.scroll_into_view_if_needed()
    page.settle()
    assert "seen flat, with 6 parts" in drawn.first.get_attribute("alt")


def test_a_length_wrong_and_then_right(page):
    wrong_then_right(page, OFFCUT, "no-kerf")


def test_hints_come_to_an_end_and_the_kernel_is_not_waited_for(page):
    """Pressed once more than there are hints, and the working twice: nothing changes, and no wait is announced."""
    box = page.page.locator(".shop-exercise", has_text=BANDS.title)
    box.scroll_into_view_if_needed()
    hint = box.get_by_role("button", name="int")
    for _ in range(len(BANDS.hints)):
        assert hint.get_attribute("aria-disabled") == "false"
        hint.click()
        page.settle()
    assert hint.inner_text() == "No more hints" and hint.get_attribute("aria-disabled") == "true"
    hint.click(force=True)
    for _ in range(2):
        box.get_by_role("button", name="Show working").click()
    page.page.wait_for_timeout(2_000)  # a wait is announced after 1.5 seconds
    assert "Waiting for the kernel" not in box.inner_text()


def test_a_count_wrong_and_then_right(page):
    box = page.page.locator(".shop-exercise", has_text=STRIPS.title)
    assert box.get_by_role("textbox").get_attribute("aria-label") == "Your answer in strips"
    wrong_then_right(page, STRIPS, "trim-left-out")


def test_the_whole_list_is_put_together(page):
    whole_set_wrong_then_right(page, WHOLE_LIST, "shelf-no-divider")


def test_a_project_is_printed_by_the_button(page, lab):
    """The files are there, and the links lead to them."""
    button = page.page.get_by_role("button", name="Print for the bench")
    button.scroll_into_view_if_needed()
    page.page.get_by_label("Project", exact=True).select_option("example: wheel wall drawers")
    page.page.get_by_label("Date", exact=True).fill("29 May")
    button.click()
    link = page.page.get_by_role("link", name="plan_set.pdf")
    link.wait_for(timeout=90_000)
    assert "my_prints/examples/wheel_wall_drawers/plan_set.pdf" in link.get_attribute("href")
    where = "Printed into the folder my_prints/examples/wheel_wall_drawers, in the list of files on the left"
    told = page.page.locator('[role="status"]', has_text=where)
    assert "the dry-fit stops at nothing" in told.inner_text()
    assert (lab.work / "my_prints" / "examples" / "wheel_wall_drawers" / "plan_set.pdf").read_bytes()[:5] == b"%PDF-"
