"""Which joints of a cabinet are drawn in section: each way of making one, once."""

from collections.abc import Iterator

from shoplib.draw.joint_section import joint_section
from shoplib.draw.scene import Scene
from shoplib.model.solved import Cabinet, Joint
from shoplib.words.naming import plural


def joint_scenes(cabinet: Cabinet) -> Iterator[Scene]:
    """One section for all joints that are made alike; the legend says how many there are.

    A joint that finds no cut is left out: the dry-fit stops at it, and says so.
    """
    alike: dict[tuple, list[Joint]] = {}
    for joint in cabinet.joints:
        if joint.depth and {joint.enters, joint.receives} <= cabinet.by_name.keys():
            alike.setdefault(_making(joint, cabinet), []).append(joint)
    for joints in alike.values():
        try:
            scene = joint_section(cabinet, joints[0], cabinet.style)
        except ValueError:  # what `joint_section` raises where the cut is missing, and for nothing else
            continue
        count = f"{len(joints)} joints are made so." if len(joints) > 1 else "One joint is made so."
        yield scene.with_items(legend=(count,), alt=count)


def butted(cabinet: Cabinet) -> str:
    """The joints that have no cut, in one sentence; empty where there are none."""
    met: dict[str, set[str]] = {}
    for joint in cabinet.joints:
        if not joint.depth and {joint.enters, joint.receives} <= cabinet.by_name.keys():
            enters, receives = (cabinet.by_name[name] for name in (joint.enters, joint.receives))
            met.setdefault(enters.role or enters.name, set()).add(receives.role or receives.name)
    told = [f"{plural(one)} against {plural(other)}" for one, others in met.items() for other in sorted(others)]
    return f"Butted, without a cut: {'; '.join(told)}." if told else ""


def _making(joint: Joint, cabinet: Cabinet) -> tuple:
    """What a joint must share with another to be made alike."""
    enters, receives = (cabinet.by_name[name] for name in (joint.enters, joint.receives))
    return (
        joint.kind, enters.role or enters.name, receives.role or receives.name, enters.thickness, receives.thickness,
        joint.depth, joint.fit, joint.end_gap, joint.tongue,
    )
