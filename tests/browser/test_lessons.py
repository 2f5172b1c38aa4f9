"""The pages as a learner meets them, in real JupyterLab: run all, type, press keys, answer wrong and right."""

import re
import shutil

import pytest

from shoplib.lessons.lesson_00 import FOLLOWS
from shoplib.lessons.lesson_02 import BACK, BOTTOM
from shoplib.lessons.lesson_04 import BOX_BOARDS, FRONT
from tests.browser.learner import (
    answer,
    enter,
    opened_and_run,
    says,
    unfold,
    whole_set_wrong_then_right,
    wrong_then_right,
)

pytestmark = pytest.mark.browser

SLOW_MACHINE = 250
"""Milliseconds from key to pixels that a busy machine may take; on a quiet one the aim is 120."""


@pytest.fixture(scope="module")
def start_page(lab):
    opened = opened_and_run(lab, "00_start_here.ipynb", awake=4)
    yield opened
    opened.close()


@pytest.fixture(scope="module")
def sizing_page(lab):
    opened = opened_and_run(lab, "02_carcass_sizing.ipynb", awake=8)
    yield opened
    opened.close()


@pytest.fixture(scope="module")
def clearance_page(lab):
    opened = opened_and_run(lab, "04_drawer_clearance.ipynb", awake=8)
    yield opened
    opened.close()


def row_of(panel, board):
    return panel.get_by_role("row").filter(has_text=re.compile(rf"^{board}")).locator("td").all_text_contents()


def test_the_start_page_shows_how_a_page_is_run(start_page):
    picture = start_page.page.get_by_role("img", name="Run All Cells").first
    assert picture.evaluate("node => node.decode().then(() => node.naturalWidth)") > 500


def test_the_first_slider_moves_the_bottom(start_page):
    panel = start_page.panel()
    enter(start_page, panel, "Width", "30 in")
    assert row_of(panel, "bottom")[1] == "29 3/32 in"
    panel.get_by_role("slider", name="Width").press("PageUp")
    start_page.settle()
    assert row_of(panel, "bottom")[1] == "30 3/32 in"
    enter(start_page, panel, "Width", "635 mm")
    assert row_of(panel, "bottom")[1] == "24 3/32 in"


def test_a_mouse_drags_the_first_slider_and_a_number_says_why(start_page):
    panel = start_page.panel()
    enter(start_page, panel, "Width", "30 in")
    start_page.drag(panel.get_by_role("slider", name="Width"), 0.3, 0.6)
    width = panel.get_by_role("textbox", name="Width, typed in").input_value()
    assert 40 < int(width.split()[0]) < 56  # 0.6 of the way from 12 to 72 in is 48
    told = start_page.pick(panel, panel.get_by_role("button", name="length of bottom"))
    assert f"= case width {width} in - 2 x thickness of case sheet 0.703" in told


def test_the_first_answer(start_page):
    wrong_then_right(start_page, FOLLOWS, "outside")


def test_what_was_tried_is_shown_and_forgotten_by_keyboard_alone(start_page):
    page = start_page.page
    page.get_by_role("button", name="Look again").press("Enter")
    line = page.get_by_text("00 Start here: 1 of 1 right")
    line.wait_for(timeout=20_000)
    line.press("Enter")
    assert page.get_by_text(f"{FOLLOWS.title}: ✓ right, tried 2 times").is_visible()
    clear = page.get_by_role("button", name="Clear ...")
    says = page.get_by_text("Forget the 1 exercise that was tried?")
    clear.press("Enter")
    says.wait_for(timeout=20_000)
    start_page.settle()
    assert page.evaluate("document.activeElement.textContent") == "No, keep it"
    page.keyboard.press("Enter")
    page.get_by_text("Nothing was forgotten.").wait_for(timeout=20_000)
    assert line.is_visible()
    clear.press("Enter")
    says.wait_for(timeout=20_000)
    start_page.settle()
    page.keyboard.press("Shift+Tab")
    page.keyboard.press("Enter")
    page.get_by_text("Forgotten.").wait_for(timeout=20_000)
    assert page.get_by_text("00 Start here: 0 of 1 right").is_visible()


