"""Beam formulas against the published example, and against the beam's differential equation solved by scipy."""

import numpy as np
import pytest
from scipy.integrate import solve_bvp

from shoplib.measure import ureg
from shoplib.model.beam import COEFFICIENTS, E_OVER_G, bend, second_moment

INCH, POUND = ureg.inch, ureg.pound_force
SHELF = 60 * POUND, 36 * INCH, 11 * INCH, 0.75 * INCH, 1.82e6 * ureg.psi


@pytest.mark.parametrize(("held", "printed", "digits"), [("simply supported", 0.0518, 4), ("clamped", 0.01036, 5)])
def test_the_published_shelf(held, printed, digits):
    """36 x 11 x 3/4 in, 20 lb on each foot, E 1.82e6 psi (Wood Handbook Table 9-1, read): bending alone."""
    assert round(bend(*SHELF, held).bending.to("inch").magnitude, digits) == printed


def by_differential_equation(held, loaded, weight, span, ei, ga):
    """Timoshenko's beam: w' = phi + V/GA, EI phi' = -M, M' = V, V' = -q, w downward; newtons and metres.

    A load in the centre is solved on the left half, which ends level at the middle. Gives the deflection asked for.
    """
    half = loaded == "centre"
    length = span / 2 if half else span
    q = weight / span if loaded == "uniform" else 0.0

    def slope(x, y):
        _, phi, moment, shear = y
        return np.vstack([shear / ga + phi, -moment / ei, shear, np.full_like(x, -q)])

    def ends(a, b):
        start = {"simply supported": [a[0], a[2]]}.get(held, [a[0], a[1]])
        if half:
            stop = [b[1], b[3] - weight / 2]
        elif held == "cantilever":
            stop = [b[2], b[3] - (weight if loaded == "end" else 0.0)]
        else:
            stop = [b[0], b[2] if held == "simply supported" else b[1]]
        return np.array([*start, *stop])

    x = np.linspace(0, length, 41)
    found = solve_bvp(slope, ends, x, np.zeros((4, x.size)), tol=1e-8, max_nodes=20_000)
    assert found.success
    at = length if half or held == "cantilever" else length / 2
    return abs(found.sol(at)[0])


@pytest.mark.parametrize("thickness_mm", [18, 240], ids=["a shelf", "a stocky beam"])
@pytest.mark.parametrize(("held", "loaded"), COEFFICIENTS)
def test_every_formula_solves_the_beam(held, loaded, thickness_mm):
    """scipy's boundary value solver knows nothing of the table: bending and shear together, to a part in 100,000."""
    weight, span, wide, thick, stiff = 400.0, 0.9, 0.3, thickness_mm / 1000, 9e9
    ei, ga = stiff * wide * thick**3 / 12, stiff / E_OVER_G * 5 / 6 * wide * thick
    expected = by_differential_equation(held, loaded, weight, span, ei, ga)
    got = bend(weight * ureg.newton, span * ureg.meter, wide * ureg.meter, thick * ureg.meter,
               stiff * ureg.pascal, held, loaded)  # fmt: skip
    assert got.total.to("meter").magnitude == pytest.approx(expected, rel=1e-5)
    assert (got.shear.magnitude > 0.2 * got.bending.magnitude) == (thickness_mm == 240)


def test_shear_of_the_published_shelf_adds_what_is_said():
    found = bend(*SHELF)
    assert (found.shear / found.bending).to("dimensionless").magnitude == pytest.approx(0.0067, abs=1e-4)


def test_long_loads_bend_more():
    """NDS 3.5.2 (read): 1.5 times for seasoned wood, 2 times for unseasoned."""
    found = bend(*SHELF)
    assert found.in_time() / found.total == 1.5 and found.in_time("unseasoned") / found.total == 2


def test_the_second_moment_of_the_published_shelf():
    """11 x 0.75^3 / 12 = 11 x 0.421875 / 12 = 0.38672 in^4, by hand."""
    assert second_moment(11 * INCH, 0.75 * INCH).magnitude == pytest.approx(0.386719, abs=1e-6)


@pytest.mark.parametrize("spoilt", [(1, 0 * INCH), (2, -1 * INCH), (3, 0 * INCH), (4, 0 * ureg.psi)])
def test_what_is_no_beam_is_refused(spoilt):
    given = list(SHELF)
    given[spoilt[0]] = spoilt[1]
    with pytest.raises(ValueError, match="more than nothing"):
        bend(*given)
    with pytest.raises(ValueError, match="no formula here for a beam simply supported with its load end"):
        bend(*SHELF, "simply supported", "end")
