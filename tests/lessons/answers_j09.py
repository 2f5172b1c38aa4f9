"""The answers and slips of the page of dowels and splines again, by hand, in exact fractions of a millimetre.

n dowels have n - 1 spaces; a dowel or a spline goes from floor to floor less the room at both its ends; gauged from
unlike faces, two lines are apart by the thickness less twice the gauge. They know nothing of the model.
"""

from fractions import Fraction

Slips = dict[str, Fraction]

PLACE = ("{by} too far", "{by} too near")
SAID = {
    "j09-last": PLACE,
    "j09-dowel": ("{by} too long", "{by} too short"),
    "j09-second": PLACE,
    "j09-faces": ("{by} higher", "{by} lower"),
    "j09-rubens-spline": ("{by} too wide", "{by} too narrow"),
}


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j09-last":
            return g["w"] - g["a"], {
                "other-edge": g["a"], "both-edges": g["w"] - 2 * g["a"], "beyond": g["w"] + g["a"],
            }
        case "j09-dowel":
            floors = g["p"] + g["q"]
            return floors - 2 * g["e"], {
                "no-room": floors, "room-once": floors - g["e"], "one-hole": g["p"] - g["e"],
                "room-added": floors + 2 * g["e"],
            }
        case "j09-second":
            run = g["w"] - 2 * g["a"]
            return g["a"] + run / (g["n"] - 1), {
                "a-space-each": g["a"] + run / g["n"], "from-the-first": run / (g["n"] - 1),
                "whole-width": g["a"] + g["w"] / (g["n"] - 1),
            }
        case "j09-faces":
            step = g["t"] - 2 * g["g"]
            return step, {"the-line": g["t"] - g["g"], "half": step / 2, "nominal": g["T"] - 2 * g["g"]}
        case "j09-rubens-spline":
            floors = g["p"] + g["q"]
            assert g["L"] == floors
            return floors - 2 * g["e"], {
                "as-listed": floors, "room-once": floors - g["e"], "room-added": floors + 2 * g["e"],
                "one-groove": g["q"] - g["e"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j09-panel-set"
    spline = 2 * (g["q"] - g["e"])
    return {"boards": g["W"] / 3, "splines": spline}, {
        "boards-tongue": ("boards", g["W"] / 3 + g["q"]),
        "boards-splines-off": ("boards", (g["W"] - 2 * spline) / 3),
        "boards-tongues": ("boards", g["W"] / 3 + 2 * g["q"]),
        "splines-no-room": ("splines", 2 * g["q"]),
        "splines-one-groove": ("splines", g["q"] - g["e"]),
        "splines-room-added": ("splines", 2 * (g["q"] + g["e"])),
    }
