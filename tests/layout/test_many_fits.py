"""Many small parts on few sheets: what the search by stages does not find, and a try at once does."""

import itertools
import json
from pathlib import Path

import pytest

from shoplib.layout.first_fit import first_fit
from shoplib.layout.grown import Sheet, grown
from shoplib.layout.many_fits import ManyFits
from shoplib.layout.pieces import Job, Part, Stock
from shoplib.layout.search import layouts
from tests.bench.sheets import job_of
from tests.layout.judged import judged

INSTANCES = Path(__file__).parents[1] / "bench" / "instances" / "sheets_2bp.jsonl"


def instance(name: str) -> dict:
    return next(one for one in map(json.loads, INSTANCES.read_text(encoding="utf-8").splitlines()) if one["id"] == name)


def at_most(tries: int):
    left = itertools.repeat(True, tries)
    return lambda: next(left, False)


def test_a_sheet_less_is_found():
    """Three sheets, the fewest known (H. Becker, UFRGS 2022; proven by area), where laying out at once takes four."""
    one = instance("cl_02_100_03")
    job = job_of(one, turn=False)
    g = grown(job)
    assert len(first_fit(g)) == 4 and one["as_given"]["fewest_known"] == 3
    sheets = ManyFits(g).better(4, at_most(800))
    assert len(sheets) == 3
    assert judged(job, g.layout(sheets, 3)) == []


def test_what_cannot_be_sawn_is_not_given():
    """Of the tries at few sheets some join free rectangles so that parts lock; the judge finds none among the given."""
    given = 0
    for name in ("cl_02_020_01", "cl_04_060_03", "cl_06_040_03"):
        job = job_of(instance(name), turn=True)
        g = grown(job)
        fits = ManyFits(g)
        for _ in range(40):
            sheets = fits.better(99, at_most(4))
            given += sheets is not None
            assert sheets is None or judged(job, g.layout(sheets, 1)) == []
    assert given > 60


def test_the_search_lays_out_at_once_where_few_sheets_hold_many_parts():
    """The sheet that only a try at once saves is saved by the search too; its clock counts how often it is asked."""
    one = instance("cl_02_100_03")
    asked = itertools.count()
    *_, best = layouts(job_of(one, turn=False), 3000, lambda: next(asked))
    assert len(best.sheets) == 3 and best.proven


@pytest.mark.parametrize(
    ("sheets", "parts", "worth"), [(1, 10, True), (8, 80, True), (9, 200, False), (1, 9, False), (8, 79, False)]
)
def test_tries_are_worth_while_on_few_sheets_with_many_parts_on_each(sheets, parts, worth):
    """As the module says: not on more than 8 sheets, nor with fewer than 10 parts a sheet."""
    job = Job((Part("peg board", 100, 50, parts),), (Stock("ply", 1000, 1000, cost=1),))
    assert ManyFits(grown(job)).worth_while([Sheet(0, ())] * sheets) is worth
