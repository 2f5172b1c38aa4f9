"""Pocket screws in numbers: the slanting pocket in the face of a board, the hole before it, and which screw it takes.

Places are measured from the end of the board, and up from the face that the pocket opens in.
"""

from dataclasses import dataclass
from typing import NamedTuple

from shoplib.measure import INCH, MM, Style, share, to_step
from shoplib.model.slant import rise_of, run_of, slanted

Spot = tuple[int, int]

LEAN = 15
"""Degrees to the face (from memory; no source was read)."""


@dataclass(frozen=True, slots=True)
class Pocket:
    """What is set: `angle` in degrees, the diameters of pocket and hole, and the `web` before the pocket (ticks)."""

    angle: int
    wide: int
    hole: int
    web: int


class PocketShape(NamedTuple):
    """Its outlines: the pocket's two inner corners and those in the face, the hole's four, half its height there."""

    upper: Spot
    lower: Spot
    out: tuple[Spot, Spot]
    shank: tuple[Spot, Spot, Spot, Spot]
    at_end: int

    @property
    def pocket(self) -> tuple[Spot, Spot, Spot, Spot]:
        """The four corners of the pocket."""
        return (self.upper, self.lower, self.out[1], self.out[0])


def usual_pocket(thickness: int, style: Style) -> Pocket:
    """Pocket 3/8 in (9.5 mm) and hole 5/32 in (4 mm) across, web half the thickness (common practice, no source).

    >>> from shoplib.measure import INCH_STYLE
    >>> usual_pocket(3 * INCH // 4, INCH_STYLE).web == 3 * INCH // 8
    True
    """
    wide, hole = (3 * INCH // 8, 5 * INCH // 32) if style.unit == "in" else (19 * MM // 2, 4 * MM)
    return Pocket(LEAN, wide, hole, to_step(share(thickness, 2, 1)[0], style.step))


def pocket_shape(thickness: int, pocket: Pocket) -> PocketShape:
    """The outlines in a board of this thickness; the axis leaves its end in the middle.

    A pocket is drawn with flat sides, as wide as its drill.

    >>> from shoplib.measure import INCH_STYLE
    >>> shape = pocket_shape(3 * INCH // 4, usual_pocket(3 * INCH // 4, INCH_STYLE))
    >>> [round(x / INCH, 2) for x, _ in shape.out]
    [2.12, 0.68]
    """
    centre = share(thickness, 2, 1)[0]
    angle = pocket.angle
    along, down = slanted(pocket.web, angle)
    up, over = slanted(to_step(pocket.wide, 2) // 2, angle)
    upper, lower = (along + over, centre - down + up), (along - over, centre - down - up)
    out = tuple((corner[0] + run_of(corner[1], angle), 0) for corner in (upper, lower))
    shank_up, shank_over = slanted(to_step(pocket.hole, 2) // 2, angle)
    at_end = shank_up + rise_of(shank_over, angle)
    shank = (
        (0, centre + at_end), (0, centre - at_end),
        (along - shank_over, centre - down - shank_up), (along + shank_over, centre - down + shank_up),
    )
    return PocketShape(upper, lower, out, shank, at_end)


def pocket_places(width: int, style: Style) -> tuple[int, ...]:
    """Where pockets lie across a board: a sixth of the width from its edges, at most 2 in (50 mm), no farther than 8 in
    (200 mm) apart; two at least, so that the board cannot turn (common practice, no source).

    >>> [at // MM for at in pocket_places(600 * MM, Style("mm", MM))]
    [50, 217, 383, 550]
    """
    most, apart = (2 * INCH, 8 * INCH) if style.unit == "in" else (50 * MM, 200 * MM)
    sixth = share(width, 6, style.step)[0] or share(width, 6, 1)[0]
    edge = most if sixth > most else sixth
    between = width - 2 * edge
    parts = share(between + apart - 1, apart, 1)[0] or 1
    inner = [to_step(edge + share(between * at, parts, 1)[0], style.step) for at in range(1, parts)]
    return (edge, *inner, width - edge)


def point_in(length: int, web: int, angle: int) -> int:
    """How deep the point of a screw of this length stands in the other board, square to its face.

    >>> point_in(30 * MM, 10 * MM, 0) == 20 * MM
    True
    """
    return slanted(length - web, angle)[0]