def test_a_choice_of_millimetres_holds_for_the_next_run(lab, start_page):
    start_page.page.get_by_role("radio", name="millimetres").check()
    start_page.page.get_by_text("Unit: millimetres, for all pages.").wait_for(timeout=20_000)
    assert (lab.work / ".workbook" / "choice.json").is_file()
    start_page.run_all(awake=4)
    box = start_page.page.get_by_role("textbox", name="Width, typed in millimetres")
    box.wait_for(timeout=20_000)
    panel = start_page.panel()
    enter(start_page, panel, "Width", "30 in")  # the other unit is read too
    assert box.input_value() == "762"
    start_page.page.get_by_role("radio", name="inches").check()
    start_page.page.get_by_text("Unit: inches, for all pages.").wait_for(timeout=20_000)
    shutil.rmtree(lab.work / ".workbook")


def test_the_sizing_panel_follows_typing_keys_and_what_cannot_be(sizing_page):
    panel = sizing_page.panel()
    enter(sizing_page, panel, "Width", "23 5/8 in")
    # 23 5/8 - 2 x 0.703 + 2 x 1/4 is 22.719, on the rule 22 23/32.
    assert row_of(panel, "bottom")[1] == "22 23/32 in"
    panel.get_by_role("slider", name="Width").press("ArrowRight")
    sizing_page.settle()
    assert row_of(panel, "bottom")[1] == "22 3/4 in"
    says = panel.locator(".shop-picture-says").first
    assert says.text_content() == "5 boards: it goes together dry."
    for label, text in (("Measured thickness of the sheet", "0.5"), ("Depth of the joint", "5/8")):
        box = panel.get_by_role("textbox", name=label)
        box.fill(text)
        box.press("Enter")
        sizing_page.settle()
    assert says.text_content().startswith("Depth of the joint: the cut would go right through the left side")
    assert panel.get_by_text("Last picture that could be drawn").first.is_visible()
    box.fill("1/4")
    box.press("Enter")
    sizing_page.settle()
    assert not panel.get_by_text("Last picture that could be drawn").first.is_visible()


def test_a_mouse_drags_the_sizing_panel_and_numbers_say_why_in_picture_and_sum(sizing_page):
    panel = sizing_page.panel()
    enter(sizing_page, panel, "Width", "24 in")
    sizing_page.drag(panel.get_by_role("slider", name="Width"), 0.2, 0.5)
    width = panel.get_by_role("textbox", name="Width, typed in").input_value()
    assert 36 < int(width.split()[0]) < 48  # half of the way from 12 to 72 in is 42
    whole = panel.locator("svg [data-ask]", has_text=re.compile(f"^{re.escape(width)}$")).first
    assert f"this size {width} in = case width {width} in" in sizing_page.pick(panel, whole)
    total = panel.locator(".shop-sums button").filter(has_text=re.compile(f"^{re.escape(width)} in$"))
    assert f"outside width over the sides {width} in" in sizing_page.pick(panel, total)


def test_every_group_unfolds_by_keyboard(sizing_page):
    panel = sizing_page.page.locator(".shop-panel").first
    for first in ("Height", "Number of bays", "Each bay holds", "Back", "Base", "Name"):
        panel.get_by_role("button", name="Next").press("Enter")
        sizing_page.settle()
        focused = sizing_page.page.evaluate(
            "() => (document.activeElement.labels?.[0] ?? document.activeElement).textContent"
        )
        assert focused == first
    assert not panel.get_by_role("button", name="Next").is_visible()


def test_a_case_is_kept_and_comes_back(lab, sizing_page):
    panel = sizing_page.page.locator(".shop-panel").first
    enter(sizing_page, panel, "Width", "28 in")
    name = panel.get_by_role("textbox", name="Name")
    name.fill("tool case")
    name.press("Tab")
    panel.get_by_role("button", name="Save").press("Enter")
    panel.get_by_text("Saved as tool case.toml.").wait_for(timeout=20_000)
    assert (lab.work / "my_projects" / "tool case.toml").is_file()
    enter(sizing_page, panel, "Width", "40 in")
    panel.get_by_role("button", name="Load").press("Enter")
    panel.get_by_text("tool case.toml is on the panel now.").wait_for(timeout=20_000)
    assert panel.get_by_role("textbox", name="Width, typed in").input_value() == "28"


