"""The answers and slips of measuring again, by hand, in exact fractions of a millimetre.

They know nothing of the project: fractions are Python's own, and an inch is 25.4 mm exactly (NIST SP 811, appendix
B.8). piece + kerf + piece = board, and n pieces have n - 1 kerfs between them (common practice, no source).
"""

from fractions import Fraction
from math import floor

INCH = Fraction(254, 10)


def by_hand(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "01-read":
            return _read(g["the figure"], g["the marks"], g["one figure"])
        case "01-half":
            return g["A"] / 2, {
                "odd-lost": odd_lost(g["A"], g["front"]), "rest-kept": rest_kept(g["A"], g["front"]),
                "rounded": _rounded(g["A"], g["front"]),
            }
        case "01-sum":
            return g["B"] + g["C"], {
                "each-alone": _each_alone(g["B"], g["C"]), "unlike": unlike(g["B"], g["C"]),
                "no-carry": no_carry(g["B"], g["C"]),
            }
        case "01-line":
            right = g["L"] - g["P"] - g["k"]
            return right, {
                "no-kerf": right + g["k"], "half-kerf": right + g["k"] / 2, "added": right + 2 * g["k"],
                "borrow": right + (Fraction(-6, 16) * INCH if in_inches(g["P"], g["L"], g["k"]) else 10),
            }
        case "01-equal":
            n = g["n"]
            return (g["S"] - (n - 1) * g["k"]) / n, {
                "no-kerf": g["S"] / n, "kerf-each": (g["S"] - n * g["k"]) / n, "one-kerf": (g["S"] - g["k"]) / n,
            }
        case "01-sams-list":
            return _list(g)
    raise AssertionError(f"no sums by hand for {exercise}")


def set_by_hand(g: dict[str, Fraction]) -> tuple[dict[str, Fraction], dict[str, tuple[str, Fraction]]]:
    """The box out of one strip: sizes by name, and for each slip the size it is about and what it comes to."""
    top, t = (g["S"] - 2 * g["H"] - 3 * g["k"]) / 2, g["t"]
    return {"top": top, "divider": g["H"] - 2 * t, "shelf": (top - t) / 2}, {
        "top-no-kerf": ("top", (g["S"] - 2 * g["H"]) / 2),
        "top-one-kerf": ("top", (g["S"] - 2 * g["H"] - g["k"]) / 2),
        "top-four-kerfs": ("top", top - g["k"] / 2),
        "top-one-side": ("top", (g["S"] - g["H"] - 3 * g["k"]) / 2),
        "divider-nominal": ("divider", g["H"] - 2 * g["T"]),
        "divider-one": ("divider", g["H"] - t),
        "divider-as-side": ("divider", g["H"]),
        "shelf-no-divider": ("shelf", top / 2),
        "shelf-divider-whole": ("shelf", top / 2 - t),
        "shelf-sides-too": ("shelf", (top - 3 * t) / 2),
    }


def in_inches(*lengths: Fraction) -> bool:
    """Whether lengths were given in inches: then all of them stand on marks of an inch rule."""
    return all(64 % (length / INCH).denominator == 0 for length in lengths)


def odd_lost(length: Fraction, front: Fraction) -> Fraction:
    whole = floor(length / front)
    return whole // 2 * front + (length - whole * front) / 2


def rest_kept(length: Fraction, front: Fraction) -> Fraction:
    whole = floor(length / front)
    return Fraction(whole, 2) * front + (length - whole * front)


def _rounded(length: Fraction, front: Fraction) -> Fraction:
    if front != INCH:
        return Fraction(floor(length / 2))
    whole = floor(length / INCH)
    eighths = (length / INCH - whole) * 8
    return (Fraction(whole, 2) + Fraction(floor(eighths / 2), 8)) * INCH


def _tops(one: Fraction, other: Fraction) -> tuple[int, Fraction, Fraction]:
    """Whole inches together, eighths of the one, sixteenths of the other."""
    a, b = one / INCH, other / INCH
    return floor(a) + floor(b), (a - floor(a)) * 8, (b - floor(b)) * 16


def _each_alone(one: Fraction, other: Fraction) -> Fraction:
    if not in_inches(one, other):
        return floor(one) + other
    whole, eighths, sixteenths = _tops(one, other)
    return (whole + (eighths + sixteenths) / (8 + 16)) * INCH


def unlike(one: Fraction, other: Fraction) -> Fraction:
    if not in_inches(one, other):
        return one + other / 10
    whole, eighths, sixteenths = _tops(one, other)
    return (whole + (eighths + sixteenths) / 16) * INCH


def no_carry(one: Fraction, other: Fraction) -> Fraction:
    return one + other - (INCH if in_inches(one, other) else 10)


def _read(figure: Fraction, marks: Fraction, one_figure: Fraction) -> tuple[Fraction, dict[str, Fraction]]:
    right = figure + marks
    if one_figure == INCH:
        sixteenths = int(marks / INCH * 16)
        last = sixteenths & -sixteenths  # the lowest of the halves, quarters, eighths and sixteenths that it is made of
        small = figure + Fraction(bin(sixteenths).count("1"), 16) * INCH
        return right, {"next": right + INCH, "last": figure + Fraction(last, 16) * INCH, "small": small}
    return right, {"next": right + 10, "last": figure + marks - 5, "small": figure / 10 + marks}


def _list(g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    should = [g["B"] + g["C"], g["A"] / 2, g["L"] - g["P"] - g["k"]]
    listed = [g["line 0"], g["line 1"], g["line 2"]]
    (line,) = [number for number in range(3) if listed[number] != should[number]]
    front = INCH if in_inches(g["A"], g["L"], g["k"]) else Fraction(100)
    could_be = [
        {no_carry(g["B"], g["C"]), unlike(g["B"], g["C"])}, {odd_lost(g["A"], front), rest_kept(g["A"], front)},
        {g["L"] - g["P"], g["L"] - g["P"] + g["k"]},
    ]
    assert listed[line] in could_be[line]
    return should[line], {
        "kept": listed[line], "sound-line": listed[(line + 1) % 3], "other-sound-line": listed[(line + 2) % 3],
        "wrong-way": 2 * listed[line] - should[line],
    }
