"""A box whose corners are dovetails or mitres: it dry-fits exactly, and other sizes gape or clash where they should."""

from dataclasses import replace

import pytest

from shoplib.checks import check
from shoplib.checks.misfits import CLASH, GAP, misfits
from shoplib.checks.overlap import overlapping
from shoplib.draw.dry_fit import View, dry_fit
from shoplib.draw.look import FROM_ABOVE
from shoplib.draw.scene import Region
from shoplib.lessons.pair_box import ENDS, SIDES, BoxSizes, pair_box
from shoplib.lists.refit import refit
from shoplib.measure import MM, MM_STYLE
from shoplib.model.board import PrismCut

WIDE, DEEP, HIGH, THICK, GROOVE, SLACK = (size * MM for size in (400, 250, 100, 18, 6, 2))
KINDS = pytest.mark.parametrize(("name", "kind"), [("dovetail", "dovetail"), ("splined mitre", "mitre")])


SPLINED = {"spline": 3 * MM, "slot": 7 * MM, "heel": 3 * MM}


def box(name, kind):
    values = {"fit": 0} | (SPLINED if kind == "mitre" else {})
    return replace(pair_box(name, kind, BoxSizes(WIDE, DEEP, HIGH, THICK, GROOVE, SLACK), values), style=MM_STYLE)


def stops(cabinet):
    return [finding.text for finding in check(cabinet) if finding.level == "stop"]


def wood(board):
    return sum(piece.volume for piece in board.solids)


@KINDS
def test_it_goes_together_and_every_board_is_as_long_as_the_outside(name, kind):
    made = box(name, kind)
    assert stops(made) == [] and not overlapping(made.boards)
    assert [made.by_name[one].length for one in (*ENDS, *SIDES)] == [WIDE, WIDE, DEEP, DEEP]
    # By hand: 400 - 2 x 18 + 2 x 6 - 2, and 250 - 36 + 12 - 2.
    assert made.by_name["bottom"].box.size[:2] == (374 * MM, 224 * MM)
    assert made.outside.size == (WIDE, DEEP, HIGH)


@KINDS
def test_its_four_boards_fill_the_ring_of_the_box_but_for_the_grooves(name, kind):
    """By hand: the ring is 400 x 250 less 364 x 214, 100 high; the groove takes 376 x 226 less 364 x 214, 6.35 high.

    Eight slots of 3 x 7 run over the whole height; where they meet the groove, 21 x 6.35 each at most, it took them.
    """
    made = box(name, kind)
    ring = (400 * 250 - 364 * 214) * 100
    groove = (376 * 226 - 364 * 214) * 6.35
    slots, shared = (8 * 3 * 7 * 100, 8 * 3 * 7 * 6.35) if kind == "mitre" else (0, 0)
    total = float(sum(wood(made.by_name[one]) for one in (*ENDS, *SIDES)) / MM**3)
    # Flanks that meet on whole ticks leave no more than some ticks open.
    assert ring - groove - slots - 40 <= total <= ring - groove - slots + shared + 1


def test_boards_cut_at_half_of_the_corner_are_alike_end_for_end():
    made = box("splined mitre", "mitre")
    assert wood(made.by_name["front"]) == wood(made.by_name["back"])
    assert wood(made.by_name["left side"]) == wood(made.by_name["right side"])


@KINDS
def test_a_board_of_another_length_takes_its_corner_along(name, kind):
    made = box(name, kind)
    ends = {one: (WIDE - 5 * MM, *made.by_name[one].size[1:]) for one in ENDS}
    built = refit(made, ends).cabinet
    for one in ENDS:
        before, after = (cabinet.by_name[one] for cabinet in (made, built))
        assert [cut.kind for cut in before.cuts] == [cut.kind for cut in after.cuts]
        # What is cut at the far end stays as large: only plain length is lost.
        plain = 5 * MM * HIGH * THICK
        assert 0.95 * plain < wood(before) - wood(after) <= plain
    assert built.by_name["right side"].box.low[0] == made.by_name["right side"].box.low[0] - 5 * MM
    (clash,) = [one for one in misfits(built, made) if one.axis == 0]
    # The bottom has 2 mm to give way in all, of which each end has half.
    assert clash.kind == CLASH and clash.boards == ("bottom", "right side") and clash.amount == 4 * MM
    assert not any({"front", "right side"} == {a.name, b.name} for a, b, _ in overlapping(built.boards))


@KINDS
def test_a_corner_that_is_not_flush_is_told_with_its_amount(name, kind):
    made = box(name, kind)
    sides = {"left side": (DEEP + 3 * MM, *made.by_name["left side"].size[1:])}
    told = stops(refit(made, sides).cabinet)
    wanted = "right side ends 3 mm short of the outside of back. Make it longer by 3 mm."
    assert any(wanted in one for one in told), told


def test_boards_that_want_the_same_wood_are_found_though_slanting():
    made = box("splined mitre", "mitre")
    front = made.by_name["front"]
    bare = replace(front, cuts=tuple(cut for cut in front.cuts if not isinstance(cut, PrismCut)))
    others = [board for board in made.boards if board.name != "front"]
    found = {frozenset((a.name, b.name)) for a, b, _ in overlapping((bare, *others))}
    assert found == {frozenset(("front", side)) for side in SIDES}


@KINDS
def test_the_dry_fit_draws_what_the_plane_cuts_of_each_board(name, kind):
    made = box(name, kind)
    scene = dry_fit(made, made, (), View(FROM_ABOVE, "bottom"))
    regions = [item for item in scene.items if isinstance(item, Region)]
    assert {region.name for region in regions} == {*ENDS, *SIDES}
    corners = {corner for region in regions for ring in region.rings for corner in ring}
    slanting = [
        (a, b) for region in regions for ring in region.rings for a, b in zip(ring, ring[1:] + ring[:1], strict=True)
        if a[0] != b[0] and a[1] != b[1]
    ]
    assert {(0, 0), (WIDE, DEEP)} <= corners
    assert bool(slanting) == (kind == "mitre")  # a level plane cuts tails and pins straight


@KINDS
def test_a_bottom_that_is_too_narrow_leaves_its_groove(name, kind):
    made = box(name, kind)
    size = made.by_name["bottom"].size
    built = refit(made, {"bottom": (size[0] - 12 * MM, *size[1:])}).cabinet
    (gap,) = [one for one in misfits(built, made) if one.axis == 0]
    assert gap.kind == GAP and gap.amount == 12 * MM
