"""How far a board bends: the beam formulas of the Wood Handbook, Table 9-1, with shear and with time.

Plain formulas on pint quantities, for shelves, rails and bottoms; `sag.py` applies them to boards.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

import pint

Held = Literal["simply supported", "clamped", "cantilever"]
"""At both ends free to turn; at both ends held against turning; at one end held, the other free."""

Loaded = Literal["uniform", "centre", "end"]

COEFFICIENTS: dict[tuple[Held, Loaded], tuple[Fraction, Fraction]] = {
    ("simply supported", "uniform"): (Fraction(5, 384), Fraction(1, 8)),
    ("clamped", "uniform"): (Fraction(1, 384), Fraction(1, 8)),
    ("simply supported", "centre"): (Fraction(1, 48), Fraction(1, 4)),
    ("clamped", "centre"): (Fraction(1, 192), Fraction(1, 4)),
    ("cantilever", "uniform"): (Fraction(1, 8), Fraction(1, 2)),
    ("cantilever", "end"): (Fraction(1, 3), Fraction(1)),
}
"""k_b and k_s, Wood Handbook Table 9-1 (read; clamped with a load in the centre, and a cantilever loaded at its end:
from memory, confirmed by another solution in the tests)."""

SHEAR_PART = Fraction(5, 6)
"""Of a rectangular section, the part that counts in shear (Wood Handbook, chapter 9, from memory)."""

E_OVER_G = 16
"""Stiffness in bending over stiffness in shear of wood (from memory). It counts little: in a shelf 36 in long and
3/4 in thick shear adds 0.7 %."""

CREEP = {"seasoned": Fraction(3, 2), "unseasoned": Fraction(2)}
"""What bends under a lasting load comes to so many times its first bend: NDS 3.5.2 (read)."""


@dataclass(frozen=True, slots=True)
class Bend:
    """How far the middle of a beam, or the free end of a cantilever, goes down: by bending, and by shear on top."""

    bending: pint.Quantity
    shear: pint.Quantity

    @property
    def total(self) -> pint.Quantity:
        """Both together, as soon as the load is on."""
        return self.bending + self.shear

    def in_time(self, stock: Literal["seasoned", "unseasoned"] = "seasoned") -> pint.Quantity:
        """What it comes to when the load stays on for years (NDS 3.5.2)."""
        return self.total * float(CREEP[stock])


def bend(
    weight: pint.Quantity,
    span: pint.Quantity,
    width: pint.Quantity,
    thickness: pint.Quantity,
    stiffness: pint.Quantity,
    held: Held = "simply supported",
    loaded: Loaded = "uniform",
    shear_stiffness: pint.Quantity | None = None,
) -> Bend:
    """k_b W L^3 / (E I) and k_s W L / (G A'): the bend of a board under a force of `weight` in all.

    `width` lies across the span, `thickness` is how high the section is; `stiffness` is E. `shear_stiffness` is G;
    left out, E / 16. Raises ValueError for a way of holding and loading that has no formula here, or a size or
    stiffness that is not more than nothing.

    A shelf 36 x 11 x 3/4 in of E 1.82e6 psi under 20 lb on each foot:

    >>> from shoplib.measure import ureg
    >>> inch, pounds = ureg.inch, ureg.pound_force
    >>> shelf = 60 * pounds, 36 * inch, 11 * inch, 0.75 * inch, 1.82e6 * ureg.psi
    >>> [round(bend(*shelf, held).bending.to("inch").magnitude, 5) for held in ("simply supported", "clamped")]
    [0.05179, 0.01036]
    """
    if (held, loaded) not in COEFFICIENTS:
        ways = "; ".join(f"{a}, {b}" for a, b in COEFFICIENTS)
        raise ValueError(f"there is no formula here for a beam {held} with its load {loaded}; there are: {ways}.")
    if not all(value.magnitude > 0 for value in (span, width, thickness, stiffness)):
        raise ValueError("span, width, thickness and stiffness are more than nothing.")
    of_bending, of_shear = (float(k) for k in COEFFICIENTS[held, loaded])
    stiff_in_shear = stiffness / E_OVER_G if shear_stiffness is None else shear_stiffness
    bending = of_bending * weight * span**3 / (stiffness * second_moment(width, thickness))
    shear = of_shear * weight * span / (stiff_in_shear * float(SHEAR_PART) * width * thickness)
    return Bend(bending.to(span.units), shear.to(span.units))


def second_moment(width: pint.Quantity, thickness: pint.Quantity) -> pint.Quantity:
    """I = b h^3 / 12 of a rectangular section: twice as thick is eight times as stiff.

    >>> from shoplib.measure import ureg
    >>> second_moment(12 * ureg.inch, 2 * ureg.inch).magnitude
    8.0
    """
    return width * thickness**3 / 12
