"""The envelope in its space: sizes, blocks, floor, and the way in. Right triangles of whole numbers."""


import pytest

from shoplib.checks.fit_space import find_space_conflicts, has_place
from shoplib.model.box import Box
from shoplib.model.project import Block
from shoplib.model.solved import Hardware
from tests.checks.cabinets import box, cabinet, case_boards, space, ticks


def look(the_space, size=(500, 300, 400)):
    return find_space_conflicts(cabinet(case_boards(), space=the_space, envelope=box((0, 0, 0), size)))


def levels(findings):
    return [(f.level, f.amount) for f in findings]


def test_no_space_nothing_to_say():
    assert find_space_conflicts(cabinet(case_boards())) == ()


def test_a_cabinet_that_just_fits():
    assert look(space(510, 400, 300, clearance_width=10)) == ()


def test_the_narrowest_reading_governs_and_clearance_counts():
    tight = space(510, 400, 300, clearance_width=12)
    (found,) = look(tight)
    assert (found.level, found.amount) == ("stop", ticks(2))
    assert found.text == (
        "The cabinet takes 500 mm of width and 12 mm must stay free, but the space has only 510 mm. "
        "Make it narrower by 2 mm."
    )
    assert levels(look(space(600, 399, 299))) == [("stop", ticks(1)), ("stop", ticks(1))]


def block(left, bottom, back, width, height, depth, name="pipe"):
    return Block(name, *map(ticks, (width, height, depth, left, bottom, back)))


@pytest.mark.parametrize(
    ("blocks", "width"),
    [
        ((block(0, 0, 0, 60, 900, 900),), 560),
        ((block(500, 0, 0, 60, 900, 900),), 560),
        ((block(0, 400, 0, 900, 50, 900),), 500),
        ((block(200, 0, 0, 50, 900, 100),), 500),
        ((block(0, 0, 0, 30, 900, 900), block(530, 0, 0, 30, 900, 900)), 560),
    ],
    ids=["left of it", "right of it", "over it", "behind it", "both sides"],
)
def test_a_cabinet_beside_under_or_before_its_blocks(blocks, width):
    assert look(space(width, 900, 400, blocks=blocks)) == ()


def test_a_block_in_the_way():
    (found,) = look(space(540, 900, 320, blocks=(block(0, 0, 0, 50, 900, 900),)))
    assert (found.level, found.amount) == ("stop", ticks(10))
    assert found.text == (
        "No place in the space keeps the cabinet clear of the pipe. "
        "Make it narrower by 10 mm, or move what is in the way."
    )


def test_a_low_block_is_passed_under_when_that_is_the_least():
    (found,) = look(space(540, 900, 320, blocks=(block(0, 397, 0, 540, 9, 900, "pipe"),)))
    assert found.amount == ticks(3) and "lower by 3 mm" in found.text


def test_places_agree_with_a_walk_over_every_place():
    """Brute force over whole positions in a small room."""
    blocks = [Box((2, 0, 0), (3, 2, 9)), Box((6, 1, 2), (8, 4, 3)), Box((0, 4, 0), (4, 5, 1))]
    room = (9, 6, 5)
    for size in ((a, b, c) for a in range(1, 10) for b in range(1, 7) for c in range(1, 6)):
        places = [
            Box((x, y, 0), (x + size[0], y + size[1], size[2]))
            for x in range(room[0] - size[0] + 1)
            for y in range(room[1] - size[1] + 1)
        ]
        free = any(not any(place.overlaps(block) for block in blocks) for place in places)
        assert has_place(size, room, blocks) == free, size


def test_a_floor_out_of_level():
    (found,) = look(space(600, 420, 300, floor_fall=8))
    assert (found.level, found.amount) == ("note", ticks(8))
    assert found.text == "The floor falls 8 mm: shim the low end until the case stands level."
    (found,) = look(space(600, 405, 300, floor_fall=8))
    assert (found.level, found.amount) == ("warn", ticks(3))
    assert found.text == (
        "The floor falls 8 mm. If what is above falls with it, the case set level lacks 3 mm of height: "
        "hold a level across the space, and make the case lower by 3 mm if it does."
    )


def test_what_is_counted_in_is_named():
    """The boards alone would fit; on casters, and with pulls before the fronts, the cabinet does not."""
    where = space(600, 420, 300)
    whole = box((0, -20, -50), (500, 300, 400))
    fitted = cabinet(
        case_boards(), space=where, envelope=whole,
        hardware=tuple(Hardware(what, "bottom", "case", whole) for what in ("caster", "pull")),
    )  # fmt: skip
    texts = [found.text for found in find_space_conflicts(fitted)]
    assert [text.split(" takes ")[0] for text in texts] == [
        "The cabinet, pulls included,", "The cabinet, casters included,",
    ]  # fmt: skip
    assert find_space_conflicts(cabinet(case_boards(), space=where)) == ()


def test_a_case_too_high_on_a_level_floor_is_told_once_and_not_again_for_the_fall():
    high, fall = look(space(600, 399, 300, floor_fall=8))
    assert levels([high, fall]) == [("stop", ticks(1)), ("note", ticks(8))]
    assert "level lacks" not in fall.text
