"""requirements.txt names, in the right block, what the code imports, as it was tested."""

import re
import sys
from importlib.metadata import packages_distributions, version
from pathlib import Path

from tests.test_layers import imports

ROOT = Path(__file__).parents[2]
LINES = [line for line in (ROOT / "requirements.txt").read_text(encoding="utf-8").splitlines() if line]
HEADS = [number for number, line in enumerate(LINES) if line.startswith("#")]
PINNED = re.compile(r"([a-z0-9-]+)==([0-9.]+)")


def pins(block: int) -> dict[str, str]:
    lines = LINES[HEADS[block] + 1 : HEADS[block + 1]]
    return dict(PINNED.fullmatch(line).groups() for line in lines)


TO_USE, TO_TEST = pins(0), pins(1)


def imported_packages(folder: str) -> dict[str, str]:
    """The packages of others that the code in a folder imports, each with a file that does."""
    owners = packages_distributions()
    found = {}
    for path in sorted((ROOT / folder).rglob("*.py")):
        for module in imports(path.read_text(encoding="utf-8"), "shoplib.any"):
            top = module.split(".")[0]
            if top not in {*sys.stdlib_module_names, "shoplib", "tests"}:
                found[owners.get(top, [top])[0].lower().replace("_", "-")] = str(path.relative_to(ROOT))
    return found


def test_it_has_two_blocks_and_ends_in_the_workbook_itself():
    assert ["use" in LINES[HEADS[0]], "test" in LINES[HEADS[1]], LINES[-1]] == [True, True, "-e ."]
    assert list(TO_USE) == sorted(TO_USE)
    assert list(TO_TEST) == sorted(TO_TEST)


def test_what_the_workbook_imports_is_pinned_to_use_it():
    assert {name: path for name, path in imported_packages("shoplib").items() if name not in TO_USE} == {}


def test_what_the_tests_import_is_pinned():
    pinned = TO_USE | TO_TEST
    assert {name: path for name, path in imported_packages("tests").items() if name not in pinned} == {}


def test_what_runs_here_is_what_is_pinned():
    pinned = TO_USE | TO_TEST
    assert {name: version(name) for name in pinned} == pinned
