"""The words of the page from the cut list to the yard, with a sketch of those that can be drawn."""

from shoplib.draw.scene import Item, Label, Line, Scene, Shape
from shoplib.lessons.word import Word
from shoplib.measure import MM

_NOTE = "A sketch without sizes; the arrows show the grain."
_LONG, _WIDE, _CUT = 1200 * MM, 600 * MM, 12 * MM


def _sheet(title: str, alt: str, *items: Item) -> Scene:
    grain = Line((_LONG // 12, _WIDE // 12), (_LONG * 5 // 12, _WIDE // 12), "grain")
    return Scene(title, _NOTE, alt, (0, 0, _LONG, _WIDE), (*items, grain))


def _rip(_unit: str) -> Scene:
    at = _WIDE * 2 // 3
    return _sheet(
        "Rip", "A sheet seen flat, parted by a cut from end to end: the cut runs along the grain.",
        Shape(((0, 0, _LONG, at),), "case", "the rest"), Shape(((0, at + _CUT, _LONG, _WIDE),), "front", "strip"),
        Label((0, at + _CUT, _LONG, _WIDE), ("a strip, ripped off",)),
    )


def _crosscut(_unit: str) -> Scene:
    at = _LONG * 2 // 3
    return _sheet(
        "Crosscut", "A sheet seen flat, parted by a cut from edge to edge: the cut runs across the grain.",
        Shape(((0, 0, at, _WIDE),), "case", "the rest"), Shape(((at + _CUT, 0, _LONG, _WIDE),), "front", "piece"),
        Label((at + _CUT, 0, _LONG, _WIDE), ("a piece,\ncrosscut",)),
    )


def _trim(_unit: str) -> Scene:
    by = 40 * MM
    inner = (by, by, _LONG - by, _WIDE - by)
    ends = ((0, by, by, _WIDE - by), (_LONG - by, by, _LONG, _WIDE - by))
    rim = ((0, 0, _LONG, by), (0, _WIDE - by, _LONG, _WIDE), *ends)
    return Scene(
        "Trim", _NOTE, "A sheet seen flat with a narrow hatched rim all round, which is cut off before anything else.",
        (0, 0, _LONG, _WIDE),
        (Shape(rim, "back", "trim", "/"), Shape((inner,), "case", "what is used"), Label(inner, ("what is used",)),
         Line((_LONG // 12, _WIDE // 6), (_LONG * 5 // 12, _WIDE // 6), "grain")),
    )


WORDS = (
    Word("cut list", "Every board of a job with its count, its size at the saw, its sheet, and how its grain runs."),
    Word.of_plan("band"),
    Word.of_plan("rip", "It makes strips.", _rip),
    Word.of_plan("crosscut", "It brings strips to length.", _crosscut),
    Word("trim", "What comes off the bought edges of a sheet first of all, the kerf of that cut included.", _trim),
    Word("rough size", "The size at which a solid part is sawn: finished size, and what squaring and planing take."),
    Word("board foot", "A measure of solid wood: 144 cubic inches, such as a board a foot square and an inch thick."),
)
