"""The answers and slips of the half laps' page again, by hand, in exact fractions of a millimetre.

A lap is as long as its mate is wide and half as deep as the board is thick; an error in depth counts twice, for both
boards are cut at one setting. They know nothing of the model.
"""

from fractions import Fraction

Slips = dict[str, Fraction]

SAID = {
    "j08-notch": ("{by} too wide", "{by} too narrow"),
    "j08-deep": ("{by} too deep ... {twice} thinner", "{by} too shallow ... {twice} thicker"),
    "j08-raise": ("{by} too high ... {twice} too thin", "{by} too low ... {twice} too thick"),
    "j08-hannes-rails": ("{by} too long", "{by} too short"),
}


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j08-notch":
            return g["w"], {"own-width": g["r"], "half": g["w"] / 2, "to-the-far-wall": g["f"] + g["w"]}
        case "j08-deep":
            return g["t"] / 2, {"nominal": g["T"] / 2, "two-thirds": 2 * g["t"] / 3, "third": g["t"] / 3}
        case "j08-raise":
            over = (g["c"] - g["t"]) / 2
            return g["d"] + over, {
                "not-halved": g["d"] + 2 * over, "wrong-way": g["d"] - over,
                "nominal": g["d"] + (g["c"] - g["T"]) / 2, "half-board": g["t"] / 2,
            }
        case "j08-hannes-rails":
            assert g["L"] == g["W"] - g["w"] + 2 * g["e"]
            return g["W"] + 2 * g["e"], {
                "as-listed": g["L"], "between": g["W"] - 2 * g["w"] + 2 * g["e"], "not-long": g["W"],
                "long-once": g["W"] + g["e"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j08-frame-set"
    return {"rails": g["I"] + 2 * g["w"], "stiles": g["J"] + 2 * g["r"]}, {
        "rails-opening": ("rails", g["I"]),
        "rails-one": ("rails", g["I"] + g["w"]),
        "rails-own-width": ("rails", g["I"] + 2 * g["r"]),
        "stiles-opening": ("stiles", g["J"]),
        "stiles-one": ("stiles", g["J"] + g["r"]),
        "stiles-own-width": ("stiles", g["J"] + 2 * g["w"]),
    }
