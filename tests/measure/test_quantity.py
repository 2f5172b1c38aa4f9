"""Loads, forces and fillings: read as meant or refused in one sentence, and written in either system."""

import pytest

from shoplib.measure import ureg
from shoplib.measure.quantity import QuantityError, read_quantity, write_force, write_load


@pytest.mark.parametrize(
    ("text", "kind", "unit", "number"),
    [("15 lb/ft2", "load", "pascal", 718.2039), ("15 psf", "load", "pascal", 718.2039),
     ("15 lbf/ft^2", "load", "pascal", 718.2039), ("75 kg/m2", "load", "pascal", 735.49875),
     ("7,5 kg/m²", "load", "pascal", 73.549875), ("1.2 kPa", "load", "pascal", 1200),
     ("60 lb", "force", "newton", 266.8933), ("27 kg", "force", "newton", 264.77955),
     ("8.5 lb/ft3", "filling", "newton / meter ** 3", 1335.238)],
)  # fmt: skip
def test_read_as_meant(text, kind, unit, number):
    """1 lb = 0.45359237 kg exactly, standard gravity 9.80665 m/s2 (NIST SP 811)."""
    assert read_quantity(text, kind).to(unit).magnitude == pytest.approx(number, rel=1e-5)


@pytest.mark.parametrize(
    "text",
    ["15", "15 in", "lb/ft2", "", "-3 psf", "0 psf", "1e3 psf", "10**100**10 kg/m2", "15 lb", "9" * 400 + " psf",
     "50000 kPa", "15 lb/ft2 and more", "(((", "nan psf"],
)  # fmt: skip
def test_anything_else_is_refused_in_one_sentence(text):
    with pytest.raises(QuantityError, match=r"such as `15 lb/ft2` or `75 kg/m2`") as refused:
        read_quantity(text)
    assert len(str(refused.value)) < 200


def test_written_in_either_system():
    force = ureg.Quantity(50, "pound_force")
    assert [write_force(force, unit) for unit in ("in", "mm")] == ["50 lb", "23 kg"]
    assert write_force(ureg.Quantity(3.14, "pound_force"), "in") == "3.1 lb"
    assert write_load(read_quantity("75 kg/m2"), "in") == "15 lb/ft2"
