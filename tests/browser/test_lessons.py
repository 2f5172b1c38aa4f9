"""The lessons in real JupyterLab, as a learner goes through them with mouse and keys."""

from pathlib import Path

import pytest

pytestmark = pytest.mark.browser

NOTEBOOKS = Path(__file__).parents[2] / "notebooks"
LOADED = 2.0
"""How many times slower than asked a busy test machine may be; the median is printed."""


@pytest.fixture(scope="module")
def start_page(lab):
    pictures = lab.work / "pictures"
    pictures.mkdir(exist_ok=True)
    for picture in (NOTEBOOKS / "pictures").iterdir():
        (pictures / picture.name).write_bytes(picture.read_bytes())
    page = lab.open(lab.copy(NOTEBOOKS / "00_start_here.ipynb"))
    page.run_all(awake=3)
    page.panel()
    yield page
    page.close()


@pytest.fixture(scope="module")
def sizing_page(lab):
    page = lab.open(lab.copy(NOTEBOOKS / "02_carcass_sizing.ipynb"))
    page.run_all(awake=7)
    page.panel()
    yield page
    page.close()


def panel_of(page, name: str):
    """The panel whose drawing names this."""
    panel = page.page.locator(".shop-panel", has=page.page.locator("svg title", has_text=name)).first
    panel.scroll_into_view_if_needed()
    return panel


def answer(page, number: int, text: str) -> str:
    """Type an answer into the exercise of that number on the page; gives what it says."""
    box = page.page.locator(".shop-exercise").nth(number)
    box.scroll_into_view_if_needed()
    field = box.get_by_role("textbox")
    field.fill(text)
    field.press("Enter")
    page.settle()
    return box.get_by_role("status").inner_text()


def test_the_first_slider_moves_the_bottom(start_page) -> None:
    panel = start_page.panel()
    before = panel.locator(".shop-table").inner_text()
    slider = panel.get_by_role("slider").first
    slider.press("PageUp")
    start_page.settle()
    assert panel.locator(".shop-table").inner_text() != before
    assert start_page.complaints == []


def test_the_start_page_shows_how_to_run_a_page(start_page) -> None:
    picture = start_page.page.locator("img[alt*='Run All Cells']").first
    picture.scroll_into_view_if_needed()
    assert picture.evaluate("image => image.complete && image.naturalWidth > 100")


def test_the_unit_is_asked_once_and_kept(start_page, lab) -> None:
    start_page.page.get_by_role("radio", name="inches").check()
    start_page.settle()
    assert (lab.work / ".workbook" / "choice.json").is_file()


def test_an_answer_without_a_unit_or_a_length_is_told_kindly(sizing_page) -> None:
    for text in ("", "a bit", "3 kg"):
        said = answer(sizing_page, 2, text)
        assert said and "Traceback" not in said and "Error" not in said


def test_a_typed_width_is_followed_in_both_units(sizing_page) -> None:
    panel = panel_of(sizing_page, "Work-room case")
    field = panel.get_by_role("textbox", name="Width, typed in inches")
    for typed, drawn in (("23 5/8 in", "23 5/8"), ("601 mm", "23 21/32")):
        field.fill(typed)
        field.press("Enter")
        sizing_page.settle()
        assert drawn in " ".join(panel.locator("svg text").all_text_contents())


def test_what_cannot_be_built_is_said_and_the_picture_stays(sizing_page) -> None:
    panel = panel_of(sizing_page, "Work-room case")
    for label, text in (("Measured thickness of the sheet", "0.5 in"), ("Depth of the joint", "5/8 in")):
        field = panel.get_by_role("textbox", name=f"{label}, typed in inches")
        field.fill(text)
        field.press("Enter")
        sizing_page.settle()
    assert panel.locator(".shop-picture-stale").count() == 1
    said = panel.locator(".shop-picture-says").inner_text()
    assert "through" in said and "carcass." not in said
    assert panel.locator("svg").count() >= 1
    field.fill("1/4 in")
    field.press("Enter")
    sizing_page.settle()
    assert panel.locator(".shop-picture-stale").count() == 0


def test_every_group_unfolds(sizing_page) -> None:
    panel = panel_of(sizing_page, "Work-room case")
    steps = 0
    while panel.get_by_role("button", name="Next").count() and steps < 10:
        button = panel.get_by_role("button", name="Next")
        if not button.is_visible():
            break
        button.click()
        sizing_page.settle()
        steps += 1
    assert steps == 5
    assert panel.get_by_role("combobox").count() >= 3


def test_a_key_press_in_the_whole_case_reaches_the_pixels_in_time(sizing_page, capsys) -> None:
    panel = panel_of(sizing_page, "Case under the truing bench")
    slider = panel.get_by_role("slider", name="Width")
    times = sizing_page.key_to_pixels(slider, ["ArrowLeft", "ArrowRight"] * 12)
    with capsys.disabled():
        print(f"\n  key press to pixels, whole case: {times['pixels']:.0f} ms median (asked: 120 ms)")
    assert times["pixels"] <= 120 * LOADED
