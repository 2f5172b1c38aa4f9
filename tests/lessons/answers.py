"""The answers and slips again, by hand, in exact fractions of a millimetre.

The sums are the ones that the trade teaches for a case whose bottom stands in dadoes and whose back
lies in rabbets (common practice, no source). They know nothing of the project's model.
"""

from fractions import Fraction
from importlib import import_module
from re import fullmatch
from types import ModuleType

from tests.lessons import measuring_by_hand
from tests.lessons.answers_04 import by_hand_04
from tests.lessons.answers_05 import by_hand_05
from tests.lessons.answers_06 import by_hand_06
from tests.lessons.answers_07 import by_hand_07
from tests.lessons.answers_08 import by_hand_08

TO_MM = {"in": Fraction(254, 10), "mm": Fraction(1)}


def millimetres(text: str) -> Fraction:
    """The length that a learner reads on the page, such as `34 1/2 in`, `0.703 in` or `17.45 mm`."""
    number, unit = fullmatch(r"(.+) (in|mm)", text).groups()
    return sum((Fraction(part) for part in number.split()), Fraction(0)) * TO_MM[unit]


def of_joint(exercise: str) -> ModuleType:
    """The sums by hand of a joint's page: `answers_jNN.py` for the exercise `jNN-...`."""
    return import_module(f"tests.lessons.answers_{exercise.partition('-')[0]}")


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    """The answer, and what each slip comes to, in millimetres; counts are whole numbers."""
    if exercise.startswith("04-"):
        return by_hand_04(exercise, g)
    if exercise.startswith("05-"):
        return by_hand_05(exercise, g)
    if exercise.startswith("06-"):
        return by_hand_06(exercise, g)
    if exercise.startswith("07-"):
        return by_hand_07(exercise, g)
    if exercise.startswith("08-"):
        return by_hand_08(exercise, g)
    if exercise.startswith("j"):
        return of_joint(exercise).by_hand(exercise, g)
    if exercise.startswith("01-"):
        return measuring_by_hand.by_hand(exercise, g)
    match exercise:
        case "00-bottom-follows":
            return g["L"] + g["X"], {
                "unchanged": g["L"], "outside": g["W"] + g["X"],
                "twice": g["L"] + 2 * g["X"], "other-way": g["L"] - g["X"],
            }
        case "template-room":
            return g["W"] - 2 * g["t"], {
                "outside": g["W"], "nominal": g["W"] - 2 * g["T"], "one-side": g["W"] - g["t"],
            }
        case "02-thickness":
            return (g["thin"] + g["t"] + g["thick"]) / 3, {
                "nominal": g["T"], "thickest": g["thick"], "thinnest": g["thin"],
            }
        case "02-back":
            return g["I"] + 2 * g["b"], {
                "outside": g["W"], "inside": g["I"],
                "one-rabbet": g["I"] + g["b"], "sign": g["I"] - 2 * g["b"],
            }
        case "02-bottom":
            inside = g["W"] - 2 * g["t"]
            return inside + 2 * g["d"], {
                "nominal": g["W"] - 2 * g["T"] + 2 * g["d"], "no-joint": inside, "one-joint": inside + g["d"],
                "sign": inside - 2 * g["d"], "one-side": g["W"] - g["t"] + 2 * g["d"],
                "outside": g["W"],
            }
        case "02-bays":
            n = g["n"]
            return (g["W"] - (n + 1) * g["t"]) / n, {
                "no-wood": g["W"] / n, "no-dividers": (g["W"] - 2 * g["t"]) / n,
                "a-divider-each": (g["W"] - 2 * g["t"] - n * g["t"]) / n,
            }
        case "02-noors-list":
            return _noors_list(g)
        case "03-place":
            return g["p"], {
                "far-wall": g["p"] + g["t"], "centre": g["p"] + g["t"] / 2,
                "wrong-end": g["H"] - g["p"], "mirrored": g["H"] - g["p"] - g["t"],
            }
        case "03-width":
            return g["thick"] + g["f"], {
                "nominal": g["T"], "mean": g["t"], "mean-and-fit": g["t"] + g["f"], "no-fit": g["thick"],
            }
        case "03-wood":
            return g["t"] - g["d"], {
                "nominal": g["T"] - g["d"], "the-cut": g["d"], "twice": g["t"] - 2 * g["d"],
            }
        case "03-back-to-back":
            return g["t"] - 2 * g["d"], {
                "nominal": g["T"] - 2 * g["d"], "one-dado": g["t"] - g["d"], "the-cuts": 2 * g["d"],
            }
        case "03-tongues":
            inside = g["W"] - 2 * g["t"]
            return inside + 2 * (g["d"] - g["e"]), {
                "gap-forgotten": inside + 2 * g["d"], "gap-added": inside + 2 * (g["d"] + g["e"]),
                "one-tongue": inside + g["d"] - g["e"], "no-joint": inside, "thickness": inside + 2 * g["k"],
            }
        case "03-noors-marks":
            inside = g["W"] - 2 * g["t"]
            return _one_line_wrong(g, [inside + 2 * g["d"], g["q"] - g["t"], inside + 2 * g["b"]])
    raise AssertionError(f"no sums by hand for {exercise}")


def _noors_list(g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    inside = g["W"] - 2 * g["t"]
    return _one_line_wrong(g, [inside + 2 * g["d"], inside + 2 * g["b"], (inside - g["t"]) / 2])


def _one_line_wrong(g: dict[str, Fraction], should: list[Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    """The answer to a list of three lines of which one is wrong, where each should be as given."""
    listed = [g["line 0"], g["line 1"], g["line 2"]]
    # What is printed is at most half a step of the rule off.
    wrong = [number for number in range(3) if abs(listed[number] - should[number]) > g["mark"] / 2]
    assert len(wrong) == 1, (listed, should)
    (line,) = wrong
    return should[line], {
        "kept": listed[line],
        "sound-line": listed[(line + 1) % 3], "other-sound-line": listed[(line + 2) % 3],
        "wrong-way": 2 * listed[line] - should[line],
    }
