"""axe-core over the pages of the joints, as `test_accessibility.py` over the others."""

import pytest

from tests.browser.test_accessibility import NOTEBOOKS, THEMES, look_at

pytestmark = pytest.mark.browser

PAGES = sorted(NOTEBOOKS.glob("joints/*.ipynb"))


def themes_of(page, long: bool) -> tuple[str, ...]:
    """They are alike, and have one theme each, in turn; both with --long."""
    return THEMES if long else (THEMES[PAGES.index(page) % 2],)


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_nothing_serious_light_or_dark(lab, page, pytestconfig):
    look_at(lab, page, themes_of(page, pytestconfig.getoption("--long")))
