"""The compared cells of each lesson come to what their givens make: none is a number that was typed there."""

import ast
import sys
from fractions import Fraction

import nbformat
import pytest

from shoplib.lessons.worked import Worked
from shoplib.measure import read_length
from tests.notebook_checks import EXPECTED, LEAST_COMPARED
from tests.pages import JOINTS, PAGES

LESSONS = [page for page in PAGES if page.stem[:1] == "0" and page.stem[:2] != "00"] + JOINTS
READERS = ("shoplib.lessons.", "shoplib.live.")

FIXED = {"limits_worked", "conflicts_worked"}
"""What rests on no length of a lesson's texts: rows of the tables, and sheets and screws of the panel's own case. The
tests of its page hold each to its source.
"""


def comes_to(page, refused=()):
    """By the call of each compared sum of a page, the last column of what it shows; nothing where it is `refused`."""
    names, found = {}, {}
    for cell in nbformat.read(page, as_version=4).cells:
        if EXPECTED not in cell.metadata.get("tags", ()):
            continue
        *before, last = ast.parse(cell.source).body
        exec(compile(ast.Module(before, []), page.name, "exec"), names)
        call = ast.unparse(last)
        if "_worked(" not in call or call.startswith("trial_worked("):
            continue  # a picture: tests/lessons/test_dimensions.py reads the sizes on it
        try:
            worked = eval(call, names)
        except refused:
            found[call] = None
        else:
            assert isinstance(worked, Worked), call
            found[call] = [line[2] for line in worked.lines]
    return found


@pytest.mark.parametrize("page", LESSONS, ids=lambda page: page.stem)
def test_results_follow_what_is_given(page, monkeypatch):
    """All lengths that a lesson is given in its texts are read as longer ones, a quarter first, then twice."""
    as_given, follow = comes_to(page), set()
    for factor in (Fraction(5, 4), 2):
        def longer(*text, factor=factor, **how):
            return int(read_length(*text, **how) * factor)

        for name, module in list(sys.modules.items()):
            if name.startswith(READERS) and hasattr(module, "read_length"):
                monkeypatch.setattr(module, "read_length", longer)
        # Twice as much may be more than a case takes; what is refused then has followed before.
        now = comes_to(page, refused=(ValueError, LookupError))
        follow |= {call for call, told in now.items() if told not in (None, as_given[call])}
    assert len(follow) >= LEAST_COMPARED
    assert {call.partition("(")[0] for call in as_given.keys() - follow} <= FIXED
