"""What a plan.json says that must be bought, counted from that file alone: no module of the workbook is asked."""

import math
from collections import Counter

RUN = {"front": "y", "back": "y", "left": "x", "right": "x", "top": "z", "bottom": "z"}


def screws(plan):
    """By gauge and length (mm): how many the plan drives."""
    found = Counter()
    for fitting in plan["hardware"]:
        for screw in fitting["screws"]:
            found[screw["gauge"], screw["length"]] += screw["count"]
    return found


def slide_pairs(plan):
    """By row and length (mm, along the depth of the case)."""
    found = Counter()
    for fitting in plan["hardware"]:
        if fitting["what"] == "slide":
            found[fitting["row"], round(fitting["high"][1] - fitting["low"][1], 6)] += 1
    return {key: count / 2 for key, count in found.items()}


def fittings(plan):
    """By what they are."""
    return Counter(fitting["what"] for fitting in plan["hardware"])


def holes(plan, kind, role=None):
    """How many holes of a kind the boards have."""
    return sum(
        cut["kind"] == kind for board in plan["boards"] if role in (None, board["role"]) for cut in board["cuts"]
    )


def edge_runs(plan):
    """By thickness and sheet: the lengths of all edges that are edged (mm).

    An edge that looks along one axis of the board is as long as the other axis in its plane.
    """
    found = {}
    for board in plan["boards"]:
        for edge, thickness in board["edging"].items():
            own = [axis[1] for axis in board["axes"]].index(RUN[edge])
            key = (thickness, board["sheet"])
            found.setdefault(key, []).append(board["size"][1 - own])
    return found


def one_for_every(length, every, least=2):
    """The rule of data/coverage.toml, worked with plain numbers (mm)."""
    return max(least, math.ceil(length / every - 1e-9))
