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
RUN = settings(max_examples=40, suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow])


@every_joint
@RUN
@given(data=st.data())
def test_the_exact_dry_fit_has_no_finding(kind, data):
    pair = tried(data, kind, data.draw(stocks()))
    assert fit_pair(pair) == ()


@every_joint
@RUN
@given(data=st.data())
def test_solids_agree(kind, data):
    pair = tried(data, kind, data.draw(stocks()))
    assert shared(pair) == {}
    assert unlike(pair) == []
    assert all(outlines_inside(board) for board in pair.boards)


@every_joint
@RUN
@given(data=st.data())
def test_the_cuts_take_what_the_closed_formula_says(kind, data):
    pair = tried(data, kind, data.draw(stocks()))
    said = FORMULAS[kind.name](pair.stock, pair.values)
    within = 1e-4 if kind.name in SLANTED else 1e-7
    for board in pair.boards:
        formula = float(said.get(board.name, 0)) / MM**3
        assert taken(board) == pytest.approx(formula, rel=within, abs=1e-3), board.name
        exact = board.length * board.width * board.thickness - sum(piece.volume for piece in board.solids)
        assert float(exact) / MM**3 == pytest.approx(formula, rel=within, abs=1e-3), board.name


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
@RUN
@given(data=st.data())
def test_what_is_named_is_wood(kind, data):
    pair = tried(data, kind, data.draw(stocks()))
    for part, (name, point) in pair.named.items():
        ours = [
            piece for piece in pair.by_name[name].solids
            if all(low <= at <= high for at, (low, high) in zip(point, map(piece.reach, range(3)), strict=True))
        ]
        assert ours, f"{part} of {name} is pointed at where no wood is"
    assert {board.name for board in pair.boards} == set(pair.apart)


@every_joint
def test_every_setting_has_its_limits_and_its_rule(kind):
    stock = stock_of(3 * INCH // 4)
    for setting in kind.settings:
        assert setting.low(stock) <= setting.default(stock) <= setting.high(stock), setting.name
        assert setting.step(stock) > 0
        assert setting.rule
