"""The answers and slips of drawer clearance again, by hand, in exact fractions of a millimetre.

Box = narrowest opening - 2 x slide; front = box - 2 x side + 2 x rabbet; bottom = box - 2 x side + 2 x groove -
slack; slide = the longest in inside depth - inset front - setback - room behind (common practice, no source). They
know nothing of the project's model.
"""

from fractions import Fraction

SOLD = {"in": [Fraction(254, 10) * size for size in range(10, 30, 2)], "mm": list(map(Fraction, range(250, 750, 50)))}


def by_hand_04(exercise: str, g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    """The answer, and what each slip comes to, in millimetres."""
    match exercise:
        case "04-reading":
            return min(g["F"], g["R"]), {
                "widest": max(g["F"], g["R"]), "mean": (g["F"] + g["R"]) / 2, "whole-case": min(g["F2"], g["R2"]),
            }
        case "04-box-width":
            least, c = min(g["F"], g["R"]), g["c"]
            return least - 2 * c, {
                "one-slide": least - c, "widest": max(g["F"], g["R"]) - 2 * c, "mean": (g["F"] + g["R"]) / 2 - 2 * c,
                "inside": least - 2 * c - 2 * g["s"], "twice": least - 4 * c,
            }
        case "04-box-front":
            inside = g["B"] - 2 * g["s"]
            return inside + 2 * g["r"], {
                "outside": g["B"], "no-joint": inside, "offcut": g["B"] - g["s"], "one-joint": inside + g["r"],
                "nominal": g["B"] - 2 * g["T"] + 2 * g["r"],
            }
        case "04-bottom":
            inside = g["B"] - 2 * g["s"]
            return inside + 2 * g["q"] - g["e"], {
                "no-slack": inside + 2 * g["q"], "no-groove": inside, "one-groove": inside + g["q"],
                "outside": g["B"],
            }
        case "04-slide-length":
            sold = SOLD["mm" if all(size.denominator == 1 for size in g.values()) else "in"]
            room = g["I"] - g["f"] - g["c"] - g["m"]
            return max(size for size in sold if size <= room), {
                "nearest": min(sold, key=lambda size: abs(size - room)),
                "outside": max(size for size in sold if size <= g["D"] - g["f"] - g["c"] - g["m"]), "room": room,
            }
        case "04-ilses-list":
            return _ilses_list(g)
    raise AssertionError(f"no sums by hand for {exercise}")


def _ilses_list(g: dict[str, Fraction]) -> tuple[Fraction, dict[str, Fraction]]:
    box = min(g["F"], g["R"]) - 2 * g["c"]
    inside = box - 2 * g["s"]
    should = [box, inside + 2 * g["r"], inside + 2 * g["q"] - g["e"]]
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


def box_boards(g: dict[str, Fraction]) -> tuple[dict[str, Fraction], dict[str, tuple[str, Fraction]]]:
    """The sizes of the five boards by name, and for each slip the size it is about and what it comes to."""
    box, deep = min(g["F"], g["R"]) - 2 * g["c"], g["L"]
    wide, along = box - 2 * g["s"], deep - 2 * g["s"]
    sizes, slips = bottom_in_grooves(wide, along, g)
    return sizes | {"side": deep, "front": wide + 2 * g["r"]}, slips | {
        "side-depth": ("side", g["I"]),
        "side-between": ("side", along + 2 * g["r"]),
        "front-outside": ("front", box),
        "front-no-joint": ("front", wide),
        "front-offcut": ("front", box - g["s"]),
        "front-one-joint": ("front", wide + g["r"]),
    }


def bottom_in_grooves(
    wide: Fraction, along: Fraction, g: dict[str, Fraction]
) -> tuple[dict[str, Fraction], dict[str, tuple[str, Fraction]]]:
    """The two sizes of a bottom in a box that is so `wide` and so far `along` inside, and their slips."""
    two = 2 * g["q"]
    return {"bottom_width": wide + two - g["e"], "bottom_depth": along + two - g["e"]}, {
        "width-no-slack": ("bottom_width", wide + two),
        "width-no-groove": ("bottom_width", wide),
        "width-one-groove": ("bottom_width", wide + g["q"]),
        "depth-no-slack": ("bottom_depth", along + two),
        "depth-no-groove": ("bottom_depth", along),
        "depth-one-groove": ("bottom_depth", along + g["q"]),
    }
