"""Measured parts and openings: what follows them, and what stays as planned.

Shop practice without a source unless a check names one; sizes are made up.
"""

from dataclasses import replace

import pytest

from shoplib.checks import check
from shoplib.documents.project_file import project_from_text
from shoplib.documents.project_text import project_text
from shoplib.model.board import BoxCut
from shoplib.model.cabinet import designed_sizes, solve
from shoplib.model.project import (
    ImpossibleProject,
    JointChoice,
    Measured,
    Opening,
    PartSize,
)
from tests.model.plain_case import IN, MM, Solved, a_case, drawer_case, refusal, stops


def test_boxes_side_by_side_follow_the_opening_of_their_row():
    shelf = {"count": 2, "across": 2, "between": "shelf", "slide": "box rides on the shelf"}
    case = drawer_case(MM, t=["18"], gap="3", rule=shelf, carcass={"shelf": JointChoice("dado", MM.of(6))})
    read = MM.of(600 - 36 - 2)
    built = Solved(replace(case, measured=Measured(openings={"bay 1 drawer 1": Opening(read, read)})), MM)
    plain = Solved(case, MM)
    for place, less in ((1, 1), (2, 1)):
        name = f"bay 1 drawer 1.{place} box front"
        assert plain.size(name, 0) - built.size(name, 0) == less


@pytest.mark.parametrize("top", ["between", "over", "stretchers", "none"])
@pytest.mark.parametrize("bottom", ["between", "under"])
def test_a_measured_side_gives_a_case_of_its_height_for_every_top_and_bottom(top, bottom):
    """The case goes together with the shorter side as it does with the planned one."""
    carcass = {"top": top, "bottom": bottom, "corner": JointChoice("rabbet", MM.of(8), end_gap=MM.of("0.5"))}
    case = a_case(MM, t=["18"], carcass=carcass)
    planned = solve(case).by_name["left side"]
    less = MM.of(3)
    side = PartSize(planned.length - less, planned.width - less)
    built = replace(case, measured=Measured(parts={"left side": side}))
    assert stops(built) == []
    solved = solve(built)
    assert solved.by_name["right side"].size == (side.length, side.width, planned.thickness)
    assert solve(case).outside.size[2] - solved.outside.size[2] == less
    assert solve(case).outside.size[1] - solved.outside.size[1] == less


@pytest.mark.parametrize("more", [-2, -0.5, 0.5, 2])
def test_a_top_measured_over_its_sides_moves_nothing_else(more):
    case = a_case(MM, t=["18"], carcass={"top": "over", "overhang_sides": MM.of(15)}, size=(600, 760, 500))
    planned = solve(case)
    top = PartSize(planned.by_name["top"].length + MM.of(more))
    built = solve(replace(case, measured=Measured(parts={"top": top})))
    assert {b.name for b in built.boards if b != planned.by_name[b.name]} == {"top"}
    assert [f.text for f in check(built) if f.level == "stop"] == []
    assert built.outside.size[0] - planned.outside.size[0] == MM.of(more)


def test_the_designed_size_is_that_of_the_plan_not_of_the_measurement():
    case = a_case(MM, t=["18"])
    short = replace(case, measured=Measured(parts={"bottom": PartSize(MM.of(560))}))
    assert solve(short).by_name["bottom"].length == MM.of(560)
    assert designed_sizes(short) == designed_sizes(case)


def test_sides_measured_unlike_keep_their_front_edges_in_line():
    case = a_case(MM, t=["18"])
    widths = {"left side": PartSize(width=MM.of(498)), "right side": PartSize(width=MM.of(499))}
    built = solve(replace(case, measured=Measured(parts=widths)))
    boxes = [built.by_name[name].box for name in widths]
    assert [box.low[1] for box in boxes] == [0, 0]
    assert [MM.back(box.high[1]) for box in boxes] == [498, 499]
    assert built.by_name["top"].width == MM.of(498)


def test_a_measured_part_never_has_cuts_outside_itself():
    case = drawer_case(IN, columns=2, carcass={"corner": JointChoice("rabbet"), "divider": JointChoice("dado")})
    planned = solve(case)
    parts = {board.name: PartSize(board.length - IN.of("3/4"), board.width - IN.of("3/4")) for board in planned.boards}
    for name, size in parts.items():
        try:
            built = solve(replace(case, measured=Measured(parts={name: size})))
        except ImpossibleProject:
            continue
        for board in built.boards:
            for cut in board.cuts:
                if isinstance(cut, BoxCut):
                    assert all(0 <= a < b <= s for a, b, s in zip(cut.low, cut.high, board.size, strict=True)), name


def test_a_box_made_short_takes_its_bottom_with_it():
    case = drawer_case(MM, t=["18"], gap="3", rule={"corner": JointChoice("rabbet")})
    name = "bay 1 drawer 1"
    planned = solve(case)
    less = MM.of(2)
    parts = {f"{name} box front": PartSize(planned.by_name[f"{name} box front"].length - less)}
    parts[f"{name} left box side"] = PartSize(planned.by_name[f"{name} left box side"].length - less)
    built = solve(replace(case, measured=Measured(parts=parts)))
    for part, axis in (("box back", 0), ("box bottom", 0), ("box bottom", 1), ("right box side", 0)):
        before, after = (c.by_name[f"{name} {part}"].size[axis] for c in (planned, built))
        assert before - after == less, part
    seats = [f.text for f in check(built) if f.level == "stop" and f.check in ("seating", "overlap")]
    assert seats == []


def test_strips_and_pull_outs_wait_for_their_own_openings():
    case = drawer_case(MM, t=["18"], gap="3", rule={"count": 2, "between": "strip"})
    assert any((one.stage, one.of) == (3, "bay 1 strip 1") for one in solve(case).waiting)
    read = MM.of(600 - 36 - 1)
    built = solve(replace(case, measured=Measured(openings={"bay 1 strip 1": Opening(read, read)})))
    assert not any(one.of == "bay 1 strip 1" for one in built.waiting)
    assert built.by_name["bay 1 strip 1"].length == read
    assert [f.text for f in check(built) if f.level == "stop"] == []


def test_what_was_measured_is_saved_and_read_again():
    measured = Measured(
        openings={"bay 1 drawer 1": Opening(MM.of("563.9"), MM.of("564.05"))},
        depths={"bay 1": MM.of("481.3")},
        parts={"top": PartSize(length=MM.of("599.98"))},
    )
    case = replace(drawer_case(MM, t=["18"], gap="3"), measured=measured)
    assert project_from_text(project_text(case)) == case


def test_a_measurement_with_which_nothing_can_be_built_is_blamed_itself():
    case = drawer_case(MM, t=["18"], gap="3")
    tiny = Measured(parts={"bottom": PartSize(length=MM.of(40))})
    assert refusal(replace(case, measured=tiny)).startswith("measured")
    nothing = Measured(parts={"bottom": PartSize()})
    assert refusal(replace(case, measured=nothing)) == 'measured.parts."bottom"'
