"""The answers and slips of the drawer-front joint again, by hand, in exact fractions of a millimetre.

Lip + slot + tongue = front; side = depth - lip; front = box; dado from the end = slot (follows from the geometry); box
= narrowest opening - 2 x slide (common practice, no source). They know nothing of the model.
"""

from fractions import Fraction

from tests.lessons.answers_04 import bottom_in_grooves

Slips = dict[str, Fraction]

SAID = {
    "j06-side": ("{by} too long", "{by} too short"),
    "j06-tongue": ("{by} too wide", "{by} too narrow"),
    "j06-front": ("{by} too long", "{by} too short"),
    "j06-pims-dado": ("{by} too far in ... strikes the lip", "{by} too near the end ... does not reach the lip"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small: see
`test_effects.py`."""


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j06-side":
            return g["D"] - g["l"], {"whole": g["D"], "butted": g["D"] - g["F"], "two-lips": g["D"] - 2 * g["l"]}
        case "j06-tongue":
            return g["t"] - g["l"] - g["g"], {
                "nominal": g["T"] - g["l"] - g["g"], "no-lip": g["t"] - g["g"], "no-slot": g["t"] - g["l"],
                "rest": g["l"] + g["g"],
            }
        case "j06-front":
            box = min(g["F"], g["R"]) - 2 * g["c"]
            return box, {
                "between": box - 2 * g["s"], "one-slide": box + g["c"], "widest": max(g["F"], g["R"]) - 2 * g["c"],
                "one-side": box - g["s"],
            }
        case "j06-pims-dado":
            assert g["L"] == g["T"] - g["l"] - g["k"]
            return g["t"] - g["l"] - g["k"], {
                "as-listed": g["L"], "lip": g["l"], "tongue": g["k"], "with-tongue": g["t"] - g["l"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j06-box-set"
    wide = g["B"] - 2 * g["s"]
    sizes, slips = bottom_in_grooves(wide, g["L"] - g["F"] - g["s"], g)
    bottom = {name: told for name, told in slips.items() if told[0] == "bottom_width"}
    return {
        "front": g["B"], "side": g["L"] - g["l"], "back": wide + 2 * g["r"], "bottom_width": sizes["bottom_width"],
    }, bottom | {
        "side-whole": ("side", g["L"]),
        "side-butted": ("side", g["L"] - g["F"]),
        "side-two-lips": ("side", g["L"] - 2 * g["l"]),
        "front-between": ("front", wide),
        "front-like-back": ("front", wide + 2 * g["r"]),
        "front-one-side": ("front", g["B"] - g["s"]),
        "back-between": ("back", wide),
        "back-one-rabbet": ("back", wide + g["r"]),
        "back-like-front": ("back", g["B"]),
    }
