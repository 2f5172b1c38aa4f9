"""The judge of layouts, judged: sound ones pass, and each way to spoil one is caught."""

import ast
from pathlib import Path
from random import Random

import pytest

from tests.judge.sheets import Bought, Lying, Wanted, cuttable, faults

KERF = 3
SHEET = Bought(206, 103, 2, 1)
ORDER = [Wanted(100, 50), Wanted(99, 24, 2), Wanted(30, 99, 1, True)]
# Worked by hand: 202 x 101 lies inside the trim, from 2, 1. Part 0 and both of part 1 stand over one another,
# 50 + 3 + 24 = 77, 77 + 3 + 24 = 104 > 101: so the second lies beside part 0, and part 2 turned below it.
SOUND = [
    Lying(0, 2, 1, 100, 50),
    Lying(1, 2, 54, 99, 24),
    Lying(1, 105, 1, 99, 24),
    Lying(2, 105, 28, 99, 30),
]


def judged(lying, kerf=KERF, order=ORDER, sheet=SHEET):
    return faults(order, [sheet], kerf, [(0, lying)])


def test_a_sound_layout_passes():
    assert judged(SOUND) == []


def test_it_knows_nothing_of_the_project():
    tree = ast.parse((Path(__file__).parent / "sheets.py").read_text(encoding="utf-8"))
    imported = [node.module for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)]
    imported += [name.name for node in ast.walk(tree) if isinstance(node, ast.Import) for name in node.names]
    assert not [name for name in imported if name.startswith(("shoplib", "tests"))]


def moved(at, **by):
    return [part._replace(**by) if place == at else part for place, part in enumerate(SOUND)]


@pytest.mark.parametrize(
    ("lying", "words"),
    [
        (moved(1, y=50), "overlap"),  # by one unit
        (moved(2, x=101), "overlap"),
        (moved(1, y=53), "blade"),  # 2 between parts, the blade takes 3
        (moved(3, y=27), "blade"),
        (moved(0, x=1), "outside"),
        (moved(0, y=0), "outside"),
        (moved(2, x=106), "outside"),  # ends at 205, the trim begins at 204
        (SOUND[:-1], "1 ordered, 0 laid"),
        ([*SOUND, SOUND[0]._replace(y=51)], "1 ordered, 2 laid"),
        ([*SOUND, Lying(7, 2, 81, 5, 5)], "0 ordered, 1 laid"),
        ([*SOUND, Lying(-1, 2, 81, 5, 5)], "0 ordered, 1 laid"),
        (moved(1, w=24, h=99, x=2, y=54), "across the grain"),
        (moved(0, w=99), "ordered 100 x 50"),
    ],
)
def test_each_way_to_spoil_it_is_caught(lying, words):
    assert any(words in fault for fault in judged(lying))


def test_what_may_turn_may_lie_either_way():
    order = [*ORDER[:2], Wanted(99, 30, 1, False)]
    assert judged(SOUND, order=order) == []
    assert any("across" in fault for fault in judged(SOUND, order=[*ORDER[:2], Wanted(30, 99, 1, False)]))


def test_no_more_sheets_than_there_are():
    one = Bought(10, 10, count=1)
    lying = [Lying(0, 0, 0, 10, 10)]
    assert faults([Wanted(10, 10, 2)], [one], 1, [(0, lying), (0, lying)]) == ["size 0: 2 sheets used, there are 1"]
    assert faults([Wanted(10, 10)], [one], 1, [(-1, lying)]) == ["sheet 1: there is no size -1"]


# Four parts round a hole: each blocks the cut that would free the next.
PINWHEEL = [Lying(0, 0, 0, 60, 30), Lying(1, 61, 0, 30, 60), Lying(2, 31, 61, 60, 30), Lying(3, 0, 31, 30, 60)]


def test_parts_that_lock_one_another_are_refused():
    order = [Wanted(60, 30), Wanted(30, 60), Wanted(60, 30), Wanted(30, 60)]
    found = faults(order, [Bought(91, 91)], 1, [(0, PINWHEEL)])
    assert found == ["sheet 1: no cuts from edge to edge free all parts"]
    assert not cuttable(PINWHEEL, 0)
    for gone in range(4):
        assert cuttable([part for part in PINWHEEL if part.part != gone], 1)


@pytest.mark.parametrize("kerf", [0, 1, 4])
def test_the_strips_of_a_sheet(kerf):
    """As many strips of width w as the rule of the trade gives, (S - 2e + k) / (w + k), and not one more."""
    for width in (7, 10, 33):
        sheet = Bought(50, 100 + 2 * 5, 0, 5)
        most = (100 + kerf) // (width + kerf)
        laid = [Lying(0, 0, 5 + n * (width + kerf), 50, width) for n in range(most + 1)]
        assert faults([Wanted(50, width, most)], [sheet], kerf, [(0, laid[:-1])]) == []
        assert faults([Wanted(50, width, most + 1)], [sheet], kerf, [(0, laid)]) != []


def sliced(random, x, y, w, h, kerf):
    """Parts that fill a piece but for the blade: cut at random places until they are small."""
    if w * h < 900 or max(w, h) < 2 * kerf + 20 or random.random() < 0.1:
        return [(x, y, w, h)]
    if w > h:
        at = random.randint(5, w - kerf - 5)
        return [*sliced(random, x, y, at, h, kerf), *sliced(random, x + at + kerf, y, w - at - kerf, h, kerf)]
    at = random.randint(5, h - kerf - 5)
    return [*sliced(random, x, y, w, at, kerf), *sliced(random, x, y + at + kerf, w, h - at - kerf, kerf)]


def test_a_sheet_that_was_cut_up_passes_and_one_unit_more_is_caught(count):
    random, spoiled = Random(11), 0
    for _ in range(count(150, 1_500)):
        kerf = random.choice([1, 2, 4])
        pieces = sliced(random, 0, 0, random.randint(60, 240), random.randint(60, 120), kerf)
        length, width = max(x + w for x, _, w, _ in pieces), max(y + h for _, y, _, h in pieces)
        lying = [Lying(n, *piece) for n, piece in enumerate(pieces)]
        order = [Wanted(w, h) for _, _, w, h in pieces]
        assert faults(order, [Bought(length, width)], kerf, [(0, lying)]) == []
        for at, part in enumerate(lying):
            if len(lying) == 1:
                continue
            bigger = [*lying[:at], part._replace(w=part.w + 1), *lying[at + 1 :]]
            order_too = [*order[:at], Wanted(part.w + 1, part.h), *order[at + 1 :]]
            beside = any(  # something stands at the side that grew, so near that the blade no longer passes there
                other.x - part.x - part.w == kerf and other.y < part.y + part.h and part.y < other.y + other.h
                for other in lying
            )
            found = faults(order_too, [Bought(length, width)], kerf, [(0, bigger)])
            if beside or part.x + part.w == length:
                spoiled += 1
                assert found, (pieces, kerf, at)
    assert spoiled > 500
