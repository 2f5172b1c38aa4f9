"""Drawer boxes told once for all that are made alike: which they are, and which of them is told."""

from dataclasses import replace

import pytest

from shoplib.building.boxes import alike_boxes
from shoplib.building.order import build_order
from shoplib.measure import INCH
from shoplib.model.cabinet import solve
from shoplib.model.project import Bay, Drawers, JointChoice
from tests.building.cases import shipped
from tests.building.sweep import faults
from tests.lists.projects import chest


@pytest.mark.parametrize(("ratio", "highest"), [((3, 2, 1), "bay 1 drawer 1"), ((1, 2, 3), "bay 1 drawer 3")])
def test_the_highest_of_boxes_made_alike_is_told(ratio, highest):
    """By hand, the ratio runs from the bottom up; the three boxes are as wide and as deep, with the same joints."""
    drawn = shipped("rolling_stand").project
    first, *others = drawn.bays
    bay = replace(first, drawers=replace(first.drawers, ratio=ratio))
    [alike] = alike_boxes(solve(replace(drawn, bays=(bay, *others))))
    assert alike.groups == ("bay 1 drawer 1", "bay 1 drawer 2", "bay 1 drawer 3")
    assert {entry.board for entry in alike.entries} == {
        f"{highest} {part}" for part in ("left box side", "right box side", "box front", "box back", "box bottom")}


def test_boxes_that_go_together_another_way_are_told_apart():
    """The fingers of the top drawer, the lowest box, lie otherwise beside the grooves: its walls close round its
    bottom, while the bottoms of the others slide in before the last side. Swept as told, no board strikes another
    (an independent solid modeller).
    """
    rule = Drawers(4, heights="stepped", difference=INCH // 2, box_sheet="box sheet", bottom_sheet="thin sheet",
                   corner=JointChoice("finger"), bottom_up=7 * INCH // 16)
    cabinet = solve(chest(bays=(Bay("drawers", drawers=rule),)))
    slid, closed = alike_boxes(cabinet)
    assert slid.groups == ("bay 1 drawer 1", "bay 1 drawer 2", "bay 1 drawer 3")
    assert closed.groups == ("bay 1 drawer 4",)
    assert any(entry.board.endswith("box bottom") and entry.way == "-x" for entry in slid.entries)
    assert closed.entries[0].board == "bay 1 drawer 4 box bottom"
    assert faults(cabinet, build_order(cabinet)) == []
