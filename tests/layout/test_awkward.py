"""Cuts that a shop would not make so, and what is done about them. Limits: common practice, no source."""

from dataclasses import replace
from random import Random

from shoplib.layout.choose import weighed
from shoplib.layout.cut_tree import sawn, tidied
from shoplib.layout.offcuts import Least
from shoplib.layout.order import cut_order
from shoplib.layout.own_strips import own_strips
from shoplib.layout.pieces import Job, Laid, Layout, Part, Placed, Rect, Stock
from shoplib.layout.set_by import FENCE_REACH, SLED_DEPTH, edge, set_by
from shoplib.measure import INCH
from tests.layout.cut_up import cut_up
from tests.layout.judged import judged
from tests.layout.test_cut_tree import check

ANY = Least(1, 1)


def test_short_parts_are_ripped_as_one_strip():
    """By hand: from 100 x 20 with a blade of 2 two fronts of 20 x 20 and two of 20 x 19. A rip on 20 is short where
    40 is asked for; so the last two stay together, 56 long with what is left over, and one rip makes both."""
    job = Job((Part("front", 20, 20, 2), Part("back", 20, 19, 2)), (Stock("ply", 100, 20),), 2, shortest=40)
    laid = Laid(0, tuple(Placed(n // 2, Rect(22 * n, 0, 20, 20 - n // 2)) for n in range(4)))
    found = sawn(job, laid, None, ANY)
    check(job, laid, found)
    assert [(cut.kind, cut.fence) for cut in found.cuts] == [
        ("crosscut", 20), ("crosscut", 20), ("rip", 19), ("crosscut", 20), ("crosscut", 20),
    ]
    assert (found.short, found.skims, found.left_to_size) == (0, 1, 0)
    [rip] = [cut for cut in found.cuts if cut.kind == "rip"]
    assert rip.piece.w == 56


def test_no_width_is_ripped_short_where_strips_of_its_own_have_room():
    """By hand: mixed strips of 20 and 19 wide pieces ask for two rips on 30 long pieces; each width has its own strip
    in the same room: 20 + 2 + 19 = 41 of 60."""
    job = Job((Part("front", 30, 20, 2), Part("back", 30, 19, 2)), (Stock("ply", 62, 60),), 2, shortest=40)
    mixed = Laid(0, (
        Placed(0, Rect(0, 0, 30, 20)), Placed(1, Rect(32, 0, 30, 19)),
        Placed(1, Rect(0, 22, 30, 19)), Placed(0, Rect(32, 22, 30, 20)),
    ))  # fmt: skip
    assert sawn(job, mixed, None, ANY).short == 2
    choice = weighed(job, Layout((mixed,), 0, 0), None, ANY)
    assert (choice.shop.short, choice.shop.rips, choice.shop.settings) == (0, 2, 3)


def test_strips_of_their_own_can_be_cut(count):
    random, found = Random(6), 0
    for _ in range(count(60, 800)):
        job, layout = cut_up(random, loose=random.random() < 0.5)
        for laid in own_strips(job, layout.sheets[0]):
            assert judged(job, Layout((laid,), 0, 0)) == []
            found += 1
            for kind in (job, Job(job.parts, job.stock, job.kerf, shortest=60)):
                check(kind, laid, sawn(kind, laid, None, ANY))
    assert found > 5


def test_pieces_cut_as_one_are_cut_to_the_last_tick(count):
    random, better = Random(7), 0
    for _ in range(count(60, 800)):
        job, layout = cut_up(random, loose=random.random() < 0.7)
        short = Job(job.parts, job.stock, job.kerf, shortest=random.choice([40, 80]))
        laid = layout.sheets[0]
        for one in (laid, tidied(short, laid, None, ANY), tidied(short, laid, None, ANY, False)):
            assert judged(job, Layout((one,), 0, 0)) == []
            found = sawn(short, one, None, ANY)
            check(short, one, found)
        plain = sum(cut.kind == "rip" and cut.piece.w < short.shortest for cut in sawn(job, laid, None, ANY).cuts)
        mended = sawn(short, laid, None, ANY).short
        assert mended <= plain or not short.grained
        better += mended < plain and short.grained
    assert better > 5


def test_an_offcut_takes_the_error_and_no_part_is_what_it_leaves():
    """By hand: two sides of 40 and a toe board of 8 from 120 x 100, with a blade of 2: 10 are left. The offcut is kept
    whole where that is wished, and still all three have a cut of their own."""
    job = Job((Part("side", 120, 40, 2), Part("toe board", 100, 4)), (Stock("ply", 120, 100),), 2)
    laid = Laid(0, (Placed(0, Rect(0, 0, 120, 40)), Placed(0, Rect(0, 42, 120, 40)), Placed(1, Rect(0, 84, 100, 4))))
    for wish in (None, "largest offcut"):
        found = sawn(job, laid, wish, ANY)
        assert found.left_to_size == 0
        assert {cut.fence for cut in found.cuts if cut.kind == "rip"} == {40, 4}
        assert Rect(0, 90, 120, 10) in found.offcuts


def in_rows(length, *more):
    """Two sides of 20 x 9 end to end, over them a back of 30 x 9, and what else there is, on a sheet 24 wide."""
    kinds = (Part("side", 20, 9, 2), Part("back", 30, 9), *(Part("end", at.w, at.h) for at in more))
    sides = (Placed(0, Rect(0, 0, 20, 9)), Placed(0, Rect(22, 0, 20, 9)), Placed(1, Rect(0, 11, 30, 9)))
    also = tuple(Placed(2 + n, at) for n, at in enumerate(more))
    return Job(kinds, (Stock("ply", length, 24),), 2), Laid(0, sides + also)


def test_a_piece_that_its_parts_fill_is_cut_a_blade_wider_where_wood_lies_beside_it():
    """By hand: two sides of 20 are 42 with a blade of 2. The piece for them and the back is cut off at 44, so that the
    second side is cut to size as well, and the offcut is 100 - 44 - 2 = 54 long instead of 56."""
    job, laid = in_rows(100)
    found = sawn(job, laid, "largest offcut", ANY)
    check(job, laid, found)
    told = [(cut.kind, cut.fence) for cut in found.cuts]
    assert told[0] == ("crosscut", 44) and told.count(("crosscut", 20)) == 2
    assert found.left_to_size == 0
    assert found.offcuts[0] == Rect(46, 0, 54, 24)


def test_what_lies_beside_moves_on_by_a_blade_as_long_as_there_is_wood_behind_it():
    """By hand: an end of 30 lies a blade from the second side, 100 - 74 - 2 = 24 are left behind it, and 2 go to it."""
    job, laid = in_rows(100, Rect(44, 0, 30, 24))
    moved = tidied(job, laid, "largest offcut", ANY)
    before, after = (sawn(job, one, "largest offcut", ANY) for one in (laid, moved))
    check(job, moved, after)
    assert (before.left_to_size, after.left_to_size) == (1, 0)
    assert (before.offcuts[0].area, after.offcuts[0].area) == (24 * 24, 22 * 24)
    assert weighed(job, Layout((laid,), 0, 0), "largest offcut", ANY).shop.left_to_size == 0


def test_a_part_is_left_to_size_where_the_wood_is_all_used():
    """By hand: 42 and a blade and 30 fill 74."""
    job, laid = in_rows(74, Rect(44, 0, 30, 24))
    moved = tidied(job, laid, "largest offcut", ANY)
    assert sawn(job, moved, "largest offcut", ANY).left_to_size == 1


def test_no_piece_too_short_for_the_fence_gets_a_rip_more():
    """By hand: 9 + 2 + 9 fill a piece 20 wide and 30 long, and 40 is asked of a rip: it stays one rip."""
    parts = (Part("slat", 30, 9, 2), Part("end", 40, 18))
    job = Job(parts, (Stock("ply", 80, 60),), 2, shortest=40)
    laid = Laid(0, (Placed(0, Rect(0, 0, 30, 9)), Placed(0, Rect(0, 11, 30, 9)), Placed(1, Rect(32, 0, 40, 18))))
    found = sawn(job, laid, "largest offcut", ANY)
    check(job, laid, found)
    assert (found.short, found.left_to_size) == (1, 1)


def test_nor_where_it_can_be_cut_in_one_direction_first_only():
    """By hand: the rail above is as long as the sheet, so 20 is ripped off first. There is a blade to spare beside it
    (24 - 20 - 2), but a slat of its own size in a piece 30 long would be a second short rip; one of 40 may be cut so.
    """
    stock = (Stock("ply", 80, 60),)
    for slat, counted in ((30, (1, 1)), (40, (0, 0))):
        parts = (Part("slat", slat, 9, 2), Part("end", 36, 18), Part("rail", 80, 10))
        job = Job(parts, stock, 2, shortest=36)
        low = (Placed(0, Rect(0, 0, slat, 9)), Placed(0, Rect(0, 11, slat, 9)), Placed(1, Rect(slat + 2, 0, 36, 18)))
        laid = Laid(0, (*low, Placed(2, Rect(0, 24, 80, 10))))
        found = sawn(job, laid, None, ANY)
        check(job, laid, found)
        assert (found.short, found.left_to_size) == counted


def test_of_a_full_piece_the_size_that_nothing_else_has_is_left():
    """By hand: 30 + 2 + 30 + 2 + 16 = 80. The rail of 16 is what is left, and is told; the sides are equal."""
    job = Job((Part("side", 90, 30, 2), Part("rail", 90, 16)), (Stock("ply", 90, 80),), 2)
    laid = Laid(0, (Placed(0, Rect(0, 0, 90, 30)), Placed(1, Rect(0, 32, 90, 16)), Placed(0, Rect(0, 50, 90, 30))))
    found = sawn(job, laid, None, ANY)
    [step] = cut_order(job, [laid], [found])
    assert step.to_size == (1,) and step.left.mark == "rail" and step.fence == 30


def test_what_a_cut_is_set_by(count):
    """Along the grain, and where there is none, the fence if the edge on it is not shorter than it is away."""
    random, seen = Random(3), set()
    for _ in range(count(40, 400)):
        job, layout = cut_up(random)
        scale = random.choice([1, INCH // 4, INCH])
        for found in (sawn(job, laid, None, ANY) for laid in layout.sheets):
            for cut in found.cuts:
                piece, off = (Rect(*(scale * side for side in at)) for at in (cut.piece, cut.off))
                cut = replace(cut, piece=piece, off=off, fence=scale * cut.fence, left=None)
                by = set_by(job, cut)
                seen.add(by)
                across = cut.off.w != cut.piece.w
                if by == "fence":
                    assert edge(cut) >= cut.fence <= FENCE_REACH and not (across and job.grained)
                if by == "stop":
                    assert edge(cut) <= SLED_DEPTH
                if by == "line":
                    assert edge(cut) > SLED_DEPTH or cut.fence > FENCE_REACH
    assert seen == {"fence", "stop", "line"}


def test_without_grain_a_rip_and_a_crosscut_at_one_distance_are_one_setting():
    """By hand: 60 x 40 gives 20 x 40 by a crosscut and, turned, 40 x 20 by a rip from what is left, 38 x 40."""
    parts = (Part("bottom", 40, 20, 2, may_turn=True),)
    job = Job(parts, (Stock("ply", 62, 40),), 2)
    laid = Laid(0, (Placed(0, Rect(0, 0, 20, 40), True), Placed(0, Rect(22, 0, 40, 20))))
    steps = cut_order(job, [laid], [sawn(job, laid, None, ANY)])
    assert {(step.kind, step.fence, step.setting, step.set_by) for step in steps} == {
        ("crosscut", 20, 1, "fence"), ("rip", 20, 1, "fence"),
    }
    grained = Job((Part("bottom", 40, 20, 1), Part("side", 20, 40, 1)), job.stock, 2)
    laid = Laid(0, (Placed(1, Rect(0, 0, 20, 40)), Placed(0, Rect(22, 0, 40, 20))))
    steps = cut_order(grained, [laid], [sawn(grained, laid, None, ANY)])
    assert [(step.kind, step.set_by) for step in steps] == [("crosscut", "stop"), ("rip", "fence")]
