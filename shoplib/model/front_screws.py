"""How many screws hold a front to its box, or to the cleat of a pull-out: by its size and its wood."""

from shoplib.measure import INCH, MM, thickest

_HIGH = {"in": 6 * INCH, "mm": 150 * MM}
_WIDE = {"in": 18 * INCH, "mm": 450 * MM}
_ALONG = {"in": 8 * INCH, "mm": 200 * MM}


def front_screw_count(width: int, height: int, solid: bool, unit: str) -> int:
    """Two for a front that is small; four, in two rows, for one that is high or wide.

    High is 6 in (150 mm) or more, wide 18 in (450 mm) or more. Solid wood grows and shrinks along its height, so it is
    held along one line at half of it: by two, or by three where it is wide. Sizes in ticks. Common practice, no source.

    >>> from shoplib.measure import INCH
    >>> front_screw_count(9 * INCH, 5 * INCH, False, "in"), front_screw_count(22 * INCH, 5 * INCH, False, "in")
    (2, 4)
    >>> front_screw_count(12 * INCH, 7 * INCH, True, "in"), front_screw_count(22 * INCH, 7 * INCH, True, "in")
    (2, 3)
    """
    wide = width >= _WIDE[unit]
    if solid:
        return 3 if wide else 2
    return 4 if wide or height >= _HIGH[unit] else 2


def cleat_screw_count(length: int, unit: str) -> int:
    """Along the cleat behind the front of a pull-out: one for each 8 in (200 mm) begun, two at least.

    Common practice, no source.

    >>> from shoplib.measure import INCH
    >>> cleat_screw_count(12 * INCH, "in"), cleat_screw_count(27 * INCH, "in")
    (2, 4)
    """
    return thickest([2, -(-length // _ALONG[unit])])
