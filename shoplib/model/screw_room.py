"""How long a screw may be before its point comes too near the far face."""


def room_for_screw(before: int, into: int, spare: int) -> int:
    """The longest that a screw may be: what it passes through, and what it is driven into, less the spare wood.

    `before` is the board that it passes through first (0 for none), `into` the one that holds its point, both at
    their thinnest readings; `spare` stays in front of the point. All in ticks; the sum is common practice, no source.

    >>> from shoplib.measure import INCH
    >>> room_for_screw(INCH // 2, 3 * INCH // 4, INCH // 8) == 9 * INCH // 8
    True
    """
    return before + into - spare
