"""The answers and slips of the splined mitre's page again, by hand, in exact fractions of a millimetre.

At 45 degrees a cut goes as far along as across; its face is the square root of 2 longer; gaps of small angles add up
and grow with the length they are read over; spline = 2 x (slot - what stays free). Geometry, all of it; they know
nothing of the model.
"""

from fractions import Fraction

Slips = dict[str, Fraction]

ROOT = Fraction(14_142_136, 10**7)

SAID = {
    "j12-longer": ("{by} more length outside", "{by} less length outside"),
    "j12-inside": ("{by} too long", "{by} too short"),
    "j12-last": ("{by} wider than comes", "gape {by} more than you expect"),
    "j12-milas-spline": ("{by} too wide", "{by} too narrow"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small: see
`test_effects.py`."""


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j12-longer":
            return 2 * g["t"], {"one-end": g["t"], "nominal": 2 * g["T"], "slant": 2 * slant(g["t"])}
        case "j12-inside":
            return g["W"] - 2 * g["t"], {
                "outside": g["W"], "one-end": g["W"] - g["t"], "nominal": g["W"] - 2 * g["T"],
                "slant": g["W"] - 2 * slant(g["t"]),
            }
        case "j12-last":
            one = g["g"] * g["m"] / g["b"]
            return 4 * one, {"one-corner": one, "three-corners": 3 * one, "blade": 4 * g["g"]}
        case "j12-milas-spline":
            assert g["L"] == 2 * g["d"]
            return 2 * (g["d"] - g["e"]), {
                "as-listed": g["L"], "free-once": g["L"] - g["e"], "one-slot": g["d"] - g["e"],
                "gap-added": 2 * (g["d"] + g["e"]),
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def slant(thick: Fraction) -> Fraction:
    """The mitre face of a board so thick, to the 80 000th of a millimetre."""
    return Fraction(round(thick * ROOT * 80_000), 80_000)


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j12-tray-set"
    slips = {}
    for name, outside in (("front", g["W"]), ("sides", g["D"])):
        slips |= {
            f"{name}-heels": (name, outside - 2 * g["s"]), f"{name}-one": (name, outside - g["s"]),
            f"{name}-more": (name, outside + 2 * g["s"]),
        }
    inside = g["W"] - 2 * g["s"]
    return {"front": g["W"], "sides": g["D"], "bottom_width": inside + 2 * g["q"] - g["e"]}, slips | {
        "width-no-slack": ("bottom_width", inside + 2 * g["q"]), "width-no-groove": ("bottom_width", inside),
        "width-one-groove": ("bottom_width", inside + g["q"]),
    }
