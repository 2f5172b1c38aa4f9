"""Cuts in words: places are from the left, front or bottom side to the near wall."""

from shoplib.lists.cut_list import kinds
from shoplib.lists.cut_words import cut_words
from shoplib.lists.row_words import edging_words, where_words
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.model.board import Board, BoxCut, Hole
from shoplib.model.box import Box
from shoplib.model.cabinet import solve
from shoplib.model.placement import standing_in
from shoplib.model.project import Carcass, JointChoice, Project, Size
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
    case = Cabinet("one board", (board,), {"s": Sheet("s", "plywood", 18 * MM)}, style=MM_STYLE)
    return cut_words(board, case, Writing(MM_STYLE))


EXACT = Writing(MM_STYLE, exact=True)
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


def test_a_rabbet_that_leaves_a_tongue_says_how_thick_it_is():
    """17.6 in the mean; where it reads 18 a rabbet 11.6 deep would leave 6.4, too much for a dado of 6.1."""
    sheet = Sheet("case", "plywood", 18 * MM, mm(17.3, 17.5, 18))
    corner = JointChoice("tongue", 6 * MM, MM // 10, tongue=6 * MM)
    size = Size("outside", *mm(600, 500, 300))
    case = solve(Project("case", MM_STYLE, {"case": sheet}, size, Carcass("case", corner=corner)))
    bottom = case.by_name["bottom"]
    told = cut_words(bottom, case, Writing(MM_STYLE))
    assert len(told) == 2 and all(text.endswith(", leaving a tongue 6 mm thick") for text in told)
    assert not any("tongue" in text for text in cut_words(case.by_name["left side"], case, Writing(MM_STYLE)))


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


def test_rows_of_holes_are_a_grid():
    holes = [Hole("peg", mm(u, v, 0), "w", 5 * MM, 12 * MM) for v in (37, 100) for u in (96, 128, 160)]
    assert words(LEFT, *holes) == (
        "6 peg holes 5 mm across, 12 mm deep, from the right face, in a grid: 96 mm, 128 mm and 160 mm from the "
        "bottom end, each 37 mm and 100 mm from the front edge",
    )
    assert words(LEFT, *holes, Hole("peg", mm(300, 200, 0), "w", 5 * MM, 12 * MM))[1].startswith("peg hole 5 mm")


def test_what_takes_a_measured_sheet_is_a_decimal_and_the_rest_a_shop_fraction():
    place = standing_in(Box((0, 0, 0), (INCH, 10 * INCH, 20 * INCH)), LEFT)
    wide = 713 * INCH // 1000
    dado = BoxCut("dado", (4 * INCH, 0, 0), (4 * INCH + wide, 10 * INCH, 5 * INCH // 16), "shelf")
    half = BoxCut("dado", (9 * INCH + 508, 0, 0), (9 * INCH + 508 + wide, 10 * INCH, 703 * INCH // 2000), "shelf")
    side = Board("side", "case", 1, "s", 20 * INCH, 10 * INCH, INCH, place, (dado, half))
    case = Cabinet("one board", (side,), {"s": Sheet("s", "plywood", INCH)}, style=INCH_STYLE)
    assert cut_words(side, case, Writing(INCH_STYLE, exact=True)) == (
        "dado 0.713 in wide, 5/16 in deep for the shelf, in the right face, 4 in from the bottom end",
        "dado 0.713 in wide, 0.3515 in deep for the shelf, in the right face, 9 in (+0.00025 in) from the bottom end",
    )
    assert cut_words(side, case, Writing(INCH_STYLE, units=False), [half]) == (
        "dado 0.713 wide, 0.3515 deep for the shelf, in the right face, 9 from the bottom end",
    )


def test_inside_faces_are_called_so_on_both_sides_of_a_case():
    cabinet = solve(stand())
    left, right = (cut_words(cabinet.by_name[name], cabinet, EXACT) for name in ("left side", "right side"))
    assert all("in the inside face" in phrase for phrase in (*left, *right))
    divider = cut_words(cabinet.by_name["divider 1"], cabinet, EXACT)
    assert all("in the left face" in phrase or "in the right face" in phrase for phrase in divider)


def test_where_boards_go():
    cabinet = solve(chest())
    told = {kind.first.name: where_words(kind, cabinet) for kind in kinds(cabinet)}
    assert told["bottom"] == "case, rabbeted into sides"
    assert told["back"] == "case, rabbeted into left side, right side, bottom and top"
    assert told["bay 1 drawer 1 box bottom"] == "bay 1 drawers 1 to 4, grooved into box sides, box fronts and box backs"


def test_edging_in_words():
    cabinet = solve(stand())
    told = {kind.first.name: edging_words(kind, EXACT) for kind in kinds(cabinet)}
    assert told["divider 1"] == "band 1 mm on the front edge"
    assert told["bay 1 shelf 1"] == ""
