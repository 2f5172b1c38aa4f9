"""The cut order replayed: whoever follows it finds every piece that a step asks for, and ends with all the parts."""

from collections import Counter
from dataclasses import replace
from itertools import groupby
from random import Random

import pytest

from shoplib.layout.choose import best_for
from shoplib.layout.cut_tree import sawn, tidied
from shoplib.layout.offcuts import Least
from shoplib.layout.order import cut_order, set_ups, told
from shoplib.layout.pieces import Job, Laid, Layout, Part, Placed, Rect, Stock
from shoplib.layout.sawn import SawCut, Sawn
from shoplib.layout.shop_cost import WISHES
from shoplib.measure import INCH
from tests.layout.cut_up import cut_up

ANY = Least(1, 1)


def ordered(job, sheets, wish=None, lifts=None):
    return cut_order(job, sheets, [sawn(job, laid, wish, ANY) for laid in sheets], lifts)


def replayed(job, sheets, steps):
    """Follows the steps with sizes and marks alone; gives the sizes and names of all that lies about at the end."""
    pool = [
        (f"sheet {n}", job.stock[laid.stock].length, job.stock[laid.stock].width) for n, laid in enumerate(sheets, 1)
    ]
    for step in steps:
        length, width = step.piece.at.w, step.piece.at.h
        pool.remove((step.piece.mark, length, width))  # fails where no earlier step made it
        assert step.off and len(step.off) == len(step.cuts)
        for off in step.off:
            # What comes off is as wide as the fence is set, and as long as the piece.
            across = step.kind == "crosscut" or (step.kind == "trim" and off.at.h == width)
            assert (off.at.w, off.at.h) == ((step.fence, width) if across else (length, step.fence))
            pool.append((off.mark, off.at.w, off.at.h))
            if step.kind == "trim":
                continue
            if across:
                length -= step.fence + job.kerf
            else:
                width -= step.fence + job.kerf
        if step.left is not None:
            assert (step.left.at.w, step.left.at.h) == (length, width)
            pool.append((step.left.mark, length, width))
        elif step.kind != "trim":
            assert length <= 0 or width <= 0
    return pool


@pytest.mark.parametrize("tidy", [False, True])
def test_an_order_can_be_followed(tidy, count):
    random = Random(21 + tidy)
    for _ in range(count(40, 400)):
        job, layout = cut_up(random, sheets=random.randint(1, 4), loose=random.random() < 0.3)
        wish = random.choice([None, *WISHES])
        sheets = [tidied(job, laid, wish, ANY) for laid in layout.sheets] if tidy else list(layout.sheets)
        lifts = random.choice([None, 120 * 100, 60 * 60])
        steps = ordered(job, sheets, wish, lifts)
        lying = Counter(mark for mark, *_ in replayed(job, sheets, steps))
        assert {part.name: lying[part.name] for part in job.parts} == {
            part.name: part.count - sum(laid.placed[0].at == (0, 0, 240, 120) for laid in sheets if laid.placed
                                        and job.parts[laid.placed[0].part] == part)
            for part in job.parts
        }
        assert set(lying) <= {part.name for part in job.parts} | {"offcut"} | {
            f"sheet {n}" for n, laid in enumerate(sheets, 1) if not sawn(job, laid, wish, ANY).cuts
        }
        assert [step.number for step in steps] == list(range(1, len(steps) + 1))
        made = Counter(part for step in steps for part in step.done)
        assert all(made[n] <= part.count for n, part in enumerate(job.parts))
        cuts = Counter((step.sheet, cut) for step in steps for cut in step.cuts)
        assert cuts == Counter(
            (n, cut) for n, laid in enumerate(sheets) for cut in sawn(job, laid, wish, ANY).cuts
        )
        for _, group in groupby(steps, key=lambda step: step.setting):
            assert len({(step.kind == "trim", step.set_by, step.fence) for step in group}) == 1
        assert [step.setting for step in steps] == sorted(step.setting for step in steps)


def test_heavy_pieces_are_cut_down_first_where_nothing_must_be_set_again():
    """By hand: a sheet of 100 x 100 gives strips of 30, an offcut of 100 x 80 one of 60. Wide cuts come first, but for
    what is heavy."""
    stock = (Stock("ply", 100, 100), Stock("offcut", 100, 80))
    job = Job((Part("rail", 100, 30, 2), Part("top", 100, 60)), stock, 2)
    sheet = Laid(0, (Placed(0, Rect(0, 0, 100, 30)), Placed(0, Rect(0, 32, 100, 30))))
    offcut = Laid(1, (Placed(1, Rect(0, 0, 100, 60)),))
    assert [step.fence for step in ordered(job, [sheet, offcut])] == [60, 30]
    steps = ordered(job, [sheet, offcut], lifts=9_000)
    assert [(step.fence, step.heavy) for step in steps] == [(30, True), (60, False)]


