"""Which joints of a cabinet are drawn in section: each way of making one, once."""

from collections.abc import Iterator

from shoplib.documents.fixings import against
from shoplib.draw.joint_section import NoCut, joint_section
from shoplib.draw.scene import Scene
from shoplib.lists.butted import butt_joints
from shoplib.model.solved import Cabinet, Joint


def joint_scenes(cabinet: Cabinet) -> Iterator[Scene]:
    """One section for all joints that are made alike; the legend says how many there are.

    A joint that finds no cut has no section: `without_cut` names it, and the dry-fit stops at it.
    """
    for joints in _alike(cabinet):
        scene = _section(cabinet, joints[0])
        if scene is not None:
            count = f"{len(joints)} joints are made so." if len(joints) > 1 else "One joint is made so."
            yield scene.with_items(legend=(count,), alt=count)


def without_cut(cabinet: Cabinet) -> str:
    """The joints whose cut is missing, in one sentence; empty where every joint has its own."""
    names = [
        f"{joints[0].enters} in {joints[0].receives}"
        for joints in _alike(cabinet) if _section(cabinet, joints[0]) is None
    ]
    return f"Not drawn, for the cut of the joint is missing: {'; '.join(names)}." if names else ""


def butted(cabinet: Cabinet) -> str:
    """The joints that have no cut, in one sentence; empty where there are none."""
    told = against(cabinet, butt_joints(cabinet))
    return f"Butted, without a cut: {told}." if told else ""


def _alike(cabinet: Cabinet) -> list[list[Joint]]:
    """Joints that have a depth, those that are made alike together."""
    found: dict[tuple, list[Joint]] = {}
    for joint in cabinet.joints:
        if joint.depth and {joint.enters, joint.receives} <= cabinet.by_name.keys():
            found.setdefault(_making(joint, cabinet), []).append(joint)
    return list(found.values())


def _section(cabinet: Cabinet, joint: Joint) -> Scene | None:
    """The joint cut across, or None where its cut is missing."""
    try:
        return joint_section(cabinet, joint, cabinet.style)
    except NoCut:
        return None


def _making(joint: Joint, cabinet: Cabinet) -> tuple:
    """What a joint must share with another to be made alike."""
    enters, receives = (cabinet.by_name[name] for name in (joint.enters, joint.receives))
    return (
        joint.kind, enters.role or enters.name, receives.role or receives.name, enters.thickness, receives.thickness,
        joint.depth, joint.fit, joint.end_gap, joint.tongue,
    )
