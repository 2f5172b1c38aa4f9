"""Fingers and dovetails close on the width of the board, whatever it is."""

from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from shoplib.joints import JOINTS, joint
from shoplib.joints.bench_pair import CannotCut, stock_of
from shoplib.joints.dovetail import layout
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, read_length
from shoplib.model.finger_layout import boundaries, why_not
from shoplib.tables.joint_facts import joint_facts

WIDTHS = st.integers(40 * MM, 400 * MM)


@given(st.integers(10 * MM, 25 * MM), WIDTHS)
def test_the_usual_fingers_close_on_any_width(thick, width):
    """Alike but for less than a tick each, which the last one gets; an odd count, or else those of a cutter."""
    stock = stock_of(thick, width=width)
    finger = joint("finger").usual(stock)["finger"]
    edges = boundaries(stock.width, finger)
    sizes = [after - before for before, after in pairwise(edges)]
    assert (edges[0], edges[-1]) == (0, width)
    assert len(sizes) % 2 == 1 or finger % (INCH // 16) == 0
    assert set(sizes[:-1]) == {finger}
    assert 0 <= sizes[-1] - finger < len(sizes)


@pytest.mark.parametrize(
    ("wide", "thick", "style", "finger"),
    [
        ("5 5/8 in", "0.48 in", INCH_STYLE, "3/8 in"),  # 15; of 1/4 to 0.48 in else only 5/16 closes, with 18
        ("150 mm", "11.9 mm", MM_STYLE, "10 mm"),  # 15; 6 mm makes 25, farther from 8.9
        ("6 in", "0.48 in", INCH_STYLE, "3/8 in"),  # 16; 1/4 in makes 24, and no odd count is a cutter's
        ("4 1/2 in", "1/2 in", INCH_STYLE, "1/2 in"),  # 9; 3/8 in makes 12
    ],
)
def test_the_usual_finger_is_a_cutter_that_closes(wide, thick, style, finger):
    """As wide as the cutter, half to all of the thickness, an odd count where there is one (common practice, no
    source); worked by hand."""
    stock = stock_of(read_length(thick), width=read_length(wide), style=style)
    assert joint("finger").usual(stock)["finger"] == read_length(finger)


@given(st.integers(4 * MM, 30 * MM), st.integers(3, 20), st.integers(0, MM // 2))
def test_one_cutter_makes_the_sockets_of_both_boards_and_the_step_is_two_fingers(finger, count, fit):
    """Geometry of a jig with one stack and one pin: each socket is (step + fit) / 2, a step is two fingers."""
    pair = joint("finger").build(stock_of(18 * MM, width=count * finger), {"finger": finger, "fit": fit})
    for board, first in (("bottom", finger), ("side", 0)):
        spans = sorted((cut.low[1], cut.high[1]) for cut in pair.by_name[board].cuts)
        assert [low for low, _ in spans] == list(range(first, count * finger, 2 * finger))
        assert {high - low for low, high in spans if high < count * finger} <= {(2 * finger + fit) // 2}


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


@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_no_part_is_called_as_a_board_is_and_no_two_of_one_section_share_a_dot(kind):
    """One word for two things misleads; two leaders on one dot name one thing twice."""
    pair = kind.build(stock_of(18 * MM, style=MM_STYLE))
    boards = {board.name for board in pair.boards}
    assert not boards & {other for part in joint_facts(kind.name).parts for other in part.also}
    assert len({point for _, point in pair.named.values()}) == len(pair.named)
