"""Parts moved from new stock to pieces in the shop: a sound layout by the judge of coordinates, and no dearer."""

from dataclasses import replace
from random import Random

import pytest

from shoplib.buying.shop_first import shop_first
from shoplib.layout.pieces import Job, LayoutError, Part, Stock
from shoplib.layout.search import layouts
from tests.buying.laid import laid
from tests.layout.judged import judged


def drawn(seed):
    """Some parts, two sizes of offcut and one that is bought; made-up numbers, no source."""
    r = Random(seed)
    parts = tuple(
        Part(f"part {n}", r.randint(80, 600), r.randint(60, 400), r.randint(1, 4), r.random() < 0.5) for n in range(4)
    )
    offcuts = tuple(Stock(f"offcut {n}", r.randint(200, 700), r.randint(150, 500), r.randint(1, 2)) for n in (1, 2))
    return Job(parts, (*offcuts, Stock("ply", 1220, 1220, None, 100, 8, 8)), 3)


def without_offcuts(job):
    return replace(job, stock=(*(replace(one, count=0) for one in job.stock[:2]), job.stock[2]))


def in_shop(job, layout):
    return sum(job.stock[sheet.stock].count is not None for sheet in layout.sheets)


@pytest.mark.parametrize("seed", range(40))
def test_no_layout_costs_more_uses_less_of_the_shop_or_is_unsound(seed):
    job = drawn(seed)
    *_, bought = layouts(without_offcuts(job), 0.1)
    bought = replace(bought, bound=0)  # with the offcuts there is less to buy
    found = shop_first(job, bought, 0.05)
    for layout in found:
        assert judged(job, layout) == []
        assert layout.cost <= bought.cost and in_shop(job, layout) >= in_shop(job, bought) == 0
        assert layout.cost == sum(job.stock[sheet.stock].cost for sheet in layout.sheets)
    fits = any(
        (part.length <= one.length and part.width <= one.width)
        or (part.may_turn and part.width <= one.length and part.length <= one.width)
        for part in job.parts for one in job.stock[:2]
    )  # fmt: skip
    assert (in_shop(job, found[0]) > 0) == fits


def test_nothing_is_moved_where_nothing_lies_in_the_shop():
    job = Job((Part("shelf", 600, 300, 2),), (Stock("ply", 1220, 1220, None, 100),), 3)
    layout = next(layouts(job, 0))
    assert shop_first(job, layout, 0.1) == [layout]


def test_what_fits_no_offcut_stays():
    job = Job((Part("shelf", 600, 300),), (Stock("offcut", 500, 500, 3), Stock("ply", 1220, 1220, None, 100)), 3)
    layout = next(layouts(job, 0))
    assert shop_first(job, layout, 0.1) == [layout]


def test_the_offcut_behind_the_door_is_used_for_the_case_under_the_bench():
    """By hand: a side, 33 1/2 x 22 1/2 in, is the largest part that comes out of 48 x 30 in with its edges trimmed."""
    case = [sheet for sheet in laid("under_bench_case").sheets if sheet.sheet.name == "case sheet"]
    offcut = next(sheet for sheet in case if not sheet.bought and not sheet.held.left_of)
    assert (offcut.name, offcut.pieces[0].board.role) == ("case sheet on hand 1", "side")
    assert sum(sheet.bought for sheet in case) == 2


def test_too_little_time_is_no_fault():
    job = drawn(3)
    *_, bought = layouts(without_offcuts(job), 0.1)
    bought = replace(bought, bound=0)  # with the offcuts there is less to buy
    try:
        assert shop_first(job, bought, 0.0)
    except LayoutError as fault:
        pytest.fail(f"{fault}")
