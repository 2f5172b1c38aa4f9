"""What a learner reads where their own cell cannot be run, in a real kernel; faults of the workbook stay whole."""

import os

import pytest
from nbclient import NotebookClient
from nbclient.exceptions import CellExecutionError
from nbformat.v4 import new_code_cell, new_notebook

from shoplib.live.kind_faults import MEND, OURS, RERUN

FIRST = """# Shows the exercise.
from shoplib.lessons.ask import ask
from shoplib.lessons.lesson_00 import FOLLOWS
box = ask(FOLLOWS)"""

OWN = {
    "a name without quotes": (
        "# My answer\nbox.check(bottom)",
        'The name bottom, in line 2 of the cell, stands for nothing yet. If it is an answer, put it in quotes: '
        '"33 1/2 in".',
    ),
    "no Python": (
        "box.check(33 1/2 in)",
        "Line 1 of the cell, box.check(33 1/2 in), cannot be read: invalid syntax. Perhaps you forgot a comma.",
    ),
    "a quote left open": (
        'box.check("33 1/2 in)',
        'Line 1 of the cell, box.check("33 1/2 in), cannot be read: unterminated string literal (detected at line 1).',
    ),
    "a sum that cannot be": (
        "answer = 34 / 0",
        "Line 1 of the cell, answer = 34 / 0, does not work: division by zero (ZeroDivisionError).",
    ),
    "something that a box cannot do": (
        'box.chek("33 in")',
        'Line 1 of the cell, box.chek("33 in"), does not work: '
        "'ExerciseBox' object has no attribute 'chek' (AttributeError).",
    ),
    "a call in another library": (
        "import json\njson.loads('no')",
        "Line 2 of the cell, json.loads('no'), does not work: "
        "Expecting value: line 1 column 1 (char 0) (JSONDecodeError).",
    ),
    "a function of their own": (
        "def mine():\n    return 1 + '1'\nmine()",
        "Line 2 of the cell, return 1 + '1', does not work: "
        "unsupported operand type(s) for +: 'int' and 'str' (TypeError).",
    ),
    "what the workbook refuses in a sentence": (
        "from shoplib.measure import read_length\nread_length('a bit')",
        "(line 2 of the cell).",
    ),
    "a magic that is none": ("%nonsense", "(UsageError)."),
}


def run(folder, *sources):
    page = new_notebook(cells=[new_code_cell(source) for source in sources])
    client = NotebookClient(page, timeout=60, kernel_name="python3", allow_errors=True)
    client.execute(env={**os.environ, "SHOPLIB_WORKBOOK": str(folder)})
    return [[one for one in cell.outputs if one.output_type == "error"] for cell in page.cells]


@pytest.fixture(scope="module")
def errors(tmp_path_factory):
    first, *found = run(tmp_path_factory.mktemp("kept"), FIRST, *(source for source, _ in OWN.values()), "box.hint()")
    assert first == []
    return dict(zip([*OWN, "after all of it"], found, strict=True))


@pytest.mark.parametrize("name", OWN)
def test_an_error_in_an_own_cell_is_a_few_lines_without_a_traceback(errors, name):
    (error,) = errors[name]
    says, *back = error.traceback
    assert says.replace("forgot a comma.", "forgot a comma.").endswith(OWN[name][1]), says
    assert back == ([RERUN, MEND] if "quotes" in name else [MEND])
    assert not any(word in "".join(error.traceback) for word in ("Traceback", "site-packages", "ipykernel", "\x1b["))


def test_the_kernel_goes_on(errors):
    assert errors["after all of it"] == []


def test_a_fault_of_the_workbook_is_said_to_be_one_and_shown_whole(tmp_path):
    fault = "import shoplib.lessons.ask\nshoplib.lessons.ask.pose = None\nask(FOLLOWS)"
    (error,) = run(tmp_path, FIRST, fault)[1]
    assert tuple(error.traceback[:2]) == OURS and error.ename == "TypeError"
    whole = "\n".join(error.traceback[2:])
    assert "Traceback" in whole and "ask.py" in whole and "not callable" in whole


def test_an_error_on_a_page_still_fails_its_test(tmp_path):
    page = new_notebook(cells=[new_code_cell(FIRST), new_code_cell("assert not box")])
    with pytest.raises(CellExecutionError, match="does not work"):
        NotebookClient(page, timeout=60, kernel_name="python3").execute(
            env={**os.environ, "SHOPLIB_WORKBOOK": str(tmp_path)}
        )


def test_outside_a_notebook_nothing_is_changed():
    import sys

    import shoplib.lessons  # noqa: F401

    ipython = sys.modules.get("IPython")
    assert ipython is None or ipython.get_ipython() is None