def test_equal_strips_of_all_sheets_at_one_setting():
    """Worked by hand: two sheets of 100 x 64, a blade of 2. Each gives three strips of 20; of each strip two parts of
    40 (82 with the blade between them, 84 with the one after) and 16 left. So two settings, 2 x 2 rips, 6 x 2 cuts."""
    job = Job((Part("side", 40, 20, 12),), (Stock("ply", 100, 64),), 2)
    laid = Laid(0, tuple(Placed(0, Rect(42 * n, 22 * m, 40, 20)) for m in range(3) for n in range(2)))
    usual = ordered(job, [laid, laid], "largest offcut")
    assert [(kind, fence) for kind, fence in dict.fromkeys((step.kind, step.fence) for step in usual)] == [
        ("crosscut", 40), ("rip", 20),
    ]
    assert set_ups(usual) == (1, 2)
    assert sum(len(step.cuts) for step in usual) == 2 * 2 + 4 * 2
    assert usual[0].left.mark == "offcut" and (usual[0].left.at.w, usual[0].left.at.h) == (16, 64)
    assert told(usual[0], str) == (
        "Sheet 1 (100 x 64): crosscut at 40, 2 cuts; off come sheet 1, piece 1 (40 x 64), sheet 1, piece 2 (40 x 64), "
        "left is offcut (16 x 64)."
    )


def test_a_tidy_job_of_two_stages_sets_each_fence_once(count):
    """Strips over the whole length, parts crosscut from them: no width and no length needs to be set twice."""
    random, judged_so = Random(8), 0
    for _ in range(count(40, 400)):
        kinds = [(random.randint(20, 90), random.choice([12, 15, 20])) for _ in range(4)]
        sheets, counts = [], Counter()
        for _ in range(3):
            placed, y = [], 0
            while y + 20 <= 120:
                width = random.choice([12, 15, 20])
                x = 0
                fitting = [n for n, kind in enumerate(kinds) if kind[1] == width]
                while fitting:
                    part = random.choice(fitting)
                    if x + kinds[part][0] > 240:
                        break
                    placed.append(Placed(part, Rect(x, y, *kinds[part])))
                    counts[part] += 1
                    x += kinds[part][0] + 3
                y += width + 3
            if placed:
                sheets.append(Laid(0, tuple(placed)))
        parts = tuple(Part(f"part {n}", *size, counts[n]) for n, size in enumerate(kinds))
        job = Job(parts, (Stock("ply", 240, 120),), 3)
        tidy = [tidied(job, laid, "fewest settings", ANY) for laid in sheets]
        steps = ordered(job, tidy, "fewest settings")
        keys = {(step.kind, step.fence) for step in steps}
        found = [sawn(job, laid, "fewest settings", ANY) for laid in tidy]
        if max((cut.stage for one in found for cut in one.cuts), default=0) <= 2 and all(
            one.cuts and one.cuts[0].kind == "rip" for one in found
        ):
            assert set_ups(steps)[1] == len(keys)
            judged_so += 1
    assert judged_so > 5


def test_what_waits_is_cut_after_all_else_and_stays_in_one_piece_till_then():
    """By hand: two bottoms lie below a back. The back's strip is ripped off first, and the rest waits whole.

    Bottoms and back are 40 long: the stop is set again for the bottoms, for in between the case is built.
    """
    bottom, back = Part("bottom", 40, 20, 2, turn=2), Part("back", 40, 30, turn=1)
    job = Job((bottom, back), (Stock("sheet", 90, 60, cost=1),), kerf=2)
    places = [Placed(0, Rect(0, 0, 40, 20)), Placed(0, Rect(42, 0, 40, 20)), Placed(1, Rect(0, 22, 40, 30))]
    choice = best_for(None, job, [Layout((Laid(0, tuple(places)),), 1, 1)])
    steps = cut_order(job, choice.layout.sheets, choice.sheets)
    assert [(step.turn, step.kind, step.fence, step.again) for step in steps] == [
        (1, "rip", 30, False), (1, "crosscut", 40, False), (2, "rip", 20, False), (2, "crosscut", 40, True),
    ]  # fmt: skip
    assert [step.done for step in steps] == [(), (1,), (), (0, 0)]
    assert [step.too_early for step in steps] == [()] * 4 and steps[-1].gauge == (1,)
    at_once = replace(job, parts=(replace(bottom, turn=1), back))
    steps = cut_order(at_once, choice.layout.sheets, choice.sheets)
    assert {step.turn for step in steps} == {1} and not any(step.again for step in steps)


