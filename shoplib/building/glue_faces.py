"""Which faces are glued and so stay free of finish while the inside of the case is finished first."""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.buying.surfaces import is_glued
from shoplib.model.board import CASE, Board
from shoplib.model.solved import Cabinet, Joint

ENDS = {"-x": "left", "+x": "right", "-y": "front", "+y": "back", "-z": "bottom", "+z": "top"}
"""The end, edge or face of a board that looks in a world direction."""


@dataclass(frozen=True, slots=True)
class GlueFace:
    """Wood of `board` that is glued to `to`.

    `what` is "faces" (a strip along the `end`, on both faces), "face" (a strip along it on the face that looks into
    the case), "end" (the end or edge itself), "fingers" (between the fingers along the `end`), "cut" (inside a dado or
    rabbet) or "spot" (where the other board stands on its face). `strip` is how wide the strip is, 0 where the cut or
    the end itself is meant (ticks).
    """

    board: str
    what: str
    end: str
    strip: int
    to: str


def glue_faces(cabinet: Cabinet) -> tuple[GlueFace, ...]:
    """All of the boards of the case, joint by joint, those that enter first.

    >>> glue_faces(Cabinet("no boards", (), {}))
    ()
    """
    joints = [
        joint for joint in cabinet.joints
        if {joint.enters, joint.receives} <= cabinet.by_name.keys() and is_glued(joint, cabinet)
        and all(cabinet.by_name[name].stage == CASE for name in (joint.enters, joint.receives))
    ]
    return (*(face for joint in joints for face in _entering(joint, cabinet)),
            *(face for joint in joints for face in _receiving(joint, cabinet)))


def _entering(joint: Joint, cabinet: Cabinet) -> Iterator[GlueFace]:
    board, end = cabinet.by_name[joint.enters], ENDS[joint.axis]
    axis = "xyz".index(joint.axis[1])
    if joint.kind == "finger":
        yield GlueFace(board.name, "fingers", end, 0, joint.receives)
    elif board.placement.own_axis(axis) == 2:
        strip = joint.depth or _least(board, cabinet.by_name[joint.receives], axis)
        yield GlueFace(board.name, "spot", end, strip, joint.receives)
    elif not joint.depth:
        yield GlueFace(board.name, "end", end, 0, joint.receives)
    else:
        one_face = joint.kind == "rabbet"  # it runs out of the edge: the outer face lies free
        yield GlueFace(board.name, "face" if one_face else "faces", end, joint.depth - joint.end_gap, joint.receives)


def _receiving(joint: Joint, cabinet: Cabinet) -> Iterator[GlueFace]:
    board, axis = cabinet.by_name[joint.receives], "xyz".index(joint.axis[1])
    if joint.kind == "finger":
        yield GlueFace(board.name, "fingers", "", 0, joint.enters)
    elif joint.depth:
        yield GlueFace(board.name, "cut", "", 0, joint.enters)
    elif board.placement.own_axis(axis) != 2:
        yield GlueFace(board.name, "end", _looks(joint), 0, joint.enters)
    else:
        yield GlueFace(board.name, "spot", "", _least(cabinet.by_name[joint.enters], board, axis), joint.enters)


def _looks(joint: Joint) -> str:
    """The end of the receiving board that meets the entering one."""
    return ENDS[("-" if joint.axis[0] == "+" else "+") + joint.axis[1]]


def _least(one: Board, other: Board, axis: int) -> int:
    """The narrower side of the patch in which two boards lie against one another."""
    return min(
        min(one.box.high[k], other.box.high[k]) - max(one.box.low[k], other.box.low[k]) for k in range(3) if k != axis
    )
