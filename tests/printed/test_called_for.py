"""Each step of the build order calls for the template or stick that serves it, by the number on the template."""

import re

import pytest

from shoplib.documents.paper import PAPERS
from shoplib.measure import MM
from shoplib.printed.build.called_for import across_words
from shoplib.printed.build.cutting import cut_the_case
from shoplib.printed.build.drawers import runs
from shoplib.printed.build.fronts import pulls
from shoplib.printed.build.pull_outs import pull_outs
from shoplib.printed.true_scale.sticks import across_stick
from shoplib.printed.true_scale.story_stick import story_stick_pages
from shoplib.printed.true_scale.template_pages import template_pages
from shoplib.printed.typeset.blocks import Table
from tests.building.cases import SHIPPED, shipped
from tests.printed.test_build_pages import pages_of, words

STEPS = {
    "slides and runners": lambda cabinet: runs((), cabinet),
    "holes for shelf pins": cut_the_case,
    "holes for pegs": lambda cabinet: pull_outs(
        tuple(board.name for board in cabinet.boards if "pull-out" in board.group), cabinet),
    "holes for pulls": pulls,
}


def listed(cabinet):
    """For each use the numbers of its templates, as the first page of templates.pdf has them."""
    found = {}
    for block in template_pages(cabinet, PAPERS["letter"]):
        if isinstance(block, Table):
            for number, what, *_ in block.rows:
                found.setdefault(what, []).append(number)
    return found


@pytest.mark.parametrize("name", SHIPPED)
def test_every_template_is_called_for_by_its_number(name):
    cabinet = shipped(name)
    for what, numbers in listed(cabinet).items():
        told = words(STEPS[what](cabinet))
        for number in numbers:
            called = re.search(rf"templates? [\d, toand]*\b{number}\b", told) or _within(int(number), told)
            assert called, (what, number)


def _within(number, told):
    return any(int(a) <= number <= int(b) for a, b in re.findall(r"templates (\d+) to (\d+)", told))


@pytest.mark.parametrize("name", SHIPPED)
def test_the_stick_across_is_called_for_where_it_has_a_divider(name):
    cabinet = shipped(name)
    divided = any(board.role == "divider" for board in cabinet.boards)
    assert ("\u201cAcross\u201d" in words(pages_of(cabinet))) == divided
    assert any("across" in getattr(page, "alt", "") for page in story_stick_pages(cabinet, PAPERS["letter"]))


@pytest.mark.parametrize("name", SHIPPED)
def test_the_stick_across_has_a_mark_for_each_end_that_it_is_laid_on(name):
    """A loose bottom has no outside of the case: where its own end is, is on the stick, and the step says so."""
    cabinet = shipped(name)
    dividers = [board for board in cabinet.boards if board.role == "divider"]
    zero = min(board.box.low[0] for board in cabinet.boards if board.role == "side")
    marks = {what: mark.at for mark in across_stick(cabinet).marks for what in mark.what.split("; ")}
    for board in cabinet.boards:
        if board.role in ("bottom", "top") and dividers:
            assert board.name in across_words(cabinet)[0]
            assert marks[f"{board.name}, left end"] == board.box.low[0] - zero
            assert marks[f"{board.name}, right end"] == board.box.high[0] - zero
            for divider in dividers:  # from that end to the divider the stick tells where the board is cut for it
                dado = next(board.placement.to_world(cut.box).low[0] for cut in board.cuts
                            if cut.for_board == divider.name) if board.role == "bottom" else divider.box.low[0]
                told = marks[f"{divider.name}, left face"] - marks[f"{board.name}, left end"]
                assert 0 <= told - (dado - board.box.low[0]) < MM // 4
    assert bool(dividers) == bool(across_words(cabinet))
