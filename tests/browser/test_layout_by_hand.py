"""A sheet laid out by hand in real JupyterLab: by the keyboard alone, by pointing, narrow and wide, light and dark."""

import pytest

from tests.browser.test_accessibility import grave_faults, theme
from tests.browser.test_practice_bench import tab_to

pytestmark = pytest.mark.browser

CELL = """
from shoplib.layout.pieces import Job, Part, Stock
from shoplib.live.layout_panel import layout_panel
from shoplib.measure import INCH

shelf, rail = Part("shelf", 30 * INCH, 12 * INCH, 4), Part("rail", 20 * INCH, 4 * INCH, 3, may_turn=True)
sheet = Stock("plywood", 66 * INCH, 30 * INCH, cost=1, trim_ends=INCH // 4, trim_edges=INCH // 4)
panel = layout_panel("in", Job((shelf, rail), (sheet,), INCH // 8)%s)
panel
""".strip()


@pytest.fixture(scope="module")
def page(lab):
    opened = lab.open_cell(CELL % "", "by_hand.ipynb", height=900)
    yield opened
    opened.close()


@pytest.fixture
def panel(page):
    return page.page.locator(".shop-layout")


def key(page, *names):
    for name in names:
        page.page.keyboard.press(name)
        page.settle()


def focused(page):
    return page.page.evaluate(
        "() => { const one = document.activeElement; return (one.labels?.[0] ?? one).textContent; }"
    ).replace("\xa0", " ")


def says(panel):
    return " ".join(panel.get_by_role("status").inner_text().split())


def figure(panel, name):
    cells = panel.locator(f".shop-practice-table tr:has(th:has-text('{name}')) td")
    return cells.all_inner_texts()


def test_a_whole_sheet_is_laid_out_with_the_keyboard_only(page, panel):
    """Nothing is clicked: parts and places are chosen by arrows, laid by Enter, taken back, and laid again."""
    page.page.locator(".jp-Notebook").first.focus()
    tab_to(page, "A shelf")
    tab_to(page, "Lay as many as the strip holds")
    key(page, "Enter")
    assert says(panel) == "Laid on sheet 1: 2 x shelf, freed by a rip at 12 in and a crosscut at 30 in, 2 times."
    assert focused(page).startswith("Lay as many")  # the focus stays where it is used again
    tab_to_back(page, "b: a new strip beside it")  # the place that is chosen by itself
    key(page, "ArrowDown")
    assert focused(page).startswith("a new sheet")
    key(page, "ArrowUp")
    assert focused(page).startswith("b: a new strip")
    tab_to(page, "Lay it there")
    key(page, "Enter")
    assert "1 x shelf" in says(panel) and figure(panel, "Sheets in use")[0] == "1"
    tab_to(page, "Take the last move back")
    key(page, "Space")
    assert says(panel) == "The last move is taken back."
    tab_to_back(page, "Lay as many as the strip holds")
    key(page, "Enter")
    tab_to_back(page, "B rail")
    key(page, "Tab", "ArrowDown")
    tab_to(page, "Turned")
    key(page, "Space", "Space")
    tab_to(page, "Lay as many as the strip holds")
    for _ in range(3):
        key(page, "Enter")
    assert "All parts lie: what came of it stands below." in says(panel) or "Nothing is left" in says(panel)
    result = panel.get_by_role("region", name="What came of it")
    assert "As few sheets as the best found." in result.inner_text()
    assert figure(panel, "Sheets in use") == ["1", "1 (any layout buys at least 1)"]
    assert len(figure(panel, "Fence settings")) == 2


def tab_to_back(page, name):
    for _ in range(40):
        page.page.keyboard.press("Shift+Tab")
        if focused(page).strip().startswith(name):
            return
    raise AssertionError(f"no Tab comes back to {name!r}")


