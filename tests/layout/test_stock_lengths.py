"""Lengths cut from boards as wide as the parts, against an exact solver that knows nothing of layouts.

`scipy.optimize.milp` is given the assignment model of one-dimensional cutting: part i on board b or not, board b used
or not, each board's lengths and a kerf between any two no longer than the board. What it proves is the least number
of boards there is.
"""

import time
from random import Random

import numpy as np
import pytest
from scipy.optimize import Bounds, LinearConstraint, milp

from shoplib.layout.pieces import Job, Part, Stock
from shoplib.layout.search import layouts
from tests.layout.judged import judged

SEEDS = range(24)
WIDTH, SECONDS = 140, 1.0


def a_list(seed):
    """Eight to sixteen rails of a few lengths, a board length, and a blade."""
    random = Random(seed)
    lengths = [random.randint(250, 1400) for _ in range(random.randint(4, 8))]
    return [random.choice(lengths) for _ in range(random.randint(8, 16))], random.choice([1800, 2400]), 3


def fewest_boards(lengths, board, kerf):
    """The least number of boards, proven."""
    at_most = boards_by_first_fit(lengths, board, kerf)
    parts = len(lengths)
    places = parts * at_most
    on_one = np.zeros((parts, places + at_most))
    room = np.zeros((at_most, places + at_most))
    order = np.zeros((at_most - 1, places + at_most))
    for b in range(at_most):
        for i, length in enumerate(lengths):
            on_one[i, i * at_most + b] = 1
            room[b, i * at_most + b] = length + kerf
        room[b, places + b] = -(board + kerf)
    for b in range(at_most - 1):
        order[b, places + b], order[b, places + b + 1] = 1, -1
    rules = [LinearConstraint(on_one, 1, 1), LinearConstraint(room, -np.inf, 0)]
    if at_most > 1:
        rules.append(LinearConstraint(order, 0, np.inf))
    cost = np.concatenate([np.zeros(places), np.ones(at_most)])
    found = milp(cost, constraints=rules, integrality=np.ones_like(cost), bounds=Bounds(0, 1),
                 options={"time_limit": 20})  # fmt: skip
    assert found.status == 0, "the solver did not prove its answer"
    return round(found.fun)


def boards_by_first_fit(lengths, board, kerf):
    left = []
    for length in sorted(lengths, reverse=True):
        for b, room in enumerate(left):
            if length + kerf <= room:
                left[b] -= length + kerf
                break
        else:
            left.append(board - length)
    return len(left)


@pytest.fixture(scope="module")
def compared():
    """For each list: boards of the layout, its bound, and the least number proven."""
    found = []
    for seed in SEEDS:
        lengths, board, kerf = a_list(seed)
        parts = tuple(Part(f"rail {k}", length, WIDTH) for k, length in enumerate(lengths))
        job = Job(parts, (Stock("board", board, WIDTH, cost=1),), kerf)
        *_, best = layouts(job, SECONDS, time.process_time)
        assert judged(job, best) == [], seed
        found.append((len(best.sheets), best.bound, fewest_boards(lengths, board, kerf)))
    return found


def test_no_layout_has_fewer_boards_than_there_can_be_and_no_bound_more(compared):
    assert [one for one in compared if not one[1] <= one[2] <= one[0]] == []


def test_most_layouts_have_as_few_boards_as_there_can_be(compared):
    """Not all need be: the search is no proof. More than one board too many would be a poor search."""
    over = [boards - least for boards, _, least in compared]
    assert over.count(0) >= 0.9 * len(over)
    assert max(over) <= 1
