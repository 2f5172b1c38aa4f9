"""A tape read step by step, against Python's own fractions: the steps add up, and each is half of a longer mark."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import INCH, MM, Style
from shoplib.measure.tape import tape_parts, tape_steps
from shoplib.words.tape import spoken, sum_text, tape_words
from tests.lessons.answers import millimetres

STYLES = [Style("in", INCH // below) for below in (8, 16, 32, 64)] + [Style("mm", MM), Style("mm", MM // 2)]


@pytest.mark.parametrize("style", STYLES, ids=str)
def test_marks_of_a_tape(style):
    """Each kind of mark of an inch tape halves the one before; 10, 5 and 1 mm (common practice, no source)."""
    parts = [Fraction(part, INCH if style.unit == "in" else MM) for part in tape_parts(style)]
    if style.unit == "in":
        assert parts == [Fraction(1, 2**k) for k in range(len(parts))]
    else:
        assert parts[:3] == [10, 5, 1]
    assert tape_parts(style)[-1] == style.step


@given(st.sampled_from(STYLES), st.integers(0, 5000))
def test_steps_add_up_and_none_can_be_taken_twice(style, marks):
    ticks = marks * style.step
    steps = tape_steps(ticks, style)
    assert sum(step.ticks for step in steps) == ticks
    assert [step.part for step in steps] == sorted({step.part for step in steps}, reverse=True)
    for longer, step in zip(tape_parts(style), tape_parts(style)[1:], strict=False):
        taken = [each.count for each in steps if each.part == step]
        assert not taken or 0 < taken[0] * step < longer
    told = sum_text(ticks, style)
    if told:
        assert sum(millimetres(text) for text in told.split(" + ")) == Fraction(ticks, MM)


@given(st.sampled_from(STYLES), st.integers(0, 400 * MM))
def test_words_hold_the_nearest_mark_and_what_is_between(style, ticks):
    told = tape_words(ticks, style)
    assert told.endswith(".") and "  " not in told
    mark = millimetres(told.split(": ")[-1].split(" The pointer")[0].rstrip("."))
    assert abs(mark - Fraction(ticks, MM)) <= Fraction(style.step, 2 * MM)
    assert told.startswith("Nearest mark: ") == (ticks % style.step != 0)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("5 7/8", "5 inches, then the half, then a quarter, then an eighth"),
        ("1 1/64", "1 inch, then a sixty-fourth"),
        ("3/8", "no figure yet, then a quarter, then an eighth"),
        ("4", "4 inches, and no mark further"),
    ],
)
def test_readings_as_they_are_said(text, words):
    inches = sum(Fraction(part) for part in text.split())
    assert spoken(int(inches * INCH), Style("in", INCH // 64)) == words


@pytest.mark.parametrize("ticks", [-INCH, INCH // 128, 1])
def test_what_stands_on_no_mark_has_no_steps(ticks):
    with pytest.raises(ValueError, match="stands on a mark"):
        tape_steps(ticks, Style("in", INCH // 64))
