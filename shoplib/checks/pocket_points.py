"""Pocket screws that come into one board from its two faces must not meet in it."""

from itertools import combinations
from typing import NamedTuple

from shoplib.checks.geometry import direction
from shoplib.checks.screw_points import reach_of, thinnest_of
from shoplib.measure import share, thickest, write_brief
from shoplib.model.board import Board, PrismCut
from shoplib.model.placement import directions
from shoplib.model.pocketed import POCKET
from shoplib.model.screw_room import shank
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list, in_short


class _Driven(NamedTuple):
    """The screws of one end: whose, from which side of the receiving board, where along the joint, and how deep."""

    enters: Board
    way: str
    run: int
    places: tuple[int, ...]
    thick: int
    deep: int


def find_meeting_pocket_screws(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One warning for each board in which pocket screws from both faces would meet.

    They meet where two boards stand against it at one height, a pair of their pockets is no farther apart than the
    shank is thick, and both screws are together longer than the board at its thinnest. The amount is by how much.
    """
    found = []
    for name, ends in _ends(cabinet).items():
        met = [
            (one, other, over)
            for one, other in combinations(ends, 2)
            if one.way[1] == other.way[1] and one.way != other.way and _meet(one, other)
            and (over := one.deep + other.deep - thinnest_of(cabinet, cabinet.by_name[name])) > 0
        ]
        if met:
            found.append(_finding(cabinet, name, met))
    return tuple(found)


def _ends(cabinet: Cabinet) -> dict[str, list[_Driven]]:
    ends: dict[str, list[_Driven]] = {}
    fitted = {
        (fitting.on, screw.into): (fitting, screw)
        for fitting in cabinet.hardware if fitting.what == POCKET for screw in fitting.screws
    }  # fmt: skip
    for joint in cabinet.joints:
        if joint.kind != POCKET or (joint.enters, joint.receives) not in fitted:
            continue
        fitting, screw = fitted[joint.enters, joint.receives]
        enters = cabinet.by_name[joint.enters]
        run = 3 - direction(joint.axis)[0] - directions(enters.placement.axes)[2][0]
        boxes = [
            enters.placement.to_world(cut.box)
            for cut in enters.cuts
            if isinstance(cut, PrismCut) and cut.kind == "pocket" and cut.for_board == joint.receives
        ]
        places = tuple(share(box.low[run] + box.high[run], 2, 1)[0] for box in boxes)
        driven = _Driven(enters, joint.axis, run, places, shank(screw.gauge), reach_of(cabinet, fitting, screw))
        ends.setdefault(joint.receives, []).append(driven)
    return ends


def _meet(one: _Driven, other: _Driven) -> bool:
    """Whether two ends lie at one height on the two faces, and a screw of each at one place along it."""
    if one.run != other.run:
        return False
    thin = directions(one.enters.placement.axes)[2][0]
    a, b = one.enters.box, other.enters.box
    if a.low[thin] >= b.high[thin] or b.low[thin] >= a.high[thin]:
        return False
    near = thickest([one.thick, other.thick])
    return any(abs(here - there) < near for here in one.places for there in other.places)


def _finding(cabinet: Cabinet, name: str, met: list[tuple[_Driven, _Driven, int]]) -> Finding:
    over = max(amount for _, _, amount in met)
    boards = dict.fromkeys(end.enters.name for one, other, _ in met for end in (one, other))
    text = (
        f"{name}: the pocket screws of {and_list(in_short(boards))} come into it from both faces at one place, and "
        f"are together {write_brief(over, cabinet.style, decimal=True)} longer than it is thick. Move the pockets of "
        "one of them along, or take shorter screws."
    )
    return Finding("screws", "warn", (name, *boards), text, over)
