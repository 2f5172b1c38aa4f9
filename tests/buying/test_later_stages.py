"""Stages that are still to come, and parts that are spoiled: what the leftovers of a stage are wanted for."""

import itertools
from dataclasses import replace
from functools import cache

import pytest

from shoplib.buying import laid_out as module
from shoplib.buying import searched
from shoplib.buying.jobs import Held, usable_again
from shoplib.buying.laid_out import laid_out
from shoplib.buying.spare_parts import spares
from shoplib.documents.project_file import read_project
from shoplib.documents.sheets_file import sheets_text
from shoplib.documents.sheets_words import all_together, bound_words, cures
from shoplib.layout import search
from shoplib.layout.choose import Wanted, best_for
from shoplib.layout.offcuts import Least
from shoplib.layout.pieces import Job, Laid, Layout, LayoutError, Part, Placed, Rect, Stock
from shoplib.measure import INCH
from shoplib.model.cabinet import solve
from tests.buying.laid import PROJECTS

UNDER_BENCH = next(path for path in PROJECTS if path.stem == "under_bench_case")


@cache
def under_bench(shop=True):
    """The case under the bench, with the pieces that lie in the shop or without them."""
    project = read_project(UNDER_BENCH)
    if not shop:
        project = replace(project, sheets={name: replace(one, on_hand=()) for name, one in project.sheets.items()})
    return laid_out(solve(project), 6.0)


def cost_of(found, sheet):
    return sum(job.layout.cost for job in found.jobs if job.ask.sheet.name == sheet)


def test_a_stage_is_cut_so_that_a_later_one_need_not_buy_more():
    """By hand: the back crosscut first leaves 36.2 x 47.5 in, which holds two bottoms; 31.00 + 18.00 are paid.

    Ripped first it leaves more in one piece, 95.5 x 18.7 in, and the bottoms cost 31.00 instead of 18.00.
    """
    found = under_bench()
    back = next(sheet for sheet in found.sheets if sheet.sheet.name == "thin sheet")
    largest = back.sawn.offcuts[0]
    assert largest.h > 47 * INCH and largest.w > 36 * INCH
    assert cost_of(found, "thin sheet") == 4900


def test_from_what_is_left_the_largest_parts_can_be_made_again():
    """By hand: 20 in ripped off the rest of 66 13/16 x 43 3/8 in leave 66 13/16 x 23 1/4, which holds a bottom."""
    found = under_bench(shop=False)
    case = next(one for one in spares(found) if one.sheet.name == "case sheet")
    assert case.found.lost == ()
    assert any(held.length > 66 * INCH and held.width > 23 * INCH for held in found.left["case sheet"])


def back_job():
    """A back on one sheet: two ways to cut it, worked by hand: 100 x 20 is left in one piece, or 40 x 50."""
    job = Job((Part("back", 60, 30),), (Stock("ply", 100, 50, cost=1),))
    return job, Layout((Laid(0, (Placed(0, Rect(0, 0, 60, 30)),)),), 1, 1)


@pytest.mark.parametrize("wanted", [Rect(60, 0, 40, 50), Rect(0, 30, 100, 20)])
def test_money_for_later_stages_comes_before_the_wish(wanted):
    job, layout = back_job()

    def later(sheets, cuts):
        return 0 if wanted in cuts[0].offcuts else 5

    for wish in ("largest offcut", "fewest rips", None):
        choice = best_for(wish, job, [layout], Least(10, 10), wanted=Wanted(later))
        assert wanted in choice.sheets[0].offcuts


def test_an_offcut_a_little_smaller_is_taken_where_parts_could_be_made_again():
    """A back of 58 x 30: ripped first 100 x 20 = 2000 are left, crosscut first 42 x 50 = 2100: within a tenth."""
    job = Job((Part("back", 58, 30),), (Stock("ply", 100, 50, cost=1),))
    layout = Layout((Laid(0, (Placed(0, Rect(0, 0, 58, 30)),)),), 1, 1)

    def chosen(*spare):
        wanted = Wanted(spare=lambda sheets, cuts: (spare.index(cuts[0].offcuts[0].w),))
        return best_for("largest offcut", job, [layout], Least(10, 10), wanted=wanted).sheets[0].offcuts[0].w

    assert best_for("largest offcut", job, [layout], Least(10, 10)).sheets[0].offcuts[0].w == 42
    assert (chosen(42, 100), chosen(100, 42)) == (42, 100)
    # 50 x 30: 2000 against 2500 is no little difference.
    job = replace(job, parts=(Part("back", 50, 30),))
    layout = Layout((Laid(0, (Placed(0, Rect(0, 0, 50, 30)),)),), 1, 1)
    assert chosen(100, 50) == 50


