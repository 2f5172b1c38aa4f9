"""The envelope in its space: sizes, blocks, floor, and the way in. Right triangles of whole numbers."""

from dataclasses import replace

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
        "Make it 2 mm narrower."
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
        "Make it 10 mm narrower, or move what is in the way."
    )


def test_a_low_block_is_passed_under_when_that_is_the_least():
    (found,) = look(space(540, 900, 320, blocks=(block(0, 397, 0, 540, 9, 900, "pipe"),)))
    assert found.amount == ticks(3) and "3 mm lower" in found.text


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
        "hold a level across the space, and make the case 3 mm lower if it does."
    )


@pytest.mark.parametrize(
    ("how", "room", "expected"),
    [
        ("stood up from its back", 500, ("note", 500)),
        ("stood up from its back", 499.9, ("stop", 0.1)),
        ("stood up from its side", 700, ("note", 640.4)),
        ("stood up from its side", 640.3, ("stop", 0.1)),
        ("stood up from its side", None, ("note", 640.4)),
        ("slid in", 401, None),
    ],
)
def test_standing_it_up(how, room, expected):
    """300, 400, 500 is a right triangle; sqrt(400^2 + 500^2) = 640.31..., so 640.4 is enough."""
    found = look(space(600, 420, 300, bring_in=how, room_height=room))
    assert levels(found) == ([(expected[0], ticks(expected[1]))] if expected else [])


def test_standing_up_is_decided_to_the_tick():
    room = space(600, 420, 300, bring_in="stood up from its back")
    for height, level in ((ticks(500), "note"), (ticks(500) - 1, "stop")):
        assert look(replace(room, room_height=height))[0].level == level


def test_the_words_for_standing_up():
    (found,) = look(space(600, 420, 300, bring_in="stood up from its back", room_height=480))
    assert found.text == (
        "Stood up from its back, the cabinet needs 500 mm of height and the room has 480 mm: "
        "20 mm too little. Slide it in upright, or build it in two parts."
    )
    (found,) = look(space(600, 420, 300, bring_in="stood up from its back", room_height=2400))
    assert found.text == "Stood up from its back, the cabinet needs 500 mm of height; the room has 2400 mm."


@pytest.mark.parametrize(
    ("door", "over"),
    [
        ({"door_width": 300, "door_height": 400}, 0),
        ({"door_width": 400, "door_height": 300}, 0),
        ({"door_width": 290, "door_height": 2000}, 10),
        ({"door_width": 310, "door_height": 395}, 5),
        ({"door_width": 295}, 5),
        ({}, 0),
    ],
)
def test_through_a_door_the_two_smaller_sizes_count(door, over):
    assert levels(look(space(600, 420, 300, **door))) == ([("stop", ticks(over))] if over else [])


def test_the_words_for_a_door():
    (found,) = look(space(600, 420, 300, door_width=290, door_height=2000))
    assert found.text == (
        "With its longest size ahead the cabinet is 300 mm x 400 mm and the door is 290 mm x 2000 mm: "
        "10 mm too much. Build it in two parts."
    )


def test_only_what_is_there_is_to_be_taken_off():
    where = space(600, 420, 300, door_width=290, room_height=480, bring_in="stood up from its back")
    bare = cabinet(case_boards(), space=where, envelope=box((0, 0, 0), (500, 300, 400)))
    fittings = tuple(Hardware(what, "bottom", "case", bare.envelope) for what in ("caster", "pull"))
    fitted = replace(bare, hardware=fittings)
    standing, door = (found.text for found in find_space_conflicts(fitted))
    assert "Leave its casters or feet off until it stands" in standing
    assert "Take pulls and casters off" in door
    assert not any("casters" in found.text for found in find_space_conflicts(bare))
