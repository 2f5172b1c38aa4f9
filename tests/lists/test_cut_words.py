"""Cuts in words: places are from the left, front or bottom side to the near wall."""

from shoplib.lists.cut_list import kinds
from shoplib.lists.cut_words import cut_words
from shoplib.lists.row_words import edging_words, where_words
from shoplib.measure import MM, MM_STYLE
from shoplib.model.board import Board, BoxCut, Hole
from shoplib.model.box import Box
from shoplib.model.cabinet import solve
from shoplib.model.placement import standing_in
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from tests.lists.projects import chest, stand


def mm(*values):
    return tuple(round(value * MM) for value in values)


def words(axes, *cuts, size=(600, 300, 18)):
    """The words for cuts in one upright board, 600 x 300 x 18 mm, alone in its case."""
    extent = dict(zip((axis[1] for axis in axes), size, strict=True))
    box = Box((0, 0, 0), mm(extent["x"], extent["y"], extent["z"]))
    board = Board("side", "case", 1, "s", *mm(*size), standing_in(box, axes), cuts, role="side")
    return cut_words(board, Cabinet("one board", (board,), {"s": Sheet("s", "plywood", 18 * MM)}, style=MM_STYLE))


LEFT, RIGHT = ("+z", "+y", "-x"), ("+z", "-y", "+x")


def test_dadoes_of_one_size_are_told_once_with_their_places():
    cuts = [BoxCut("dado", mm(at, 0, 0), mm(at + 18.2, 300, 9)) for at in (100, 300, 450)]
    assert words(LEFT, *cuts) == (
        "3 dadoes 18.2 mm wide, 9 mm deep, in the right face, 100 mm, 300 mm and 450 mm from the bottom end",
    )


def test_a_stopped_dado_says_from_which_edge():
    cut = BoxCut("dado", mm(100, 25, 0), mm(118.2, 300, 9))
    assert words(LEFT, cut)[0].endswith("100 mm from the bottom end, stopped 25 mm from the front edge")
    # In a right side v runs forward: the same cut is stopped at the back.
    assert words(RIGHT, cut)[0].endswith("100 mm from the bottom end, stopped 25 mm from the back edge")


def test_a_rabbet_names_the_edge_that_it_runs_out_of():
    cut = BoxCut("rabbet", mm(0, 294, 0), mm(600, 300, 9))
    assert words(LEFT, cut) == ("rabbet 6 mm wide, 9 mm deep, in the right face, along the back edge",)
    assert words(RIGHT, cut) == ("rabbet 6 mm wide, 9 mm deep, in the left face, along the front edge",)


def test_a_place_is_from_the_front_whichever_way_the_board_lies():
    groove = BoxCut("groove", mm(0, 280, 0), mm(600, 286, 9))
    assert "280 mm from the front edge" in words(LEFT, groove)[0]
    assert "14 mm from the front edge" in words(RIGHT, groove)[0]


def test_a_groove_in_an_edge_is_deep_across_the_board():
    cut = BoxCut("groove", mm(0, 0, 6), mm(600, 8, 12))
    assert words(LEFT, cut) == ("groove 6 mm wide, 8 mm deep, in the front edge, 6 mm from the left face",)


def test_a_notch_names_its_corner():
    cut = BoxCut("notch", mm(0, 0, 0), mm(100, 75, 18))
    assert words(LEFT, cut) == ("notch 100 mm along the length x 75 mm across, at the bottom end and front edge",)


def test_a_row_of_holes():
    holes = [Hole("hole", mm(at, 37, 0), "w", 5 * MM, 12 * MM) for at in (96, 128)]
    assert words(LEFT, *holes) == (
        "2 holes 5 mm across, 12 mm deep, from the right face, 96 mm and 128 mm from the bottom end, "
        "37 mm from the front edge",
    )
    assert "right through" in words(LEFT, Hole("peg", mm(96, 37, 0), "w", 5 * MM, 18 * MM))[0]


def test_inside_faces_are_called_so_on_both_sides_of_a_case():
    cabinet = solve(stand())
    left, right = (cut_words(cabinet.by_name[name], cabinet) for name in ("left side", "right side"))
    assert all("in the inside face" in phrase for phrase in (*left, *right))
    assert all(
        "in the left face" in p or "in the right face" in p for p in cut_words(cabinet.by_name["divider 1"], cabinet)
    )


def test_where_boards_go():
    cabinet = solve(chest())
    told = {kind.first.name: where_words(kind, cabinet) for kind in kinds(cabinet)}
    assert told["bottom"] == "case, rabbeted into sides"
    assert told["back"] == "case, rabbeted into left side, right side, bottom and top"
    assert told["bay 1 drawer 1 box bottom"] == "bay 1 drawers 1 to 4, grooved into box sides, box fronts and box backs"


def test_edging_in_words():
    cabinet = solve(stand())
    told = {kind.first.name: edging_words(kind, cabinet) for kind in kinds(cabinet)}
    assert told["divider 1"] == "front edge band 1 mm"
    assert told["bay 1 shelf 1"] == ""
