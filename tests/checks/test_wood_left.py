"""Wood left under cuts, between cuts and beyond them, on both sides of each limit."""

from dataclasses import replace

import pytest

from shoplib.checks.wood_left import find_thin_wood
from shoplib.model.board import Hole
from tests.checks.cabinets import board, cabinet, drawer_boards, joint, ticks, tool_case


def side(*cuts, grain="length", name="side"):
    return board(name, (0, 0, 0), (18, 300, 400), "x", *cuts, grain=grain)


def dado(depth, low=100, high=118, front=0, rear=300, kind="dado"):
    return (kind, (18 - depth, front, low), (18, rear, high), "shelf")


def outer(depth, low=100, high=118):
    return ("dado", (0, 0, low), (depth, 300, high))


def found_in(*boards, joints=()):
    return [(f.level, f.amount) for f in find_thin_wood(cabinet(boards, joints))]


def test_a_sound_case_leaves_enough_wood():
    assert find_thin_wood(tool_case()) == ()


@pytest.mark.parametrize(
    ("depth", "expected"),
    [(9, []), (9.1, [("warn", 8.9)]), (15, [("warn", 3)]), (15.1, [("stop", 2.9)]), (18, [("stop", 0)])],
)
def test_wood_under_a_cut(depth, expected):
    """Exactly half and exactly 3 mm are fine."""
    assert found_in(side(dado(depth))) == [(level, ticks(left)) for level, left in expected]


def test_the_text_says_what_is_left_and_what_would_mend_it():
    (found,) = find_thin_wood(cabinet([side(dado(12))]))
    assert found.text == (
        "side: 6 mm of wood is left under the dado for the shelf, less than half of 18 mm. "
        "Make the cut shallower, move it, or use a thicker board."
    )
    (found,) = find_thin_wood(cabinet([side(dado(16))]))
    assert "is left under the dado for the shelf, less than the 3 mm that still holds." in found.text
    (found,) = find_thin_wood(cabinet([side(dado(18))]))
    assert found.text == (
        "side: no wood is left under the dado for the shelf. Make a cut shallower, or stagger the cuts."
    )


def test_a_notch_goes_through_on_purpose():
    assert found_in(side(dado(18, 0, 80, 0, 60, kind="notch"))) == []


def test_the_waste_of_a_notch_parts_it_from_no_cut():
    assert found_in(side(dado(18, 0, 80, 0, 60, kind="notch"), dado(6, 81, 99.2))) == []


@pytest.mark.parametrize(
    ("deep", "expected"),
    [(4.5, []), (6, [("warn", 6)]), (7.6, [("stop", 2.8)]), (9, [("stop", 0)])],
)
def test_dadoes_back_to_back(deep, expected):
    """t - 2d between them: 18 - 2 x 4.5 is just half."""
    assert found_in(side(dado(deep), outer(deep))) == [(level, ticks(left)) for level, left in expected]


def test_dadoes_from_opposite_faces_that_miss_each_other():
    assert found_in(side(dado(6), outer(6, 118, 136))) == []
    assert found_in(side(dado(9), outer(9, 118, 136))) == []


@pytest.mark.parametrize(
    ("deep", "expected"), [(6, []), (7.5, []), (7.6, [("stop", 2.8)]), (9, [("stop", 0)])]
)
def test_cuts_that_cross_from_opposite_faces(deep, expected):
    groove = ("groove", (18 - deep, 40, 0), (18, 52, 400))
    assert found_in(side(groove, outer(deep))) == [(level, ticks(left)) for level, left in expected]


def test_the_words_for_cuts_that_cross():
    (found,) = find_thin_wood(cabinet([side(("groove", (9, 40, 0), (18, 52, 400)), outer(9))]))
    assert found.text == (
        "side: no wood is left where the groove and the dado cross. "
        "Make a cut shallower, or stagger the cuts."
    )


@pytest.mark.parametrize(
    ("apart", "expected"), [(9, []), (8.9, [("warn", 8.9)]), (2.9, [("stop", 2.9)]), (0, [])]
)
def test_the_wall_between_two_dadoes(apart, expected):
    """Cuts that meet are one cut: there is no wall."""
    cuts = dado(6), dado(6, 118 + apart, 136 + apart)
    assert found_in(side(*cuts)) == [(level, ticks(left)) for level, left in expected]


def test_cuts_that_cross_leave_no_wall():
    assert found_in(side(dado(6), ("groove", (12, 280, 0), (18, 286, 400)))) == []


@pytest.mark.parametrize(("low", "expected"), [(9, []), (8, [("warn", 8)]), (2, [("stop", 2)]), (0, [])])
def test_short_grain_beyond_a_dado_near_the_end(low, expected):
    assert found_in(side(dado(6, low, low + 18))) == [(level, ticks(left)) for level, left in expected]


