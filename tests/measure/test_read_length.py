"""Lengths are read exactly: against the published definitions and against arithmetic in fractions."""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import FOOT, INCH, MM, LengthError, read_length

A_TICK = Fraction(1, 80_000)
"""In millimetres."""


def in_mm(text: str, **options) -> Fraction:
    return read_length(text, **options) * A_TICK


def test_units_are_the_published_ones():
    """NIST SP 811 (2008), appendix B.8: 1 inch = 25.4 mm and 1 foot = 304.8 mm, both exact."""
    assert in_mm("1 in") == Fraction("25.4")
    assert in_mm("1 ft") == Fraction("304.8")
    assert (1, Fraction("25.4"), Fraction("304.8")) == (MM * A_TICK, INCH * A_TICK, FOOT * A_TICK)


@pytest.mark.parametrize(
    "unit", ["in", "inch", "inches", "ft", "foot", "feet", "mm", "cm", "m", "metre", "millimeter"]
)
def test_units_are_those_of_pint(unit):
    exact = pint.UnitRegistry(non_int_type=Fraction)
    assert in_mm(f"3 {unit}") == exact.Quantity(Fraction(3), unit).to("millimeter").magnitude


INCHES = {
    "23 5/8 in": "189/8", '23-5/8"': "189/8", "5/8 in": "5/8", "1' 11 5/8\"": "189/8", "2 ft 3 in": "27",
    "23.625 in": "23.625", "23⅝″": "189/8", "1′ 11⅝″": "189/8", "½ in": "1/2", "½in": "1/2", "23½”": "47/2",
    "1’ 6”": "18", "1‘ 6“": "18", "23 5⁄8 in": "189/8", "23 5∕8 in": "189/8", "23 5/8''": "189/8",
    "6'": "72", "6 ft": "72",
    "1 inch": "1", "2 inches": "2", "1 foot": "12", "2 feet": "24", "2 feet 3 inches": "27", "2ft3in": "27",
    "2 ft. 3 in.": "27", "1'-11 5/8\"": "189/8", "1' - 11 5/8\"": "189/8", "23\u00a05/8\u202fin": "189/8",
    "  23   5/8  in ": "189/8", "23 5/8IN": "189/8", "23–5/8 in": "189/8", "23-⅝ in": "189/8",
    ".5 in": "1/2",
    "9/8 in": "9/8", "5/4 in": "5/4", "1/2 ft": "6", "1 1/2 ft": "18", "2' 3.5\"": "27.5",
    "0' 5/8\"": "5/8",
    "+3 in": "3", "0 5/8 in": "5/8", "3/128 in": "3/128", "33 27/32 in (+0.00025 in)": "33.844",
    "34 in (-0.01 in)": "33.99", "33 27/32in(+0.00025in)": "33.844",
    "33 27/32 in (+0,00025 in)": "33.844",
}  # fmt: skip
METRIC = {
    "601.5 mm": "601.5", "601 mm": "601", "60 cm": "600", "0.6 m": "600", "18,2 mm": "18.2",
    "18,25 cm": "182.5",
    "1,5 m": "1500", "0,125 mm": "0.125", "1234,567 mm": "1234.567", "601.5mm": "601.5", "18.2 MM": "18.2",
    "601\u00a0mm": "601", "18 1/2 mm": "18.5", "½ mm": "0.5", "1 metre": "1000", "2 meters": "2000",
    "3 millimetres": "3", "10 m": "10000", "0.01 mm": "0.01", "860 mm (-0.04 mm)": "859.96",
    "782 mm (+0,1 mm)": "782.1", "782,5 mm (-0,05 mm)": "782.45",
    "2 centimeters": "20", "1.234 mm": "1.234",
}  # fmt: skip


@pytest.mark.parametrize(("text", "inches"), INCHES.items())
def test_inches_and_feet_are_read_exactly(text, inches):
    assert in_mm(text) == Fraction(inches) * Fraction("25.4")


@pytest.mark.parametrize(("text", "mm"), METRIC.items())
def test_metric_is_read_exactly(text, mm):
    assert in_mm(text) == Fraction(mm)


def test_every_64th_up_to_100_inches_in_both_spellings():
    for n in range(1, 6401):
        exact = Fraction(n, 64)
        whole, rest = divmod(exact, 1)
        parts = [str(int(whole))] if whole else []
        parts += [f"{rest.numerator}/{rest.denominator}"] if rest else []
        for text in (" ".join(parts) + " in", "-".join(parts) + '"', f"{float(exact)} in"):
            assert in_mm(text) == exact * Fraction("25.4"), text


@given(
    whole=st.integers(0, 392),
    after=st.text("0123456789", max_size=12),
    unit=st.sampled_from(["in", "mm", "cm"]),
)
def test_a_decimal_goes_to_the_nearest_tick(whole, after, unit):
    exact = Fraction(f"{whole}.{after}0") * {"in": Fraction("25.4"), "mm": 1, "cm": 10}[unit]
    if exact < Fraction("0.01"):
        return
    read = in_mm(f"{whole}.{after} {unit}" if after else f"{whole} {unit}")
    assert abs(read - exact) <= A_TICK / 2


@given(feet=st.integers(0, 31), inches=st.integers(0, 11), n=st.integers(0, 63))
def test_feet_and_inches_add_up(feet, inches, n):
    exact = (12 * feet + inches + Fraction(n, 64)) * Fraction("25.4")
    if exact:
        assert in_mm(f"{feet}' {inches} {n}/64\"") == exact
        assert in_mm(f"{feet} ft {inches} {n}/64 in") == exact


def test_a_control_with_its_unit_printed_beside_it_needs_none_in_the_text():
    assert in_mm("31 7/16", unit="in") == Fraction(503, 16) * Fraction("25.4")
    assert in_mm("601,5", unit="mm") == Fraction("601.5")
    assert in_mm("1' 3", unit="in") == 15 * Fraction("25.4")
    assert in_mm("601.5 mm", unit="in") == Fraction("601.5"), "a unit in the text is what counts"


def test_zero_and_below_are_read_where_they_are_meant():
    assert read_length("0 mm", zero=True) == read_length("-0 in", zero=True) == 0
    assert in_mm("-5 mm", negative=True) == in_mm("−5 mm", negative=True) == -5
    assert in_mm("-1' 3 1/2\"", negative=True) == Fraction("-15.5") * Fraction("25.4")
    assert read_length("0.0000125 mm", negative=True) == 1


@given(st.text(max_size=70) | st.text("0123456789 ./,-+'\"infmtcme½⅝′″()", max_size=40))
def test_any_text_is_read_or_refused_and_nothing_else_happens(text):
    try:
        ticks = read_length(text)
    except LengthError as refused:
        assert str(refused).startswith("length: ") and str(refused).isprintable()
    else:
        assert Fraction("0.01") <= ticks * A_TICK <= 10_000
