"""Are the joints seated? Each is probed in the solids, and its cut is measured.

The wood of the entering board that stands over the receiving board's face is taken; its last
hundredth of a millimetre along the joint's axis is the probe. The probe's end must lie
`depth - end_gap` behind the face; stretched on by `end_gap` it must meet no wood; and past that a
locating joint must have wood behind it.
"""

import numpy as np

from tests.judge.fingers import finger_faults
from tests.judge.solids import OVERLAP, SAME, box, direction, is_hole

PROBE = 0.01
"""Thickness of the probe (mm)."""
COVERED = 0.999
"""Share of the end of a side that the lip of the front must cover."""
BACKED = 0.05
"""Share of the probe's end that must find wood behind it in a joint."""


def seating_faults(plan, bodies):
    """Every joint of the plan, probed."""
    sheets = {sheet["name"]: sheet for sheet in plan["sheets"]}
    faults = []
    for joint in plan["joints"]:
        enters, receives = bodies[joint["enters"]], bodies[joint["receives"]]
        sheet = sheets[enters.plan["sheet"]]
        title = f"joint: {joint['enters']} in {joint['receives']}"
        faults += [f"{title}: {what}" for what in _joint_faults(joint, enters, receives, sheet)]
    return faults + _orphan_faults(plan, bodies)


def _joint_faults(joint, enters, receives, sheet):
    axis, sign = direction(joint["axis"])
    if enters.group != receives.group:
        yield f"it fastens {enters.group} to {receives.group}"
    if joint["kind"] == "finger":
        yield from finger_faults(joint, enters, receives)
        return
    if joint["depth"] < 0 or joint["end_gap"] < 0:
        yield f"the depth is {joint['depth']} and the end gap {joint['end_gap']}"
        return
    face = receives.low[axis] if sign > 0 else receives.high[axis]
    over = _over_the_face(enters, receives, axis)
    if joint["kind"] == "drawer lock" and joint["tongue"]:
        over = _over_the_face(enters, receives, axis, SAME)  # the lip only touches the column, and leaves a film
    if over.volume() <= OVERLAP:
        yield f"no wood stands over the face along {joint['axis']}"
        return
    bounds = np.array(over.bounding_box()).reshape(2, 3)
    tip = bounds[1, axis] if sign > 0 else bounds[0, axis]
    reach = sign * (tip - face)
    wanted = joint["depth"] - joint["end_gap"]
    if abs(reach - wanted) > SAME:
        yield f"reaches {reach:.4f} mm past the face, not {wanted:.4f}"
        return
    probe = _last_slice(over, axis, sign, tip)
    yield from _room_faults(probe, receives, axis, sign, tip, joint)
    if joint["depth"] > SAME and not _has_outline_for(receives, joint["enters"]):
        foot = np.array(probe.bounding_box()).reshape(2, 3)
        yield from _cut_faults(joint, enters, receives, axis, sign, face, foot, sheet)
    if joint["kind"] == "drawer lock" and not joint["tongue"]:
        yield from _lip_faults(joint, enters, receives, axis, sign)


def _lip_faults(joint, enters, receives, axis, sign):
    """The end of a side that goes into a front is covered by the lip, over the whole of its thickness and height."""
    low, high = enters.low.copy(), enters.high.copy()
    tip = enters.high[axis] if sign > 0 else enters.low[axis]
    low[axis], high[axis] = (tip, tip + PROBE) if sign > 0 else (tip - PROBE, tip)
    seen = (box(low, high) ^ receives.wood).volume()
    across = receives.low[2], receives.high[2]
    wanted = PROBE * (enters.high[0] - enters.low[0]) * (min(across[1], high[2]) - max(across[0], low[2]))
    if seen < COVERED * wanted:
        yield "the lip does not cover its end"


def _over_the_face(enters, receives, axis, inset=0.0):
    """Wood of the entering board in the column that stands on the receiving board's face."""
    low, high = receives.low + inset, receives.high - inset
    low[axis], high[axis] = enters.low[axis] - 1, enters.high[axis] + 1
    return enters.wood ^ box(low, high)


def _last_slice(solid, axis, sign, tip):
    normal = np.zeros(3)
    normal[axis] = sign
    return solid.trim_by_plane(tuple(normal), sign * tip - PROBE)