def test_a_setting_that_comes_again_is_set_once_for_all_its_rows():
    """Two such sheets: the stop is set again for the first bottoms, and stays for those of the other sheet.

    Set anew between mates, it makes them unequally long: common practice, no source.
    """
    bottom, back = Part("bottom", 40, 20, 4, turn=2), Part("back", 40, 30, 2, turn=1)
    job = Job((bottom, back), (Stock("sheet", 90, 60),), kerf=2)
    laid = Laid(0, (Placed(0, Rect(0, 0, 40, 20)), Placed(0, Rect(42, 0, 40, 20)), Placed(1, Rect(0, 22, 40, 30))))
    choice = best_for(None, job, [Layout((laid, laid), 2, 2)])
    steps = [step for step in cut_order(job, choice.layout.sheets, choice.sheets) if step.turn == 2]
    assert [(step.fence, step.sheet, step.again, step.gauge) for step in steps] == [
        (20, 0, False, ()), (20, 1, False, ()), (40, 0, True, (1,)), (40, 1, False, ()),
    ]  # fmt: skip
    assert steps[2].setting == steps[3].setting


def test_where_no_finished_part_is_the_gauge_a_piece_of_the_size_is():
    """Two sides of 30 x 23 in out of a sheet of 98 x 49: the strip of one is ripped, the other is cut along a line.

    When a stop is set for the first one, the other waits to be ripped, and is as long: common practice, no source.
    """
    kerf, side = INCH // 8, Part("side", 30 * INCH, 23 * INCH, 2)
    job = Job((side,), (Stock("sheet", 98 * INCH, 49 * INCH),), kerf)
    at = [Rect(0, 0, side.length, side.width), Rect(0, side.width + kerf, side.length, side.width)]
    strip, rest = Rect(0, 0, 98 * INCH, 23 * INCH), Rect(0, at[1].y, 98 * INCH, 49 * INCH - at[1].y)
    other = Rect(0, rest.y, 30 * INCH, rest.h)
    strip_left = Rect(30 * INCH + kerf, 0, 68 * INCH - kerf, strip.h)
    other_left = Rect(0, at[1].y + 23 * INCH + kerf, 30 * INCH, rest.h - 23 * INCH - kerf)
    cuts = (
        SawCut("rip", 1, Rect(0, 0, 98 * INCH, 49 * INCH), 23 * INCH, strip, rest),
        SawCut("crosscut", 2, rest, 30 * INCH, other, Rect(30 * INCH + kerf, rest.y, 68 * INCH - kerf, rest.h)),
        SawCut("crosscut", 2, strip, 30 * INCH, at[0], strip_left),
        SawCut("rip", 3, other, 23 * INCH, at[1], other_left),
    )
    steps = cut_order(job, [Laid(0, tuple(Placed(0, one) for one in at))], [Sawn(cuts, (), 0, 0)])
    assert [(step.set_by, step.fence // INCH, step.again, step.gauge, step.like) for step in steps] == [
        ("fence", 23, False, (), ""), ("line", 30, False, (), ""),
        ("stop", 30, True, (), "sheet 1, piece 2"), ("fence", 23, True, (0,), ""),
    ]  # fmt: skip


def test_what_must_be_cut_too_early_is_told():
    """A strip of a back and a bottom, equally wide: it is ripped for the back, and the bottom gets its width too."""
    job = Job((Part("back", 40, 30, turn=1), Part("bottom", 20, 30, turn=2)), (Stock("sheet", 90, 60),), kerf=2)
    laid = Laid(0, (Placed(0, Rect(0, 0, 40, 30)), Placed(1, Rect(42, 0, 20, 30))))
    steps = cut_order(job, [laid], [sawn(job, laid, "fewest rips", ANY)])
    assert (steps[0].kind, steps[0].turn, steps[0].too_early) == ("rip", 1, (1,))
    assert [step.too_early for step in steps[1:]] == [()] * (len(steps) - 1)
