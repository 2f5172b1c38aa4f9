"""The answers and slips of the dovetail's page again, by hand, in exact fractions of a millimetre.

Gauge = thickness of the mate, and what is left to be planed off (Noyes, Handwork in Wood (1910), p. 165); lean = length
of the tail / slope; tail = (width - half pins - pins) / tails; board = inside + 2 x thickness (geometry). They know
nothing of the model.
"""

from fractions import Fraction

Slips = dict[str, Fraction]

SAID = {
    "j11-gauge": ("stand {by} farther out", "end {by} lower"),
    "j11-lean": ("lean {by} too far", "lean {by} too little"),
    "j11-tail": ("{by} too wide ... over the edge", "{by} too narrow"),
    "j11-jonass-box": ("{by} too long", "{by} too short"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small: see
`test_effects.py`."""


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j11-gauge":
            return g["p"] + g["x"], {"own-board": g["s"] + g["x"], "nominal": g["T"] + g["x"], "flush": g["p"]}
        case "j11-lean":
            lean = g["p"] / g["k"]
            return lean, {"own-board": g["s"] / g["k"], "nominal": g["T"] / g["k"], "half": lean / 2}
        case "j11-tail":
            many = g["m"]
            return (g["w"] - 2 * g["h"] - (many - 1) * g["p"]) / many, {
                "as-many": (g["w"] - 2 * g["h"] - many * g["p"]) / many,
                "no-half": (g["w"] - (many - 1) * g["p"]) / many,
                "one-half": (g["w"] - g["h"] - (many - 1) * g["p"]) / many,
                "no-pins": (g["w"] - 2 * g["h"]) / many,
            }
        case "j11-jonass-box":
            assert g["L"] == g["I"] + 2 * g["T"]
            return g["I"] + 2 * g["t"], {
                "as-listed": g["L"], "between": g["I"], "one-end": g["I"] + g["t"], "taken-off": g["I"] - 2 * g["t"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j11-box-set"
    slips = {}
    for name, inside in (("front", g["I"]), ("sides", g["J"])):
        slips |= {
            f"{name}-between": (name, inside), f"{name}-one": (name, inside + g["s"]),
            f"{name}-nominal": (name, inside + 2 * g["T"]),
        }
    wide = g["I"] + 2 * g["q"]
    return {"front": g["I"] + 2 * g["s"], "sides": g["J"] + 2 * g["s"], "bottom_width": wide - g["e"]}, slips | {
        "width-no-slack": ("bottom_width", wide), "width-no-groove": ("bottom_width", g["I"]),
        "width-one-groove": ("bottom_width", g["I"] + g["q"]),
    }
