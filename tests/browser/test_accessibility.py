"""axe-core over what the workbook puts on a page, and nothing else of JupyterLab: it finds nothing serious."""

import shutil
from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe

pytestmark = pytest.mark.browser

NOTEBOOKS = Path(__file__).resolve().parents[2] / "notebooks"
PAGES = sorted(page for page in NOTEBOOKS.glob("*.ipynb") if not page.name.startswith("_"))
OURS = (".shop-panel", ".shop-exercise", ".jp-CodeCell .jp-OutputArea-output.jp-RenderedHTMLCommon")
GRAVE = ("serious", "critical")

LOUD = """() => {
  const bad = document.createElement('div');
  bad.className = 'shop-exercise';
  bad.id = 'planted';
  bad.innerHTML = '<button></button><img src="x">';
  document.querySelector('.jp-Notebook').append(bad);
}"""
"""Puts a button without a name and a picture without words on the page."""


def grave_faults(opened) -> list[str]:
    """Each fault that axe-core calls serious or critical, with the place of the first."""
    there = [selector for selector in OURS if opened.page.locator(selector).count()]
    assert there, "nothing of ours stands on the page"
    found = Axe().run(opened.page, context={"include": [[selector] for selector in there]}).response["violations"]
    return [
        f"{fault['id']} ({fault['impact']}): {fault['help']}; {len(fault['nodes'])} x {fault['nodes'][0]['html'][:200]}"
        for fault in found
        if fault["impact"] in GRAVE
    ]


def theme(opened, name: str) -> None:
    """Choose the light or the dark theme from the menu."""
    opened.page.locator(".lm-MenuBar-item", has_text="Settings").first.click()
    opened.page.locator(".lm-Menu-item", has_text="Theme").first.hover()
    opened.page.locator('.lm-Menu-item[data-command="apputils:change-theme"]', has_text=name).first.click()
    opened.settle()


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_nothing_serious_light_and_dark(lab, page):
    shutil.copytree(NOTEBOOKS / "pictures", lab.work / "pictures", dirs_exist_ok=True)
    opened = lab.open(lab.copy(page), height=900)
    opened.run_all(awake=0 if page.stem == "glossary" else 1)
    for button in opened.page.locator(".shop-panel td [data-ask]").all()[:1]:
        button.click()
    asked = opened.page.locator(".shop-exercise", has=opened.page.get_by_role("button", name="Hint"))
    for box in asked.all()[:2]:
        box.get_by_role("textbox").first.fill("7 in")
        box.get_by_role("button", name="Check").click()
        box.get_by_role("button", name="Hint").click()
    opened.settle()
    for name in ("JupyterLab Light", "JupyterLab Dark"):
        theme(opened, name)
        assert grave_faults(opened) == [], name
    opened.page.evaluate(LOUD)
    assert len(grave_faults(opened)) >= 2
    opened.close()
