"""Faults that a cabinetmaker sees at once, set into the shipped projects; the amounts are worked here by hand."""

from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.project_file import read_project
from shoplib.live.carcass_project import case_project, starting_case
from shoplib.measure import INCH, MM, Style, read_length
from shoplib.model.cabinet import solve
from shoplib.model.project import Base, Measured, Opening, PartSize, Pulls

PROJECTS = Path(__file__).parents[2] / "data" / "projects"
BENCH, STAND, WALL = (
    read_project(PROJECTS / f"{name}.toml") for name in ("under_bench_case", "rolling_stand", "small_parts_wall_case")
)


def told(project, word, cabinet=None):
    """The level, amount and text of what is said with that word."""
    found = check(cabinet or solve(project))
    return [(f.level, f.amount, f.text) for f in found if word in f.text]


def stand_with_pulls(pitch):
    return replace(STAND, pulls=Pulls(pitch * MM, 30 * MM, 5 * MM))


@pytest.mark.parametrize("pitch", [288, 320])
def test_pulls_wider_than_the_box_front_stop(pitch):
    plan = stand_with_pulls(pitch)
    cabinet = solve(plan)
    front, side = (cabinet.by_name[f"bay 1 drawer 1 {name}"].box for name in ("front", "right box side"))
    middle = (front.low[0] + front.high[0]) // 2
    hole = middle + (pitch * MM + 5 * MM) // 2
    ((level, amount, text),) = told(plan, "pull reach", cabinet)
    assert (level, amount) == ("stop", hole - side.low[0])
    assert ("divider 1" in text) == (pitch == 320)
    most = read_length(text.split("at most ")[1].split(" apart")[0])
    assert told(replace(STAND, pulls=Pulls(most, 30 * MM, 5 * MM)), "pull reach") == []
    assert told(replace(STAND, pulls=Pulls(most + MM, 30 * MM, 5 * MM)), "pull reach") != []


