"""Cuts rebuilt from places: made one after the other on paper they free the parts, and no square tick is lost."""

from collections import Counter
from random import Random

import pytest

from shoplib.layout.cut_tree import one_sheet, sawn, tidied
from shoplib.layout.offcuts import Least, room_beside
from shoplib.layout.pieces import Job, Laid, Layout, LayoutError, Part, Placed, Rect, Stock
from shoplib.layout.shop_cost import AS_GOOD, WISHES
from tests.judge.sheets import Lying, cuttable
from tests.layout.cut_up import cut_up, sliced
from tests.layout.judged import judged

ANY = Least(1, 1)


def spent(job, laid, found):
    """Square ticks that went where, each worked out anew: cuts replayed on a pool of pieces, blades measured."""
    stock = job.stock[laid.stock]
    pool, blade, trim = [Rect(0, 0, stock.length, stock.width)], 0, 0
    trimming = True
    for cut in found.cuts:
        pool.remove(cut.piece)  # fails where no earlier cut made it
        x, y, w, h = cut.piece
        made = [piece for piece in (cut.off, cut.left) if piece is not None]
        pool += made
        for piece in made:
            assert piece.w > 0 and piece.h > 0
            assert piece.x >= x and piece.y >= y and piece.x + piece.w <= x + w and piece.y + piece.h <= y + h
        along_x = cut.off.w != w  # the cut parts the piece along x, so it is a crosscut
        if along_x:
            assert cut.off.h == h
            size, whole, sizes = cut.off.w, w, [piece.w for piece in made]
            assert all(piece.h == h and piece.y == y for piece in made)
        else:
            size, whole, sizes = cut.off.h, h, [piece.h for piece in made]
            assert all(piece.w == w and piece.x == x for piece in made)
        assert cut.fence == size
        taken = whole - sum(sizes)
        if cut.kind == "trim":
            assert trimming and cut.stage == 0 and cut.left is None
            trim += cut.piece.area - cut.off.area
            continue
        trimming = False
        assert cut.kind == ("crosscut" if along_x else "rip")
        assert 0 <= taken <= job.kerf
        if cut.left is not None:
            assert taken == job.kerf
            low, high = sorted(made, key=lambda piece: (piece.x, piece.y))
            gap = high.x - low.x - low.w if along_x else high.y - low.y - low.h
            assert gap == job.kerf  # the blade runs between the two
        blade += taken * (h if along_x else w)
    parts = [one.at for one in laid.placed]
    for part in parts:
        pool.remove(part)  # fails where no cut freed it
    return blade, trim, pool


def check(job, laid, found):
    blade, trim, pool = spent(job, laid, found)
    stock = job.stock[laid.stock]
    assert Counter(found.offcuts) == Counter(pool)
    if found.cuts:
        assert (found.kerf, found.trim) == (blade, trim)
    parts = sum(one.at.area for one in laid.placed)
    assert parts + found.kerf + found.trim + sum(at.area for at in found.offcuts) == stock.length * stock.width
    finished = [place for cut in found.cuts for place in cut.finishes]
    assert sorted(finished) == [
        place for place, one in enumerate(laid.placed) if one.at != Rect(0, 0, stock.length, stock.width)
    ]
    for cut in found.cuts:
        for place in cut.finishes:
            assert laid.placed[place].at in (cut.off, cut.left)
    stages = [cut.stage for cut in found.cuts]
    assert stages == sorted(stages) and set(stages) - {0} == set(range(1, max(stages, default=0) + 1))
    kinds = {(cut.stage, cut.kind) for cut in found.cuts if cut.stage}
    assert len(kinds) == len({stage for stage, _ in kinds})  # pieces lie one way in a stage


@pytest.mark.parametrize("loose", [False, True])
def test_random_sheets_are_cut_to_the_last_tick(loose, count):
    random = Random(5 + loose)
    for _ in range(count(60, 2_000)):
        job, layout = cut_up(random, loose=loose)
        assert judged(job, layout) == []
        for wish in (None, random.choice(WISHES)):
            found = sawn(job, layout.sheets[0], wish, ANY)
            check(job, layout.sheets[0], found)
        plain, wished = (one_sheet(sawn(job, layout.sheets[0], which, ANY), ANY) for which in (None, wish))
        assert wished.ranked(wish) <= plain.ranked(wish)
        assert plain.stages <= wished.stages


