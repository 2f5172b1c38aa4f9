"""Screws that were right for the planned boards and are too long for the ones that were made."""

from dataclasses import replace

import pytest

from shoplib.checks import check
from shoplib.checks.screw_points import find_screws_through
from shoplib.documents.examples import example
from shoplib.documents.project_file import read_project
from shoplib.lists.refit import refit
from shoplib.measure import INCH
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject
from shoplib.model.solved import Hardware, Screw


@pytest.fixture(scope="module")
def case():
    return solve(read_project(example("under_bench_case")))


def under_the_mean(case, board):
    """By how much a sheet's thinnest reading is under the mean of all: a point comes through there first."""
    readings = case.project.sheets[board.sheet].readings
    return round(sum(readings) / len(readings)) - min(readings)


def test_a_point_that_comes_through_only_where_the_sheet_is_thin_is_found(case):
    upright = case.by_name["divider 1"]
    spread = under_the_mean(case, upright)
    assert spread > 0
    just = Screw("No. 6", upright.thickness - spread // 2, upright.name, 2)
    hardware = [replace(piece, screws=(just,)) if piece.what == "slide" and piece.on == upright.name else piece
                for piece in case.hardware]
    (found,) = find_screws_through(replace(case, hardware=tuple(hardware)))
    assert found.amount == spread - spread // 2


@pytest.mark.parametrize("name", ["under_bench_case", "small_parts_wall_case", "rolling_stand"])
def test_no_planned_screw_comes_through(name):
    assert find_screws_through(solve(read_project(example(name)))) == ()


def test_a_front_cut_from_thin_stock_shows_the_points(case):
    front = case.by_name["bay 1 drawer 4 front"]
    box = case.by_name["bay 1 drawer 4 box front"]
    thin = 472 * INCH // 1000
    made = refit(case, {front.name: (*front.size[:2], thin)}).cabinet
    (found,) = find_screws_through(made)
    front_screws = [s for piece in made.hardware if piece.what == "front screws" for s in piece.screws]
    screw = next(s for s in front_screws if s.into == front.name)
    wood = thin + box.thickness - under_the_mean(case, front) - under_the_mean(case, box)
    assert (found.level, found.boards, found.amount) == ("stop", (front.name,), screw.length - wood)
    assert "come through the face by" in found.text
    assert found in check(made)


def test_a_slide_screw_stays_in_its_board(case):
    upright = case.by_name["divider 1"]
    long = Screw("No. 6", upright.thickness + INCH // 16, upright.name, 2)
    hardware = [replace(piece, screws=(long,)) if piece.what == "slide" and piece.on == upright.name else piece
                for piece in case.hardware]
    assert any(piece.screws == (long,) for piece in hardware)
    (found,) = find_screws_through(replace(case, hardware=tuple(hardware)))
    assert (found.level, found.amount) == ("stop", INCH // 16 + under_the_mean(case, upright))


def test_a_rail_or_cleat_without_a_screw_is_told(case):
    lost = [replace(piece, screws=()) if piece.what == "cleat screws" else piece for piece in case.hardware]
    assert any(piece.what == "cleat screws" for piece in lost)
    texts = [found.text for found in check(replace(case, hardware=tuple(lost)))]
    assert any(text.startswith("The cleat screws of bay 2 pull-out: no screw of the table") for text in texts)
    rail = Hardware("rail screws", "left side", "case", case.by_name["left side"].box)
    texts = [found.text for found in check(replace(case, hardware=(*case.hardware, rail)))]
    assert any("rail screws" in text and "let the end in" in text for text in texts)


def test_the_checks_use_the_rows_of_the_project(case):
    project = case.project
    own = replace(project.slides["side-mount ball-bearing"], name="ours")
    bays = tuple(
        replace(bay, drawers=replace(bay.drawers, slide="ours")) if bay.drawers else bay for bay in project.bays
    )
    built = solve(replace(project, bays=bays, slides=project.slides | {"ours": own}))
    assert not [found for found in check(built) if found.level == "stop"]
    wide = replace(own, side=own.side + INCH)
    built = solve(replace(project, bays=bays, slides=project.slides | {"ours": wide}))
    assert not [found for found in check(built) if found.check == "slide room"]


def test_a_depth_of_a_bay_that_holds_nothing_of_that_depth_is_refused():
    project = read_project(example("rolling_stand"))
    name = next(f"bay {i}" for i, bay in enumerate(project.bays, 1) if bay.kind not in ("drawers", "pull-out"))
    with pytest.raises(ImpossibleProject, match="no boxes or pull-out of that name to cut to a depth"):
        solve(replace(project, measured=replace(project.measured, depths={name: 300 * 80_000})))
