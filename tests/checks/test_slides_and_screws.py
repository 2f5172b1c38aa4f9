"""Slides with the wrong room, and fittings that no screw suits."""

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from shoplib.checks.overlap import find_overlaps
from shoplib.checks.screws import find_meeting_screws, find_missing_screws
from shoplib.checks.slide_room import find_box_of_other_length, find_too_little_behind, find_wrong_slide_room
from shoplib.documents.project_file import read_project
from shoplib.lists.refit import refit
from shoplib.measure import INCH, MM, read_length
from shoplib.model.board import Board
from shoplib.model.cabinet import solve
from shoplib.model.placement import Placement
from shoplib.model.project import Back, JointChoice, Measured, PartSize, Project, Size
from shoplib.model.solved import Cabinet
from shoplib.tables.slides import slide
from tests.model.plain_case import IN, drawer_case, exact
from tests.model.plain_case import MM as MILLIMETRES

UNDER_BENCH = Path(__file__).parents[2] / "data" / "projects" / "under_bench_case.toml"


@pytest.fixture(scope="module")
def case() -> Cabinet:
    return solve(read_project(UNDER_BENCH))


def moved_side(case: Cabinet, by: int) -> Cabinet:
    """The right side of the first box, moved left by so much: a box that much narrower."""

    def shift(board: Board) -> Board:
        if board.name != "bay 1 drawer 1 right box side":
            return board
        x, y, z = board.placement.origin
        return replace(board, placement=Placement((x - by, y, z), board.placement.axes))

    return replace(case, boards=tuple(map(shift, case.boards)))


def test_planned_boxes_suit_their_slides(case: Cabinet) -> None:
    assert find_wrong_slide_room(case) == ()


