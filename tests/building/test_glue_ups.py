"""Glue-ups against counts worked by hand, and against rules over random projects."""

from collections import Counter
from dataclasses import replace

from shoplib.building.glue_time import USUAL, GlueTime
from shoplib.building.glue_ups import glue_ups
from shoplib.building.order import build_order
from shoplib.buying.brads import backs_from_behind
from shoplib.buying.surfaces import is_glued
from shoplib.checks.parting import HELD_AT_ENDS, put_together
from shoplib.model.board import CASE
from shoplib.model.cabinet import solve
from tests.building.cases import SHIPPED, shipped
from tests.random_projects import project


def goes_of(cabinet):
    return [step.go for step in build_order(cabinet) if step.kind == "glue"]


def test_the_case_under_the_bench_by_hand():
    """Two dividers in bottom and top: 4. Two sides with bottom and top each: 4, and the toe board's two ends: 6."""
    first, second = goes_of(shipped("under_bench_case"))
    assert first.boards == ("bottom", "divider 1", "divider 2", "top") and len(first.joints) == 4
    assert second.boards == ("left side", "right side", "toe board") and len(second.joints) == 6
    assert sorted(second.standing) == sorted(first.boards)


def test_the_time_that_the_glue_stays_open():
    """By hand: (10 - 2) / 1 = 8 joints; 12 minutes give 10, all of this case in one go; 4 give 2."""
    cabinet = shipped("under_bench_case")
    assert USUAL.joints == 8 and GlueTime(12).joints == 10 and GlueTime(4).joints == 2 and GlueTime(1).joints == 1
    backs = backs_from_behind(cabinet)
    boards = [board for board in cabinet.groups["case"] if board.stage == CASE]
    entries = [e for e in put_together(boards, cabinet.joints) if e.board not in backs]
    assert [len(go.joints) for go in glue_ups(entries, cabinet, GlueTime(12))] == [10]
    slow = [len(go.joints) for go in glue_ups(entries, cabinet, GlueTime(4))]
    assert sum(slow) == 10 and max(slow) <= 2


def test_boxes_are_glued_corner_by_corner():
    """Four corners; the bottom floats in its grooves and is not glued."""
    for name in SHIPPED:
        boxes = [step.boxes for step in build_order(shipped(name)) if step.boxes]
        assert boxes and all([len(go.joints) for go in alike.goes] == [4] for alike in boxes)


def test_each_joint_is_glued_once_and_none_hangs_free(count):
    for seed in range(count(20, 400)):
        cabinet = solve(project(seed))
        goes, backs = goes_of(cabinet), backs_from_behind(cabinet)
        glued = Counter(joint for go in goes for joint in go.joints)
        apart = {b.name for b in cabinet.groups["case"] if b.stage != CASE or b.role in ("plinth", "loose shelf")}
        expected = [
            joint for joint in cabinet.joints
            if is_glued(joint, cabinet) and not {joint.enters, joint.receives} & {*backs, *apart}
            and all(cabinet.by_name[name].group == "case" for name in (joint.enters, joint.receives))
        ]
        assert glued == Counter(expected), seed
        standing = set()
        for go in goes:
            standing |= {*go.boards}
            for name in go.boards:
                if cabinet.by_name[name].role in HELD_AT_ENDS:
                    assert {j.receives for j in cabinet.joints if j.enters == name} <= standing, (seed, name)


def test_a_go_holds_more_than_the_time_allows_only_where_nothing_of_it_can_wait(count):
    for seed in range(count(20, 400)):
        cabinet = solve(project(seed))
        for go in goes_of(cabinet):
            if len(go.joints) > USUAL.joints:
                entries = list(go.entries)
                assert len(glue_ups(entries, cabinet)) == 1, seed


def test_fewer_goes_where_the_glue_stays_open_longer():
    cabinet = shipped("small_parts_wall_case")
    assert len(goes_of(cabinet)) == 4
    slow = [step for step in build_order(cabinet, GlueTime(30)) if step.kind == "glue"]
    assert len(slow) == 1
    assert len(slow[0].go.joints) == sum(len(go.joints) for go in goes_of(cabinet))
    assert replace(USUAL, a_joint=2).joints == 4
