"""axe-core over what the workbook puts on a page, and nothing else of JupyterLab: it finds nothing serious.

The pages of the joints are looked at in `test_accessibility_joints.py`, so that two can run beside each other.
"""

import re
import shutil
from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.browser.learner import choose, enter

pytestmark = pytest.mark.browser

NOTEBOOKS = Path(__file__).resolve().parents[2] / "notebooks"
PAGES = sorted(NOTEBOOKS.glob("*.ipynb"))
OURS = (".shop-panel", ".shop-exercise", ".jp-CodeCell .jp-OutputArea-output.jp-RenderedHTMLCommon")
GRAVE = ("serious", "critical")

LOUD = """() => {
  const words = [...document.querySelectorAll(
    '.shop-panel caption, .shop-exercise p, .jp-CodeCell .jp-RenderedHTMLCommon :is(caption, p, td, dd)'
  )].filter((one) => one.checkVisibility() && one.textContent.trim());
  for (const one of words) one.style.cssText = 'color: #ddd; background: #fff';
  words[0].insertAdjacentHTML('beforeend', '<button></button><img src="x">');
}"""
"""Puts a button without a name and a picture without words on the page, and prints some words in a faint colour."""

TO_THE_TOP = "document.querySelector('.jp-WindowedPanel-outer').scrollTop = 0"

LAID_OUT = """() => {
  const page = document.querySelector('.jp-WindowedPanel-outer');
  document.body.style.height = '100vh';
  return page.scrollHeight + window.innerHeight - page.clientHeight;
}"""
"""How high a window shows the whole page. JupyterLab's body is 0 px high, and axe-core takes what lies outside of it,
or outside of the window, for hidden: its colours would not be looked at."""


THEMES = ("JupyterLab Light", "JupyterLab Dark")
BY_COLOUR = {"runOnly": {"type": "rule", "values": ["color-contrast", "link-in-text-block"]}}
"""The rules of axe-core that another theme can break; all others look at names, roles and sizes."""


def grave_faults(opened, rules=None) -> list[str]:
    """Each fault that axe-core calls serious or critical, with the place of the first."""
    there = [selector for selector in OURS if opened.page.locator(selector).count()]
    assert there, "nothing of ours stands on the page"
    opened.page.set_viewport_size({"width": 1400, "height": min(opened.page.evaluate(LAID_OUT), 16_000)})
    opened.page.evaluate(TO_THE_TOP)  # after Run All Cells the page stands at its end, and the rest is out of sight
    opened.settle()
    included = {"include": [[selector] for selector in there]}
    options = {"resultTypes": ["violations"]} | (rules or {})
    found = Axe().run(opened.page, context=included, options=options).response["violations"]
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
    opened.page.wait_for_function(
        "name => document.body.dataset.jpThemeName === name && !document.getElementById('jupyterlab-splash')", arg=name
    )
    opened.settle()


def unfold_all(opened) -> None:
    """Press Next on each panel until nothing more unfolds."""
    for panel in opened.page.locator(".shop-panel").all():
        following = panel.get_by_role("button", name="Next")
        for _ in range(12):
            if not following.count() or not following.first.is_visible():
                break
            following.first.click()
            opened.settle()


def look_at(lab, page, themes) -> None:
    """Run a page, ask, answer and unfold on it, and look for faults in each theme."""
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
    unfold_all(opened)
    first, *others = themes
    theme(opened, first)
    assert grave_faults(opened) == [], first
    for name in others:
        theme(opened, name)
        assert grave_faults(opened, BY_COLOUR) == [], name
    opened.close()


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_nothing_serious_light_and_dark(lab, page, quick):
    """In a short run each page in one theme, in turn."""
    look_at(lab, page, [THEMES[PAGES.index(page) % 2]] if quick else THEMES)


@pytest.fixture(scope="module")
def carcass(lab):
    """The page of lesson 02, run once for the tests that change it: the last of them spoils it."""
    opened = lab.open(lab.copy(NOTEBOOKS / "02_carcass_sizing.ipynb"), height=900)
    opened.run_all(awake=1)
    yield opened
    opened.close()


def test_a_panel_that_cannot_be_built_can_still_be_read(carcass):
    panel = carcass.panel()
    enter(carcass, panel, "Depth of the joint", "5/8 in")
    enter(carcass, panel, "Measured thickness of the sheet", "0.45 in")
    assert panel.locator(".shop-picture-stale").count()
    for name in THEMES:
        theme(carcass, name)
        assert grave_faults(carcass) == [], name


def test_what_is_planted_is_found(carcass):
    carcass.page.evaluate(LOUD)
    planted = grave_faults(carcass)
    assert {fault.split(" ")[0] for fault in planted} >= {"button-name", "image-alt", "color-contrast"}, planted


COLOURS = """() => [...document.querySelectorAll('.shop-findings :is(.shop-stop, .shop-warn)')].map((one) => {
  const behind = (node) => {
    const colour = node ? getComputedStyle(node).backgroundColor : 'rgb(255, 255, 255)';
    return colour === 'rgba(0, 0, 0, 0)' ? behind(node.parentElement) : colour;
  };
  const inks = [...one.querySelectorAll('*')].map((node) => getComputedStyle(node).color);
  return [one.className, behind(one), [...new Set(inks)]];
})"""
"""Of each finding that asks for something: its kind, what it stands on, and every colour of its marks and words."""


def contrast(one: str, other: str) -> float:
    """By the formula of WCAG 2.1, "contrast ratio" and "relative luminance"."""
    def light(colour: str) -> float:
        parts = [int(part) / 255 for part in re.findall(r"\d+", colour)[:3]]
        red, green, blue = (part / 12.92 if part <= 0.03928 else ((part + 0.055) / 1.055) ** 2.4 for part in parts)
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue

    darker, lighter = sorted((light(one), light(other)))
    return (lighter + 0.05) / (darker + 0.05)


def test_the_ratio_is_the_one_of_the_standard():
    """White on black is 21, and #777 on white 4.48, as WebAIM gives it (from memory)."""
    assert contrast("rgb(255, 255, 255)", "rgb(0, 0, 0)") == pytest.approx(21)
    assert contrast("rgb(119, 119, 119)", "rgb(255, 255, 255)") == pytest.approx(4.48, abs=0.01)


def test_what_is_to_be_mended_or_looked_at_can_be_read_light_and_dark(lab):
    """Marks too, which axe-core passes over, for they are hidden from whoever hears the page."""
    opened = lab.open(lab.copy(NOTEBOOKS / "06_hardware_layout.ipynb"), height=900)
    opened.run_all(awake=1)
    panel = opened.panel()
    unfold_all(opened)
    choose(opened, panel, "In bay 2", "as many drawers")
    enter(opened, panel, "Pull, from hole to hole", "400 mm")
    for name in ("JupyterLab Light", "JupyterLab Dark"):
        theme(opened, name)
        found = panel.evaluate(COLOURS)
        assert {kind for kind, _, _ in found} == {"shop-stop", "shop-warn"}
        for kind, behind, inks in found:
            assert all(contrast(ink, behind) >= 4.5 for ink in inks), (name, kind, behind, inks)
        assert grave_faults(opened) == [], name
    opened.close()
