"""A wide cut with a narrow cutter: nothing is left standing, nothing is cut beside it, and no pass is too many."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import INCH, MM, MM_STYLE, read_length
from shoplib.model.passes import CannotPass, passes
from shoplib.model.router_bit import bit_for
from shoplib.tables.router_bits import straight_bits, undersize_bits
from shoplib.tables.setups import cautions


@given(kerf=st.integers(2, 4 * MM), data=st.data())
def test_the_passes_cover_the_cut_exactly_and_are_the_fewest(kerf, data):
    target = data.draw(st.integers(kerf, 40 * kerf))
    overlap = data.draw(st.integers(0, kerf - 1).filter(lambda some: target <= kerf + 200 * (kerf - some)))
    plan = passes(target, kerf, overlap)
    covered = 0  # how far the cut reaches without a gap, pass by pass
    for offset in plan.offsets:
        assert offset <= covered
        assert covered == 0 or covered - offset >= overlap
        covered = offset + kerf
    assert covered == target == plan.width
    assert plan.offsets[0] == 0
    assert plan.last == target - kerf == sum(plan.moves)
    fewer = len(plan.offsets) - 1
    assert kerf + (fewer - 1) * (kerf - overlap) < target  # with one pass fewer the overlap cannot be kept


def test_three_quarters_with_an_eighth_kerf_by_hand():
    """0.709 in with a 1/8 in kerf: five full kerfs make 0.625 in, so six passes, the last 0.584 in from the first."""
    plan = passes(read_length("0.709 in"), INCH // 8)
    assert [Fraction(offset, INCH) for offset in plan.offsets] == [
        *(Fraction(n, 8) for n in range(5)),
        Fraction("0.584"),
    ]
    assert Fraction(plan.moves[-1], INCH) == Fraction("0.084")


def test_a_cutter_wider_than_the_cut_is_refused_with_both_widths():
    with pytest.raises(CannotPass, match=r"takes 3\.2 mm, and the cut is 3 mm wide"):
        passes(3 * MM, 32 * MM // 10, style=MM_STYLE)


@pytest.mark.parametrize("overlap", [-1, 100, 101])
def test_an_overlap_that_never_moves_on_is_refused(overlap):
    with pytest.raises(ValueError, match="overlap"):
        passes(500, 100, overlap)


@pytest.mark.parametrize(
    ("bit", "nominal", "decimal", "metric"),
    [
        ("23/32 in", "3/4 in", "0.719", "18.26"),
        ("31/64 in", "1/2 in", "0.484", "12.30"),
        ("7/32 in", "1/4 in", "0.219", "5.56"),
    ],
)
def test_the_undersize_bits_are_those_that_are_sold(bit, nominal, decimal, metric):
    """23/32 (.719, 18.26 mm), 31/64 (.484, 12.30), 7/32 (.219, 5.56); common practice."""
    width = read_length(bit)
    assert undersize_bits()[width] == read_length(nominal)
    assert f"{width / INCH:.3f}" == decimal
    assert f"{width / MM:.2f}" == metric


@given(target=st.integers(3 * MM, 40 * MM), unit=st.sampled_from(["in", "mm"]))
def test_the_bit_is_the_widest_that_is_not_wider_than_the_cut(target, unit):
    bits = [*straight_bits(unit), *undersize_bits()]
    fitting = [bit for bit in bits if bit <= target]
    if not fitting:
        with pytest.raises(CannotPass):
            bit_for(target, bits)
        return
    choice = bit_for(target, bits)
    assert choice.bit == max(fitting)
    assert choice.left == target - choice.bit >= 0
    assert choice.passes.width == target
    assert (len(choice.passes.offsets) == 1) == (choice.left == 0)


def test_a_cut_narrower_than_every_bit_is_refused():
    with pytest.raises(CannotPass, match=r"no bit at hand is so narrow as this cut, 2 mm"):
        bit_for(2 * MM, straight_bits("mm"), MM_STYLE)


@pytest.mark.parametrize(("bit", "deep", "passes_down"), [
    ("1/2 in", "1/4 in", 1), ("1/2 in", "17/64 in", 2), ("1/4 in", "3/8 in", 3),
    ("12 mm", "6 mm", 1), ("6 mm", "10 mm", 4),
])
def test_a_router_goes_down_by_half_the_width_of_its_bit_a_pass(bit, deep, passes_down):
    """By hand: 1/2 in takes 1/4 at a time, 1/4 in takes 1/8. Common practice, no source; the caution says the same."""
    wide = read_length(bit)
    assert bit_for(wide, [wide]).down(read_length(deep)) == passes_down
    said = [each.claim.say for each in cautions().of(["router"])]
    assert "Cut no deeper in one pass than half the width of the bit, and less in hard wood." in said