@pytest.mark.parametrize("loose", [False, True])
def test_what_is_tidied_is_the_same_order_and_cuts_no_worse(loose, count):
    random, tried, more = Random(9 + loose), count(50, 1_500), 0
    for _ in range(tried):
        job, layout = cut_up(random, loose=loose)
        wish = random.choice([None, *WISHES])
        laid = tidied(job, layout.sheets[0], wish, ANY)
        assert judged(job, Layout((laid,), 0, 0)) == []
        found = sawn(job, laid, wish, ANY)
        check(job, laid, found)
        before = one_sheet(sawn(job, layout.sheets[0], wish, ANY), ANY)
        # Wood for a cut of its own, where there was none before, may turn the pieces about once more.
        turns = one_sheet(found, ANY).stages - before.stages if wish in (None, "fewest turns") else 0
        assert turns <= 1
        more += turns > 0
    assert more <= tried // 10


def fewest_stages(items, kerf, axis):
    """By trying: how many stages free these parts when the first cuts run across `axis` (None: not at all).

    Places are intervals of the parts' own sizes, so what lies beside them is not seen: for filled sheets only.
    """
    if len(items) == 1:
        return 0
    groups, reach = [], None
    for at in sorted(items, key=lambda at: at[axis]):
        if reach is None or at[axis] - reach >= kerf:
            groups.append([])
        groups[-1].append(at)
        reach = max(reach or 0, at[axis] + at[axis + 2])
    if len(groups) == 1:
        return None
    return 1 + max(fewest_stages(group, kerf, 1 - axis) for group in groups)


def test_no_sheet_that_is_filled_takes_more_stages_than_it_must(count):
    random, several = Random(2), 0
    for _ in range(count(100, 1_000)):
        pieces = sliced(random, Rect(0, 0, 240, 120), 3)
        job = Job(tuple(Part(f"part {n}", at.w, at.h) for n, at in enumerate(pieces)), (Stock("ply", 240, 120),), 3)
        laid = Laid(0, tuple(Placed(n, at) for n, at in enumerate(pieces)))
        tried = [fewest_stages(pieces, 3, axis) for axis in (0, 1)]
        least = min(stages for stages in tried if stages is not None)
        assert one_sheet(sawn(job, laid)).stages == least
        several += least > 2
    assert several > 20


def test_a_sheet_worked_by_hand():
    """Three strips of 30 from 100 x 103 with a trim of 2 and a blade of 3: 99 inside, 3 x 30 + 2 x 3 = 96, 3 for the
    blade at the far edge, so nothing is left there. Of each strip 96 long 60 is the part, 33 is left."""
    job = Job((Part("shelf", 60, 30, 3),), (Stock("ply", 100, 103, trim_ends=2, trim_edges=2),), 3)
    laid = Laid(0, tuple(Placed(0, Rect(2, 2 + 33 * n, 60, 30)) for n in range(3)))
    found = sawn(job, laid)
    told = [(cut.kind, cut.fence, cut.finishes) for cut in found.cuts]
    assert told == [
        ("trim", 101, ()), ("trim", 99, ()), ("trim", 98, ()), ("trim", 96, ()),
        ("crosscut", 60, ()), ("rip", 30, (0,)), ("rip", 30, (1,)), ("rip", 30, (2,)),
    ]
    assert found.offcuts == (Rect(65, 2, 33, 99),)
    assert found.trim == 100 * 103 - 96 * 99
    assert found.kerf == 3 * 99 + 3 * 3 * 60


def test_the_large_offcut_is_cut_off_first_where_that_is_wished():
    """A low and a high column: ripped last, they leave two short pieces; a rip first leaves one as long as both."""
    job = Job((Part("a", 50, 40), Part("b", 48, 50)), (Stock("ply", 100, 100),), 2)
    laid = Laid(0, (Placed(0, Rect(0, 0, 50, 40)), Placed(1, Rect(52, 0, 48, 50))))
    usual, wished = sawn(job, laid, None, ANY), sawn(job, laid, "largest offcut", ANY)
    assert [cut.kind for cut in usual.cuts] == ["crosscut", "rip", "rip"]
    assert usual.offcuts[0] == Rect(0, 42, 50, 58)
    assert [(cut.kind, cut.fence) for cut in wished.cuts] == [("rip", 50), ("crosscut", 50), ("rip", 40)]
    assert wished.offcuts[0] == Rect(0, 52, 100, 48)


