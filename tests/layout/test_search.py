"""The search for layouts: what it gives can be cut, comes at once, gets cheaper, stops when told."""

import json
import time
from pathlib import Path

import pytest

from shoplib.layout.grown import MOST, TooLarge
from shoplib.layout.pieces import Job, LayoutError, Part, Stock
from shoplib.layout.search import layouts, pool
from tests.layout.cabinet_lists import KERF, SHEET, cabinet_list
from tests.layout.chance import job_by_chance
from tests.layout.judged import judged

INSTANCES = Path(__file__).parents[1] / "bench" / "instances"


def test_layouts_by_chance_can_be_cut_and_get_cheaper(count):
    for seed in range(count(200, 2_000)):
        job = job_by_chance(seed)
        before = None
        for layout in layouts(job, 0.05, time.process_time):
            assert judged(job, layout) == [], f"seed {seed}"
            assert layout.cost == sum(job.stock[on.stock].cost for on in layout.sheets)
            assert layout.bound <= layout.cost
            # Cheaper each time, or the same one with a closer bound.
            rank = layout.cost, -layout.bound
            assert before is None or rank < before
            before = rank


def test_parts_fill_no_more_than_the_sheets_and_all_of_their_own_area(count):
    for seed in range(count(20, 200)):
        job = job_by_chance(seed)
        *_, best = layouts(job, 0.05, time.process_time)
        laid = sum(one.at.area for on in best.sheets for one in on.placed)
        assert laid == sum(part.length * part.width * part.count for part in job.parts)
        assert laid <= sum(job.stock[on.stock].usable.area for on in best.sheets)


@pytest.mark.parametrize("kinds", [3, 60, 400])
def test_first_layout_comes_at_once(kinds):
    each = 600 // kinds
    parts = tuple(Part(f"p{i}", 300 + 7 * i % 500, 90 + 11 * i % 300, each, i % 2 == 0) for i in range(kinds))
    job = Job(parts, (Stock("ply", 2440, 1220, cost=1),), kerf=3)
    next(layouts(Job(parts[:2], job.stock), 1))  # what is done once in a process
    took = []
    for _ in range(3):
        begun = time.process_time()
        first = next(layouts(job, 5))
        took.append(time.process_time() - begun)
    assert min(took) < 0.1
    assert judged(job, first) == []


def hard_job() -> Job:
    """One whose bound is not reached, so that the search goes on as long as it may."""
    lines = (INSTANCES / "sheets_2bp.jsonl").read_text(encoding="utf-8").splitlines()
    one = next(one for one in map(json.loads, lines) if one["id"] == "cl_04_060_03")
    parts = tuple(Part(str(i), w, h, n) for i, (w, h, n) in enumerate(one["parts"]))
    return Job(parts, (Stock("sheet", *one["sheet"], cost=1),))


@pytest.mark.parametrize("seconds", [0.0, 0.2, 0.6])
def test_search_ends_when_the_time_is_over(seconds):
    begun = time.process_time()
    found = list(layouts(hard_job(), seconds, time.process_time))
    assert found
    assert not found[-1].proven
    assert time.process_time() - begun < seconds + 0.3


def test_closing_stops_the_search():
    search = layouts(hard_job(), 60)
    next(search)
    search.close()
    assert next(search, None) is None


def test_two_searches_without_an_end_of_time_agree():
    parts = tuple(Part(str(i), a, b, n) for i, (a, b, n, _) in enumerate(cabinet_list(3)))
    job = Job(parts, (Stock("s", *SHEET, cost=1),))
    first, second = (list(layouts(job, 30)) for _ in range(2))
    assert first == second
    assert first[-1].proven


def known(name: str, turn: bool) -> tuple[Job, int]:
    lines = [line for file in INSTANCES.glob("sheets_*.jsonl") for line in file.read_text("utf-8").splitlines()]
    one = next(one for one in map(json.loads, lines) if one["id"] == name)
    parts = tuple(Part(str(i), w, h, n, turn) for i, (w, h, n) in enumerate(one["parts"]))
    return Job(parts, (Stock("s", *one["sheet"], cost=1),)), one["may_turn" if turn else "as_given"]["fewest_known"]


@pytest.mark.parametrize("turn", [False, True], ids=["as given", "may turn"])
@pytest.mark.parametrize("name", ["cl_01_020_01", "cl_03_020_03", "cl_06_040_01", "cl_09_060_05", "A1", "A3", "A43"])
def test_known_results_are_reached(name, turn):
    job, fewest = known(name, turn)
    best = next(one for one in layouts(job, 5, time.process_time) if one.cost <= fewest)
    assert judged(job, best) == []


