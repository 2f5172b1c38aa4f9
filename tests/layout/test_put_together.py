"""Sheets of many layouts put together: parts in the place of larger ones, sheets kept, the others laid out anew."""

import time

import numpy as np
import pytest

from shoplib.layout.beam import Beam
from shoplib.layout.columns import Columns
from shoplib.layout.grown import Lie, Sheet, grown
from shoplib.layout.in_place import exchanged, in_place_of
from shoplib.layout.pieces import Job, Part, Stock
from shoplib.layout.put_together import put_together
from tests.layout.chance import job_by_chance
from tests.layout.judged import judged


def size(g, lie):
    w, h = g.w[lie.kind], g.h[lie.kind]
    return (h, w) if lie.turned else (w, h)


@pytest.mark.parametrize("seed", range(40))
def test_what_lies_in_the_place_of_a_larger_part_lies_within_it(seed):
    g = grown(job_by_chance(seed))
    done = set()
    for larger, smaller in in_place_of(g):
        # Whatever comes into a place has come before it is asked what goes there in its turn.
        assert smaller not in done
        done.add(larger)
        for turned in (False, True) if g.turns[larger] else (False,):
            before = Lie(larger, turned, 3, 4)
            lie = exchanged(g, before, smaller)
            assert (lie.kind, lie.x, lie.y) == (smaller, 3, 4)
            assert g.turns[smaller] or not lie.turned
            assert all(a <= b for a, b in zip(size(g, lie), size(g, before), strict=True))


def of(sizes, wide=100, high=100):
    job = Job(tuple(Part(str(one), *one) for one in sizes), (Stock("s", wide, high, cost=1),))
    return job, grown(job)


def test_a_sheet_serves_for_smaller_parts_too():
    # 60 and 40 beside each other, twice: the second 60 gives its place to the 50, the only part left.
    job, g = of([(60, 100), (50, 100), (40, 100), (40, 100)])
    kinds = {int(w): kind for kind, w in enumerate(g.w * g.unit[0])}
    columns = Columns(g)
    columns.add(Sheet(0, (Lie(kinds[60], False, 0, 0), Lie(kinds[40], False, int(g.w[kinds[60]]), 0))))
    assert columns.prices()[0] == pytest.approx(2)
    sheets = columns.whole(2, 1.0)
    assert judged(job, g.layout(sheets, 2)) == []
    assert sorted(lie.kind for sheet in sheets for lie in sheet.lies) == sorted([*kinds.values(), kinds[40]])


def test_sheets_that_are_kept_stay_and_the_others_are_laid_out_for_what_is_left_to_pay():
    job, g = of([(60, 100), (40, 100), (70, 100), (30, 100), (80, 100), (20, 100)])
    beam = Beam(g)
    (best, *_) = beam.run(16, (0.1, 1.0), 3, lambda: False)
    kept = best[:1]
    for most, finds in ((3, True), (2, False)):
        found = beam.run(16, (0.1, 1.0), most, lambda: False, kept)
        assert bool(found) == finds
        for sheets in found:
            assert sheets[:1] == kept
            assert len(sheets) == 3
            assert judged(job, g.layout(sheets, 3)) == []


def test_what_is_on_kept_sheets_is_on_no_other():
    _, g = of([(60, 100), (40, 100), (70, 100), (30, 100)])
    beam, prices = Beam(g), np.full(4, 1.1)
    first = beam.price(16, (0.0, 0.1), prices, 5, 0)[0]
    beside = beam.price(16, (0.0, 0.1), prices, 5, 0, [first])
    assert beside
    assert not {lie.kind for lie in first.lies} & {lie.kind for sheet in beside for lie in sheet.lies}


@pytest.mark.parametrize("seed", range(12))
def test_likely_sheets_hold_no_part_too_often_and_cost_no_more_than_told(seed):
    g = grown(job_by_chance(200 + seed))
    beam, columns = Beam(g), Columns(g)
    for shaken in range(4):
        beam.shake(shaken)
        for sheets in beam.run(16, (0.1, 1.0), sum(g.cost) * 100, lambda: False):
            columns.add_all(sheets)
    columns.prices()
    for most in (0, max(g.cost), 3 * max(g.cost)):
        kept = columns.likely(most, np.random.default_rng(seed))
        assert g.cost_of(kept) <= most
        lies = [lie.kind for sheet in kept for lie in sheet.lies]
        assert (np.bincount(lies, minlength=len(g.w)) <= g.count).all()
        assert (np.bincount([sheet.stock for sheet in kept], minlength=len(g.there)) <= g.there).all()


def test_put_together_stops_when_the_time_is_over():
    _, g = of([(60 - n, 50 + n) for n in range(20)])
    beam, columns = Beam(g), Columns(g)
    best = beam.run(8, (0.1, 1.0), 20, lambda: False)[0]
    columns.add_all(best)
    until = time.process_time() + 0.05
    assert put_together(beam, columns, best[:1] * 3, 1, lambda: until - time.process_time()) is None
    assert time.process_time() < until + 0.3
