"""Faults of form that the judge tells: names, sizes, sheets, placements, cuts, references."""

import pytest

from tests.judge.judge import judge
from tests.judge.mutate import board, cut_for, told


def test_two_of_one_name(plan):
    board(plan, "back")["name"] = "top"
    assert told(plan, "2 boards are called top")


def test_size_not_positive(plan):
    board(plan, "back")["size"][1] = 0
    assert told(plan, "back has the size")


def test_unknown_sheet(plan):
    board(plan, "back")["sheet"] = "no such sheet"
    assert told(plan, "back is of an unknown sheet")


def test_thickness_not_that_of_the_sheet(plan):
    board(plan, "back")["size"][2] = 6.2
    assert told(plan, "back is 6.2 mm thick, its sheet 6.1 mm")


def test_thickness_not_the_mean_of_the_readings(plan):
    plan["sheets"][0]["readings"] = [18.1, 18.2]
    assert told(plan, "its readings mean 18.15")


def test_left_handed_axes(plan):
    board(plan, "left side")["axes"] = ["+z", "-y", "-x"]
    assert told(plan, "the axes of left side", "left-handed")


def test_axes_that_name_one_direction_twice(plan):
    board(plan, "left side")["axes"] = ["+z", "+z", "-x"]
    assert told(plan, "do not name x, y and z once each")


def test_cut_outside_its_board(plan):
    cut_for(plan, "left side", "back")["high"][0] += 0.5
    assert told(plan, "groove in left side", "outside 0 to 400")


def test_cut_without_size(plan):
    groove = cut_for(plan, "left side", "back")
    groove["high"][2] = groove["low"][2]
    assert told(plan, "groove in left side", "no positive size")


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"centre": [50, 50, 5]}, "no face lies there"),
        ({"depth": 30}, "30 deep in 18.1"),
        ({"centre": [2, 50, 0]}, "leaves 0 to 400"),
        ({"diameter": 0}, "diameter 0"),
    ],
)
def test_holes(plan, change, words):
    board(plan, "left side")["cuts"].append(
        {"kind": "hole", "centre": [50, 50, 0], "along": "w", "diameter": 5, "depth": 10, "for": ""} | change
    )
    assert told(plan, "hole in left side", words)


def test_a_sound_hole_is_no_fault(plan):
    board(plan, "left side")["cuts"].append(
        {"kind": "hole", "centre": [50, 50, 0], "along": "w", "diameter": 5, "depth": 10, "for": ""}
    )
    assert judge(plan) == []


def test_outline_outside_its_board(plan):
    board(plan, "left side")["cuts"].append(
        {"kind": "dovetail", "outline": [[0, 0], [10, 0], [10, 20]], "along": "u", "from": 0, "to": 10}
    )
    assert told(plan, "dovetail in left side", "outside 0 to 18.1")


def test_unknown_names(plan):
    plan["joints"][0]["enters"] = "nothing"
    plan["gaps"][0]["between"] = ["top", "nobody"]
    plan["hardware"][0]["on"] = "nowhere"
    assert told(plan, "unknown board nothing")
    assert told(plan, "unknown board nobody")
    assert told(plan, "unknown board, nowhere")


def test_a_drawer_without_travel(plan):
    del plan["travel"][1]
    assert told(plan, "group bay 1 drawer 2 has no travel")


@pytest.mark.parametrize("vector", [[0, 400, 0], [0, 0, 0], [1, -400, 0]])
def test_outward_is_minus_y(plan, vector):
    plan["travel"][0]["vector"] = vector
    assert told(plan, "outward is -y")


def test_a_drawer_board_that_was_put_with_the_case(plan):
    board(plan, "bay 1 drawer 1 box bottom")["group"] = "case"
    assert told(plan, "it fastens case to bay 1 drawer 1")
