"""Where joints, stops, rails, pins and slides meet: what a cabinetmaker would look at twice.

Shop practice without a source unless a check names one; sizes are made up.
"""

from dataclasses import replace
from itertools import pairwise

import pytest

from shoplib.checks import check
from shoplib.documents.project_file import project_from_text
from shoplib.documents.project_text import project_text
from shoplib.model.board import BoxCut
from shoplib.model.cabinet import designed_sizes, solve
from shoplib.model.project import (
    Base,
    Bay,
    Drawers,
    Edging,
    Fronts,
    ImpossibleProject,
    JointChoice,
    Measured,
    Opening,
    PartSize,
    Project,
    Pulls,
    Rail,
    Shelves,
)
from tests.model.plain_case import IN, MM, Solved, a_case, drawer_case

STOPPED = JointChoice("dado", MM.of(6), stop=MM.of(20))


def shelf_case(shelves: Shelves, **more) -> Project:
    return a_case(MM, t=["18"], bays=(Bay("shelves", shelves=shelves),), **more)


def stops(project: Project) -> list[str]:
    return [finding.text for finding in check(solve(project)) if finding.level == "stop"]


def refusal(project: Project) -> str:
    with pytest.raises(ImpossibleProject) as refused:
        solve(project)
    return refused.value.key


@pytest.mark.parametrize("setback", [0, 10, 20, 35])
def test_a_stopped_dado_and_the_notch_in_its_shelf_end_at_one_place(setback):
    """The dado begins at the stop, or at the shelf where that is set back farther: nothing shows before it."""
    project = shelf_case(Shelves(fixed=1, setbacks=(MM.of(setback),)), carcass={"shelf": STOPPED})
    solved = Solved(project, MM)
    dado = solved.board("left side").placement.to_world(solved.cut("left side", "bay 1 shelf 1").box)
    assert MM.back(dado.low[1]) == max(20, setback)
    notches = [c for c in solved.board("bay 1 shelf 1").cuts if isinstance(c, BoxCut) and c.kind == "notch"]
    assert len(notches) == (2 if setback < 20 else 0)
    for notch in notches:
        assert MM.back(notch.box.size[0]) == 6 and MM.back(notch.box.size[1]) == 20 - setback
    assert stops(project) == []


def test_a_stop_as_long_as_the_joint_is_refused():
    carcass = {"shelf": replace(STOPPED, stop=MM.of(600))}
    assert refusal(shelf_case(Shelves(fixed=1), carcass=carcass)) == "carcass.shelf.stop"


@pytest.mark.parametrize("kind", ["band", "strip"])
def test_edging_on_the_case_leaves_the_dry_fit_and_comes_off_the_saw_size(kind):
    """Finished size with edging fits as before; what is sawn is less the strip (cut size = finished - edging)."""
    carcass = {"corner": JointChoice("rabbet"), "shelf": STOPPED}
    bare = shelf_case(Shelves(fixed=1), carcass=carcass)
    edged = replace(bare, edging=(Edging("case", kind, MM.of(9)), Edging("shelves", kind, MM.of(9))))
    assert [b.box for b in solve(edged).boards] == [b.box for b in solve(bare).boards]
    assert stops(edged) == []
    for name in ("left side", "right side", "top", "bottom", "bay 1 shelf 1"):
        board = solve(edged).by_name[name]
        assert board.cut_size == (board.length, board.width - MM.of(9), board.thickness)


def test_edging_as_wide_as_the_board_is_refused():
    project = replace(shelf_case(Shelves(fixed=1)), edging=(Edging("case", "strip", MM.of(600)),))
    assert refusal(project) == "edging"


def test_a_shelf_goes_to_the_back_under_a_rail_and_stops_at_a_rail_beside_it():
    rail = Rail(MM.of(80))
    case = shelf_case(Shelves(at=(MM.of(300), MM.of(700)), setbacks=()), carcass={"rails": (rail,)})
    solved = Solved(case, MM)
    assert solved.high("bay 1 shelf 1", 1) == 500
    # The rail hangs under the top: its span is 662 to 742 mm, and the shelf at 700 lies in it.
    assert (solved.low("rail 1", 2), solved.high("rail 1", 2)) == (662, 742)
    assert solved.high("bay 1 shelf 2", 1) == 500 - 18
    assert stops(case) == []


@pytest.mark.parametrize(("width", "at", "key"), [(900, None, "width"), (80, 700, "at")])
def test_a_rail_outside_the_case_is_refused(width, at, key):
    rail = Rail(MM.of(width), at=None if at is None else MM.of(at))
    assert refusal(a_case(MM, carcass={"rails": (rail,)})) == f"carcass.rails[1].{key}"


