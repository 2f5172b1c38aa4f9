"""What holds, by hand: sags by the powers of span and thickness (Wood Handbook, chapter 9), moments, thread by its
load.
"""

from fractions import Fraction


def by_hand_07(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    """The answer, and what each slip comes to, in millimetres."""
    inch = Fraction(254, 10)
    match exercise:
        case "07-reading":
            return g["loaded"] - g["bowed"], {
                "with-bow": g["loaded"], "quarter": g["quarter"] - g["bowed"], "added": g["loaded"] + g["bowed"],
            }
        case "07-limit":  # 1/16 in for each 12 in
            feet = g["S"] / (12 * inch)
            assert feet < 4
            return feet * inch / 16, {"cap": inch / 4, "once": inch / 16, "half-span": feet * inch / 32}
        case "07-thicker":
            return g["s"] / 2**3, {"half": g["s"] / 2, "added-up": g["s"] / (2 + 2 + 2), "fourth": g["s"] / 2**4}
        case "07-divider":
            years, load, span = Fraction(3, 2), Fraction(1, 2), Fraction(1, 2) ** 3
            return g["s"] * load * span * years, {
                "at-once": g["s"] * load * span, "span-alone": g["s"] * span, "halved": g["s"] / 2 * years,
            }
        case "07-tipping":
            moment = g["W"] * g["d"]
            return moment / g["w"], {
                "turned": g["w"] * g["d"] / g["W"], "same-arm": g["d"], "of-both": moment / (g["W"] + g["w"]),
            }
        case "07-screw":
            one = g["F"] / 2
            return g["t"] + one / g["f"] * g["e"], {
                "thread-only": one / g["f"] * g["e"], "one-screw": g["t"] + g["F"] / g["f"] * g["e"],
                "until-it-comes": g["t"] + one / g["p"] * g["e"],
            }
    raise AssertionError(f"no sums by hand for {exercise}")


def parts_case(g: dict[str, Fraction]) -> tuple[dict[str, Fraction], dict[str, tuple[str, Fraction]]]:
    """The long case: one divider leaves more than a shelf may span, two do not."""
    t, clear = g["t"], g["W"] - 2 * g["t"]
    one, two, three = ((clear - n * t) / (n + 1) for n in (1, 2, 3))
    assert two <= g["M"] < one
    return {"bottom": clear, "divider": g["H"] - 2 * t, "shelf": two}, {
        "bottom-nominal": ("bottom", g["W"] - 2 * g["T"]), "bottom-outside": ("bottom", g["W"]),
        "bottom-one-side": ("bottom", g["W"] - t),
        "divider-as-side": ("divider", g["H"]), "divider-one": ("divider", g["H"] - t),
        "divider-nominal": ("divider", g["H"] - 2 * g["T"]),
        "shelf-one-divider": ("shelf", one), "shelf-three-dividers": ("shelf", three),
        "shelf-no-divider": ("shelf", clear / 3), "shelf-sides-too": ("shelf", (clear - 4 * t) / 3),
    }
