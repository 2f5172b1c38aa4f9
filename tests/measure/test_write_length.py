"""What is written reads back to the same tick, and is what the shop would write."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import (
    INCH,
    INCH_STYLE,
    MM,
    MM_STYLE,
    LengthError,
    Style,
    read_length,
    to_mm,
    write_brief,
    write_length,
    write_measured,
    write_mm,
)

STYLES = [Style("in", INCH // n) for n in (8, 16, 32, 64)] + [Style("mm", MM // n) for n in (1, 2, 5, 10)]
TEN_METRES = 10_000 * MM

sizes = st.integers(MM // 100, TEN_METRES)
any_length = st.integers(-TEN_METRES, TEN_METRES) | st.integers(-2 * INCH, 2 * INCH)
well_under = st.integers(-9_990 * MM, 9_990 * MM)
any_style = st.sampled_from(STYLES)


@given(sizes, any_style)
def test_a_size_reads_back_to_the_same_tick(ticks, style):
    assert read_length(write_length(ticks, style)) == ticks


@given(any_length, any_style)
def test_any_difference_reads_back_to_the_same_tick(ticks, style):
    text = write_length(ticks, style)
    assert read_length(text, zero=True, negative=True) == ticks
    without = write_length(ticks, style, unit=False)
    assert read_length(without, unit=style.unit, zero=True, negative=True) == ticks


@given(well_under, any_style)
def test_the_printed_number_is_the_nearest_step_and_the_rest_is_true_less_printed(ticks, style):
    printed, _, rest = write_length(ticks, style).partition(" (")
    at = read_length(printed, zero=True, negative=True)
    assert at % style.step == 0
    assert 2 * abs(ticks - at) <= style.step
    assert bool(rest) == (ticks != at)
    if rest:
        number = Fraction(rest.split()[0])
        assert abs(number * {"in": INCH, "mm": MM}[style.unit] - (ticks - at)) <= Fraction(1, 2)


@given(well_under, any_style)
def test_the_rest_is_the_shortest_that_reads_back(ticks, style):
    printed, _, rest = write_length(ticks, style).partition(" (")
    if not rest:
        return
    number = Decimal(rest.split()[0])
    shorter = -number.as_tuple().exponent - 1
    if shorter < 1:
        return
    for digits in (int(abs(number).scaleb(shorter)), int(abs(number).scaleb(shorter)) + 1):
        text = f"{printed} ({rest[0]}{Decimal(digits).scaleb(-shorter):f} {style.unit})"
        assert read_length(text, zero=True, negative=True) != ticks


@pytest.mark.parametrize(
    ("length", "style", "text"),
    [
        ("23.625 in", INCH_STYLE, "23 5/8 in"),
        ("0.5 in", INCH_STYLE, "1/2 in"),
        ("3 in", INCH_STYLE, "3 in"),
        ("27 in", Style("in", INCH // 8), "27 in"),
        ("33.8440 in", Style("in", INCH // 32), "33 27/32 in (+0.00025 in)"),
        ("23 5/16 in", Style("in", INCH // 8), "23 3/8 in (-0.0625 in)"),
        ("23.999 in", Style("in", INCH // 16), "24 in (-0.001 in)"),
        ("0.001 in", INCH_STYLE, "0 in (+0.001 in)"),
        ("859.96 mm", MM_STYLE, "860 mm (-0.04 mm)"),
        ("601.5 mm", MM_STYLE, "601.5 mm"),
        ("601.5 mm", Style("mm", MM), "602 mm (-0.5 mm)"),
        ("18.3 mm", Style("mm", MM // 5), "18.4 mm (-0.1 mm)"),
        ("18.2 mm", Style("mm", MM // 2), "18 mm (+0.2 mm)"),
        ("-0.5 in", INCH_STYLE, "-1/2 in"),
        ("-33.8440 in", INCH_STYLE, "-33 27/32 in (-0.00025 in)"),
    ],
)
def test_lengths_look_as_in_the_shop(length, style, text):
    assert write_length(read_length(length, negative=True), style) == text


def test_the_unit_can_be_left_to_the_drawing():
    assert write_length(INCH * 5 // 8, INCH_STYLE, unit=False) == "5/8"
    assert write_length(read_length("33.844 in"), INCH_STYLE, unit=False) == "33 27/32 (+0.00025 in)"


@pytest.mark.parametrize(
    ("unit", "step"),
    [("in", INCH // 128), ("in", INCH // 4), ("in", INCH), ("in", INCH // 10), ("in", MM), ("in", 0),
    ("in", -INCH // 8),
     ("mm", MM // 100), ("mm", 2 * MM), ("mm", MM // 4), ("mm", INCH // 64), ("cm", MM), ("", MM),
     (None, MM)],
)  # fmt: skip
def test_other_steps_and_units_are_refused(unit, step):
    with pytest.raises(LengthError, match=r"finest step must be one of 1|shown in `in` or `mm`"):
        Style(unit, step)


def test_a_style_is_read_from_text():
    assert Style.of("in", "1/32 in") == Style("in", INCH // 32)
    assert Style.of("mm", "0,5 mm") == Style("mm", MM // 2)
    for unit, step in (
        ("in", "0.5 mm"),
        ("mm", "1/16 in"),
        ("mm", "3 mm"),
        ("in", "1/32"),
        ("in", 0.5),
        ("ft", "1/8 in"),
    ):
        with pytest.raises(LengthError):
            Style.of(unit, step)


@given(st.integers())
def test_millimetres_are_written_exactly_and_as_short_as_can_be(ticks):
    text = write_mm(ticks)
    assert Fraction(text) == Fraction(ticks, 80_000)
    assert text == "0" or not (text.endswith(("0", ".")) and "." in text)


@given(any_length)
def test_millimetres_as_floats_keep_the_tick(ticks):
    assert round(to_mm(ticks) * 80_000) == ticks
    assert abs(Fraction(to_mm(ticks)) - Fraction(ticks, 80_000)) < Fraction(1, 10**6)


@pytest.mark.parametrize("write", [write_mm, to_mm, lambda ticks: write_length(ticks, MM_STYLE)])
def test_a_tick_count_is_whole(write):
    with pytest.raises(TypeError):
        write(1.5)


@pytest.mark.parametrize("style", [INCH_STYLE, MM_STYLE], ids=["in", "mm"])
@pytest.mark.parametrize("text", ["0.703 in", "0.7065 in", "17.86 mm", "18 mm", "0.4725 in", "1 in"])
def test_a_measured_thickness_is_a_decimal_that_reads_back(text: str, style: Style) -> None:
    ticks = read_length(text)
    written = write_measured(ticks, style)
    assert read_length(written) == ticks
    assert "/" not in written and "(" not in written
    assert text == written or not text.endswith(style.unit)


@given(well_under, any_style, st.booleans())
def test_a_brief_length_is_never_further_off_than_its_rule_says(ticks: int, style: Style, decimal: bool) -> None:
    text = write_brief(ticks, style, decimal)
    off = abs(read_length(text, zero=True, negative=True) - ticks)
    finest, least = (INCH // 2000, INCH // 500) if style.unit == "in" else (MM // 100, MM // 20)
    if decimal or abs(ticks) < style.step:
        assert off <= finest // 2 and "/" not in text and "(" not in text
    elif "(" in text:
        assert off <= finest // 2
    else:
        assert off < least
    assert (read_length(text, zero=True, negative=True) == 0) == (ticks == 0)


@pytest.mark.parametrize(
    ("length", "style", "decimal", "text"),
    [
        ("33.84400 in", Style("in", INCH // 32), False, "33 27/32 in"),
        ("59.2298 in", Style("in", INCH // 32), False, "59 7/32 in (+0.011 in)"),
        ("0.0155 in", Style("in", INCH // 32), False, "0.0155 in"),
        ("0.703333 in", INCH_STYLE, True, "0.7035 in"),
        ("860.04 mm", MM_STYLE, False, "860 mm"),
        ("860.05 mm", MM_STYLE, False, "860.1 mm (-0.05 mm)"),
        ("9.00775 in", INCH_STYLE, False, "9 in (+0.008 in)"),
        ("17.9 mm", Style("mm", MM // 2), True, "17.9 mm"),
        ("0.2375 mm", Style("mm", MM // 2), False, "0.24 mm"),
    ],
)
def test_a_brief_length_leaves_out_what_no_shop_sets(length: str, style: Style, decimal: bool, text: str) -> None:
    assert write_brief(read_length(length), style, decimal) == text