@pytest.mark.parametrize(
    ("wide", "pitch", "says"),
    [
        ("300 mm", 0, "The box is too narrow for any pull in the middle of its front: make the bay wider"),
        ("315 mm", 32, "The box is too narrow for a pull with two holes. Choose one with one hole, or make the bay"),
        ("400 mm", 64, "Choose a pull whose holes are at most"),
    ],
)
def test_a_box_too_narrow_for_a_pull_is_told_no_distance_that_cannot_be(wide, pitch, says):
    """The panel's narrowest case with four bays once said: holes at most -1.5 mm apart (a cabinetmaker's find)."""
    style = Style("mm", MM // 2)
    plan = case_project(replace(starting_case("mm"), width=read_length(wide), holds="drawers", bays=4), style)
    texts = [text for _, _, text in told(replace(plan, pulls=Pulls(pitch * MM, 30 * MM, 5 * MM)), "pull reach")]
    assert texts and all(says in text and "-" not in text.replace("pull-out", "") for text in texts)


def test_a_pull_above_its_box_stops():
    drawers = replace(STAND.bays[0].drawers, count=1, heights="equal", ratio=(), room_above=400 * MM)
    bays = (replace(STAND.bays[0], drawers=drawers), *STAND.bays[1:])
    ((level, _, text),) = told(replace(STAND, bays=bays), "pull reach")
    assert level == "stop" and "past the edge of the box front" in text and "room above" in text


@pytest.mark.parametrize(
    ("setback", "level", "amount"), [("4 in", None, 0), ("5 in", "warn", "5 in"), ("20 in", "stop", "12 1/2 in")]
)
def test_a_toe_space_that_takes_the_case_off_its_feet(setback, level, amount):
    """A third of 22 1/2 in is 7 1/2 in (where the limit lies: common practice, no source)."""
    plan = replace(BENCH, base=replace(BENCH.base, setback=read_length(setback)))
    expected = [(level, read_length(amount))] if level else []
    assert [each[:2] for each in told(plan, "toe room is")] == expected


@pytest.mark.parametrize(("fit", "level"), [("0.004 in", None), ("0.020 in", "warn"), ("0.040 in", "stop")])
def test_a_slipped_decimal_in_a_fit(fit, level):
    corner = replace(BENCH.carcass.corner, fit=read_length(fit))
    found = told(replace(BENCH, carcass=replace(BENCH.carcass, corner=corner)), "slipped decimal")
    assert {each[:2] for each in found} == ({(level, read_length(fit))} if level else set())


@pytest.mark.parametrize(("gap", "level"), [("1/16 in", None), ("3/32 in", "warn"), ("5/32 in", "stop")])
def test_an_end_gap_that_leaves_little_of_a_dado(gap, level):
    """Dadoes 1/4 in deep: a third is 0.083 in, half 1/8 in."""
    divider = replace(BENCH.carcass.divider, end_gap=read_length(gap))
    found = told(replace(BENCH, carcass=replace(BENCH.carcass, divider=divider)), "stays empty")
    assert {each[:2] for each in found} == ({(level, read_length(gap))} if level else set())


def test_fronts_far_apart():
    wide = replace(BENCH.fronts, gap=INCH // 2, around=INCH)
    assert [each[:2] for each in told(replace(BENCH, fronts=wide), "beside the fronts")] == [
        ("warn", INCH // 2), ("warn", INCH)
    ]  # fmt: skip
    assert told(BENCH, "beside the fronts") == []


@pytest.mark.parametrize(("short", "level"), [("1/32 in", "warn"), ("1/16 in", "warn"), ("1/8 in", "stop")])
def test_a_finished_divider_that_is_short(short, level):
    """It goes 1/4 in less 1/64 in into its dado: 15/64 in, of which half is 0.117 in."""
    length = solve(BENCH).by_name["divider 1"].length - read_length(short)
    plan = replace(BENCH, measured=Measured(parts={"divider 1": PartSize(length=length)}))
    ((found, amount, text),) = told(plan, "divider 1 stands")
    assert (found, amount) == (level, read_length(short))
    assert ("Leave it" in text) == (level == "warn") and "Make it" not in text


def test_advice_on_an_opening_never_plans_the_case_anew():
    for back in ("22 3/4 in", "24 in"):
        read = {"bay 1 drawer 1": Opening(read_length("22 9/16 in"), read_length(back))}
        ((_, _, text),) = told(replace(BENCH, measured=Measured(openings=read)), "the opening measures 22 9/16 in at")
        assert "plan again" not in text and "bays[" not in text
    for depth in ("21 in", "22 11/16 in", "15 in", "24 in"):
        plan = replace(BENCH, measured=Measured(depths={"bay 1": read_length(depth)}))
        ((_, _, text),) = told(plan, "the depth measures")
        assert "plan again" not in text and "size.depth" not in text


def openings(wide, *, bays=(1, 3)):
    read = Opening(read_length(wide), read_length(wide))
    found = {f"bay {bay} drawer {row}": read for bay in bays for row in range(1, 5)}
    return found | {"bay 2 pull-out": Opening(12 * INCH, 12 * INCH)}


def test_measured_openings_are_added_up():
    """4 x 0.703 in and 22 1/2 + 12 + 22 1/2 in are 59.812 in; 60 in were planned."""
    plan = replace(BENCH, measured=Measured(openings=openings("22 1/2 in")))
    ((level, amount, text),) = told(plan, "come to")
    assert (level, amount) == ("warn", 188 * INCH // 1000)
    assert "59 13/16 in, 3/16 in less than the planned 60 in" in text
    assert told(replace(BENCH, measured=Measured(openings=openings("22 19/32 in"))), "come to") == []
    assert told(replace(BENCH, measured=Measured(openings=openings("22 1/2 in", bays=(1,)))), "come to") == []


def test_the_grain_of_a_bank_of_drawers_agrees_and_a_tall_pull_out_front_stands():
    for plan in (BENCH, STAND, WALL):
        cabinet = solve(plan)
        for board in cabinet.boards:
            if board.role == "front":
                along = "+z" if "pull-out" in board.name else "+x"
                assert board.placement.axes[0] == along, board.name
    narrow = replace(BENCH, size=replace(BENCH.size, width=30 * INCH))
    front = solve(narrow).by_name["bay 1 drawer 1 front"]
    assert front.placement.axes[0] == "+x" and front.length < front.width


def test_boards_of_a_plinth_run_along_their_length():
    plan = replace(BENCH, base=Base("plinth", 4 * INCH, 3 * INCH))
    cabinet = solve(plan)
    plinth = [board for board in cabinet.boards if board.role == "plinth"]
    assert len(plinth) == 4 and all((b.length > b.width, b.width) == (True, 4 * INCH) for b in plinth)
    assert [f.text for f in check(cabinet) if f.level != "note"] == []


def undermount():
    bays = tuple(
        replace(bay, drawers=replace(bay.drawers, slide="undermount")) if bay.drawers else bay for bay in BENCH.bays
    )
    return solve(replace(BENCH, bays=bays))


def test_undermount_slides_put_no_screw_into_a_box_side():
    cabinet = undermount()
    slides = [piece for piece in cabinet.hardware if piece.what == "slide" and "drawer" in piece.group]
    assert slides and all([screw.into for screw in piece.screws] == [piece.on] for piece in slides)
    assert not any("screws of" in f.text or "short enough" in f.text for f in check(cabinet))
    ((level, _, text),) = told(None, "slide's own sheet", cabinet)
    assert level == "note" and "hook holes" in text and "locks" in text
    assert told(BENCH, "slide's own sheet") == []


@pytest.mark.parametrize(
    ("door", "off"),
    [("620 mm", "Take its pulls off"), ("600 mm", "Take its pulls and fronts off"), ("590 mm", "Build")],
)
def test_a_door_that_the_stand_passes_without_what_is_hung_last(door, off):
    """640 mm deep; the pulls stand 30 mm before the fronts, these 17.9 mm before the case."""
    plan = replace(STAND, space=replace(STAND.space, door_width=read_length(door)))
    ((level, _, text),) = told(plan, "the door is")
    assert level == "stop" and off in text


def test_the_reading_that_governs_is_named():
    read = {"bay 1 drawer 1": Opening(read_length("22 5/8 in"), read_length("22 17/32 in"))}
    cabinet = solve(replace(BENCH, measured=Measured(openings=read)))
    because = {f.boards[0]: f.text for f in cabinet.findings if "because the opening" in f.text}
    assert "measures 22 5/8 in at the front." in because["bay 1 drawer 1 front"]
    assert "measures 22 17/32 in at the back, where it is narrower." in because["bay 1 drawer 1 box front"]


def test_a_box_on_a_shelf_has_room_behind():
    """1/8 in: common practice, no source."""
    cabinet = solve(WALL)
    rail = min(board.box.low[1] for board in cabinet.boards if board.role == "rail")
    ends = max(board.box.high[1] for board in cabinet.boards if board.role == "box side")
    assert rail - ends >= INCH // 8


def test_a_width_measured_before_its_edging():
    strip = replace(BENCH.edging[0], kind="strip", thickness=INCH // 4)
    plan = replace(BENCH, edging=(strip,))
    top = solve(plan).by_name["top"]
    for less, said in ((INCH // 4, True), (INCH // 4 + INCH // 64, True), (INCH // 16, False)):
        read = replace(plan, measured=Measured(parts={"top": PartSize(width=top.width - less)}))
        assert bool(told(read, "at the saw")) == said, less


def test_casters_are_not_shimmed():
    plan = replace(STAND, space=replace(STAND.space, floor_fall=12 * MM))
    ((level, amount, text),) = told(plan, "The floor falls")
    assert (level, amount) == ("note", 12 * MM)
    assert "Lock the casters" in text and "shim the" not in text and "set level" not in text


def test_the_round_end_of_a_stopped_dado_is_squared():
    ((level, _, text),) = told(STAND, "square them with a chisel")
    assert level == "note" and "divider 1 and right side" in text and "bay 2 shelves 1 and 2" in text
    assert told(BENCH, "square them") == []


def test_pegs_longer_than_the_room_planned_for_what_hangs_on_them():
    bay = replace(BENCH.bays[1], pull_out=replace(BENCH.bays[1].pull_out, peg_length=read_length("10 9/16 in")))
    ((level, amount, _),) = told(replace(BENCH, bays=(BENCH.bays[0], bay, BENCH.bays[2])), "the pegs are")
    assert (level, amount) == ("warn", read_length("2 9/16 in"))
    assert told(BENCH, "the pegs are") == []


def test_where_the_rest_of_a_stepped_column_went():
    """The bottom front is 1 3/32 in higher than the next, the others step by 1 in."""
    ((level, amount, text),) = told(BENCH, "left over went to the bottom")
    assert level == "note" and abs(amount - 3 * INCH // 32) < INCH // 1000
    assert text.startswith("bays 1 and 3: the bottom front is 1 3/32 in higher")


@pytest.mark.parametrize("plan", [BENCH, STAND, WALL], ids=lambda plan: plan.name)
def test_the_shipped_projects_give_nothing_to_look_at(plan):
    assert [f.text for f in check(solve(plan)) if f.level != "note"] == []
