"""The answers and slips of groove and tongue again, by hand, in exact fractions of a millimetre.

Upper wall = lower wall + width; width = thickest reading + fit; dado for a tongue from the end = board - tongue; gain =
depth - what stays free (common practice, no source). They know nothing of the model.
"""

from fractions import Fraction

from tests.lessons.answers_04 import bottom_in_grooves

Slips = dict[str, Fraction]

SAID = {
    "j05-upper": ("{by} too wide", "{by} too narrow"),
    "j05-width": ("{by} too wide", "{by} too narrow"),
    "j05-place": ("{by} too far in ... side stands proud", "{by} too near the end ... top stands proud"),
    "j05-bottom": ("{by} too wide", "{by} too narrow"),
    "j05-marits-top": ("{by} too long", "{by} too short"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small: see
`test_effects.py`."""


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j05-upper":
            return g["u"] + g["w"], {
                "lower": g["u"], "middle": g["u"] + g["w"] / 2, "wrong-edge": g["H"] - g["u"] - g["w"],
            }
        case "j05-width":
            return g["thick"] + g["f"], {
                "nominal": g["T"], "mean": g["t"] + g["f"], "no-fit": g["thick"], "thinnest": g["thin"] + g["f"],
            }
        case "j05-place":
            return g["t"] - g["k"], {
                "whole": g["t"], "tongue": g["k"], "nominal": g["T"] - g["k"], "middle": (g["t"] - g["k"]) / 2,
            }
        case "j05-bottom":
            return g["I"] + 2 * (g["q"] - g["m"]), {
                "no-room": g["I"] + 2 * g["q"], "one-groove": g["I"] + g["q"] - g["m"], "no-groove": g["I"],
                "room-added": g["I"] + 2 * (g["q"] + g["m"]),
            }
        case "j05-marits-top":
            assert g["L"] == g["I"] + 2 * (g["d"] + g["e"])
            return g["I"] + 2 * (g["d"] - g["e"]), {
                "as-listed": g["L"], "no-gap": g["I"] + 2 * g["d"], "one-tongue": g["I"] + g["d"] - g["e"],
                "shoulders": g["I"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j05-box-set"
    wide, along, tongue = g["B"] - 2 * g["s"], g["L"] - 2 * g["s"], g["d"] - g["g"]
    sizes, slips = bottom_in_grooves(wide, along, g)
    return sizes | {"side": g["L"], "front": wide + 2 * tongue}, slips | {
        "side-between": ("side", along),
        "side-tongues": ("side", along + 2 * tongue),
        "front-outside": ("front", g["B"]),
        "front-shoulders": ("front", wide),
        "front-one-tongue": ("front", wide + tongue),
        "front-no-gap": ("front", wide + 2 * g["d"]),
    }
