"""Any size on a page can be picked, by pointer and by keyboard, and says why it is what it is."""

import shutil
from pathlib import Path

import pytest

pytestmark = pytest.mark.browser

NOTEBOOKS = Path(__file__).resolve().parents[2] / "notebooks"


@pytest.fixture(scope="module")
def page(lab):
    shutil.copytree(NOTEBOOKS / "pictures", lab.work / "pictures", dirs_exist_ok=True)
    opened = lab.open(lab.copy(NOTEBOOKS / "02_carcass_sizing.ipynb", "asking.ipynb"), height=900)
    opened.run_all(awake=7)
    yield opened
    opened.close()


@pytest.fixture
def panel(page):
    return page.panel()


@pytest.fixture
def says(page, panel):
    def words() -> str:
        page.settle()
        return panel.locator(".shop-working").inner_text()

    return words


def test_a_number_of_the_table(panel, says):
    panel.get_by_role("button", name="length of bottom").first.click()
    assert "= case width 34 1/2 in - 2 x " in says()


def test_it_follows_the_slider(page, panel, says):
    panel.get_by_role("button", name="length of bottom").first.click()
    says()
    box = panel.get_by_role("textbox", name="Width, typed in")
    box.fill("30")
    box.press("Enter")
    assert "= case width 30 in" in says()
    box.fill("34 1/2")
    box.press("Enter")
    page.settle()


def test_a_dimension_by_keyboard_alone(panel, says):
    first = panel.locator("svg [data-ask]").first
    first.focus()
    panel.page.keyboard.press("ArrowRight")
    moved = panel.page.evaluate("document.activeElement.getAttribute('data-ask')")
    assert moved and moved != first.get_attribute("data-ask")
    panel.page.keyboard.press("Enter")
    assert "this size" in says()
    panel.locator(".shop-working").get_by_role("button", name="Close").press("Enter")
    assert "Pick a number" in says()
    assert panel.page.evaluate("document.activeElement.getAttribute('data-ask')") == moved


def test_each_drawing_is_one_stop_for_tab(panel):
    for drawing in panel.locator(".shop-picture-figure svg").all():
        assert drawing.locator('[data-ask][tabindex="0"]').count() == 1


def test_a_worked_figure_of_a_saved_page_that_has_not_run(lab):
    """Its workings are folded, open from the keyboard, and are read as a list: no kernel is asked."""
    opened = lab.open(lab.copy(NOTEBOOKS / "02_carcass_sizing.ipynb", "saved.ipynb"), height=900)
    fold = opened.page.locator("details", has_text="bottom, length 33.594 in").first
    line = fold.get_by_role("listitem").filter(has_text="bottom, length")
    fold.locator("summary").wait_for()
    assert fold.locator("summary").inner_text() == "Why each size" and not line.is_visible()
    fold.locator("summary").focus()
    opened.page.keyboard.press("Enter")
    line.wait_for()
    assert " ".join(line.inner_text().split()).startswith(
        "bottom, length 33.594 in = case width 34 1/2 in - 2 x thickness of case sheet 0.703 in + 2 x rabbet depth"
    )
    opened.close()


def test_a_length_of_a_finding(panel, says):
    panel.locator('.shop-findings [data-ask^="finding/"]:visible').first.click()
    assert "this length" in says()


def test_the_line_above_the_picture_is_one_sentence_with_its_lengths_as_buttons(lab):
    opened = lab.open(lab.copy(NOTEBOOKS / "04_drawer_clearance.ipynb", "asking_line.ipynb"), height=900)
    opened.run_all(awake=5)
    panel = opened.panel()
    status = panel.locator(".shop-picture-says").first
    assert status.get_attribute("role") == "status"
    button = status.locator('[data-ask="message/0"]')
    button.scroll_into_view_if_needed()
    told, length = status.text_content(), button.text_content()
    assert told.startswith(f"The box is {length} wide outside: ")
    button.focus()
    panel.page.keyboard.press("Enter")
    opened.settle()
    assert f"this length {length} = " in panel.locator(".shop-working").inner_text()
    opened.close()