def _room_faults(probe, receives, axis, sign, tip, joint):
    gap = joint["end_gap"]
    if gap > SAME:
        room = _stretched(probe, axis, sign, tip, gap)
        filled = (room ^ receives.wood).volume()
        if filled > OVERLAP:
            yield f"{filled:.4f} mm3 of wood in the {gap} mm left at the end"
    shift = np.zeros(3)
    shift[axis] = sign * (gap + PROBE)
    behind = (probe.translate(tuple(shift)) ^ receives.wood).volume()
    if behind < BACKED * probe.volume():
        yield f"no wood {gap} mm behind its end"


def _stretched(probe, axis, sign, tip, length):
    """The probe's section from the tip on, `length` long."""
    start = np.zeros(3)
    start[axis] = tip - sign * PROBE
    scale = np.ones(3)
    scale[axis] = length / PROBE
    end = np.zeros(3)
    end[axis] = tip
    return probe.translate(tuple(-start)).scale(tuple(scale)).translate(tuple(end))


def _has_outline_for(receives, name):
    return any("outline" in cut and cut.get("for") == name for cut in receives.plan["cuts"])


def _cut_faults(joint, enters, receives, axis, sign, face, foot, sheet):
    """Depth and width of the cut that holds the end, against the joint and the thickest reading."""
    across = enters.thickness_axis
    tongue = joint.get("tongue", 0)
    entered = foot[1, across] - foot[0, across]
    if tongue and abs(entered - tongue) > SAME:
        yield f"{entered:.4f} mm of its thickness enters, not a tongue of {tongue}"
    found = _cut_around(joint, receives, axis, sign, face, foot)
    if found is None:
        yield "no cut holds its end"
        return
    low, high = found
    deep = high[axis] - face if sign > 0 else face - low[axis]
    if abs(deep - joint["depth"]) > SAME:
        yield f"the cut is {deep:.4f} mm deep, not {joint['depth']}"
    if across == axis:
        return
    seated = tongue or sheet["thickness"]
    thickest = tongue or max(sheet["readings"], default=sheet["thickness"])
    out_low = low[across] <= receives.low[across] + SAME
    out_high = high[across] >= receives.high[across] - SAME
    if not (out_low or out_high):
        width = high[across] - low[across]
        if not tongue and abs(entered - seated) > SAME:
            yield f"{entered:.4f} mm of its thickness enters, not {seated}"
        if abs(width - thickest - joint["fit"]) > SAME:
            yield (
                f"the cut is {width:.4f} mm wide, not {thickest + joint['fit']:.4f} "
                f"({thickest} and {joint['fit']} mm fit)"
            )
    elif out_low != out_high:
        off = foot[0, across] - low[across] if out_high else high[across] - foot[1, across]
        if not -SAME <= off <= thickest + joint["fit"] - seated + SAME:
            yield f"stands {off:.4f} mm off the wall of the cut"


def _cut_around(joint, receives, axis, sign, face, foot):
    """The narrowest box cut that opens on the face and holds the end; one made for it goes first."""
    others = [a for a in range(3) if a != axis]
    holding = []
    for cut, low, high in receives.box_cuts:
        opens = low[axis] <= face + SAME if sign > 0 else high[axis] >= face - SAME
        # The groove in the end of a front opens on that end, before the tongue that was shortened for the side.
        opens = opens or (joint["kind"] == "drawer lock" and not joint["tongue"])
        if opens and all(low[a] <= foot[0, a] + SAME and high[a] >= foot[1, a] - SAME for a in others):
            holding.append((cut.get("for") != joint["enters"], float(np.prod(high - low)), low, high))
    return min(holding, key=lambda entry: entry[:2])[2:] if holding else None


def _orphan_faults(plan, bodies):
    """A cut that is made for a board of the same group belongs to a joint between the two.

    The groove that a runner of the case lies in belongs to none: the drawer rides on it.
    """
    joined = {frozenset((joint["enters"], joint["receives"])) for joint in plan["joints"]}
    return [
        f"cut: {cut['kind']} in {body.name} for {cut['for']}, but no joint between them"
        for body in bodies.values()
        for cut in body.plan["cuts"]
        if cut.get("for")
        and not is_hole(cut)
        and bodies[cut["for"]].group == body.group
        and frozenset((body.name, cut["for"])) not in joined
    ]
