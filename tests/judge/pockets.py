"""Pocket screws: each butted end has its pockets, and no point of a screw comes out of the board that it holds in."""

import numpy as np

from tests.judge.solids import OWN, SAME, direction

LEAST = 2
"""Screws that a butted end needs, so that the board cannot turn."""


def pocket_faults(plan, bodies):
    """Every joint of the kind, its outlines and its screws, which are a fitting of the entering board."""
    faults = []
    for joint in plan["joints"]:
        if joint["kind"] == "pocket screws":
            title = f"pockets: {joint['enters']} to {joint['receives']}"
            faults += [f"{title}: {what}" for what in _faults(plan, joint, bodies)]
    return faults


def _faults(plan, joint, bodies):
    enters, receives = bodies[joint["enters"]], bodies[joint["receives"]]
    cuts = [cut for cut in enters.plan["cuts"] if cut.get("for") == receives.name and "outline" in cut]
    pockets = [cut for cut in cuts if cut["kind"] == "pocket"]
    shanks = [cut for cut in cuts if cut["kind"] == "shank hole"]
    if len(pockets) < LEAST or len(shanks) != len(pockets):
        yield f"it has {len(pockets)} pockets and {len(shanks)} holes before them"
        return
    fitted = [
        screw
        for fitting in plan["hardware"]
        if fitting["what"] == "pocket screws" and fitting["on"] == enters.name
        for screw in fitting["screws"]
        if screw["into"] == receives.name
    ]
    if any(screw["count"] != len(pockets) for screw in fitted):
        yield f"{[screw['count'] for screw in fitted]} screws for {len(pockets)} pockets"
    axis, sign = direction(joint["axis"])
    face = receives.low[axis] if sign > 0 else receives.high[axis]
    for shank in shanks:
        foot, out = _axis_of(shank, enters)
        if abs(out[axis] - face) > SAME:
            yield "a hole does not leave at the face"
            continue
        if not ((enters.low - SAME <= foot) & (foot <= enters.high + SAME)).all():
            yield "a pocket does not lie in the board"
        way = (out - foot) / np.linalg.norm(out - foot)
        for screw in fitted:
            point = foot + way * screw["length"]
            if not all(receives.low[k] < point[k] < receives.high[k] for k in range(3)):
                yield f"a screw {screw['length']} mm long comes out of {receives.name}"


def _axis_of(shank, body):
    """The middles of a hole's two ends in the cabinet: where the pocket ends, and where it leaves the board."""
    along = OWN.index(shank["along"])
    outline = np.asarray(shank["outline"], float)
    ends = []
    for pair in (outline[2:4], outline[0:2]):
        own = np.zeros(3)
        own[along] = (shank["from"] + shank["to"]) / 2
        own[(along + 1) % 3], own[(along + 2) % 3] = pair.mean(axis=0)
        ends.append(body.to_world([own])[0])
    return ends
