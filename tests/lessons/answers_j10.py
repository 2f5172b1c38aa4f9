"""The answers and slips of the page of bridle, mortise and tenon again, by hand, in exact fractions of a millimetre.

A bridle is a third of the board and as long as its mate is wide; a tenoned rail is from shoulder to shoulder and two
tenons; a mortise is deeper than its tenon. They know nothing of the model.
"""

from fractions import Fraction

Slips = dict[str, Fraction]

SAID = {
    "j10-mortise": ("{by} too deep", "{by} too shallow"),
    "j10-third": ("{by} too thick", "{by} too thin"),
    "j10-lines": ("{by} too far back", "{by} too far forward"),
    "j10-lottes-rail": ("{by} too long", "{by} too short"),
}


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j10-mortise":
            return g["L"] + g["e"], {"no-room": g["L"], "taken-off": g["L"] - g["e"], "twice": g["L"] + 2 * g["e"]}
        case "j10-third":
            return g["t"] / 3, {"nominal": g["T"] / 3, "half": g["t"] / 2, "quarter": g["t"] / 4}
        case "j10-lines":
            near = (g["t"] - g["k"]) / 2
            return near + g["k"], {
                "near-line": near, "rest-not-halved": g["t"] - g["k"], "thirds": 2 * g["t"] / 3,
                "nominal": (g["T"] + g["k"]) / 2,
            }
        case "j10-lottes-rail":
            shoulders = g["W"] - 2 * g["w"]
            assert g["R"] == shoulders + 2 * (g["L"] + g["e"])
            return shoulders + 2 * g["L"], {
                "as-listed": g["R"], "shoulders": shoulders, "one-tenon": shoulders + g["L"], "bridle": g["W"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j10-frame-set"
    shoulders = g["W"] - 2 * g["w"]
    return {"top": g["W"], "bottom": shoulders + 2 * g["L"], "stiles": g["H"]}, {
        "top-shoulders": ("top", shoulders),
        "top-one": ("top", g["W"] - g["w"]),
        "top-tenoned": ("top", shoulders + 2 * g["L"]),
        "bottom-shoulders": ("bottom", shoulders),
        "bottom-one": ("bottom", shoulders + g["L"]),
        "bottom-mortises": ("bottom", shoulders + 2 * (g["L"] + g["e"])),
        "bottom-through": ("bottom", g["W"]),
        "stiles-opening": ("stiles", g["H"] - 2 * g["r"]),
        "stiles-under": ("stiles", g["H"] - g["r"]),
        "stiles-over": ("stiles", g["H"] + g["r"]),
    }
