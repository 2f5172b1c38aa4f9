"""Fixtures of the browser tests: one Chromium and one JupyterLab for all of them."""

import pytest

from tests.browser import lab as harness


@pytest.fixture(scope="session")
def browser():
    with harness.chromium() as chromium:
        yield chromium


@pytest.fixture(scope="session")
def lab(browser, tmp_path_factory):
    with harness.running_lab(tmp_path_factory.mktemp("lab")) as (address, token, work):
        yield harness.Lab(browser, address, token, work)
