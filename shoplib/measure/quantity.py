"""Loads, forces and densities in and out: text with a unit becomes a pint quantity, and the other way round."""

import re

import pint

from shoplib.measure.faults import shown
from shoplib.measure.registry import ureg

_TEXT = re.compile(r"(\d+(?:[.,]\d+)?)\s*(\S.*)", re.ASCII)

_GRAVITY = ureg.standard_gravity
_POUND, _KILO = ureg.pound_force, ureg.kilogram * _GRAVITY
_UNITS = {
    "load": {
        "lb/ft2": _POUND / ureg.foot**2, "psf": _POUND / ureg.foot**2,
        "kg/m2": _KILO / ureg.meter**2, "Pa": ureg.pascal, "kPa": ureg.kilopascal,
    },
    "force": {"lb": _POUND, "lbf": _POUND, "kg": _KILO, "N": ureg.newton},
    "filling": {"lb/ft3": _POUND / ureg.foot**3, "kg/m3": _KILO / ureg.meter**3},
}
"""What each kind may be written in; a mass counts as its weight."""

_MEANT = {
    "load": "a load is a weight on an area, such as `15 lb/ft2` or `75 kg/m2`",
    "force": "a force is a weight, such as `60 lb` or `27 kg`, or so many newtons",
    "filling": "a filling is a weight in a space, such as `8.5 lb/ft3` or `136 kg/m3`",
}

_WRITTEN = {
    ("force", "in"): "lb", ("force", "mm"): "kg",
    ("load", "in"): "lb/ft2", ("load", "mm"): "kg/m2",
    ("filling", "in"): "lb/ft3", ("filling", "mm"): "kg/m3",
}

MOST = ureg.Quantity(100_000, "pascal")
"""More than two thousand pounds on each square foot is a slip of the pen, not a thing on a shelf."""


class QuantityError(ValueError):
    """The text is no such quantity; the message is one sentence."""


def read_quantity(text: str, kind: str = "load") -> pint.Quantity:
    """A "load" (on an area), a "force" or a "filling" (weight in a space), from text with a unit.

    A mass counts as its weight. Raises QuantityError with one sentence where the text is nothing of this kind, not
    more than nothing, or far more than any shelf is given.

    >>> read_quantity("15 lb/ft2").to("pascal").magnitude
    718.20...
    >>> round(read_quantity("75 kg/m2").to("pascal").magnitude, 1)
    735.5
    """
    units, match = _UNITS[kind], _TEXT.fullmatch(text.strip())
    unit = match and units.get(match[2].replace("^", "").replace("²", "2").replace("³", "3").replace("lbf/", "lb/"))
    if unit is None:
        raise QuantityError(f"{shown(text)} cannot be read: {_MEANT[kind]} ({', '.join(units)})")
    found = float(match[1].replace(",", ".")) * unit
    if not found.magnitude > 0 or (kind == "load" and found > MOST):
        raise QuantityError(f"{shown(text)} is no amount that a case is given: {_MEANT[kind]}")
    return found


def write_force(force: pint.Quantity, unit: str) -> str:
    """A weight or a force as it is said: whole pounds or kilograms from ten up, else one decimal.

    In kilograms a force is the weight of so many.

    >>> write_force(ureg.Quantity(43.2, "lbf"), "in"), write_force(ureg.Quantity(43.2, "lbf"), "mm")
    ('43 lb', '20 kg')
    """
    return _written("force", force, unit)


def write_load(load: pint.Quantity, unit: str) -> str:
    """A load on an area, in pounds on a square foot or kilograms on a square metre.

    >>> write_load(read_quantity("15 lb/ft2"), "in"), write_load(read_quantity("15 lb/ft2"), "mm")
    ('15 lb/ft2', '73 kg/m2')
    """
    return _written("load", load, unit)


def write_filling(filling: pint.Quantity, unit: str) -> str:
    """A weight in a space, in pounds in a cubic foot or kilograms in a cubic metre.

    >>> [write_filling(read_quantity("8.5 lb/ft3", "filling"), unit) for unit in ("in", "mm")]
    ['8.5 lb/ft3', '136 kg/m3']
    """
    return _written("filling", filling, unit)


def _written(kind: str, value: pint.Quantity, unit: str) -> str:
    name = _WRITTEN[kind, unit]
    number = (value / _UNITS[kind][name]).to("dimensionless").magnitude
    return f"{number:.0f} {name}" if abs(number) >= 9.95 else f"{number:.1f} {name}"
