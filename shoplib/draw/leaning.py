"""An opening that is out of square, seen from above, with its two diagonals; the lean is drawn larger than it is."""

from shoplib.draw.chains import bare, unit_note
from shoplib.draw.scene import Chain, Item, Label, Line, Scene, Slanted
from shoplib.lists.writing import Writing
from shoplib.measure import Style, write_brief
from shoplib.model.drawer_fit import out_of_square

_LEAN = 8
"""The lean is drawn as the width divided by this."""


def leaning_opening(width: int, depth: int, longer: int, shorter: int, style: Style) -> Scene:
    """Sides of equal distance that lean to the right, and a square box between them; lengths in ticks.

    `longer` and `shorter` are the diagonals as measured; how far the sides lean follows from them.
    """
    lean, shown, board = out_of_square(longer, shorter, width), width // _LEAN, width // 22
    left = ((-board, 0), (0, 0), (shown, depth), (shown - board, depth))
    right = tuple((x + width + board, y) for x, y in left)
    back = ((shown, depth), (shown + width, depth), (shown + width, depth + board // 2), (shown, depth + board // 2))
    items: list[Item] = [
        Slanted(left, "cut case", "left side", "/"),
        Slanted(right, "cut case", "right side", "/"),
        Slanted(back, "cut back", "back"),
        Line((0, 0), (width + shown, depth), "hidden"),
        Line((width, 0), (shown, depth), "centre"),
        _at(width * 3 // 4 + shown * 3 // 4, depth * 3 // 4, width, bare(longer, style)),
        _at(width * 3 // 4 + shown // 4, depth // 4, width, bare(shorter, style)),
        Chain("below", 0, (0, width), (bare(width, style),), sizes=(width,)),
        Line((0, 0), (0, depth + board // 2), "thin"),
        Chain("above", 0, (0, shown), (Writing(style, units=False).setting(lean),), sizes=(lean,)),
    ]
    return Scene(
        "Out of square, though as wide at the back as at the front",
        unit_note(style, "Seen from above, front at the foot. The lean is drawn larger than it is."),
        f"An opening from above. Front and back measure {write_brief(width, style)}, but the diagonals "
        f"{write_brief(longer, style)} and {write_brief(shorter, style)}: both sides lean to the right by "
        f"{write_brief(lean, style, decimal=lean % style.step != 0)}. The lean is drawn larger than it is.",
        (-board, 0, width + shown + board, depth + board // 2), tuple(items),
    )


def _at(x: int, y: int, width: int, text: str) -> Label:
    half = width // 4
    return Label((x - half, y - half // 2, x + half, y + half // 2), (text,), plate=True)
