"""Nothing of ours is cut off or covered, at the sizes of a plain and of a small screen, in ordinary and large type.

The sizes of windows are common ones, from memory.
"""

import shutil

import pytest

from shoplib.lessons.large_type import save_large
from tests.browser.learner import NOTEBOOKS

pytestmark = pytest.mark.browser

CUT = """() => {
  const seen = (node) => node.getClientRects().length > 0;
  const all = (selector) => [...document.querySelectorAll(selector)].filter(seen);
  const wide = all(
    '.shop-exercise, .shop-exercise-form, .shop-panel, .shop-panel .widget-html-content, .shop-table-room'
  ).filter((node) => node.scrollWidth > node.clientWidth + 1);
  const broken = all('.shop-whole').filter((node) => node.getClientRects().length > 1);
  const scrolled = all('.shop-panel-picture')
    .filter((node) => node.clientHeight && node.scrollHeight > node.clientHeight + 1);
  return [...wide, ...broken, ...scrolled].map((node) => node.outerHTML.slice(0, 120));
}"""

TABLE = """(room) => {
  const bar = getComputedStyle(room, '::-webkit-scrollbar').height;
  return [room.scrollWidth - room.clientWidth, parseFloat(bar), room.parentElement.scrollWidth, room.clientWidth];
}"""
"""What of a table is out of sight, how high the bar is that says so, and whether anything else would scroll."""

PLACES = """() => {
  const view = document.querySelector('.jp-WindowedPanel-outer').getBoundingClientRect();
  const box = (node) => { const r = node.getBoundingClientRect(); return [r.top, r.bottom, r.left, r.right]; };
  const panel = document.activeElement.closest('.shop-panel');
  return {
    view: [view.top, view.bottom], picture: box(panel.querySelector('.shop-panel-picture > .shop-picture')),
    focus: box(document.activeElement),
  };
}"""


CHOICE = """(select) => {
  const words = document.createElement('span');
  words.style.cssText = 'position: absolute; white-space: nowrap';
  words.textContent = select.selectedOptions[0].text;
  select.after(words);
  const style = getComputedStyle(select);
  const room = select.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
  words.style.font = style.font;
  const lines = Math.ceil(words.getBoundingClientRect().width / room);
  words.remove();
  return [lines, select.clientHeight / parseFloat(style.lineHeight)];
}"""
"""How many lines a choice needs, and for how many the list is high enough."""


def opened_in(lab, name, large, width, height):
    shutil.copytree(NOTEBOOKS / "pictures", lab.work / "pictures", dirs_exist_ok=True)
    if large:
        save_large(True, lab.work / ".workbook")  # as the start page does, `test_large_type.py`
    opened = lab.open(lab.copy(NOTEBOOKS / name), width, height)
    opened.run_all(awake=8)
    opened.settle()
    return opened


@pytest.mark.parametrize(("name", "large", "width", "height"), [
    ("02_carcass_sizing.ipynb", False, 1280, 800), ("04_drawer_clearance.ipynb", False, 1024, 700),
    ("02_carcass_sizing.ipynb", False, 1024, 700), ("02_carcass_sizing.ipynb", True, 1024, 700),
    ("06_hardware_layout.ipynb", True, 1024, 700),
])
def test_nothing_is_cut_off_and_no_control_with_the_focus_is_covered(lab, name, large, width, height):
    opened = opened_in(lab, name, large, width, height)
    try:
        assert opened.page.evaluate(CUT) == []
        panel = opened.panel()
        while (further := panel.get_by_role("button", name="Next")).is_visible():
            further.press("Enter")
            opened.settle()
            placed = opened.page.evaluate(PLACES)
            (top, bottom), picture, focus = placed["view"], placed["picture"], placed["focus"]
            assert top - 1 <= focus[0] and focus[1] <= bottom + 1
            beside = focus[3] <= picture[2]
            assert beside or focus[0] >= picture[1] - 1 or focus[1] <= picture[0] + 1
            # Beside the controls it is seen whole; above them it leaves them their part.
            assert picture[1] - picture[0] <= (1 if beside else 0.72) * (bottom - top)
        assert opened.page.evaluate(CUT) == []
        assert opened.complaints == []
    finally:
        opened.close()
        shutil.rmtree(lab.work / ".workbook", ignore_errors=True)


def test_a_table_wider_than_a_narrow_page_shows_a_bar_and_is_scrolled_by_keyboard(lab):
    opened = opened_in(lab, "02_carcass_sizing.ipynb", False, 800, 700)
    panel = opened.panel()
    while (further := panel.get_by_role("button", name="Next")).is_visible():
        further.press("Enter")
        opened.settle()
    room = panel.get_by_role("region", name=panel.locator("caption").first.text_content(), exact=True)
    hidden, bar, around, seen = room.evaluate(TABLE)
    assert hidden > 20 and bar >= 10 and around <= seen + 1
    room.focus()
    for _ in range(20):
        opened.page.keyboard.press("ArrowRight")
    opened.settle()
    opened.page.wait_for_function("() => document.activeElement.scrollLeft > 20")
    assert opened.complaints == []
    opened.close()


def test_a_long_choice_is_shown_whole(lab):
    opened = opened_in(lab, "05_fronts_and_gaps.ipynb", False, 1280, 800)
    panel = opened.panel()
    panel.get_by_role("button", name="Next").click()
    opened.settle()
    needed, there = panel.get_by_label("Fronts", exact=True).evaluate(CHOICE)
    assert needed > 1 and there >= needed
    panel.get_by_label("Fronts", exact=True).select_option("overlay, before the case")
    opened.settle()
    assert "verlay" in panel.locator(".shop-picture-figure svg").first.text_content()
    opened.close()
