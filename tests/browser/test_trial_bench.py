"""The practice bench of a joint in real JupyterLab: cautions first, the first control in sight, a walk by keyboard."""

import pytest

from shoplib.measure import write_measured
from shoplib.practice.trial import begin
from tests.browser.test_accessibility import grave_faults, theme
from tests.browser.test_practice_bench import press, says, type_in

pytestmark = pytest.mark.browser

CELL = """
from shoplib.live.trial_panel import trial_panel

bench = trial_panel("half lap", "in", "Noor")
bench
""".strip()


@pytest.fixture(scope="module")
def page(lab):
    opened = lab.open_cell(CELL, "trial.ipynb", height=800)
    yield opened
    opened.close()


@pytest.fixture
def bench(page):
    return page.page.locator(".shop-practice")


def test_the_cautions_stand_first_and_the_first_control_is_in_sight(page, bench):
    above = bench.locator(".shop-practice-cautions").bounding_box()
    first = bench.get_by_role("button", name="Measure the boards").bounding_box()
    top = bench.bounding_box()["y"]
    assert above["y"] + above["height"] <= first["y"]
    assert first["y"] + first["height"] - top <= page.page.viewport_size["height"] - 140  # less what JupyterLab takes
    assert "push block" not in bench.inner_text()
    bench.get_by_text("cautions", exact=False).locator("visible=true").filter(has_text="All").first.click()
    assert "push block" in bench.inner_text()
    bench.locator("summary").first.click()


def test_a_walk_by_keyboard_ends_with_the_joint_as_it_was_cut(page, bench):
    session = begin("half lap", "Noor")
    bench.get_by_role("button", name="Measure the boards").focus()
    page.page.keyboard.press("Enter")
    page.settle()
    assert "The rail reads" in bench.inner_text()
    for scale in session.trial.scales:
        size = write_measured(scale.aim(session.usual, session.plan), session.style)
        type_in(page, scale.label, size.partition(" ")[0])
    press(page, "Cut a test joint")
    press(page, "Measure it")
    assert "The depth of the lap reads" in says(bench)
    press(page, "Put it together")
    assert "face" in says(bench)
    assert bench.get_by_role("table").locator("tbody tr").count() == 1
    press(page, "Cut the pair")
    result = bench.locator(".shop-practice-result")
    told = result.inner_text().replace("\xa0", " ")
    assert "What a practised hand does" in told and result.get_by_role("img").count() == 2
    assert "You cut 1 test joint;" in told
    assert "It " in page.page.evaluate("document.activeElement.textContent")  # a screen reader goes on here
    assert bench.get_by_role("button", name="Cut the pair").is_disabled()


def test_nothing_serious_light_and_dark_with_the_result_open(page, bench):
    for name in ("JupyterLab Light", "JupyterLab Dark"):
        theme(page, name)
        assert grave_faults(page) == [], name


@pytest.mark.parametrize("width", [1280, 800])
def test_the_whole_log_is_in_sight_without_scrolling_sideways(page, bench, width):
    page.page.set_viewport_size({"width": width, "height": 800})
    page.settle()
    log = bench.locator(".shop-practice-wide")
    wide = log.evaluate("one => [one.scrollWidth, one.clientWidth]")
    assert wide[0] <= wide[1]
    heads = log.locator("thead th").all_inner_texts()
    cells = log.locator("tbody :is(th, td)")
    assert heads[-1] == "Felt" and cells.count() == len(heads)
    shown = log.bounding_box()
    felt = cells.last.bounding_box()
    assert shown["x"] <= felt["x"] and felt["x"] + felt["width"] <= shown["x"] + shown["width"] + 1
    before = cells.evaluate_all("all => all.map((one) => getComputedStyle(one, '::before').content)")
    assert (before == [f'"{head}"' for head in heads]) == (width == 800)
    assert log.get_by_role("cell").count() == len(heads) - 1  # still a table to a screen reader


@pytest.mark.parametrize("width", [1280, 800])
def test_nothing_sticks_out_of_the_page(page, bench, width):
    page.page.set_viewport_size({"width": width, "height": 800})
    page.settle()
    wide = bench.evaluate("one => [one.scrollWidth, one.clientWidth]")
    assert wide[0] <= wide[1]
