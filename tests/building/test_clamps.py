"""Clamps: numbers worked by hand for one case; reach never short of what lies between the jaws."""

from dataclasses import replace

from shoplib.building.clamps import RULES, clamps_for
from shoplib.building.glue_ups import GlueUp
from shoplib.building.order import build_order
from shoplib.measure import INCH, MM
from shoplib.model.board import CASE
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, JointChoice, Shelves
from tests.building.cases import SHIPPED, shipped
from tests.lists.projects import stand
from tests.random_projects import project


def goes(cabinet):
    for step in build_order(cabinet):
        if step.go:
            yield step.go
        if step.boxes:
            yield from step.boxes.goes


def test_the_case_under_the_bench_by_hand():
    """Go 1 from under the bottom, 4 in up, to the top, 33 1/2 in: 29 1/2 in; with two cauls of 3/4 in and 1/2 in of
    play 31 1/2 in, sold as 36 in. Two dividers, 22 1/4 in deep: at most 8 in apart makes 3 each. Go 2 over 60 in:
    62 in, sold as 72 in; bottom and top 22 1/2 in deep, 3 each, toe board 4 in high, 1.
    """
    first, second = [clamps_for(go, shipped("under_bench_case")) for go in goes(shipped("under_bench_case"))][:2]
    assert [(c.axis, c.count) for c in (*first, *second)] == [("z", 6), ("x", 7)]
    assert [c.across for c in (*first, *second)] == [59 * INCH // 2, 60 * INCH]
    assert [c.reach for c in (*first, *second)] == [63 * INCH // 2, 62 * INCH]
    assert [c.sold for c in (*first, *second)] == [36 * INCH, 72 * INCH]
    assert second[0].over == ("bottom", "top", "toe board")


def test_metric_by_hand():
    """400 mm wide: 400 + 2 x 20 + 15 = 455 mm, sold as 600 mm; 430 mm deep: 200 mm apart makes 3 at top and bottom."""
    [go] = [step.go for step in build_order(shipped("finger_jointed_drawers")) if step.go]
    [clamps] = clamps_for(go, shipped("finger_jointed_drawers"))
    assert (clamps.axis, clamps.count, clamps.reach, clamps.sold) == ("x", 6, 455 * MM, 600 * MM)


def check_reach(cabinet):
    rule = RULES[cabinet.style.unit]
    for go in goes(cabinet):
        for clamps in clamps_for(go, cabinet):
            k = "xyz".index(clamps.axis)
            for joint in go.joints:
                if joint.axis[1] != clamps.axis or joint.kind == "pocket screws":
                    continue
                boxes = [cabinet.by_name[name].box for name in (joint.enters, joint.receives)]
                outside = max(box.high[k] for box in boxes) - min(box.low[k] for box in boxes)
                assert clamps.across >= outside
            assert clamps.reach >= clamps.across + 2 * rule.caul
            assert (clamps.sold is None and clamps.reach > rule.sold[-1]) or clamps.sold >= clamps.reach
            assert clamps.count >= len(clamps.over) > 0


def test_no_clamp_is_too_short(count):
    for name in SHIPPED:
        check_reach(shipped(name))
    for seed in range(count(20, 400)):
        check_reach(solve(project(seed)))


def test_once_both_sides_are_on_a_clamp_spans_the_whole_case():
    """The last go that presses from side to side reaches over the case as wide as it is outside."""
    for name in SHIPPED:
        cabinet = shipped(name)
        case = [board.box for board in cabinet.groups["case"] if board.stage == CASE and board.role == "side"]
        wide = max(box.high[0] for box in case) - min(box.low[0] for box in case)
        widest = max(c.across for step in build_order(cabinet) if step.go
                     for c in clamps_for(step.go, cabinet) if c.axis == "x")
        assert widest >= wide


def test_stretchers_in_front_and_behind_are_pressed_apart():
    """A stretcher in front and one behind, 4 in wide and as high as one another: each has a clamp of its own."""
    drawn = shipped("under_bench_case").project
    corner = replace(drawn.carcass.corner, kind="dado")
    case = solve(replace(drawn, carcass=replace(drawn.carcass, top="stretchers", corner=corner)))
    stretchers = {board.name for board in case.boards if board.role == "stretcher"}
    assert len(stretchers) == 2
    sideways = [clamps for go in goes(case) for clamps in clamps_for(go, case)
                if clamps.axis == "x" and stretchers & {*clamps.over}]
    assert stretchers <= {name for clamps in sideways for name in clamps.over}


def test_pocket_screws_need_no_clamps():
    """The rail of this case is held by pocket screws: no clamp is counted over it."""
    cabinet = shipped("finger_jointed_drawers")
    assert any(j.kind == "pocket screws" and j.enters == "rail 1" for j in cabinet.joints)
    assert not any("rail 1" in clamps.over for go in goes(cabinet) for clamps in clamps_for(go, cabinet))


def test_a_floating_back_is_not_between_the_jaws():
    """By hand: 900 mm over two sides, 18.1 mm by their readings. Before the second goes on, the bottom ends at 881.9 mm
    and the back, 9 mm deep in its groove, at 890.9 mm: the clamp bears on the bottom and the top.
    """
    sheet = "birch 18"
    carcass = Carcass(sheet, corner=JointChoice("butt"), back=Back("groove", sheet, 9 * MM))
    cabinet = solve(stand(carcass=carcass, bays=(Bay("shelves", shelves=Shelves()),), edging=()))
    [whole] = goes(cabinet)
    first = GlueUp(tuple(entry for entry in whole.entries if entry.board != "right side"),
                   tuple(joint for joint in whole.joints if joint.receives != "right side"))
    assert "back" in first.boards and cabinet.by_name["back"].box.high[0] == 8909 * MM // 10
    [clamps] = clamps_for(first, cabinet)
    assert (clamps.axis, clamps.across) == ("x", 8819 * MM // 10)
