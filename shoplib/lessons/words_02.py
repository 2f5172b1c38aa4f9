"""The words of carcass sizing, with a sketch of each."""

from itertools import pairwise

from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Scene, Shape, Slanted
from shoplib.draw.word_sketch import BOARD, HIGH, UNIT_NOTE, WIDE, case_front, cut_board, sketch, uprights
from shoplib.lessons.word import Word

_SUM = {"in": (("0.7", "15", "0.7", "15", "0.7"), "32.1"), "mm": (("17.5", "380", "17.5", "380", "17.5"), "812.5")}
"""Side, bay, divider, bay, side, and what they come to."""

_SHEET = {"in": ("3/4 in", "0.703"), "mm": ("18 mm", "17.5")}


def _carcass(_unit: str) -> Scene:
    back, lift = 5 * BOARD, 3 * BOARD
    top = Slanted(((0, HIGH), (WIDE, HIGH), (WIDE + back, HIGH + lift), (back, HIGH + lift)), "case", "top")
    side = Slanted(((WIDE, 0), (WIDE + back, lift), (WIDE + back, HIGH + lift), (WIDE, HIGH)), "case", "side")
    inside = Shape(((BOARD, BOARD, WIDE - BOARD, HIGH - BOARD),), "back", "back")
    named = (Label((BOARD, BOARD, WIDE - BOARD, HIGH - BOARD), ("back, inside",)),)
    alt = "A box that is open at the front: two sides, a bottom, a top and a back; no drawers and no fronts."
    return sketch("Carcass", alt, (top, side, inside, *case_front(), *named), (0, 0, WIDE + back, HIGH + lift))


def _nominal(unit: str) -> Scene:
    name, measured = _SHEET[unit]
    thick = 4 * BOARD
    plies = tuple(Line((0, thick * ply // 5), (WIDE, thick * ply // 5), "thin") for ply in range(1, 5))
    items: tuple[Item, ...] = (
        Shape(((0, 0, WIDE, thick),), "cut case", "edge of the sheet"), *plies,
        Label((0, 0, WIDE, thick), (f"sold as {name}",), plate=True),
        Chain("right", 0, (0, thick), (measured,), WIDE),
    )
    alt = f"The edge of a sheet that is sold as {name}; calipers read {measured} {unit}."
    return sketch("Nominal thickness", alt, items, (0, 0, WIDE, thick), UNIT_NOTE[unit])


def _bay(_unit: str) -> Scene:
    at = uprights(2)
    rooms = [(left + BOARD, BOARD, right, HIGH - BOARD) for left, right in pairwise(at)]
    items = (*case_front(2), *(Label(room, (f"bay {number}",)) for number, room in enumerate(rooms, 1)))
    return sketch("Bay", "A case from the front: two dividers between its sides make three bays.", items)


def _closing_sum(unit: str) -> Scene:
    terms, total = _SUM[unit]
    at = tuple(edge for left in uprights(1) for edge in (left, left + BOARD))
    items = (
        *case_front(1),
        Chain("below", 0, at, terms, 0),
        Chain("below", 1, (0, WIDE), (total,), 0),
    )
    alt = f"A case from the front. Side, bay, divider, bay and side, {' + '.join(terms)}, come to {total}, its width."
    return sketch("Closing sum", alt, items, note=UNIT_NOTE[unit])


def _dry_fit(_unit: str) -> Scene:
    left, right, cut = WIDE // 2 - BOARD, WIDE // 2 + BOARD, 4 * BOARD // 3
    stops = 2 * BOARD - cut // 4
    high = HIGH // 2 + BOARD
    items = (
        cut_board((left, right), cut),
        Shape(((left, 2 * BOARD - cut, right, stops),), "clash", "gap", "x"),
        Shape(((left, stops, right, high),), "cut front", "board that stands in it", "\\"),
        Leader((right, 2 * BOARD - cut // 2), "right", "gap"),
    )
    alt = "One board stands in a dado of another, without glue, and is too short: under its end a gap stays open."
    return sketch("Dry-fit", alt, items, (0, 0, WIDE, high))


WORDS = (
    Word("carcass", "The box of a cabinet without its drawers and fronts; also called the case.", _carcass),
    Word(
        "nominal thickness",
        "The name that a sheet is sold by. What calipers read is mostly less, and stands in the sums.",
        _nominal,
    ),
    Word("bay", "The space between two uprights, side or divider.", _bay),
    Word("closing sum", "Sizes in a row that must add up to the outside, as you check them with a tape.", _closing_sum),
    Word.of_plan("dry-fit", sketch=_dry_fit),
)
