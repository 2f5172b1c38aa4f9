"""Where one class of fit ends and the next begins, in both units."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import INCH, MM
from shoplib.tables.fits import fit_class, fit_named, fits

THOU = INCH // 1000
FACES = ["too tight", "press", "tap", "push", "loose"]


@pytest.mark.parametrize(
    ("thousandths", "name"),
    [(-3, "too tight"), (-2, "press"), (-1, "press"), (0, "tap"), (1, "tap"), (2, "push"), (4, "push"), (5, "loose"),
     (10, "loose"), (12, "loose"), (40, "loose")],
)
def test_the_limits_in_thousandths_of_an_inch(thousandths, name):
    """Press -2 to 0, tap 0 to +2, push +2 to +5, loose +5 and more: common practice, no source."""
    assert fit_class(thousandths * THOU).name == name


@pytest.mark.parametrize(
    ("hundredths", "name"),
    [(-6, "too tight"), (-5, "press"), (-1, "press"), (0, "tap"), (4, "tap"), (5, "push"), (12, "push"), (13, "loose")],
)
def test_the_limits_in_hundredths_of_a_millimetre(hundredths, name):
    assert fit_class(hundredths * MM // 100, "mm").name == name


@given(st.integers(-MM, MM), st.integers(0, MM), st.sampled_from(["in", "mm"]))
def test_a_wider_cut_is_never_a_tighter_fit(difference, wider, unit):
    classes = [FACES.index(fit_class(by, unit).name) for by in (difference, difference + wider)]
    assert classes == sorted(classes)


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_what_is_aimed_for_is_of_that_class(unit):
    aimed = [fit for fit in fits(unit) if fit.aim is not None]
    assert [fit.name for fit in aimed] == ["press", "tap", "push"]
    assert [fit_class(fit.aim, unit).name for fit in aimed] == ["press", "tap", "push"]


def test_the_millimetres_are_the_thousandths_rounded():
    for inch, mm in zip(fits("in"), fits("mm"), strict=True):
        assert inch.over is None or abs(inch.over - mm.over) < MM // 200
        assert inch.feels and inch.do


def test_a_float_is_no_difference():
    with pytest.raises(TypeError, match="whole number"):
        fit_class(0.002)


def test_a_class_that_is_none_is_not_found():
    with pytest.raises(KeyError):
        fit_named("snug")
