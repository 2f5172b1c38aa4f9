"""Cautions stand in a heavy frame in the step, and on the first page, that is about them: whichever a project asks for.

The sentences come from their own records, so that better words need no change here. Which caution belongs to which
work is common practice, no source; those of the saw are listed with their sources in `data/cautions.toml`.
"""

import tomllib
from functools import cache
from pathlib import Path

import pytest

from shoplib.building.order import build_order
from shoplib.documents.cautions import (
    ANCHOR,
    CASTERS,
    DRAWERS,
    LIFTING,
    PULL_OUT,
    RULES,
    SLOTS,
    TOOLS,
    WALL,
)
from shoplib.documents.cut_order_words import rough_cautions
from shoplib.documents.slides_section import stop_words
from shoplib.measure import write_brief
from shoplib.model.solved import Cabinet
from shoplib.printed.build.drawers import hang_boxes
from shoplib.printed.build.fronts import pulls
from shoplib.printed.build.words import SAW_AGAIN
from shoplib.printed.plan.caution_page import caution_pages
from shoplib.printed.plan.hardware_pages import hardware_pages
from shoplib.printed.typeset.blocks import Bullets, Framed, ToTick, Words
from tests.building.cases import SHIPPED, shipped
from tests.printed.test_build_pages import flat, pages_of, steps_of, words

RECORDS = tomllib.loads(
    (Path(__file__).parents[2] / "data" / "cautions.toml").read_text(encoding="utf-8"))["caution"]
OF_PLACE = {ANCHOR, CASTERS, WALL}
"""How the case is held: a project is stood, rolled or hung, and the others do not apply."""
HELD = {"under_bench_case": ANCHOR, "finger_jointed_drawers": ANCHOR, "rolling_stand": CASTERS,
        "small_parts_wall_case": WALL, "wheel_wall_drawers": WALL}
"""By hand from the project files: `stands = "hung"`, `base.kind = "casters"`."""
PULLED_OUT = "under_bench_case"
"""The only one with a panel that is pulled out."""
EVERY = pytest.mark.parametrize("name", SHIPPED)


def framed(blocks):
    """Every sentence that stands in a frame, those of bullets too."""
    found = []
    for frame in (block for block in flat(blocks) if isinstance(block, Framed)):
        for block in frame.blocks:
            found += [block.text] if isinstance(block, Words) else block.lines if isinstance(block, Bullets) else []
    return found


@cache
def frames_of(name):
    """For each kind of step of a project the sentences in the frames of each such step."""
    found = {}
    cabinet = shipped(name)
    for step, blocks in zip(build_order(cabinet), steps_of(pages_of(cabinet)), strict=True):
        found.setdefault(step.kind, []).append(framed(blocks))
    return found


@EVERY
def test_the_step_that_sets_it_in_place_says_how_it_is_held_and_that_two_lift(name):
    [told] = frames_of(name)["place"]
    assert LIFTING in told
    assert OF_PLACE & {*told} == {HELD[name]}


@EVERY
def test_the_load_comes_with_all_that_can_tip_it(name):
    [told] = frames_of(name)["load"]
    assert OF_PLACE & {*told} == {HELD[name]}
    assert DRAWERS in told and RULES in told
    assert (PULL_OUT in told) == (name == PULLED_OUT)


@EVERY
def test_drawers_and_pull_outs_are_not_pulled_unwarned(name):
    steps = frames_of(name)
    assert [DRAWERS in told for told in steps["hang boxes"]] == [True]
    assert [PULL_OUT in told for told in steps.get("pull-outs", [])] == [True] * (name == PULLED_OUT)


@EVERY
def test_each_step_that_cuts_boards_has_the_cautions_of_the_saw(name):
    """A step `runs` cuts only where runners are of wood; the first cuts have those of every tool."""
    steps = frames_of(name)
    again = {kind: told for kind, told in steps.items() if kind in ("trim", "box", "pull-outs", "strips", "fronts")}
    assert {"box", "fronts"} <= {*again}
    assert all(SAW_AGAIN in one for told in again.values() for one in told)
    assert [SAW_AGAIN in told for told in steps.get("runs", [])] in ([], [name == "wheel_wall_drawers"])
    assert all(TOOLS in one for kind in ("cut the case", "joints") for one in steps.get(kind, []))
    [joints] = steps.get("joints", steps["cut the case"])
    assert SLOTS in joints
    assert all(LIFTING in one for one in steps["dry run"])


