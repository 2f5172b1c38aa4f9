"""Screws of slides against the dadoes on the other face of their upright, by hand on a divider of 0.703 in."""

from dataclasses import replace

import pytest

from shoplib.checks.screws_in_cuts import find_screws_in_cuts
from shoplib.live.hardware_project import ALONE, ONE_MORE, SHELVES, hardware_project, starting_hardware
from shoplib.measure import INCH, INCH_STYLE
from shoplib.model.cabinet import solve
from shoplib.model.screw_room import screw_body, shank
from shoplib.model.solved import Hardware, Screw
from tests.checks.cabinets import board, box, cabinet, ticks

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
    moved = tuple(replace(piece, box=piece.box.moved((0, 0, up))) for piece in case.hardware)
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


SLIDE_AT = {"right": ((18, 20, 100), (30, 320, 145)), "left": ((-12, 20, 100), (0, 320, 145))}
DADO_AT = {"left": (0, 6), "right": (12, 18)}
"""On a divider of 18 mm: a slide 45 mm high with its middle line at 122.5 mm, and a dado 6 mm deep."""


def met(face, dado, screw, bottom=115, top=133.2, front=0):
    """What is said of a slide on one face of the divider and a dado in a face, from `bottom` up to `top`."""
    x = DADO_AT[dado]
    cut = ("dado", (x[0], front, bottom), (x[1], 400, top), "shelf")
    divider = board("divider", (0, 0, 0), (18, 400, 600), "x", cut)
    screws = (Screw("No. 6", ticks(screw), "divider", 3), Screw("No. 6", ticks(10), "box side", 3))
    slide = Hardware("slide", "divider", "drawer", box(*SLIDE_AT[face]), "", screws)
    return find_screws_in_cuts(cabinet([divider], hardware=(slide,)))


@pytest.mark.parametrize(("face", "dado"), [("right", "left"), ("left", "right")])
@pytest.mark.parametrize(("screw", "over"), [(16, 4), (12.5, 0.5), (12, None), (10, None)])
def test_both_faces_of_a_divider_alike(face, dado, screw, over):
    """Before a dado 6 mm deep, 12 mm of the 18 are left: a screw of 16 mm comes 4 mm into it, one of 12 mm not."""
    assert [one.amount for one in met(face, dado, screw)] == ([ticks(over)] if over else [])


@pytest.mark.parametrize(("bottom", "reached"), [(124.2, True), (124.3, False), (102.6, True), (102.5, False)])
def test_the_band_is_as_thick_as_the_shank(bottom, reached):
    """No. 6 is 0.138 in, 3.5052 mm: from 120.7474 up to 124.2526 mm, against a dado 18.2 mm wide."""
    assert bool(met("right", "left", 16, bottom, bottom + 18.2)) == reached


def test_a_dado_behind_the_slide_is_clear_of_its_screws():
    """The slide ends 320 mm from the front; a cut that begins there is not reached."""
    assert met("right", "left", 16, front=320) == () != met("right", "left", 16, front=319.9)
