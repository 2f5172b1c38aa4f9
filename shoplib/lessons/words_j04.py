"""The words of the dado's own page, with a sketch of each."""

from itertools import accumulate, pairwise

from shoplib.draw.scene import Item, Leader, Line, Scene, Shape
from shoplib.draw.word_sketch import BOARD, HIGH, WIDE, cut_board, sketch
from shoplib.lessons.word import Word

_CUT = 2 * BOARD // 3
_SHAFT = BOARD


def _housing(_unit: str) -> Scene:
    left, right = WIDE // 2 - BOARD, WIDE // 2 + BOARD
    shelf = Shape(((left, 2 * BOARD - _CUT, right, HIGH // 2 + BOARD),), "cut front", "shelf", "\\")
    alt = "A board lying flat, cut through: in its upper face is a channel, and the end of a second board stands in it."
    leader = Leader((WIDE // 2, 2 * BOARD - _CUT), "below", "housing")
    return sketch("Housing", alt, (cut_board((left, right), _CUT), shelf, leader), (0, 0, WIDE, HIGH // 2 + BOARD))


def _stack() -> list[Item]:
    """Two outer cutters on a shaft, seen from its side, with three lower chippers between them."""
    pieces = [("outer cutter", BOARD, HIGH), *[("chipper", BOARD, 3 * HIGH // 4)] * 3, ("outer cutter", BOARD, HIGH)]
    start = (WIDE - sum(wide for _, wide, _ in pieces)) // 2
    at = pairwise(accumulate((wide for _, wide, _ in pieces), initial=start))
    items: list[Item] = [Shape(((0, (HIGH - _SHAFT) // 2, WIDE, (HIGH + _SHAFT) // 2),), "hardware", "arbor")]
    for (left, right), (what, _, tall) in zip(at, pieces, strict=True):
        hatch = "/" if what == "outer cutter" else "\\"
        fill = "cut case" if what == "outer cutter" else "cut box"
        items.append(Shape(((left, (HIGH - tall) // 2, right, (HIGH + tall) // 2),), fill, what, hatch))
    return items


def _chipper(_unit: str) -> Scene:
    alt = "Two tall cutters on a shaft, and between them three that are less tall: the chippers."
    return sketch("Chipper", alt, (*_stack(), Leader((WIDE // 2, 7 * HIGH // 8 - 1), "above", "chipper")))


def _arbor(_unit: str) -> Scene:
    alt = "A stack of cutters from the side; the shaft that runs through all of them is the arbor."
    return sketch("Arbor", alt, (*_stack(), Leader((WIDE - BOARD, HIGH // 2), "right", "arbor")))


def _backer(_unit: str) -> Scene:
    strip, board = (0, HIGH - BOARD, WIDE, HIGH), (0, BOARD, WIDE, HIGH - BOARD)
    left, right = WIDE // 2 - BOARD, WIDE // 2 + BOARD
    items = (
        Shape((board,), "case", "board"), Shape((strip,), "front", "backer"),
        Shape(((left, BOARD, right, HIGH - BOARD // 2),), "air", "dado"),
        Line((WIDE // 2, 2 * BOARD), (WIDE // 2, HIGH - 2 * BOARD), "grain"),
        Leader((WIDE - BOARD, HIGH - BOARD // 2), "right", "backer"),
        Leader((WIDE - BOARD, HIGH // 2), "right", "board"), Leader((right - BOARD // 2, 3 * BOARD), "below", "cut"),
    )
    alt = "A board from above, cut across from one edge to the other; behind the edge where the cut ends lies a strip."
    return sketch("Backer", alt, items, (0, BOARD, WIDE, HIGH))


WORDS = (
    Word("housing", "What a dado is called in the United Kingdom.", _housing),
    Word("chipper", "An inner cutter of a dado set: it clears what stands between the two outer ones.", _chipper),
    Word("arbor", "The shaft of a saw that the blade or the stack of cutters is clamped on.", _arbor),
    Word("backer", "A strip held behind a board where the cutter leaves it, so that its edge does not tear.", _backer),
)
