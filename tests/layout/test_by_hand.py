"""Layouts made by hand: whatever is done, what lies can be cut; what cannot be done is told, and nothing is lost."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from shoplib.layout.by_hand import begin, begun_again, cut_off, lay, lay_along, taken_back
from shoplib.layout.hand import Hand, Refused
from shoplib.layout.hand_again import refitted
from shoplib.layout.hand_sawn import sawn_by_hand, shop_cost_by_hand
from shoplib.layout.pieces import Job, Part, Rect, Stock
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from tests.judge.sheets import Bought, Lying, Wanted, faults

PLY = Stock("plywood", 96 * INCH, 48 * INCH, cost=1, trim_ends=INCH // 4, trim_edges=INCH // 4)
SIDE, SHELF = Part("side", 30 * INCH, 15 * INCH, 4), Part("shelf", 24 * INCH, 12 * INCH, 6, may_turn=True)
BENCH = Job((SIDE, SHELF), (PLY,), INCH // 8)


def whole(hand):
    """What the judge of coordinates says of what lies; what is still in the list counts as not ordered."""
    job = hand.job
    return faults(
        [Wanted(part.length, part.width, part.count - left, part.may_turn)
         for part, left in zip(job.parts, hand.to_lay, strict=True)],
        [Bought(one.length, one.width, one.trim_ends, one.trim_edges, one.count) for one in job.stock],
        job.kerf,
        [(sheet.stock, [Lying(one.part, *one.at) for one in sheet.placed]) for sheet in hand.sheets],
    )


def sums(hand):
    """Of each sheet: parts, free places and what the blade took are what was there inside its trim."""
    for number, sheet in enumerate(hand.sheets):
        room = hand.job.stock[sheet.stock].usable
        dust = sum(cut.piece.area - cut.off.area - (cut.left.area if cut.left else 0) for cut in sheet.cuts)
        parts = sum(placed.at.area for placed in sheet.placed)
        free = sum(place.at.area for place in hand.places if place.sheet == number)
        assert parts + free + dust == room.area
        for cut in sheet.cuts:  # edge to edge, and no piece that is none
            assert (cut.off.w, cut.off.h)[cut.kind == "crosscut"] == (cut.piece.w, cut.piece.h)[cut.kind == "crosscut"]
            assert cut.fence == (cut.off.h if cut.kind == "rip" else cut.off.w) > 0
            assert cut.left is None or (cut.left.w > 0 and cut.left.h > 0)
        stages = [cut.stage for cut in sheet.cuts]
        assert not stages or min(stages) == 1


parts = st.builds(Part, st.sampled_from(["side", "shelf", "rail"]), st.integers(1, 60), st.integers(1, 40),
                  st.integers(1, 4), st.booleans())
stocks = st.builds(Stock, st.just("sheet"), st.integers(20, 100), st.integers(20, 60), st.sampled_from([None, 1, 2]),
                   st.integers(0, 5), st.integers(0, 4), st.integers(0, 4))
jobs = st.builds(Job, st.lists(parts, min_size=1, max_size=4).map(tuple),
                 st.lists(stocks, min_size=1, max_size=2).map(tuple), st.integers(0, 4))


def any_move(hand, data):
    """One move that could be asked for, sensible or not."""
    wheres = [place.letter for place in hand.places] + list(range(len(hand.job.stock))) + ["zz"]
    part = data.draw(st.integers(0, len(hand.job.parts) - 1))
    where, turned = data.draw(st.sampled_from(wheres)), data.draw(st.booleans())
    way = data.draw(st.sampled_from([None, "rip", "crosscut"]))
    kind = data.draw(st.sampled_from(["lay", "lay", "lay", "along", "cut", "back", "again", "fit"]))
    if kind == "lay":
        return lay(hand, part, where, turned=turned, way=way)
    if kind == "along":
        return lay_along(hand, part, where, turned=turned, way=way)
    if kind == "cut":
        return cut_off(hand, where, way or "rip", data.draw(st.integers(-2, 50)))
    if kind == "back":
        return taken_back(hand)
    if kind == "again":
        return begun_again(hand)
    size = st.one_of(st.none(), st.integers(-1, 12))
    moved = refitted(hand, kerf=data.draw(size), trim=data.draw(size))
    return moved if isinstance(moved, Refused) else moved[0]


@settings(deadline=None, max_examples=150)
@given(jobs, st.data())
def test_every_state_that_moves_lead_to_can_be_cut_and_none_is_changed_by_the_next(job, data):
    hand = begin(job, MM_STYLE)
    for _ in range(data.draw(st.integers(1, 12))):
        before, was = hand, repr(hand)
        moved = any_move(hand, data)
        assert repr(before) == was
        if isinstance(moved, Refused):
            assert moved.said.endswith(".") and "tick" not in moved.said
            continue
        hand = moved
        assert whole(hand) == []
        sums(hand)
        lying = [placed.part for sheet in hand.sheets for placed in sheet.placed]
        assert [lying.count(n) + left for n, left in enumerate(hand.to_lay)] == [part.count for part in job.parts]
        letters = [place.letter for place in hand.places]
        assert len(set(letters)) == len(letters) == len({place.key for place in hand.places})
        assert all(hand.place_of(place.beside).at for place in hand.places if hand.place_of(place.beside))
        if hand.before:
            assert taken_back(hand) is hand.before


@settings(deadline=None, max_examples=100)
@given(jobs, st.data())
def test_the_same_kerf_and_trim_lay_the_same_parts_in_the_same_places(job, data):
    hand = begin(job, MM_STYLE)
    for _ in range(8):
        moved = any_move(hand, data) if data.draw(st.booleans()) else lay(hand, 0, 0)
        if isinstance(moved, Hand) and moved.job == job:
            hand = moved
    again, told = refitted(hand, kerf=job.kerf)
    assert again == hand and told == () and again.before is hand


def test_the_part_that_goes_beside_the_last_one_and_the_strip_beside_that():
    hand = lay(begin(BENCH, INCH_STYLE), 0, 0)
    along, beside = hand.place_of(hand.along), hand.place_of(hand.beside)
    # 96 - 2 x 1/4 - 30 - 1/8 = 65 3/8 along; 48 - 1/2 - 15 - 1/8 = 32 3/8 beside, as long as the trimmed sheet
    assert (along.at.w, along.at.h) == (65 * INCH + 3 * INCH // 8, 15 * INCH)
    assert (beside.at.w, beside.at.h) == (95 * INCH + INCH // 2, 32 * INCH + 3 * INCH // 8)
    then = lay(hand, 1, along.letter)
    assert then.place_of(then.beside).at == beside.at  # the same next strip
    assert then.place_of(then.along).at.h == 15 * INCH  # the strip keeps its width behind a narrower part
    offcut = next(place for place in then.places if place.at.w == 24 * INCH)
    assert offcut.at.h == 15 * INCH - 12 * INCH - INCH // 8


def test_a_crosscut_first_leaves_a_strip_up_the_sheet():
    hand = lay(begin(BENCH, INCH_STYLE), 0, 0, way="crosscut")
    up = hand.place_of(hand.along)
    assert up.at == Rect(INCH // 4, INCH // 4 + 15 * INCH + INCH // 8, 30 * INCH, 32 * INCH + 3 * INCH // 8)
    hand = lay(hand, 0, up.letter)
    assert hand.place_of(hand.along).at.w == 30 * INCH and hand.sheets[0].cuts[-1].kind == "rip"


def test_no_blade_is_needed_at_the_far_edge():
    """floor((S - 2e + k)/(w + k)) strips: (95 1/2 + 1/8) / (23 3/4 + 1/8) holds 4, and 3 31/32 more only 3."""
    for length, goes in ((23 * INCH + 3 * INCH // 4, 4), (23 * INCH + 13 * INCH // 16, 3)):
        job = replace(BENCH, parts=(replace(SIDE, length=length, count=9),))
        hand = lay_along(begin(job, INCH_STYLE), 0, 0)
        assert len(hand.sheets[0].placed) == goes
        room = PLY.length - PLY.trim_ends * 2 + job.kerf
        assert room // (length + job.kerf) == goes
        assert taken_back(hand).sheets == ()


SAID = {
    "too large": "The side, 30 in x 15 in, does not fit into offcut a, 5 1/8 in x 15 in: it is 24 7/8 in too long.",
    "grain": "The side, 30 in x 15 in, cannot be turned: its grain runs along its 30 in and must run along the sheet.",
    "none left": "Nothing is left to lay of the side: all 4 of them lie already.",
}


def test_what_does_not_go_is_told_with_its_amounts():
    hand = lay_along(begin(BENCH, INCH_STYLE), 0, 0)
    assert lay(hand, 0, "a").said == SAID["too large"]
    assert lay(hand, 0, "b", turned=True).said == SAID["grain"]
    hand = lay(hand, 0, "b")
    assert lay(hand, 0, "c").said == SAID["none left"]
    assert lay(hand, 1, "q").said == "There is no free place q."
    assert taken_back(begin(BENCH, INCH_STYLE)).said.startswith("Nothing has been done yet")


def test_where_the_bare_sheet_would_hold_it_the_cut_that_is_in_the_way_is_told():
    job = replace(BENCH, parts=(replace(SIDE, count=1), Part("back", 40 * INCH, 30 * INCH)))
    ripped = lay(begin(job, INCH_STYLE), 0, 0)
    said = lay(ripped, 1, "a").said
    assert said == (
        "The back, 40 in x 30 in, does not fit into offcut a, 65 3/8 in x 15 in: it is 15 in too wide, and would lie "
        "across a cut; a cut goes from edge to edge, so make that one the other way first, or lay this part before it."
    )
    assert isinstance(lay(lay(begin(job, INCH_STYLE), 0, 0, way="crosscut"), 1, "b"), Hand)


def test_turned_it_would_fit_is_told_and_whether_it_may():
    ply = replace(PLY, length=46 * INCH)  # so that nothing is left beside the strip
    job = Job((Part("end", 46 * INCH, 10 * INCH), replace(SHELF, length=46 * INCH)), (ply,), INCH // 8)
    hand = cut_off(begin(job, INCH_STYLE), 0, "rip", 47 * INCH)
    assert lay(hand, 0, "a").said.endswith("too long; it would fit turned, but its grain must run along the sheet.")
    assert lay(hand, 1, "a").said.endswith("it is 1/2 in too long; it would fit turned.")
    assert isinstance(lay(hand, 1, "a", turned=True), Hand)


@pytest.mark.parametrize(("count", "said"), [(1, "the only one is in use."), (2, "all 2 are in use.")])
def test_no_more_sheets_than_there_are(count, said):
    job = replace(BENCH, stock=(replace(PLY, count=count),))
    hand = begin(job, INCH_STYLE)
    for _ in range(count):
        hand = lay(hand, 0, 0)
    assert lay(hand, 0, 0).said == f"There is no other plywood, 96 in x 48 in: {said}"


def test_a_strip_alone_can_be_cut_off_and_used():
    hand = cut_off(begin(BENCH, INCH_STYLE), 0, "rip", 12 * INCH)
    assert hand.to_lay == (4, 6) and hand.sheets[0].placed == () and hand.cuts == 5  # four edges trimmed, one rip
    strip = hand.place_of(hand.along)
    assert strip.at.h == 12 * INCH and strip.strip == "along"
    assert len(lay_along(hand, 1, strip.letter).sheets[0].placed) == 3
    assert cut_off(hand, strip.letter, "rip", 12 * INCH).said == (
        "A rip at 12 in cuts nothing off offcut a, which is 12 in wide."
    )


def test_a_thicker_blade_sends_back_what_does_not_fit_any_more_and_only_that():
    parts = (Part("side", 24 * INCH, 15 * INCH, 3), Part("rail", 23 * INCH, 15 * INCH), replace(SHELF, count=1))
    job = Job(parts, (PLY,), INCH // 16)
    hand = lay_along(begin(job, INCH_STYLE), 0, 0)
    hand = lay(hand, 1, hand.place_of(hand.along).letter)  # 3 x 24 + 23 + 3 x 1/16 = 95 3/16 of 95 1/2
    hand = lay(hand, 2, hand.place_of(hand.beside).letter)
    again, told = refitted(hand, kerf=INCH // 4)  # 3 x 24 + 3 x 1/4 = 72 3/4; 22 3/4 left
    assert again.to_lay == (0, 1, 0) and whole(again) == []
    assert told == ("The rail, 23 in x 15 in, does not fit into offcut a, 22 3/4 in x 15 in: it is 1/4 in too long. "
                    "It is back in the list.",)
    assert taken_back(again) is hand


def test_what_lay_beside_moves_up_into_the_place_of_what_went_back():
    parts = (Part("top", 95 * INCH + INCH // 2, 15 * INCH), replace(SIDE, count=2))
    hand = lay(begin(Job(parts, (PLY,), INCH // 8), INCH_STYLE), 0, 0)
    hand = lay_along(hand, 1, hand.place_of(hand.beside).letter)
    again, told = refitted(hand, trim=INCH // 2)
    assert again.to_lay == (1, 0) and len(told) == 1 and whole(again) == []
    assert [placed.at[:2] for placed in again.sheets[0].placed] == [
        (INCH // 2, INCH // 2), (INCH // 2 + 30 * INCH + INCH // 8, INCH // 2)
    ]


def test_a_kerf_or_a_trim_that_cannot_be_is_told():
    hand = begin(replace(BENCH, kerf=3 * MM), MM_STYLE)
    assert refitted(hand, kerf=-MM).said == "A kerf of -1 mm cannot be: it is 0 or more."
    assert refitted(hand, trim=700 * MM).said.startswith("A trim of 700 mm on each edge leaves nothing of the plywood")


def test_begun_again_can_be_taken_back_too():
    hand = lay(begin(BENCH, INCH_STYLE), 0, 0)
    again = begun_again(hand)
    assert again.to_lay == (4, 6) and again.sheets == () and taken_back(again) is hand


def test_where_less_than_a_blade_is_left_the_blade_takes_it():
    for rest, kept in ((INCH // 16, None), (INCH // 8, None), (INCH // 8 + 1, 1)):
        ply = replace(PLY, length=30 * INCH + INCH // 2 + rest)
        hand = lay(begin(replace(BENCH, stock=(ply,)), INCH_STYLE), 0, 0)
        crosscut = hand.sheets[0].cuts[-1]
        assert crosscut.kind == "crosscut" and (crosscut.left and crosscut.left.w) == kept
        assert len(hand.places) == (2 if kept else 1)


def test_a_part_in_the_way_is_no_cut_in_the_way():
    """Beside the first side lies another: a taller part cannot lie there whatever is cut first."""
    job = replace(BENCH, parts=(SIDE, Part("back", 30 * INCH, 20 * INCH)))
    hand = lay(begin(job, INCH_STYLE), 0, 0)
    assert "across a cut" in lay(hand, 1, "a").said
    above = lay(hand, 0, hand.place_of(hand.beside).letter)
    over_it = lay(above, 0, above.place_of(above.along).letter)
    said = lay(over_it, 1, "a").said  # the rest of the first strip, under the second strip with its sides
    assert said == "The back, 30 in x 20 in, does not fit into offcut a, 65 3/8 in x 15 in: it is 5 in too wide."
    halves = cut_off(begin(job, INCH_STYLE), 0, "crosscut", 40 * INCH)
    beside_it = lay(halves, 0, halves.place_of(halves.beside).letter)
    strip = cut_off(beside_it, halves.place_of(halves.along).letter, "rip", 15 * INCH)
    assert "across a cut" in lay(strip, 1, strip.place_of(strip.along).letter).said  # what lies far right is no matter


def test_both_neighbours_of_what_went_back_find_their_places():
    """The top goes back: the side beside it takes its place, and the shelf of the next strip lies beside that."""
    parts = (Part("top", 60 * INCH, 40 * INCH), replace(SIDE, count=1), replace(SHELF, count=1, width=7 * INCH))
    hand = lay(begin(Job(parts, (PLY,), INCH // 8), INCH_STYLE), 0, 0)
    along, beside = hand.place_of(hand.along).letter, hand.place_of(hand.beside).letter
    hand = lay(lay(hand, 1, along), 2, beside)
    again, told = refitted(hand, trim=5 * INCH)  # 38 in are left of the width
    assert again.to_lay == (1, 0, 0) and len(told) == 1 and told[0].startswith("The top, 60 in x 40 in, does not fit")
    side, shelf = again.sheets[0].placed
    assert side.at[:2] == (5 * INCH, 5 * INCH)
    assert shelf.at[:2] == (5 * INCH, 5 * INCH + 15 * INCH + INCH // 8)
    assert whole(again) == []


@settings(deadline=None, max_examples=60)
@given(jobs, st.data())
def test_parts_kerf_trim_and_offcuts_are_the_sheet_and_each_part_is_finished_by_at_most_one_cut(job, data):
    hand = begin(job, MM_STYLE)
    for _ in range(6):
        moved = any_move(hand, data)
        hand = moved if isinstance(moved, Hand) else hand
    for number, sheet in enumerate(hand.sheets):
        done, stock = sawn_by_hand(hand, number), hand.job.stock[sheet.stock]
        parts_and_offcuts = sum(placed.at.area for placed in sheet.placed) + sum(at.area for at in done.offcuts)
        assert parts_and_offcuts + done.kerf + done.trim == stock.length * stock.width
        finished = [place for cut in done.cuts for place in cut.finishes]
        assert len(finished) == len(set(finished))
    assert not hand.sheets or shop_cost_by_hand(hand).cuts == sum(len(sheet.cuts) for sheet in hand.sheets)
