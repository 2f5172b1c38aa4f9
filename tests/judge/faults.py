"""Seeded faults: every way to spoil a sound plan once, of each kind, with the board it is about.

Each kind is a function plan -> list of (what was done, board, spoil); `spoil(copy)` does it to a copy.
"""

from tests.judge.mutate import board, mirror_cuts, shorten
from tests.judge.solids import Body, direction, is_box_cut

SHALLOW, LOW, SHORT, LONG = 0.5, 1.0, 1.0, 51.0
"""How far each kind is off (mm); slides come in lengths 50 mm or 2 in apart."""


def _joint_cuts(plan):
    """Each joint with the place, in the receiving board's list, of the box cut made for it."""
    for joint in plan["joints"]:
        for at, cut in enumerate(board(plan, joint["receives"])["cuts"]):
            if is_box_cut(cut) and cut["for"] == joint["enters"] and joint["depth"] > 0:
                yield joint, board(plan, joint["receives"]), at


def _own(target, world_axis):
    """The own axis of a board that runs along a world axis, and its sign."""
    pairs = [direction(text) for text in target["axes"]]
    own = next(k for k, (axis, _) in enumerate(pairs) if axis == world_axis)
    return own, pairs[own][1]


def shallow_dados(plan):
    """Every cut that a board enters, 0.5 mm less deep."""
    faults = []
    for joint, target, at in _joint_cuts(plan):
        axis, sign = direction(joint["axis"])
        own, way = _own(target, axis)
        cut = target["cuts"][at]
        if cut["high"][own] - cut["low"][own] <= SHALLOW:
            continue
        end, change = ("high", -SHALLOW) if sign * way > 0 else ("low", SHALLOW)

        def spoil(plan, name=target["name"], at=at, end=end, own=own, change=change):
            board(plan, name)["cuts"][at][end][own] += change

        faults.append((f"{cut['kind']} for {joint['enters']} {SHALLOW} mm shallow", target["name"], spoil))
    return faults


def low_grooves(plan):
    """Every cut with a wall on both sides, 1 mm down (towards the front, for a board that stands)."""
    faults = []
    for joint, target, at in _joint_cuts(plan):
        across = Body(board(plan, joint["enters"])).thickness_axis
        own, way = _own(target, across)
        cut = target["cuts"][at]
        if across == direction(joint["axis"])[0] or not (
            cut["low"][own] >= LOW and cut["high"][own] <= target["size"][own] - LOW
        ):
            continue

        def spoil(plan, name=target["name"], at=at, own=own, by=-LOW * way):
            for end in ("low", "high"):
                board(plan, name)["cuts"][at][end][own] += by

        faults.append((f"{cut['kind']} for {joint['enters']} {LOW} mm low", target["name"], spoil))
    return faults


def short_parts(plan):
    """Every board 1 mm short at an end with which it enters another one."""
    faults = []
    for target in plan["boards"]:
        ends = {joint["axis"] for joint in plan["joints"] if joint["enters"] == target["name"]}
        for own in (0, 1):
            if target["axes"][own] in ends:

                def spoil(plan, name=target["name"], own=own):
                    shorten(board(plan, name), own, SHORT)

                faults.append((f"{SHORT} mm short along {'uv'[own]}", target["name"], spoil))
    return faults


def long_slides(plan):
    """Every slide one length too long at its rear."""

    def fault(at):
        def spoil(plan):
            plan["hardware"][at]["high"][1] += LONG

        return f"slide {LONG} mm too long", plan["hardware"][at]["on"], spoil

    return [fault(at) for at, fitting in enumerate(plan["hardware"]) if fitting["what"] == "slide"]


def left_handed_boards(plan):
    """Every board in the place where it was, with one of its axes turned round."""
    faults = []
    for target in plan["boards"]:

        def spoil(plan, name=target["name"]):
            turned = board(plan, name)
            axis, sign = direction(turned["axes"][2])
            turned["origin"][axis] += sign * turned["size"][2]
            turned["axes"][2] = ("-" if sign > 0 else "+") + "xyz"[axis]

        faults.append(("left-handed", target["name"], spoil))
    return faults


def mirrored_boards(plan):
    """Every board that boards enter, cut to the other hand: its cuts mirrored along one own axis.

    A board that is its own mirror image along that axis is left out.
    """
    faults = []
    for target in plan["boards"]:
        for own in (0, 1, 2):
            spans = {
                (*cut["low"], *cut["high"])
                for cut in target["cuts"]
                if is_box_cut(cut) and cut["for"] and cut["kind"] != "notch"
            }
            if spans and not _is_own_mirror(spans, own, target["size"][own]):

                def spoil(plan, name=target["name"], own=own):
                    mirror_cuts(board(plan, name), own)

                faults.append((f"mirrored along {'uvw'[own]}", target["name"], spoil))
    return faults


def _is_own_mirror(spans, own, whole):
    def mirrored(span):
        low, high = list(span[:3]), list(span[3:])
        low[own], high[own] = whole - high[own], whole - low[own]
        return tuple(round(value, 5) for value in (*low, *high))

    plain = {tuple(round(value, 5) for value in span) for span in spans}
    return plain == {mirrored(span) for span in spans}


KINDS = (shallow_dados, low_grooves, short_parts, long_slides, left_handed_boards, mirrored_boards)
