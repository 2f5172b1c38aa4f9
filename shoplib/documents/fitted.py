"""A drawing on a page: at the largest usual scale with which it fits its room, dimensions included."""

from dataclasses import dataclass

from shoplib.draw.lettering import wrapped
from shoplib.draw.pen import Drawn, draw_to_scale
from shoplib.draw.scene import Scene
from shoplib.measure import MM

Room = tuple[float, float]
"""Width and height in mm that a drawing may take."""

RATIOS = {
    "in": (1, 2, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96, 192),
    "mm": (1, 2, 5, 10, 15, 20, 25, 50, 75, 100, 200),
}
"""Scales to choose from: those of the inch rule and of the metric scale rule (common practice, no source)."""

LETTER, LINE = 3.0, 3.8
"""Letter size and line height of a page's words in mm (8.5 points)."""
_TITLE = 18.0
"""What the title of a drawing and the space round it take, in mm."""
_NO_SCALE = "Not to scale."
_LEAST_BOARD, _MOST_BOARD = 70.0, 120.0
"""A drawing that would get less height than the first (mm), with another on its page, gets a page to itself
and as much as the second."""


@dataclass(frozen=True, slots=True)
class Fitted:
    """SVG text, the width and the height in mm that it is printed with, and its scale: in words, and as 1 to `ratio`.

    Where no scale fits, it is smaller than its `ratio`.
    """

    svg: str
    width: float
    height: float
    scale: str
    ratio: int

    @property
    def to_scale(self) -> bool:
        """Whether a scale did fit."""
        return self.scale != _NO_SCALE


def fitted(scene: Scene, room: Room, unit: str) -> Fitted:
    """The drawing for a room. `unit` chooses the scales; one that no scale fits is printed smaller, and says so.

    >>> from shoplib.draw.scene import Shape
    >>> board = (0, 0, 600 * MM, 300 * MM)
    >>> fitted(Scene("Shelf", "mm", "A shelf.", board, (Shape((board,), "case"),)), (180.0, 90.0), "mm").scale
    'Scale 1 : 5 when printed at full size.'
    """
    drawn, ratio = _to_fit(scene, room, unit)
    width, height = drawn.size_mm
    shrink = min(1.0, room[0] / width, room[1] / height)
    scale = f"Scale 1 : {ratio} when printed at full size." if shrink == 1.0 else _NO_SCALE
    return Fitted(drawn.svg, round(width * shrink, 4), round(height * shrink, 4), scale, ratio)


def _to_fit(scene: Scene, room: Room, unit: str) -> tuple[Drawn, int]:
    """At the largest scale that fits, dimensions included; where none does, at the one nearest to fitting."""
    tried = []
    for ratio in RATIOS[unit]:
        if max(scene.size[0] / room[0], scene.size[1] / room[1]) > MM * ratio:
            continue
        drawn = draw_to_scale(scene, ratio)
        width, height = drawn.size_mm
        if width <= room[0] and height <= room[1]:
            return drawn, ratio
        tried.append((max(width / room[0], height / room[1]), ratio, drawn))
    _, ratio, drawn = min(tried, key=lambda t: t[:2])
    return drawn, ratio


def words_height(scene: Scene, width: float) -> float:
    """What title, note, alarms and legend of the drawing take of a page, in mm; alarms stand in heavy, wider letters.

    >>> words_height(Scene("Shelf", "All sizes in inches.", "A shelf.", (0, 0, 9, 9)), 180.0)
    21.8
    """
    said = [scene.noted, *(alarm for alarm in scene.alarms for _ in "ab"), *scene.legend]
    return LINE * sum(len(wrapped(text, LETTER, width)) for text in said) + _TITLE


def half_page(scene: Scene, room: Room) -> float:
    """Height in mm for a drawing, so that two of them and their words stand on a page, where they can.

    Where half a page leaves a drawing too little height, it gets a page to itself, and up to a certain height of it.

    >>> shelf = Scene("Shelf", "All sizes in inches.", "A shelf.", (0, 0, 9, 9))
    >>> half_page(shelf, (180.0, 240.0)), half_page(shelf, (180.0, 160.0))
    (98.2, 120.0)
    """
    words = words_height(scene, room[0])
    half = room[1] / 2 - words
    return half if half >= _LEAST_BOARD else min(_MOST_BOARD, room[1] - words)
