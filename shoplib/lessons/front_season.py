"""Fronts and gaps, two steps: a solid front in the damp season."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.front_effects import season_off
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.measure import INCH, MM
from shoplib.model.movement import movement
from shoplib.tables.wood import woods

WOOD = "white oak, commercial"


def _moved(givens: Givens, cut: str = "flatsawn") -> int:
    return movement(givens["h"], woods()[WOOD].coefficient(cut), givens["m1"], givens["m2"])


def _givens(draw: Draw) -> list[Given]:
    ranges = {"inch": ("10 1/32 in", "14 1/2 in", "1/16 in"), "mm": ("250.5 mm", "370 mm", "1 mm")}
    return [
        draw.tape("h", "front, height as made", **ranges), draw.count("m1", "", 6, 7), draw.count("m2", "", 12, 13),
        Given("C", "", 0, f"{float(woods()[WOOD].coefficient('flatsawn')):.5f}"),
        Given("CR", "", 0, f"{float(woods()[WOOD].coefficient('quartersawn')):.5f}"),
    ]


def _right(givens: Givens) -> int:
    return givens["h"] + _moved(givens)


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, more = givens.texts, say.exact(_moved(givens))
    return (
        f"change of moisture = {text['m2']} % - {text['m1']} %",
        f"movement = height x {text['C']} x change = {text['h']} x {text['C']} x "
        f"{givens['m2'] - givens['m1']}, which is {more}",
        f"height in the damp season = {text['h']} + {more} = {say.length(_right(givens))}",
    )


SEASON = Exercise(
    id="05-season",
    title="The front in the damp season",
    rung="two steps",
    question=(
        "A front of flatsawn white oak, its grain from left to right, is {h} high when it is made, at {m1} % of "
        "moisture. In the damp season the wood comes to {m2} %. For each 1 % it moves by {C} of its height; "
        "quartersawn boards would by {CR}. How high is it then?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=(
        Misconception(
            "unmoved", lambda g: g["h"],
            "That is the height as it was made.", "Across the grain wood grows when it takes up moisture.",
        ),
        Misconception(
            "quartersawn", lambda g: g["h"] + _moved(g, "quartersawn"),
            "That is what a quartersawn front would come to.", "Which of the two numbers is for flatsawn boards?",
        ),
        Misconception(
            "whole-content", lambda g: g["h"] + round(int(g["h"]) * woods()[WOOD].tangential * g["m2"]),
            "That moves it by the whole {m2} %, as if it had been made of bone-dry wood.",
            "By how many percent does the moisture change?",
        ),
        Misconception(
            "shrunk", lambda g: g["h"] - _moved(g),
            "That lets the front shrink.", "It takes up moisture: does it grow or shrink?",
        ),
    ),
    effect=season_off,
    fits="Plan the gap for this height, not for the one on the day it was made.",
    hints=(
        "First the change of moisture, in percent.",
        "Then height x the number for flatsawn boards x that change: so much it grows.",
        "Add it to the height as made.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 5),
)
