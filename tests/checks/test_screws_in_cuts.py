"""Screws of slides against the dadoes on the other face of their upright, by hand on a divider of 0.703 in."""

from dataclasses import replace

import pytest

from shoplib.checks.screws_in_cuts import find_screws_in_cuts
from shoplib.live.hardware_project import ALONE, ONE_MORE, SHELVES, hardware_project, starting_hardware
from shoplib.measure import INCH, INCH_STYLE
from shoplib.model.cabinet import solve
from shoplib.model.screw_room import screw_body, shank

DADO, SCREW = INCH // 4, 5 * INCH // 8


def choices(**other):
    return replace(starting_hardware("in"), **other)


def found(**other):
    return find_screws_in_cuts(solve(hardware_project(choices(**other), INCH_STYLE)))


def test_a_screw_that_reaches_into_a_dado_is_told_with_how_far():
    (one,) = found(beside=SHELVES)
    # 5/8 in of screw in 0.703 in of wood, of which the dado takes 1/4 in
    assert one.level == "warn" and one.amount == SCREW - (INCH * 703 // 1000 - DADO)
    said = "divider 1: screws of 5/8 in for the slides of bay 1 drawer 2 reach 0.172 in into the dado of bay 2 shelf 2."
    assert one.text.startswith(said)
    assert "shorter screws" in one.text


@pytest.mark.parametrize("beside", [ALONE, ONE_MORE])
def test_nothing_is_told_where_there_is_no_cut(beside):
    assert found(beside=beside) == ()


@pytest.mark.parametrize(("up", "met"), [(0, 1), (INCH // 8, 1), (INCH, 0)])
def test_a_slide_clear_of_the_dado_is_not_told(up, met):
    """The band of the screws against the dado, moved up: 0.138 in thick (No. 6) against a dado 0.703 in wide."""
    case = solve(hardware_project(choices(beside=SHELVES), INCH_STYLE))
    moved = tuple(
        replace(piece, box=piece.box.moved((0, 0, up))) for piece in case.hardware
    )
    assert len(find_screws_in_cuts(replace(case, hardware=moved))) == met


@pytest.mark.parametrize(("gauge", "thousandths"), [("No. 6", 138), ("No. 8", 164), ("No. 10", 190), ("No. 12", 216)])
def test_shanks_of_the_standard(gauge, thousandths):
    """Basic diameters of ASME B18.6.1 wood screws (read)."""
    assert shank(gauge) == thousandths * INCH // 1000


def test_the_body_of_a_screw_begins_at_the_face_that_the_slide_lies_on():
    case = solve(hardware_project(starting_hardware("in"), INCH_STYLE))
    side = case.by_name["left side"].box
    fitting = next(piece for piece in case.hardware if piece.on == "left side" and piece.what == "slide")
    body = screw_body(fitting, fitting.screws[0], side)
    assert body.high[0] == side.high[0] == fitting.box.low[0] and body.size[0] == fitting.screws[0].length
    assert body.size[2] == 138 * INCH // 1000 // 2 * 2
    assert abs(body.low[2] + body.high[2] - fitting.box.low[2] - fitting.box.high[2]) <= 1
