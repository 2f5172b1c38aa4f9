"""How far a shelf or a drawer bottom sags under what is put in, at once and in time, and how far it may."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

import pint

from shoplib.measure import FOOT, Style, narrowest, read_length, share, to_quantity, to_step, write_brief
from shoplib.measure.quantity import write_force, write_load
from shoplib.measure.ticks import INCH, MM
from shoplib.model.beam import CREEP, Held, bend
from shoplib.model.material import Material
from shoplib.tables.loads import loads


@dataclass(frozen=True, slots=True)
class Sag:
    """The sag of one board, lengths in ticks.

    `least` and `most` are what it comes to in years, with the stiffest and the least stiff figure of its material;
    `first_most` what it comes to at once with the least stiff. `span` is what it bridges, `allowed` the limit of KCMA
    A161.1, `weight` what lies on it with its own weight. `working` is the way there, a line a step.
    """

    span: int
    least: int
    most: int
    first_most: int
    allowed: int
    weight: pint.Quantity
    working: tuple[str, ...]

    @property
    def too_much(self) -> bool:
        """Whether it may sag more than the limit, with the least stiff figure."""
        return self.most > self.allowed


def allowed_sag(span: int) -> int:
    """The most that a shelf of this span may sag: 1/16 in a foot and 1/4 in at most (KCMA A161.1, read), in ticks.

    >>> allowed_sag(3 * FOOT) == INCH * 3 // 16, allowed_sag(10 * FOOT) == INCH // 4
    (True, True)
    """
    per_foot, most = (read_length(loads()[row].value) for row in ("sag_by_span", "sag_at_most"))
    return narrowest([share(span, FOOT // per_foot, 1)[0], most])


def shop_sag(span: int) -> int:
    """The sag that the eye does not see: 0.02 in for each foot of span (common practice, no source), in ticks.

    >>> shop_sag(3 * FOOT) == 6 * INCH // 100
    True
    """
    return share(span * read_length(loads()["sag_shop_rule"].value), FOOT, 1)[0]


def sags_over(
    spans: Sequence[int], depth: int, thickness: int, material: Material, load: pint.Quantity,
    held: Held = "simply supported",
) -> tuple[tuple[int, int], ...]:
    """The least and the most that a shelf comes to sag in years at each of these spans, in ticks; else as `board_sag`.

    A load spread evenly grows with the span, so bending goes with its fourth power and shear with its second: one
    bend, at a foot, gives all.

    >>> from shoplib.measure.quantity import read_quantity
    >>> from shoplib.model.material import material_of
    >>> from shoplib.model.sheet import Sheet
    >>> ply = material_of(Sheet("case sheet", "plywood", 18 * MM))
    >>> once, twice = sags_over([2 * FOOT, 4 * FOOT], FOOT, 18 * MM, ply, read_quantity("15 lb/ft2"))
    >>> round(twice[1] / once[1], 1)
    15.8
    """
    foot, deep, thick = (to_quantity(ticks, "inch") for ticks in (FOOT, depth, thickness))
    weight = ((load + material.weighs[1] * thick) * foot * deep).to("pound_force")
    bends = [bend(weight, foot, deep, thick, e, held) for e in reversed(material.stiffnesses)]
    inch = INCH * float(CREEP["seasoned"])
    parts = [[one.to("inch").magnitude * inch for one in (b.bending, b.shear)] for b in bends]
    times = [float(Fraction(int(span), FOOT)) for span in spans]
    return tuple(tuple(round(bent * n**4 + sheared * n**2) for bent, sheared in parts) for n in times)


def board_sag(
    span: int,
    depth: int,
    thickness: int,
    material: Material,
    load: pint.Quantity,
    style: Style,
    held: Held = "simply supported",
) -> Sag:
    """The sag of a shelf `span` long between its supports, `depth` from front to back, `thickness` thick (ticks).

    `load` is a weight on an area, spread evenly; the board's own weight is added, at its heaviest. A shelf in dadoes is
    held between "simply supported" and "clamped": the first sags five times as much and is on the safe side.

    >>> from shoplib.measure import INCH_STYLE
    >>> from shoplib.measure.quantity import read_quantity
    >>> from shoplib.model.material import material_of
    >>> from shoplib.model.sheet import Sheet
    >>> ply = material_of(Sheet("case sheet", "plywood", 18 * MM))
    >>> shelf = board_sag(36 * INCH, 11 * INCH, 3 * INCH // 4, ply, read_quantity("15 lb/ft2"), INCH_STYLE)
    >>> shelf.too_much
    False
    >>> for line in shelf.working:
    ...     print(line)
    load: 15 lb/ft2 on 36 in x 11 in is 41 lb; with its own weight 48 lb
    E of plywood: 6960 to 8550 MPa (read in a copy)
    k_b W L^3 / (E I) + k_s W L / (G A') with I = b h^3 / 12, simply supported: 0.061 in to 0.075 in at once
    under a load that stays: x 1.5 (NDS 3.5.2), 0.091 in to 0.112 in
    allowed: 1/16 in for each foot and 1/4 in at most (KCMA A161.1): 0.1875 in
    """
    across, deep, thick = (to_quantity(ticks, "inch") for ticks in (span, depth, thickness))
    put_in = (load * across * deep).to("pound_force")
    own = (material.weighs[1] * across * deep * thick).to("pound_force")
    bends = [bend(put_in + own, across, deep, thick, e, held) for e in reversed(material.stiffnesses)]
    step = INCH // 1000 if style.unit == "in" else MM // 50
    first = [_ticks(b.total, step) for b in bends]
    least, most = (_ticks(b.in_time(), step) for b in bends)
    allowed = allowed_sag(span)
    size = f"{write_brief(span, style)} x {write_brief(depth, style)}"
    working = (
        f"load: {write_load(load, style.unit)} on {size} is {write_force(put_in, style.unit)}; with its own weight "
        f"{write_force(put_in + own, style.unit)}",
        f"E of {material.known_as}: {_range(*(f'{e:.0f}' for e in material.stiffness))} MPa ({material.confidence})",
        f"k_b W L^3 / (E I) + k_s W L / (G A') with I = b h^3 / 12, {held}: {between(*first, style)} at once",
        f"under a load that stays: x {float(CREEP['seasoned']):g} (NDS 3.5.2), {between(least, most, style)}",
        f"allowed: 1/16 in for each foot and 1/4 in at most (KCMA A161.1): {write_brief(allowed, style, decimal=True)}",
    )
    return Sag(span, least, most, first[1], allowed, put_in + own, working)


def _ticks(sag: pint.Quantity, step: int) -> int:
    """A sag in ticks, to the nearest step: also one so small that nobody could set it as a length."""
    return to_step(round(sag.m_as("inch") * INCH), step)


def bottom_sag(wide: int, deep: int, thickness: int, material: Material, load: pint.Quantity, style: Style) -> Sag:
    """The sag of a drawer bottom that is `wide` by `deep` between its grooves (ticks), as a strip over the shorter way.

    It is held on four sides and bends both ways, so it sags less than the strip; the strip is on the safe side, most
    of all where the bottom is square. The figure of the material holds where the face grain runs the shorter way.

    >>> from shoplib.measure import MM_STYLE
    >>> from shoplib.measure.quantity import read_quantity
    >>> from shoplib.model.material import material_of
    >>> from shoplib.model.sheet import Sheet
    >>> ply = material_of(Sheet("thin sheet", "plywood", 6 * MM))
    >>> both = [bottom_sag(a * MM, b * MM, 6 * MM, ply, read_quantity("75 kg/m2"), MM_STYLE).most
    ...         for a, b in ((300, 450), (450, 300))]
    >>> both[0] == both[1]
    True
    """
    shorter = narrowest([wide, deep])
    return board_sag(shorter, wide + deep - shorter, thickness, material, load, style)


def between(low: int, high: int, style: Style) -> str:
    """A range of small lengths as decimals, or one where they are the same."""
    return _range(*(write_brief(ticks, style, decimal=True) for ticks in (low, high)))


def _range(low: str, high: str) -> str:
    return low if low == high else f"{low} to {high}"
