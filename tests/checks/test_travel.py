"""Travel: a drawer that runs free, and drawers that meet something on the way, at known distances."""

from shoplib.checks.travel import find_blocked_travel
from shoplib.model.solved import Travel
from tests.checks.cabinets import board, cabinet, case_boards, drawer_boards, ticks, tool_case


def pulled(*more, by=(0, -250, 0), boards=None):
    travel = (Travel("bay 1 drawer 1", tuple(map(ticks, by))),)
    return find_blocked_travel(cabinet([*(boards or case_boards() + drawer_boards()), *more], travel=travel))


def test_the_drawer_runs_out_free():
    assert find_blocked_travel(tool_case()) == ()


def test_a_strip_that_hangs_before_the_drawer():
    strip = board("strip", (18, 0, 196), (482, 9, 230), "y", sheet="box sheet")
    found = pulled(strip)
    assert [f.boards for f in found] == [
        (f"bay 1 drawer 1 box {name}", "strip") for name in ("left", "right", "front")
    ]
    assert {f.amount for f in found} == {ticks(4)}
    assert found[0].text == (
        "bay 1 drawer 1 box left runs into strip after 1 mm of its 250 mm of travel: "
        "4 mm of it stands in the way up and down. Make strip narrower by 4 mm, or move one of them by 4 mm."
    )


def test_a_board_beyond_the_end_of_the_travel_is_not_met():
    assert pulled(board("post", (18, -290, 0), (482, -240, 400), "y")) == ()
    (found, *_) = pulled(board("post", (18, -290, 0), (482, -239, 400), "y"))
    assert "after 249 mm of its 250 mm" in found.text


def test_a_board_that_touches_stands_in_the_way_at_the_start():
    found = pulled(board("stop", (200, 0, 150), (220, 10, 160), "y"))
    assert found[0].text.startswith("bay 1 drawer 1 box front runs into stop at the start of its 250 mm")


def test_a_runner_may_lie_in_the_groove_of_its_side():
    """The hull of the side fills the groove; its wood does not."""
    group = "bay 1 drawer 1"
    side = board(
        f"{group} box left", (20, 10, 100), (38, 290, 200), "x",
        ("groove", (20, 10, 140), (29, 290, 160)), group=group,
    )  # fmt: skip
    runner = board("runner", (18, 20, 141), (28, 290, 159), "x")
    assert pulled(runner, boards=[side]) == ()
    (found,) = pulled(board("runner", (18, 0, 141), (28, 8, 161), "x"), boards=[side])
    assert found.amount == ticks(1)


def test_wood_shared_before_anything_moves_is_left_to_the_overlap_check():
    assert pulled(board("strip", (20, 10, 150), (480, 30, 160), "y"), boards=drawer_boards()[:1]) == ()


def test_no_travel_and_an_empty_group_are_fine():
    assert pulled(by=(0, 0, 0)) == ()
    assert find_blocked_travel(cabinet(case_boards(), travel=(Travel("bay 9", (0, -1, 0)),))) == ()


def test_what_stands_in_the_way_is_measured_across_the_run_and_not_along_it():
    """A strip 2 mm thick that hangs 4 mm low is cut 4 mm narrower, not made 2 mm thinner."""
    found = pulled(board("strip", (18, 0, 196), (482, 2, 230), "y", sheet="box sheet"))
    assert {f.amount for f in found} == {ticks(4)}
    assert all("4 mm of it stands in the way up and down" in f.text for f in found)
