"""How deep a cutter of a table saw cuts at most."""

import pytest

from shoplib.measure import INCH, MM, MM_STYLE
from shoplib.model.reach import CannotReach, reach_of, refuse_deeper


def test_half_of_the_cutter_less_flange_and_table_stands_out():
    """Common practice, no source: 2 in (50 mm) of the half are lost, so 8 in cut 2 in deep and 10 in cut 3 in."""
    assert [reach_of(size * INCH) for size in (6, 8, 10)] == [INCH, 2 * INCH, 3 * INCH]
    assert reach_of(200 * MM, MM_STYLE) == 50 * MM


def test_what_is_deeper_is_refused_in_one_sentence_with_both_amounts():
    refuse_deeper(50 * MM, 200 * MM, "a stack", MM_STYLE)
    with pytest.raises(CannotReach, match=r"^a stack 200 mm across .* 50 mm out .* this cut is 66 mm deep\.$"):
        refuse_deeper(66 * MM, 200 * MM, "a stack", MM_STYLE)
