"""Outlines run along an axis, against the judge's solid modeller."""

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from manifold3d import CrossSection, Manifold

from shoplib.model.board import Board, PrismCut
from shoplib.model.placement import Placement
from shoplib.model.prism import Prism, shared_shifts, turned
from tests.judge.solids import _stand

RUN = settings(max_examples=200)
ROUNDED = 1e-5
"""The solids' corners are floats; ours are whole numbers and fractions. What that makes of some 10,000 mm3."""


@st.composite
def outlines(draw):
    """A convex outline of whole corners: the hull of some points, what lies on its sides left out."""
    points = draw(st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40)), min_size=3, max_size=9, unique=True))

    def half(ordered):
        kept = []
        for p in ordered:
            while len(kept) > 1 and _turn(kept[-2], kept[-1], p) <= 0:
                kept.pop()
            kept.append(p)
        return kept[:-1]

    hull = half(sorted(points)) + half(sorted(points, reverse=True))
    assume(len(hull) > 2)
    return tuple(hull)


def _turn(a, b, c):
    return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0])


@st.composite
def prisms(draw):
    low = draw(st.integers(0, 30))
    return Prism(draw(st.integers(0, 2)), draw(outlines()), low, low + draw(st.integers(1, 30)))


def solid(prism):
    made = Manifold.extrude(CrossSection([[tuple(map(float, corner)) for corner in prism.outline]]),
                            float(prism.high - prism.low))
    shift = [0.0, 0.0, 0.0]
    shift[prism.axis] = float(prism.low)
    return _stand(made, prism.axis).translate(tuple(shift))


def moved(one, axis, by):
    shift = [0.0, 0.0, 0.0]
    shift[axis] = by
    return solid(one).translate(tuple(shift))


@RUN
@given(prisms(), outlines(), st.integers(0, 40), st.integers(1, 30))
def test_what_is_left_is_what_the_solids_leave(prism, outline, low, size):
    hole = Prism(prism.axis, outline, low, low + size)
    rest = prism.without(hole)
    left = solid(prism) - solid(hole)
    assert float(sum(piece.volume for piece in rest)) == pytest.approx(left.volume(), abs=ROUNDED)
    assert all((solid(piece) - left).volume() < ROUNDED for piece in rest)


@RUN
@given(prisms(), prisms(), st.integers(0, 2))
def test_shared_shifts_are_those_of_the_solids(one, other, axis):
    """Between the two ends wood is shared, beyond them none is; the outlines may run along different axes."""
    shifts = shared_shifts(one, other, axis)
    if shifts is None:
        low, high = (reach[0] for reach in (one.reach(axis), other.reach(axis)))
        for by in (high - low, 0.0, 7.0, -7.0):
            assert (moved(one, axis, float(by)) ^ solid(other)).volume() < ROUNDED
        return
    low, high = map(float, shifts)
    middle, off = (low + high) / 2, (high - low) * 1e-3
    assert (moved(one, axis, middle) ^ solid(other)).volume() > 0
    assert (moved(one, axis, low - off) ^ solid(other)).volume() < ROUNDED
    assert (moved(one, axis, high + off) ^ solid(other)).volume() < ROUNDED


@pytest.mark.parametrize("axes", [("+x", "+y", "+z"), ("+z", "+y", "-x"), ("+x", "+z", "-y"), ("-y", "-x", "-z")])
@pytest.mark.parametrize("along", "uvw")
def test_an_outline_lies_in_the_world_where_its_corners_do(axes, along):
    placement = Placement((7, -3, 11), axes)
    cut = PrismCut("bevel", ((0, 0), (4, 1), (2, 5)), along, 3, 9)
    board = Board("board", "case", 1, "sheet", 20, 20, 20, placement, (cut,))
    taken = Prism.of(board.box, 0).volume - sum(piece.volume for piece in board.solids)
    assert taken == 9 * 6  # half of 4 * 5 - 1 * 2, run 6 far
    world = cut.prism.placed(placement)
    own = "uvw".index(along)
    for at in (3, 9):
        for p, q in cut.outline:
            point = [at, at, at]
            point[(own + 1) % 3], point[(own + 2) % 3] = p, q
            there = placement.point_to_world(tuple(point))
            assert there[world.axis] in (world.low, world.high)
            assert (there[(world.axis + 1) % 3], there[(world.axis + 2) % 3]) in world.outline


@pytest.mark.parametrize(
    "outline", [[(0, 0), (1, 1)], [(0, 0), (2, 0), (4, 0), (0, 4)], [(0, 0), (4, 0), (1, 1), (0, 4)]]
)
def test_a_hollow_outline_is_refused(outline):
    with pytest.raises(ValueError, match="not convex"):
        turned(outline)


def test_outlines_along_two_axes_of_one_board_are_refused():
    corner = ((0, 0), (4, 0), (0, 4))
    cuts = (PrismCut("bevel", corner, "u", 0, 9), PrismCut("bevel", corner, "v", 0, 9))
    board = Board("top", "case", 1, "sheet", 20, 20, 20, Placement((0, 0, 0), ("+x", "+y", "+z")), cuts)
    with pytest.raises(ValueError, match="outlines of one board run along two"):
        _ = board.solids
