"""Parts that only one board in the shop can hold: even the first layout keeps that board for them."""

from itertools import count

from shoplib.layout.pieces import Job, Part, Stock
from shoplib.layout.search import layouts
from tests.layout.judged import judged


def test_the_wide_board_is_kept_for_what_only_it_can_hold():
    """A long narrow part comes first by its length, and would take the wide board, which costs nothing."""
    wide = Stock("board in the shop", 1000, 280, count=1)
    job = Job((Part("rail", 901, 60, 3), Part("side", 200, 250, 4)), (wide, Stock("board", 2400, 190, cost=5)), kerf=3)
    first = next(layouts(job, 0, count().__next__))  # whenever it is asked, the time is over
    assert judged(job, first) == []
    assert {one.part for sheet in first.sheets if sheet.stock == 0 for one in sheet.placed} >= {1}