@pytest.mark.parametrize("name", ["A7", "A13", "A15", "A37"])
def test_proven_orders_of_furniture_makers_are_reached(name):
    job, fewest = known(name, False)
    best = next(one for one in layouts(job, 10, time.process_time) if one.cost <= fewest)
    assert judged(job, best) == []


def test_parts_on_top_of_each_other_in_a_strip_save_a_sheet():
    # From cl_10_020_09, proven to need 5 sheets: one of them, which no three stages and a trim can cut.
    sizes = [(21, 24), (18, 76), (42, 30), (34, 37), (37, 45), (26, 18), (49, 30), (18, 31)]
    job = Job(tuple(Part(str(size), *size) for size in sizes), (Stock("s", 100, 100, cost=1),))
    *_, best = layouts(job, 2, time.process_time)
    assert judged(job, best) == []
    assert best.cost == 1
    assert judged(job, next(pool(job, 1, 2, time.process_time))) == []


def test_layouts_of_a_pool_differ_and_cost_no_more():
    parts = tuple(Part(str(i), a, b, n, turn) for i, (a, b, n, turn) in enumerate(cabinet_list(5)))
    job = Job(parts, (Stock("s", *SHEET, cost=1),), KERF)
    *_, best = layouts(job, 2)
    found = [layout for layout, _ in zip(pool(job, best.cost, 10), range(20), strict=False)]
    assert len(found) == 20
    assert len({layout.sheets for layout in found}) == 20
    assert all(judged(job, layout) == [] and layout.cost <= best.cost for layout in found)


def test_offcuts_in_the_shop_are_used_first():
    job = Job((Part("p", 500, 300, 5),), (Stock("ply", 2440, 1220, cost=50), Stock("offcut", 1100, 620, 1, 0)), kerf=3)
    *_, best = layouts(job, 1)
    assert judged(job, best) == []
    assert (best.cost, best.bound) == (50, 50)
    assert sorted(len(on.placed) for on in best.sheets if on.stock == 1) == [4]


def test_the_cheaper_mix_of_sizes_is_found():
    # Nine: four large ones for 40, or two large and one small for 27.
    job = Job((Part("p", 100, 100, 9),), (Stock("large", 200, 200, cost=12), Stock("small", 100, 100, cost=3)))
    *_, best = layouts(job, 2)
    assert best.cost == 27
    assert best.proven


ONE = (Part("shelf", 600, 300),)
PLY = (Stock("ply", 2440, 1220, cost=1),)


@pytest.mark.parametrize(
    ("job", "says"),
    [
        (Job(ONE, ()), "no sheets"),
        (Job(ONE, PLY, -1), "kerf is negative"),
        (Job((), PLY), "nothing to lay out"),
        (Job((Part("shelf", 600, 300, 0),), PLY), "nothing to lay out"),
        (Job((Part("shelf", 600, 300, 5_000),), PLY), f"5000 parts .* at most {MOST}"),
        (Job((Part("shelf", 0, 300),), PLY), "shelf has a size"),
        (Job((Part("shelf", 600, 300, -1),), PLY), "shelf has a size or a count"),
        (Job(ONE, (Stock("ply", 2440, 1220, cost=-1),)), "ply has a count or a cost below 0"),
        (Job(ONE, (Stock("strip", 2440, 20, trim_edges=10),)), "nothing is left of strip"),
        (Job((Part("top", 1300, 700, 3),), (Stock("ply", 2440, 1220, 2),)), "cannot hold all parts"),
        # A pinwheel: the areas would do, and no cut goes from edge to edge.
        (
            Job((Part("a", 3, 2, 2), Part("b", 2, 3, 2)), (Stock("ply", 5, 5, 1),)),
            "no way was found",
        ),
    ],
)
def test_what_cannot_be_laid_out_is_refused_in_a_sentence(job, says):
    with pytest.raises(LayoutError, match=says) as caught:
        list(layouts(job, 0.5))
    assert "\n" not in str(caught.value)


@pytest.mark.parametrize(
    "part",
    [Part("side", 2441, 300), Part("side", 300, 1221), Part("side", 1230, 1230, 1, True), Part("side", 300, 2000)],
)
def test_a_part_larger_than_every_sheet_is_named(part):
    with pytest.raises(TooLarge, match="side is larger than every sheet") as caught:
        list(layouts(Job((*ONE, part), PLY, 3), 1))
    assert caught.value.part == 1


def test_a_part_may_turn_to_fit():
    job = Job((Part("side", 1000, 2000, 1, True),), PLY)
    (layout,) = layouts(job, 1)
    assert layout.sheets[0].placed[0].turned
