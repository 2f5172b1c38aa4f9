"""Judge a plan from plan.json alone, with manifold3d as the solid modeller.

Nothing of the project is imported: the file's meaning is read from its published description, and
overlap, seating and travel are found with a general-purpose solid modeller, so that a slip in the
project's own dry-fit cannot hide itself.
"""

from itertools import combinations

import numpy as np

from tests.judge.form import board_faults, reference_faults, sheet_faults
from tests.judge.pockets import pocket_faults
from tests.judge.seating import seating_faults
from tests.judge.solids import OVERLAP, SAME, WORLD, Body, box, boxes_share, shared_wood
from tests.judge.sweep import travel_faults

OUTSIDE_AXES = {"width": 0, "depth": 1, "height": 2}


def judge(plan):
    """Every fault of the plan, one plain sentence each; an empty list for a plan that can be built.

    Faults of form (names, sizes, placements, cuts that leave their board) are told alone, because
    the solids that the other checks need cannot be trusted then.
    """
    faults = sheet_faults(plan) + board_faults(plan) + reference_faults(plan)
    if faults:
        return faults
    bodies = {board["name"]: Body(board) for board in plan["boards"]}
    return [
        fault
        for check in (
            wood_faults,
            overlap_faults,
            outside_faults,
            seating_faults,
            pocket_faults,
            travel_faults,
            gap_faults,
            hardware_faults,
        )
        for fault in check(plan, bodies)
    ]


def wood_faults(plan, bodies):
    """Cuts leave each board in one piece, and as long, wide and thick as it is listed."""
    faults = []
    for body in bodies.values():
        if not body.plan["cuts"]:
            continue
        size = np.array(body.own_wood.bounding_box()).reshape(2, 3)
        if body.own_wood.is_empty() or np.abs(size - [[0, 0, 0], body.plan["size"]]).max() > SAME:
            faults.append(f"cut: the cuts in {body.name} take off a whole end or face")
        elif (parts := _parts(body.own_wood)) != 1:
            faults.append(f"cut: the cuts in {body.name} part it into {parts}")
    return faults


def _parts(wood):
    """Pieces of wood. Where a slanting cut ends in a face, a film may close it: a cavity, which is no wood."""
    return sum(piece.volume() > OVERLAP for piece in wood.decompose())


def overlap_faults(plan, bodies):
    """No two boards share wood."""
    return [
        f"overlap: {one.name} and {other.name} share {volume:.4f} mm3"
        for one, other in combinations(bodies.values(), 2)
        if (volume := shared_wood(one, other)) > OVERLAP
    ]


def outside_faults(plan, bodies):
    """The box over all boards is `outside`, and `envelope` is no smaller."""
    low = np.min([body.low for body in bodies.values()], axis=0)
    high = np.max([body.high for body in bodies.values()], axis=0)
    faults = []
    for what, axis in OUTSIDE_AXES.items():
        if abs(high[axis] - low[axis] - plan["outside"][what]) > SAME:
            faults.append(
                f"outside: {what} over all boards is {high[axis] - low[axis]:.6f} mm, "
                f"not {plan['outside'][what]}"
            )
        if plan["envelope"][what] < plan["outside"][what] - SAME:
            faults.append(f"outside: the envelope's {what} is under that of the boards")
    return faults


def gap_faults(plan, bodies):
    """Each gap, measured between the boxes of the two boards that it names."""
    faults = []
    for gap in plan["gaps"]:
        one, other = (bodies[name] for name in gap["between"])
        axis = WORLD.index(gap["along"])
        open_space = max(one.low[axis] - other.high[axis], other.low[axis] - one.high[axis])
        if abs(open_space - gap["size"]) > SAME:
            faults.append(
                f"gap: between {one.name} and {other.name} there are {open_space:.6f} mm "
                f"along {gap['along']}, not {gap['size']}"
            )
    return faults


def hardware_faults(plan, bodies):
    """Slides, pulls, pegs, feet and casters stand in nobody's wood; a slide lies against its board, inside.

    Screws are in the wood of their boards, and so are left out. A fitting may be let into the board
    that it is on, unless it is a slide.
    """
    low = np.min([body.low for body in bodies.values()], axis=0)
    high = np.max([body.high for body in bodies.values()], axis=0)
    faults = []
    for fitting in plan["hardware"]:
        if fitting["what"].endswith("screws"):
            continue
        start, end = np.asarray(fitting["low"], float), np.asarray(fitting["high"], float)
        title = f"hardware: {fitting['what']} on {fitting['on']}"
        is_slide = fitting["what"] == "slide"
        faults += [
            f"{title} stands in {body.name}"
            for body in bodies.values()
            if (is_slide or body.name != fitting["on"]) and _stands_in(start, end, body)
        ]
        if is_slide and ((start < low - SAME).any() or (end > high + SAME).any()):
            faults.append(f"{title} reaches out of the cabinet")
        if is_slide and _distance(start, end, bodies[fitting["on"]]) > SAME:
            faults.append(f"{title} does not touch it")
    return faults


def _stands_in(start, end, body):
    if boxes_share(start, end, body.low, body.high) <= OVERLAP:
        return False
    return (box(start, end) ^ body.drilled).volume() > OVERLAP


def _distance(start, end, body):
    """Largest open space along one axis between a box and a board's box (mm; 0 where they touch)."""
    return float(np.max(np.maximum(start - body.high, body.low - end)))
