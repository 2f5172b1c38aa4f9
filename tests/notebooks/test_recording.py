"""Pages are stored as recorded, recording changes nothing by itself, and a changed model is noticed."""

import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import nbformat
import pytest
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


@EACH
def test_a_changed_model_is_noticed(page, tmp_path):
    change = CHANGES.get(page.stem) or CHANGES.get(page.stem[:2])
    if change is None:
        pytest.fail(f"{page.name}: name a constant of the model in CHANGES that its worked figures rest on")
    where, old, new = change
    shutil.copytree(ROOT / "shoplib", tmp_path / "shoplib", ignore=shutil.ignore_patterns("__pycache__"))
    shutil.copytree(ROOT / "data", tmp_path / "data")
    file = tmp_path / "shoplib" / where
    source = file.read_text()
    assert source.count(old) == 1
    file.write_text(source.replace(old, new))
    # nbval puts the folder that it runs in before the installed package, in the kernel as well.
    (tmp_path / "notebooks").mkdir()
    opened = nbformat.read(page, as_version=4)
    for cell in opened.cells:
        if cell.cell_type == "code" and "nbval-check-output" not in cell.metadata.get("tags", []):
            cell.source, cell.outputs = imports_of(cell), []
    nbformat.write(opened, tmp_path / "notebooks" / page.name)
    command = [sys.executable, "-m", "pytest", "-q", "--nbval-lax", "--nbval-current-env", "--nbval-cell-timeout=60"]
    command += [f"--nbval-sanitize-with={ROOT / 'tests' / 'nbval_sanitize.cfg'}", "-p", "no:cacheprovider"]
    kept = {name: value for name, value in os.environ.items() if not name.startswith("PYTEST_")}
    kept |= {"PYTHONPATH": str(tmp_path), "SHOPLIB_WORKBOOK": str(tmp_path / "kept")}
    done = subprocess.run([*command, "notebooks"], cwd=tmp_path, env=kept, capture_output=True, text=True)
    assert done.returncode == 1, done.stdout + done.stderr
    assert "Cell outputs differ" in done.stdout


@EACH
def test_every_exercise_takes_its_own_answer(page, tmp_path):
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
    client = NotebookClient(opened, timeout=120, kernel_name="python3", resources={"metadata": {"path": str(tmp_path)}})
    client.execute(env={**os.environ, "SHOPLIB_WORKBOOK": str(tmp_path / "kept")})
