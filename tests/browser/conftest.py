"""Fixtures of the browser tests: one Chromium and one JupyterLab for all of them, a folder for each file of tests."""

import pytest

from tests.browser import lab as harness


@pytest.fixture(scope="session")
def browser():
    with harness.chromium() as chromium:
        yield chromium


@pytest.fixture(scope="session")
def windows_and_root(browser, tmp_path_factory):
    with harness.running_lab(tmp_path_factory.mktemp("lab")) as (address, token, root):
        windows = harness.Windows(browser, address, token)
        yield windows, root
        windows.close()


@pytest.fixture(scope="module")
def lab(windows_and_root, request):
    """JupyterLab, with a folder of notebooks of this file's own: answers and choices are kept beside a notebook."""
    return harness.Lab(*windows_and_root, request.module.__name__.rpartition(".")[2])
