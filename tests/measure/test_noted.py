"""Lengths are found again in a sentence where they were written into it, and nowhere else."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import INCH, INCH_STYLE, MM_STYLE, write_brief, write_length, write_measured
from shoplib.measure.noted import noting, stated, unmarked
from shoplib.measure.traced import leaf

WRITERS = (write_length, write_measured, write_brief)


@given(st.lists(st.tuples(st.integers(-10**9, 10**9), st.sampled_from(WRITERS), st.booleans(), st.text()), max_size=6))
def test_a_sentence_is_the_same_and_knows_its_lengths(parts):
    plain = "".join(words + write(ticks, MM_STYLE) for ticks, write, _, words in parts)
    with noting() as notes:
        marked = "".join(
            words + write(leaf(ticks, "a size") if traced else ticks, MM_STYLE) for ticks, write, traced, words in parts
        )
    told = notes.told(marked)
    assert told == plain == unmarked(marked)
    assert [told[start:end] for start, end, _ in told.lengths] == [write(ticks, MM_STYLE) for ticks, write, *_ in parts]
    assert [one.ticks for one in told.lengths] == [ticks if traced else None for ticks, _, traced, _ in parts]


def test_nothing_is_marked_outside_and_each_length_once():
    assert write_brief(INCH, INCH_STYLE) == stated("1 in", INCH) == "1 in"
    with noting() as notes:
        text = write_brief(INCH // 1000, INCH_STYLE)  # which leaves it to the writer of decimals
    assert len(notes.told(text).lengths) == 1
    assert write_brief(INCH, INCH_STYLE) == "1 in"


def test_one_working_has_one_mark_so_that_equal_texts_stay_equal():
    width = leaf(5 * INCH, "width")
    with noting():
        assert write_brief(width, INCH_STYLE) == write_brief(width + 0, INCH_STYLE)
        assert write_brief(width, INCH_STYLE) != write_brief(leaf(5 * INCH, "height"), INCH_STYLE)
        assert write_brief(5 * INCH, INCH_STYLE) == write_brief(5 * INCH, INCH_STYLE)


def test_notes_end_with_whatever_ends_them():
    with pytest.raises(ZeroDivisionError), noting():
        write_brief(1 // 0, INCH_STYLE)
    assert write_brief(INCH, INCH_STYLE) == "1 in"
    with noting() as outer:
        with noting() as inner:
            stated("2 in", leaf(2 * INCH, "inner"))
        text = write_brief(leaf(INCH, "outer"), INCH_STYLE)
    assert outer.told(text).lengths[0].ticks.sum.terms[0][0].name == "outer"
    assert inner.told("a word").lengths == ()
