"""The glossary and the style guide in real JupyterLab: they run, links lead on, an own error is told kindly."""

import shutil

import pytest

from tests.browser.learner import NOTEBOOKS, opened_and_run

pytestmark = pytest.mark.browser


def test_a_word_leads_to_its_lesson(lab):
    shutil.copy(NOTEBOOKS / "00_start_here.ipynb", lab.work)
    opened = opened_and_run(lab, "glossary.ipynb", awake=0)
    page = opened.page
    sketch = page.get_by_role("img", name="A board lying flat, cut through: in its upper face").first
    sketch.scroll_into_view_if_needed()
    assert sketch.evaluate("node => node.decode().then(() => node.naturalWidth)") > 200
    page.get_by_role("link", name="00 Start here").nth(1).click()
    page.locator(".lm-TabBar-tabLabel", has_text="00_start_here.ipynb").wait_for(timeout=20_000)
    assert opened.complaints == []
    opened.close()


def test_the_style_guide_runs_and_an_error_in_an_own_cell_is_told_in_a_few_lines(lab):
    opened = opened_and_run(lab, "_template.ipynb", awake=3)
    page = opened.page
    last = page.locator(".jp-Cell").last
    last.scroll_into_view_if_needed()
    opened.settle()
    last.click()
    for key in ("Escape", "b", "Enter"):
        opened.settle()
        page.keyboard.press(key)
    opened.settle()
    page.keyboard.type("ask(ROOM).check(room)")
    page.keyboard.press("Shift+Enter")
    told = page.locator('[data-mime-type$=".stderr"]')  # JupyterLab shows errors so
    told.wait_for(timeout=20_000)
    text = told.inner_text()
    assert "The name room, in line 1 of the cell, stands for nothing yet." in text
    assert "Shift+Enter" in text and "Traceback" not in text
    opened.close()
