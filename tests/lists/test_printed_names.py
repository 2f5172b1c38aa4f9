"""What is printed for several boards can be typed back."""

import random
import time

import pytest

from shoplib.checks import check
from shoplib.documents.hand_list import parse_hand_list
from shoplib.lists.compare import compare
from shoplib.lists.cut_list import kinds
from shoplib.lists.names_read import Names
from shoplib.lists.typed import all_of
from shoplib.model.board import Board
from shoplib.model.cabinet import solve
from shoplib.model.placement import Placement
from shoplib.words.naming import boards_in_short, in_short
from tests.lists.projects import chest
from tests.random_projects import project


@pytest.mark.parametrize("seed", range(40))
def test_a_list_under_the_printed_names_agrees(seed):
    """With quotation marks round the cells, since some of the names hold commas."""
    cabinet = solve(project(seed))
    lines = ["names,count,length_mm,width_mm"]
    for kind in kinds(cabinet):
        length, width, _ = (ticks / 80_000 for ticks in kind.cut)
        lines.append(f'"  {boards_in_short(kind.boards).upper()} ",{kind.count},{length:.6f},{width:.6f}')
    typed = parse_hand_list("\n".join(lines))
    assert typed.unreadable == ()
    assert compare(cabinet, typed.rows, lambda _: ()).differences == ()


@pytest.mark.parametrize("seed", range(40))
def test_any_boards_told_in_short_read_back_to_the_same(seed):
    cabinet, stream = solve(project(seed)), random.Random(seed)
    names = Names(cabinet.boards)
    for _ in range(30):
        boards = stream.sample(cabinet.boards, stream.randint(1, min(14, len(cabinet.boards))))
        boards.sort(key=cabinet.boards.index)
        for told in (boards_in_short(boards), all_of(boards, cabinet, most=len(boards))):
            read = names.read(told)
            assert read is not None, told
            assert sorted(read) == sorted(board.name for board in boards), told


@pytest.mark.parametrize(
    "phrase",
    ["", "sides and", "both box sides", "all 7 box sides", "bay 1 drawers 1 to 9 front", "left and right of", "1 and 2",
     "left and right box side of drawer 1 in bays 1 and 3", "front of bay 1 drawers 1 to 99999999", "of", " and ",
     "all 0 elephants", "fronts of drawers 1 and 2 in bays 3 to 1", "front of drawers 3 to 1 in bays 1 and 2",
     "front, and box bottom of bay 1 drawer 1 and"],
)  # fmt: skip
def test_what_names_no_boards_is_not_read(phrase):
    assert Names(solve(chest()).boards).read(phrase) is None


@pytest.mark.parametrize(
    "phrase",
    ["1" * 5000, "dividers 1 to " + "9" * 5000, "all " + "9" * 5000 + " sides", "1 " * 50_000,
     "dividers 1 to 99" + " in bays 1 to 99" * 9, "drawers " + "1 to 1 and " * 180,
     " and ".join(["a b c d e f g h i j"] * 60), "a of " * 400,
     "left box side of " + " and ".join(["bay 1 drawers 1 to 40"] * 60), "a, " * 50_000],
    ids=range(10),
)  # fmt: skip
def test_no_phrase_takes_long_to_refuse(phrase):
    """Half a second is ten times what the slowest takes; nested runs would multiply without a bound."""
    names = Names(solve(project(7)).boards)
    began = time.process_time()
    assert names.read(phrase) is None
    assert time.process_time() - began < 0.5


def test_a_comma_tells_one_drawer_from_the_next():
    """Read otherwise, drawer 1 would have no box bottom and drawer 2 a second one."""
    names = Names(solve(chest()).boards)
    of_1, of_2 = (f"bay 1 drawer {number}" for number in (1, 2))
    first, both = f"{of_1} right box side and box bottom", "box back and front of bay 1 drawers 1 and 2"
    assert names.read(f"{first}, {both}, and {of_2} left box side") == (
        f"{of_1} right box side", f"{of_1} box bottom", f"{of_1} box back", f"{of_2} box back", f"{of_1} front",
        f"{of_2} front", f"{of_2} left box side",
    )  # fmt: skip


def test_a_board_told_in_two_lines_is_still_found_out():
    cabinet = solve(chest())
    typed = parse_hand_list("names,length,width\nboth sides,30 in,21 in\nleft side,30 in,21 in\n")
    text = " ".join(sentence for one in compare(cabinet, typed.rows, check).differences for _, sentence in one.lines)
    assert "left side is listed already in line 2; each board is cut once." in text


def test_a_board_told_twice_is_named_once():
    place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    panel = Board("bay 2 pull-out panel", "bay 2 pull-out", 2, "s", 9, 9, 9, place)
    cleat = Board("bay 2 pull-out cleat", "bay 2 pull-out", 2, "s", 9, 9, 9, place)
    assert boards_in_short([panel, cleat, panel]) == "bay 2 pull-out panel and cleat"
    assert in_short(["bay 2 pull-out", "bay 2 pull-out"]) == ["bay 2 pull-out"]
