"""Parts that only one board in the shop can hold: even the first layout keeps that board for them."""

from itertools import count

from shoplib.layout.pieces import Job, LayoutError, Part, Stock
from shoplib.layout.search import layouts
from tests.layout.chance import scarce_job_by_chance
from tests.layout.judged import judged


def test_the_wide_board_is_kept_for_what_only_it_can_hold():
    """A long narrow part comes first by its length, and would take the wide board, which costs nothing."""
    wide = Stock("board in the shop", 1000, 280, count=1)
    job = Job((Part("rail", 901, 60, 3), Part("side", 200, 250, 4)), (wide, Stock("board", 2400, 190, cost=5)), kerf=3)
    first = next(layouts(job, 0, count().__next__))  # whenever it is asked, the time is over
    assert judged(job, first) == []
    assert {one.part for sheet in first.sheets if sheet.stock == 0 for one in sheet.placed} >= {1}


def test_parts_that_only_pieces_in_the_shop_hold_are_laid_out_or_it_is_said(count):
    """Nothing else ever happens, whatever can be bought besides."""
    laid = 0
    for seed in range(count(60, 600)):
        job = scarce_job_by_chance(seed)
        try:
            *_, best = layouts(job, 0.05)
        except LayoutError as fault:
            assert str(fault).count(". ") == 0 and "the sheets that there are" in str(fault), f"seed {seed}"
        else:
            laid += 1
            assert judged(job, best) == [], f"seed {seed}"
            assert best.cost >= best.bound
    assert laid
