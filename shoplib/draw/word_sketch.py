"""Pieces that small sketches of a word are put together from: a case from the front, a corner cut through."""

from shoplib.draw.scene import Item, Label, Rect, Scene, Shape
from shoplib.measure import MM

NO_SIZES = "A sketch, not to scale and without sizes."

UNIT_NOTE = {"in": "Sizes in inches. What is thin is drawn thicker than it is.",
             "mm": "Sizes in millimetres. What is thin is drawn thicker than it is."}

WIDE, HIGH, BOARD = 200 * MM, 120 * MM, 16 * MM
"""The case of the sketches, and its boards, in ticks of the drawing."""


def sketch(
    title: str, alt: str, items: tuple[Item, ...], bounds: Rect = (0, 0, WIDE, HIGH), note: str = NO_SIZES
) -> Scene:
    """A scene that shows one word.

    >>> sketch("Divider", "A board that parts bays.", case_front(1)).note == NO_SIZES
    True
    """
    return Scene(title, note, alt, bounds, items)


def case_front(dividers: int = 0, named: bool = False) -> tuple[Item, ...]:
    """Two sides with bottom and top between them, from the front; dividers make equal bays. `named` writes names.

    >>> [item.name for item in case_front(1)]
    ['side', 'side', 'bottom', 'top', 'divider']
    """
    boards: list[tuple[Rect, str]] = [
        ((0, 0, BOARD, HIGH), "side"),
        ((WIDE - BOARD, 0, WIDE, HIGH), "side"),
        ((BOARD, 0, WIDE - BOARD, BOARD), "bottom"),
        ((BOARD, HIGH - BOARD, WIDE - BOARD, HIGH), "top"),
    ]
    boards += [((left, BOARD, left + BOARD, HIGH - BOARD), "divider") for left in uprights(dividers)[1:-1]]
    items: list[Item] = [Shape((rect,), "case", name) for rect, name in boards]
    if named:
        items += [Label(rect, (name,)) for rect, name in boards]
    return tuple(items)


def uprights(dividers: int) -> list[int]:
    """Where the left faces of side, dividers and side stand.

    >>> [100 * left // (WIDE - BOARD) for left in uprights(3)]  # of the width, in hundredths
    [0, 25, 50, 75, 100]
    """
    step = (WIDE - BOARD) // (dividers + 1)
    return [step * number for number in range(dividers + 1)] + [WIDE - BOARD]


def cut_board(slot: tuple[int, int], depth: int) -> Shape:
    """A board lying flat, cut through to look at; in its upper face a cut from `slot[0]` to `slot[1]`, `depth` deep.

    >>> len(cut_board((0, BOARD), BOARD).rects), len(cut_board((BOARD, 2 * BOARD), BOARD).rects)  # at the end, within
    (2, 3)
    """
    left, right = slot
    thick = 2 * BOARD
    whole = [(0, 0, WIDE, thick - depth), (0, thick - depth, left, thick), (right, thick - depth, WIDE, thick)]
    return Shape(tuple(rect for rect in whole if rect[0] < rect[2]), "cut case", "board cut into", "/")
