"""Sag of shelves and drawer bottoms: by hand, the same in either unit, and a bottom as a plate by scipy."""

import numpy as np
import pytest
from scipy.sparse import diags_array, eye_array, kron
from scipy.sparse.linalg import spsolve

from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.measure.quantity import read_quantity
from shoplib.model.material import material_of
from shoplib.model.sag import allowed_sag, board_sag, bottom_sag
from shoplib.model.sheet import Sheet

PLY = material_of(Sheet("case sheet", "plywood", 18 * MM))
OAK = material_of(Sheet("shelf stock", "solid", 19 * MM, species="northern red oak"))
LOAD = read_quantity("15 lb/ft2")


def test_a_shelf_by_hand():
    """Red oak 36 x 12 x 3/4 in under 15 lb/ft2: 45 lb; it weighs itself 0.63 x 1.12 x 62.428 lb/ft3 x 0.1875 ft3 =
    8.26 lb; W = 53.26 lb. I = 12 x 0.421875 / 12 = 0.421875. E = 12,500 MPa = 1.81297e6 psi.
    5/384 x 53.26 x 46,656 / (1.81297e6 x 0.421875) = 0.04230 in; with shear, 0.67 % more, 0.04258; in years x 1.5,
    0.0639.
    """
    sag = board_sag(36 * INCH, 12 * INCH, 3 * INCH // 4, OAK, LOAD, INCH_STYLE)
    assert sag.weight.to("pound_force").magnitude == pytest.approx(53.26, abs=0.01)
    assert sag.first_most / INCH == pytest.approx(0.0426, abs=0.0006)
    assert sag.least == sag.most and sag.most / INCH == pytest.approx(0.0639, abs=0.0006)
    assert "with its own weight 53 lb" in sag.working[0] and "(from memory)" in sag.working[1]


def test_sheets_give_a_range_and_either_unit_the_same():
    inch, mm = (board_sag(900 * MM, 300 * MM, 18 * MM, PLY, LOAD, style) for style in (INCH_STYLE, MM_STYLE))
    assert mm.most / mm.least == pytest.approx(8.55 / 6.96, rel=0.02)  # Table 12-1, read
    assert abs(inch.most - mm.most) <= INCH // 1000
    assert mm.working[0].startswith("load: 73 kg/m2 on 900 mm x 300 mm is 20 kg; with its own weight 2")


def test_clamped_ends_sag_a_fifth():
    """1/384 against 5/384, Wood Handbook Table 9-1; a shelf in dadoes lies between."""
    free, clamped = (board_sag(900 * MM, 300 * MM, 18 * MM, PLY, LOAD, MM_STYLE, held)
                     for held in ("simply supported", "clamped"))  # fmt: skip
    assert free.most / clamped.most == pytest.approx(5, rel=0.05)  # shear is the same in both


@pytest.mark.parametrize(("feet", "allowed"), [(1, 1 / 16), (2, 1 / 8), (3, 3 / 16), (4, 1 / 4), (6, 1 / 4)])
def test_the_limit(feet, allowed):
    """KCMA A161.1 (read): at most 1/16 in per foot and 1/4 in."""
    assert allowed_sag(feet * 12 * INCH) == allowed * INCH


def test_a_long_shelf_passes_the_limit_and_a_short_one_does_not():
    long, short = (board_sag(span * MM, 300 * MM, 18 * MM, PLY, read_quantity("100 kg/m2"), MM_STYLE)
                   for span in (1200, 400))  # fmt: skip
    assert long.too_much and not short.too_much


def plate(ratio, nodes=48):
    """The middle of a plate on four edges that may turn, 1 wide and `ratio` long, under an even load 1 with D = 1.

    Two Poisson problems one after the other, w'' in x and y twice, by finite differences: scipy solves them.
    """
    rows, columns = nodes - 1, round(nodes * ratio) - 1
    h = 1 / nodes

    def second(n):
        return diags_array([np.ones(n - 1), -2 * np.ones(n), np.ones(n - 1)], offsets=[-1, 0, 1]) / h**2

    laplace = (kron(second(rows), eye_array(columns)) + kron(eye_array(rows), second(columns))).tocsc()
    moment = spsolve(laplace, np.ones(rows * columns))
    return spsolve(laplace, moment).reshape(rows, columns)[rows // 2, columns // 2]


def test_the_plate_solver_finds_navier():
    """A square plate: 0.00406 q a^4 / D, Timoshenko, Theory of Plates and Shells, from memory."""
    assert plate(1) == pytest.approx(0.00406, abs=2e-5)


@pytest.mark.parametrize(("ratio", "part"), [(1, 0.31), (1.5, 0.59), (3, 0.94)])
def test_a_bottom_as_a_strip_is_on_the_safe_side(ratio, part):
    """A strip of the same stiffness sags 5/384 = 0.01302; the plate, taken as stiff both ways, less: a third of it
    where it is square, nearly all of it where it is long. (D is taken as E h^3 / 12, which leaves out that a plate is
    stiffer by 1 / (1 - nu^2): again on the safe side.)"""
    assert plate(ratio) < 5 / 384
    assert plate(ratio) / (5 / 384) == pytest.approx(part, abs=0.01)


def test_a_bottom_spans_the_shorter_way():
    wide = bottom_sag(500 * MM, 300 * MM, 6 * MM, PLY, LOAD, MM_STYLE)
    assert wide.span == 300 * MM
    assert wide == bottom_sag(300 * MM, 500 * MM, 6 * MM, PLY, LOAD, MM_STYLE)
