"""Wood screws pulled straight out, against worked values."""

import pytest

from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.model.withdrawal import ALLOWABLE, ULTIMATE, thread_in, withdrawal

NO_8, NO_10 = 164 * INCH // 1000, 190 * INCH // 1000


def test_red_oak():
    """G 0.63, No. 8, 1 in of thread: 1,022 lb ultimate (Wood Handbook ch. 8, from memory), 186 lb allowable (read)."""
    found = withdrawal(0.63, NO_8, INCH)
    assert round(found.ultimate.to("pound_force").magnitude) == 1022
    assert round(found.allowable.to("pound_force").magnitude) == 186


def test_two_more_worked_values():
    """G .50, D .164, 1 in: 643.7 lb ultimate (units checked); G .45, D .190: printed 109, exactly 109.65 (read)."""
    assert round(withdrawal(0.50, NO_8, INCH).ultimate.to("pound_force").magnitude, 1) == 643.7
    assert round(withdrawal(0.45, NO_10, INCH).allowable.to("pound_force").magnitude, 2) == 109.65


def test_the_metric_form_is_the_same():
    """108.25 G^2 D L N, mm (Wood Handbook ch. 8, from memory): the inch form in newtons."""
    assert ULTIMATE.to("newton / millimeter ** 2").magnitude == pytest.approx(108.25, abs=0.01)
    found = withdrawal(0.5, 4 * MM, 20 * MM, style=MM_STYLE)
    assert found.ultimate.to("newton").magnitude == pytest.approx(108.25 * 0.25 * 4 * 20, rel=1e-4)
    assert ALLOWABLE / ULTIMATE < 1 / 5
    assert "108.25 x 0.5^2 x 4 x 20 = 2165 N, the weight of 221 kg" in found.working[1]


def test_in_end_grain_both_sources_are_told_and_the_lower_one_is_used():
    side, end = (withdrawal(0.5, NO_8, INCH, end_grain) for end_grain in (False, True))
    assert end.allowable / side.allowable == pytest.approx(0.60) and end.ultimate / side.ultimate == pytest.approx(0.6)
    told = " ".join(end.working)
    assert "0.60 (trade page, read)" in told and "0.75 (Wood Handbook, chapter 8, from memory)" in told
    assert "grain" not in " ".join(side.working)


def test_the_thread_that_holds():
    """Two thirds of the screw are threaded (Noyes 1910, read), and only what is past the first board holds."""
    assert thread_in(3 * INCH // 2, 3 * INCH // 4) == 3 * INCH // 4
    assert thread_in(3 * INCH // 2, INCH // 4) == INCH


@pytest.mark.parametrize("wrong", [(0, NO_8, INCH), (0.5, 0, INCH), (0.5, NO_8, 0)])
def test_nothing_holds_nothing(wrong):
    with pytest.raises(ValueError, match="more than nothing"):
        withdrawal(*wrong, style=INCH_STYLE)
