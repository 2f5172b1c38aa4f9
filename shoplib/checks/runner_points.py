"""Screws of runners and kickers that come into one upright from both faces must not meet in it."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from shoplib.checks.screw_points import thinnest_of
from shoplib.measure import write_brief
from shoplib.model.board import Board
from shoplib.model.screw_room import face_screw
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list, in_short

STRIPS = ("runner", "kicker")
"""Boards that are screwed flat on an upright, by screws that the plan leaves to the maker."""


@dataclass(frozen=True, slots=True)
class AtEachOther:
    """Two strips on the two faces of an upright at one height: by how much their screws, as far as they stand in it,
    are together longer than it is thick (ticks), 0 or less where they never meet.
    """

    upright: Board
    one: Board
    other: Board
    over: int


def driven_at_each_other(cabinet: Cabinet) -> tuple[AtEachOther, ...]:
    """All such pairs of strips whose screws would meet, unless those of one face are set clear of the other's.

    >>> driven_at_each_other(Cabinet("no boards", (), {}))
    ()
    """
    return tuple(found for found in _pairs(cabinet) if found.over > 0)


def find_meeting_runner_screws(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One warning for each upright in which the points of such screws pass one another. The amount is by how much.

    >>> find_meeting_runner_screws(Cabinet("no boards", (), {}))
    ()
    """
    met: dict[str, list[AtEachOther]] = {}
    for pair in driven_at_each_other(cabinet):
        met.setdefault(pair.upright.name, []).append(pair)
    return tuple(_finding(cabinet, name, pairs) for name, pairs in met.items())


def _pairs(cabinet: Cabinet) -> Iterator[AtEachOther]:
    on: dict[str, list[Board]] = {}
    for joint in cabinet.joints:
        strip = cabinet.by_name.get(joint.enters)
        if strip and strip.role in STRIPS and joint.receives in cabinet.by_name:
            on.setdefault(joint.receives, []).append(strip)
    for name, strips in on.items():
        upright = cabinet.by_name[name]
        thin = thinnest_of(cabinet, upright)
        for one, other in combinations(strips, 2):
            deep = [_deep(strip, thin, cabinet) for strip in (one, other)]
            if _opposite(one, other, upright) and all(deep):
                yield AtEachOther(upright, one, other, sum(deep) - thin)


def _deep(strip: Board, thin: int, cabinet: Cabinet) -> int:
    """How deep the screw of a strip goes into the upright; 0 where no screw of the table will do."""
    passed = strip.box.size[0]
    _, length = face_screw(passed, thin, cabinet.style.unit)
    return length - passed if length else 0


def _opposite(one: Board, other: Board, between: Board) -> bool:
    """Whether two strips lie on the two faces of an upright, at one height and side by side."""
    sides = {strip.box.low[0] >= between.box.high[0] for strip in (one, other)}
    return len(sides) == 2 and all(
        one.box.low[k] < other.box.high[k] and other.box.low[k] < one.box.high[k] for k in (1, 2)
    )


def _finding(cabinet: Cabinet, name: str, pairs: list[AtEachOther]) -> Finding:
    strips = tuple(dict.fromkeys(board.name for pair in pairs for board in (pair.one, pair.other)))
    over = sorted(pair.over for pair in pairs)[-1]
    text = (
        f"{name}: the screws of {and_list(in_short(strips))} come into it from both faces at one height, and as far "
        f"as they stand in it they are together {write_brief(over, cabinet.style, decimal=True)} longer than it is "
        "thick. Set those of one face clear of the others, or take shorter ones."
    )
    return Finding("screws", "warn", (name, *strips), text, over)