@pytest.mark.parametrize("size", [(1280, 800), (1024, 700)])
def test_the_drawing_stays_in_sight_beside_each_control(sizing_page, size):
    page, panel = sizing_page.page, sizing_page.page.locator(".shop-panel").first
    page.set_viewport_size({"width": size[0], "height": size[1]})
    sizing_page.settle()
    view = page.locator(".jp-WindowedPanel-outer").first.bounding_box()
    try:
        for name in ("Width", "Depth of the joint", "Height", "Depth"):
            control = panel.get_by_role("slider", name=name, exact=True)
            control.focus()
            sizing_page.settle()
            drawing, slider = panel.locator("svg").first.bounding_box(), control.bounding_box()
            assert view["y"] - 1 <= drawing["y"]
            assert view["y"] <= slider["y"] and slider["y"] + slider["height"] <= view["y"] + view["height"] + 1
            beside = slider["x"] + slider["width"] <= drawing["x"]
            assert beside or slider["y"] >= drawing["y"] + drawing["height"]
            words = panel.locator("svg text").first
            assert words.evaluate("node => node.getBoundingClientRect().height") >= 9
    finally:
        page.set_viewport_size({"width": 1400, "height": 900})


def test_a_slip_and_the_right_answer(sizing_page):
    wrong_then_right(sizing_page, BOTTOM, "nominal")


@pytest.mark.parametrize("text", ["", "a bit", "3 kg"])
def test_an_answer_that_is_no_length_is_told_kindly(sizing_page, text):
    assert answer(sizing_page, BACK.title, text).startswith("\u25cb Not judged yet.")


def test_a_key_reaches_the_pixels_of_the_whole_case_in_time(sizing_page, capsys):
    panel = sizing_page.page.locator(".shop-panel").nth(1)
    slider = panel.get_by_role("slider", name="Width")
    times = sizing_page.key_to_pixels(slider, ["ArrowRight", "ArrowLeft"] * 12)
    with capsys.disabled():
        print(f"\n  key press to pixels, whole case: {times['pixels']:.0f} ms median (aim: 120 ms)")
    assert times["pixels"] <= SLOW_MACHINE


def test_the_box_follows_typing_keys_and_dragging(clearance_page):
    panel = clearance_page.panel()
    assert says(panel) == "The box is 15 in wide outside: it goes together dry."
    enter(clearance_page, panel, "Opening, at the front", "15 13/16")
    assert says(panel).startswith("The box is 14 13/16 in wide")
    slider = panel.get_by_role("slider", name="Opening, at the front")
    slider.press("ArrowRight")
    clearance_page.settle()
    assert says(panel).startswith("The box is 14 27/32 in wide")
    clearance_page.drag(slider, 1 / 3, 1 / 2)
    width = re.match(r"The box is (\d+)", says(panel))
    assert width and int(width[1]) > 18
    enter(clearance_page, panel, "Opening, at the front", "16")


def test_a_taper_is_shimmed_and_a_number_says_why(clearance_page):
    panel = clearance_page.panel()
    unfold(clearance_page, panel)
    enter(clearance_page, panel, "Opening, at the back", "16 3/32")
    findings = panel.locator(".shop-findings:visible").first
    assert "3/64 in behind each slide" in findings.text_content()
    assert panel.locator("svg text", has_text=re.compile("^shim$")).first.is_visible()
    told = clearance_page.pick(panel, panel.locator("svg [data-ask]", has_text=re.compile("^15$")).first)
    assert "opening of bay 1 drawer 1 measured at the back 16 3/32 in" in told


def test_what_cannot_be_built_keeps_the_last_picture(clearance_page):
    panel = clearance_page.panel()
    unfold(clearance_page, panel)
    enter(clearance_page, panel, "Depth of the corner rabbet", "5/8")
    assert says(panel).startswith("Depth of the corner rabbet: the cut would go right through")
    assert panel.locator(".shop-picture-stale").count()
    enter(clearance_page, panel, "Depth of the corner rabbet", "7/32")
    assert not panel.locator(".shop-picture-stale").count()


def test_an_exercise_of_drawers_wrong_and_then_right(clearance_page):
    wrong_then_right(clearance_page, FRONT, "offcut")


def test_a_whole_box_wrong_and_then_right(clearance_page):
    whole_set_wrong_then_right(clearance_page, BOX_BOARDS, "width-no-groove")


def test_pages_ask_nothing_of_the_network_and_raise_nothing(lab, start_page, sizing_page, clearance_page):
    assert lab.outside == []
    assert start_page.complaints == [] == sizing_page.complaints
    assert clearance_page.complaints == []
