"""The choosers against arithmetic in fractions."""

import statistics
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import largest_fitting, mean, narrowest, share, thickest, to_step
from shoplib.measure.traced import leaf

lengths = st.integers(-(10**9), 10**9)
steps = st.integers(1, 10**6)


@given(st.lists(lengths, min_size=1))
def test_the_mean_is_the_nearest_tick(values):
    assert abs(mean(values) - statistics.fmean(values)) <= 0.5 + 1e-6
    assert abs(mean(values) - statistics.mean(map(Fraction, values))) <= Fraction(1, 2)


@given(st.lists(lengths, min_size=1))
def test_narrowest_and_thickest_are_the_ends(values):
    assert (narrowest(values), thickest(values)) == (sorted(values)[0], sorted(values)[-1])


@pytest.mark.parametrize("chooser", [mean, narrowest, thickest])
def test_no_reading_is_refused(chooser):
    with pytest.raises(ValueError, match="at least one"):
        chooser([])


@given(lengths, st.integers(1, 40), steps)
def test_shares_and_rest_make_the_whole(total, n, step):
    part, rest = share(total, n, step)
    assert n * part + rest == total
    assert part % step == 0
    assert 0 <= rest < n * step


@pytest.mark.parametrize(("n", "step"), [(0, 1), (-1, 1), (3, 0), (3, -5)])
def test_shares_need_parts_and_a_step(n, step):
    with pytest.raises(ValueError, match="1 or more parts"):
        share(100, n, step)


@given(st.lists(lengths), lengths)
def test_the_largest_that_fits_fits_and_no_larger_one_does(values, limit):
    chosen = largest_fitting(values, limit)
    if chosen is None:
        assert all(value > limit for value in values)
    else:
        assert chosen in values and chosen <= limit
        assert not any(chosen < value <= limit for value in values)


@given(lengths, steps)
def test_steps_against_fractions(value, step):
    exact = Fraction(value, step)
    assert to_step(value, step, "down") == exact.__floor__() * step
    assert to_step(value, step, "up") == exact.__ceil__() * step
    assert to_step(value, step) == (exact + Fraction(1, 2)).__floor__() * step


def test_a_step_has_a_direction_and_a_size():
    with pytest.raises(ValueError, match="nearest step, down or up, not 'sideways'"):
        to_step(5, 2, "sideways")
    with pytest.raises(ValueError, match="1 tick or more"):
        to_step(5, 0)


@pytest.mark.parametrize("slip", [100.0, 1.5, True, Fraction(3, 2)])
def test_what_is_no_whole_number_of_ticks_is_refused(slip):
    """A float from `20.5 * INCH` would otherwise become a board."""
    calls = [
        lambda: mean([slip, 1]), lambda: narrowest([1, slip]), lambda: thickest([slip]), lambda: share(slip, 3, 1),
        lambda: largest_fitting([1, slip], 10), lambda: largest_fitting([1], slip), lambda: to_step(slip, 1),
        lambda: to_step(slip, 2, "down"), lambda: to_step(leaf(5, "width"), slip), lambda: share(5, 2, slip),
        lambda: mean([leaf(5, "width"), slip]),
    ]  # fmt: skip
    for call in calls:
        with pytest.raises(TypeError):
            call()
