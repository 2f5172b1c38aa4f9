"""Each step of the build order calls for the template or stick that serves it, by the number on the template."""

import re

import pytest

from shoplib.documents.paper import PAPERS
from shoplib.printed.build.cutting import cut_the_case
from shoplib.printed.build.drawers import pull_outs, runs
from shoplib.printed.build.fronts import pulls
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
