"""The answers and slips of the page on pocket screws again, by hand, in exact fractions of a millimetre.

Reach = screw - web; collar = guide + way from face to end - web; longest screw = web + side - what is to stay (common
practice, no source). They know nothing of the model; `_run` holds what is given of the drill's way to the sine of 15
degrees.
"""

from fractions import Fraction
from math import radians, sin

Slips = dict[str, Fraction]

SAID = {
    "j02-rail": ("{by} too long", "{by} too short"),
    "j02-reach": ("{by} of hold that is not there", "{by} more wood than you count on"),
    "j02-collar": ("{by} too deep", "{by} too early"),
    "j02-jonas-screws": ("{by} nearer to the face", "up to {by} longer"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small: see
`test_effects.py`."""


def _run(given: Fraction, thickness: Fraction) -> bool:
    """Whether half the thickness over the sine of 15 degrees is what is given, to the last digit of a caliper."""
    return abs(float(given) - float(thickness) / 2 / sin(radians(15))) <= 0.0128


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j02-rail":
            return g["I"], {
                "outside": g["I"] + 2 * g["w"], "one-stile": g["I"] + g["w"], "taken-off": g["I"] - 2 * g["w"],
            }
        case "j02-reach":
            return g["L"] - g["b"], {"whole": g["L"], "board": g["L"] - g["t"], "web": g["b"]}
        case "j02-collar":
            assert _run(g["A"], g["T"]) and _run(g["a"], g["t"])
            pocket = g["a"] - g["b"]
            return g["k"] + pocket, {
                "nominal": g["k"] + g["A"] - g["b"], "no-web": g["k"] + g["a"], "no-guide": pocket,
                "added": g["k"] + g["a"] + g["b"],
            }
        case "j02-jonas-screws":
            assert g["L"] == g["t"] + g["s"] - g["e"]
            return g["b"] + g["s"] - g["e"], {
                "as-listed": g["L"], "through": g["b"] + g["s"], "no-web": g["s"] - g["e"],
                "nominal": g["b"] + g["T"] - g["e"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j02-stand-set"
    between = g["W"] - 2 * g["t"]
    return {"top": g["W"], "sides": g["H"] - g["t"], "bottom": between}, {
        "top-between": ("top", between),
        "top-one": ("top", g["W"] - g["t"]),
        "sides-full": ("sides", g["H"]),
        "sides-both": ("sides", g["H"] - 2 * g["t"]),
        "bottom-nominal": ("bottom", g["W"] - 2 * g["T"]),
        "bottom-one-side": ("bottom", g["W"] - g["t"]),
        "bottom-outside": ("bottom", g["W"]),
    }
