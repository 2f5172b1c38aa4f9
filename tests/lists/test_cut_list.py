"""Equal boards are one row, boards that cannot stand for each other are not."""

from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.documents.project_file import read_project
from shoplib.lists.cut_list import kinds
from shoplib.measure import INCH, MM
from shoplib.model.board import Board, BoxCut, Edge, Hole
from shoplib.model.box import Box
from shoplib.model.cabinet import solve
from shoplib.model.placement import Placement, standing_in
from shoplib.model.project import Base
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from tests.lists.projects import chest, stand

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
LEVEL = ("+x", "+y", "+z")
SIZE = (90, 50, 10)


def board(name: str, cuts=(), axes=LEVEL, **changes) -> Board:
    place = standing_in(Box((0, 0, 0), (1, 1, 1)), axes)
    values = {
        "group": "case",
        "stage": 1,
        "sheet": "s",
        "placement": Placement(place.origin, axes),
        "cuts": cuts,
    }
    return Board(name, **(dict(zip(("length", "width", "thickness"), SIZE, strict=True)) | values | changes))


def rows(*boards: Board) -> list[tuple[str, ...]]:
    sheets = {name: Sheet(name, "plywood", 10) for name in ("s", "t")}
    return [kind.names for kind in kinds(Cabinet("made by hand", boards, sheets))]


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_every_board_of_a_shipped_project_stands_in_one_row(path):
    cabinet = solve(read_project(path))
    listed = [name for kind in kinds(cabinet) for name in kind.names]
    assert sorted(listed) == sorted(board.name for board in cabinet.boards)
    assert [kind.stage for kind in kinds(cabinet)] == sorted(kind.stage for kind in kinds(cabinet))


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_boards_of_a_row_keep_equally_much_wood(path):
    for kind in kinds(solve(read_project(path))):
        assert len({sum(piece.volume for piece in board.pieces) for board in kind.boards}) == 1
        assert len({board.cut_size for board in kind.boards}) == 1


def test_sides_that_can_stand_for_each_other_are_one_row_and_mirrored_ones_are_two():
    # Rabbets alike at both ends: turn a left side end for end and it is the right side.
    alike = {kind.names for kind in kinds(solve(chest()))}
    assert ("left side", "right side") in alike
    # A toe notch at one end only makes the pair mirror images.
    toe = solve(chest(base=Base("toe space", 4 * INCH, 3 * INCH, "case sheet")))
    by_names = {kind.names: kind for kind in kinds(toe)}
    assert by_names["left side",].mirror_of == "right side"
    assert by_names["right side",].mirror_of == "left side"


def test_a_row_says_the_size_at_the_saw_and_the_finished_one():
    divider = next(kind for kind in kinds(solve(stand())) if "divider 1" in kind.names)
    assert [f - c for f, c in zip(divider.finished, divider.cut, strict=True)] == [0, MM, 0]


dado = BoxCut("dado", (20, 0, 5), (30, 50, 10), "shelf")


@pytest.mark.parametrize(
    "other",
    [
        {"cuts": (replace(dado, low=(21, 0, 5)),)},
        {"cuts": ()},
        {"cuts": (dado, Hole("hole", (70, 10, 10), "w", 5, 6))},
        {"cuts": (dado,), "length": 91},
        {"cuts": (dado,), "sheet": "t"},
        {"cuts": (dado,), "stage": 2},
        {"cuts": (dado,), "grain": "none"},
        {"cuts": (dado,), "edging": (("front", Edge("band", 1)),)},
    ],
)
def test_any_difference_makes_a_row_of_its_own(other):
    assert len(rows(board("a", (dado,)), board("b", **other))) == 2


def test_what_a_cut_is_for_makes_no_difference():
    assert rows(board("a", (dado,)), board("b", (replace(dado, for_board="other"),))) == [("a", "b")]


def test_edging_in_front_and_at_the_back_are_alike_when_the_board_can_be_turned():
    front, back = (board(name, (), edging=((name, Edge("band", 1)),)) for name in ("front", "back"))
    assert rows(front, back) == [("front", "back")]
    # ... but not with a dado that would then be on the other side of the middle.
    stopped = replace(dado, high=(30, 40, 10))
    assert len(rows(replace(front, cuts=(stopped,)), replace(back, cuts=(stopped,)))) == 2


@st.composite
def cut(draw):
    ends = [sorted((draw(st.integers(0, size)), draw(st.integers(0, size)))) for size in SIZE]
    low, high = zip(*((a, b if b > a else a + 1) for a, b in ends), strict=True)
    return BoxCut("dado", low, tuple(min(h, s + 1) for h, s in zip(high, SIZE, strict=True)))


TURNED = [("+x", "+y", "+z"), ("+x", "-y", "-z"), ("-x", "+y", "-z"), ("-x", "-y", "+z")]


@given(st.lists(cut(), min_size=1, max_size=4), st.sampled_from(TURNED))
def test_a_board_laid_down_turned_is_of_the_same_kind(cuts, axes):
    """The same wood described from another corner of the board is the same kind.

    The other description comes from the placement records, not from the list's own turning.
    """
    one = board("one", tuple(cuts))
    wood = Box((0, 0, 0), SIZE)
    place = standing_in(wood, axes)
    turned = tuple(replace(c, low=place.to_board(c.box).low, high=place.to_board(c.box).high) for c in cuts)
    assert rows(one, board("turned", turned)) == [("one", "turned")]


@given(st.lists(cut(), min_size=1, max_size=4))
def test_a_mirrored_board_is_of_the_same_kind_only_if_it_can_be_turned_into_itself(cuts):
    mirrored = tuple(
        replace(c, low=(SIZE[0] - c.high[0], *c.low[1:]), high=(SIZE[0] - c.low[0], *c.high[1:])) for c in cuts
    )
    wood = {(c.low, c.high) for c in cuts}
    places = [standing_in(Box((0, 0, 0), SIZE), axes) for axes in TURNED]
    itself = any({(p.to_board(c.box).low, p.to_board(c.box).high) for c in mirrored} == wood for p in places)
    found = rows(board("one", tuple(set(cuts))), board("mirrored", tuple(set(mirrored))))
    assert (len(found) == 1) == itself


def test_holes_of_another_depth_make_a_row_of_their_own_unless_both_go_through():
    def bored(name, depth):
        return board(name, (Hole("hole", (70, 10, SIZE[2]), "w", 5, depth),))

    assert len(rows(bored("a", 6), bored("b", 4))) == 2
    assert rows(bored("a", SIZE[2]), bored("b", SIZE[2] + 2)) == [("a", "b")]
