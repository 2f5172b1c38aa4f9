"""A room imports only from the rooms below it, as DEVELOPERS.md lists them."""

import ast
import json
import sys
from pathlib import Path

import pytest

from tests.pages import PAGES

ROOT = Path(__file__).parents[1]
# From top to bottom.
ROOMS = [
    "lessons", "live", "printed", "documents", "draw", "building", "buying", "lists", "practice", "checks", "words",
    "joints", "model", "tables", "layout", "measure",
]
# Within printed, from top to bottom.
SHELVES = ["into_folder", "everything", "plan", "build", "true_scale", "told", "typeset"]
ABOVE_ALL = "commands"
BEFORE_ALL = {"start", "__main__", "__init__"}  # what runs before anything is installed
PANELS_ONLY = {"ipywidgets", "anywidget"}


def imports(source: str, package: str) -> list[str]:
    """Every module that the source imports anywhere, in full; `package` is where a relative import begins."""
    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            found += [name.name for name in node.names]
        elif isinstance(node, ast.ImportFrom):
            inside = package.split(".")[: len(package.split(".")) - node.level + 1] if node.level else []
            base = ".".join([*inside, *([node.module] if node.module else [])])
            found += [f"{base}.{name.name}" for name in node.names] if base == "shoplib" else [base]
    return found


def room_of(module: str) -> str:
    return [*module.split("."), "__init__"][1]


def faults(room: str, source: str, package: str = "") -> list[str]:
    """What a module of `room` ("notebooks" for a page) imports and must not."""
    found = []
    for module in imports(source, package or f"shoplib.{room}"):
        top = module.split(".")[0]
        if top != "shoplib":
            if room in BEFORE_ALL and top not in sys.stdlib_module_names:
                found.append(f"{room} imports {module}, which is not in the standard library")
            if top in PANELS_ONLY and room != "live":
                found.append(f"{room} imports {module}, which only live may")
        elif not may_import(room, room_of(module)):
            found.append(f"{room} imports {module}")
    return found


def may_import(room: str, other: str) -> bool:
    if other in {room, "__init__"}:
        return True
    if room in BEFORE_ALL:
        return room == "__main__" and other == "start"
    if other in BEFORE_ALL | {ABOVE_ALL}:
        return False
    if room in {ABOVE_ALL, "notebooks"}:
        return other in ROOMS
    return other in ROOMS[ROOMS.index(room) + 1 :]


def modules():
    for path in sorted((ROOT / "shoplib").rglob("*.py")):
        parts = path.relative_to(ROOT).with_suffix("").parts
        yield pytest.param(parts[1], path, ".".join(parts[:-1]), id="/".join(parts[1:]))


@pytest.mark.parametrize(("room", "path", "package"), list(modules()))
def test_module_imports_downward_only(room, path, package):
    assert room in {*ROOMS, ABOVE_ALL, *BEFORE_ALL}, f"{room} is no room of the house"
    assert faults(room, path.read_text(encoding="utf-8"), package) == []


def against_the_shelves(shelf: str, source: str) -> list[str]:
    """What a module of a shelf of `printed` imports from a shelf above its own."""
    found = []
    for module in imports(source, f"shoplib.printed.{shelf}"):
        within = [*module.split("."), ""][2] if module.startswith("shoplib.printed") else ""
        other = within or shelf
        if other not in SHELVES[SHELVES.index(shelf):]:
            found.append(f"{shelf} imports {module}")
    return found


@pytest.mark.parametrize("path", sorted((ROOT / "shoplib" / "printed").rglob("[!_]*.py")), ids=lambda path: path.stem)
def test_a_printed_paper_imports_from_the_shelves_below_only(path):
    shelf = path.relative_to(ROOT / "shoplib" / "printed").with_suffix("").parts[0]
    assert against_the_shelves(shelf, path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    ("shelf", "source"),
    [
        ("told", "from shoplib.printed.plan.cover import cover_pages"),
        ("typeset", "import shoplib.printed.told.readings"),
        ("build", "from shoplib.printed.plan import cover"),
        ("plan", "from shoplib.printed.everything import print_files"),
    ],
)
def test_an_import_against_the_shelves_is_found(shelf, source):
    assert len(against_the_shelves(shelf, source)) == 1


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_page_imports_downward_only(page):
    cells = json.loads(page.read_text(encoding="utf-8"))["cells"]
    for cell in cells:
        if cell["cell_type"] == "code":
            source = "".join(cell["source"])
            lines = [line for line in source.splitlines() if not line.startswith(("%", "!"))]
            assert faults("notebooks", "\n".join(lines)) == []


@pytest.mark.parametrize(
    ("room", "source"),
    [
        ("model", "from shoplib.draw.scene import Scene"),
        ("model", "import shoplib.draw.scene"),
        ("model", "from shoplib import draw"),
        ("model", "from ..draw import scene"),
        ("model", "from .. import draw"),
        ("model", "def later():\n    from shoplib.lists import cut_list"),
        ("checks", "from shoplib.lists import cut_list"),
        ("words", "from shoplib.checks import check"),
        ("joints", "from shoplib.checks import check"),
        ("measure", "from shoplib.tables.slides import slide"),
        ("documents", "from shoplib.commands import plan"),
        ("notebooks", "from shoplib.commands import plan"),
        ("notebooks", "from shoplib.start import lab"),
        ("commands", "from shoplib.start import lab"),
        ("lessons", "import ipywidgets"),
        ("documents", "from anywidget import AnyWidget"),
        ("start", "import pint"),
        ("start", "from shoplib.commands import plan"),
        ("__init__", "from shoplib.model.board import Board"),
        ("__main__", "import numpy as np"),
    ],
)
def test_an_import_against_the_order_is_found(room, source):
    assert len(faults(room, source)) == 1


@pytest.mark.parametrize(
    ("room", "source"),
    [
        ("live", "import ipywidgets\nfrom shoplib.draw.scene import Scene\nfrom . import panel"),
        ("commands", "from shoplib.documents.atomic import write_files"),
        ("notebooks", "from shoplib.live import panel\nimport math"),
        ("__main__", "import os\nfrom shoplib.start.cli import main"),
        ("model", "from ..measure import read_length\nfrom .board import Board"),
    ],
)
def test_an_import_in_order_passes(room, source):
    assert faults(room, source) == []
