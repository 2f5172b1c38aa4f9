"""Pages are stored as recorded, recording changes nothing by itself, and a changed model is noticed."""

import os
import re
import shutil
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import nbformat
import pytest
from jupyter_client.manager import KernelManager
from nbclient import NotebookClient

from tests.notebooks.record import WIDGET, recorded
from tests.pages import PAGES

ROOT = Path(__file__).parents[2]
EACH = pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)

ENTERS = ("model/joinery.py", "(joint.depth - joint.end_gap)", "(joint.depth - joint.end_gap + 31_750)")
CHANGES = {
    "00": ENTERS,
    "01": ("model/strip.py", "wood = board - (count - 1) * kerf", "wood = board - (count - 1) * kerf + 31_750"),
    "02": ENTERS,
    "03": ENTERS,
    "04": ("model/drawer_box.py", "inside = opening - 2 * slide.side", "inside = opening - 2 * slide.side - 31_750"),
    "05": ("model/rows.py", "high - low - (n - 1) * apart", "high - low - (n - 1) * apart - 31_750"),
    "06": ("model/runners.py", "start = place.y[0] + slide.setback", "start = place.y[0] + slide.setback + 31_750"),
    "07": ("model/beam.py", "Fraction(5, 384)", "Fraction(6, 384)"),
    "08": ("layout/strips.py", "(across - 2 * trim + kerf) // (strip + kerf)",
           "(across - 2 * trim + kerf + 31_750) // (strip + kerf) + 1"),
    "butt": ("joints/butt.py", 'stock.part(values["screw"], 9, 4)', 'stock.part(values["screw"], 9, 4) + 31_750'),
    "pocket_screws": ("model/pocket.py", "to_step(share(thickness, 2, 1)[0], style.step))",
                      "to_step(share(thickness, 2, 1)[0], style.step) + 31_750)"),
    "rabbet": ("joints/rabbet.py", "shoulder = stock.enters.thickest + fit",
               "shoulder = stock.enters.thickest + fit + 31_750"),
    "dado": ("joints/dado.py", "top = stock.enters.thickest + fit", "top = stock.enters.thickest + fit + 31_750"),
    "groove_and_tongue": ("joints/groove.py", "top = stock.enters.thickest + fit",
                          "top = stock.enters.thickest + fit + 31_750"),
    "drawer_front_joint": ("model/locked_front.py", "slot = lock.lip + lock.groove",
                           "slot = lock.lip + lock.groove + 31_750"),
    "finger": ("joints/finger.py", "long, high = stock.receives.thickest + proud,",
               "long, high = stock.receives.thickest + proud + 31_750,"),
    "half_laps": ("joints/in_frame.py", 'return stock.across + values["long"]',
                  'return stock.across + values["long"] + 31_750'),
    "dowels_and_splines": ("joints/dowel.py", "into_end, into_side = values[\"into end\"],",
                           "into_end, into_side = values[\"into end\"] + 31_750,"),
    "bridle_mortise_and_tenon": ("joints/mortise_and_tenon.py", "    end = across - long\n    floor",
                                 "    end = across - long - 31_750\n    floor"),
    "dovetail": ("joints/dovetail.py", 'return stock.receives.thickest + values["proud"]',
                 'return stock.receives.thickest + values["proud"] + 31_750'),
    "splined_mitre": ("joints/splined_mitre.py", '2 * (values["slot"] - values["end gap"])',
                      '2 * (values["slot"] - values["end gap"]) + 31_750'),
    "gl": ("documents/glossary.py", "a step cut along", "a shelf cut along"),
    "_t": ENTERS,
}
"""For each page, by its first two letters or its whole name, a file of the library, a constant or sum in it, and what
stands there instead: 1/64 in more.

The glossary has words and no numbers: there a meaning is changed.
"""

LEAST_ASKED = {"00": 1, "_t": 2, "gl": 0}
"""How many exercises a page that is no lesson has; a lesson has five."""


UNCHANGED = "unchanged"


def change_of(page):
    """The change of `CHANGES` for a page."""
    change = CHANGES.get(page.stem) or CHANGES.get(page.stem[:2])
    if change is None:
        pytest.fail(f"{page.name}: name a constant of the model in CHANGES that its worked figures rest on")
    return change


def imports_of(cell):
    """What a cell brings in for those after it, without what it shows: a panel takes time, and proves nothing here."""
    return "\n".join(line for line in cell.source.splitlines() if re.match(r"from |import ", line))


