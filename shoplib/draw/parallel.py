"""Directions to look from in a parallel view, and where a point of the shop comes to lie in the picture.

The eye is far away, turned 37 degrees from the front (or the back) to one side and 28 degrees above (or below): 3-4-5
and 8-15-17 are whole triangles, so a corner in whole ticks has a place in whole parts of a tick, and edges that meet
in the shop meet in the picture exactly.
"""

from dataclasses import dataclass
from functools import cached_property
from itertools import product

import numpy as np

PARTS = 85
"""The picture is reckoned in 85ths of a tick."""


@dataclass(frozen=True)
class Direction:
    """From where one looks: `front` or behind, from the `right` or the left, from `above` or below.

    >>> FRONT_RIGHT_ABOVE.words
    'the front, the right and above'
    """

    front: bool = True
    right: bool = True
    above: bool = True

    @property
    def words(self) -> str:
        """For a sentence that begins with "seen from"."""
        return (f"{'the front' if self.front else 'behind'}, {'the right' if self.right else 'the left'} "
                f"and {'above' if self.above else 'below'}")

    @cached_property
    def eye(self) -> np.ndarray:
        """The way to the eye, as long as 1.

        >>> FRONT_RIGHT_ABOVE.eye.round(4).tolist()
        [0.5294, -0.7059, 0.4706]
        """
        return np.array([9 if self.right else -9, -12 if self.front else 12, 8 if self.above else -8]) / 17

    @cached_property
    def matrix(self) -> np.ndarray:
        """Rows that give the place to the right and up, in `PARTS` of a tick, of a point in ticks.

        >>> FRONT_RIGHT_ABOVE.matrix.tolist()
        [[68.0, 51.0, 0.0], [-24.0, 32.0, 75.0]]
        """
        x, y, z = (self.eye * 17).round()
        return np.array([[-y / 15 * PARTS, x / 15 * PARTS, 0], [-x * z / 3, -y * z / 3, 75]])

    def place(self, point: tuple[int, int, int]) -> tuple[int, int]:
        """Where a point of the shop comes to lie, in whole ticks of the picture.

        >>> FRONT_RIGHT_ABOVE.place((85, 0, 0))
        (68, -24)
        """
        right, up = self.matrix @ np.array(point, float) / PARTS
        return round(right), round(up)


FRONT_RIGHT_ABOVE = Direction()

DIRECTIONS = {
    f"from the {'front' if front else 'back'}, {'right' if right else 'left'}, {'above' if above else 'below'}":
    Direction(front, right, above)
    for front, above, right in product((True, False), repeat=3)
}
"""All eight, by what a list of choices says."""
