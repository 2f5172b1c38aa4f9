"""Large type at the size of a projector: everything of ours grows, nothing lies on anything or is cut off."""

import shutil
from pathlib import Path

import pytest

from tests.browser.test_accessibility import grave_faults

pytestmark = pytest.mark.browser

NOTEBOOKS = Path(__file__).resolve().parents[2] / "notebooks"

SIZES = """() => {
  const size = (selector) => parseFloat(getComputedStyle(document.querySelector(selector)).fontSize);
  const text = document.querySelector('.shop-panel svg [data-ask]');
  return {
    drawing: text.getScreenCTM().a * parseFloat(getComputedStyle(text).fontSize),
    label: size('.shop-panel .shop-length-label'), field: size('.shop-panel .shop-length-box input'),
    message: size('.shop-panel .shop-picture-says'), table: size('.shop-panel td'), why: size('.shop-working li'),
    exercise: size('.shop-exercise p'), answer: size('.shop-exercise input'), button: size('.shop-exercise button'),
    progress: size('details summary'), sum: size('.jp-RenderedHTMLCommon table td'),
  };
}"""
"""Sizes of letters on the screen, in pixels, by what they stand in."""

CUT_OFF = """() => {
  const edge = document.querySelector('.jp-WindowedPanel-outer').getBoundingClientRect().right;
  return [...document.querySelectorAll('.shop-panel, .shop-exercise, .shop-panel table, details')]
    .filter(node => node.scrollWidth > node.clientWidth + 1 || node.getBoundingClientRect().right > edge)
    .map(node => node.outerHTML.slice(0, 100));
}"""


def run_and_ask(opened):
    opened.run_all(awake=5)
    opened.panel().get_by_role("button", name="length of bottom").first.click()
    opened.page.locator(".shop-working li").first.wait_for(timeout=20_000)
    opened.settle()
    return opened.page.evaluate(SIZES)


def test_everything_grows_and_nothing_serious_is_found(lab):
    shutil.copytree(NOTEBOOKS / "pictures", lab.work / "pictures", dirs_exist_ok=True)
    opened = lab.open(lab.copy(NOTEBOOKS / "00_start_here.ipynb"), width=1280, height=800)
    page = opened.page
    before = run_and_ask(opened)
    page.get_by_role("radio", name="large, for a projector").check()
    page.get_by_text("Type: large, for a projector, for all pages. Pages that are open").wait_for(timeout=20_000)
    after = run_and_ask(opened)
    grown = {what: after[what] / before[what] for what in before}
    assert {what: times for what, times in grown.items() if times < 1.4} == {}
    assert page.evaluate(CUT_OFF) == []
    panel = opened.panel()
    picture, table, controls = (
        panel.locator(part).first.bounding_box() for part in (".shop-panel-picture", "table", ".shop-panel-controls")
    )
    assert picture["y"] + picture["height"] <= table["y"] + 1
    assert controls["x"] + controls["width"] <= picture["x"] + 1
    assert grave_faults(opened) == []
    opened.close()
