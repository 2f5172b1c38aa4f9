"""What every test may use: the number of random tries, and the pages as they ran."""

import gc
import os

import pytest
from hypothesis import settings

from tests.browser.lab import missing
from tests.notebook_run import NotebookRun

BROWSER = os.environ.get("SHOPLIB_BROWSER", "if there")
"""`required`: browser tests fail where there is no Chromium; `later`: skip them; else: if they can run."""

LONGEST = (
    "notebooks/test_recording", "documents/test_practice_sheet", "lessons/test_sets", "judge/test_projects",
    "lessons/test_exercises", "documents/test_bench_papers", "live/test_layout_panel",
    "live/test_asked_in_sentences", "live/test_hardware_panel", "lessons/test_numbers_follow", "live/test_bench_panel",
    "lessons/test_leaders", "layout/test_choose", "lessons/test_each_size", "layout/test_random_lists",
    "live/test_carcass_panel", "live/test_every_length_asks", "joints/test_every_pair", "test_notebooks",
)
"""Files that take longest, which one worker runs whole: they come first, so that none is left alone at the end."""


def pytest_addoption(parser):
    parser.addoption("--long", action="store_true", help="the full counts of random tries")


def pytest_configure(config):
    # The deadline of a single try is off: a machine that is busy with something else is no fault of ours.
    settings.register_profile("short", deadline=None)
    settings.register_profile("long", deadline=None, max_examples=2_000)
    settings.load_profile("long" if config.getoption("--long") else "short")
    config.pluginmanager.register(NotebookRun())


@pytest.fixture(scope="session")
def count(pytestconfig):
    """`count(300, 5_000)`: how many random tries to make, in a short run and with --long."""
    return lambda short, long: long if pytestconfig.getoption("--long") else short


@pytest.fixture(scope="session")
def quick(pytestconfig):
    """Whether cases that are alike are looked at in turn; with --long each is."""
    return not pytestconfig.getoption("--long")


def pytest_collection_finish():
    """Sixteen thousand tests stay to the end: Python need not look through them, time and again, for what can go."""
    gc.freeze()
    gc.set_threshold(20_000, 10, 10)


def pytest_collection_modifyitems(items):
    place = {f"tests/{name}.py": number for number, name in enumerate(LONGEST)}
    items.sort(key=lambda item: place.get(item.nodeid.partition("::")[0], len(place)))
    reason = ""
    if BROWSER == "later":
        reason = "SHOPLIB_BROWSER=later: the browser tests run on their own"
    elif BROWSER != "required":
        reason = missing()
    for item in items:
        if reason and item.get_closest_marker("browser"):
            item.add_marker(pytest.mark.skip(reason=reason))
