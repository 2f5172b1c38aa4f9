"""Cuts read from words: what the plan writes reads back the same, what is not understood is not believed."""

import re
from pathlib import Path

import pytest

from shoplib.documents.cut_list_file import cut_list_csv
from shoplib.documents.hand_list import parse_hand_list
from shoplib.documents.project_file import read_project
from shoplib.lists.compare import compare
from shoplib.lists.cut_words import cut_words
from shoplib.lists.cuts_read import CannotBeCut, NotRead, read_phrase
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM
from shoplib.model.board import Board, Cut, Hole
from shoplib.model.cabinet import solve
from shoplib.model.solved import Cabinet
from tests.lists.projects import chest, stand
from tests.random_projects import project

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


def cabinets():
    for path in PROJECTS:
        yield pytest.param(lambda path=path: solve(read_project(path)), id=path.stem)
    yield pytest.param(lambda: solve(chest()), id="chest")
    yield pytest.param(lambda: solve(stand()), id="stand")


def place(cut: Cut, board: Board) -> tuple:
    if not isinstance(cut, Hole):  # a pocket by the box round it, which its lean and its web decide
        return cut.kind, cut.low, cut.high
    return cut.kind, cut.centre, (cut.diameter, min(cut.depth, board.size["uvw".index(cut.along)]), 0)


@pytest.mark.parametrize("make", list(cabinets()))
def test_the_plans_words_read_back_to_the_same_cuts(make):
    cabinet: Cabinet = make()
    read_any = 0
    for board in cabinet.boards:
        words = cut_words(board, cabinet, Writing(cabinet.style, exact=True))
        read = [cut for phrase in words for cut in read_phrase(phrase, board, cabinet).cuts]
        # One rabbet that takes two boards is two cuts of the board, and one phrase.
        assert {place(cut, board) for cut in read} == {place(cut, board) for cut in board.cuts}
        read_any += len(read)
    assert read_any >= 10


def test_the_words_of_random_cabinets_read_back_and_their_lists_agree():
    for seed in range(24):
        cabinet = solve(project(seed))
        for board in cabinet.boards:
            words = cut_words(board, cabinet, Writing(cabinet.style, exact=True))
            read = [cut for phrase in words for cut in read_phrase(phrase, board, cabinet).cuts]
            assert {place(cut, board) for cut in read} == {place(cut, board) for cut in board.cuts}
        comparison = compare(cabinet, parse_hand_list(cut_list_csv(cabinet)).rows, lambda _: ())
        assert comparison.differences == ()
        assert comparison.what.whole


@pytest.mark.parametrize(
    "words",
    [
        "dado 18.2 mm wide, 6 mm deep, in the left face, 200 mm from the bottom end",
        "Dado 18,2 mm wide, 6 mm deep for the fixed shelf, 200 mm from the bottom, in the left",
        "dado in the left face, 6 deep, 18.2 wide, 200 from the bottom",
        "dado 18.2 mm wide, 6 mm deep, in the left face, 557.6 mm from the top end",
    ],
)
def test_the_same_dado_in_other_orders(words):
    cabinet = solve(stand())
    divider = cabinet.by_name["divider 1"]
    (cut,) = read_phrase(words, divider, cabinet).cuts
    world = divider.placement.to_world(cut.box)
    # 200 mm above the bottom end, 18.2 mm high, 6 mm in from the left face, all the way from front to back
    assert world.low[2] - divider.box.low[2] == 200 * MM
    assert world.size[2] == 182 * MM // 10
    assert (world.low[0], world.size[0]) == (divider.box.low[0], 6 * MM)
    assert (world.low[1], world.high[1]) == (divider.box.low[1], divider.box.high[1])


@pytest.mark.parametrize(
    "words",
    [
        "dadoes as usual",
        "dado 18.2 mm wide, 9 mm deep",
        "dado 18.2 mm wide, in the left face, 200 mm from the bottom end",
        "dado 18.2 mm wide, 6 mm deep, in the left face, 200 mm from the bottom end, on the slant",
        "2 dadoes 18.2 mm wide, 6 mm deep, in the left face, 200 mm from the bottom end",
        "dado 18/7 mm wide, 6 mm deep, in the left face, 200 mm from the bottom end",
        "dado 18.2 mm wide, 6 mm deep, in the inside face, 200 mm from the bottom end",
        "mitre along the front edge",
    ],
)
def test_what_is_not_understood_is_not_read(words):
    cabinet = solve(stand())
    with pytest.raises(NotRead):
        read_phrase(words, cabinet.by_name["divider 1"], cabinet)


@pytest.mark.parametrize(
    "words",
    [
        "dado 18.2 mm wide, 6 mm deep, in the left face, 2 m from the bottom end",
        "dado 18.2 mm wide, 60 mm deep, in the left face, 200 mm from the bottom end",
        "dado 0 mm wide, 6 mm deep, in the left face, 200 mm from the bottom end",
    ],
)
def test_what_the_board_has_no_wood_for_cannot_be_cut(words):
    cabinet = solve(stand())
    with pytest.raises(CannotBeCut):
        read_phrase(words, cabinet.by_name["divider 1"], cabinet)


def test_a_number_without_a_unit_is_in_the_projects():
    cabinet = solve(chest())
    side = cabinet.by_name["left side"]
    (cut,) = read_phrase("dado 3/4 wide, 3/8 deep, in the inside face, 4 1/2 from the bottom end", side, cabinet).cuts
    assert sorted(high - low for low, high in zip(cut.low, cut.high, strict=True))[:2] == [3 * INCH // 8, 3 * INCH // 4]


def test_a_rabbet_is_read_by_the_tongue_that_it_leaves():
    case = solve(read_project(next(path for path in PROJECTS if path.stem == "rolling_stand")))
    board, text = next(
        (board, text) for board in case.boards for text in cut_words(board, case, Writing(case.style))
        if "leaving a tongue" in text
    )
    depth, tongue = (re.search(pattern, text) for pattern in (r"[\d.]+ mm deep", r"a tongue ([\d.]+) mm"))
    (whole,), (by_tongue,) = (
        read_phrase(each, board, case).cuts for each in (text, text.replace(f"{depth[0]} ", ""))
    )
    left = board.thickness - (by_tongue.high[2] - by_tongue.low[2])
    assert left == round(float(tongue[1]) * MM)
    assert abs((whole.high[2] - whole.low[2]) - (by_tongue.high[2] - by_tongue.low[2])) < case.style.step
    with pytest.raises(NotRead):  # two sizes that cannot both be
        read_phrase(text.replace(tongue[0], "a tongue 2 mm"), board, case)
