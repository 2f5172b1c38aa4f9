"""The answers and slips of the dado's own page again, by hand, in exact fractions of a millimetre.

Gain = depth - gap; shelf = between + 2 x gain; fence from wall to wall = width - kerf (common practice, no source).
They know nothing of the model.
"""

from fractions import Fraction

Slips = dict[str, Fraction]

SAID = {
    "j04-stopped": ("{by} too long", "{by} too short"),
    "j04-long": ("{by} too long", "{by} too short"),
    "j04-fence": ("{by} too wide", "{by} too narrow"),
    "j04-ilses-shelf": ("{by} too long", "{by} too short"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small: see
`test_effects.py`."""


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j04-long":
            return g["I"] + 2 * g["d"], {
                "butted": g["I"], "one-end": g["I"] + g["d"], "taken-off": g["I"] - 2 * g["d"],
            }
        case "j04-stopped":
            return g["w"] - g["s"], {"through": g["w"], "both-edges": g["w"] - 2 * g["s"], "beyond": g["w"] + g["s"]}
        case "j04-fence":
            wide = g["thick"] + g["f"]
            return wide - g["k"], {
                "no-kerf": wide, "mean": g["t"] + g["f"] - g["k"], "nominal": g["T"] + g["f"] - g["k"],
                "kerf-twice": wide - 2 * g["k"],
            }
        case "j04-ilses-shelf":
            assert g["L"] == g["I"] + 2 * g["d"]
            return g["I"] + 2 * (g["d"] - g["e"]), {
                "as-listed": g["L"], "gap-added": g["L"] + 2 * g["e"], "one-end": g["I"] + g["d"] - g["e"],
                "butted": g["I"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j04-shelf-set"
    between = g["W"] - 2 * g["t"]
    return {"bottom": between, "shelf": between + 2 * g["d"], "sides": g["H"]}, {
        "bottom-nominal": ("bottom", g["W"] - 2 * g["T"]),
        "bottom-dado": ("bottom", between + 2 * g["d"]),
        "bottom-one-side": ("bottom", g["W"] - g["t"]),
        "shelf-no-joint": ("shelf", between),
        "shelf-one-joint": ("shelf", between + g["d"]),
        "shelf-nominal": ("shelf", g["W"] - 2 * g["T"] + 2 * g["d"]),
        "sides-between": ("sides", g["H"] - 2 * g["t"]),
        "sides-one": ("sides", g["H"] - g["t"]),
        "sides-half": ("sides", g["H"] / 2),
    }
