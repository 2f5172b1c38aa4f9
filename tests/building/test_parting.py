"""Every board can go in when its turn comes: against solids that know nothing of how the order was found."""

from dataclasses import replace

import pytest

from shoplib.building.order import build_order
from shoplib.checks.parting import WAYS, Captured, put_together
from shoplib.measure import MM
from shoplib.model.board import CASE
from shoplib.model.cabinet import solve
from tests.building.cases import SHIPPED, shipped
from tests.building.sweep import bodies_of, faults, struck
from tests.random_projects import project


def case_boards(cabinet):
    return [board for board in cabinet.groups["case"] if board.stage == CASE]


def stopped():
    """The case under the bench with dividers in stopped dadoes: once top and bottom are on, nothing lets them in."""
    drawn = shipped("under_bench_case").project
    divider = replace(drawn.carcass.divider, stop=20 * MM)
    return solve(replace(drawn, carcass=replace(drawn.carcass, divider=divider)))


def test_the_order_of_the_case_under_the_bench():
    """By hand: dividers stand in bottom and top, sides over their ends, then what lies between, the back last."""
    cabinet = shipped("under_bench_case")
    entries = put_together(case_boards(cabinet), cabinet.joints)
    assert [(entry.board, entry.way) for entry in entries] == [
        ("bottom", ""), ("divider 1", "-z"), ("divider 2", "-z"), ("top", "-z"), ("left side", "+x"),
        ("right side", "-x"), ("toe board", "+y"), ("back", "-y"),
    ]


@pytest.mark.parametrize("name", SHIPPED)
def test_every_board_goes_in(name):
    cabinet = shipped(name)
    assert faults(cabinet, build_order(cabinet)) == []


def test_every_board_of_random_projects_goes_in(count):
    for seed in range(count(6, 150)):
        cabinet = solve(project(seed))
        assert faults(cabinet, build_order(cabinet)) == [], seed


def test_a_captured_divider_placed_last_is_refused():
    """A divider in stopped dadoes, after top, bottom and back: from no side does it go in."""
    cabinet = stopped()
    steps = build_order(cabinet)
    assert faults(cabinet, steps) == []
    bodies = bodies_of(cabinet)
    others = [board.name for board in case_boards(cabinet) if board.name != "divider 1"]
    assert all(struck(bodies, ("divider 1",), others, way) for way in WAYS)
    go = next(step for step in steps if "divider 1" in step.boards)
    back = next(step for step in steps if step.kind == "back")
    entry = replace(next(e for e in go.entries if e.board == "divider 1"), onto=tuple(others))
    late = replace(back, entries=(*back.entries, entry))
    early = replace(go, entries=tuple(e for e in go.entries if e.board != "divider 1"))
    wrong = [early if step is go else late if step is back else step for step in steps]
    assert any(text.startswith("divider 1 -z strikes") and "top" in text for text in faults(cabinet, wrong))


def test_a_shelf_in_dadoes_goes_in_before_its_second_upright():
    cabinet = shipped("small_parts_wall_case")
    order = [entry.board for entry in put_together(case_boards(cabinet), cabinet.joints)]
    shelves = [board.name for board in case_boards(cabinet) if board.role == "fixed shelf"]
    assert len(shelves) == 8
    for shelf in shelves:
        uprights = [joint.receives for joint in cabinet.joints if joint.enters == shelf]
        assert order.index(shelf) < max(map(order.index, uprights))


def test_boards_in_one_another_are_captured():
    cabinet = shipped("under_bench_case")
    bottom = cabinet.by_name["bottom"]
    with pytest.raises(Captured) as refused:
        put_together([bottom, replace(bottom, name="twin")], ())
    assert set(refused.value.boards) == {"bottom", "twin"}
    doubled = replace(cabinet, boards=(*cabinet.boards, replace(bottom, name="twin")))
    assert [step.kind for step in build_order(doubled)].count("captured") == 1
