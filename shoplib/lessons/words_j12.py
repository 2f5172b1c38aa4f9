"""The words of the splined mitre's own page, with a sketch of each."""

from shoplib.draw.scene import Leader, Region, Scene
from shoplib.draw.word_sketch import BOARD, HIGH, WIDE, sketch
from shoplib.lessons.word import Word

_THICK = 5 * BOARD // 2
_HIGH = HIGH + BOARD
_SEEN = (0, 0, WIDE, _HIGH)


def _corner(*more) -> tuple:
    """Two boards that meet in a mitre, cut through: one lies, one stands at the left."""
    lying = ((0, 0), (WIDE, 0), (WIDE, _THICK), (_THICK, _THICK))
    standing = ((0, 0), (_THICK, _THICK), (_THICK, _HIGH), (0, _HIGH))
    return (Region((lying,), "cut box", "lying board", hatch="\\"),
            Region((standing,), "cut case", "standing board", hatch="/"), *more)


def _mitre(_unit: str) -> Scene:
    alt = "Two boards at a corner, cut through: they meet along a slant from the outside corner to the inside one."
    return sketch("Mitre", alt, _corner(Leader((_THICK // 2, _THICK // 2), "left", "mitre")), _SEEN)


def _heel(_unit: str) -> Scene:
    alt = "Two mitred boards at a corner; the heel is the end of the slant at the inside of the corner."
    return sketch("Heel", alt, _corner(Leader((_THICK, _THICK), "left", "heel")), _SEEN)


def _toe(_unit: str) -> Scene:
    alt = "Two mitred boards at a corner; the toe is the sharp end of the slant at the outside."
    return sketch("Toe", alt, _corner(Leader((0, 0), "below", "toe")), _SEEN)


def _key(_unit: str) -> Scene:
    long = 8 * _THICK // 5
    slip = Region((((0, 0), (long, 0), (0, long)),), "cut front", "key", hatch="/")
    alt = "Two mitred boards at a corner, cut where a kerf runs across it: a three-cornered slip fills the kerf."
    return sketch("Key", alt, _corner(slip, Leader((long // 3, long // 3), "left", "key")), _SEEN)


WORDS = (
    Word("mitre", "A corner whose two boards are both cut at half its angle and meet along the slant.", _mitre),
    Word("heel", "The end of a mitre at the inside of the corner.", _heel),
    Word("toe", "The sharp end of a mitre at the outside of the corner, also called its long point.", _toe),
    Word("key", "A thin slip let into a kerf across a mitre from outside, when its glue has set.", _key),
)