@pytest.mark.parametrize(
    ("by", "level", "word"),
    [(INCH * 3 // 32, "warn", "Shim"), (INCH // 4, "stop", "too narrow"), (-INCH // 16, "stop", "too wide")],
)
def test_a_box_that_does_not_suit_its_slides(case: Cabinet, by: int, level: str, word: str) -> None:
    # Up to 1/16 in narrow is forgiven, none wide: common practice, no source.
    (found,) = find_wrong_slide_room(moved_side(case, by))
    assert found.level == level
    assert word in found.text
    assert abs(found.amount - abs(by)) < case.style.step


def test_a_fitting_without_a_screw_is_told(case: Cabinet) -> None:
    assert find_missing_screws(case) == ()
    bare = tuple(replace(piece, screws=piece.screws[:1]) for piece in case.hardware)
    (found,) = find_missing_screws(replace(case, hardware=bare))
    assert found.level == "warn" and "slides" in found.text


def twin_drawers() -> Project:
    """The case with drawers in line on both faces of its first divider."""
    plan = read_project(UNDER_BENCH)
    like = plan.bays[2]
    return replace(plan, bays=(plan.bays[0], like, like))


def test_screws_from_both_faces_of_a_divider_meet() -> None:
    cabinet = solve(twin_drawers())
    found = find_meeting_screws(cabinet)
    assert {f.boards for f in found} == {("divider 1",), ("divider 2",)}
    # 5/8 in from each face, against 0.699 in, the thinnest reading.
    assert {f.amount for f in found} == {2 * INCH * 5 // 8 - INCH * 699 // 1000}
    assert all(f.level == "warn" and "Set those of one face in other holes" in f.text for f in found)


def test_short_screws_and_slides_at_other_heights_do_not_meet() -> None:
    cabinet = solve(twin_drawers())
    short = tuple(
        replace(piece, screws=tuple(replace(screw, length=INCH * 11 // 32) for screw in piece.screws))
        for piece in cabinet.hardware
    )
    assert find_meeting_screws(replace(cabinet, hardware=short)) == ()
    for up, meet in ((INCH * 137 // 1000, True), (INCH * 138 // 1000, False)):  # No. 6: 0.138 in (ASME B18.6.1)
        moved = tuple(
            replace(piece, box=piece.box.moved((0, 0, up))) if piece.group.startswith("bay 2") else piece
            for piece in cabinet.hardware
        )
        assert bool(find_meeting_screws(replace(cabinet, hardware=moved))) == meet


def test_the_thinnest_reading_decides_how_long_a_screw_may_be() -> None:
    plan = read_project(UNDER_BENCH)

    def longest(*readings: str) -> int:
        sheet = replace(plan.sheets["case sheet"], readings=tuple(map(read_length, readings)))
        solved = solve(replace(plan, sheets=plan.sheets | {sheet.name: sheet}))
        slide = next(h for h in solved.hardware if h.what == "slide")
        return next(screw.length for screw in slide.screws if screw.into == slide.on)

    # 5/8 in and 1/16 in to spare need 0.6875 in; the mean of the second pair has it, its thin corner has not.
    assert longest("0.69 in", "0.71 in") == INCH * 5 // 8
    assert longest("0.68 in", "0.71 in") == INCH // 2


@pytest.mark.parametrize(
    ("slide_name", "mend"),
    [("side-hung wood runner", "Shim the runners out"), ("wood runner below with kicker", "Glue a strip"),
     ("box rides on the shelf", "Glue a strip")],
)  # fmt: skip
def test_boxes_on_wood_are_judged_by_their_rows_too(slide_name: str, mend: str) -> None:
    plan, row = read_project(UNDER_BENCH), slide(slide_name)
    changed = {"slide": slide_name, "corner": JointChoice("rabbet"), "between": "nothing"}
    if row.carries == "shelf":
        changed["between"] = "shelf"
    rule = replace(plan.bays[0].drawers, **changed)
    case = solve(replace(plan, bays=(replace(plan.bays[0], drawers=rule), *plan.bays[1:])))
    assert find_wrong_slide_room(case) == ()
    (narrow,) = find_wrong_slide_room(moved_side(case, row.narrow + INCH // 32))
    assert narrow.level == "warn" and mend in narrow.text
    (wide,) = find_wrong_slide_room(moved_side(case, -INCH // 16))
    assert wide.level == "stop" and "too wide" in wide.text and "Make the box that much narrower" in wide.text


def test_an_overlapping_box_is_to_be_made_narrower(case: Cabinet) -> None:
    told = [f.text for f in find_overlaps(moved_side(case, -INCH)) if "right box side" in f.boards[1]]
    assert told and all("Make the box of bay 1 drawer 1 narrower by 0.472 in." in text for text in told)


def test_metric_slides_take_their_tenths(case: Cabinet) -> None:
    plan = read_project(UNDER_BENCH.with_name("rolling_stand.toml"))
    (found,) = find_wrong_slide_room(moved_side(solve(plan), 10 * MM))
    assert "its slides take 25.4 mm for the pair" in found.text


UNITS = {"in": (IN, "1/16", "1/4", 18), "mm": (MILLIMETRES, "2", "6", 450)}
"""Setback, room behind and a length of side-mount slides: common practice, no source."""


def with_slide(unit: str, free: str, fronts: str = "overlay") -> tuple[Project, Fraction]:
    """A case whose back leaves so much free behind a slide as it lies; the box was made as long as the slide."""
    scale, setback, _, length = UNITS[unit]
    front = exact("0.721" if unit == "in" else "18.3") if fronts == "inset" else 0
    inside = front + exact(setback) + length + exact(free)
    size = Size("inside", scale.of("16" if unit == "in" else "400"), scale.of("7" if unit == "in" else "180"),
                scale.of(inside))  # fmt: skip
    plan = drawer_case(scale, fronts=fronts, size=size, carcass={"back": Back("applied", "thin sheet")})
    sides = {f"bay 1 drawer 1 {side} box side": PartSize(scale.of(length)) for side in ("left", "right")}
    return replace(plan, measured=Measured(parts=sides)), inside


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("fronts", ["overlay", "inset", "none"])
def test_a_slide_that_leaves_too_little_behind_it_is_told(unit: str, fronts: str) -> None:
    """By hand: inside depth - front - setback - slide, against the room that must stay free."""
    scale, setback, asked, length = UNITS[unit]
    enough, _ = with_slide(unit, asked, fronts)
    assert find_too_little_behind(solve(enough)) == ()
    less = exact(asked) - exact(setback)  # as if the slide began at the front
    plan, _ = with_slide(unit, str(less), fronts)
    (found,) = find_too_little_behind(solve(plan))
    assert (found.level, found.amount) == ("warn", scale.of(setback))
    assert "free behind its slides" in found.text
    cut_again = replace(plan, measured=Measured())
    own = solve(cut_again)
    assert find_too_little_behind(own) == ()
    assert {h.box.size[1] for h in own.hardware if h.what == "slide"} < {scale.of(size) for size in range(length)}


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_a_slide_that_meets_what_stands_behind_stops_and_the_depth_as_measured_decides(unit: str) -> None:
    scale, _, asked, _ = UNITS[unit]
    plan, inside = with_slide(unit, asked)
    pipe = scale.of(inside - 2 * exact(asked))
    (found,) = find_too_little_behind(solve(replace(plan, measured=replace(plan.measured, depths={"bay 1": pipe}))))
    assert (found.level, found.amount) == ("stop", scale.of(2 * exact(asked)))


def test_a_box_on_wood_is_counted_by_itself() -> None:
    """Its runner begins behind the front and ends with the box: the setback takes nothing of the depth."""
    rule = {"slide": "side-hung wood runner", "corner": JointChoice("butt")}
    carcass = {"back": Back("applied", "thin sheet")}
    plan = drawer_case(MILLIMETRES, fronts="none", rule=rule, thin=["6"], carcass=carcass)
    solved = solve(plan)
    side = solved.by_name["bay 1 drawer 1 left box side"]
    assert solved.by_name["back"].box.low[1] - side.box.high[1] == 6 * MM and find_too_little_behind(solved) == ()
    made = Measured(parts={side.name: PartSize(side.length + MM)}, depths={})
    (found,) = find_too_little_behind(solve(replace(plan, measured=made)))
    assert (found.level, found.amount) == ("warn", MM) and "Make the box shorter by 1 mm" in found.text


def test_a_box_that_is_not_as_long_as_its_slides_is_told():
    """A slide is screwed along the whole box: common practice, no source."""
    case = solve(read_project(UNDER_BENCH))
    assert find_box_of_other_length(case) == ()
    name = "bay 1 drawer 1"
    sides = {f"{name} {hand} box side": case.by_name[f"{name} {hand} box side"] for hand in ("left", "right")}
    for by, word in ((INCH // 8, "longer"), (-INCH // 2, "shorter")):
        sizes = {side: (board.length + by, *board.size[1:]) for side, board in sides.items()}
        (found,) = find_box_of_other_length(refit(case, sizes).cabinet)
        assert (found.level, found.amount, found.boards) == ("warn", abs(by), tuple(sides))
        assert f"{word} than its slides, which are 20 in long" in found.text
