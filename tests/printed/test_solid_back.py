"""A back of solid wood moves with the season: every paper holds it without glue, and says so in one way.

The width of solid wood moves, its length next to nothing (Wood Handbook FPL-GTR-282, chapter 4); that such a back is
screwed, with slots on both sides of its middle, is common practice, no source.
"""

from dataclasses import replace
from functools import cache

import pytest

from shoplib.building.glue_faces import glue_faces
from shoplib.building.order import build_order
from shoplib.buying.assumed import assumed
from shoplib.buying.by_area import area_lines
from shoplib.buying.screws import estimated
from shoplib.buying.surfaces import glue_area
from shoplib.checks.solid_moves import find_bottoms_without_room
from shoplib.documents.examples import example
from shoplib.documents.fixings import fixings
from shoplib.documents.project_file import project_from_text
from shoplib.model.cabinet import solve
from shoplib.printed.build.case import finish_inside
from tests.printed.test_build_pages import pages_of, steps_of
from tests.printed.test_glue_up_pages import said

KINDS = pytest.mark.parametrize("kind", ["rabbet", "applied"])


@cache
def with_back(kind, sheet="ash"):
    """The drawers over the wheel bench, their back of ash boards, its grain from left to right."""
    text = example("wheel_wall_drawers").read_text(encoding="utf-8")
    before, rest = text.split("[carcass.back]")
    rest = rest[rest.index("\n[["):]
    return solve(project_from_text(f'{before}[carcass.back]\nkind = "{kind}"\nsheet = "{sheet}"\n{rest}'))


def step(kind, of):
    cabinet = with_back(of)
    [lines] = [said(blocks) for step, blocks in zip(build_order(cabinet), steps_of(pages_of(cabinet)), strict=True)
               if step.kind == kind][-1:]
    return " ".join(lines)


@KINDS
def test_nothing_of_it_is_glued_masked_or_counted_as_glued(kind):
    """Against the same back of plywood, whose joints are glued and masked."""
    dry, glued = with_back(kind), with_back(kind, "box sheet")
    assert not [face for face in glue_faces(dry) if "back" in (face.board, face.to)]
    assert [face for face in glue_faces(glued) if "back" in (face.board, face.to)]
    without = replace(dry, joints=tuple(joint for joint in dry.joints if joint.enters != "back"))
    assert glue_area(dry) == glue_area(without) < glue_area(glued)
    inside = " ".join(said(finish_inside(dry)))
    assert "Nothing is masked for back: it is screwed on without glue" in inside and "floats" not in inside


@KINDS
def test_its_step_names_its_screws_and_neither_glue_nor_brads(kind):
    """By hand, one for every 6 in, two at least: two into each side, five into bottom and top, 24 to 25 in long.

    Pilot holes 4/9 of 2 in deep, to the nearest 1/32 in.
    """
    told = step("back", kind)
    assert "of solid wood and moves with the season: no glue, or it splits" in told
    assert "2 of No. 8 × 2 in into each of left side and right side" in told
    assert "5 of No. 8 × 2 in into each of bottom and top" in told
    assert "behind each a pilot hole" in told and "7/8 in deep" in told
    assert "At its left and right end one goes through a round hole in the middle of its width" in told
    assert "all others through slots across the grain" in told
    for wrong in ("brad", "before the glue sets", "hand's width", "let it set", "thin line of glue", "for it squares"):
        assert wrong not in told, wrong
    assert {need.head for need in estimated(with_back(kind)) if need.passed.role == "back"} == {"flat-head"}


@KINDS
def test_runners_are_bored_for_their_own_screws_and_not_for_those_of_the_back(kind):
    """By hand: four runners of two screws each; the back has fourteen of its own, which are estimated as well."""
    assert "Bore them for their screws, 8 of No. 8 × 3/4 in." in step("runs", kind)


@KINDS
def test_it_goes_on_last_and_the_case_is_squared_by_its_clamps(kind):
    kinds = [one.kind for one in build_order(with_back(kind))]
    assert kinds.index("back") == len(kinds) - 1 - kinds[::-1].index("glue") + 1
    assert "goes on later, dry, and squares nothing: leave it in the clamps" in step("glue", kind)


@KINDS
def test_the_list_of_fixings_and_the_buying_list_say_the_same(kind):
    cabinet = with_back(kind)
    told = " ".join(fixings(cabinet).lines)
    assert ("A back of solid wood in a rabbet: the screws of the table, no glue." in told) == (kind == "rabbet")
    assert ("none under runners, fronts and backs of solid wood" in told) == (kind == "applied")
    assert "A back of solid wood is screwed, without glue." in " ".join(assumed(cabinet, area_lines(cabinet)))


def test_a_back_without_room_is_told_what_a_back_can_do():
    """A bottom may run out under the low back of its box; the back of a case has no such way, and lies in rabbets."""
    [told] = [one.text for one in find_bottoms_without_room(with_back("rabbet")) if "back" in one.boards]
    assert "its rabbets leave 0 in" in told and "use quartersawn wood, which moves less" in told
    assert "groove" not in told and "low back" not in told


def test_a_back_of_plywood_keeps_its_glue_and_its_brads():
    cabinet = with_back("rabbet", "box sheet")
    [blocks] = [blocks for step, blocks in zip(build_order(cabinet), steps_of(pages_of(cabinet)), strict=True)
                if step.kind == "back"]
    told = " ".join(said(blocks))
    assert "A thin line of glue all round" in told and "brads in all" in told and "slots" not in told
    assert "solid wood in a rabbet" not in " ".join(fixings(cabinet).lines)
