"""Screws that were right for the planned boards and are too long for the ones that were made."""

from dataclasses import replace
from math import cos, radians

import pytest

from shoplib.checks import check
from shoplib.checks.screw_points import find_screws_through
from shoplib.documents.examples import cabinet_from, example
from shoplib.documents.project_file import project_from_text, read_project
from shoplib.lists.refit import refit
from shoplib.measure import INCH, MM
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject
from shoplib.model.solved import Hardware, Screw


@pytest.fixture(scope="module")
def case():
    return cabinet_from("under_bench_case")


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
    assert find_screws_through(cabinet_from(name)) == ()


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


class TestPocketScrews:
    """A case of three bays, its shelves pocket-screwed to the dividers at one height. Made-up sizes, no source."""

    @staticmethod
    def case(thick: str, at: tuple[str, str] = ("200 mm", "200 mm")):
        rows = "\n".join(f'[[bays]]\nkind = "shelves"\nshelves = {{ at = ["{height}"] }}' for height in at)
        return solve(project_from_text(f"""
format = 1
name = "Shelves for tyres"
show = {{ unit = "mm", step = "0.5 mm" }}
size = {{ width = "900 mm", height = "500 mm", depth = "300 mm" }}
carcass = {{ sheet = "ply", corner = {{ kind = "rabbet" }}, shelf = {{ kind = "pocket screws" }} }}
[sheets.ply]
kind = "plywood"
nominal = "{thick}"
readings = ["{thick}"]
{rows}
"""))

    @staticmethod
    def said(cabinet, level):
        return [f.text for f in check(cabinet) if f.check == "screws" and f.level == level]

    def test_shelves_at_one_height_meet_in_the_divider(self):
        cabinet = self.case("18 mm")
        (text,) = self.said(cabinet, "warn")
        assert "divider 1" in text and "both faces" in text
        # By hand: 19 mm screws, less a web of 9, at 15 degrees, are 9.66 deep from either side: 1.32 more than 18.
        (finding,) = [f for f in check(cabinet) if f.check == "screws" and f.level == "warn"]
        assert abs(finding.amount - 2 * (19 - 9) * MM * cos(radians(15)) + 18 * MM) <= 4

    def test_shelves_at_two_heights_do_not(self):
        assert self.said(self.case("18 mm", at=("200 mm", "260 mm")), "warn") == []

    def test_longer_ones_come_out_at_the_far_side(self):
        cabinet = self.case("18 mm", at=("200 mm", "260 mm"))
        longer = [
            replace(one, screws=tuple(replace(s, length=s.length + 12 * MM) for s in one.screws))
            if one.what == "pocket screws" else one for one in cabinet.hardware
        ]  # fmt: skip
        (text,) = self.said(replace(cabinet, hardware=tuple(longer)), "stop")
        # (31 - 9) cos 15 = 21.25: 3.25 more than 18.
        assert "pocket screws, 31 mm long, come through the face by 3.25 mm" in text
