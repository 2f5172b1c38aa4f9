"""Solid wood on the papers: what is rough and what is finished is said, and how it is flattened and planed.

Common practice, no source: a board is jointed and planed while it is long, then sawn, glued up, trimmed, and jointed.
"""

import json

import pytest

from shoplib.documents.paper import PAPERS
from shoplib.measure import INCH
from shoplib.printed.build.cutting import solid_wood, trim
from shoplib.printed.plan.caution_page import caution_pages
from shoplib.printed.plan.cut_list_pages import cut_list_pages
from shoplib.printed.plan.sheet_pages import sheet_pages
from shoplib.printed.typeset.blocks import ToTick, as_data
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
        "sheets": ("parts are rough here", "flatten, plane and joint the boards", "A has its width",
                   "C is rough: glued up, then trimmed to",
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


def test_what_is_too_short_for_jointer_and_fence_is_ripped_in_one_piece():
    """Under 12 in: common practice, no source. By hand: sides 7 1/2 in x 9 1/4 in and the divider of the ash case are.

    Each got its finished width by a rip of a longer piece, and the step that trims them crosscuts them only.
    """
    found = solved("wheel_wall_drawers").found
    [job] = [job for job in found.jobs if job.ask.sheet.name == "ash" and 1 in job.ask.stages]
    for letter, wide in (("A", INCH * 37 // 4), ("B", found.cabinet.by_name["divider 1"].width)):
        part = job.ask.letters.index(letter)
        into = [step for step in job.steps for piece in (*step.off, step.left) if piece and piece.part == part]
        assert into and {(step.kind, step.piece.at.h) for step in into} == {("crosscut", wide)}
        rips = [step for step in job.steps if step.kind == "rip" and step.fence == wide]
        assert rips and all(step.edge > 12 * INCH for step in rips)
    [trimmed] = [block.lines for block in trim(found.cabinet, *found.jobs) if isinstance(block, ToTick)]
    at = next(number for number, line in enumerate(trimmed) if "only crosscut" in line)
    assert "rip to width" not in " ".join(trimmed[at:]) and "along the fence" in trimmed[at]
    assert [line.split(":")[0] for line in trimmed[at + 1:at + 3]] == ["Left side and right side", "Divider 1"]
    assert not any(name in line for line in trimmed[:at] for name in ("ide and", "ivider"))
