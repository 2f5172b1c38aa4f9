"""Exercises whose answers are counted: strips of an offcut, sheets for equal parts, replacements from a rest."""

from shoplib.layout.strips import strips
from shoplib.lessons.counted import Counted
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.sheet_effects import sheets_off, spare_off, strips_off
from shoplib.lessons.sheet_givens import kerf, trim
from shoplib.measure import INCH, MM

WHOLE = Twin(0, 0)
"""Nothing is near to a count but the count itself."""

LITTLE = Twin(INCH // 32, MM)
"""Twice of it is less than any kerf."""


def times(count: int) -> str:
    """How often, in words.

    >>> times(1), times(3)
    ('once', '3 times')
    """
    return "once" if count == 1 else f"{count} times"


def _offcut(draw: Draw) -> list[Given]:
    blade = kerf(draw)
    wide = draw.tape("w", "strips, width", inch=("7/8 in", "1 1/8 in", "1/32 in"), mm=("22 mm", "30 mm", "0.5 mm"))
    # Both edges together take two strips with their kerfs, and the last strip just comes out of the rest, as it would
    # of the whole width: there all the slips tell, that of the kerf which the last strip does not need as well.
    edge = draw.derived("e", "trim, each long edge, blade included", wide.value + blade.value)
    many = draw.count("q", "", 11, 19)
    over = draw.count("over", "", 0, 2).value * LITTLE.of(draw.unit)
    across = many.value * (wide.value + blade.value) + wide.value + over
    return [draw.derived("S", "offcut, width", across), edge, wide, blade]


def _strips_working(g: Givens, say: Say) -> tuple[str, ...]:
    text, room, each = g.texts, g["S"] - 2 * g["e"] + g["k"], g["w"] + g["k"]
    count = STRIPS.right(g)
    return (
        f"{text['S']} - 2 x {text['e']} + {text['k']} = {say.exact(room)}, one kerf more: the last strip needs none",
        f"each strip with its kerf: {text['w']} + {text['k']} = {say.exact(each)}",
        f"{say.exact(room)} / {say.exact(each)} lies between {count} and {count + 1}: {STRIPS.counted.told(count)}",
    )


STRIPS = Exercise(
    id="08-strips",
    title="Strips from an offcut",
    rung="two steps",
    question=(
        "An offcut {S} wide has stood by the door, and its long edges are bruised: {e} comes off each of them first, "
        "blade included. The rest becomes strips {w} wide; the blade takes {k}. How many strips?"
    ),
    givens=_offcut,
    right=lambda g: strips(g["S"], g["w"], g["k"], g["e"]),
    misconceptions=(
        Misconception(
            "kerf-not-added", lambda g: (g["S"] - 2 * g["e"]) // (g["w"] + g["k"]),
            "That gives every strip a kerf, the last one too.", "Does the last strip need a cut on its far side?",
        ),
        Misconception(
            "no-kerf", lambda g: g["S"] // g["w"],
            "That divides the whole width by the strip alone.", "What does the blade take beside each strip?",
        ),
        Misconception(
            "trim-left-out", lambda g: strips(g["S"], g["w"], g["k"]),
            "That leaves the bruised edges on.", "How much width is left when both are off?",
        ),
        Misconception(
            "whole-width", lambda g: g["S"] // (g["w"] + g["k"]),
            "That divides the whole width by strip and kerf.", "Two edges come off before the first strip.",
        ),
    ),
    effect=strips_off,
    fits="Between strips there is one kerf less than strips: the far edge needs none.",
    hints=(
        "Take both edges off the width first.",
        "Each strip takes its kerf with it; only the last one needs none. So add one kerf to what is left.",
        "Divide by strip and kerf together, and leave the rest of the division out.",
    ),
    working=_strips_working,
    tolerance=WHOLE,
    counted=Counted("strip", "strips"),
)


def _order(draw: Draw) -> list[Given]:
    sheet = [
        draw.pick("S", "sheet, length, along the grain", inch=("96 in",), mm=("2440 mm",)),
        draw.pick("B", "sheet, width", inch=("48 in",), mm=("1220 mm",)),
    ]
    return [
        *sheet, draw.count("n", "parts", 20, 39),
        draw.tape("L", "part, length, along the grain", inch=("36 1/8 in", "46 in", "1/8 in"),
                  mm=("915 mm", "1170 mm", "1 mm")),
        draw.tape("w", "part, width", inch=("15 13/16 in", "16 in", "1/32 in"), mm=("402 mm", "406.5 mm", "0.5 mm")),
        trim(draw), kerf(draw),
    ]


def _up(count: int, by: int) -> int:
    """So many in lots of so many, the last one begun."""
    return -(-count // by)


def _a_sheet(g: Givens) -> tuple[int, int]:
    """How many parts lie one after another along a sheet, and side by side."""
    return strips(g["S"], g["L"], g["k"], g["e"]), strips(g["B"], g["w"], g["k"], g["e"])


def _turned(g: Givens) -> int:
    along, beside = strips(g["S"], g["w"], g["k"], g["e"]), strips(g["B"], g["L"], g["k"], g["e"])
    return along * beside


def _sheets(g: Givens) -> int:
    along, beside = _a_sheet(g)
    return _up(g["n"], along * beside)


def _sheets_working(g: Givens, say: Say) -> tuple[str, ...]:
    text, (along, beside) = g.texts, _a_sheet(g)
    each, ways = along * beside, (("S", "L", along, "along the grain"), ("B", "w", beside, "across"))
    lines = [
        f"{way}: {text[of]} - 2 x {text['e']} + {text['k']} has room for {text[part]} + {text['k']} = "
        f"{say.exact(g[part] + g['k'])} {times(count)}"
        for of, part, count, way in ways
    ]
    told = SHEETS.counted.told(_sheets(g))
    return (
        *lines, f"on each sheet: {along} x {beside} = {each}",
        f"{text['n']} parts, {each} on a sheet, the last sheet begun: {told}",
    )


SHEETS = Exercise(
    id="08-sheets",
    title="How many sheets",
    rung="two steps",
    question=(
        "{n} equal parts {L} x {w} are wanted, the grain along their length. A sheet is {S} x {B}, its grain along the "
        "{S}; {e} comes off each of its edges, blade included, and the blade takes {k}. How many sheets?"
    ),
    givens=_order,
    right=_sheets,
    misconceptions=(
        Misconception(
            "by-area", lambda g: _up(g["n"] * g["L"] * g["w"], g["S"] * g["B"]),
            "That divides the area of the parts by that of a sheet.",
            "Draw one sheet: how many whole parts lie on it, and what is left between them and the edge?",
        ),
        Misconception(
            "turned", lambda g: _up(g["n"], _turned(g)),
            "That lays the parts across the grain.", "Which way must the grain of the parts run?",
        ),
        Misconception(
            "no-kerf", lambda g: _up(g["n"], (g["S"] // g["L"]) * (g["B"] // g["w"])),
            "That leaves kerf and trim out.", "Three of them fill the width of a bought sheet; and of a trimmed one?",
        ),
    ),
    effect=sheets_off,
    fits="Areas tell the least that there can be; only a layout tells how many.",
    hints=(
        "Draw one sheet with its grain. How many parts lie one after another along it?",
        "How many lie side by side, when both edges are trimmed and a kerf is between them?",
        "Divide the parts by what one sheet holds. What is left over needs a sheet too.",
    ),
    working=_sheets_working,
    tolerance=WHOLE,
    counted=Counted("sheet", "sheets"),
)


def _left(draw: Draw) -> list[Given]:
    blade = kerf(draw)
    long = draw.tape("L", "largest part, length, along the grain", inch=("11 in", "17 in", "1/8 in"),
                     mm=("280 mm", "430 mm", "1 mm"))
    wide = draw.tape("w", "largest part, width", inch=("5 in", "8 in", "1/8 in"), mm=("125 mm", "205 mm", "1 mm"))
    along, beside = draw.count("a", "", 1, 2), draw.count("c", "", 3, 5)
    # Side by side they would just go in if the blade took nothing: there the kerf tells.
    over = draw.count("over", "", 0, 2).value * LITTLE.of(draw.unit)
    more = draw.tape("more", "", inch=("4 in", "10 in", "1/8 in"), mm=("100 mm", "250 mm", "1 mm"))
    return [
        draw.derived("A", "offcut, length, along the grain", along.value * long.value + more.value),
        draw.derived("B", "offcut, width", beside.value * wide.value + over), long, wide, blade,
    ]


def _again(g: Givens) -> tuple[int, int]:
    return strips(g["A"], g["L"], g["k"]), strips(g["B"], g["w"], g["k"])


def _spare(g: Givens) -> int:
    along, beside = _again(g)
    return along * beside


def _spare_working(g: Givens, say: Say) -> tuple[str, ...]:
    text, (along, beside) = g.texts, _again(g)
    ways = (("A", "L", along, "along the grain"), ("B", "w", beside, "across"))
    lines = [
        f"{way}: {text[of]} + {text['k']} has room for {text[part]} + {text['k']} = {say.exact(g[part] + g['k'])} "
        f"{times(count)}"
        for of, part, count, way in ways
    ]
    return *lines, f"{along} x {beside} = {_spare(g)}: {SPARE.counted.told(_spare(g))}"


SPARE = Exercise(
    id="08-spare",
    title="Could it be cut again?",
    rung="two steps",
    question=(
        "An offcut {A} x {B} is left over, all its edges sawn, its grain along the {A}. The largest part of the job is "
        "{L} x {w}, its grain along its length; the blade takes {k}. How many times could that part be cut again?"
    ),
    givens=_left,
    right=_spare,
    misconceptions=(
        Misconception(
            "by-area", lambda g: g["A"] * g["B"] // (g["L"] * g["w"]),
            "That divides areas.", "Draw the offcut: what is left at its end belongs to no part.",
        ),
        Misconception(
            "no-kerf", lambda g: (g["A"] // g["L"]) * (g["B"] // g["w"]),
            "That leaves the blade out.", "Side by side the parts fill the width: where would the blade go?",
        ),
        Misconception(
            "turned", lambda g: strips(g["A"], g["w"], g["k"]) * strips(g["B"], g["L"], g["k"]),
            "That lays the part across the grain.", "Which way must its grain run?",
        ),
    ),
    effect=spare_off,
    fits="Keep that offcut until the job is done. A part that no offcut gives again is cut with the most care.",
    hints=(
        "How many times does the length go along the grain? Mind the kerf between two.",
        "How many side by side, with their kerfs?",
        "Multiply the two.",
    ),
    working=_spare_working,
    tolerance=WHOLE,
    counted=Counted("replacement", "replacements"),
)
