"""pint at the face: shop text is read as meant or refused, lengths keep their tick, loads work."""

import subprocess
import sys
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import INCH, MM, LengthError, from_quantity, read_length, to_quantity, ureg

MISREAD = {
    "23 5/8 in": (23.625, "inch"), "1 1/2 in": (1.5, "inch"), "23-5/8 in": (23.625, "inch"),
    '23 5/8"': (23.625, "inch"),
    "2 ft 3 in": (27, "inch"), "1' 11 5/8\"": (23.625, "inch"), "23⅝ in": (23.625, "inch"),
    "18,2 mm": (18.2, "millimeter"),
    "18½ mm": (18.5, "millimeter"), "1,5 m": (1500, "millimeter"),
    "23 5/8 in (+0.0625 in)": (23.6875, "inch"),
    "-1 1/2 in": (-1.5, "inch"),
}  # fmt: skip


@pytest.mark.parametrize("make", [ureg, ureg.Quantity])
@pytest.mark.parametrize(("text", "meant"), MISREAD.items())
def test_shop_text_is_read_as_meant(make, text, meant):
    quantity = make(text)
    assert (quantity.magnitude, str(quantity.units)) == meant
    assert from_quantity(quantity, negative=True) == read_length(text, negative=True)


@pytest.mark.parametrize("make", [ureg, ureg.Quantity])
@pytest.mark.parametrize(
    "text", ["12 13 in", "1 234 mm", "1,234 mm", "2 ft 30 mm", "1,5 kN", "1 000 N", "1,000 lbf",
    "23 5/8", "3 1/2 lbf",
             "5 kg 2", "1' 2", "2 lbf 3 in"],
)  # fmt: skip
def test_what_pint_would_multiply_or_run_together_is_refused(make, text):
    with pytest.raises(
        LengthError, match=r"can be read more than one way; write .* such as `12\.5 lbf`.*\.$"
    ):
        make(text)


def test_forces_loads_and_densities_can_be_worked_with():
    """NIST SP 811 (2008), appendix B.8: 1 lbf = 4.448222 N, 1 psi = 6894.757 Pa, 1 lb/ft3 = 16.01846 kg/m3.

    Recalled from memory.
    """
    assert ureg("1 lbf").to("newton").magnitude == pytest.approx(4.448222, rel=1e-7)
    assert ureg("1 lbf/in**2").to("pascal").magnitude == pytest.approx(6894.757, rel=1e-7)
    assert ureg("1 lb/ft**3").to("kg/m**3").magnitude == pytest.approx(16.01846, rel=1e-6)
    length, width, thickness = (to_quantity(n * MM, "mm") for n in (1000, 400, 18))
    shelf = ureg("600 kg/m**3") * length * width * thickness
    assert shelf.to("kg").magnitude == pytest.approx(4.32)
    assert (ureg("40 lbf/ft") * to_quantity(36 * INCH)).to("lbf").magnitude == pytest.approx(120)
    assert ureg("6.5e2 kg/m^3").magnitude == 650
    assert ureg("10 mm - 4 mm").magnitude == 6


@given(
    st.integers(MM // 100, 10_000 * MM), st.sampled_from(["inch", "in", "foot", "mm", "cm", "meter", "yard"])
)
def test_a_length_goes_out_and_comes_back_to_the_same_tick(ticks, unit):
    assert from_quantity(to_quantity(ticks, unit)) == ticks
    assert read_length(to_quantity(ticks, unit)) == ticks


@given(st.integers(1, 39_000))
def test_a_float_counts_as_its_shortest_decimal(hundredths):
    inches = hundredths / 100
    assert from_quantity(ureg.Quantity(inches, "inch")) == Fraction(hundredths, 100) * INCH
    assert 0.75 * ureg.inch != 19.05 * ureg.mm, "why ticks are compared, not quantities"
    assert from_quantity(0.75 * ureg.inch) == from_quantity(19.05 * ureg.mm)


def test_exact_numbers_stay_exact():
    assert from_quantity(ureg.Quantity(Fraction(189, 8), "inch")) == read_length("23 5/8 in")
    assert from_quantity(ureg.Quantity(3, "foot")) == 36 * INCH


@pytest.mark.parametrize(
    ("quantity", "word"),
    [
        (ureg.Quantity(3, "newton"), "no length"),
        (ureg.Quantity(3, "inch**2"), "no length"),
        (ureg.Quantity(3, ""), "no length"),
        (ureg.Quantity(float("nan"), "mm"), "no single number"),
        (ureg.Quantity(float("inf"), "mm"), "over 10 m"),
        (ureg.Quantity(1e300, "mm"), "over 10 m"),
        (ureg.Quantity(1e-9, "mm"), "under 0.01 mm"),
        (ureg.Quantity(-3, "mm"), "negative"),
        (ureg.Quantity(0, "mm"), "zero"),
        (11 * ureg.meter, "over 10 m"),
    ],
)
def test_a_quantity_that_is_no_size_is_refused(quantity, word):
    for read in (from_quantity, read_length):
        with pytest.raises(LengthError, match=rf"^size\.depth: .*{word}.*\.$"):
            read(quantity, what="size.depth")


PROGRAM = """
import sys, shoplib.measure
before = "pint" in sys.modules
shoplib.measure.ureg
print(before, "pint" in sys.modules)
"""


def test_pint_is_loaded_only_when_it_is_wanted():
    run = [sys.executable, "-c", PROGRAM]
    assert subprocess.run(run, capture_output=True, text=True, check=True).stdout.split() == ["False", "True"]
