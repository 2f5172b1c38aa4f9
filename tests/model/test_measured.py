"""Measurements replace what was planned, and only what follows from them changes."""

from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.before_cutting import before_cutting
from shoplib.documents.plan_file import plan_text
from shoplib.documents.project_file import read_project
from shoplib.documents.to_measure import planned_openings
from shoplib.lists.cut_list import kinds
from shoplib.measure import INCH, MM, read_length
from shoplib.model.board import FRONTS
from shoplib.model.cabinet import solve
from shoplib.model.drawer_fit import mend
from shoplib.model.project import ImpossibleProject, Measured, Opening, PartSize, Project
from shoplib.model.solved import Cabinet
from shoplib.tables.slides import slides
from tests.random_projects import project

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
UNDER_BENCH = next(path for path in PROJECTS if path.stem == "under_bench_case")


@pytest.fixture(scope="module")
def plan() -> Project:
    return read_project(UNDER_BENCH)


@pytest.fixture(scope="module")
def planned(plan: Project) -> Cabinet:
    return solve(plan)


def opening_of(cabinet: Cabinet, bay: int) -> int:
    """The planned clear width of a bay."""
    uprights = sorted(
        (board.box for board in cabinet.boards if board.role in ("side", "divider")), key=lambda box: box.low[0]
    )
    return uprights[bay].low[0] - uprights[bay - 1].high[0]


def depths_of(cabinet: Cabinet) -> dict[str, int]:
    """The planned depth of each bay that something runs out of: from the front edge to what stands behind."""
    sides = [board.box.high[1] for board in cabinet.boards if board.role == "side"]
    behind = [board.box.low[1] for board in cabinet.boards if board.role in ("back", "rail")]
    bays = dict.fromkeys(" ".join(travel.group.split()[:2]) for travel in cabinet.travel)
    return dict.fromkeys(bays, min(sides + behind))


def measured(plan: Project, **what: dict) -> Cabinet:
    return solve(replace(plan, measured=Measured(**what)))


def spread(cabinet: Cabinet, group: str) -> int:
    """Outside width of a box."""
    sides = [board.box for board in cabinet.groups[group] if board.role == "box side"]
    return max(box.high[0] for box in sides) - min(box.low[0] for box in sides)


def told(cabinet: Cabinet) -> list[str]:
    return [finding.text for finding in cabinet.findings if finding.check == "as measured"]


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_measurements_equal_to_plan_change_nothing(path: Path) -> None:
    plan = read_project(path)
    planned = solve(plan)
    bays = {travel.group: int(travel.group.split()[1]) for travel in planned.travel}
    openings = {group: opening_of(planned, bay) for group, bay in bays.items()}
    parts = {board.name: PartSize(board.length, board.width) for board in planned.boards}
    built = measured(
        plan, openings={group: Opening(width, width) for group, width in openings.items()},
        depths=depths_of(planned), parts=parts,
    )  # fmt: skip
    assert built.boards == planned.boards
    assert built.hardware == planned.hardware
    assert built.gaps == planned.gaps
    assert told(built) == []