FASTENED = {ANCHOR: "anchored", CASTERS: "casters locked", WALL: "hung"}


@EVERY
def test_what_flies_or_comes_out_of_a_face_is_framed_where_it_is_driven(name):
    """Brads of a nailed back, the points of screws through a box front, rough wood at the planer."""
    cabinet, steps = shipped(name), frames_of(name)
    assert all(any("Brads" in text and "eye protection" in text for text in told) for told in steps.get("back", []))
    assert len(steps.get("back", [])) == (name in ("under_bench_case", "rolling_stand"))
    [fronts] = steps["fronts"]
    sizes = {f"{screw.gauge} x {write_brief(screw.length, cabinet.style)} for " for fitting in cabinet.hardware
             if fitting.what == "front screws" for screw in fitting.screws}
    assert sizes and any("Screws from inside" in text and "Keep the hand away" in text and
                         all(size in text for size in sizes) for text in fronts)
    planed = [rough_cautions(cabinet)] if name == "wheel_wall_drawers" else []
    assert len(planed) == len(steps.get("solid wood", []))
    assert all(said and {*said} <= {*told} for said, told in zip(planed, steps.get("solid wood", []), strict=True))


@EVERY
def test_the_case_is_held_before_its_drawers_are_pulled(name):
    [told] = frames_of(name)["hang boxes"]
    [held] = [text for text in told if text.endswith("before a box is pulled out.")]
    assert next(word for word in ("casters locked", "hung", "anchored") if word in held) == FASTENED[HELD[name]]


@EVERY
def test_stopped_cuts_are_warned_of_where_there_are_some(name):
    """By hand: only the dadoes of the rolling stand end before the front edge of its dividers and sides."""
    steps, stopped = frames_of(name), {one["say"] for one in RECORDS["stopped cut"]}
    [told] = steps.get("joints", steps["cut the case"])
    assert {*told} & stopped == (stopped if name == "rolling_stand" else set())
    assert len(stopped) > 2


@EVERY
def test_pulls_are_drilled_into_a_waste_board(name):
    """A drill that comes through free tears the rim of the hole, and goes on into what lies behind."""
    cabinet = shipped(name)
    [told] = framed(pulls(cabinet)),
    assert any("waste board behind the" in text and "never hold it in the hand" in text for text in told)
    [drilled] = [line for block in pulls(cabinet) if isinstance(block, ToTick) for line in block.lines
                 if line.startswith("Drill")]
    assert drilled.endswith("into the waste board.")


@EVERY
def test_a_drawer_on_wood_gets_its_stop_before_it_is_pulled(name):
    """Nothing holds a box on runners or on its shelf; a bought slide does."""
    cabinet = shipped(name)
    on_wood = name in ("small_parts_wall_case", "wheel_wall_drawers")
    told = stop_words(cabinet)
    assert len(told) == on_wood
    for text in told:
        assert text in words(hardware_pages(cabinet))
        [lines] = [block.lines for block in hang_boxes(cabinet) if isinstance(block, ToTick)]
        assert lines.index(text) < next(n for n, line in enumerate(lines) if line.startswith("Pull each out"))


@EVERY
def test_the_caution_page_frames_what_the_whole_work_and_the_saw_ask_for(name):
    frames = {block.title: framed([block]) for block in caution_pages(shipped(name), (), (), None)
              if isinstance(block, Framed)}
    work = {*frames["While you cut, lift and load"]}
    assert {TOOLS, SLOTS, LIFTING, DRAWERS, RULES, HELD[name]} <= work
    assert (PULL_OUT in work) == (name == PULLED_OUT) and (CASTERS in work) == (HELD[name] == CASTERS)
    saw = {one["say"] for of in ("every tool", "sheet at the saw") for one in RECORDS[of]}
    assert saw <= {*frames["At the saw"]} and len(saw) > len(RECORDS["every tool"])


def test_the_saw_is_warned_of_before_plain_boards_too():
    titles = [block.title for block in caution_pages(Cabinet("plain boards", (), {}), (), (), None)
              if isinstance(block, Framed)]
    assert {"While you cut, lift and load", "At the saw"} <= {*titles}
