"""The way in: stood up under the ceiling, through the door. Right triangles of whole numbers."""

from dataclasses import replace

import pytest

from shoplib.checks.bring_in import find_trouble_on_the_way
from shoplib.model.solved import Hardware
from tests.checks.cabinets import box, cabinet, case_boards, space, ticks


def look(the_space, size=(500, 300, 400), below=0, before=0):
    """A case of 500 x 300 x 400 with casters that high below it and pulls that far before it."""
    whole = box((0, -before, -below), size)
    fittings = [("caster", below), ("pull", before)]
    hardware = tuple(Hardware(what, "bottom", "case", whole) for what, there in fittings if there)
    return find_trouble_on_the_way(cabinet(case_boards(), space=the_space, envelope=whole, hardware=hardware))


def levels(findings):
    return [(f.level, f.amount) for f in findings]


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


def test_the_height_advised_is_the_greatest_that_stands_up():
    """374.6 and 300 give 479.92; 374.7 and 300 give 479.9998, which 480 holds too: the step is 0.1 mm."""
    (found,) = look(space(600, 420, 300, bring_in="stood up from its back", room_height=480))
    best = float(found.text.split("at most ")[1].split(" mm")[0])
    assert best**2 + 300**2 <= 480**2 < (best + 0.1) ** 2 + 300**2


def test_the_words_for_standing_up():
    (found,) = look(space(600, 420, 300, bring_in="stood up from its back", room_height=480))
    assert found.text == (
        "Stood up from its back, the cabinet needs 500 mm of height and the room has 480 mm: "
        "20 mm too little. Slide it in upright, make it at most 374.6 mm high, or build it in two parts."
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


def test_what_comes_off_is_named_where_leaving_it_off_helps():
    """On casters of 60 mm it needs the diagonal of 460 and 300, 549.2; without them that of 400 and 300, 500."""
    where = space(600, 520, 300, bring_in="stood up from its back", room_height=505)
    (found,) = look(where, below=60)
    assert found.level == "stop" and "Put its casters on when it stands, slide it in upright," in found.text
    (found,) = look(replace(where, room_height=ticks(495)), below=60)
    assert "Slide it in upright, make it at most" in found.text
    (found,) = look(space(600, 420, 300, door_width=310), before=40)
    assert found.amount == ticks(30) and "Take its pulls off for the way, or build it in two parts." in found.text
    (found,) = look(space(600, 420, 300, door_width=290), before=40)
    assert "pulls" not in found.text and found.text.endswith("Build it in two parts.")


def test_a_cabinet_higher_than_the_room_is_not_slid_in_upright():
    (found,) = look(space(600, 420, 300, bring_in="stood up from its back", room_height=390))
    assert found.text.endswith("Make it at most 249.1 mm high, or build it in two parts.")
    (found,) = look(space(600, 420, 300, bring_in="stood up from its side", room_height=390))
    assert found.text.endswith("Build it in two parts.")


@pytest.mark.parametrize(("inches", "level"), [(1, "stop"), (0, "note")])
def test_a_ceiling_one_inch_too_low(inches, level):
    """36, 48, 60 is a right triangle, in inches."""
    size = tuple(25.4 * n for n in (20, 36, 48))
    where = space(600, 420, 300, bring_in="stood up from its back", room_height=25.4 * (60 - inches))
    (found,) = look(where, size)
    assert (found.level, found.amount) == (level, ticks(25.4 * (inches or 60)))
