"""What a cabinetmaker expects of rails, cleats, overlay fronts, shelf pins and backs.

Shop practice without a source unless a check names one; sizes are made up.
"""

import itertools
import json
from dataclasses import replace

import pytest

from shoplib.checks import check
from shoplib.documents.plan_file import plan_text
from shoplib.lists.cut_list import kinds
from shoplib.model.board import BoxCut, Hole
from shoplib.model.box import Box
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Fronts, JointChoice, PullOut, Pulls, Rail, Shelves
from tests.judge.judge import judge
from tests.model.plain_case import IN, MM, Solved, a_case, drawer_case

DADO = JointChoice("dado", MM.of(6))
OPEN = Bay("open")
PANEL = Bay("pull-out", pull_out=PullOut(slide=MM.slide, room=MM.of(100)))


def holds(cabinet) -> None:
    """Neither the dry-fit nor the solids find anything wrong."""
    findings = check(cabinet)
    assert [f.text for f in findings if f.level == "stop"] == []
    assert judge(json.loads(plan_text(cabinet, findings))) == []


def holes(cabinet, name, kind="screw") -> list[Hole]:
    return [cut for cut in cabinet.by_name[name].cuts if isinstance(cut, Hole) and cut.kind == kind]


@pytest.mark.parametrize("at", [None, 300])
def test_a_rail_hangs_in_one_piece_and_dividers_are_notched_round_it(at):
    rail = Rail(MM.of(80), at=None if at is None else MM.of(at))
    carcass = {"rails": (rail,), "divider": DADO}
    solved = Solved(a_case(MM, t=["18"], bays=(OPEN,) * 3, size=(1200, 760, 400), carcass=carcass), MM)
    assert [b.name for b in solved.cabinet.boards if b.role == "rail"] == ["rail 1"]
    assert solved.size("rail 1", 0) == 1200 - 2 * 18
    for divider in ("divider 1", "divider 2"):
        (notch,) = (c for c in solved.board(divider).cuts if isinstance(c, BoxCut) and c.kind == "notch")
        gone = solved.board(divider).placement.to_world(notch.box)
        assert (MM.back(gone.low[1]), MM.back(gone.high[1])) == (400 - 18, 400)
        assert MM.back(gone.low[2]) == (742 - 80 if at is None else 300)
    holds(solved.cabinet)


def test_a_butted_rail_is_screwed_through_the_sides_and_a_housed_one_is_not():
    """Two screws an end; 50 mm through 18 mm: some two thirds of it in the rail."""
    case = a_case(MM, t=["18"], carcass={"rails": (Rail(MM.of(80)),)})
    cabinet = solve(case)
    for side in ("left side", "right side"):
        found = holes(cabinet, side)
        assert len(found) == 2 and {hole.for_board for hole in found} == {"rail 1"}
        assert all(hole.depth == MM.of(18) and hole.diameter == MM.of("4.5") for hole in found)
        assert sorted(MM.back(hole.centre[0]) for hole in found) == [742 - 60, 742 - 20]  # along the side, from below
    screws = [screw for piece in cabinet.hardware if piece.what == "rail screws" for screw in piece.screws]
    assert [(s.into, s.count, s.length) for s in screws] == [("rail 1", 2, MM.of(50))] * 2
    housed = solve(replace(case, carcass=replace(case.carcass, rails=(Rail(MM.of(80), joint=DADO),))))
    assert not holes(housed, "left side")
    assert housed.by_name["rail 1"].length == cabinet.by_name["rail 1"].length + MM.of(12)


@pytest.mark.parametrize("on", ["left", "right"])
@pytest.mark.parametrize("kind", ["inset", "overlay"])
def test_the_front_of_a_pull_out_is_held_by_a_cleat(on, kind):
    bay = replace(PANEL, pull_out=replace(PANEL.pull_out, on=on))
    fronts = Fronts(kind, "front sheet", MM.of(3), MM.of(3), MM.of(3))
    case = a_case(MM, t=["18"], bays=(bay,), fronts=fronts, pulls=Pulls(MM.of(96)))
    cabinet = solve(case)
    panel, front, cleat = (cabinet.by_name[f"bay 1 pull-out {name}"] for name in ("panel", "front", "cleat"))
    assert cleat.group == panel.group and cleat.box.low[1] == front.box.high[1] == panel.box.low[1]
    assert (cleat.box.low[2], cleat.box.high[2]) == (panel.box.low[2], panel.box.high[2])
    # It lies along the face that the pegs look out of.
    assert cleat.box.low[0] == panel.box.high[0] if on == "left" else cleat.box.high[0] == panel.box.low[0]
    # Some 700 mm long: one for every 200 mm begun, in the middles of equal parts (common practice, no source).
    along = sorted(MM.back(hole.centre[0]) for hole in holes(cabinet, cleat.name))
    parts = [after - before for before, after in itertools.pairwise(along)]
    assert len(along) == 4 and max(parts) == min(parts) and abs(MM.back(cleat.length) - 4 * parts[0]) < 8
    assert abs(along[0] - parts[0] / 2) <= 1 and len(holes(cabinet, panel.name)) == 3
    screwed = {(p.what, s.into): s.count for p in cabinet.hardware for s in p.screws if "screws" in p.what}
    assert screwed == {("cleat screws", cleat.name): 3, ("front screws", front.name): 4}
    pegs = [piece.box for piece in cabinet.hardware if piece.what == "peg"]
    assert min(peg.low[1] for peg in pegs) > cleat.box.high[1]
    holds(cabinet)


