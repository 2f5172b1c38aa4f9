"""Pieces and kerfs against Python's own fractions: whatever is cut, pieces and kerfs make the board again.

piece + kerf + rest = board; n pieces have n - 1 kerfs between them (common practice, no source).
"""

from fractions import Fraction
from random import Random

import pytest

from shoplib.measure import INCH, MM
from shoplib.measure.traced import leaf
from shoplib.model.strip import cut_at, equal_pieces, left_over, marked_without_kerf
from shoplib.words.working import leaves

OF_THE_KERF = {"waste side": Fraction(0), "on the line": Fraction(1, 2), "keep side": Fraction(1)}


@pytest.mark.parametrize("side", OF_THE_KERF)
def test_a_cut_makes_two_pieces_and_a_kerf(side):
    draw = Random(3)
    for _ in range(200):
        kerf, line = draw.randint(1, 6 * MM), draw.randint(10 * MM, 900 * MM)
        board = line + draw.randint(10 * MM, 900 * MM)
        kept, gone, rest = cut_at(board, line, kerf, side)
        assert kept + gone + rest == board and gone == kerf
        assert 0 <= kept - (line - OF_THE_KERF[side] * kerf) < 1


def test_pieces_one_after_another():
    assert left_over(48 * INCH, [12 * INCH, 7 * INCH + INCH // 2], INCH // 8) == Fraction(113, 4) * INCH
    assert left_over(48 * INCH, [], INCH // 8) == 48 * INCH
    with pytest.raises(ValueError, match="more than the board"):
        left_over(24 * INCH, [12 * INCH, 12 * INCH], INCH // 8)


def test_equal_pieces_and_their_kerfs_make_the_board_again():
    draw = Random(4)
    for _ in range(200):
        board, count, kerf = draw.randint(200 * MM, 2400 * MM), draw.randint(1, 9), draw.randint(0, 4 * MM)
        piece, rest = equal_pieces(board, count, kerf)
        assert count * piece + (count - 1) * kerf + rest == board and 0 <= rest < count
        assert piece == (Fraction(board) - (count - 1) * kerf) // count
        marked, over = equal_pieces(board, count, kerf, INCH // 64)
        assert marked % (INCH // 64) == 0 and count * marked + (count - 1) * kerf + over == board


def test_without_kerfs_the_last_piece_pays():
    for count in range(2, 7):
        board, kerf = count * 100 * MM, 3 * MM
        *others, last = marked_without_kerf(board, count, kerf)
        assert set(others) == {100 * MM} and last == 100 * MM - (count - 1) * kerf


def test_what_cannot_be_cut_is_refused():
    for board, line, side in ((10, 10, "waste side"), (10, 3, "keep side"), (12, 9, "on the line")):
        with pytest.raises(ValueError, match="leaves nothing"):
            cut_at(board, line, 3, side) if side != "on the line" else cut_at(board, line, 6, side)
    with pytest.raises(ValueError, match="the cuts alone"):
        equal_pieces(10, 6, 2)


def test_sizes_rest_on_board_line_and_kerf():
    board, line, kerf = leaf(48 * INCH, "board"), leaf(12 * INCH, "line"), leaf(INCH // 8, "kerf")
    assert {each.name for each in leaves(cut_at(board, line, kerf, "on the line").rest)} == {"board", "line", "kerf"}
    assert {each.name for each in leaves(equal_pieces(board, 3, kerf)[0])} == {"board", "kerf"}