def test_no_larger_offcut_can_be_cut_where_that_is_wished(count):
    """Each empty rectangle that cannot be made larger is given to the judge as one more part: if he lets it pass,
    what is left must be as large, but for the wood that gives a part a cut of its own (a tenth at most)."""
    random, beyond, whole = Random(13), 0, 0
    for _ in range(count(40, 400)):
        job, layout = cut_up(random, loose=random.random() < 0.5, trim=(2, 6))
        (laid,) = layout.sheets
        parts = [Lying(n, *one.at) for n, one in enumerate(laid.placed)]
        rooms = room_beside(job.stock[0].usable, [one.at for one in laid.placed], job.kerf, ANY)
        largest = max((at.area for at in rooms if cuttable([*parts, Lying(-1, *at)], job.kerf)), default=0)
        found = sawn(job, laid, "largest offcut", ANY)
        got = max((at.area for at in found.offcuts), default=0)
        assert AS_GOOD * largest <= got <= largest
        whole += got == largest
        beyond += max((at.area for at in sawn(job, laid, None, ANY).offcuts), default=0) < largest
    assert beyond > 5 and whole > count(40, 400) * 2 // 3


def test_light_pieces_part_the_sheet_near_its_middle():
    job = Job((Part("strip", 100, 10, 8),), (Stock("ply", 100, 94),), 2)
    laid = Laid(0, tuple(Placed(0, Rect(0, 12 * n, 100, 10)) for n in range(8)))
    assert [cut.fence for cut in sawn(job, laid).cuts] == [10] * 7
    light = sawn(job, laid, "light pieces")
    assert [cut.fence for cut in light.cuts] == [46, *[10] * 6]
    assert one_sheet(light).heaviest == 46 * 100


@pytest.mark.parametrize(
    ("placed", "words"),
    [
        ([(0, 0, 0, 60, 30), (1, 61, 0, 30, 60), (2, 31, 61, 60, 30), (3, 0, 31, 30, 60)],
         "frees any of these parts: a, b, c, d."),
        ([(0, 0, 0, 60, 30), (1, 59, 0, 30, 60)], "a and b lie over one another."),
        ([(0, 40, 0, 60, 30)], "a reaches over the edge of the trimmed sheet."),
        ([(0, 0, 0, 60, 30), (1, 60, 0, 30, 60)], "frees any of these parts: a, b."),
    ],
)
def test_what_cannot_be_cut_is_refused_in_a_sentence(placed, words):
    job = Job(tuple(Part(name, 1, 1) for name in "abcd"), (Stock("ply", 91, 91),), 1)
    with pytest.raises(LayoutError, match=words):
        sawn(job, Laid(0, tuple(Placed(part, Rect(*at)) for part, *at in placed)))


def test_a_part_as_large_as_the_sheet_needs_no_cut():
    job = Job((Part("top", 91, 50),), (Stock("ply", 91, 50),), 1)
    found = sawn(job, Laid(0, (Placed(0, Rect(0, 0, 91, 50)),)))
    assert (found.cuts, found.offcuts, found.kerf, found.trim) == ((), (), 0, 0)


def test_rooms_beside_parts_are_all_there_are(count):
    random = Random(3)
    for _ in range(count(60, 600)):
        parts = [Rect(random.randint(0, 9), random.randint(0, 9), random.randint(1, 5), random.randint(1, 5))
                 for _ in range(random.randint(1, 4))]
        kerf = random.randint(0, 1)
        taken = {(x, y) for at in parts for x in range(at.x - kerf, at.x + at.w + kerf)
                 for y in range(at.y - kerf, at.y + at.h + kerf)}
        free = [Rect(x, y, w, h) for x in range(12) for y in range(12) for w in range(1, 13 - x)
                for h in range(1, 13 - y)
                if not any((a, b) in taken for a in range(x, x + w) for b in range(y, y + h))]
        rooms = room_beside(Rect(0, 0, 12, 12), parts, kerf, ANY)
        assert max((at.area for at in free), default=0) == max((at.area for at in rooms), default=0)
        assert set(rooms) <= set(free)
