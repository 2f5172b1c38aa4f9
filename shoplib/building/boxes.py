"""Drawer boxes that are made alike, told once: how their boards go together, and in which goes they are glued."""

from dataclasses import dataclass

from shoplib.building.glue_ups import GlueUp, glue_ups
from shoplib.building.parting import Captured, Entry, put_together
from shoplib.model.board import BOXES, Board
from shoplib.model.box import around
from shoplib.model.solved import Cabinet


@dataclass(frozen=True, slots=True)
class AlikeBoxes:
    """Drawers whose boxes have the same joints and the same outside width and depth; `goes` are those of the highest.

    `goes` is empty where no straight move brings its boards together, which a plan that is dry-fitted does not have.
    """

    groups: tuple[str, ...]
    boards: tuple[str, ...]
    goes: tuple[GlueUp, ...]

    @property
    def entries(self) -> tuple[Entry, ...]:
        """How the highest box goes together."""
        return tuple(entry for go in self.goes for entry in go.entries)


def alike_boxes(cabinet: Cabinet) -> tuple[AlikeBoxes, ...]:
    """The boxes of the cabinet, in its order."""
    kinds: dict[tuple, list[str]] = {}
    for group, boards in cabinet.groups.items():
        parts = _parts(boards)
        if any(board.role == "box side" for board in parts):
            kinds.setdefault(_made(group, parts, cabinet), []).append(group)
    found = []
    for groups in kinds.values():
        highest = max(groups, key=lambda group: around([b.box for b in _parts(cabinet.groups[group])]).size[2])
        try:
            goes = glue_ups(put_together(_parts(cabinet.groups[highest]), cabinet.joints), cabinet)
        except Captured:
            goes = ()
        boards = tuple(board.name for group in groups for board in _parts(cabinet.groups[group]))
        found.append(AlikeBoxes(tuple(groups), boards, goes))
    return tuple(found)


def _parts(boards: tuple[Board, ...]) -> list[Board]:
    return [board for board in boards if board.stage == BOXES]


def _made(group: str, parts: list[Board], cabinet: Cabinet) -> tuple:
    """What boxes made alike share: joints between parts, and the size seen from above."""
    names = {board.name for board in parts}
    joints = tuple(
        (joint.kind, joint.axis, joint.enters.removeprefix(group), joint.receives.removeprefix(group))
        for joint in cabinet.joints if {joint.enters, joint.receives} <= names
    )
    return joints, around([board.box for board in parts]).size[:2]
