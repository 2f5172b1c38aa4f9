"""Which reading of several governs: the thickest, the thinnest or the one at the front; the mean would be wrong.

Rules as the docstrings of the model have them; sizes are made up.
"""

from dataclasses import replace

import pytest

from shoplib.model.board import BoxCut
from shoplib.model.cabinet import solve
from shoplib.model.project import JointChoice, Measured, Opening, Rail, Space
from shoplib.model.room import governing
from tests.model.plain_case import IN, MM, Solved, a_case, drawer_case


def test_a_space_between_two_steps_goes_down_and_never_to_the_nearer_step():
    """600.4 mm is nearer to 600.5, and a case of 600.5 does not go in."""
    space = Space((MM.of("600.4"), MM.of(601)), (MM.of("700.49"),), (MM.of("500.25"),), clearance_depth=MM.of("0.01"))
    assert tuple(map(MM.back, governing(space, MM.of("0.5")))) == (600, 700, 500)


def test_a_low_back_stands_above_the_thickest_reading_of_the_bottom():
    rule = {"bottom": "under back", "bottom_up": MM.of(6), "bottom_fit": MM.of("0.25")}
    solved = Solved(drawer_case(MM, fronts="none", t=["18"], thin=["5.8", "6.2"], rule=rule), MM)
    box, back = "bay 1 drawer 1 left box side", "bay 1 drawer 1 box back"
    assert float(solved.low(back, 2) - solved.low(box, 2)) == 6 + 6.2 + 0.25


@pytest.mark.parametrize(("readings", "length"), [(("0.48", "0.52"), "3/4"), (("0.49", "0.51"), "1")])
def test_front_screws_stay_behind_the_face_where_the_box_front_is_thinnest(readings, length):
    """Box 0.50 on the mean and front 0.635 less 1/8 in would take a screw of 1 in: at 0.48 it leaves too little."""
    case = drawer_case(IN, t=["0.703"], f=["0.635"], s=readings)
    screws = [piece.screws[0] for piece in solve(case).hardware if piece.what == "front screws"]
    assert {screw.length for screw in screws} == {IN.of(length)}


def test_a_divider_is_notched_for_the_thickest_reading_of_its_rail():
    rail = Rail(MM.of(80), "front sheet", joint=JointChoice("dado", MM.of(6), MM.of("0.1")))
    case = drawer_case(MM, fronts="none", t=["18"], f=["17.8", "18.2"], columns=2, size=(1000, 760, 500), carcass={
        "rails": (rail,), "divider": JointChoice("dado", MM.of(6))})  # fmt: skip
    solved = Solved(case, MM)
    divider = solved.board("divider 1")
    (notch,) = (cut for cut in divider.cuts if isinstance(cut, BoxCut) and cut.kind == "notch")
    depth = divider.placement.to_world(notch.box).size[1]
    assert float(MM.back(depth)) == 18.2 + 0.1


@pytest.mark.parametrize(
    ("readings", "length"),
    [
        (("0.45",), "1 1/4"),  # three thicknesses are 1.35 in; four would take 1 1/2
        (("0.41", "0.45"), None),  # 1.23 in at the thinnest, 1.29 on the mean
        (("0.5",), "1 1/2"),
        (("0.70", "0.71"), "2"),
    ],
)
def test_a_screw_into_an_end_is_at_most_three_of_the_thinnest_thickness_long(readings, length):
    """Some two thirds of it in the second board: common practice, no source (data/screws.toml)."""
    found = solve(a_case(IN, t=readings, carcass={"rails": (Rail(IN.of(3)),)})).hardware
    screws = [screw for piece in found if piece.what == "rail screws" for screw in piece.screws]
    assert {screw.length for screw in screws} == ({IN.of(length)} if length else set())


@pytest.mark.parametrize(("front", "back"), [("-1/16", "-1/8"), ("1/16", "-1/16"), ("0", "1/16")])
def test_a_front_follows_the_reading_at_the_front_and_keeps_its_gaps_there(front, back):
    case = drawer_case(IN, t=["0.703"], gap="1/8")
    width = IN.of("24") - 2 * IN.of("0.703")
    signs = [width + (-1 if text[0] == "-" else 1) * IN.of(text.lstrip("-")) for text in (front, back)]
    built = solve(replace(case, measured=Measured(openings={"bay 1 drawer 1": Opening(*signs)})))
    assert built.by_name["bay 1 drawer 1 front"].length == signs[0] - 2 * IN.of("1/8")
    sides = {gap.between: gap.size for gap in built.gaps if gap.along == "x"}
    assert sides == {
        ("left side", "bay 1 drawer 1 front"): IN.of("1/8"), ("bay 1 drawer 1 front", "right side"): IN.of("1/8"),
    }  # fmt: skip


@pytest.mark.parametrize(
    ("spread", "word"),
    [("1/16", ""), ("3/32", "shim"), ("1/8", "shim"), ("9/64", "straighten"), ("5/32", "straighten")],
)
def test_a_taper_is_shimmed_up_to_twice_what_the_slide_allows(spread, word):
    """1/16 in (common practice, no source): a shim at each end of the pair takes up as much again, no more."""
    case = drawer_case(IN, t=["0.703"], gap="1/8")
    width = IN.of("24") - 2 * IN.of("0.703")
    built = solve(
        replace(case, measured=Measured(openings={"bay 1 drawer 1": Opening(width, width - IN.of(spread))}))
    )
    told = [f.text for f in built.findings if "wider at the front" in f.text]
    assert [[w for w in ("shim", "straighten") if f" {w} " in text] for text in told] == ([[word]] if word else [])
