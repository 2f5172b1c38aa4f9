"""The pages: as stored, and the machinery that checks them as they run (it must be able to fail)."""

import os
import re
import subprocess
import sys
from pathlib import Path

import nbformat
import pytest
from nbformat.v4 import new_code_cell, new_notebook, new_output

from tests import notebook_checks
from tests.pages import PAGES

ROOT = Path(__file__).parents[1]


@pytest.mark.parametrize("check", notebook_checks.of_a_stored_page())
@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_stored_page(page, check):
    assert notebook_checks.of_a_stored_page()[check](notebook_checks.read_page(page)) == []


def cell(source, shown="", tags=("nbval-check-output",), run=True, stream="stdout"):
    outputs = [new_output("stream", name=stream, text=shown)] if shown else []
    count = 1 if run else None
    return new_code_cell(source, outputs=outputs, metadata={"tags": list(tags)}, execution_count=count)


def good():
    return cell("print(3 + 4)", "7\n")


@pytest.mark.parametrize(
    ("check", "bad", "fault"),
    [
        ("enough outputs are compared", cell("1", tags=()), "no cell is tagged"),
        ("expected outputs can be compared", cell("print(1)", "1\n", run=False), "no execution count"),
        ("expected outputs can be compared", cell("print(1)"), "stores no text"),
        ("tags are known", cell("1", tags=("nbval-check-outputs",)), "unknown tag nbval-check-outputs"),
        ("outputs have no error", cell("1", "careful", stream="stderr"), "error or a warning"),
    ],
)
def test_each_stored_check_finds_its_fault(check, bad, fault):
    check = notebook_checks.of_a_stored_page()[check]
    assert check(new_notebook(cells=[good()])) == []
    assert fault in "\n".join(check(new_notebook(cells=[bad])))


def test_a_lesson_that_compares_few_lengths_is_found():
    check = notebook_checks.of_a_stored_page()["enough outputs are compared"]
    enough = [cell("half", "half of 7/8 in = 7/16 in") for _ in range(notebook_checks.LEAST_COMPARED)]
    words, bare = ([cell("1", shown) for _ in enough] for shown in ("in words", "1"))
    for name, cells, faults in (
        ("04_drawer_clearance", enough, 0), ("04_drawer_clearance", enough[1:], 1), ("00_start_here", enough[:1], 0),
        ("_template", enough[:1], 0), ("_template", [], 1), ("04_drawer_clearance", words, 1),
        ("04_drawer_clearance", bare, 1),
    ):
        page = new_notebook(cells=cells, metadata={"name": name})
        assert len(check(page)) == faults, name


def run_pages(folder, pages, *options):
    """Run pages, by name, as the whole test run does; each leaves one x in the file `tally` when it runs."""
    for name, cells in pages.items():
        first = new_code_cell("with open('tally', 'a') as tally: _ = tally.write('x')")
        nbformat.write(new_notebook(cells=[first, *cells]), folder / name)
    command = [sys.executable, "-P", "-m", "pytest", "-c", "pyproject.toml", f"--rootdir={folder}", "-v"]
    command += ["-p", "no:cacheprovider", "-p", "tests.conftest", "--color=no", *options, str(folder)]
    kept = {name: value for name, value in os.environ.items() if not name.startswith("PYTEST_")}
    kept["PYTHONPATH"] = str(ROOT)
    done = subprocess.run(command, cwd=ROOT, env=kept, capture_output=True, text=True, encoding="utf-8")
    return done.returncode, done.stdout + done.stderr


@pytest.mark.parametrize("options", [[], ["-n2", "--dist=loadscope"]], ids=["one process", "two workers"])
def test_a_page_runs_once_and_every_check_reads_that_run(tmp_path, options):
    status, report = run_pages(tmp_path, {"a.ipynb": [good(), good()], "b.ipynb": [good()]}, *options)
    assert status == 0, report
    assert (tmp_path / "tally").read_text() == "xx"
    checks = notebook_checks.of_a_run()
    for name in checks:
        assert f"a.ipynb::{name}" in report
        assert f"b.ipynb::{name}" in report
    assert f"{5 + 2 * len(checks)} passed" in report


def test_a_page_with_a_fault_fails(tmp_path):
    bad = {
        "another output": (cell("print(3 + 5)", "7\n"), "Cell outputs differ"),
        "an error": (cell("1 / 0", tags=()), "ZeroDivisionError"),
        "a warning": (cell("import warnings; warnings.warn('old')", tags=()), "wrote on the error stream"),
        "too slow": (cell("import time; time.sleep(60)", tags=()), "Timeout of 2 seconds"),
    }
    pages = {f"{name}.ipynb": [fault] for name, (fault, _) in bad.items()}
    status, report = run_pages(tmp_path, pages, "--nbval-cell-timeout=2")
    assert status == 1, report
    for name, (_, said) in bad.items():
        assert re.search(rf"FAILED .*{name}\.ipynb::", report)
        assert said in report


def test_a_page_finds_the_workbook_from_any_folder(tmp_path):
    # nbval hands PYTHONPATH on to the kernel, so the page itself takes it out of the way first.
    look = "import sys; sys.path = [p for p in sys.path if p != ROOT]; import shoplib; print('found')"
    page = [cell(look.replace("ROOT", repr(str(ROOT))), "found\n")]
    status, report = run_pages(tmp_path, {"page.ipynb": page})
    assert status == 0, report
