"""The practice bench in real JupyterLab, walked once by the keyboard alone: measure, set, test, adjust, cut, look."""

import pytest

from shoplib.practice import measure, measure_sheet, set_depth, set_fence, set_stack, start, test_cut
from tests.browser.test_accessibility import grave_faults, theme

pytestmark = pytest.mark.browser

CELL = """
from shoplib.live.practice_panel import practice_panel

bench = practice_panel("in", "Noor")
bench
""".strip()
SETTINGS = {"Stack, width": "0.706", "Depth": "1/4", "Fence for the bottom": "1 1/2", "Fence for the shelf": "9"}


@pytest.fixture(scope="module")
def page(lab):
    opened = lab.open_cell(CELL, "bench.ipynb", height=900)
    yield opened
    opened.close()


@pytest.fixture
def bench(page):
    return page.page.locator(".shop-practice")


def tab_to(page, name):
    """Press Tab until what has the focus is called so: nothing but the keyboard is used."""
    for _ in range(60):
        page.page.keyboard.press("Tab")
        here = page.page.evaluate(
            "() => { const one = document.activeElement;"
            " return one.getAttribute('aria-label') || one.labels?.[0]?.textContent || one.textContent; }"
        )
        if here.replace("\xa0", " ").strip().startswith(name):
            return
    raise AssertionError(f"no Tab comes to {name!r}")


def press(page, name):
    tab_to(page, name)
    page.page.keyboard.press("Enter")
    page.settle()


def type_in(page, name, text):
    tab_to(page, name)
    page.page.keyboard.press("Control+a")
    page.page.keyboard.type(text)
    page.page.keyboard.press("Enter")
    page.settle()


def says(bench):
    return bench.get_by_role("status").inner_text().replace("\xa0", " ")


def back_to_the_sheet(bench):
    bench.get_by_role("button", name="Measure the sheet").focus()


def test_the_cautions_stand_above_the_first_control(bench):
    above = bench.locator(".shop-practice-cautions").bounding_box()
    first = bench.get_by_role("button", name="Measure the sheet").bounding_box()
    assert above["y"] + above["height"] <= first["y"]
    assert "Guard and spreader come off only" in bench.inner_text()  # in sight; all the others in a fold right below
    assert "featherboards or jigs and push blocks" in bench.locator(".shop-practice-cautions details").text_content()


def test_a_walk_by_keyboard_ends_with_the_case_as_it_was_cut(page, bench):
    session = measure_sheet(start("Noor").session).session
    back_to_the_sheet(bench)
    page.page.keyboard.press("Enter")
    page.settle()
    assert measure_sheet(start("Noor").session).said in bench.inner_text().replace("\xa0", " ")
    for name, text in SETTINGS.items():
        type_in(page, name, text)
    for do, text in ((set_stack, "0.706 in"), (set_depth, "1/4 in")):
        session = do(session, text).session
    for level, text in (("bottom", "1 1/2 in"), ("shelf", "9 in")):
        session = set_fence(session, text, level).session
    tab_to(page, "Push blocks")
    page.page.keyboard.press("Space")
    press(page, "Make a test cut")
    press(page, "Measure it")
    session = test_cut(session).session
    assert measure(session, "width").said in says(bench)
    press(page, "Try the fit")
    assert "The offcut in test cut 1" in says(bench)
    assert bench.get_by_role("table").locator("tbody tr").count() == 1

    back_to_the_sheet(bench)
    type_in(page, "Depth", "deep")
    assert "has no number" in says(bench)
    press(page, "Make a test cut")
    assert "First mend depth" in says(bench)
    back_to_the_sheet(bench)
    type_in(page, "Depth", "0.248")
    press(page, "Make a test cut")
    assert bench.get_by_role("table").locator("tbody tr").count() == 2

    tab_to(page, "goes over the cutter")
    page.page.keyboard.press("ArrowDown")
    page.settle()
    assert "its upper end to the fence" in says(bench)
    press(page, "Cut the pair")
    result = bench.locator(".shop-practice-result")
    told = result.inner_text().replace("\xa0", " ")
    assert "It wants mending." in told and "The upper end lay against the fence" in told
    assert "What a practised hand does" in told and result.get_by_role("img").count() >= 2
    assert "You made 2 test cuts" in told
    focused = page.page.evaluate("document.activeElement.textContent")
    assert "It wants mending." in focused  # a screen reader goes on here
    assert bench.get_by_role("button", name="Cut the pair").is_disabled()


def test_nothing_serious_light_and_dark_with_the_result_open(page, bench):
    bench.locator("summary").last.click()
    page.settle()
    for name in ("JupyterLab Light", "JupyterLab Dark"):
        theme(page, name)
        assert grave_faults(page) == [], name


@pytest.mark.parametrize("width", [1280, 800])
def test_nothing_sticks_out_of_the_page(page, bench, width):
    page.page.set_viewport_size({"width": width, "height": 900})
    page.settle()
    wide = bench.evaluate("one => [one.scrollWidth, one.clientWidth]")
    assert wide[0] <= wide[1]


def test_another_sheet_begins_at_its_first_control(page, bench):
    bench.get_by_role("button", name="Cut another").focus()
    page.page.keyboard.press("Enter")
    page.settle()
    assert bench.locator(".shop-practice-result").is_hidden()
    assert "Saw 1, sheet 2. Test cuts so far: 0." in bench.inner_text()
    assert page.page.evaluate("document.activeElement.textContent") == "Measure the sheet"
    assert bench.get_by_role("textbox", name="Depth").input_value() == "0.248"
    assert page.complaints == []