def test_drawers_stop_before_a_rail():
    case = drawer_case(MM, fronts="none", t=["18"], carcass={"rails": (Rail(MM.of(80)),)}, rule={"count": 3})
    solved = Solved(case, MM)
    # 500 less the rail's 18 less the slide's 6 mm of rear room leaves 476: slides of 450 mm.
    assert solved.size("bay 1 drawer 1 left box side", 1) == 450
    shallow = replace(case, size=replace(case.size, depth=MM.of(470)))
    assert Solved(shallow, MM).size("bay 1 drawer 1 left box side", 1) == 400
    assert stops(case) == [] and stops(shallow) == []


@pytest.mark.parametrize("fronts", ["inset", "overlay"])
def test_a_strip_stands_half_way_between_the_fronts_that_it_parts(fronts):
    case = drawer_case(MM, fronts=fronts, t=["18"], gap="3", reveal="3", rule={"count": 3, "between": "strip"})
    solved = Solved(case, MM)
    for number in (1, 2):
        strip, below, above = (f"bay 1 {what}" for what in (
            f"strip {number}", f"drawer {number} front", f"drawer {number + 1} front"))  # fmt: skip
        middle = (solved.low(strip, 2) + solved.high(strip, 2)) / 2
        assert middle == (solved.high(below, 2) + solved.low(above, 2)) / 2
        assert solved.size(strip, 2) == 18
        # Inset fronts keep the gap around beside the strip; overlay ones cover it but for the gap between them.
        apart = solved.low(above, 2) - solved.high(below, 2)
        assert apart == (18 + 2 * 3 if fronts == "inset" else 3)
    assert solved.size("bay 1 strip 1", 0) == 600 - 2 * 18
    assert solved.board("bay 1 strip 1").stage == 3
    assert stops(case) == []


def test_strips_through_the_back_are_refused():
    case = drawer_case(MM, rule={"count": 2, "between": "strip", "strip_width": MM.of(600)})
    assert refusal(case) == "bays[1].drawers.strip_width"


@pytest.mark.parametrize(("deep", "meet"), [("8.9", False), ("9", True), ("10", True)])
def test_pins_from_both_sides_of_a_divider_must_not_meet_in_it(deep, meet):
    """Two holes at one height go 2 d deep into a divider of 18 mm."""
    bay = Bay("shelves", shelves=Shelves(loose=2, pin_diameter=MM.of(5), pin_depth=MM.of(deep)))
    case = a_case(MM, t=["18"], bays=(bay, bay), carcass={"divider": JointChoice("dado")})
    if meet:
        assert refusal(case) == "bays[2].shelves.pin_depth"
    else:
        assert stops(case) == []
    other = replace(bay, shelves=replace(bay.shelves, loose=1))
    assert stops(replace(case, bays=(bay, other))) == []  # at other heights they pass one another


def test_pins_that_would_stand_outside_a_shallow_shelf_are_refused():
    """37 mm from the front and 37 mm from the rear (system holes, common practice, no source)."""
    assert refusal(shelf_case(Shelves(loose=1, loose_depth=MM.of(75)))) == "bays[1].shelves.loose_depth"
    assert stops(shelf_case(Shelves(loose=1, loose_depth=MM.of(90)))) == []


@pytest.mark.parametrize(("setback", "fits"), [(0, True), (50, True), (482, True), (483, False), (600, False)])
def test_a_toe_board_stands_inside_the_case_under_its_bottom(setback, fits):
    base = Base("toe space", MM.of(100), MM.of(setback), "case sheet")
    case = a_case(MM, t=["18"], base=base)
    if not fits:
        assert refusal(case) == "base.setback"
        return
    solved = Solved(case, MM)
    assert (solved.low("toe board", 1), solved.high("toe board", 1)) == (setback, setback + 18)
    assert (solved.low("toe board", 2), solved.high("toe board", 2)) == (0, 100)
    assert solved.low("bottom", 2) == 100
    assert solved.size("toe board", 0) == 600 - 2 * 18
    # More than a third of the 500 mm hangs over: it stands, but nobody would let it.
    assert ["tips forward" in told for told in stops(case)] == ([True] if 3 * setback > 500 else [])


@pytest.mark.parametrize("kind", ["toe space", "plinth"])
def test_overlay_fronts_stay_above_the_base(kind):
    base = Base(kind, MM.of(100), MM.of(40), "case sheet")
    case = drawer_case(MM, fronts="overlay", t=["18"], reveal="3", base=base, rule={"count": 3})
    # They cover the edge of the bottom, from 100 to 118 mm, but for the reveal.
    assert Solved(case, MM).low("bay 1 drawer 1 front", 2) == 103
    assert stops(case) == []


