"""What sheets and pieces of them weigh, and which one person is not to lift."""

from dataclasses import dataclass

import pint

from shoplib.measure import MM, ureg
from shoplib.measure.quantity import read_quantity, write_force
from shoplib.model.material import material_of
from shoplib.model.sheet import Sheet


@dataclass(frozen=True, slots=True)
class PieceWeight:
    """A weight of at least `low` and at most `high`, forces."""

    low: pint.Quantity
    high: pint.Quantity

    def told(self, unit: str) -> str:
        """The range as it is said, in pounds ("in") or kilograms ("mm").

        >>> PieceWeight(ureg.Quantity(60, "lbf"), ureg.Quantity(75, "lbf")).told("in")
        '60 to 75 lb'
        """
        low, high = write_force(self.low, unit), write_force(self.high, unit)
        return high if low == high else f"{low.split()[0]} to {high}"


def weight_of(sheet: Sheet, length: int, width: int, thick: int | None = None) -> PieceWeight | None:
    """What a piece of a sheet weighs; None where the table has no figure for that sheet.

    `thick` is what it is as it comes, where that is not the thickness of the sheet.

    >>> ply = Sheet("ply", "plywood", 18 * MM)
    >>> weight_of(ply, 2440 * MM, 1220 * MM).told("mm")
    '21 to 32 kg'
    """
    material = material_of(sheet)
    if material is None:
        return None
    cubic_metres = length * width * (thick or sheet.thickness) / MM**3 * 1e-9
    low, high = (ureg.Quantity(each.magnitude * cubic_metres, "newton") for each in material.weighs)
    return PieceWeight(low, high)


def one_lifts(sheet: Sheet, limit: str, thick: int | None = None) -> int | None:
    """The largest piece of a sheet, in square ticks, that surely weighs no more than `limit`; None where not known.

    `thick` is as `weight_of` takes it.
    """
    material = material_of(sheet)
    if material is None:
        return None
    most = read_quantity(limit, "force").to("newton").magnitude
    return int(most / material.weighs[1].magnitude * 1e9 * MM**3 / (thick or sheet.thickness))


def needs_two(sheet: Sheet, length: int, width: int, limit: str, thick: int | None = None) -> bool:
    """Whether a piece may weigh more than `limit`: then two people lift it.

    >>> ply = Sheet("ply", "plywood", 18 * MM)
    >>> needs_two(ply, 2440 * MM, 1220 * MM, "23 kg"), needs_two(ply, 800 * MM, 600 * MM, "23 kg")
    (True, False)
    """
    most = one_lifts(sheet, limit, thick)
    return most is not None and length * width > most
