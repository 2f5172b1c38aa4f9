"""The answers and slips of the finger joint again, by hand, in exact fractions of a millimetre.

Socket = thickest mate + what is planed off; finger = width / number; height = the largest odd number of fingers; an
error comes once for each finger (follows from the geometry); boards are cut to the full outside size (common practice,
no source). They know nothing of the model.
"""

from fractions import Fraction
from math import floor

from tests.lessons.answers_04 import bottom_in_grooves

Slips = dict[str, Fraction]

SAID = {
    "j07-socket": ("{by} too deep", "{by} too shallow"),
    "j07-closes": ("{by} too wide", "{by} too narrow"),
    "j07-height": ("{by} higher than", "{by} lower than"),
    "j07-creep": ("{by} more than there is", "{by} longer than you expect"),
    "j07-yaras-front": ("{by} too long", "{by} too short"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small: see
`test_effects.py`."""


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j07-socket":
            return g["thick"] + g["p"], {
                "flush": g["thick"], "mean": g["t"] + g["p"], "nominal": g["T"] + g["p"],
                "taken-off": g["thick"] - g["p"],
            }
        case "j07-closes":
            return g["w"] / g["k"], {
                "joints": g["w"] / (g["k"] - 1), "edges": g["w"] / (g["k"] + 1), "one-board": 2 * g["w"] / (g["k"] + 1),
            }
        case "j07-height":
            count = floor(g["h"] / g["p"])
            odd = count if count % 2 else count - 1
            return odd * g["p"], {"as-high": g["h"], "even": (odd + 1) * g["p"], "over": (odd + 2) * g["p"]}
        case "j07-creep":
            count = g["w"] / g["p"]
            assert count.denominator == 1 and count % 2
            return count * g["x"], {
                "once": g["x"], "one-board": (count + 1) / 2 * g["x"], "one-more": (count + 1) * g["x"],
            }
        case "j07-yaras-front":
            assert g["L"] == g["W"] - 2 * g["t"]
            return g["W"] + 2 * g["p"], {"as-listed": g["L"], "flush": g["W"], "one-end": g["W"] - g["t"] + g["p"]}
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j07-box-set"
    wide, along = g["B"] - 2 * g["s"], g["L"] - 2 * g["s"]
    sizes, slips = bottom_in_grooves(wide, along, g)
    return sizes | {"side": g["L"], "front": g["B"]}, slips | {
        "side-between": ("side", along), "side-one-end": ("side", g["L"] - g["s"]),
        "front-between": ("front", wide), "front-one-end": ("front", g["B"] - g["s"]),
    }
