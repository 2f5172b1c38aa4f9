"""Cuts that must match stand together: held against the places of the cuts in the whole cabinet, and by hand."""

from dataclasses import replace

import pytest

from shoplib.lists.cut_words import cut_words
from shoplib.lists.dado_stops import KINDS, dado_stops, place_words, stop_words, two_stops, two_stops_words
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, MM_STYLE
from shoplib.model.board import Board, BoxCut
from shoplib.model.cabinet import solve
from shoplib.model.placement import Placement
from shoplib.model.project import JointChoice
from shoplib.model.solved import Cabinet
from tests.lists.projects import chest, stand

WAYS = {"left": (0, 0), "right": (0, 1), "front": (1, 0), "back": (1, 1), "bottom": (2, 0), "top": (2, 1)}
"""World axis, and which corner of the box is on that side."""


@pytest.fixture(scope="module", params=[chest, stand])
def cabinet(request):
    return solve(request.param())


def in_the_world(board, cut, way):
    """How far a cut begins from the side of the board that looks this way, measured in the cabinet."""
    axis, corner = WAYS[way]
    box = board.placement.to_world(cut.box)
    if corner == 0:
        return box.low[axis] - board.box.low[axis]
    return board.box.high[axis] - box.high[axis]


def test_each_cut_of_a_stop_is_where_it_says(cabinet):
    stops = dado_stops(cabinet)
    assert stops
    for stop in stops:
        assert len(stop.cuts) > 1
        ways = [words.split()[0] for words in stop.references]
        assert len(ways) == 1 or stop.kind == "rabbet" or stop.wall  # one stop from both ends
        for board, cut in stop.cuts:
            assert board.stage == stop.stage and cut.kind == stop.kind
            assert any(max(in_the_world(board, cut, way), 0) == stop.wall for way in ways)
            extents = sorted(high - low for low, high in zip(cut.low, cut.high, strict=True))
            assert {stop.width, stop.depth} <= set(extents)


def test_no_cut_that_matches_is_left_out(cabinet):
    """Told in the words of the cut list without what they are for, equal cuts of two boards are in one stop."""
    writing = Writing(cabinet.style)
    stopped = {(board.name, cut) for stop in dado_stops(cabinet) for board, cut in stop.cuts}
    words: dict = {}
    for board in cabinet.boards:
        for cut in board.cuts:
            if isinstance(cut, BoxCut) and cut.kind in ("dado", "groove"):
                (text,) = cut_words(board, cabinet, writing, [replace(cut, for_board="")])
                text = text.split(", in the ")[0], text.split("face")[-1].split(", stopped")[0]
                words.setdefault((board.stage, bool(cut.for_board), text), []).append((board.name, cut))
    matching = [cuts for cuts in words.values() if len(cuts) > 1]
    assert matching
    for cuts in matching:
        assert set(cuts) <= stopped


def test_a_dado_that_is_off_by_a_tick_has_no_part_in_the_stop():
    cabinet = solve(chest())
    grooves = next(stop for stop in dado_stops(cabinet) if stop.kind == "groove")
    assert len(grooves.cuts) == 16  # four boxes of two sides, a front and a back; the bottom in all four
    name = grooves.boards[0].name
    moved = []
    for board in cabinet.boards:
        if board.name == name:
            cuts = tuple(
                replace(cut, low=tuple(v + (v > 0) * (n == 1) for n, v in enumerate(cut.low)),
                        high=tuple(v + (n == 1) for n, v in enumerate(cut.high)))
                if cut.kind == "groove" else cut
                for cut in board.cuts
            )  # fmt: skip
            board = replace(board, cuts=cuts)
        moved.append(board)
    again = next(stop for stop in dado_stops(replace(cabinet, boards=tuple(moved))) if stop.kind == "groove")
    assert len(again.cuts) == 15 and name not in {board.name for board in again.boards}


