"""Grooves for a drawer bottom that come out where they can be seen."""

from shoplib.checks.show_through import find_grooves_that_show
from tests.checks.cabinets import board, cabinet, drawer_boards, tool_case

GROUP = "bay 1 drawer 1"


def test_a_groove_no_deeper_than_the_rabbets_is_hidden_by_front_and_back():
    assert find_grooves_that_show(tool_case()) == ()


def test_a_groove_deeper_than_the_rabbets_shows_at_both_ends():
    front, rear = find_grooves_that_show(cabinet(drawer_boards(groove=7)))
    assert (front.level, rear.level) == ("note", "note")
    assert front.boards == (f"{GROUP} box left", f"{GROUP} box right")
    assert rear.text == (
        "bay 1 drawer 1 box left and box right: the groove for the bottom runs right through "
        "and shows at the rear. Stop it short of the end or plug it, or leave it where nobody looks."
    )
    assert "shows at the front" in front.text


def test_a_false_front_hides_the_front_end():
    false_front = board("front", (20, -8, 90), (480, 10, 210), "y", group=GROUP, role="front")
    (rear,) = find_grooves_that_show(cabinet([*drawer_boards(groove=7), false_front]))
    assert "rear" in rear.text


def test_another_group_hides_nothing():
    behind = board("back", (0, 290, 0), (500, 296, 400), "y", role="back")
    assert len(find_grooves_that_show(cabinet([*drawer_boards(groove=7), behind]))) == 2


def test_a_bottom_under_a_low_back_shows_at_the_rear():
    boards = [b for b in drawer_boards() if not b.name.endswith("box back")]
    name = f"{GROUP} box back"
    low_back = board(name, (36.5, 278, 112), (463.5, 290, 200), "y", group=GROUP, role="box back")
    (rear,) = find_grooves_that_show(cabinet([*boards, low_back]))
    assert "rear" in rear.text and len(rear.boards) == 2


def test_a_groove_through_a_front_that_covers_the_sides():
    front = board(
        "box front", (0, 0, 0), (400, 12, 100), "y", ("groove", (0, 7, 6), (400, 12, 12), "bottom"),
        group=GROUP, role="box front",
    )  # fmt: skip
    bottom = board("bottom", (17, 7, 6), (383, 300, 12), "z", group=GROUP, role="box bottom")
    left, right = find_grooves_that_show(cabinet([front, bottom]))
    assert "left end" in left.text and "right end" in right.text


def test_a_stopped_groove_does_not_show():
    front = board(
        "box front", (0, 0, 0), (400, 12, 100), "y", ("groove", (10, 7, 6), (390, 12, 12), "bottom"),
        group=GROUP, role="box front",
    )  # fmt: skip
    bottom = board("bottom", (10, 7, 6), (390, 300, 12), "z", group=GROUP, role="box bottom")
    assert find_grooves_that_show(cabinet([front, bottom])) == ()


def test_equal_drawers_are_one_note_for_each_end():
    boards = drawer_boards(groove=7) + drawer_boards("bay 1 drawer 2", 210, groove=7)
    assert [len(f.boards) for f in find_grooves_that_show(cabinet(boards))] == [4, 4]
