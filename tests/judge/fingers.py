"""Fingers, read off the solids: flush with both outer faces, one beside the other, alike, no more play than the fit."""

from itertools import pairwise

import numpy as np

from tests.judge.solids import OVERLAP, SAME, box, direction

TICK = 1 / 80_000
"""What a plan is exact to (mm); the last finger takes what will not divide, under one for each."""
FLOOR = 0.3
"""Share of the floor of a socket that must be wood."""
SKIN = 0.01
"""How thick a slice is taken where a face must bear or must be flush (mm)."""
THREE = 3
"""The least number of fingers that hold a corner."""


def finger_faults(joint, enters, receives):
    """What keeps two boards from being finger-jointed over the whole of their common width."""
    axis, _ = direction(joint["axis"])
    thin = enters.thickness_axis
    run = 3 - axis - thin
    low, high = np.maximum(enters.low, receives.low), np.minimum(enters.high, receives.high)
    if (high - low <= SAME).any():
        yield "the boards do not cross"
        return
    for one, other, way in ((enters, receives, axis), (receives, enters, thin)):
        for own, mate in ((one.low[way], other.low[way]), (one.high[way], other.high[way])):
            if _at_corner(own, low[way], high[way]) and abs(own - mate) > SAME:
                yield f"{one.name} ends {abs(own - mate):.4f} mm off the face of {other.name}"
                return
    if abs(joint["depth"] - (high[axis] - low[axis])) > SAME:
        yield f"its fingers are {high[axis] - low[axis]:.4f} mm long, not {joint['depth']}"
    inset = np.full(3, SKIN / 10)  # faces that only touch leave films, which would join one finger to the next
    inset[run] = 0
    corner = box(low + inset, high - inset)
    stretches = sorted(
        (*_along(piece, run), body.name) for body in (enters, receives) for piece in _fingers(body, corner)
    )
    if len(stretches) < THREE:
        yield f"it has {len(stretches)} fingers"
        return
    names = [name for _, _, name in stretches]
    if any(one == other for one, other in pairwise(names)):
        yield "two fingers of one board lie beside each other"
    edges = [low[run], *(end for a, b, _ in stretches for end in (a, b)), high[run]]
    play = np.diff(edges)[::2]
    if play.max() > joint["fit"] + SAME or play.min() < -SAME:
        yield f"between two fingers there are {play.max():.4f} mm, not {joint['fit']}"
    wide = {name: [b - a for a, b, own in stretches if own == name] for name in (enters.name, receives.name)}
    pitch = {a - low[run] for a, _, name in stretches if name == names[0]}
    steps = np.diff(sorted(pitch))
    uneven = TICK * len(stretches) + SAME
    if len(steps) > 1 and steps.max() - steps.min() > joint["fit"] + uneven:
        yield f"its fingers stand {steps.min():.4f} to {steps.max():.4f} mm apart"
    if max(max(sizes) - min(sizes) for sizes in wide.values()) > joint["fit"] + uneven:
        yield "its fingers are not alike"
    for body, mate, way in ((enters, receives, axis), (receives, enters, thin)):
        yield from _floor_faults(body, mate, stretches, way, run, low, high)


def _at_corner(end, low, high):
    """Whether this end of a board is one of the corner's two planes along the axis, and not far away from it."""
    return min(abs(end - low), abs(end - high)) < (high - low) / 2 + SAME


def _fingers(body, corner):
    """The wood of one board in the corner, a piece a finger; slips that a cut leaves are no fingers."""
    wood = body.wood ^ corner
    least = max(wood.volume() / 1000, OVERLAP)
    return [piece for piece in wood.decompose() if piece.volume() > least]


def _along(piece, run):
    bounds = np.array(piece.bounding_box()).reshape(2, 3)
    return float(bounds[0, run]), float(bounds[1, run])


def _floor_faults(body, mate, stretches, way, run, low, high):
    """Behind each finger of the mate, on the floor of its socket, stands wood of the body; a groove may take some."""
    inside = body.low[way] < low[way] - SAME
    face = low[way] if inside else high[way]
    around = body.wood ^ box(low - SKIN, high + SKIN)  # cut out once: a board has many cuts elsewhere
    for begin, end, name in stretches:
        if name == mate.name:
            near, far = low.copy(), high.copy()
            near[run], far[run] = begin, end
            near[way], far[way] = (face - SKIN, face) if inside else (face, face + SKIN)
            if (around ^ box(near, far)).volume() < FLOOR * float(np.prod(far - near)):
                yield f"a finger of {mate.name} does not stand on the floor of its socket in {body.name}"
