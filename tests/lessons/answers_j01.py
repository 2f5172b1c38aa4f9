"""The answers and slips of the screwed butt's own page again, by hand, in exact fractions of a millimetre.

Reach = screw - side; from screw to screw = (width - 2 x edge) / (screws - 1); longest screw = both boards - what is to
stay (common practice, no source). They know nothing of the model.
"""

from fractions import Fraction

Slips = dict[str, Fraction]

SAID = {
    "j01-through": ("{by} into the bottom", "{by} of the side would stay undrilled"),
    "j01-reach": ("{by} of hold that is not there", "{by} more wood than you count on"),
    "j01-row": ("{by} too wide", "{by} too narrow"),
    "j01-veras-cleat": ("{by} nearer to the face", "up to {by} longer"),
}
"""What each exercise says of a number that is a little too large, and of one that is a little too small: see
`test_effects.py`."""


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, Slips]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "j01-through":
            return g["t"], {"nominal": g["T"], "pilot": g["L"] - g["t"], "whole-screw": g["L"]}
        case "j01-reach":
            return g["L"] - g["t"], {"nominal": g["L"] - g["T"], "side": g["t"], "whole-screw": g["L"]}
        case "j01-row":
            w, e, n = g["w"], g["e"], g["n"]
            return (w - 2 * e) / (n - 1), {
                "screws-for-spaces": (w - 2 * e) / n, "no-edges": w / (n - 1), "one-edge": (w - e) / (n - 1),
            }
        case "j01-veras-cleat":
            assert g["L"] == 2 * g["T"]
            both = g["s"] + g["t"]
            return both - g["e"], {
                "as-listed": g["L"], "through": both, "shelf-only": g["t"] - g["e"], "spare-twice": both - 2 * g["e"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Slips, dict[str, tuple[str, Fraction]]]:
    """The sizes by name, and for each slip the size it is about and what it comes to."""
    assert exercise == "j01-rack-set"
    return {"bottom": g["W"] - 2 * g["t"], "divider": g["H"] - 2 * g["t"], "sides": g["H"]}, {
        "bottom-nominal": ("bottom", g["W"] - 2 * g["T"]),
        "bottom-outside": ("bottom", g["W"]),
        "bottom-one-side": ("bottom", g["W"] - g["t"]),
        "divider-full": ("divider", g["H"]),
        "divider-one": ("divider", g["H"] - g["t"]),
        "divider-nominal": ("divider", g["H"] - 2 * g["T"]),
        "sides-between": ("sides", g["H"] - 2 * g["t"]),
        "sides-one": ("sides", g["H"] - g["t"]),
        "sides-half": ("sides", g["H"] / 2),
    }
