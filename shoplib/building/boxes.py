"""Drawer boxes that are made alike, told once: how their boards go together, and in which goes they are glued."""

from dataclasses import dataclass

from shoplib.building.glue_ups import GlueUp, glue_ups
from shoplib.checks.parting import Captured, Entry, put_together
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
    """The boxes of the cabinet, in its order.

    Boxes of other heights may have other fingers, through which a bottom slides in or not: each is put together, and
    those are alike that go together alike.

    >>> alike_boxes(Cabinet("no boards", (), {}))
    ()
    """
    kinds: dict[tuple, list[tuple[str, tuple[Entry, ...]]]] = {}
    for group, boards in cabinet.groups.items():
        parts = [board for board in boards if board.stage == BOXES]
        if any(board.role == "box side" for board in parts):
            try:
                entries = put_together(parts, cabinet.joints)
            except Captured:
                entries = ()
            kinds.setdefault(_made(group, parts, entries, cabinet), []).append((group, entries))
    return tuple(_told(made, cabinet) for made in kinds.values())


def _told(made: list[tuple[str, tuple[Entry, ...]]], cabinet: Cabinet) -> AlikeBoxes:
    groups = tuple(group for group, _ in made)
    boards = tuple(b.name for group in groups for b in cabinet.groups[group] if b.stage == BOXES)
    _, entries = max(made, key=lambda one: max(b.box.size[2] for b in cabinet.groups[one[0]] if b.stage == BOXES))
    return AlikeBoxes(groups, boards, glue_ups(entries, cabinet))


def _made(group: str, parts: list[Board], entries: tuple[Entry, ...], cabinet: Cabinet) -> tuple:
    """What boxes made alike share: joints between parts, how they go together, and the size seen from above."""
    names = {board.name for board in parts}
    joints = tuple(
        (joint.kind, joint.axis, joint.enters.removeprefix(group), joint.receives.removeprefix(group))
        for joint in cabinet.joints if {joint.enters, joint.receives} <= names
    )
    ways = tuple((entry.board.removeprefix(group), entry.way) for entry in entries)
    return joints, ways, around([board.box for board in parts]).size[:2]
