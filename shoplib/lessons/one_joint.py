"""Joinery allowances, the first rungs: where a dado begins, how wide it is, what it leaves."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.joint_case import joint_case, shelf_joint
from shoplib.lessons.joint_effects import place_off, width_off, wood_off
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.usual_givens import sheet_as_measured, sheet_as_sold
from shoplib.measure import read_length, share


def by_the_rule(draw: Draw, what: str) -> Given:
    """A thickness on a mark of the rule, for sums without decimals."""
    return draw.pick("t", what, inch=("45/64 in", "23/32 in"), mm=("17.4 mm", "17.5 mm", "17.6 mm"))


# Read a number off -------------------------------------------------------------------------------


def _place_givens(draw: Draw) -> list[Given]:
    high = draw.tape("H", "sides, length", inch=("30 in", "38 in", "1/4 in"), mm=("760 mm", "960 mm", "5 mm"))
    up = draw.tape("p", "underside of the shelf above the lower end", inch=("8 1/8 in", "13 1/8 in", "1/4 in"),
                   mm=("211 mm", "331 mm", "5 mm"))
    return [high, up, by_the_rule(draw, "shelf, thickness as measured")]


def _place(givens: Givens) -> int:
    case = joint_case((givens["t"],), height=givens["H"], dado=givens["t"] // 3, at=givens["p"])
    return shelf_joint(case).near_wall


PLACE = Exercise(
    id="03-place",
    title="Where the dado begins",
    rung="read a number off",
    question=(
        "The sides of the shelf for inner tubes are {H} long. Its one fixed shelf is to have its underside {p} above "
        "the lower ends, and both sides are marked from there. The shelf is {t} thick. How far from the lower end "
        "is the near wall of the dado, the one that the shelf rests on?"
    ),
    givens=_place_givens,
    right=_place,
    misconceptions=(
        Misconception(
            "far-wall", lambda g: g["p"] + g["t"],
            "That is the far wall: the thickness of the shelf was added.",
            "On which wall does the underside of the shelf rest?",
        ),
        Misconception(
            "centre", lambda g: g["p"] + share(g["t"], 2, 1)[0],
            "That is the centre of the dado.",
            "A dado is marked by its walls; the cutter has no centre that you can see.",
        ),
        Misconception(
            "wrong-end", lambda g: g["H"] - g["p"],
            "That is measured from the other end of the side.",
            "Which end do all marks of this case begin at?",
        ),
        Misconception(
            "mirrored", lambda g: g["H"] - g["p"] - g["t"],
            "That is the near wall seen from the upper end: marked so, one side would be the mirror of the other.",
            "Lay both sides with their lower ends at the same stop block.",
        ),
    ),
    effect=place_off,
    fits="The underside of the shelf rests on that wall; the other wall follows from the shelf itself.",
    hints=(
        "Draw the side and the shelf in it. Write the height of the underside beside it.",
        "The underside of the shelf and the near wall of the dado are the same line.",
    ),
    working=lambda g, say: (
        f"The underside stands {g.texts['p']} above the lower end, and rests on the near wall.",
        f"near wall = {say.length(_place(g))}",
        f"far wall = {g.texts['p']} + {g.texts['t']} = {say.length(g['p'] + g['t'])}",
        f"The far wall is taken from the shelf itself. How long the sides are, {g.texts['H']}, stands in no sum.",
    ),
    tolerance=RULE,
)


# One step ----------------------------------------------------------------------------------------


def _width_givens(draw: Draw) -> list[Given]:
    mean, nominal = sheet_as_measured(draw), sheet_as_sold(draw)
    spread = draw.reading("s", "", inch=("0.010 in", "0.014 in", "0.001 in"), mm=("0.25 mm", "0.35 mm", "0.05 mm"))
    thin = draw.derived_reading("thin", "thinnest reading", mean.value - spread.value)
    thick = draw.derived_reading("thick", "thickest reading", mean.value + spread.value)
    fit = draw.reading("f", "fit", inch=("0.004 in", "0.005 in", "0.001 in"), mm=("0.1 mm", "0.15 mm", "0.05 mm"))
    return [nominal, thin, mean, thick, fit]


def _dado_width(givens: Givens) -> int:
    case = joint_case((givens["thin"], givens["t"], givens["thick"]), dado=givens["t"] // 3, fit=givens["f"])
    return shelf_joint(case).width


WIDTH = Exercise(
    id="03-width",
    title="How wide the dado is",
    rung="one step",
    question=(
        "The sheet of the shelf was sold as {T}. Calipers read {thin}, {t} and {thick}; the mean is {t}. The shelf "
        "is to go into its dadoes with a fit of {f}. How wide is a dado cut?"
    ),
    givens=_width_givens,
    right=_dado_width,
    misconceptions=(
        Misconception(
            "nominal", lambda g: g["T"],
            "That is the name of the sheet.",
            "A cutter sold for the name leaves a loose joint: look at what the calipers read.",
        ),
        Misconception(
            "mean", lambda g: g["t"],
            "That is the mean of the readings.",
            "The whole edge goes into the dado, its thickest place too.",
        ),
        Misconception(
            "mean-and-fit", lambda g: g["t"] + g["f"],
            "That is the mean of the readings and the fit.",
            "The mean serves for lengths. Which reading must still go in?",
        ),
        Misconception(
            "no-fit", lambda g: g["thick"],
            "That is the thickest reading, with no fit.",
            "A dado just as wide as the board must be hammered home.",
        ),
    ),
    effect=width_off,
    fits="The thickest corner goes in with {f} to spare.",
    hints=(
        "What must go into the dado: the name of the sheet, its mean, or its thickest place?",
        "The fit comes on top of that reading.",
        "Thickest reading + fit.",
    ),
    working=lambda g, say: (
        f"Of {g.texts['thin']}, {g.texts['t']} and {g.texts['thick']} the thickest is {g.texts['thick']}.",
        f"dado = {g.texts['thick']} + {g.texts['f']} = {say.length(_dado_width(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=Twin(read_length("0.001 in"), read_length("0.03 mm")),
    caliper=True,
)


def _wood_givens(draw: Draw) -> list[Given]:
    deep = draw.pick("d", "dado, depth", inch=("3/16 in", "1/4 in", "5/16 in"), mm=("6 mm", "7 mm", "8 mm"))
    return [sheet_as_sold(draw), sheet_as_measured(draw), deep]


def _wood(givens: Givens) -> int:
    return shelf_joint(joint_case((givens["t"],), dado=givens["d"])).wood_left


WOOD = Exercise(
    id="03-wood",
    title="What the dado leaves",
    rung="one step",
    question=(
        "A side was sold as {T} and measures {t}. A dado {d} deep is cut across it for a shelf. How much wood is "
        "left under the dado?"
    ),
    givens=_wood_givens,
    right=_wood,
    misconceptions=(
        Misconception(
            "nominal", lambda g: g["T"] - g["d"],
            "That takes the dado off {T}, the name of the sheet.",
            "How thick is the side under the calipers?",
        ),
        Misconception(
            "the-cut", lambda g: g["d"],
            "That is the wood that is cut away.",
            "The question is about what stays.",
        ),
        Misconception(
            "twice", lambda g: g["t"] - 2 * g["d"],
            "That takes two dadoes off the side.",
            "This side has a dado in one face only.",
        ),
    ),
    effect=wood_off,
    fits="Compare it with half of the side: with less than that left, the panel says Look.",
    hints=(
        "Begin with the side as measured, {t}.",
        "The dado takes {d} of it away, from one face.",
    ),
    working=lambda g, say: (
        f"left = side as measured - depth of the dado = {g.texts['t']} - {g.texts['d']} = {say.length(_wood(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=Twin(read_length("0.005 in"), read_length("0.1 mm")),
    caliper=True,
)
