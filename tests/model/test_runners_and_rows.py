"""What drawers run on, how far they run, and what lies between their fronts: the small allowances that are easily lost.

Rows of the slide table are read off it; sizes are made up.
"""

from dataclasses import replace

import pytest

from shoplib.model.board import BoxCut
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Fronts, JointChoice, PullOut
from shoplib.tables.slides import slide, slides
from tests.model.plain_case import IN, MM, Solved, a_case, drawer_case


def test_a_side_runner_keeps_its_play_from_the_floor_and_the_top_of_its_groove():
    row = slide("side-hung wood runner")
    case = drawer_case(IN, fronts="none", t=["0.703"], s=["0.5"], rule={
        "slide": row.name, "bottom_depth": IN.of("1/8"), "corner": JointChoice("butt")})  # fmt: skip
    solved = solve(case)
    for which in ("left", "right"):
        runner = solved.by_name[f"bay 1 drawer 1 {which} runner"]
        side = solved.by_name[f"bay 1 drawer 1 {which} box side"]
        (groove,) = (c for c in side.cuts if isinstance(c, BoxCut) and c.for_board == runner.name)
        room = side.placement.to_world(groove.box)
        assert runner.thickness == row.side + row.groove_depth - row.play
        assert room.size[2] - runner.box.size[2] == row.play
        assert runner.box.high[2] == room.high[2]  # the groove rides on it


def test_a_kicker_keeps_its_play_above_the_box_and_the_runner_bears_it():
    row = slide("wood runner below with kicker")
    solved = solve(drawer_case(IN, fronts="none", t=["0.703"], rule={"slide": row.name}))
    side = solved.by_name["bay 1 drawer 1 left box side"].box
    for which in ("left", "right"):
        runner, kicker = (solved.by_name[f"bay 1 drawer 1 {which} {role}"].box for role in ("runner", "kicker"))
        assert runner.high[2] == side.low[2]
        assert kicker.low[2] - side.high[2] == row.play > 0


@pytest.mark.parametrize("name", sorted(slides()))
def test_a_box_runs_out_its_depth_less_what_its_slide_keeps(name):
    row = slide(name)
    rule = {"slide": name, "corner": JointChoice("butt"), "bottom_depth": IN.of("1/8")}
    solved = solve(drawer_case(IN, fronts="none", t=["0.703"], rule=rule))
    (run,) = solved.travel
    deep = solved.by_name["bay 1 drawer 1 left box side"].box.size[1]
    assert run.vector == (0, row.travel_lost - deep, 0)


def test_a_strip_between_inset_fronts_has_the_gap_around_and_not_that_between_fronts():
    case = drawer_case(MM, t=["18"], gap="3", rule={"count": 3, "between": "strip"})
    solved = Solved(replace(case, fronts=replace(case.fronts, around=MM.of(5))), MM)
    for number in (1, 2):
        below, above = f"bay 1 drawer {number} front", f"bay 1 drawer {number + 1} front"
        assert solved.low(above, 2) - solved.high(below, 2) == 18 + 2 * 5
        assert solved.low(f"bay 1 strip {number}", 2) - solved.high(below, 2) == 5


@pytest.mark.parametrize("over", [0, 20])
def test_overlay_fronts_keep_the_gap_around_under_a_top_that_hangs_over_them(over):
    case = drawer_case(MM, fronts="overlay", t=["18"], gap="3", reveal="2", rule={"count": 2}, carcass={
        "top": "over", "overhang_front": MM.of(over)})  # fmt: skip
    solved = Solved(replace(case, fronts=replace(case.fronts, around=MM.of(5))), MM)
    under_top, front = solved.low("top", 2), solved.high("bay 1 drawer 2 front", 2)
    # Else they cover the edge of the top but for the reveal.
    assert under_top - front == (5 if over else 2 - 18)


@pytest.mark.parametrize("level", ["top", "bottom"])
def test_the_rabbet_for_the_back_ends_where_a_top_or_bottom_across_the_sides_would_show_it(level):
    carcass = {"top": "over", "bottom": "under", "back": Back("rabbet", "thin sheet", MM.of(8))}
    solved = Solved(a_case(MM, t=["18"], carcass=carcass), MM)
    board, back = solved.board(level), solved.board("back")
    room = board.placement.to_world(solved.cut(level, "back").box)
    assert (room.low[0], room.high[0]) == (back.box.low[0], back.box.high[0])
    assert board.box.low[0] < room.low[0] and room.high[0] < board.box.high[0]


def pull_out(**more):
    panel = PullOut(slide=MM.slide, sheet="case sheet", **more)
    return a_case(MM, t=["18"], bays=(Bay("pull-out", pull_out=panel),), fronts=Fronts("none"), size=(300, 760, 500))


def test_pegs_longer_than_the_bay_leaves_stop_though_what_hangs_there_has_room():
    case = pull_out(room=MM.of(100), peg_length=MM.of(250))
    (found,) = (f for f in solve(case).findings if f.check == "pull-out room")
    # 300 less two sides of 18, the slide of 12.7 and the panel of 18 leave 233.3 mm.
    assert (found.level, found.amount) == ("stop", MM.of(250) - MM.of("233.3"))
    assert [f for f in solve(pull_out(room=MM.of(233), peg_length=MM.of(75))).findings if f.level == "stop"] == []


def test_the_two_slides_of_a_panel_lie_as_far_from_its_upper_as_from_its_lower_edge():
    solved = solve(pull_out())
    panel = solved.by_name["bay 1 pull-out panel"].box
    lower, upper = (piece.box for piece in solved.hardware if piece.what == "slide")
    assert lower.low[2] - panel.low[2] == panel.high[2] - upper.high[2] > 0
    assert {box.size[2] for box in (lower, upper)} == {slide(MM.slide, "mm").height}
