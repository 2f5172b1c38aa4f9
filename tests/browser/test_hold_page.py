"""The page on what holds as a learner meets it, in real JupyterLab."""

import re

import pytest

from shoplib.lessons.lesson_07 import DIVIDER
from tests.browser.learner import choose, enter, opened_and_run, says, unfold, wrong_then_right

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def page(lab):
    opened = opened_and_run(lab, "07_will_it_hold.ipynb", awake=11)
    yield opened
    opened.close()


def second(page):
    return page.page.locator(".shop-panel").nth(1)


def test_the_sag_follows_typing_and_a_size_says_why(page):
    panel = page.panel()
    before = says(panel)
    assert before.startswith("In years it comes to sag ")
    enter(page, panel, "Span between supports", "18")
    assert says(panel) != before and "0.094 in is allowed" in says(panel)
    enter(page, panel, "Span between supports", "36")
    assert says(panel) == before
    panel.locator("td [data-ask]", has_text=re.compile("^0.1875 in$")).first.click()
    page.settle()
    assert "KCMA A161.1" in panel.locator(".shop-working").text_content()


def test_load_and_a_drawer_bottom_unfold(page):
    panel = page.panel()
    unfold(page, panel)
    choose(page, panel, "On it, spread evenly", "40 lb/ft2")
    found = panel.locator(".shop-findings:visible").first.text_content()
    assert "more than is allowed, even with the stiffest figure" in found
    unfold(page, panel)
    choose(page, panel, "This is", "a drawer bottom")
    assert not panel.get_by_label("At its ends it is").is_visible()


def test_drawers_are_pulled_out_until_the_case_goes_over(page):
    panel = second(page)
    panel.scroll_into_view_if_needed()
    page.settle()
    assert "stands, held" in says(panel)
    choose(page, panel, "Drawers open", "4")
    assert says(panel) == "With 4 of 4 drawers open it goes over."
    assert "Fasten it to the wall" in panel.locator(".shop-findings:visible").first.text_content()


def test_screws_say_what_they_hold_and_nothing_where_nothing_was_read(page):
    panel = page.page.locator(".shop-panel").nth(2)
    panel.scroll_into_view_if_needed()
    page.settle()
    assert says(panel).startswith("With 0.547 in of thread in the wood, 2 screws may be asked for ")
    choose(page, panel, "Into", "MDF")
    assert says(panel).startswith("For screws in MDF no figure was read")
    choose(page, panel, "Into", "sugar maple")
    panel.locator("td [data-ask]", has_text=re.compile("^0.547 in$")).first.click()
    page.settle()
    assert "screw 1 1/4 in - board that it goes through 0.703 in" in panel.locator(".shop-working").text_content()


def test_wood_through_the_year_follows_its_width(page):
    panel = page.page.locator(".shop-panel").nth(3)
    panel.scroll_into_view_if_needed()
    page.settle()
    assert says(panel).startswith("Leave 7/64 in in each groove:")
    enter(page, panel, "Size across the grain, as made", "28")
    assert says(panel).startswith("Leave 11/64 in in each groove:")
    assert "Make each groove more than" in panel.locator(".shop-findings:visible").first.text_content()


def test_an_exercise_wrong_and_then_right(page):
    wrong_then_right(page, DIVIDER, "at-once")
