"""Solid wood on the papers: what is rough and what is finished is said, and how it is flattened and planed.

Common practice, no source: a board is jointed and planed while it is long, then sawn, glued up, trimmed, and jointed.
"""

import json

import pytest

from shoplib.documents.paper import PAPERS
from shoplib.printed.build.cutting import solid_wood
from shoplib.printed.plan.caution_page import caution_pages
from shoplib.printed.plan.cut_list_pages import cut_list_pages
from shoplib.printed.plan.sheet_pages import sheet_pages
from shoplib.printed.typeset.blocks import as_data
from tests.printed.sets import PROJECTS, solved

LETTER = PAPERS["letter"]


def words(blocks):
    return json.dumps(as_data(blocks), ensure_ascii=False)


@pytest.mark.parametrize("project", PROJECTS)
def test_only_a_project_with_rough_boards_speaks_of_them(project):
    of = solved(project)
    pages = {
        "cut list": words(cut_list_pages(of.cabinet, of.findings)),
        "sheets": words(sheet_pages(of.found, LETTER)),
        "cautions": words(caution_pages(of.cabinet, of.findings, of.in_use, of.found)),
    }
    said = {
        "cut list": ("Solid wood (ash): these are finished sizes", "1/2 in longer and 1/4 in wider than finished"),
        "sheets": ("parts are rough here", "flatten, plane and joint the boards", "A is rough: trimmed to",
                   "boards of all sheets, all boards trimmed to their finished sizes"),
        "cautions": ("At the jointer and the planer", "A rough or crooked edge never runs along the fence"),
    }
    solid = any(sheet.kind == "solid" for sheet in of.cabinet.project.sheets.values())
    assert solid == (project == "wheel_wall_drawers")
    for part, sentences in said.items():
        for sentence in sentences:
            assert (sentence in pages[part]) == solid, (part, sentence)


def test_only_wood_that_is_bought_is_brought_in():
    """The runners of the drawers over the wheel bench are ripped from its ash: no strip for them is brought in."""
    [bring] = [line for line in solid_wood(solved("wheel_wall_drawers").cabinet)[1].lines if line.startswith("Bring")]
    assert bring.startswith("Bring the ash into the shop")
