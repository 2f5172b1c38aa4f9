"""Where the case stands, against a search over every place of the floor, and by hand for the shipped projects."""

from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.documents.cut_list_file import cut_list_text
from shoplib.documents.project_file import read_project
from shoplib.documents.standing import standing, standing_words
from shoplib.measure import read_length
from shoplib.model.box import Box
from shoplib.model.cabinet import solve
from shoplib.model.project import Block, Space

PROJECTS = Path(__file__).parents[2] / "data" / "projects"
small = st.integers(1, 8)
block = st.builds(Block, st.just("post"), small, small, small, st.integers(0, 6), st.integers(0, 3), st.integers(0, 6))


def box_of(one: Block) -> Box:
    return Box((one.left, one.back, one.bottom),
               (one.left + one.width, one.back + one.depth, one.bottom + one.height))


@given(st.tuples(small, small, small), st.lists(block, max_size=3))
def test_it_stands_where_a_search_over_every_place_finds_the_nearest_to_the_wall(size, blocks):
    room = (9, 9, 9)
    space = Space((9,), (9,), (9,), blocks=tuple(blocks))
    boxes = [box_of(one) for one in blocks]

    def is_free(x, y, high=size[2]):
        taken = Box((x, y, 0), (x + size[0], y + size[1], high))
        return x + size[0] <= 9 and y + size[1] <= 9 and high <= 9 and not any(taken.overlaps(b) for b in boxes)

    free = [(y, x) for y in range(9) for x in range(9) if is_free(x, y)]
    found = standing(size, space)
    assert (found is None) == (not free)
    if found is None:
        return
    x, y, left = found.left, found.back, found.free
    assert y == min(free)[0]
    assert is_free(x, y)
    assert abs(left["left"] - left["right"]) <= 1
    assert all(is_free(x - n, y) for n in range(left["left"] + 1))
    assert all(is_free(x + n, y) for n in range(left["right"] + 1))
    assert all(is_free(x, y + n) for n in range(left["front"] + 1))
    assert all(is_free(x, y - n) for n in range(left["back"] + 1))
    assert all(is_free(x, y, size[2] + n) for n in range(left["above"] + 1))
    assert not is_free(x + left["right"] + 1, y)
    assert not is_free(x, y + left["front"] + 1)
    assert not is_free(x, y, size[2] + left["above"] + 1)
    assert all(0 <= ticks <= side for ticks, side in zip(left.values(), (room[0], room[0], room[1], room[1], room[2]),
                                                        strict=True))


def test_the_case_under_the_bench_stands_before_the_pipe():
    """By hand: 61 1/16 - 60 = 1 1/16 in width; 25 3/8 - 1 1/2 - 22 1/2 - 1 1/8 = 1/4; 34 3/8 - 33 1/2 = 7/8."""
    cabinet = solve(read_project(PROJECTS / "under_bench_case.toml"))
    words = standing_words(cabinet)[0]
    assert words.startswith("Stand the case 1 1/2 in off the back wall, before the heating pipe, its left end 17/32 in")
    assert "17/32 in at the left; 17/32 in at the right; 1/4 in in front, before the pulls; 7/8 in above it" in words
    assert "Shims" in words
    assert words in " ".join(cut_list_text(cabinet).split())


def test_without_a_block_it_stands_against_the_wall_and_without_a_space_nothing_is_said():
    rolling = solve(read_project(PROJECTS / "rolling_stand.toml"))
    assert standing_words(rolling)[0].startswith("Stand the case against the back wall, its left end 10 mm from")
    assert standing_words(solve(read_project(PROJECTS / "small_parts_wall_case.toml"))) == ()


@pytest.mark.parametrize(("name", "side"), [("shelf post", "left"), ("meter", "right")])
def test_a_block_beside_it_is_named(name, side):
    wide = read_length("10 in")
    at = 0 if side == "left" else read_length("72 in")
    project = read_project(PROJECTS / "under_bench_case.toml")
    post = Block(name, wide, wide, wide, at)
    space = replace(project.space, width=(read_length("82 in"),), blocks=(post,))
    words = standing_words(solve(replace(project, space=space)))[0]
    assert f"6 in at the {side} to the {name}" in words
    assert ("beside the shelf post" in words) == (side == "left")


def test_a_case_that_fits_nowhere_is_given_no_place():
    project = read_project(PROJECTS / "under_bench_case.toml")
    space = replace(project.space, depth=(read_length("20 in"),))
    assert standing_words(solve(replace(project, space=space))) == ()
