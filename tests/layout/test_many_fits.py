"""Many small parts on few sheets: what the search by stages does not find, and a try at once does."""

import itertools
import json
from pathlib import Path

from shoplib.layout.first_fit import first_fit
from shoplib.layout.grown import grown
from shoplib.layout.many_fits import ManyFits
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
