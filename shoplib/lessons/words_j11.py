"""The words of the dovetail's own page, with a sketch of each that a picture shows better."""

from shoplib.draw.scene import Leader, Line, Region, Scene, Shape
from shoplib.draw.word_sketch import BOARD, HIGH, WIDE, sketch
from shoplib.lessons.word import Word

_BASE, _LEAN = HIGH // 3, BOARD // 3
"""How high the baseline lies on the standing board of these sketches, and how far a flank leans up to its end."""
_TAILS = ((BOARD, WIDE // 2 - BOARD // 2), (WIDE // 2 + BOARD // 2, WIDE - BOARD))
"""From where to where each tail reaches at its end."""


def _tails(named: str = "", at: tuple[int, int] = (0, 0), side: str = "right", *, pins: bool = True) -> tuple:
    """A board of two tails upright, its end up, seen on its face; between and beside them the pins that go in."""
    items = [Shape(((0, 0, WIDE, _BASE),), "case", "tail board")]
    for left, right in _TAILS:
        outline = ((left + _LEAN, _BASE), (right - _LEAN, _BASE), (right, HIGH), (left, HIGH))
        items.append(Region((outline,), "case", "tail"))
    if pins:
        edges = [0, *(place for tail in _TAILS for place in tail), WIDE]
        for number in range(0, len(edges), 2):
            left, right = edges[number], edges[number + 1]
            low, high = left - _LEAN * (left > 0), right + _LEAN * (right < WIDE)
            items.append(Region((((low, _BASE), (high, _BASE), (right, HIGH), (left, HIGH)),), "cut box", "pin",
                                dotted=True))
    return (*items, Leader(at, side, named)) if named else tuple(items)


def _tail(_unit: str) -> Scene:
    middle = sum(_TAILS[1]) // 2
    alt = "The end of a board with two tails, wider at their end than at the bottom; between them end grain of pins."
    return sketch("Tail", alt, _tails("tail", (middle, 2 * HIGH // 3), "above"))


def _pin(_unit: str) -> Scene:
    alt = "Between two tails the end of a pin, wide at the bottom and narrow at the top."
    return sketch("Pin", alt, _tails("pin", (WIDE // 2, 2 * HIGH // 3), "above"))


def _half_pin(_unit: str) -> Scene:
    alt = "At the edge of the board a half pin: its outside is straight, and only the side to the tail leans."
    return sketch("Half pin", alt, _tails("half pin", (WIDE - BOARD // 2, HIGH // 2), "right"))


def _baseline(_unit: str) -> Scene:
    alt = "A board with two tails; the line across it, at which they begin, is the baseline."
    line = Line((0, _BASE), (WIDE, _BASE), "edge")
    return sketch("Baseline", alt, (*_tails(pins=False), line, Leader((WIDE, _BASE), "right", "baseline")))


WORDS = (
    Word("tail", "A wedge on the end of a board, widest at the end itself.", _tail),
    Word("pin", "What stands between two tails: it belongs to the other board, a wedge seen on its end.", _pin),
    Word("half pin", "The pin at the edge of a board, with a slope on one side only.", _half_pin),
    Word("baseline", "The line at which tails and pins begin, gauged round the board.", _baseline),
    Word("sliding bevel", "A square whose blade can be set to any slope, and holds it."),
)
