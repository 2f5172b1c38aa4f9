"""The answers and slips of the rabbet's own page again, by hand, in exact fractions of a millimetre.

Width = thickest reading + fit; back and bottom = outside - 2 x side + 2 x rabbet (common practice, no
source). They know nothing of the model.
"""

from fractions import Fraction

Slips = dict[str, Fraction]

SAID = {
    "j03-shoulder": ("{by} too wide", "{by} too narrow"),
    "j03-width": ("{by} too wide", "{by} too narrow"),
    "j03-back": ("{by} too wide: {half} at each side ... not go in", "{by} too narrow: {half} of each rabbet"),
    "j03-marits-bottom": ("{by} too long", "{by} too short"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small: see
`test_effects.py`."""


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    if exercise == "j03-shoulder":
        return g["t"], {"nominal": g["T"], "depth": g["d"], "tongue": g["t"] - g["d"]}
    if exercise == "j03-width":
        return g["thick"] + g["f"], {
            "stack": g["c"], "nominal": g["T"], "mean": g["t"] + g["f"], "no-fit": g["thick"],
        }
    between, named = g["W"] - 2 * g["t"], g["W"] - 2 * g["T"]
    if exercise == "j03-back":
        return between + 2 * g["b"], {
            "outside": g["W"], "inside": between, "one-rabbet": between + g["b"], "nominal": named + 2 * g["b"],
        }
    assert exercise == "j03-marits-bottom" and g["L"] == g["W"] - g["t"]
    return between + 2 * g["d"], {
        "as-listed": g["L"], "butted": between, "one-end": between + g["d"], "nominal": named + 2 * g["d"],
    }


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j03-case-set"
    between = g["W"] - 2 * g["t"]
    return {"bottom": between + 2 * g["d"], "shelf": between, "sides": g["H"]}, {
        "bottom-butted": ("bottom", between),
        "bottom-one-end": ("bottom", between + g["d"]),
        "bottom-nominal": ("bottom", g["W"] - 2 * g["T"] + 2 * g["d"]),
        "shelf-nominal": ("shelf", g["W"] - 2 * g["T"]),
        "shelf-one-side": ("shelf", g["W"] - g["t"]),
        "shelf-rabbets": ("shelf", between + 2 * g["d"]),
        "sides-between": ("sides", g["H"] - 2 * g["t"]),
        "sides-one": ("sides", g["H"] - g["t"]),
        "sides-half": ("sides", g["H"] / 2),
    }
