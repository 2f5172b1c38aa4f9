"""Every joint at random sizes: the exact dry-fit finds nothing, and solids made of plan.json agree."""

from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from shoplib.checks.geometry import direction
from shoplib.checks.pair_fit import fit_pair
from shoplib.joints import JOINTS, joint
from shoplib.joints.bench_pair import stock_of
from shoplib.measure import INCH, MM
from shoplib.model.placement import Placement
from tests.joints.solid_pair import bored_away, outlines_inside, shared, taken, unlike
from tests.joints.stocks import stocks, tried
from tests.joints.volumes import FORMULAS, HOLES, SLANTED

every_joint = pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
RUN = settings(
    max_examples=8 if settings.default.max_examples <= 100 else 400,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
"""Fewer than elsewhere: a try builds solids of many boards. More with --long."""


@every_joint
@RUN
@given(data=st.data())
def test_a_pair_of_any_size_goes_together(kind, data):
    """The exact dry-fit, and what the pair says of itself."""
    pair = tried(data, kind, data.draw(stocks()))
    assert fit_pair(pair) == ()
    _takes(pair, lambda board: float(_exactly_taken(board)) / MM**3)
    for part, (name, point) in pair.named.items():
        assert any(_touches(piece, point) for piece in pair.by_name[name].solids), f"{part} of {name} is in the air"
    assert {board.name for board in pair.boards} == set(pair.apart)


@pytest.mark.parametrize("kind", [kind for kind in JOINTS if kind.name not in HOLES], ids=lambda kind: kind.name)
@RUN
@given(data=st.data())
def test_solids_of_any_size_agree(kind, data):
    """The judge's own solids, from the records of plan.json: no wood twice, clearances as stated, wood taken away."""
    _solids_agree(kind, data)


@pytest.mark.parametrize("name", HOLES)
@settings(RUN, max_examples=RUN.max_examples // 4)
@given(data=st.data())
def test_solids_with_holes_of_any_size_agree(name, data):
    """The same; bored solids have so many facets that a try takes seconds."""
    _solids_agree(joint(name), data)


def _solids_agree(kind, data):
    pair = tried(data, kind, data.draw(stocks()))
    assert shared(pair) == {}
    assert unlike(pair) == []
    _takes(pair, taken)
    assert all(outlines_inside(board) for board in pair.boards)


def _takes(pair, measured):
    said = FORMULAS[pair.kind](pair.stock, pair.values)
    within = 1e-4 if pair.kind in SLANTED else 1e-7
    for board in pair.boards:
        formula = float(said.get(board.name, 0)) / MM**3
        assert measured(board) == pytest.approx(formula, rel=within, abs=1e-3), board.name


def _exactly_taken(board):
    return board.length * board.width * board.thickness - sum(piece.volume for piece in board.solids)


def _touches(piece, point):
    """Whether a point lies in a convex piece or on its surface."""
    low, high = piece.reach(piece.axis)
    p, q = point[(piece.axis + 1) % 3], point[(piece.axis + 2) % 3]
    return low <= point[piece.axis] <= high and all(
        (b[0] - a[0]) * (q - a[1]) >= (b[1] - a[1]) * (p - a[0])
        for a, b in zip(piece.outline, piece.outline[1:] + piece.outline[:1], strict=True)
    )


@pytest.mark.parametrize("name", HOLES)
@RUN
@given(data=st.data())
def test_the_holes_take_what_the_closed_formula_says(name, data):
    pair = tried(data, joint(name), data.draw(stocks()))
    for board, volume in HOLES[name](pair.stock, pair.values).items():
        assert bored_away(pair.by_name[board]) == pytest.approx(volume / MM**3, rel=1e-4), board


@every_joint
@pytest.mark.parametrize("off", [MM // 20, 1])
def test_a_board_out_of_place_is_found(kind, off):
    """Moved against what it bears on, or away from it, by one tick."""
    pair = kind.build(stock_of(3 * INCH // 4))
    for stated in pair.clearances:
        axis, sign = direction(stated.way)
        for turn in (1, -1):
            moved = pair.by_name[stated.mover]
            origin = list(moved.placement.origin)
            origin[axis] += turn * sign * off
            moved = replace(moved, placement=Placement(tuple(origin), moved.placement.axes))
            spoilt = replace(pair, boards=tuple(moved if b.name == moved.name else b for b in pair.boards))
            assert fit_pair(spoilt), (stated.what, turn)


@every_joint
def test_every_setting_has_its_limits_and_its_rule(kind):
    stock = stock_of(3 * INCH // 4)
    for setting in kind.settings:
        assert setting.low(stock) <= setting.default(stock) <= setting.high(stock), setting.name
        assert setting.step(stock) > 0
        assert setting.rule