@EACH
def test_no_living_widget_is_stored(page):
    stored = nbformat.read(page, as_version=4)
    assert "widgets" not in stored.metadata
    outputs = [one for cell in stored.cells if cell.cell_type == "code" for one in cell.outputs]
    assert not [one for one in outputs if WIDGET in one.get("data", {})]


def test_recording_twice_changes_no_byte():
    page = ROOT / "notebooks" / "00_start_here.ipynb"
    before = page.read_bytes()
    assert recorded(page) == recorded(page)
    assert page.read_bytes() == before


@pytest.fixture(scope="module")
def beside_a_change(tmp_path_factory):
    """Of each page, what nbval said of the cells that are compared, run beside a library with its change.

    nbval starts once for all of them. A page finds the library that lies in its own folder, for a kernel starts there.
    One page more has a library without a change.
    """
    folder, changes = tmp_path_factory.mktemp("changed"), {page.stem: (page, change_of(page)) for page in PAGES}
    changes[UNCHANGED] = (PAGES[0], None)
    for name, (page, change) in changes.items():
        # What Python compiled comes along, by the time of its source: some twenty kernels need not do it again.
        shutil.copytree(ROOT / "shoplib", folder / name / "shoplib")
        shutil.copytree(ROOT / "data", folder / name / "data")
        if change:
            where, old, new = change
            file = folder / name / "shoplib" / where
            source = file.read_text()
            assert source.count(old) == 1, (name, old)
            file.write_text(source.replace(old, new))
            for compiled in (file.parent / "__pycache__").glob(f"{file.stem}.*"):
                compiled.unlink()
        opened = nbformat.read(page, as_version=4)
        for cell in opened.cells:
            if cell.cell_type == "code" and "nbval-check-output" not in cell.metadata.get("tags", []):
                cell.source, cell.outputs = imports_of(cell), []
        looked = f"import shoplib; assert shoplib.__file__ == {str(folder / name / 'shoplib' / '__init__.py')!r}"
        opened.cells.insert(0, nbformat.v4.new_code_cell(looked))
        nbformat.write(opened, folder / name / f"{name}.ipynb")
    command = [sys.executable, "-m", "pytest", "-q", "--nbval-lax", "--nbval-current-env", "--nbval-cell-timeout=60"]
    command += [f"--nbval-sanitize-with={ROOT / 'tests' / 'nbval_sanitize.cfg'}", "-p", "no:cacheprovider"]
    kept = {name: value for name, value in os.environ.items() if not name.startswith("PYTEST_")}
    kept |= {"SHOPLIB_WORKBOOK": str(folder / "kept")}
    command += ["--junitxml=told.xml", *(f"{name}/{name}.ipynb" for name in changes)]
    done = subprocess.run(command, cwd=folder, env=kept, capture_output=True, text=True)
    assert done.returncode == 1, done.stdout + done.stderr
    told = {name: [] for name in changes}
    for case in ElementTree.parse(folder / "told.xml").iter("testcase"):
        told[case.get("classname").split(".")[0]].append([fault.text for fault in case])
    return told


@EACH
def test_a_changed_model_is_noticed(page, beside_a_change):
    first, *cells = beside_a_change[page.stem]
    assert first == []
    faults = [text for cell in cells for text in cell]
    assert any("Cell outputs differ" in text for text in faults), faults


def test_a_model_without_a_change_is_not(beside_a_change):
    cells = beside_a_change[UNCHANGED]
    assert len(cells) > 2 and not any(cells), cells


@pytest.fixture(scope="module")
def kernel(tmp_path_factory):
    """One kernel for the exercises of all pages: to start it takes longer than to run them."""
    folder = tmp_path_factory.mktemp("answered")
    manager = KernelManager(kernel_name="python3")
    manager.start_kernel(cwd=str(folder), env={**os.environ, "SHOPLIB_WORKBOOK": str(folder / "kept")})
    yield manager
    manager.shutdown_kernel(now=True)


@EACH
def test_every_exercise_takes_its_own_answer(page, kernel):
    opened = nbformat.read(page, as_version=4)
    asked = 0
    for cell in opened.cells:
        if cell.cell_type != "code":
            continue
        answered, found = re.subn(
            r"^ask\((\w+)\)$", r"box = ask(\1); assert box.check(box.posed.answer).right; box", cell.source, flags=re.M
        )
        cell.source = answered if found else imports_of(cell)
        asked += found
    assert asked >= LEAST_ASKED.get(page.stem[:2], 5)
    opened.cells.insert(0, nbformat.v4.new_code_cell("%reset -f"))  # the names of the page before
    NotebookClient(opened, km=kernel, timeout=120).execute()
