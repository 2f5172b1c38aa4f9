"""Slips in sums with fractions of an inch, and their twins in millimetres, as rules of the numbers.

The twin of a slip is the same thought in the other unit: what is carried, borrowed, or not lined up. Each takes
ticks and "in" or "mm".
"""

from shoplib.measure import INCH, MM, share, to_step

FRONT = {"in": INCH, "mm": 100 * MM}
"""What stands in front when a number is halved in two parts: whole inches, or hundreds."""


def odd_one_lost(length: int, unit: str) -> int:
    """Half of a length, where half of the odd inch (of the odd hundred) in front is lost.

    >>> odd_one_lost(INCH * 13 + INCH * 5 // 8, "in") == INCH * 6 + INCH * 5 // 16
    True
    """
    front, rest = divmod(length, FRONT[unit])
    return front // 2 * FRONT[unit] + share(rest, 2, 1)[0]


def rest_not_halved(length: int, unit: str) -> int:
    """Half of what stands in front, and all of what is behind.

    >>> rest_not_halved(737 * MM, "mm") == 387 * MM
    True
    """
    rest = length % FRONT[unit]
    return share(length - rest, 2, 1)[0] + rest


def rounded_down(length: int, unit: str) -> int:
    """Half of an odd top over the same bottom, rounded down: half of 7/8 as 3/8; half of 7 mm as 3 mm.

    >>> rounded_down(INCH * 7 // 8, "in") == INCH * 3 // 8
    True
    """
    if unit == "mm":
        return to_step(share(length, 2, 1)[0], MM, "down")
    rest = length % INCH
    return share(length - rest, 2, 1)[0] + to_step(share(rest, 2, 1)[0], INCH // 8, "down")


def each_alone(one: int, other: int, unit: str) -> int:
    """Tops added, and bottoms added: 3/8 + 5/16 as 8/24; in millimetres the half is dropped.

    `one` has eighths (or half a millimetre), `other` sixteenths (or none).

    >>> each_alone(INCH * 3 // 8, INCH * 5 // 16, "in") == INCH // 3
    True
    """
    if unit == "mm":
        return to_step(one, MM, "down") + other
    eighths, sixteenths = _tops(one, other)
    return _whole(one) + _whole(other) + share(INCH * (eighths + sixteenths), 24, 1)[0]


def places_mixed(one: int, other: int, unit: str) -> int:
    """The unlike bottom ignored: 3/8 + 5/16 as 8/16; in millimetres tenths under whole ones: 486.5 + 327 as 519.2.

    >>> places_mixed(INCH * 3 // 8, INCH * 5 // 16, "in") == INCH // 2
    True
    >>> places_mixed(4865 * MM // 10, 327 * MM, "mm") == 5192 * MM // 10
    True
    """
    if unit == "mm":
        return one + share(other, 10, 1)[0]
    eighths, sixteenths = _tops(one, other)
    return _whole(one) + _whole(other) + share(INCH, 16, 1)[0] * (eighths + sixteenths)


def carry_dropped(one: int, other: int, unit: str) -> int:
    """The sum without what is carried over: the inch that two fractions make, or the ten of the last figures.

    >>> carry_dropped(INCH * 7 // 8, INCH * 5 // 16, "in") == INCH * 3 // 16
    True
    """
    whole = INCH if unit == "in" else 10 * MM
    return one + other - (whole if one % whole + other % whole >= whole else 0)


def borrowed_wrong(one: int, other: int, unit: str) -> int:
    """One less the other, where an inch is borrowed as ten sixteenths (or a ten is not paid back).

    >>> borrowed_wrong(INCH * 3 + INCH // 16, INCH * 7 // 8, "in") == INCH * 2 - INCH * 3 // 16
    True
    """
    whole, off = (INCH, -INCH * 6 // 16) if unit == "in" else (10 * MM, 10 * MM)
    return one - other + (off if other % whole > one % whole else 0)


def _whole(length: int) -> int:
    return length - length % INCH


def _tops(one: int, other: int) -> tuple[int, int]:
    return one % INCH * 8 // INCH, other % INCH * 16 // INCH
