"""The panel of the dado set: nearest and next best as every arrangement has them, refusals, and cautions always."""

from itertools import combinations

import pytest

from shoplib.live.stack_panel import cautions_html, stack_panel
from shoplib.measure import read_length
from shoplib.tables.dado_sets import dado_sets
from shoplib.tables.fits import fit_class, fit_named
from shoplib.tables.setups import setup


def every_width(owned):
    """By trying all: any chippers, and at most two shims (read: manuals of saws)."""
    sums = {sum(some) for n in range(len(owned.chippers) + 1) for some in combinations(owned.chippers, n)}
    slips = {sum(some) for n in range(3) for some in combinations(owned.shims, n)}
    return {2 * owned.outer + one + other for one in sums for other in slips}


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("fit", ["press", "tap", "push"])
def test_it_shows_the_nearest_and_the_next(unit, fit):
    panel = stack_panel(unit)
    panel.enter("fit", fit)
    for thick in ("0.703 in", "0.5 in", "12.3 mm", "17.6 mm"):
        panel.enter("thick", thick)
        owned, own = dado_sets()[panel.controls["set"].value], read_length(thick)
        target = own + fit_named(fit, unit).aim
        best, following = sorted(
            (width for width in every_width(owned) if width <= panel.controls["widest"].ticks),
            key=lambda width: (abs(width - target), -width),
        )[:2]
        shown = [row[1] for row in panel.outcome.tables[0].rows]
        assert [read_length(text) for text in shown] == pytest.approx([target, best, following], abs=8)
        assert panel.outcome.tables[0].rows[1][3] == fit_class(best - own, unit).name


def test_each_size_tells_the_pieces_and_readings_that_it_is_made_of():
    """0.71 in and 0.003 in are 0.713 in; two outer cutters of 1/8 in with the pieces between them come to 0.7125 in."""
    panel = stack_panel("in")
    panel.working.ask("table/0/1")
    assert panel.working.lines == [
        "width that is wanted 0.713 in = thickest reading 0.71 in + aim of a push fit 0.003 in"]
    panel.working.ask("table/1/2")
    assert panel.working.lines[0].startswith("off by 0.0005 in = width of the cut 0.713 in - ")
    for name in ("table/1/1", "message/0", "drawing/0/told.0"):
        panel.working.ask(name)
        assert "outer cutter of the set 1/8 in" in " ".join(panel.working.lines), (name, panel.working.lines)
    panel.working.ask("table/0/2")  # of what is wanted nothing is off
    assert panel.working.lines == []


def test_a_piece_that_is_not_owned_stands_in_no_stack():
    panel = stack_panel("in")
    before = panel.message
    for name in panel.controls:
        if name.startswith("in_shim"):
            panel.enter(name, False)
    assert panel.message != before and "shim" not in panel.outcome.drawings[0].alt


def test_a_saw_that_takes_none_is_told_and_the_last_picture_stays():
    panel = stack_panel("in")
    panel.enter("widest", "0 in")
    assert panel.stale and "allows no dado set" in panel.message and panel.picture.drawings


def test_the_cautions_stand_above_whatever_is_set():
    cautions = [one.claim.say for one in setup("dado", "stacked dado set").cautions]
    panel = stack_panel("mm")
    assert panel.widget.children[0].value == cautions_html()
    assert all(say in cautions_html() for say in cautions)
    panel.enter("widest", "0 mm")
    assert panel.widget.children[0].value == cautions_html()
    assert cautions[cautions.index("Some saws, and the rules of some countries, allow no dado set: look in the manual "
                                   "of your saw first.")] in panel.outcome.drawings[0].alt
