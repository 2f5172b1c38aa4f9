"""The cabinet must be brought to its place: stood up under the ceiling of the room, and through its door."""

from collections.abc import Sequence
from itertools import combinations
from math import isqrt

from shoplib.measure import thickest, to_step, write_brief
from shoplib.measure.traced import chosen
from shoplib.model.box import Point, around
from shoplib.model.project import Space
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import at_least
from shoplib.words.naming import and_list

_LOOSE = {"pull": "pulls", "caster": "casters", "foot": "feet"}
"""What reaches beyond the boards and comes off, as it is told."""


def stands_up(height: int, other: int, room: int) -> bool:
    """Whether a case laid on its back (`other` = depth) or side (`other` = width) can be tipped upright.

    While it turns, its diagonal stands upright once: sqrt(height2 + other2) must not exceed the
    room's height. Squares are compared, so the answer is exact.

    >>> stands_up(4, 3, 5), stands_up(4, 3, 4)
    (True, False)
    """
    return height * height + other * other <= room * room


def diagonal_up(a: int, b: int, step: int) -> int:
    """The diagonal of a rectangle, rounded up to a whole step: so much height is enough.

    >>> diagonal_up(3, 4, 1), diagonal_up(1, 1, 1), diagonal_up(30, 40, 20)
    (5, 2, 60)
    """
    square = a * a + b * b
    whole = isqrt(square)
    whole += whole * whole < square
    return chosen(to_step(whole, step, "up"), "diagonal up", [a, b], steps=step)


def tallest_that_stands_up(other: int, room: int, step: int) -> int:
    """The greatest height in whole steps that can still be tipped upright: sqrt(room2 - other2); 0 where none can.

    >>> tallest_that_stands_up(3, 5, 1), tallest_that_stands_up(6, 5, 1)
    (4, 0)
    """
    if other >= room:
        return 0
    return chosen(to_step(isqrt(room * room - other * other), step, "down"), "other side", [room, other], steps=step)


def too_big_for_door(sizes: Sequence[int], openings: Sequence[int]) -> int:
    """By how much the case is too big for a door: its smaller sizes against the door's, each in order.

    A case goes through with its longest size ahead, so only the two smaller ones meet the door.
    With one size of the door known, the smallest meets it. 0 where it goes through.

    >>> too_big_for_door((60, 24, 30), (80, 28)), too_big_for_door((60, 24, 30), (80, 22))
    (0, 2)
    """
    return thickest([0, *(size - room for size, room in zip(sorted(sizes), sorted(openings), strict=False))])


def beyond_the_boards(cabinet: Cabinet) -> str:
    """What reaches beyond the boards: "pulls and casters"; empty where nothing does."""
    there = {fitting.what for fitting in cabinet.hardware}
    return and_list([name for what, name in _LOOSE.items() if what in there])


def find_trouble_on_the_way(cabinet: Cabinet) -> tuple[Finding, ...]:
    """What keeps the envelope (casters, feet and pulls included) from its place in `project.space`.

    "stop" where it cannot be stood up or does not go through the door; "note" for the height that standing
    it up needs. Only advice that helps is given.
    """
    space = cabinet.project.space if cabinet.project else None
    if space is None:
        return ()
    return (*_standing_up(cabinet, space), *_door(cabinet, space))


def _finding(level: str, text: str, amount: int) -> Finding:
    return Finding("space", level, (), text, amount)


def _standing_up(cabinet: Cabinet, space: Space) -> list[Finding]:
    if space.bring_in == "slid in":
        return []
    style, lying = cabinet.style, 1 if space.bring_in == "stood up from its back" else 0
    height, other = cabinet.envelope.size[2], cabinet.envelope.size[lying]
    needed = diagonal_up(height, other, style.step)
    need = f"{space.bring_in.capitalize()}, the cabinet needs {write_brief(needed, style)} of height"
    if space.room_height is None:
        text = f"{need}. Measure the room's height and put it into space.room_height."
        return [_finding("note", text, needed)]
    room = write_brief(space.room_height, style)
    if stands_up(height, other, space.room_height):
        return [_finding("note", f"{need}; the room has {room}.", needed)]
    short = needed - space.room_height
    text = f"{need} and the room has {room}: {at_least(short, style)} too little. {_way_up(cabinet, space, lying)}."
    return [_finding("stop", text, short)]


def _way_up(cabinet: Cabinet, space: Space, lying: int) -> str:
    bare, whole, room = cabinet.outside.size, cabinet.envelope.size, space.room_height
    loose = beyond_the_boards(cabinet)
    ways = []
    if loose and bare != whole and stands_up(bare[2], bare[lying], room):
        ways.append(f"put its {loose} on when it stands")
    if whole[2] <= room:
        ways.append("slide it in upright")
    tallest = tallest_that_stands_up(whole[lying], room, cabinet.style.step)
    if tallest:
        ways.append(f"make it at most {write_brief(tallest, cabinet.style)} high")
    told = ", ".join([*ways, "build it in two parts"])
    head, _, last = told.rpartition(", ")
    told = f"{head}, or {last}" if head else last
    return told[0].upper() + told[1:]


def _door(cabinet: Cabinet, space: Space) -> list[Finding]:
    openings = [given for given in (space.door_width, space.door_height) if given is not None]
    over = too_big_for_door(cabinet.envelope.size, openings)
    if not over:
        return []
    style = cabinet.style
    small = " x ".join(write_brief(part, style) for part in sorted(cabinet.envelope.size)[: len(openings)])
    door = " x ".join(write_brief(part, style) for part in sorted(openings))
    helps = next((off for off in _sets_off(cabinet) if not too_big_for_door(_without(cabinet, off), openings)), ())
    off = f"Take its {and_list(helps)} off for the way, or build" if helps else "Build"
    text = (
        f"With its longest size ahead the cabinet is {small} and the door is {door}: "
        f"{at_least(over, style)} too much. {off} it in two parts."
    )
    return [_finding("stop", text, over)]


def _sets_off(cabinet: Cabinet) -> list[tuple[str, ...]]:
    """What may be left off for the way, the fewest things first; a front takes its pull along."""
    there = {fitting.what for fitting in cabinet.hardware}
    loose = [name for what, name in _LOOSE.items() if what in there]
    if any(board.role == "front" for board in cabinet.boards):
        loose.append("fronts")
    sets = [off for count in range(1, len(loose) + 1) for off in combinations(loose, count)]
    return [off for off in sets if "fronts" not in off or "pulls" in off or "pulls" not in loose]


def _without(cabinet: Cabinet, off: tuple[str, ...]) -> Point:
    """Width, depth and height of the cabinet with these things left off."""
    boards = [board.box for board in cabinet.boards if board.role != "front"]
    whole = around(boards) if "fronts" in off else cabinet.outside
    return around([whole, *(piece.box for piece in cabinet.hardware if _LOOSE.get(piece.what) not in off)]).size
