"""Solids from a plan's boards, against arithmetic."""

import math

import pytest
from manifold3d import Manifold

from tests.judge.solids import Body, shared_wood

CUBIC = 1e-6
"""Volumes agree within this (mm3)."""


def single(size, cuts, origin=(0, 0, 0), axes=("+x", "+y", "+z")):
    """One board alone, as a solid."""
    return Body(
        {
            "name": "board",
            "group": "case",
            "size": list(size),
            "origin": list(origin),
            "axes": list(axes),
            "cuts": cuts,
        }
    )


def test_a_board_is_its_box_less_its_cuts():
    body = single(
        (100, 40, 10),
        [
            {"kind": "dado", "low": [20, 0, 6], "high": [32, 40, 10], "for": ""},
            {"kind": "groove", "low": [0, 5, 8], "high": [100, 8, 10], "for": ""},
        ],
    )
    assert body.wood.volume() == pytest.approx(100 * 40 * 10 - 12 * 40 * 4 - (100 - 12) * 3 * 2, abs=CUBIC)


def test_a_hole_goes_in_from_the_face_its_centre_lies_on():
    facets = 48
    area = facets / 2 * 5**2 * math.sin(2 * math.pi / facets)  # a drill of 48 flats, radius 5
    for along, centre, low in (
        ("w", [30, 20, 10], (25, 15, 3)),
        ("w", [30, 20, 0], (25, 15, 0)),
        ("u", [100, 20, 5], (93, 15, 0)),
        ("v", [50, 0, 5], (45, 0, 0)),
    ):
        body = single(
            (100, 40, 10),
            [{"kind": "hole", "centre": centre, "along": along, "diameter": 10, "depth": 7}],
        )
        hole = body.wood - body.drilled
        assert hole.volume() == pytest.approx(area * 7, abs=1e-4)
        assert hole.bounding_box()[:3] == pytest.approx(low, abs=0.02)


@pytest.mark.parametrize(
    ("along", "low", "high"),
    [("u", (10, 2, 3), (60, 8, 7)), ("v", (3, 10, 2), (7, 60, 8)), ("w", (2, 3, 10), (8, 7, 60))],
)
@pytest.mark.parametrize("turn", [1, -1])
def test_an_outline_is_given_in_cyclic_order(along, low, high, turn):
    outline = [[2, 3], [8, 3], [8, 7], [5, 7]][::turn]
    body = single(
        (100, 100, 100), [{"kind": "dovetail", "outline": outline, "along": along, "from": 10, "to": 60}]
    )
    taken = single((100, 100, 100), []).wood - body.wood
    assert taken.bounding_box() == pytest.approx((*low, *high), abs=CUBIC)
    assert taken.volume() == pytest.approx((6 + 3) / 2 * 4 * 50, abs=1e-4)


def test_convex_pieces_fill_the_board():
    cuts = [
        {"kind": "dado", "low": [20, 0, 6], "high": [32, 40, 10], "for": ""},
        {"kind": "groove", "low": [0, 5, 8], "high": [100, 8, 10], "for": ""},
    ]
    tail = {
        "kind": "dovetail",
        "outline": [[0, 10], [0, 30], [10, 25], [10, 15]],
        "along": "u",
        "from": 80,
        "to": 100,
    }
    notch = {
        "kind": "dovetail",
        "outline": [[30, 0], [40, 0], [40, 2], [32, 2], [32, 6], [30, 6]],
        "along": "v",
        "from": 0,
        "to": 40,
    }
    notch["outline"] = [[b / 10, a] for a, b in notch["outline"]]  # along v: (w, u)
    for some in (cuts, [*cuts, tail], [*cuts, tail, notch]):
        body = single((100, 40, 10), some, (5, 6, 7), ("+z", "+y", "-x"))
        pieces = [Manifold.hull_points(points) for points in body.pieces]
        assert sum(p.volume() for p in pieces) == pytest.approx(body.wood.volume(), abs=1e-3)
        for piece in pieces:
            assert (piece - body.wood).volume() < 1e-6


def test_placement_by_hand():
    """Length up, width back, thickness to the left: from x = 10 to 0."""
    side = single(
        (100, 50, 10),
        [{"kind": "dado", "low": [20, 0, 0], "high": [30, 50, 3], "for": ""}],
        (10, 0, 0),
        ("+z", "+y", "-x"),
    )
    taken = single((100, 50, 10), [], (10, 0, 0), ("+z", "+y", "-x")).wood - side.wood
    assert taken.bounding_box() == pytest.approx((7, 0, 20, 10, 50, 30))


def test_shared_wood_is_arithmetic():
    dado = {"kind": "dado", "low": [20, 0, 6], "high": [32, 40, 10], "for": ""}
    side = single((100, 40, 10), [dado])
    assert shared_wood(side, single((12, 40, 20), [], (20, 0, 6))) == 0
    assert shared_wood(side, single((12, 40, 20), [], (20, 0, 5.5))) == pytest.approx(
        12 * 40 * 0.5, abs=CUBIC
    )
    assert shared_wood(side, single((12, 40, 20), [], (20.25, 0, 6))) == pytest.approx(
        0.25 * 40 * 4, abs=CUBIC
    )
    peg = single((4, 4, 20), [], (48, 18, 5))
    drilled = single(
        (100, 40, 10),
        [{"kind": "hole", "centre": [50, 20, 10], "along": "w", "diameter": 10, "depth": 5}],
    )
    assert shared_wood(drilled, peg) == 0
    assert shared_wood(single((100, 40, 10), []), peg) == pytest.approx(4 * 4 * 5, abs=CUBIC)
