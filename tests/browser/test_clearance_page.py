"""The page on drawer clearance as a learner meets it, in real JupyterLab."""

import re

import pytest

from shoplib.lessons.choice import BEFORE_ANY
from shoplib.lessons.lesson_04 import BOX_BOARDS, FRONT
from shoplib.lessons.posed_set import pose_set
from shoplib.measure import write_mm
from tests.browser.test_lessons import opened_and_run, wrong_then_right

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def page(lab):
    opened = opened_and_run(lab, "04_drawer_clearance.ipynb", awake=8)
    yield opened
    opened.close()


def enter(opened, panel, name, text):
    box = panel.get_by_role("textbox", name=f"{name}, typed in")
    box.fill(text)
    box.press("Enter")
    opened.settle()


def unfold(opened, panel):
    panel.get_by_role("button", name="Next").click()
    opened.settle()


def says(panel):
    return panel.locator(".shop-picture-says").first.text_content()


def test_the_box_follows_typing_keys_and_dragging(page):
    panel = page.panel()
    assert says(panel) == "The box is 15 in wide outside: it goes together dry."
    enter(page, panel, "Opening, at the front", "15 13/16")
    assert says(panel).startswith("The box is 14 13/16 in wide")
    slider = panel.get_by_role("slider", name="Opening, at the front")
    slider.press("ArrowRight")
    page.settle()
    assert says(panel).startswith("The box is 14 27/32 in wide")
    slider.scroll_into_view_if_needed()
    box = slider.bounding_box()
    middle = box["y"] + box["height"] / 2
    page.page.mouse.move(box["x"] + box["width"] / 3, middle)
    page.page.mouse.down()
    page.page.mouse.move(box["x"] + box["width"] / 2, middle, steps=12)
    page.page.mouse.up()
    page.settle()
    width = re.match(r"The box is (\d+)", says(panel))
    assert width and int(width[1]) > 18
    enter(page, panel, "Opening, at the front", "16")


def test_a_taper_is_shimmed_and_a_number_says_why(page):
    panel = page.panel()
    unfold(page, panel)
    enter(page, panel, "Opening, at the back", "16 3/32")
    findings = panel.locator(".shop-findings:visible").first
    assert "3/64 in behind each slide" in findings.text_content()
    assert panel.locator("svg text", has_text=re.compile("^shim$")).first.is_visible()
    panel.locator("svg [data-ask]", has_text=re.compile("^15$")).first.click()
    page.settle()
    told = panel.locator(".shop-working").text_content()
    assert "opening of bay 1 drawer 1 measured at the back 16 3/32 in" in told


def test_what_cannot_be_built_keeps_the_last_picture(page):
    panel = page.panel()
    unfold(page, panel)
    enter(page, panel, "Depth of the corner rabbet", "5/8")
    assert says(panel).startswith("Depth of the corner rabbet: the cut would go right through")
    assert panel.locator(".shop-picture-stale").count()
    enter(page, panel, "Depth of the corner rabbet", "7/32")
    assert not panel.locator(".shop-picture-stale").count()


def test_an_exercise_wrong_and_then_right(page):
    wrong_then_right(page, FRONT, "offcut")


def test_a_whole_box_wrong_and_then_right(page):
    posed = pose_set(BOX_BOARDS, BEFORE_ANY.learner, BEFORE_ANY.unit)
    box = page.page.locator(".shop-exercise", has_text=BOX_BOARDS.title)
    sizes = {one.label: one.right(posed.case) for one in BOX_BOARDS.asked}
    slip = next(slip for one in BOX_BOARDS.asked for slip in one.slips if slip.id == "width-no-groove")
    for label, ticks in (sizes | {"Bottom, width": slip.rule(posed.givens)}).items():
        box.get_by_role("textbox", name=label).fill(f"{write_mm(ticks)} mm")
    box.get_by_role("button", name="Check").click()
    page.settle()
    said = box.get_by_role("status").inner_text().replace("\xa0", " ")
    assert "Not yet." in said and slip.says in said
    assert box.get_by_role("img").count()
    box.get_by_role("textbox", name="Bottom, width").fill(posed.answer["bottom_width"])
    box.get_by_role("button", name="Check").click()
    page.settle()
    assert "Right." in box.get_by_role("status").inner_text()
