"""The page on joinery allowances in real JupyterLab: other joints, a size asked why, exercises wrong and right."""

import pytest

from shoplib.lessons.choice import BEFORE_ANY
from shoplib.lessons.lesson_03 import TONGUE_SET, WIDTH
from shoplib.lessons.posed_set import pose_set
from tests.browser.learner import opened_and_run, wrong_then_right

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def page(lab):
    opened = opened_and_run(lab, "03_joinery_allowances.ipynb", awake=9)
    yield opened
    opened.close()


def text_of(box):
    return box.inner_text().replace("\xa0", " ")


def test_a_joint_follows_its_kind_and_depth_and_says_why(page):
    panel = page.page.locator(".shop-panel").first
    panel.get_by_role("combobox", name="Joint").select_option("tongue in a narrower dado")
    depth = panel.get_by_role("textbox", name="Depth of the cut, typed in")
    depth.fill("3/8")
    depth.press("Enter")
    page.settle()
    # 0.703 - 3/8 is 0.328, and 24 - 2 x 0.703 + 2 x 3/8 is 23.344.
    assert "0.328 in of wood left; the bottom gains 3/8 in at each end." in text_of(panel)
    size = panel.locator("button[data-ask='table/2/1']")
    assert size.inner_text() == "23 11/32 in"
    size.focus()
    page.page.keyboard.press("Enter")
    page.settle()
    assert "case width 24 in - 2 x thickness of case sheet 0.703 in + 2 x tongue depth" in text_of(panel)


def test_what_cannot_be_cut_is_told_and_the_last_joint_stays(page):
    panel = page.page.locator(".shop-panel").first
    panel.get_by_role("combobox", name="Joint").select_option("dado")
    for name, text in (("Depth of the cut", "5/8"), ("Measured thickness of the case sheet", "0.5")):
        box = panel.get_by_role("textbox", name=f"{name}, typed in")
        box.fill(text)
        box.press("Enter")
    page.settle()
    assert "the cut would go right through the left side" in text_of(panel)
    assert "Last picture that could be drawn" in text_of(panel)


def test_four_corners_and_their_cut_lists(page):
    corners = page.page.locator(".shop-panel").nth(1)
    cells = corners.get_by_role("row").filter(has_text="sides, length").locator("td").all_text_contents()
    assert cells == ["20 in", "20 in", "20 in", "19 3/32 in"]


def test_an_exercise_is_answered_wrong_and_right(page):
    wrong_then_right(page, WIDTH, "mean")


def test_three_joints_are_put_together(page):
    posed = pose_set(TONGUE_SET, BEFORE_ANY.learner, BEFORE_ANY.unit)
    box = page.page.locator(".shop-exercise", has_text=TONGUE_SET.title)
    for (_, label), text in zip(posed.fields, posed.answer.values(), strict=True):
        box.get_by_role("textbox", name=f"{label} in inches").fill(text)
    box.get_by_role("button", name="Check").click()
    page.settle()
    assert "Right." in box.get_by_role("status").inner_text()
    assert box.get_by_role("img").count() == 1
    assert page.complaints == []
