"""What the steps from the finish inside to the last glue-up say: in which order, for how long, with which screws."""

from dataclasses import replace

import pytest

from shoplib.building.glue_time import USUAL
from shoplib.building.glue_ups import GlueUp
from shoplib.building.order import build_order
from shoplib.buying.screws import planned
from shoplib.measure import MM
from shoplib.model.board import CASE
from shoplib.model.cabinet import solve
from shoplib.model.project import Base, Carcass, JointChoice
from shoplib.printed.build.glue import glue_up
from shoplib.printed.typeset.blocks import ToTick, Words
from tests.building.cases import SHIPPED, shipped
from tests.lists.projects import stand
from tests.printed.test_build_pages import flat, pages_of, steps_of

EVERY = pytest.mark.parametrize("name", SHIPPED)


def steps(name, kind):
    """The lines to tick and the sentences of each step of a kind."""
    cabinet = shipped(name)
    return [said(blocks) for step, blocks in zip(build_order(cabinet), steps_of(pages_of(cabinet)), strict=True)
            if step.kind == kind]


def said(blocks):
    lines = []
    for block in flat(blocks):
        lines += block.lines if isinstance(block, ToTick) else [block.text] if isinstance(block, Words) else []
    return lines


@EVERY
def test_what_comes_next_is_set_on_dry_in_every_glue_up_but_the_last(name):
    """It keeps in line what is glued now (common practice, no source); after the last nothing comes."""
    dry = [any("Set on dry the boards that come next" in line for line in lines) for lines in steps(name, "glue")]
    assert dry == [True] * (len(dry) - 1) + [False]


def test_more_joints_than_the_open_time_allows_are_said():
    """By hand: (10 - 2) / 1 = 8 joints; 9 of them take 9 x 1 + 2 = 11 minutes of 10."""
    cabinet = shipped("under_bench_case")
    go = next(step.go for step in build_order(cabinet) if step.go)
    for count, minutes in ((8, 10), (9, 11)):
        many = replace(go, joints=(go.joints * 3)[:count])
        told = " ".join(said(glue_up(many, False, cabinet)))
        assert f"{count} joints to glue: about {minutes} of the 10 minutes" in told
        assert ("more than one person glues in this time" in told) == (count > USUAL.joints)
        assert ("second person" in told) == (count == 9)


def test_what_is_butted_gets_its_screws_in_its_own_glue_up():
    """By hand, two in each of the two ends: toe board and rails. A rail in pockets has its screws from these."""
    butted = {name: [[line for line in lines if "glue alone does not hold" in line] for lines in steps(name, "glue")]
              for name in SHIPPED}
    goes = {name: [len(lines) for lines in several] for name, several in butted.items()}
    assert goes == {"under_bench_case": [0, 1], "finger_jointed_drawers": [0], "rolling_stand": [0, 0],
                    "small_parts_wall_case": [0, 0, 0, 1], "wheel_wall_drawers": [1]}
    for name, what in (("under_bench_case", "Toe board"), ("small_parts_wall_case", "Rail 1"),
                       ("wheel_wall_drawers", "Rail 1")):
        [line] = butted[name][-1]
        assert line.startswith(f"{what}: butted") and "4 of No. 8 × " in line and "pilot hole" in line
    [[pockets]] = [[line for line in lines if "pocket screws" in line]
                   for lines in steps("finger_jointed_drawers", "glue")]
    assert pockets.startswith("Rail 1: with pocket screws")


def test_each_butted_board_has_its_own_screws_and_not_those_of_pockets():
    """By hand: a divider 500 mm deep has four in each of its two ends; a toe board, two. All others are in pockets.

    Screws of pockets are 19 mm long here, into sheets of 18 mm.
    """
    carcass = Carcass("birch 18", corner=JointChoice("pocket screws"), divider=JointChoice("butt"),
                      shelf=JointChoice("pocket screws"))
    cabinet = solve(stand(carcass=carcass, base=Base("toe space", 100 * MM, 50 * MM)))
    assert {need.length for need in planned(cabinet) if need.head == "pocket"} == {19 * MM}
    lines = [line for step in build_order(cabinet) if step.go
             for line in said(glue_up(step.go, False, cabinet)) if "glue alone does not hold" in line]
    told = {line.partition(":")[0]: line.partition("buying list, ")[2].partition(". Keep")[0] for line in lines}
    assert told == {"Divider 1": "8 of 4.0 mm × 50 mm", "Toe board": "4 of 4.0 mm × 50 mm"}


@EVERY
def test_the_dry_run_tries_the_longest_board_of_the_case(name):
    """Not the back, which is thin, nor one that is cut later: a bow in it no clamp has to draw straight."""
    lengths = {board.name: max(board.length, board.width) for board in shipped(name).boards
               if board.stage == CASE and board.role not in ("back", "loose shelf", "plinth")}
    [told] = [line for line in steps(name, "dry run")[0] if "longest board" in line]
    named = told.partition("The longest board is ")[2].partition(":")[0]
    assert lengths[named] == max(lengths.values()) > min(lengths.values())


@EVERY
def test_the_faces_that_look_inside_are_finished_inside(name):
    """The bottom is looked at from above and the top from below; back and rail close the case behind."""
    roles = {board.role for board in shipped(name).boards}
    [lines] = steps(name, "finish inside")
    [told] = [line for line in lines if line.startswith("These look inside: ")]
    faces = {"side": "inside faces of the sides", "bottom": "upper face of the bottom", "top": "underside of the top",
             "divider": "both faces of the dividers", "fixed shelf": "both faces of the fixed shelves",
             "back": "front face of the back", "rail": "front face of the rail"}
    assert {role for role, face in faces.items() if face in told} == roles & faces.keys()


@EVERY
def test_spacers_are_worked_from_the_top_down(name):
    """From the bottom up a spacer would have to stand on the slide below."""
    for lines in steps(name, "runs"):
        [told] = [line for line in lines if line.startswith("Work from the")]
        assert told.startswith("Work from the top down")
    assert bool(steps(name, "runs")) == (name != "small_parts_wall_case")


def test_a_single_joint_is_told_as_one():
    cabinet = shipped("rolling_stand")
    go = next(step.go for step in build_order(cabinet) if step.go)
    told = " ".join(said(glue_up(GlueUp(go.entries, go.joints[:1]), True, cabinet)))
    assert "1 joint to glue: about 3 of the 10 minutes" in told
