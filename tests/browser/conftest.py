"""Fixtures of the browser tests: one Chromium and one JupyterLab for all of them, a folder for each file of tests."""

import pytest

from tests.browser import lab as harness


@pytest.fixture(scope="session")
def browser():
    with harness.chromium() as chromium:
        yield chromium


@pytest.fixture(scope="session")
def running_lab(tmp_path_factory):
    with harness.running_lab(tmp_path_factory.mktemp("lab")) as running:
        yield running


@pytest.fixture(scope="module")
def lab(browser, running_lab, request):
    """JupyterLab, with a folder of notebooks of this file's own: answers and choices are kept beside a notebook."""
    address, token, root = running_lab
    lab = harness.Lab(browser, address, token, root, request.module.__name__.rpartition(".")[2])
    yield lab
    lab.close()
