"""No bound may promise less than what can be cut, nor a function more than a dual feasible one may."""

import json
import random
from itertools import islice, product

import numpy as np
import pytest

from shoplib.layout import bounds
from shoplib.layout.bounds import least_cost
from shoplib.layout.grown import grown
from shoplib.layout.pieces import Job, Part, Stock
from shoplib.layout.scales import closer_bounds
from shoplib.layout.search import layouts
from tests.layout.cabinet_lists import INSTANCES
from tests.layout.chance import job_by_chance


@pytest.mark.parametrize("full", [7, 10, 12, 30])
def test_functions_are_dual_feasible_and_superadditive(full):
    # Every pair of sizes: f(x) + f(y) <= f(x + y). With f(full) = 1, whatever fits side by side then still does.
    sizes = np.arange(full + 1)
    functions = list(bounds.functions(np.arange(1, full + 1), full))
    assert len(functions) > 10
    for f in functions:
        of = f(sizes)
        assert of[0] == 0
        assert of[full] == pytest.approx(1)
        for x, y in product(range(full + 1), repeat=2):
            if x + y <= full:
                assert of[x] + of[y] <= of[x + y] + 1e-12


def fewest_by_trying_all(parts, wide, high):
    """The fewest sheets for parts that lie as given, by trying every place (not only cuts from edge to edge)."""

    def fits(left, taken):
        if not left:
            return True
        (w, h), *rest = left
        for x, y in product(range(wide - w + 1), range(high - h + 1)):
            if all(x + w <= a or a + c <= x or y + h <= b or b + d <= y for a, b, c, d in taken):  # noqa: SIM102
                if fits(rest, [*taken, (x, y, w, h)]):
                    return True
        return False

    def share(left, sheets):
        if not left:
            return len(sheets)
        best = len(parts)
        for number in range(len(sheets) + 1):
            on = [*sheets[number], left[0]] if number < len(sheets) else [left[0]]
            if len(sheets) - (number < len(sheets)) + 1 <= best and fits(sorted(on, reverse=True), []):
                best = min(best, share(left[1:], [*sheets[:number], on, *sheets[number + 1 :]]))
        return best

    return share(parts, [])


def test_bound_is_never_above_what_trying_all_finds(count):
    chance = random.Random(5)
    met = 0
    for _ in range(count(40, 300)):
        wide, high = chance.randint(3, 6), chance.randint(3, 6)
        parts = [(chance.randint(1, wide), chance.randint(1, high)) for _ in range(chance.randint(2, 5))]
        job = Job(tuple(Part("p", w, h) for w, h in parts), (Stock("s", wide, high, cost=1),))
        fewest = fewest_by_trying_all(parts, wide, high)
        assert bounds.least_cost(grown(job)) <= fewest
        met += bounds.least_cost(grown(job)) == fewest
    assert met > count(40, 300) * 0.8


def test_parts_of_more_than_half_block_each_other():
    # Nine of 6 by 6 on 10 by 10: no two fit, though their area is that of 3.24 sheets.
    job = Job((Part("p", 6, 6, 9, True),), (Stock("s", 10, 10, cost=1),))
    assert bounds.least_cost(grown(job)) == 9


def test_bound_counts_what_lies_in_the_shop_and_the_cheapest_size():
    parts = (Part("p", 10, 10, 8),)
    shop = Stock("offcut", 20, 20, 1, 0)
    assert bounds.least_cost(grown(Job(parts, (Stock("s", 20, 10, cost=7), shop)))) == 14
    # Two to a sheet at 7, or four to one at 12: three for 4 each at the cheaper rate.
    assert bounds.least_cost(grown(Job(parts, (Stock("s", 20, 10, cost=7), Stock("l", 20, 20, cost=12))))) == 24
    assert bounds.least_cost(grown(Job(parts, (Stock("s", 20, 10, 4, cost=7),)))) == 28


def test_kerf_and_trim_count():
    # Two of 1220 side by side on 2440 leave no room for the blade, nor for a trimmed edge.
    parts = (Part("p", 1220, 600, 2),)
    assert bounds.least_cost(grown(Job(parts, (Stock("s", 2440, 600, cost=1),)))) == 1
    assert bounds.least_cost(grown(Job(parts, (Stock("s", 2440, 600, cost=1),), kerf=3))) == 2
    assert bounds.least_cost(grown(Job(parts, (Stock("s", 2440, 600, cost=1, trim_ends=1),)))) == 2


def as_job(instance, turn):
    parts = tuple(Part(str(n), w, h, count, turn) for n, (w, h, count) in enumerate(instance["parts"]))
    return Job(parts, (Stock("sheet", *instance["sheet"], cost=1),))


def test_closer_bounds_stay_below_every_known_result_and_reach_more_of_them():
    """Against the records of the literature, whose source stands in tests/bench/instances/README.md."""
    raised = 0
    lines = (INSTANCES.parent / "sheets_2bp.jsonl").read_text(encoding="utf-8").splitlines()
    for instance in map(json.loads, lines[::25]):
        for turn, known in ((False, instance["as_given"]), (True, instance["may_turn"])):
            g = grown(as_job(instance, turn))
            least = least_cost(g)
            closer = max(islice(closer_bounds(g), 6))
            assert max(least, closer) <= known["fewest_known"], (instance["id"], turn)
            raised += closer > least
    assert raised


@pytest.mark.parametrize("seed", range(30))
def test_closer_bounds_stay_below_the_layouts_of_several_stocks(seed):
    """No layout that the search finds, of whatever stock and kerf, may cost less than a bound."""
    job = job_by_chance(1_000 + seed)
    *_, found = layouts(job, 0.3)
    assert max(islice(closer_bounds(grown(job)), 4)) <= found.cost