def test_the_rabbets_of_a_chest_by_hand():
    """Sides of 0.705 in at most: the rabbet for top and bottom is as wide as that, as deep as half the sheet, which
    is 0.704 in by its mean; one at either end of two sides makes four, and all of them are one set-up."""
    stop = next(stop for stop in dado_stops(solve(chest())) if "bottom end" in stop.reference)
    assert (stop.kind, stop.reference, stop.wall, len(stop.cuts)) == ("rabbet", "bottom end and top end", 0, 4)
    assert (stop.width, stop.depth) == (705 * INCH // 1000, 352 * INCH // 1000)
    assert [board.name for board in stop.boards] == ["left side", "right side"]


def test_one_stop_serves_cuts_that_mirror_each_other():
    """By hand: on a board of 550 mm dadoes of 6 mm begin 10 mm and 534 mm from the left end. 550 - 534 - 6 = 10, so the
    second is as far from the right end; one that is a tick off is not."""
    def board(far):
        cuts = tuple(BoxCut("dado", (at, 0, 0), (at + 6 * MM, 90 * MM, 3 * MM), "") for at in (10 * MM, far))
        return Board("rail", "case", 1, "s", 550 * MM, 90 * MM, 18 * MM, Placement((0, 0, 0), ("+x", "+y", "+z")), cuts)

    def stops(far):
        return dado_stops(Cabinet("rail", (board(far),), {}))

    (stop,) = stops(534 * MM)
    assert (stop.wall, len(stop.cuts), stop.reference) == (10 * MM, 2, "left end and right end")
    assert stop_words(stop, Writing(MM_STYLE)) == (
        "2 dadoes, 6 mm wide, 3 mm deep, the near wall 10 mm from the left end and, turned end for end at the same "
        "stop, from the right end: rail"
    )
    assert stops(534 * MM + 1) == ()
    for stop in dado_stops(solve(stand())):  # a divider whose shelves have mates in the sides is not turned about
        assert stop.kind == "rabbet" or len(stop.references) == 1


def test_a_divider_does_not_stand_where_a_side_does():
    """By hand: the sheet is 18.1 mm by its mean. The sides reach to the underside of the bottom; the divider enters
    the bottom by 6 mm, so its end is 12.1 mm higher, and each shelf lies by that nearer to it."""
    found = two_stops(solve(stand()))
    assert [tuple(board.name for board in one.boards) for one in found] == [
        ("bay 1 shelf 1",), ("bay 1 shelf 2",), ("bay 2 shelf 1",),
    ]  # fmt: skip
    for one in found:
        assert one.reference == "bottom end"
        assert one.walls[1] - one.walls[0] == 12 * MM + MM // 10
    assert two_stops_words(found[0], Writing(MM_STYLE)).endswith("; the stops differ by 12.1 mm")
    assert two_stops(solve(chest())) == ()


def test_words_say_what_to_set():
    stop = next(stop for stop in dado_stops(solve(stand())) if stop.kind == "dado")
    assert stop_words(stop, Writing(MM_STYLE)) == (
        "2 dadoes, 18.2 mm wide, 6 mm deep, the near wall 431.8 mm from the left end: bottom and top"
    )
    assert set(KINDS) == {"dado", "groove", "rabbet"}


def test_a_slot_in_an_end_is_set_by_the_face_that_the_drawing_names():
    """A lock joint slots the ends of a box front and of its back: the front lies outside in front, the back behind."""
    [bay] = chest().bays
    locked = solve(chest(bays=(replace(bay, drawers=replace(bay.drawers, corner=JointChoice("drawer lock"))),)))
    slots = [stop for stop in dado_stops(locked) if stop.kind == "groove" and "face" in stop.reference]
    assert {board.role: stop.reference for stop in slots for board in stop.boards} == {
        "box front": "outside face", "box back": "inside face",
    }
    writing = Writing(locked.style)
    for stop in slots:
        said = place_words(stop, writing)
        for board, cut in stop.cuts:
            [drawn] = cut_words(board, locked, writing, [cut])
            assert said.removeprefix("the near wall ") in drawn
