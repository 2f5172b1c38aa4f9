"""Each learner's numbers: the same in every process, apart from one another, on steps of the shop."""

import os
import subprocess
import sys
from dataclasses import replace
from hashlib import sha256
from pathlib import Path

import pytest

from shoplib.lessons.exercise import Given, Givens
from shoplib.lessons.lesson_00 import FOLLOWS
from shoplib.lessons.lesson_02 import ANOTHERS_LIST, BACK, BOTTOM, WHOLE_CASE
from shoplib.lessons.lesson_03 import ANOTHERS_MARKS, TONGUE_SET, TONGUES, WOOD
from shoplib.lessons.numbers import Draw, givens_for, seed_of
from shoplib.measure import INCH, MM

ROOT = Path(__file__).parents[2]
NOORS_INCHES = {"W": "42 in", "T": "3/4 in", "t": "0.697 in", "d": "1/4 in"}
NOORS_MILLIMETRES = {"W": "900 mm", "T": "18 mm", "t": "17.4 mm", "d": "6 mm"}
PRINT = """
from shoplib.lessons import lesson_00, lesson_02
from shoplib.lessons.posed import pose
for exercise in [*lesson_00.EXERCISES, *lesson_02.EXERCISES]:
    for unit in ("in", "mm"):
        for learner in ("Noor", "Émile", ""):
            print(ascii(pose(exercise, learner, unit).question))
"""


def test_same_numbers_in_every_process():
    printed = set()
    for hash_seed in ("0", "1", "77"):
        environment = {**os.environ, "PYTHONHASHSEED": hash_seed, "PYTHONPATH": str(ROOT)}
        run = subprocess.run(
            [sys.executable, "-c", PRINT], env=environment, capture_output=True, text=True, check=True
        )
        printed.add(run.stdout)
    assert len(printed) == 1
    assert len(printed.pop().splitlines()) == 36


def test_numbers_once_given_stay():
    """A change of the draw needs a new content version, or learners' numbers change under their hands."""
    assert givens_for(BOTTOM, "Noor", "in").texts == NOORS_INCHES
    assert givens_for(BOTTOM, "Noor", "mm").texts == NOORS_MILLIMETRES


CUTS = {
    FOLLOWS: "d", BACK: "b", BOTTOM: "d", ANOTHERS_LIST: "db", WHOLE_CASE: "db",
    WOOD: "d", TONGUES: "d", ANOTHERS_MARKS: "db", TONGUE_SET: "dkb",
}


@pytest.mark.parametrize("asked", CUTS, ids=lambda asked: asked.id)
def test_no_exercise_leaves_less_than_half_of_a_side(asked, unit):
    """The pages call that weak; only where dadoes lie back to back is it the very question."""
    drawn = set()
    for number in range(40):
        givens = givens_for(asked, f"learner {number}", unit)
        drawn.add(tuple(givens[cut] for cut in CUTS[asked]))
        assert all(2 * (givens["t"] - givens[cut]) >= givens["t"] for cut in CUTS[asked])
    assert len(drawn) >= 2


def test_the_seed_is_the_sha256_of_its_four_parts():
    joined = b"Noor\x1f02-bottom\x1fmm\x1f3"
    assert seed_of("Noor", "02-bottom", "mm", 3) == sha256(joined).hexdigest()
    parts = [("a", "b", "in", 1), ("ab", "", "in", 1), ("a", "b", "mm", 1), ("a", "b", "in", 2)]
    assert len({seed_of(*each) for each in parts}) == len(parts)


def test_a_new_version_gives_new_numbers():
    newer = replace(BOTTOM, version=BOTTOM.version + 1)
    learners = [f"learner {number}" for number in range(20)]
    same = [each for each in learners if givens_for(BOTTOM, each, "in") == givens_for(newer, each, "in")]
    assert len(same) <= 2


def test_a_draw_where_two_rules_come_out_alike_is_drawn_again():
    seen = []

    def alike_at_first(draw: Draw) -> list[Given]:
        seen.append(draw.attempt)
        rows = BACK.givens(draw)
        if draw.attempt < 3:  # no rabbet to speak of: with it or without it comes out alike
            rows = [replace(row, value=1) if row.name == "b" else row for row in rows]
        return rows

    givens = givens_for(replace(BACK, givens=alike_at_first), "Noor", "in")
    assert seen == [0, 1, 2, 3]
    assert givens["b"] > 1


def test_an_exercise_whose_rules_are_always_alike_is_refused():
    same = replace(BACK.misconceptions[0], rule=BACK.right)
    with pytest.raises(RuntimeError, match="02-back: two rules came out alike in each of 200 draws"):
        givens_for(replace(BACK, misconceptions=(same,)), "Noor", "in")


def test_apart_means_more_than_three_tolerances():
    givens = Givens([Given("x", "", 100 * INCH, "100 in")])
    near = BACK.tolerance.of("in")
    for off, apart in ((3 * near, False), (3 * near + 1, True), (-3 * near, False), (-3 * near - 1, True)):
        slip = replace(BACK.misconceptions[0], rule=lambda g, off=off: g["x"] + off)
        exercise = replace(BACK, right=lambda g: g["x"], misconceptions=(slip,))
        assert exercise.apart(givens, "in") is apart


def test_draws_reach_both_ends_and_lie_on_steps():
    ranges = {"inch": ("1 in", "2 in", "1/4 in"), "mm": ("1 mm", "1 mm", "1 mm")}
    drawn = {Draw(str(seed), "in").tape("x", "", **ranges).value for seed in range(100)}
    assert drawn == {INCH, INCH * 5 // 4, INCH * 3 // 2, INCH * 7 // 4, 2 * INCH}
    metric = {
        Draw(str(seed), "mm").pick("x", "", inch=("1 in",), mm=("6 mm", "8 mm")).value for seed in range(50)
    }
    assert metric == {6 * MM, 8 * MM}
    assert {Draw(str(seed), "mm").count("n", "", 2, 4).value for seed in range(50)} == {2, 3, 4}