def test_a_pull_out_without_a_front_has_no_cleat():
    assert "bay 1 pull-out cleat" not in solve(a_case(MM, t=["18"], bays=(PANEL,))).by_name


@pytest.mark.parametrize("other", [OPEN, Bay("shelves", shelves=Shelves(fixed=1))])
def test_overlay_fronts_cover_a_divider_that_they_have_to_themselves(other):
    """Like a side: its thickness less the reveal; with a front on either side, each half of it less the gap."""
    carcass = {"divider": DADO, "shelf": DADO}
    case = drawer_case(MM, fronts="overlay", t=["18"], gap="2", reveal="3", size=(1600, 760, 500), carcass=carcass)
    drawers = case.bays[0]
    solved = Solved(replace(case, bays=(drawers, other, drawers, drawers)), MM)
    first, third, fourth = (f"bay {number} drawer 1 front" for number in (1, 3, 4))
    assert solved.high(first, 0) - solved.low("divider 1", 0) == 18 - 3
    assert solved.high("divider 2", 0) - solved.low(third, 0) == 18 - 3
    assert solved.high(third, 0) - solved.low("divider 3", 0) == (18 - 2) / 2
    assert solved.low(fourth, 0) - solved.high(third, 0) == 2
    holds(solved.cabinet)


def test_a_loose_shelf_lies_on_four_pins_37_mm_from_its_edges():
    shelves = Shelves(loose=2, pin_diameter=MM.of(5), pin_depth=MM.of(6), loose_gap=MM.of(2))
    cabinet = solve(a_case(MM, t=["18"], bays=(Bay("shelves", shelves=shelves),)))
    for shelf in ("bay 1 loose shelf 1", "bay 1 loose shelf 2"):
        box = cabinet.by_name[shelf].box
        for side in ("left side", "right side"):
            board = cabinet.by_name[side]
            pins = [board.placement.to_world(Box(hole.centre, hole.centre)).low
                    for hole in holes(cabinet, side, "shelf pin") if hole.for_board == shelf]  # fmt: skip
            assert sorted(MM.back(y) for _, y, _ in pins) == [37, 500 - 37]
            assert all(z == box.low[2] - MM.of("2.5") for _, _, z in pins)  # their tops carry it
            assert {x for x, _, _ in pins} == {MM.of(18 if side == "left side" else 582)}


def test_what_stands_before_a_back_ends_at_the_shoulder_of_its_rabbet():
    """A divider past the shoulder would hold the back off the sides; the back lies flush with their rear edges."""
    back = Back("rabbet", "thin sheet", IN.of("5/16"), fit=IN.of("0.010"))
    carcass = {"back": back, "divider": JointChoice("dado"), "shelf": JointChoice("dado")}
    bays = (OPEN, Bay("shelves", shelves=Shelves(fixed=1)))
    solved = Solved(a_case(IN, t=["0.703"], thin=["0.203", "0.205"], bays=bays, carcass=carcass), IN)
    rabbet = solved.board("left side").placement.to_world(solved.cut("left side", "back").box)
    assert IN.back(rabbet.size[1]) * 1000 == 205 + 10
    for name in ("divider 1", "bay 2 shelf 1"):
        assert solved.board(name).box.high[1] == rabbet.low[1]
    assert solved.high("back", 1) == solved.high("left side", 1) == 20
    holds(solved.cabinet)


def test_equal_bays_a_hair_off_a_step_give_one_kind_of_shelf():
    """Four bays in 37 in less five thicknesses of 0.474 in: 8.6575 in each, 0.0013 in over 8 21/32 in."""
    bays = (Bay("shelves", shelves=Shelves(fixed=2)),) * 4
    carcass = {"divider": JointChoice("dado"), "shelf": JointChoice("dado", IN.of("7/64"))}
    solved = Solved(a_case(IN, t=["0.474"], size=(37, 16, 9), bays=bays, carcass=carcass), IN)
    assert [float(width) for width in solved.bays()] == [8.6575] * 4
    (shelves,) = (kind for kind in kinds(solved.cabinet) if kind.first.role == "fixed shelf")
    assert shelves.count == 8
    assert [total.rest for total in solved.cabinet.sums] == [0, 0]
    holds(solved.cabinet)


def test_pull_holes_and_slides_lie_at_whole_steps_in_an_odd_case():
    case = drawer_case(IN, t=["0.703"], size=(24, "30 1/64", 20), rule={"count": 3})
    solved = Solved(replace(case, pulls=Pulls(IN.of(3))), IN)
    heights = [IN.back(one.height) for one in solved.cabinet.spacers]
    for number in (1, 2, 3):
        name = f"bay 1 drawer {number}"
        board = solved.board(f"{name} front")
        up = board.placement.own_axis(2)
        heights += [IN.back(hole.centre[up]) for hole in holes(solved.cabinet, board.name, "pull")]
        on_box = next(p.box.low[2] for p in solved.cabinet.hardware if p.what == "slide" and p.group == name)
        heights.append(IN.back(on_box - solved.board(f"{name} left box side").box.low[2]))
    assert [height for height in heights if height % IN.step] == []
    holds(solved.cabinet)