@pytest.mark.parametrize("off", ["-1/16 in", "1/16 in", "-3/32 in"])
def test_the_smaller_reading_governs_the_box(plan: Project, planned: Cabinet, off: str) -> None:
    group, less = "bay 1 drawer 2", read_length(off, negative=True)
    width = opening_of(planned, 1)
    built = measured(plan, openings={group: Opening(width + less, width + less + INCH // 64)}, depths={}, parts={})
    # The box is the governing opening less 1/2 in a side (common practice, no source), down to a whole step.
    assert 0 <= width + less - INCH - spread(built, group) < plan.step
    assert spread(built, "bay 1 drawer 3") == spread(planned, "bay 1 drawer 3")
    assert any(text.startswith(f"{group} box front") and "because" in text for text in told(built))


def test_read_again_with_the_box_in_the_box_keeps_what_it_was_cut_to_and_is_held_against_it(
    plan: Project, planned: Cabinet,
) -> None:
    """By hand: cut to 22 9/16 in less 1 in, a box is 21 9/16 in wide, and 1/8 in too wide for 22 7/16 in."""
    group, first = "bay 1 drawer 2", Opening(read_length("22 19/32 in"), read_length("22 9/16 in"))
    again = Opening(read_length("22 7/16 in"), read_length("22 9/16 in"))
    once = measured(plan, openings={group: first})
    twice = solve(replace(plan, measured=Measured({group: first}, openings_again={group: again}),
                          cutting=replace(plan.cutting, already_cut="case and boxes")))
    assert {board.name for board in once.boards if board.size != twice.by_name[board.name].size} == {f"{group} front"}
    assert spread(twice, group) == read_length("21 9/16 in")
    # Inset, with 1/8 in about it.
    assert twice.by_name[f"{group} front"].length == again.front - INCH // 4
    (stop,) = [finding for finding in check(twice) if finding.level == "stop"]
    assert "the box is 1/8 in too wide" in stop.text and "Plane it off both box sides" in stop.text
    assert not [finding for finding in check(once) if finding.level == "stop"]
    assert group in {one.of for one in once.again} and group not in {one.of for one in twice.again}


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_the_second_readings_change_the_fronts_and_strips_alone(path: Path) -> None:
    plan = read_project(path)
    step = plan.step
    openings = {name: Opening(wide // step * step - step, wide // step * step)
                for name, wide in planned_openings(solve(plan)).items()}
    again = {name: Opening(read.front - step, read.back + step) for name, read in openings.items()}
    once, twice, new = (
        measured(plan, openings=first, openings_again=second)
        for first, second in ((openings, {}), (openings, again), (again, {}))
    )
    changed = [board for board in once.boards if board.size != twice.by_name[board.name].size]
    assert {board.stage for board in changed} <= {FRONTS}
    assert [board.size for board in new.boards if board.stage == FRONTS] == [
        board.size for board in twice.boards if board.stage == FRONTS]
    assert changed and once.again and not twice.again
    assert once.spacers == twice.spacers


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_what_boxes_run_on_stays_where_it_is_though_they_came_out_less_high(path: Path) -> None:
    """It is screwed to the case before they are made."""
    plan = read_project(path)
    planned = solve(plan)
    sides = [board for board in planned.boards if board.role == "box side"]
    less = next(bay.drawers.corner.finger for bay in plan.bays if bay.drawers) or 3 * plan.step
    built = measured(plan, parts={side.name: PartSize(width=side.width - less) for side in sides})
    assert all(built.by_name[side.name].width == side.width - less for side in sides)
    assert built.spacers == planned.spacers
    assert [piece.box for piece in built.hardware if piece.what == "slide"] == [
        piece.box for piece in planned.hardware if piece.what == "slide"]
    assert all(built.by_name[board.name].box == board.box for board in planned.boards
               if board.role in ("runner", "kicker"))


def rolling_read_in_front(*off: int) -> Cabinet:
    """The rolling stand, whose three drawers lie one above another behind overlay fronts, read so many mm off."""
    drawn = read_project(next(path for path in PROJECTS if path.stem == "rolling_stand"))
    wide = planned_openings(solve(drawn))["bay 1 drawer 1"]
    reads = {f"bay 1 drawer {row}": Opening(wide + by * MM, wide + by * MM) for row, by in enumerate(off, 1)}
    return measured(drawn, openings=reads, openings_again=reads)


def spans_of_fronts(cabinet: Cabinet) -> list[tuple[int, int]]:
    return [(b.box.low[0], b.box.high[0]) for b in cabinet.boards if b.role == "front"]


def test_overlay_fronts_of_one_bay_have_one_width_by_the_narrowest_opening() -> None:
    """They lie before the edges, one above another, and nothing may rub: common practice, no source."""
    uneven, narrow = rolling_read_in_front(0, 1, -1), rolling_read_in_front(-1, -1, -1)
    assert spans_of_fronts(uneven) == spans_of_fronts(narrow)
    [look] = [finding for finding in uneven.findings if "one width" in finding.text]
    assert (look.level, look.amount) == ("warn", 2 * MM)
    assert look.boards == tuple(f"bay 1 drawer {row} front" for row in (1, 2, 3))
    assert not [finding for finding in narrow.findings if "one width" in finding.text]


def test_an_overlay_front_waits_for_every_opening_of_its_bay() -> None:
    """Its width hangs on all of them; what is not read yet keeps the plan's."""
    two = rolling_read_in_front(-1, 0)
    assert two.by_name["bay 1 drawer 3 front"].length > two.by_name["bay 1 drawer 1 front"].length
    kind = next(kind for kind in kinds(two) if "bay 1 drawer 1 front" in kind.names)
    [line] = before_cutting(kind, two)
    assert line.startswith("Do not cut before measuring the opening of bay 1 drawer 3")


def test_a_taper_beyond_the_slide_is_shimmed_and_a_large_one_straightened(plan: Project, planned: Cabinet) -> None:
    width = opening_of(planned, 1)
    for more, word in (("3/32 in", "shim"), ("1/4 in", "straighten")):
        opening = Opening(width, width + read_length(more))
        built = measured(plan, openings={"bay 1 drawer 1": opening}, depths={}, parts={})
        assert any(word in text and "at the back" in text for text in told(built)), told(built)
    fine = measured(plan, openings={"bay 1 drawer 1": Opening(width, width + INCH // 16)}, depths={}, parts={})
    assert not any("shim" in text or "straighten" in text for text in told(fine))


def test_no_shim_goes_behind_a_runner_that_lies_under_the_box():
    """Common practice, no source: only slides and side-hung runners are shimmed; a box on a shelf may be loose."""
    did = {row.carries: (mend(3 * INCH // 32, row), mend(INCH // 2, row)) for row in slides().values()}
    assert did == {
        "hardware": ("shim", "straighten"), "side strip": ("shim", "straighten"),
        "strip below": ("guide", "straighten"), "shelf": ("nothing", "nothing"),
    }


def test_a_shallower_bay_takes_the_next_slide_down(plan: Project, planned: Cabinet) -> None:
    name = "bay 1 drawer 1 left box side"
    built = measured(plan, openings={}, depths={"bay 1": read_length("20 1/2 in")}, parts={})
    # Behind an inset front of 0.721 in there are 19.779 in; less 1/4 in of rear room, 18 in is the largest.
    assert planned.by_name[name].length == read_length("20 in")
    assert built.by_name[name].length == read_length("18 in")
    assert built.by_name["bay 3 drawer 1 left box side"].length == read_length("20 in")


def test_a_short_bottom_makes_a_narrower_case_and_narrower_drawers(plan: Project, planned: Cabinet) -> None:
    less = INCH // 16
    short = PartSize(length=planned.by_name["bottom"].length - less)
    built = measured(plan, openings={}, depths={}, parts={"bottom": short})
    width = built.outside.size[0]
    assert planned.outside.size[0] - width == less
    assert built.by_name["top"].length == short.length
    assert spread(built, "bay 1 drawer 1") < spread(planned, "bay 1 drawer 1")
    assert [f for f in check(built) if f.level == "stop"] == []


def test_a_short_divider_is_found_by_the_dry_fit(plan: Project, planned: Cabinet) -> None:
    short = PartSize(length=planned.by_name["divider 1"].length - INCH // 8)
    built = measured(plan, openings={}, depths={}, parts={"divider 1": short})
    stops = [finding for finding in check(built) if finding.level == "stop"]
    assert any("divider 1" in finding.boards and finding.amount == INCH // 8 for finding in stops)


def test_stages_two_and_three_wait_until_the_value_is_measured(plan: Project, planned: Cabinet) -> None:
    waiting = {one.stage for one in planned.waiting if one.of == "bay 1 drawer 1"}
    assert waiting == {2, 3}
    width = opening_of(planned, 1)
    built = measured(plan, openings={"bay 1 drawer 1": Opening(width, width)}, depths={}, parts={})
    assert not any(one.of == "bay 1 drawer 1" for one in built.waiting)
    assert any(one.of == "bay 1 drawer 2" for one in built.waiting)


@pytest.mark.parametrize("table", ["openings", "depths", "parts"])
def test_a_name_that_is_not_there_is_refused(plan: Project, table: str) -> None:
    value = {"openings": Opening(INCH, INCH), "depths": INCH, "parts": PartSize(INCH)}[table]
    with pytest.raises(ImpossibleProject, match=r"no such name|no boxes or pull-out of that name"):
        measured(plan, **({"openings": {}, "depths": {}, "parts": {}} | {table: {"bay 9": value}}))


def test_a_reading_far_off_the_plan_is_a_stop(plan: Project, planned: Cabinet) -> None:
    width = opening_of(planned, 1)
    for opening in (Opening(width - 10 * INCH, width - 10 * INCH), Opening(width + 3 * INCH, width)):
        built = measured(plan, openings={"bay 1 drawer 1": opening}, depths={}, parts={})
        stops = [f for f in built.findings if f.level == "stop" and "Measure it again" in f.text]
        assert len(stops) == 1


@pytest.mark.parametrize("seed", range(60))
def test_everything_measured_equal_to_a_random_plan_changes_no_byte_of_it(seed: int) -> None:
    """But for what waits to be measured, which is then less."""
    plan = project(seed)
    planned = solve(plan)
    rows = {travel.group.split(".")[0] for travel in planned.travel}
    rows |= {board.name for board in planned.boards if board.role == "strip"}
    widths = {name: opening_of(planned, int(name.split()[1])) for name in rows}
    built = solve(
        replace(
            plan,
            measured=Measured(
                openings={name: Opening(width, width) for name, width in widths.items()},
                depths=depths_of(planned),
                parts={board.name: PartSize(board.length, board.width) for board in planned.boards},
            ),
        )
    )
    before, after = (plan_text(replace(cabinet, waiting=()), check(cabinet)) for cabinet in (planned, built))
    assert after == before
    assert built.waiting == ()