def test_overlay_fronts_that_leave_the_opening_to_be_seen_are_refused():
    bare = drawer_case(MM, fronts="overlay", t=["18"], reveal="18", gap="3")
    assert refusal(bare) == "fronts.reveal"
    wide = drawer_case(MM, fronts="overlay", t=["18"], reveal="3", gap="18", columns=2, carcass={
        "divider": JointChoice("dado")}, size=(1000, 760, 500))  # fmt: skip
    assert refusal(wide) == "fronts.gap"


def test_a_front_wider_than_its_sheet_stops():
    wide = drawer_case(MM, fronts="overlay", size=(1800, 400, 500), t=["18"], rule={"count": 2})
    sheet = replace(wide.sheets["front sheet"], length=MM.of(1500), width=MM.of(1500))
    text = stops(replace(wide, sheets=wide.sheets | {"front sheet": sheet}))
    assert any("drawer 1 front" in told or "drawers 1 and 2" in told for told in text), text


def test_an_inset_front_and_the_rear_room_come_off_the_slide():
    """Largest that fits inside depth - rear room - front: 500 - 6 - 18.3 = 475.7 mm gives 450."""
    inset = Solved(drawer_case(MM, t=["18"], f=["18.3"], gap="3"), MM)
    assert inset.size("bay 1 drawer 1 left box side", 1) == 450
    short = drawer_case(MM, t=["18"], f=["18.3"], gap="3", size=(600, 760, "474.25"))
    assert Solved(short, MM).size("bay 1 drawer 1 left box side", 1) == 400  # 449.95 is 0.05 mm too little
    slide = next(piece for piece in inset.cabinet.hardware if piece.what == "slide")
    assert MM.back(slide.box.low[1]) * 10 == 183 + 20  # set back by 2 mm behind the front


def test_an_undermount_bottom_stands_up_by_the_recess():
    case = drawer_case(MM, t=["18"], fronts="none", rule={"slide": "undermount", "bottom_up": MM.of(8)})
    solved = Solved(case, MM)
    # 13 mm: the made-up row of the table, "example: use your slide's sheet".
    name = "bay 1 drawer 1 box bottom"
    assert solved.low(name, 2) - solved.low("bay 1 drawer 1 left box side", 2) == 13
    high = replace(case.bays[0], drawers=replace(case.bays[0].drawers, bottom_up=MM.of(20)))
    other = Solved(replace(case, bays=(high,)), MM)
    assert other.low(name, 2) - other.low("bay 1 drawer 1 left box side", 2) == 20


@pytest.mark.parametrize("across", [2, 3, 4])
def test_boxes_side_by_side_share_their_opening_alike(across):
    """As Foster's twelve-drawer cabinet (1911, Fig. 136): four columns on each shelf."""
    shelf = {"count": 2, "across": across, "between": "shelf", "slide": "box rides on the shelf"}
    case = drawer_case(MM, t=["18"], gap="3", rule=shelf, carcass={"shelf": JointChoice("dado", MM.of(6))})
    solved = Solved(case, MM)
    boxes = []
    for place in range(1, across + 1):
        group = f"bay 1 drawer 1.{place}"
        boxes.append((solved.low(f"{group} left box side", 0), solved.high(f"{group} right box side", 0)))
    assert len({high - low for low, high in boxes}) == 1
    assert all(left[1] < right[0] for left, right in pairwise(boxes))
    assert [f.text for f in check(solved.cabinet) if f.check in ("overlap", "travel") and f.level == "stop"] == []


def test_boxes_side_by_side_follow_the_opening_of_their_row():
    shelf = {"count": 2, "across": 2, "between": "shelf", "slide": "box rides on the shelf"}
    case = drawer_case(MM, t=["18"], gap="3", rule=shelf, carcass={"shelf": JointChoice("dado", MM.of(6))})
    read = MM.of(600 - 36 - 2)
    built = Solved(replace(case, measured=Measured(openings={"bay 1 drawer 1": Opening(read, read)})), MM)
    plain = Solved(case, MM)
    for place, less in ((1, 1), (2, 1)):
        name = f"bay 1 drawer 1.{place} box front"
        assert plain.size(name, 0) - built.size(name, 0) == less


