"""The sets of sizes again, by hand, in exact fractions of a millimetre; they know nothing of the project's model.

Board between two others = outside - 2 x sheet + 2 x depth of the joint (common practice, no source).
"""

from fractions import Fraction

from tests.lessons import measuring_by_hand
from tests.lessons.answers import of_joint
from tests.lessons.answers_04 import box_boards
from tests.lessons.answers_05 import bay_fronts
from tests.lessons.answers_06 import spacer_set
from tests.lessons.answers_07 import parts_case
from tests.lessons.answers_08 import whole_list


def set_by_hand(
    exercise: str, g: dict[str, Fraction]
) -> tuple[dict[str, Fraction], dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to, in millimetres."""
    if exercise == "01-one-strip":
        return measuring_by_hand.set_by_hand(g)
    if exercise == "02-whole-case":
        wide, high = g["W"] - 2 * g["t"], g["H"] - 2 * g["t"]
        return {
            "bottom": wide + 2 * g["d"], "side": g["H"],
            "back_width": wide + 2 * g["b"], "back_height": high + 2 * g["b"],
        }, {
            "bottom-nominal": ("bottom", g["W"] - 2 * g["T"] + 2 * g["d"]),
            "bottom-no-joint": ("bottom", wide),
            "bottom-one-joint": ("bottom", wide + g["d"]),
            "bottom-outside": ("bottom", g["W"]),
            "side-between": ("side", high),
            "side-like-bottom": ("side", high + 2 * g["d"]),
            "back-outside": ("back_width", g["W"]),
            "back-inside": ("back_width", wide),
            "back-one-rabbet": ("back_width", wide + g["b"]),
            "back-full-height": ("back_height", g["H"]),
            "back-inside-height": ("back_height", high),
            "back-one-rabbet-high": ("back_height", high + g["b"]),
        }
    if exercise == "03-tongue-set":
        wide = g["W"] - 2 * g["t"]
        return {
            "bottom": wide + 2 * (g["d"] - g["e"]), "shelf": wide + 2 * g["k"], "back": wide + 2 * g["b"],
        }, {
            "bottom-nominal": ("bottom", g["W"] - 2 * g["T"] + 2 * (g["d"] - g["e"])),
            "bottom-gap-forgotten": ("bottom", wide + 2 * g["d"]),
            "bottom-no-joint": ("bottom", wide),
            "bottom-one-joint": ("bottom", wide + g["d"] - g["e"]),
            "shelf-no-joint": ("shelf", wide),
            "shelf-one-joint": ("shelf", wide + g["k"]),
            "shelf-like-bottom": ("shelf", wide + 2 * (g["d"] - g["e"])),
            "back-outside": ("back", g["W"]),
            "back-inside": ("back", wide),
            "back-one-groove": ("back", wide + g["b"]),
        }
    if exercise == "04-box-boards":
        return box_boards(g)
    if exercise == "05-bay-fronts":
        return bay_fronts(g)
    if exercise == "06-spacer-set":
        return spacer_set(g)
    if exercise == "07-parts-case":
        return parts_case(g)
    if exercise == "08-whole-list":
        return whole_list(g)
    if exercise.startswith("j"):
        return of_joint(exercise).set_by_hand(exercise, g)
    raise AssertionError(f"no sums by hand for {exercise}")
