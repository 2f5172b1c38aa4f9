"""The page on fronts and gaps as a learner meets it, in real JupyterLab."""

import re

import pytest

from shoplib.lessons.lesson_05 import BAY_FRONTS, DIVIDER
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
    opened = opened_and_run(lab, "05_fronts_and_gaps.ipynb", awake=8)
    yield opened
    opened.close()


def test_the_fronts_follow_typing_and_keys(page):
    panel = page.panel()
    assert says(panel).endswith("every gap is 1/8 in.")
    enter(page, panel, "Opening, height", "24 1/2")
    # (24 1/2 - 4/8) / 3 = 8
    assert "8 in high" in says(panel)
    panel.get_by_role("slider", name="Gap", exact=True).press("ArrowRight")
    page.settle()
    assert says(panel).endswith("every gap is 5/32 in.")
    enter(page, panel, "Gap", "1/8")


def test_an_error_shows_at_the_last_gap_and_a_number_says_why(page):
    panel = page.panel()
    while "One part off" not in panel.locator(".shop-heading:visible").all_text_contents():
        unfold(page, panel)
    choose(page, panel, "Off", "lowest front too high")
    enter(page, panel, "By", "1/16")
    findings = panel.locator(".shop-findings:visible").first
    assert "It shows at 1 gap: front 3 to top" in findings.text_content()
    panel.locator("svg [data-ask]", has_text=re.compile("^1/16$")).first.click()
    page.settle()
    told = panel.locator(".shop-working").text_content()
    assert "what the part is off 1/16 in" in told
    choose(page, panel, "Off", "none")


def test_the_season_follows_its_sliders(page):
    panel = page.panel()
    unfold(page, panel)
    assert panel.get_by_role("img", name=re.compile("A chart over the relative humidity")).first.is_visible()
    slider = panel.get_by_role("slider", name="Humidity of the room, dampest")
    assert slider.get_attribute("aria-valuetext") == "60 %"
    slider.press("ArrowRight")
    page.settle()
    assert panel.get_by_role("row").filter(has_text="dampest, 61 %").count()
    box = panel.get_by_role("spinbutton", name="Humidity of the room, dampest, percent")
    box.fill("70")
    box.press("Enter")
    page.settle()
    assert panel.get_by_role("row").filter(has_text="dampest, 70 %").count()
    box.fill("99")
    box.press("Enter")
    page.settle()
    assert box.input_value() == "70"


def test_an_exercise_wrong_and_then_right(page):
    wrong_then_right(page, DIVIDER, "no-gap")


def test_the_fronts_of_a_bay_wrong_and_then_right(page):
    whole_set_wrong_then_right(page, BAY_FRONTS, "middle-gaps-between")
