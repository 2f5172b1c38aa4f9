"""The answers and slips from the cut list to the yard again, by hand, in exact fractions of a millimetre; counts are
whole numbers.

Strips of width w from S with trim e: floor((S - 2e + k) / (w + k)) (common practice, no source).
"""

from fractions import Fraction
from math import ceil, floor


def by_hand_08(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "08-reading":
            bands = g["f"] - g["c"]
            return g["c"], {"finished": g["f"], "width": g["w"], "bands-twice": g["f"] - 2 * bands}
        case "08-bands":
            two = 2 * g["b"]
            return g["L"] - two, {"no-bands": g["L"], "one-band": g["L"] - g["b"], "added": g["L"] + two}
        case "08-strips":
            return side_by_side(g["S"] - 2 * g["e"], g["w"], g["k"]), {
                "kerf-not-added": floor((g["S"] - g["e"] - g["e"]) / (g["w"] + g["k"])),
                "no-kerf": floor(g["S"] / g["w"]), "trim-left-out": side_by_side(g["S"], g["w"], g["k"]),
                "whole-width": floor(g["S"] / (g["w"] + g["k"])),
            }
        case "08-offcut":
            strip, kerfs = g["n"] * g["w"], g["n"] * g["k"]
            right = g["S"] - g["e"] - strip - kerfs - g["e"]
            return right, {
                "no-kerf": right + kerfs, "one-kerf-less": right + g["k"], "trim-left-out": right + 2 * g["e"],
                "one-edge": right + g["e"],
            }
        case "08-sheets":
            long, wide = g["S"] - 2 * g["e"], g["B"] - 2 * g["e"]
            each = side_by_side(long, g["L"], g["k"]) * side_by_side(wide, g["w"], g["k"])
            turned = side_by_side(long, g["w"], g["k"]) * side_by_side(wide, g["L"], g["k"])
            bare = floor(g["S"] / g["L"]) * floor(g["B"] / g["w"])
            return ceil(g["n"] / each), {
                "by-area": ceil(g["n"] * g["L"] * g["w"] / (g["S"] * g["B"])), "turned": ceil(g["n"] / turned),
                "no-kerf": ceil(g["n"] / bare),
            }
        case "08-spare":
            return side_by_side(g["A"], g["L"], g["k"]) * side_by_side(g["B"], g["w"], g["k"]), {
                "by-area": floor(g["A"] * g["B"] / g["L"] / g["w"]),
                "no-kerf": floor(g["A"] / g["L"]) * floor(g["B"] / g["w"]),
                "turned": side_by_side(g["A"], g["w"], g["k"]) * side_by_side(g["B"], g["L"], g["k"]),
            }
        case "08-fronts":
            cuts = (g["n"] - 1) * g["k"]
            right = g["n"] * g["L"] + g["n"] * g["x"] + cuts + 2 * g["e"]
            return right, {
                "finished": right - g["n"] * g["x"], "no-kerf": right - cuts, "no-trim": right - 2 * g["e"],
                "one-end": right - g["e"], "kerf-for-each": right + g["k"],
            }
        case "08-umas-list":
            return _umas_list(g)
    raise AssertionError(f"no sums by hand for {exercise}")


def side_by_side(room: Fraction, part: Fraction, kerf: Fraction) -> Fraction:
    """Laid one after another until the next one would not go in: a kerf before each but the first."""
    count, taken = 0, part
    while taken <= room:
        count, taken = count + 1, taken + kerf + part
    return Fraction(count)


def _umas_list(g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    inside = g["W"] - 2 * g["t"]
    should = [inside, (inside - g["t"]) / 2, g["W"] - g["b"] - g["b"]]
    listed = [g["line 0"], g["line 1"], g["line 2"]]
    # What is printed is at most half a step of the rule off: 1/128 in or 0.05 mm; a slip is off by far more.
    wrong = [number for number in range(3) if abs(listed[number] - should[number]) > Fraction(1, 4)]
    assert len(wrong) == 1, (listed, should)
    (line,) = wrong
    return should[line], {
        "kept": listed[line], "sound-line": listed[(line + 1) % 3], "other-sound-line": listed[(line + 2) % 3],
        "wrong-way": abs(2 * listed[line] - should[line]),
    }


def whole_list(g: dict[str, Fraction]) -> tuple[dict[str, Fraction], dict[str, tuple[str, Fraction]]]:
    """The lengths of the list: 2 sides, bottom and top, divider, 2 shelves."""
    wide, high = g["W"] - 2 * g["t"], g["H"] - 2 * g["t"]
    return {"side": g["H"], "bottom": wide, "divider": high, "shelf": (wide - g["t"]) / 2}, {
        "side-between": ("side", high), "side-nominal": ("side", g["H"] - 2 * g["T"]),
        "bottom-outside": ("bottom", g["W"]), "bottom-one-side": ("bottom", g["W"] - g["t"]),
        "bottom-nominal": ("bottom", g["W"] - 2 * g["T"]),
        "divider-as-side": ("divider", g["H"]), "divider-one": ("divider", g["H"] - g["t"]),
        "divider-nominal": ("divider", g["H"] - 2 * g["T"]),
        "shelf-no-divider": ("shelf", wide / 2), "shelf-divider-each": ("shelf", (wide - 2 * g["t"]) / 2),
        "shelf-half-width": ("shelf", g["W"] / 2),
    }
