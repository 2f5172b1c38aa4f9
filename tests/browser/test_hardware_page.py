"""The page on hardware layout as a learner meets it, in real JupyterLab."""

import re

import pytest

from shoplib.lessons.hardware_set import SPACER_SET
from shoplib.lessons.lesson_06 import SPACER
from tests.browser.learner import (
    choose,
    enter,
    opened_and_run,
    says,
    unfold,
    whole_set_wrong_then_right,
    wrong_then_right,
)

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def page(lab):
    opened = opened_and_run(lab, "06_hardware_layout.ipynb", awake=9)
    yield opened
    opened.close()


def unfold_to(opened, panel, title):
    while title not in panel.locator(".shop-heading:visible").all_text_contents():
        unfold(opened, panel)


def test_the_spacers_follow_typing_and_keys(page):
    panel = page.panel()
    before = says(panel)
    assert before.startswith("Spacers ") and before.endswith("slides set back 1/16 in.")
    for _ in range(4):
        panel.get_by_role("slider", name="Gap between fronts", exact=True).press("ArrowRight")
    page.settle()
    assert panel.get_by_role("textbox", name="Gap between fronts, typed in").input_value() == "1/4"
    assert says(panel) != before
    enter(page, panel, "Gap between fronts", "1/8")
    assert says(panel) == before


def test_an_inset_front_sets_the_slides_back_and_a_number_says_why(page):
    panel = page.panel()
    unfold_to(page, panel, "Overlay or inset")
    choose(page, panel, "Fronts", "inset, in the opening")
    # 0.703 + 1/16
    assert says(panel).endswith("slides set back 0.7655 in.")
    panel.locator("td [data-ask]", has_text=re.compile("^0.7655 in$")).first.click()
    page.settle()
    assert "thickness of front sheet 0.703 in" in panel.locator(".shop-working").text_content()


def test_what_meets_in_the_divider_is_told(page):
    panel = page.panel()
    unfold_to(page, panel, "The other face of the divider")
    choose(page, panel, "In bay 2", "as many drawers")
    assert "lie at one height on its two faces" in panel.locator(".shop-findings:visible").first.text_content()
    choose(page, panel, "In bay 2", "one drawer more")
    assert "Nothing meets" in panel.locator(".shop-findings:visible").first.text_content()


def test_a_list_of_tools_is_typed(page):
    panel = page.panel()
    unfold_to(page, panel, "Tools on a panel")
    assert panel.get_by_role("group", name=re.compile("A panel 20 in wide with 4 tools")).first.is_visible()
    box = panel.get_by_label("Tools, each with its width, in inches")
    box.fill("pump 3, key 1/2")
    box.press("Tab")
    page.settle()
    # (20 - 3 1/2) / 3 = 5 1/2
    row = panel.get_by_role("row").filter(has_text=re.compile("^pump"))
    assert "5 1/2 in" in row.text_content() and "7 in" in row.text_content()
    box.fill("pump")
    box.press("Tab")
    page.settle()
    assert "has no width" in says(panel)
    box.fill("pump 3")
    box.press("Tab")
    page.settle()
    assert says(panel).startswith("Spacers ")


def test_an_exercise_wrong_and_then_right(page):
    wrong_then_right(page, SPACER, "gaps-left-out")


def test_spacers_and_gauge_wrong_and_then_right(page):
    whole_set_wrong_then_right(page, SPACER_SET, "second-gap-forgotten")
