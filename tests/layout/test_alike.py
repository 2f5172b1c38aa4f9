"""Layouts of one cost for a choice: sound, different, with equal widths in rows and with a large piece kept whole."""

import json
import time
from fractions import Fraction
from itertools import islice

import pytest

from shoplib.layout.alike import alike
from shoplib.layout.choose import best_for
from shoplib.layout.in_rows import rows
from shoplib.layout.pieces import Job, LayoutError, Part, Stock
from shoplib.layout.room_kept import largest_room, sheet_by_sheet, with_room
from shoplib.layout.search import layouts, pool
from shoplib.measure import INCH
from tests.bench.choice import LEAST, chosen_of
from tests.bench.sheets import job_of
from tests.layout.cabinet_lists import INSTANCES
from tests.layout.chance import job_by_chance
from tests.layout.judged import judged


def cabinet(number):
    """One of the made-up cabinet lists, in sixteenths of an inch."""
    instance = json.loads(INSTANCES.read_text(encoding="utf-8").splitlines()[number - 1])
    return job_of(instance, False)


def never():
    return False


def ticks(inches):
    return int(Fraction(inches) * INCH)


def test_three_dividers_and_eight_shelves_need_three_strips():
    """By hand: 3 x 15.33 + 8.845 + 3 x 3/32 = 55.13 in, six shelves 53.54 in, and one shelf more."""
    parts = Part("divider", ticks("15.33"), ticks("7.58"), 3), Part("shelf", ticks("8.845"), ticks("7.58"), 8)
    job = Job(parts, (Stock("ply", ticks(60), ticks(60), cost=1),), ticks("3/32"))
    assert [run.parts for run in rows(job, ticks("59.5"))] == [(0, 0, 0, 1), (1,) * 6]


@pytest.mark.parametrize("across", [False, True])
def test_no_row_is_longer_than_it_may_be_and_no_part_is_in_two(across):
    for number in range(1, 21):
        job = cabinet(number)
        longest = job.stock[0].width if across else job.stock[0].length
        found = rows(job, longest, across)
        for run in found:
            sides = [(job.parts[n].width if across else job.parts[n].length) for n in run.parts]
            assert sum(sides) + job.kerf * (len(sides) - 1) <= longest
            assert len({job.parts[n].length if across else job.parts[n].width for n in run.parts}) == 1
        for n, part in enumerate(job.parts):
            assert sum(run.parts.count(n) for run in found) <= part.count


@pytest.mark.parametrize("seed", range(12))
def test_all_layouts_are_sound_and_cost_no_more(seed):
    job = job_by_chance(seed)
    try:
        *_, best = layouts(job, 0.2)
    except LayoutError:
        return
    found = list(pool(job, best.cost, 0.5))
    assert len(found) == len({frozenset(layout.sheets) for layout in found})
    for layout in found:
        assert judged(job, layout) == []
        assert layout.cost == sum(job.stock[laid.stock].cost for laid in layout.sheets) <= best.cost


@pytest.mark.parametrize(("number", "least"), [(4, 0.92), (5, 0.6), (9, 0.95), (15, 0.82)])
def test_a_known_room_is_made_larger(number, least):
    """The first layouts leave 0.45, 0.25, 0.69 and 0.75 of a sheet in one piece; no source but the lists themselves."""
    job = cabinet(number)
    *_, first = layouts(job, 1)
    found = [layout for layout in with_room(job, first.cost, [first], never) if layout]
    for layout in found:
        assert judged(job, layout) == [] and layout.cost == first.cost
    sheet = job.stock[0].usable.area
    assert max(largest_room(job, layout)[0] for layout in found) > least * sheet > largest_room(job, first)[0]


def test_one_sheet_is_laid_out_anew_and_the_others_stay():
    job = cabinet(3)
    *_, first = layouts(job, 1)
    found = [layout for layout in sheet_by_sheet(job, [first], never) if layout]
    assert found
    for layout in found:
        assert judged(job, layout) == []
        assert len(set(layout.sheets) & set(first.sheets)) >= len(first.sheets) - 1
        assert largest_room(job, layout) > largest_room(job, first)


def test_a_room_on_a_piece_in_the_shop_that_is_not_used_is_no_gain():
    stock = Stock("offcut", 900, 900, count=1), Stock("ply", 1000, 1000, None, 5)
    job = Job((Part("side", 950, 300, 2),), stock, 3)
    *_, first = layouts(job, 0.2)
    for layout in islice(alike(job, first.cost, 0.5, time.monotonic), 50):
        assert [laid.stock for laid in layout.sheets] == [1]


@pytest.mark.parametrize("number", [4, 9, 15])
def test_the_chosen_offcut_is_larger_than_that_of_the_first_layout(number):
    """Beside the library's best of 72 ways: 0.715, 0.818 and 0.771 of a sheet (`tests/bench/choice.py`)."""
    job = cabinet(number)
    cheapest, chosen = chosen_of(job, "largest offcut", 2.0)
    assert judged(job, chosen.layout) == []
    sheet = job.stock[0].usable.area
    assert chosen.shop.offcut > {4: 0.93, 9: 0.95, 15: 0.83}[number] * sheet
    assert chosen.shop.offcut > best_for("largest offcut", job, [cheapest], LEAST).shop.offcut