def test_a_groove_along_an_edge_leaves_long_grain():
    """6 of 18 mm below a groove that runs with the grain is no short grain; 2 mm is too little anywhere."""
    groove = ("groove", (12, 6, 0), (18, 12, 400))
    assert found_in(side(groove)) == []
    assert found_in(side(groove, grain="none")) == [("warn", ticks(6))]
    assert found_in(side(("groove", (12, 2, 0), (18, 8, 400)))) == [("stop", ticks(2))]


def test_the_end_of_a_stopped_cut_is_not_short_grain():
    assert found_in(side(dado(6, front=5))) == []


def test_the_cheeks_of_a_groove_in_an_edge():
    assert found_in(side(("groove", (6, 290, 0), (12, 300, 400)))) == []
    assert found_in(side(("groove", (2, 290, 0), (12, 300, 400)))) == [("stop", ticks(2))]


def test_a_tongue_may_be_thinner_than_half():
    front = board("front", (0, 0, 0), (200, 12, 100), "y", ("rabbet", (0, 0, 0), (6, 8, 100), "side"))
    assert found_in(front) == [("warn", ticks(4))]
    tongue = joint("tongue", "front", "side", "-x", 6, tongue=4)
    assert found_in(front, joints=[tongue]) == []


def tongued_front(groove_for="box bottom", rabbet_for="side", wide=6):
    """A box front 12 thick with a 4 mm tongue, crossed by a groove for the bottom, 5 deep and `wide`."""
    bottom = board("box bottom", (0, 8, 10), (200, 100, 16), "z", role="box bottom")
    front = board(
        "front", (0, 0, 0), (200, 12, 100), "y",
        ("rabbet", (0, 0, 0), (6, 8, 100), rabbet_for), ("groove", (0, 7, 10), (200, 12, 10 + wide), groove_for),
    )  # fmt: skip
    return find_thin_wood(cabinet([bottom, front], [joint("tongue", "front", "side", "-x", 6, tongue=4)]))


def test_a_groove_for_a_bottom_may_run_through_the_tongue_of_a_box_corner():
    (found,) = tongued_front()
    assert (found.level, found.amount, found.boards) == ("note", 0, ("front",))
    assert "nothing is left of the tongue where the rabbet for the side and the groove" in found.text


@pytest.mark.parametrize("other", [{"groove_for": "shelf"}, {"rabbet_for": "top"}, {"wide": 14}])
def test_no_other_crossing_may_leave_nothing(other):
    assert "stop" in {found.level for found in tongued_front(**other)}


def peg(depth, face="outer", at=(109, 150)):
    """A hole of 8 mm bored into the side from its outer or inner face (w = 0 is the inner one)."""
    return Hole("peg", (ticks(at[0]), ticks(at[1]), ticks(18 if face == "outer" else 0)), "w", ticks(8), ticks(depth))


@pytest.mark.parametrize(("depth", "expected"), [(15, []), (15.1, [("stop", 2.9)]), (18, [])])
def test_wood_before_a_bored_hole(depth, expected):
    """3 mm are enough, and a hole right through is bored so on purpose."""
    bored = replace(side(), cuts=(peg(depth),))
    assert found_in(bored) == [(level, ticks(left)) for level, left in expected]


def test_a_hole_behind_a_dado():
    cut = side(dado(6))
    behind = replace(cut, cuts=(*cut.cuts, peg(10)))
    assert found_in(behind) == [("stop", ticks(2))]
    assert "between the peg holes and the dado" in find_thin_wood(cabinet([behind]))[0].text
    assert found_in(replace(cut, cuts=(*cut.cuts, peg(10, "inner")))) == []
    assert found_in(replace(cut, cuts=(*cut.cuts, peg(10, at=(130, 150))))) == []


def test_equal_places_are_one_finding():
    (found,) = find_thin_wood(cabinet([side(dado(12)), side(dado(12), name="other side")]))
    assert found.boards == ("side", "other side")
    assert found.text.startswith("side and other side: 6 mm")


def test_all_drawers_alike_are_one_finding_that_names_parts_by_what_they_do():
    boards = drawer_boards("bay 1 drawer 1", groove=7) + drawer_boards("bay 1 drawer 2", 210, groove=7)
    (found,) = find_thin_wood(cabinet(boards))
    assert (found.level, found.amount, len(found.boards)) == ("warn", ticks(5), 4)
    assert found.text.startswith(
        "box left and box right of bay 1 drawers 1 and 2: "
        "5 mm of wood is left under the groove for the box bottom, less than half of 12 mm."
    )


@pytest.mark.parametrize(("face", "cut"), [("inner", outer), ("outer", dado)])
@pytest.mark.parametrize(("depth", "expected"), [(8.9, []), (9, []), (10, [("stop", 2)])])
def test_a_hole_and_a_dado_from_either_face_leave_what_both_leave(face, cut, depth, expected):
    """18 less 6 less the hole, whichever of the two comes from the inside."""
    bored = side(cut(6))
    assert found_in(replace(bored, cuts=(*bored.cuts, peg(depth, face)))) == [
        (level, ticks(left)) for level, left in expected
    ]
