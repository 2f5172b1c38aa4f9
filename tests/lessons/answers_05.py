"""The answers and slips of fronts and gaps again, by hand, in exact fractions of a millimetre.

n inset fronts = (O - (n + 1) g) / n; overlay front = O + 2 a; on a divider (t - g) / 2 (common practice, no source).
Movement = D C (M_F - M_I), Wood Handbook chapter 13; white oak .00365 flatsawn, .0018 quartersawn, Table 13-5 (read).
They know nothing of the project's model.
"""

from fractions import Fraction

OAK, OAK_QUARTERSAWN = Fraction("0.00365"), Fraction("0.0018")


def by_hand_05(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "05-reading":
            low, between, high = sorted([g["top"], g["middle"], g["bottom"]])
            return low, {"widest": high, "mean": (low + between + high) / 3, "gaps-off": low - 2 * g["g"]}
        case "05-overlay":
            return g["W"] + 2 * g["a"], {"one-side": g["W"] + g["a"], "inset": g["W"] - 2 * g["g"], "opening": g["W"]}
        case "05-inset":
            n = g["n"]
            return (g["O"] - (n + 1) * g["g"]) / n, {
                "a-gap-each": (g["O"] - n * g["g"]) / n, "gaps-between": (g["O"] - (n - 1) * g["g"]) / n,
                "no-gaps": g["O"] / n, "two-gaps-each": g["O"] / n - 2 * g["g"],
            }
        case "05-divider":
            past = g["W"] + g["a"]
            return past + (g["t"] - g["g"]) / 2, {
                "not-shared": past + g["t"] - g["g"], "no-gap": past + g["t"] / 2,
                "gap-each": past + g["t"] / 2 - g["g"], "like-the-side": past + g["a"],
            }
        case "05-season":
            h, change = g["h"], g["m2"] - g["m1"]
            return h + h * OAK * change, {
                "unmoved": h, "quartersawn": h + h * OAK_QUARTERSAWN * change,
                "whole-content": h + h * OAK * g["m2"], "shrunk": h - h * OAK * change,
            }
        case "05-irmas-list":
            return _irmas_list(g)
    raise AssertionError(f"no sums by hand for {exercise}")


def _irmas_list(g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    should = [(g["O"] - 4 * g["g"]) / 3, g["W"] + 2 * g["a"], g["W"] + g["a"] + (g["t"] - g["g"]) / 2]
    listed = [g["line 0"], g["line 1"], g["line 2"]]
    # What is printed is at most half a step of the rule off: 1/128 in or 0.05 mm; a slip is off by far more.
    wrong = [number for number in range(3) if abs(listed[number] - should[number]) > Fraction(1, 4)]
    assert len(wrong) == 1, (listed, should)
    (line,) = wrong
    return should[line], {
        "kept": listed[line], "sound-line": listed[(line + 1) % 3], "other-sound-line": listed[(line + 2) % 3],
        "wrong-way": 2 * listed[line] - should[line],
    }


def bay_fronts(g: dict[str, Fraction]) -> tuple[dict[str, Fraction], dict[str, tuple[str, Fraction]]]:
    """The sizes of the three fronts by name, and for each slip the size it is about and what it comes to."""
    def third(gaps: int) -> Fraction:
        return (g["O"] - gaps * g["g"]) / 3

    right = {"width": g["W"] - 2 * g["g"]}
    slips = {"width-no-gap": ("width", g["W"]), "width-one-gap": ("width", g["W"] - g["g"])}
    for name, steps in (("lowest", 1), ("middle", 0), ("top", -1)):
        right[name] = third(4) + steps * g["d"]
        slips[f"{name}-no-gaps"] = (name, third(0) + steps * g["d"])
        slips[f"{name}-gaps-between"] = (name, third(2) + steps * g["d"])
        if steps:
            slips[f"{name}-equal"] = (name, third(4))
    return right, slips
