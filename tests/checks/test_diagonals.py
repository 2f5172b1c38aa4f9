"""Diagonals to expect, against right triangles of whole numbers and Python's decimal arithmetic."""

from decimal import Decimal, getcontext
from random import Random

from shoplib.checks.diagonals import diagonal, give_diagonals
from shoplib.measure import INCH, INCH_STYLE, MM
from tests.checks.cabinets import board, cabinet, case_boards, drawer_boards, ticks, tool_case


def test_the_nearest_step_agrees_with_forty_digits():
    getcontext().prec = 40
    random = Random(7)
    for _ in range(500):
        a, b = random.randrange(1, 4 * 10**8), random.randrange(1, 4 * 10**8)
        step = random.choice((1, MM // 10, INCH // 64))
        true = Decimal(a * a + b * b).sqrt()
        got = diagonal(a, b, step)
        assert got % step == 0
        assert abs(Decimal(got) - true) <= Decimal(step) / 2


def test_three_four_five():
    assert diagonal(3 * INCH, 4 * INCH, INCH // 64) == 5 * INCH


def test_the_case_and_each_kind_of_box():
    boards = case_boards() + drawer_boards() + drawer_boards("bay 1 drawer 2", 210)
    back = board("back", (100, 300, 0), (400, 306, 400), "y", sheet="thin sheet", role="back")
    case, behind, boxes = give_diagonals(cabinet([*boards, back]))
    assert {f.level for f in (case, behind, boxes)} == {"note"}
    assert (case.amount, behind.amount) == (ticks(640.3), ticks(500))
    assert boxes.amount == ticks(520.7)
    assert case.text == (
        "Both diagonals of the case, over the outer corners of its front, should measure 640.3 mm; "
        "where they differ, set a clamp across the longer one and draw it in until they are equal."
    )
    assert behind.text.startswith("Both diagonals of the back, as cut, should measure 500 mm; where they differ, it")
    assert boxes.text.startswith(
        "Both diagonals of the box of bay 1 drawers 1 and 2, seen from above, should"
    )


def test_boxes_of_other_sizes_are_told_apart():
    narrow = [b for b in drawer_boards("bay 1 drawer 2", 210) if "right" not in b.name]
    assert len(give_diagonals(cabinet(drawer_boards() + narrow))) == 2


def test_lengths_are_shown_as_the_project_shows_them():
    assert "25 13/64 in" in give_diagonals(tool_case(style=INCH_STYLE))[0].text


def test_boards_that_are_no_case_have_no_diagonal():
    assert give_diagonals(cabinet([board("shelf", (0, 0, 0), (500, 300, 18), "z", role="fixed shelf")])) == ()


def test_under_a_top_that_overhangs_the_tape_is_held_to_the_sides():
    """Sides 500 over all, seen 375 high under a top that they go 7 into: 625 (3, 4, 5 times 125)."""
    boards = [b for b in case_boards() if b.name != "top"]
    top = board("top", (-10, 0, 375), (510, 300, 393), "z", role="top")
    (found,) = give_diagonals(cabinet([*boards, top]))
    assert found.amount == ticks(625)
    assert "from the corner under the top of one side to the bottom corner of the other" in found.text


def test_a_top_as_wide_as_the_case_has_the_corners_itself():
    boards = [b for b in case_boards() if b.name != "top"]
    top = board("top", (0, 0, 393), (500, 300, 411), "z", role="top")
    (found,) = give_diagonals(cabinet([*boards, top]))
    assert found.amount == ticks(647.2)  # sqrt(500^2 + 411^2) = 647.24
    assert "over the outer corners of its front" in found.text


def test_a_toe_notch_takes_the_lower_corners_away():
    """Sides 400 high with 25 notched away in front: 500 and 375 give 625."""
    boards = [b for b in case_boards() if b.role != "side"]
    left = board("left side", (0, 0, 0), (18, 300, 400), "x", ("notch", (0, 0, 0), (18, 50, 25)), role="side")
    right = board("right side", (482, 0, 0), (500, 300, 400), "x", ("notch", (482, 0, 0), (500, 50, 25)), role="side")
    (found,) = give_diagonals(cabinet([left, right, *boards]))
    assert found.amount == ticks(625)
    assert "from the top corner of one side to the upper corner of the toe notch of the other" in found.text
