"""The answers and slips of hardware layout again, by hand, in exact fractions of a millimetre.

Spacer k = first + (k - 1) (front + gap); first hole = (L - p) / 2; longest screw = s + f - 1/8 in;
spaces between tools = (W - sum of widths) / (n + 1) (common practice, no source). They know nothing of the model.
"""

from fractions import Fraction


def by_hand_06(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "06-reading":
            low, between, high = g["lowest"], g["middle"], g["top"]
            assert high - between == between - low
            return between, {"lowest": low, "step": between - low, "top": high}
        case "06-setback":
            return g["t"] + g["c"], {
                "at-the-edge": Fraction(0), "like-overlay": g["c"], "front-only": g["t"],
                "nominal": g["T"] + g["c"],
            }
        case "06-spacer":
            assert g["s"] == g["g"] + (g["f"] - g["h"]) / 2  # alike above and below the slide
            right = g["s"] + 2 * (g["f"] + g["g"])
            return right, {
                "gaps-left-out": right - 2 * g["g"], "one-gap": right - g["g"], "to-the-middle": right + g["h"] / 2,
                "one-too-many": right + g["f"] + g["g"],
            }
        case "06-pull":
            half = g["L"] / 2
            return half - g["p"] / 2, {
                "whole-pitch": half - g["p"], "thirds": g["L"] / 3, "from-the-box": (g["B"] - g["p"]) / 2,
                "middle": half,
            }
        case "06-screw":
            wood = g["b"] + g["t"]
            return wood - g["e"], {
                "through": wood, "nominal": g["B"] + g["T"] - g["e"], "front-only": g["t"] - g["e"],
                "added": wood + g["e"],
            }
        case "06-pegs":
            left = g["W"] - g["w1"] - g["w2"] - g["w3"] - g["w4"]
            return left / 5, {"a-space-each": left / 4, "between-only": left / 3, "widths-left-out": g["W"] / 5}
        case "06-tess-list":
            return _tess_list(g)
    raise AssertionError(f"no sums by hand for {exercise}")


def _tess_list(g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    should = [g["s"] + 2 * (g["f"] + g["g"]), g["t"] + g["c"], (g["L"] - g["p"]) / 2]
    listed = [g["line 0"], g["line 1"], g["line 2"]]
    # What is printed is at most half a step of the rule off: 1/128 in or 0.05 mm; a slip is off by far more.
    wrong = [number for number in range(3) if abs(listed[number] - should[number]) > Fraction(1, 4)]
    assert len(wrong) == 1, (listed, should)
    (line,) = wrong
    return should[line], {
        "kept": listed[line], "sound-line": listed[(line + 1) % 3], "other-sound-line": listed[(line + 2) % 3],
        "wrong-way": abs(2 * listed[line] - should[line]),
    }


def spacer_set(g: dict[str, Fraction]) -> tuple[dict[str, Fraction], dict[str, tuple[str, Fraction]]]:
    """The lengths of the spacers and the gauge, and for each slip the size it is about and what it comes to."""
    rest, step = g["H"] - g["h"], g["f"] + g["g"]
    low = g["v"] + rest / 2
    return {"lowest": low, "second": low + step, "third": low + 2 * step, "gauge": g["t"] + g["c"]}, {
        "lowest-middle": ("lowest", g["v"] + g["H"] / 2), "lowest-box": ("lowest", g["v"]),
        "lowest-not-halved": ("lowest", g["v"] + rest), "second-gap-forgotten": ("second", low + g["f"]),
        "second-stacked": ("second", step - g["h"]),
        "third-gaps-forgotten": ("third", low + 2 * g["f"]), "third-one-gap": ("third", low + 2 * step - g["g"]),
        "third-middle": ("third", low + 2 * step + g["h"] / 2), "gauge-overlay": ("gauge", g["c"]),
        "gauge-front-only": ("gauge", g["t"]), "gauge-nominal": ("gauge", g["T"] + g["c"]),
    }
