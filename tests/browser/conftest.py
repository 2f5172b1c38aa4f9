"""Fixtures of the browser tests: they skip without Chromium, unless SHOPLIB_BROWSER=required."""

import os
from pathlib import Path

import lab as harness
import pytest

HERE = Path(__file__).parent


def pytest_collection_modifyitems(items):
    lacking = harness.missing()
    required = os.environ.get("SHOPLIB_BROWSER") == "required"
    for item in items:
        if HERE in item.path.parents:
            item.add_marker(pytest.mark.browser)
            if lacking and not required:
                item.add_marker(pytest.mark.skip(reason=f"no browser tests: {lacking}"))


@pytest.fixture(scope="session")
def browser():
    with harness.chromium() as chromium:
        yield chromium


@pytest.fixture(scope="session")
def lab(browser, tmp_path_factory):
    with harness.running_lab(tmp_path_factory.mktemp("lab")) as (address, token, work):
        yield harness.Lab(browser, address, token, work)
