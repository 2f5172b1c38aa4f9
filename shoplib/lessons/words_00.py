"""The words of the start page, with a sketch of each."""

from shoplib.draw.scene import Leader, Scene, Shape
from shoplib.draw.word_sketch import BOARD, HIGH, WIDE, case_front, cut_board, sketch
from shoplib.lessons.word import Word

_CUT = 2 * BOARD // 3
_SEEN = (0, 0, WIDE, HIGH // 2 + BOARD)


def _front(_unit: str) -> Scene:
    alt = "A case from straight in front: two sides, and between them the bottom and the top."
    return sketch("Front elevation", alt, case_front(named=True))


def _dado(_unit: str) -> Scene:
    left, right = WIDE // 2 - BOARD, WIDE // 2 + BOARD
    entering = Shape(((left, 2 * BOARD - _CUT, right, _SEEN[3]),), "cut front", "board that stands in it", "\\")
    alt = "A board lying flat, cut through: in its upper face is a slot, and the end of a second board stands in it."
    leader = Leader((WIDE // 2, 2 * BOARD - _CUT), "below", "dado")
    return sketch("Dado", alt, (cut_board((left, right), _CUT), entering, leader), _SEEN)


def _rabbet(_unit: str) -> Scene:
    left = WIDE - 2 * BOARD
    entering = Shape(((left, 2 * BOARD - _CUT, WIDE, _SEEN[3]),), "cut front", "board that stands in it", "\\")
    alt = "A board lying flat, cut through: its right end has a step, and the end of a second board stands in it."
    leader = Leader(((left + WIDE) // 2, 2 * BOARD - _CUT), "below", "rabbet")
    return sketch("Rabbet", alt, (cut_board((left, WIDE), _CUT), entering, leader), _SEEN)


WORDS = (
    Word("front elevation", "A drawing of the case seen straight from the front.", _front),
    Word.of_plan("dado", "It runs across the grain.", _dado),
    Word.of_plan("rabbet", sketch=_rabbet),
)
