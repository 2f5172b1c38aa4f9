"""How hard a wood screw is to pull straight out: what it bears before it comes, and what may be asked of it."""

from dataclasses import dataclass

import pint

from shoplib.measure import INCH_STYLE, Style, narrowest, share, to_quantity, ureg, write_brief
from shoplib.measure.quantity import write_force

ULTIMATE = ureg.Quantity(15_700, "pound_force / inch ** 2")
"""p = 15,700 G^2 D L lb, inches (108.25 G^2 D L N, millimetres), into the side of the grain: Wood Handbook, chapter 8,
from memory; the two forms agree."""

ALLOWABLE = ureg.Quantity(2_850, "pound_force / inch ** 2")
"""2,850 G^2 D lb for each inch of thread: read."""

END_GRAIN = {0.60: "trade page, read", 0.75: "Wood Handbook, chapter 8, from memory"}
"""What is left of it in end grain. The sources differ; both are told, and the lower one is used."""

THREAD_PART = (2, 3)
"""A wood screw is threaded on about two thirds of its length: Noyes, Handwork in Wood (1910), read."""


@dataclass(frozen=True, slots=True)
class Withdrawal:
    """What one screw bears: `ultimate` when it comes out, `allowable` what may be asked of it, with their `working`."""

    ultimate: pint.Quantity
    allowable: pint.Quantity
    working: tuple[str, ...]


def withdrawal(
    gravity: float, diameter: int, thread: int, end_grain: bool = False, style: Style = INCH_STYLE
) -> Withdrawal:
    """One screw pulled straight out of wood of this specific gravity; `diameter` of the shank, `thread` in it (ticks).

    The formula is for solid wood, seasoned, with a pilot hole. Raises ValueError where a size or the gravity is not
    more than nothing.

    >>> from shoplib.measure import INCH
    >>> red_oak = withdrawal(0.63, 164 * INCH // 1000, INCH)
    >>> for line in red_oak.working:
    ...     print(line)
    thread in the wood: 1 in; shank 0.164 in; specific gravity 0.63
    comes out at 15,700 x 0.63^2 x 0.164 x 1 = 1022 lb
    may be asked: 2,850 x 0.63^2 x 0.164 x 1 = 186 lb
    """
    if not (gravity > 0 and diameter > 0 and thread > 0):
        raise ValueError("gravity, diameter and thread are more than nothing.")
    d, length = (to_quantity(ticks, "inch" if style.unit == "in" else "millimeter") for ticks in (diameter, thread))
    part = end_grain_part() if end_grain else 1
    ultimate, allowable = ((each * gravity**2 * d * length * part).to("pound_force") for each in (ULTIMATE, ALLOWABLE))
    terms = f"{gravity:g}^2 x {d.magnitude:.3g} x {length.magnitude:.3g}" + (f" x {part:.2f}" if end_grain else "")
    lines = [
        f"thread in the wood: {write_brief(thread, style)}; shank {write_brief(diameter, style, decimal=True)}; "
        f"specific gravity {gravity:g}",
        f"comes out at {_factor(ULTIMATE, style)} x {terms} = {_force(ultimate, style)}",
        f"may be asked: {_factor(ALLOWABLE, style)} x {terms} = {_force(allowable, style)}",
    ]
    if end_grain:
        told = " or ".join(f"{left:.2f} ({source})" for left, source in END_GRAIN.items())
        lines.insert(1, f"in end grain a part of it is left: {told}; the lower one is used")
    return Withdrawal(ultimate, allowable, tuple(lines))


@dataclass(frozen=True, slots=True)
class Holds:
    """What `count` screws hold together, each pair (least, most): what may be asked of them, and when they come out.

    The range is that of the wood's gravity and, in end grain, of the sources. `least` is one screw by the careful end.
    """

    allowable: tuple[pint.Quantity, pint.Quantity]
    ultimate: tuple[pint.Quantity, pint.Quantity]
    least: Withdrawal


def holds(
    gravity: tuple[float, float], diameter: int, thread: int, count: int, end_grain: bool = False,
    style: Style = INCH_STYLE,
) -> Holds:
    """So many screws in wood of this range of specific gravity, pulled straight out; the rest as in `withdrawal`.

    >>> from shoplib.measure import INCH
    >>> found = holds((0.5, 0.5), 164 * INCH // 1000, INCH, 2, end_grain=True)
    >>> [round(force.to("pound_force").magnitude) for force in found.allowable]
    [140, 175]
    """
    least, most = (withdrawal(each, diameter, thread, end_grain, style) for each in gravity)
    more = count * (max(END_GRAIN) / end_grain_part() if end_grain else 1)
    return Holds(
        (least.allowable * count, most.allowable * more), (least.ultimate * count, most.ultimate * more), least,
    )


def end_grain_part() -> float:
    """The lower of the parts that sources leave to a screw in end grain.

    >>> end_grain_part()
    0.6
    """
    return sorted(END_GRAIN)[0]


def thread_in(length: int, passes: int) -> int:
    """The thread that holds, in ticks: what of the screw is past the board it goes through, and two thirds at most.

    >>> thread_in(30, 15), thread_in(30, 5)
    (15, 20)
    """
    parts, of = THREAD_PART
    return narrowest([length - passes, share(length * parts, of, 1)[0]])


def _factor(factor: pint.Quantity, style: Style) -> str:
    if style.unit == "in":
        return f"{factor.magnitude:,.0f}"
    return f"{factor.to('newton / millimeter ** 2').magnitude:.2f}"


def _force(force: pint.Quantity, style: Style) -> str:
    """In pounds; in newtons with the kilograms that weigh as much."""
    said = write_force(force, style.unit)
    return said if style.unit == "in" else f"{force.to('newton').magnitude:.0f} N, the weight of {said}"