def test_what_all_stages_together_would_cost_is_told_where_it_is_less(monkeypatch):
    """The search is made to see 40.00 for the thin sheets together."""
    monkeypatch.setattr(module, "cheapest_of", lambda job, seconds: 4000)
    found = laid_out(solve(read_project(UNDER_BENCH)), 1.0)
    paid = cost_of(found, "thin sheet")
    assert found.all_together["thin sheet"] == 4000 < paid
    said = next(line for line in all_together(found) if line.startswith("thin sheet"))
    assert f"40.00 USD instead of {paid // 100}.{paid % 100:02}" in said and 'lay_out = "all together"' in said


def test_nothing_is_told_of_all_together_where_it_is_not_less():
    found = under_bench()
    assert set(found.all_together) <= {job.ask.sheet.name for job in found.jobs}
    assert all(cost < cost_of(found, name) for name, cost in found.all_together.items())
    assert "thin sheet" not in found.all_together  # by hand: 49.00 is the least for both


def test_the_bound_of_a_stage_is_told_as_that():
    found = under_bench()
    thin = [job for job in found.jobs if job.ask.sheet.name == "thin sheet"]
    assert "no layout of this stage alone can cost less" in bound_words(thin[0], found)
    assert "no layout of this stage on what the stages before it leave can cost less" in bound_words(thin[1], found)
    [box] = [job for job in found.jobs if job.ask.sheet.name == "box sheet"]
    assert "; no layout can cost less" in bound_words(box, found)


def test_what_one_more_sheet_would_cure_is_told():
    found = under_bench()
    left = spares(found)
    said = cures(left, found.cabinet.style)
    lost = [one for one in left if one.found.lost]
    assert lost and len(said) == sum(one.more is not None for one in lost)
    thin = next(line for line in said if line.startswith("thin sheet: "))
    assert "With one more sheet of thin sheet, " in thin and "any one part could be made again" in thin


def test_a_scrap_counts_for_no_part_made_again():
    """The same rule as for a later stage: what is too small to keep is not cut up."""
    found = under_bench()
    for one in spares(found):
        scraps = {Held(5 * INCH, 2 * INCH, left_of="sheet 1")}
        more = replace(found, left={**found.left, one.sheet.name: (*found.left[one.sheet.name], *scraps)})
        again = next(other for other in spares(more) if other.sheet.name == one.sheet.name)
        assert again.found == one.found
    assert usable_again([Held(5, 2, left_of="sheet 1"), Held(5, 2)]) == (Held(5, 2),)


def test_layouts_that_were_looked_at_are_counted():
    for job in under_bench().jobs:
        assert job.among >= 1
        assert not job.others or job.among <= len(set(job.others))


def test_a_search_that_is_stopped_keeps_what_was_found_where_stock_is_scarce(monkeypatch):
    """A later job that has no layout at once gets a moment of its own, and nothing that was found is lost."""
    real = searched.layouts

    def scarce(job, seconds, *clock):
        if not seconds:
            raise LayoutError("no way was found to lay all parts on the sheets that there are")
        return real(job, seconds, *clock)

    monkeypatch.setattr(searched, "layouts", scarce)
    cabinet = solve(read_project(UNDER_BENCH))

    def tell(ask, on, layout):
        if ask.sheet.name == "box sheet":
            raise KeyboardInterrupt

    found = laid_out(cabinet, 3.0, tell)
    assert found.stopped
    assert {piece.board.name for sheet in found.sheets for piece in sheet.pieces} == set(cabinet.by_name)


def test_a_bound_above_the_cost_is_never_hidden():
    with pytest.raises(AssertionError, match="none was to cost less than 9"):
        Layout((), 8, 9)


def test_a_slow_machine_lays_out_the_same_at_once(monkeypatch):
    """No clock of the machine decides what is laid out in no time: one that flies gives the same bytes."""
    cabinet = solve(read_project(UNDER_BENCH.with_name("wheel_wall_drawers.toml")))
    quiet = sheets_text(laid_out(cabinet, 0.0))
    hours = itertools.count(step=3_600)
    flies = lambda: float(next(hours))  # noqa: E731
    monkeypatch.setattr("time.monotonic", flies)
    monkeypatch.setattr(search.layouts, "__defaults__", (flies,))
    assert sheets_text(laid_out(cabinet, 0.0)) == quiet
