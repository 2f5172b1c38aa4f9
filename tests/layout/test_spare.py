"""What could be made again from the leftovers, held against trying all cuts, and against the rule for strips."""

from functools import cache
from random import Random

import pytest

from shoplib.layout.choose import weighed
from shoplib.layout.offcuts import Least
from shoplib.layout.pieces import Job, Laid, Layout, Part, Placed, Rect, Stock
from shoplib.layout.spare import Spare, copies, most_spare, one_more, spare, told, told_more, unused
from tests.layout.cut_up import cut_up


@cache
def by_trying(w, h, sizes, kerf):
    """The most parts that cuts from edge to edge get out of w x h, each place of a cut tried."""
    most = int(any(w >= a and h >= b for a, b in sizes))
    if not most:
        return 0
    for at in range(1, w):
        if (rest := w - at - kerf) > 0:
            most = max(most, by_trying(at, h, sizes, kerf) + by_trying(rest, h, sizes, kerf))
    for at in range(1, h):
        if (rest := h - at - kerf) > 0:
            most = max(most, by_trying(w, at, sizes, kerf) + by_trying(w, rest, sizes, kerf))
    return most


def test_copies_against_all_cuts_tried(count):
    random, same = Random(6), 0
    tries = count(150, 600)
    for _ in range(tries):
        part = Part("part", random.randint(2, 7), random.randint(2, 7), 1, random.random() < 0.5)
        piece, kerf = Rect(0, 0, random.randint(1, 16), random.randint(1, 16)), random.randint(0, 2)
        sizes = {(part.length, part.width)} | ({(part.width, part.length)} if part.may_turn else set())
        best, found = by_trying(piece.w, piece.h, frozenset(sizes), kerf), copies(part, piece, kerf)
        assert found <= best and bool(found) == bool(best)
        if not part.may_turn:
            assert found == best
        same += found == best
    assert same > 0.97 * tries


@pytest.mark.parametrize("kerf", [0, 3, 5])
def test_strips_by_the_rule_of_the_trade(kerf):
    """n = floor((S - 2e + k) / (w + k)), from the table of misconceptions about sheets."""
    for width in (40, 76, 97, 300):
        for edge in (0, 6, 10):
            stock = Stock("ply", 2440, 1220, trim_edges=edge)
            strip = Part("strip", 2440, width)
            assert copies(strip, stock.usable, kerf) == (1220 - 2 * edge + kerf) // (width + kerf)


def test_worked_by_hand():
    """Left: 60 x 30 and 25 x 50, a blade of 2. A top of 55 x 30 comes once out of the first. A side of 28 x 12: two
    by two out of the first (58, 26), none out of the second (25 < 28). A door of 26 x 24 that may turn: two out of the
    first (26 + 2 + 26 = 54; turned 24 + 2 + 24 = 50, and 26 <= 30), one turned out of the second. A rail of 61: none.
    """
    job = Job(
        (Part("top", 55, 30), Part("side", 28, 12, 2), Part("door", 26, 24, 1, True), Part("rail", 61, 5)),
        (Stock("offcut", 30, 30, count=1), Stock("ply", 100, 60, cost=5), Stock("long", 130, 60, cost=7)), 2,
    )  # fmt: skip
    left = [Rect(0, 0, 60, 30), Rect(70, 5, 25, 50)]
    found = spare(job, left)
    assert (found.largest, found.again, found.longest, found.lost) == (0, (1, 4, 3, 0), 60, (3,))
    assert one_more(job, left)[0] == 1  # of two that help, the cheaper
    assert one_more(Job(job.parts, job.stock[:1], 2), left) is None
    assert told(job, found, str, one_more(job, left), Spare(0, (2, 4, 3, 1), 70)) == (
        "The largest part, top (55 x 30), could be made again once from what is left.",
        "Could not be made again from what is left: rail.",
        "With one more sheet of ply, 100 x 60, any one part could be made again; the largest, top, twice.",
        "With another layout of the same cost, any one part could be made again; the largest, top, twice.",
    )
    all_there = Spare(0, (1, 1, 1, 1), 60)
    assert told(job, all_there, str, one_more(job, left), all_there)[1:] == (
        "Any one part could be made again from what is left.",
    )
    nothing = spare(job, [])
    assert told(job, nothing, str)[:2] == (
        "The largest part, top (55 x 30), could not be made again from what is left: no piece is so wide.",
        "Could not be made again from what is left: top, side, door and rail.",
    )


def test_one_more_sheet_is_told_by_what_it_would_change():
    """Of a rail of 61 and a top of 55 x 30, none left: the ply of 58 x 60 holds the top once, the long strip the rail;
    boards of 50 hold neither."""
    def said(*stock):
        job = Job((Part("top", 55, 30), Part("rail", 61, 5)), stock, 2)
        return told_more(job, spare(job, []), one_more(job, []), str, "board")

    assert said(Stock("ash", 58, 60)) == (
        "With one more board of ash, 58 x 60, any one part but rail could be made again; the largest, top, once.")
    assert said(Stock("ash", 90, 9)) == "With one more board of ash, 90 x 9, any one part but top could be made again."
    assert said(Stock("ash", 50, 60), Stock("ash", 40, 60)) == (
        "One more board of ash would not help: each that can be bought is too small for top and rail.")


def test_grain_is_respected():
    part, job = Part("door", 50, 20), Job((Part("door", 50, 20),), ())
    assert copies(part, Rect(0, 0, 30, 60), 2) == 0
    assert spare(job, [Rect(0, 0, 30, 60)]).longest == 30
    may = Job((Part("door", 50, 20, 1, True),), ())
    assert spare(may, [Rect(0, 0, 30, 60)]).again == (1,)
    assert spare(may, [Rect(0, 0, 30, 60)]).longest == 60


def test_what_lies_unused_in_the_shop_counts():
    job = Job((Part("door", 50, 20),), (Stock("rest", 60, 30, count=3), Stock("few", 90, 90, count=2, cost=4)))
    layout = Layout((Laid(0, (Placed(0, Rect(0, 0, 50, 20)),)),), 0, 0)
    assert unused(job, layout) == (Rect(0, 0, 60, 30),) * 2


def test_a_part_that_is_told_to_be_replaceable_is(count):
    """Laid into the offcut it comes from, beside nothing else, it lies within the sheet and off all parts."""
    random, seen = Random(12), 0
    for _ in range(count(20, 200)):
        job, layout = cut_up(random, sheets=2)
        choice = weighed(job, layout, "largest offcut", Least(1, 1))
        offcuts = [at for found in choice.sheets for at in found.offcuts]
        found = spare(job, offcuts)
        for n, part in enumerate(job.parts):
            holds = [
                at for at in offcuts
                if (at.w >= part.length and at.h >= part.width)
                or (part.may_turn and at.w >= part.width and at.h >= part.length)
            ]  # fmt: skip
            assert bool(holds) == (n not in found.lost)
            seen += bool(holds)
        assert most_spare([found, Spare(found.largest, (0,) * len(job.parts), 0)]) == 0
    assert seen > 20


def test_another_layout_is_told_only_where_it_saves_a_part():
    """A longer rest from which no part more can be made is nothing to tell."""
    job = Job((Part("top", 50, 20), Part("shelf", 30, 20, 4)), (Stock("ply", 104, 50),), 2)
    short, longer, enough = Spare(0, (0, 3), 40), Spare(0, (0, 2), 45), Spare(0, (1, 2), 50)
    assert told(job, short, str, other=longer) == told(job, short, str)
    assert len(told(job, short, str, other=enough)) == len(told(job, short, str)) + 1