@pytest.mark.parametrize(("bottom", "slide"), [("groove", MM.slide), ("under back", "box rides on the shelf")])
def test_a_box_lower_than_its_bottom_is_refused(bottom, slide):
    """A groove 6 mm up for a bottom of 5.9 mm needs a box higher than 11.9 mm."""
    low = {"count": 1, "bottom": bottom, "slide": slide, "corner": JointChoice("butt")}
    for height, fits in ((11, False), (13, True)):
        rule = low | {"room_above": 0}
        case = drawer_case(MM, fronts="none", t=["18"], rule=rule)
        row = Solved(case, MM).size("bay 1 drawer 1 left box side", 2)
        shorter = replace(case, size=replace(case.size, height=case.size.height - MM.of(row - height)))
        if fits:
            solve(shorter)
        else:
            assert refusal(shorter) == "bays[1].drawers.count"


def test_slides_higher_than_their_boxes_stop():
    """A slide of 45 mm on a box of 21 mm would meet the slide of the next drawer."""
    case = drawer_case(MM, fronts="none", t=["18"], rule={"count": 16})
    found = [f for f in check(solve(case)) if f.check == "slide room" and f.level == "stop"]
    boxes = {b.width for b in solve(case).boards if b.role == "box side"}
    assert {f.amount for f in found} == {MM.of(45) - width for width in boxes if width < MM.of(45)}
    assert stops(drawer_case(MM, fronts="none", t=["18"], rule={"count": 4})) == []


def test_a_bay_kept_in_line_takes_the_rows_and_keeps_its_own_boxes():
    size, carcass = (1000, 760, 500), {"divider": JointChoice("dado", MM.of(6))}
    case = drawer_case(MM, t=["18"], gap="3", columns=2, size=size, carcass=carcass, rule={
        "count": 3, "heights": "stepped", "difference": MM.of(20)})  # fmt: skip
    own = replace(case.bays[0].drawers, count=1, heights="equal", difference=0, like_bay=1, bottom_up=MM.of(12))
    line = replace(case, bays=(case.bays[0], Bay("drawers", drawers=own)))
    solved = Solved(line, MM)
    for number in (1, 2, 3):
        one, two = (f"bay {bay} drawer {number} front" for bay in (1, 2))
        assert (solved.low(one, 2), solved.high(one, 2)) == (solved.low(two, 2), solved.high(two, 2))
    name = "bay {} drawer 1 box bottom"
    assert solved.low(name.format(2), 2) - solved.low(name.format(1), 2) == 6
    odd = replace(line, bays=(line.bays[0], Bay("drawers", drawers=replace(own, count=5))))
    assert refusal(odd) == "bays[2].drawers.count"


def test_a_pull_larger_than_its_front_is_refused():
    case = drawer_case(MM, t=["18"], gap="3")
    assert refusal(replace(case, pulls=Pulls(MM.of(700), MM.of(30), MM.of(5)))) == "pulls.pitch"
    assert refusal(replace(case, pulls=Pulls(0, MM.of(30), MM.of(900)))) == "pulls.hole"


def test_more_boards_than_anyone_builds_are_refused_soon():
    rule = {"count": 60, "slide": "box rides on the shelf", "between": "shelf", "across": 4, "bottom_up": MM.of(3)}
    case = drawer_case(MM, fronts="none", t=["3"], thin=["2"], s=["6"], size=(3000, 9000, 500), rule=rule)
    assert refusal(case) == "bays"


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
    assert any(stage == 3 and "bay 1 strip 1" in text for stage, text in solve(case).waiting)
    read = MM.of(600 - 36 - 1)
    built = solve(replace(case, measured=Measured(openings={"bay 1 strip 1": Opening(read, read)})))
    assert not any("bay 1 strip 1" in text for _, text in built.waiting)
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


def test_a_table_for_another_kind_of_bay_is_refused():
    fronts = Fronts("none")
    assert refusal(a_case(MM, bays=(Bay("open", drawers=Drawers()),), fronts=fronts)) == "bays[1].drawers"
    assert refusal(a_case(MM, bays=(Bay("shelves"),), fronts=fronts)) == "bays[1].shelves"
    assert refusal(a_case(MM, bays=(), fronts=fronts)) == "bays"


@pytest.mark.parametrize(
    ("at", "wrong"),
    [
        (("1",), 1),
        (("30", "760"), 2),
        (("200", "210"), 2),
        (("300", "200", "290"), 1),
        (("741",), 1),
        (("742", "30"), 1),
    ],
)
def test_a_shelf_at_a_height_where_it_cannot_stand_is_refused(at, wrong):
    """Between a bottom up to 18 mm and a top from 742 mm; 18 mm thick itself."""
    assert refusal(shelf_case(Shelves(at=tuple(map(MM.of, at))))) == f"bays[1].shelves.at[{wrong}]"


def test_shelves_that_leave_no_openings_are_refused():
    assert refusal(shelf_case(Shelves(fixed=40))) == "bays[1].shelves.fixed"
    assert refusal(shelf_case(Shelves(loose=40))) == "bays[1].shelves.loose"
