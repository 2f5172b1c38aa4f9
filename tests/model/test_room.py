"""A case that fills its space: readings, clearance, blocks; and keys that would be ignored are refused."""

from dataclasses import replace
from itertools import product

import pytest

from shoplib.checks import check
from shoplib.checks.fit_space import has_place
from shoplib.model.box import Box
from shoplib.model.cabinet import solve
from shoplib.model.project import Base, Block, ImpossibleProject, Pulls, Size, Space
from shoplib.model.room import largest_clear
from tests.model.plain_case import MM, a_case, drawer_case

PIPE = Block("heating pipe", MM.of(980), MM.of(60), MM.of(40), bottom=MM.of(30))
POST = Block("post", MM.of(80), MM.of(2000), MM.of(600), left=MM.of(800))
SHELF = Block("wall shelf", MM.of(1000), MM.of(20), MM.of(200), bottom=MM.of(700))


def filling(blocks, **more) -> Space:
    sizes = {"width": 1000, "height": 900, "depth": 600}
    return Space(*((MM.of(size), MM.of(size + 2)) for size in sizes.values()), blocks=blocks, **more)


def refused(project) -> str:
    with pytest.raises(ImpossibleProject) as fault:
        solve(project)
    return fault.value.key


@pytest.mark.parametrize(
    ("blocks", "size"),
    [
        ((), (1000, 900, 600)),
        ((PIPE,), (1000, 900, 560)),  # before the pipe: 600 - 40
        ((POST,), (800, 900, 600)),  # to the left of the post
        ((SHELF,), (1000, 700, 600)),  # under the shelf: 420 l; before it only 360 l
        ((PIPE, POST), (800, 900, 560)),
        ((PIPE, SHELF), (1000, 700, 560)),  # 392 l; before both, 1000 x 900 x 400, only 360 l
    ],
)
def test_a_case_that_fills_its_space_stands_clear_of_the_blocks(blocks, size):
    space = filling(blocks, clearance_width=MM.of(10))
    cabinet = solve(a_case(MM, size=Size("space"), space=space))
    width, depth, height = (MM.back(side) for side in cabinet.outside.size)
    assert (width, height, depth) == (size[0] - 10, size[1], size[2])
    found = [finding for finding in check(cabinet) if finding.check == "space"]
    assert [finding.text for finding in found if finding.level != "note"] == []
    assert len(found) == (1 if blocks else 0)
    assert all(block.name in found[0].text for block in blocks)


def test_pulls_and_fronts_of_a_case_that_fills_its_space_stay_clear_too():
    case = drawer_case(MM, fronts="overlay", t=["18"], size=Size("space"), gap="3", reveal="3")
    cabinet = solve(replace(case, space=filling((PIPE,)), pulls=Pulls(projection=MM.of(30))))
    assert MM.back(cabinet.envelope.size[1]) == 560
    assert [finding.text for finding in check(cabinet) if finding.check == "space" and finding.level == "stop"] == []


def test_no_clear_box_is_larger_than_the_largest():
    """Against every box of whole numbers in a small room."""
    room, blocks = (7, 5, 6), [Box((2, 0, 1), (3, 4, 5)), Box((5, 1, 3), (7, 2, 4)), Box((0, 5, 0), (1, 6, 2))]

    def stands(width, height, depth):
        return has_place((width, depth, height), (room[0], room[2], room[1]), blocks)

    every = [sides for sides in product(range(1, 8), range(1, 6), range(1, 7)) if stands(*sides)]
    found = largest_clear(room, blocks)
    assert found in every
    assert found[0] * found[1] * found[2] == max(a * b * c for a, b, c in every)


def test_a_space_full_of_blocks_is_refused():
    whole = Block("chest freezer", MM.of(1100), MM.of(850), MM.of(700))
    assert refused(a_case(MM, size=Size("space"), space=filling((whole,)))) == "space.blocks"


@pytest.mark.parametrize("side", ["width", "height", "depth"])
def test_a_size_beside_the_space_that_it_is_taken_from_is_refused(side):
    assert refused(a_case(MM, size=Size("space", **{side: MM.of(500)}), space=filling(()))) == f"size.{side}"


@pytest.mark.parametrize(
    ("base", "key"),
    [
        (Base("none", MM.of(100)), "base.height"),
        (Base("feet", MM.of(100), MM.of(40)), "base.setback"),
        (Base("casters", MM.of(100), sheet="case sheet"), "base.sheet"),
        (Base("plinth", MM.of(100), MM.of(464)), "base.setback"),  # 500 - 2 x 18: its front meets its back
        (Base("plinth", MM.of(100), MM.of(5000)), "base.setback"),
        (Base("toe space", MM.of(100), MM.of(5000)), "base.setback"),
    ],
)
def test_what_a_base_cannot_use_is_refused_by_name(base, key):
    assert refused(a_case(MM, t=["18"], base=base)) == key


def test_the_deepest_plinth_front_that_stands():
    base = Base("plinth", MM.of(100), MM.of(463))
    told = check(solve(a_case(MM, t=["18"], base=base)))
    assert [f.check for f in told if f.level == "stop"] == ["base"]  # it can be made, but it tips forward
