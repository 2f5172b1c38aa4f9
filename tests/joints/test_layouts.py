"""Fingers and dovetails close on the width of the board, whatever it is."""

from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from shoplib.joints import joint
from shoplib.joints.bench_pair import CannotCut, stock_of
from shoplib.joints.dovetail import layout
from shoplib.measure import MM
from shoplib.model.finger_layout import boundaries, why_not

WIDTHS = st.integers(40 * MM, 400 * MM)


@given(st.integers(10 * MM, 25 * MM), WIDTHS)
def test_the_usual_fingers_close_on_any_width(thick, width):
    """An odd count of them, alike but for less than a tick each, which the last one gets."""
    stock = stock_of(thick, width=width)
    finger = joint("finger").usual(stock)["finger"]
    edges = boundaries(stock.width, finger)
    sizes = [after - before for before, after in pairwise(edges)]
    assert (edges[0], edges[-1]) == (0, width)
    assert len(sizes) % 2 == 1
    assert set(sizes[:-1]) == {finger}
    assert 0 <= sizes[-1] - finger < len(sizes)


@given(st.integers(4 * MM, 30 * MM), st.integers(3, 20), st.integers(0, 30 * MM))
def test_fingers_close_or_are_refused_with_what_is_over(finger, count, over):
    assume(count <= over < finger)
    stock = stock_of(18 * MM, width=count * finger + over)
    with pytest.raises(CannotCut) as refused:
        joint("finger").build(stock, {"finger": finger, "fit": 0})
    assert refused.value.amount == over
    assert why_not(stock.width - over, finger, 0, stock.style) is None
    assert len(boundaries(stock.width - over, finger)) == count + 1


@given(WIDTHS, st.integers(1, 8), st.integers(2 * MM, 15 * MM), st.integers(0, 10 * MM))
def test_tails_and_pins_close_on_the_width(width, tails, pin, half):
    """Equal tails; the half pin at the back, or the last tail, gets the rest of less than a tick a tail."""
    values = {"tails": tails, "pin": pin, "half-pin": half}
    try:
        pins = layout(stock_of(18 * MM, width=width), values)
    except CannotCut:
        assume(False)
    edges = [] if half else [(0, 0)]
    ends = [*edges, *pins, *([] if half else [(width, width)])]
    gaps = [after[0] - before[1] for before, after in pairwise(ends)]
    assert len(gaps) == tails
    assert sum(gaps) + sum(high - low for low, high in pins) == width
    assert (ends[0][0], ends[-1][1]) == (0, width)
    assert [high - low for low, high in (pins[1:-1] if half else pins)] == [pin] * (tails - 1)
    last = ends[-1][1] - ends[-1][0] - half if half else gaps[-1] - gaps[0]
    assert 0 <= last < tails
    assert len(set(gaps if half else gaps[:-1])) <= 1
