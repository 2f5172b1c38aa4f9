"""Numbers that the exercises of sheets give: a blade, an edge to be trimmed, a sheet as it is sold."""

from shoplib.lessons.exercise import Given
from shoplib.lessons.numbers import Draw


def kerf(draw: Draw) -> Given:
    """`k`, what a usual blade takes."""
    return draw.pick("k", "kerf", inch=("3/32 in", "1/8 in"), mm=("2.4 mm", "3.2 mm"))


def trim(draw: Draw) -> Given:
    """`e`, what comes off an edge as bought, blade included."""
    return draw.pick("e", "trim, each edge, blade included", inch=("1/4 in", "3/8 in", "1/2 in"),
                     mm=("6 mm", "8 mm", "10 mm"))


def band(draw: Draw) -> Given:
    """`b`, a band of solid wood, thick enough to take a knock."""
    return draw.pick("b", "band, thickness", inch=("3/16 in", "1/4 in", "5/16 in"), mm=("5 mm", "6 mm", "8 mm"))