def test_what_is_refused_is_said_with_its_amounts(page, panel):
    panel.get_by_role("button", name="Start again").click()
    panel.get_by_role("button", name="Lay it there").click()
    page.settle()
    panel.get_by_label("Turned: its grain across the sheet").check()
    panel.get_by_role("button", name="Lay it there").click()
    page.settle()
    assert says(panel) == (
        "The shelf, 30 in x 12 in, cannot be turned: its grain runs along its 30 in and must run along the sheet."
    )
    panel.get_by_label("Turned: its grain across the sheet").uncheck()
    kerf = panel.get_by_role("textbox", name="Kerf, typed in")
    kerf.fill("4 mm")
    kerf.press("Enter")
    page.settle()
    assert says(panel) == "Kerf: 5/32 in. All that was laid still fits."
    kerf.fill("deep")
    kerf.press("Enter")
    page.settle()
    assert kerf.get_attribute("aria-invalid") == "true" and "stands at 5/32 in" in panel.inner_text()


def test_a_free_place_is_pointed_at_in_the_drawing(page, panel):
    before = figure(panel, "Free area on them")[0]
    panel.locator(".shop-layout-picture path", has=page.page.locator("title", has_text="offcut b")).first.click()
    page.settle()
    assert says(panel).startswith("Laid on sheet 1: 1 x shelf") and figure(panel, "Free area on them")[0] != before
    panel.locator(".shop-layout-picture path", has=page.page.locator("title", has_text="shelf")).first.click()
    page.settle()
    assert says(panel) == "That is not free: point at a place with a small letter."


def test_one_of_the_best_and_another_try(page, panel):
    panel.get_by_role("button", name="Show one of the best").focus()
    key(page, "Enter")
    assert says(panel).endswith("Yours is kept.") and focused(page) == "Back to my layout"
    assert panel.get_by_role("button", name="Lay it there").is_disabled()
    key(page, "Enter")
    assert says(panel) == "This is your layout, as you left it." and focused(page) == "Show one of the best"
    key(page, "Enter", "Tab", "Enter")
    assert says(panel) == "All parts are back in the list." and focused(page).startswith("A shelf")
    assert figure(panel, "Sheets in use")[0] == "0"


def test_nothing_serious_light_and_dark(page, panel):
    panel.get_by_role("button", name="Lay as many as the strip holds").click()
    panel.locator("summary").click()
    page.settle()
    try:
        for name in ("JupyterLab Dark", "JupyterLab Light"):
            theme(page, name)
            assert grave_faults(page) == [], name
    finally:
        panel.locator("summary").click()


@pytest.mark.parametrize("width", [1920, 1280, 800])
def test_nothing_sticks_out_and_the_sheet_stays_in_sight(page, panel, width):
    page.page.set_viewport_size({"width": width, "height": 900})
    page.settle()
    wide = panel.evaluate("one => [one.scrollWidth, one.clientWidth]")
    assert wide[0] <= wide[1]
    lay = panel.get_by_role("button", name="Lay it there")
    panel.get_by_role("textbox", name="Kerf, typed in").focus()  # far down: the page scrolls
    lay.focus()
    page.settle()
    window = page.page.locator(".jp-WindowedPanel-outer").bounding_box()
    drawn, button = panel.locator(".shop-practice-seen svg").bounding_box(), lay.bounding_box()
    assert drawn["y"] >= window["y"] - 1 and drawn["y"] + drawn["height"] <= window["y"] + window["height"] + 1
    beside = drawn["x"] > button["x"] + button["width"]
    assert beside or button["y"] >= drawn["y"] + drawn["height"]  # what has the focus is not under the sheet


def test_large_type_makes_letters_of_controls_and_drawing_larger(lab, page, panel):
    def sizes(where):
        letters = where.locator(".shop-practice-seen svg text").first
        return (where.evaluate("one => parseFloat(getComputedStyle(one).fontSize)"),
                letters.evaluate("one => one.getBoundingClientRect().height"))

    large = lab.open_cell(CELL % ", large=True", "by_hand_large.ipynb", height=900)
    for opened in (page, large):
        opened.page.set_viewport_size({"width": 1920, "height": 1000})
        opened.settle()
    plain, grown = sizes(panel), sizes(large.page.locator(".shop-layout"))
    assert grown[0] == pytest.approx(1.5 * plain[0], abs=0.1) and grown[1] > 1.2 * plain[1]
    wide = large.page.locator(".shop-layout").evaluate("one => [one.scrollWidth, one.clientWidth]")
    assert wide[0] <= wide[1]
    large.close()


def test_it_complains_of_nothing(page):
    assert page.complaints == []
