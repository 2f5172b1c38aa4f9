"""Measuring, the second rung: one half, one sum, with fractions or with half millimetres."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.fractions_slipped import (
    FRONT,
    carry_dropped,
    each_alone,
    odd_one_lost,
    places_mixed,
    rest_not_halved,
    rounded_down,
)
from shoplib.lessons.measuring_givens import odd_length, two_lengths
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.measure import INCH, MM, share

RULE = Twin(INCH // 64, MM // 10)
"""What an answer may be off and still be right: a step of a fine rule."""


# One step: a half ----------------------------------------------------------------------------------


def half(givens: Givens) -> int:
    """Half of `A`."""
    return share(givens["A"], 2, 1)[0]


def _half_givens(draw: Draw) -> list[Given]:
    length = odd_length(draw)
    odd, rest, how = {
        "in": ("one inch too many: half of an odd number of inches is a whole number and a half",
               "the fraction", "The top number cannot be halved: double the bottom one instead."),
        "mm": ("one hundred too many: half of an odd number of hundreds is a whole number and 50",
               "what is less than a hundred", "Half of an odd number of millimetres ends in .5."),
    }[draw.unit]
    slips = {"odd": odd_one_lost(length.value, draw.unit), "rest": rest_not_halved(length.value, draw.unit),
             "down": rounded_down(length.value, draw.unit)}
    said = {"odd": odd, "rest": rest, "down": how}
    front = draw.derived("front", "", FRONT[draw.unit])
    return [length, front, *(Given(name, "", ticks, said[name]) for name, ticks in slips.items())]


def _half_effect(_givens: Givens, off: int, say: Say) -> str:
    return (
        f"The hook would sit {say.amount(off)} off the middle, and the two ends of the rail would differ by "
        f"{say.amount(2 * off)}."
    )


HALF = Exercise(
    id="01-half",
    title="The middle of a rail",
    rung="one step",
    question="The rail for the spare tubes is {A} long; one hook goes in at its middle. How far is that from an end?",
    givens=_half_givens,
    right=half,
    misconceptions=(
        Misconception(
            "odd-lost", lambda g: g["odd"],
            "That loses half of the odd one in front.",
            "You halved {odd}.",
        ),
        Misconception(
            "rest-kept", lambda g: g["rest"],
            "That halves what stands in front and keeps {rest} whole.",
            "Halve both parts.",
        ),
        Misconception(
            "rounded", lambda g: g["down"],
            "That rounds the half down.",
            "{down}",
        ),
    ),
    effect=_half_effect,
    fits="From either end it is the same.",
    hints=(
        "Halve the two parts of {A} one after the other.",
        "{down}",
        "Twice your answer must be {A} again.",
    ),
    working=lambda g, say: (
        f"half = {g.texts['A']} / 2 = {say.length(half(g))}",
        f"2 x {say.length(half(g))} = {g.texts['A']}",
    ),
    tolerance=RULE,
)


# One step: a sum -----------------------------------------------------------------------------------


def _sum(givens: Givens) -> int:
    return givens["B"] + givens["C"]


def _sum_givens(draw: Draw) -> list[Given]:
    first, second = two_lengths(draw)
    pair = first.value, second.value
    said = {
        "in": ("That adds top to top and bottom to bottom.", "That adds the tops as if both bottoms were 16.",
               "The inch that the fractions make together is missing.",
               "Write both fractions in sixteenths, then add the tops only."),
        "mm": ("The half millimetre is missing.", "The figures were not lined up: tenths were added to millimetres.",
               "The ten that the last figures make together is missing.",
               "Write the numbers under each other, point under point."),
    }[draw.unit]
    slips = (each_alone(*pair, draw.unit), places_mixed(*pair, draw.unit), carry_dropped(*pair, draw.unit))
    named = zip(("alone", "mixed", "carry"), slips, said, strict=False)
    return [first, second, *(Given(name, "", ticks, text) for name, ticks, text in named),
            Given("how", "", 0, said[3])]


def _sum_effect(_givens: Givens, off: int, say: Say) -> str:
    too = "long" if off > 0 else "short"
    return f"A shelf cut to that would be {say.amount(off)} too {too} for the two boards under it."


SUM = Exercise(
    id="01-sum",
    title="End to end",
    rung="one step",
    question=(
        "Two boards lie end to end on the bench, one {B} long, the other {C}. A shelf is to run over both. How long?"
    ),
    givens=_sum_givens,
    right=_sum,
    misconceptions=(
        Misconception("each-alone", lambda g: g["alone"], "{alone}", "{how}"),
        Misconception("unlike", lambda g: g["mixed"], "{mixed}", "{how}"),
        Misconception("no-carry", lambda g: g["carry"], "{carry}", "Add once more, and keep what is carried over."),
    ),
    effect=_sum_effect,
    fits="The shelf ends just where the second board does.",
    hints=("Add the whole numbers and what is behind them apart.", "{how}", "What makes a whole one is carried over."),
    working=lambda g, say: (f"{g.texts['B']} + {g.texts['C']} = {say.length(_sum(g))}",),
    tolerance=RULE,
)
