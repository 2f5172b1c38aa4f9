"""Lines that lean: how far they go along and across, in whole ticks."""

from math import cos, radians, sin

from shoplib.measure import to_step

_BILLION = 10**9


def slanted(length: int, degrees: int) -> tuple[int, int]:
    """How far a line of this length goes along and across, to the nearest tick, where it leans by so many degrees.

    >>> slanted(100_000, 30)
    (86603, 50000)
    """
    lean = radians(degrees)
    return tuple(to_step(length * round(part * _BILLION), _BILLION) // _BILLION for part in (cos(lean), sin(lean)))


def run_of(rise: int, degrees: int) -> int:
    """How far along a leaning line goes while it rises so much.

    >>> run_of(50_000, 30)
    86603
    """
    along, up = slanted(_BILLION, degrees)
    return to_step(rise * along, up) // up


def rise_of(run: int, degrees: int) -> int:
    """How far a leaning line rises while it goes so far along.

    >>> rise_of(86603, 30)
    50000
    """
    along, up = slanted(_BILLION, degrees)
    return to_step(run * up, along) // along


def line_of(rise: int, degrees: int) -> int:
    """How long a leaning line is that rises so much.

    >>> line_of(50_000, 30)
    100000
    """
    up = slanted(_BILLION, degrees)[1]
    return to_step(rise * _BILLION, up) // up
