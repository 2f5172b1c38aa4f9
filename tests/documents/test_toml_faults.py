"""A project file that is no TOML is told by its line and by what was forgotten, never by what the reader met."""

import re
from pathlib import Path

import pytest

from shoplib.documents.project_file import ProjectFileError, project_from_text

UNDER_BENCH = Path(__file__).parents[2] / "data" / "projects" / "under_bench_case.toml"

WRONG = {
    'a = "60 in\nb = 1\n': "line 1: the closing quote is missing",
    "a = '60 in\nb = 1\n": "line 2: the closing quote is missing",
    'a = "60 in': "line 1: the closing quote is missing",
    'a = ["60 in", "61 in]\n': "line 1: the closing quote is missing",
    "a = 60 in\n": "line 1: a length stands between two quotes",
    "a = 5/8 in # of the sheet\n": "line 1: a length stands between two quotes",
    'a = 23 5/8"\n': "line 1: a length stands between two quotes",
    "a = sixty\n": "line 1: the value is missing or not in quotes",
    "a =\n": "line 1: the value is missing or not in quotes",
    "b = 1\na = \u201c60 in\u201d\n": "line 2: its quotes are curly ones",
    'a "60 in"\n': "line 1: a key, then =, then its value",
    'a: "60 in"\n': "line 1: a key, then =, then its value",
    "a = 1\na = 2\n": "line 2: this key stands twice",
    "a = {b = 1, b = 2}\n": "line 1: this key stands twice",
    "[c]\n[d]\n[c]\n": "line 3: this heading stands a second time",
    'a = ["1 in", "2 in"\nb = 2\n': "line 2: the list before this has no closing ]",
    'a = ["1 in" "2 in"]\n': "line 1: the list before this has no closing ], or a comma is missing",
    'a = { b = "1 in"\n': "line 1: the { before this has no closing }",
    "[carcass\na = 1\n": "line 1: the closing bracket of a heading is missing",
    "[[bays]\n": "line 1: the closing bracket of a heading is missing",
    "[sheets.case sheet]\n": "line 1: the closing bracket of a heading is missing, or its name of several words",
    'a = "x\\y"\n': "line 1: a backslash",
    'a = "60" in"\n': "line 1: there is more on the line than one value",
    "// a remark\n": "line 1: a line begins with a key",
    'a = {b = "1 in",}\n': "line 1: a key is missing here",
    'a = "60 \x01in"\n': "line 1: there is a sign in it that cannot be seen",
}


@pytest.mark.parametrize(("text", "sentence"), WRONG.items())
def test_what_was_forgotten_is_told_with_its_line(text: str, sentence: str) -> None:
    with pytest.raises(ProjectFileError) as caught:
        project_from_text(text, "my_case.toml")
    told = str(caught.value)
    assert told.startswith(f"my_case.toml: {sentence}")
    assert "\n" not in told


def test_every_missing_quote_of_a_project_is_found_on_its_line() -> None:
    lines = UNDER_BENCH.read_text(encoding="utf-8").splitlines()
    tried = 0
    for number, line in enumerate(lines, 1):
        value = re.fullmatch(r'(\w+ = "[^"]*)"', line)
        if value:
            tried += 1
            with pytest.raises(ProjectFileError, match=f"line {number}: the closing quote is missing"):
                project_from_text("\n".join([*lines[: number - 1], value[1], *lines[number:]]))
    assert tried > 40


@pytest.mark.parametrize("text", ["a = 1\na = 2\n", "a = 1\r\n[c]\r\n[c]\r\n", "x\n", "[a.b]\nc=1\n[a]\nb=2\n"])
def test_another_fault_near_a_count_is_not_called_a_length(text: str) -> None:
    with pytest.raises(ProjectFileError, match=r"project: line \d: ") as caught:
        project_from_text(text)
    assert "a length stands" not in str(caught.value)
