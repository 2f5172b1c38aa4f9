"""Boxes, strips, slides, fronts and pulls where they meet: what a cabinetmaker would look at twice.

Shop practice without a source unless a check names one; sizes are made up.
"""

from dataclasses import replace
from itertools import pairwise

import pytest

from shoplib.checks import check
from shoplib.model.cabinet import solve
from shoplib.model.project import (
    Base,
    Bay,
    JointChoice,
    PullOut,
    Pulls,
    Rail,
)
from tests.model.plain_case import MM, Solved, a_case, drawer_case, refusal, stops


def test_a_bottom_is_as_free_in_stopped_grooves_as_at_their_floors():
    """Fingered boxes stop their grooves. With a slack of 2 mm each end has 1 mm, along the grooves as across them."""
    corner = JointChoice("finger", finger=MM.of(10))
    cabinet = solve(drawer_case(MM, t=["18"], rule={"count": 1, "corner": corner, "bottom_slack": MM.of(2)}))
    bottom = cabinet.by_name["bay 1 drawer 1 box bottom"]
    found = []
    for board in cabinet.groups["bay 1 drawer 1"]:
        for cut in board.cuts:
            if getattr(cut, "for_board", "") == bottom.name:
                groove = board.placement.to_world(cut.box)
                run = 1 if board.role == "box side" else 0
                found += [bottom.box.low[run] - groove.low[run], groove.high[run] - bottom.box.high[run]]
    assert found == [MM.of(1)] * 8
    assert not [finding for finding in check(cabinet) if bottom.name in finding.boards and finding.level == "stop"]


def test_drawers_stop_before_a_rail():
    case = drawer_case(MM, fronts="none", t=["18"], carcass={"rails": (Rail(MM.of(80)),)}, rule={"count": 3})
    solved = Solved(case, MM)
    # 500 less the rail's 18 less the slide's 2 mm of setback and 6 mm of rear room leaves 474: slides of 450 mm.
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
    """Largest that fits inside depth - front - setback - rear room: 500 - 18.3 - 2 - 6 = 473.7 mm gives 450."""
    inset = Solved(drawer_case(MM, t=["18"], f=["18.3"], gap="3"), MM)
    assert inset.size("bay 1 drawer 1 left box side", 1) == 450
    short = drawer_case(MM, t=["18"], f=["18.3"], gap="3", size=(600, 760, "476.25"))
    assert Solved(short, MM).size("bay 1 drawer 1 left box side", 1) == 400  # 449.95 is 0.05 mm too little
    slide = next(piece for piece in inset.cabinet.hardware if piece.what == "slide")
    assert MM.back(slide.box.low[1]) * 10 == 183 + 20  # set back by 2 mm behind the front


@pytest.mark.parametrize(("slide", "least"), [(MM.slide, 458), ("undermount", 463), ("undermount, inset", 481)])
def test_a_slide_takes_its_setback_of_the_depth(slide, least):
    """450 + 2 + 6 and 450 + 3 + 10 mm (rows of the table), and an inset front of 18 mm."""
    inset, name = "inset" in slide, slide.removesuffix(", inset")
    for depth, expected in ((least, 450), (least - 1, 400)):
        solved = Solved(drawer_case(MM, fronts="inset" if inset else "none", f=["18"], size=(600, 760, depth), rule={
            "slide": name}), MM)  # fmt: skip
        assert solved.size("bay 1 drawer 1 left box side", 1) == expected
        bought = [piece.box for piece in solved.cabinet.hardware if piece.what == "slide"]
        assert {MM.back(box.size[1]) for box in bought} == {expected}
        assert max(MM.back(box.high[1]) for box in bought) <= depth - (6 if name == MM.slide else 10)


def test_the_panel_of_a_pull_out_is_as_long_as_the_slide_that_goes_in():
    for depth, expected in ((458, 450), (457, 400)):
        panel = PullOut(slide=MM.slide, sheet="case sheet")
        case = a_case(MM, t=["18"], bays=(Bay("pull-out", pull_out=panel),), size=(300, 760, depth))
        assert Solved(case, MM).size("bay 1 pull-out panel", 1) == expected


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


@pytest.mark.parametrize("bottom", ["groove", "under back"])
def test_a_box_lower_than_its_bottom_is_refused(bottom):
    """A groove 6 mm up for a bottom of 5.9 mm needs a box higher than 11.9 mm."""
    low = {"count": 1, "bottom": bottom, "slide": "box rides on the shelf", "corner": JointChoice("butt")}
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


def test_slides_that_would_begin_in_the_bottom_are_refused():
    """A box whose foot is 6 mm up and which is 13 mm high has the lower edge of a slide of 45 mm at 6 - 16 mm: in the
    bottom, where no spacer sets it (plain geometry, no source).
    """
    case = drawer_case(MM, fronts="none", t=["18"], rule={"count": 1, "room_above": 0})
    row = Solved(case, MM).size("bay 1 drawer 1 left box side", 2)
    for height, fits in ((13, False), (30, False), (40, True)):
        lower = replace(case, size=replace(case.size, height=case.size.height - MM.of(row - height)))
        if fits:
            assert all(spacer.height >= 0 for spacer in solve(lower).spacers)
        else:
            assert refusal(lower) == "bays[1].drawers.count"


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
