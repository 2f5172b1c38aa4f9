"""Faults of form: names, sizes, sheets, placements, cuts that leave their board, groups, references."""

from collections import Counter
from statistics import fmean

import numpy as np

from tests.judge.solids import OWN, SAME, is_box_cut, is_hole, rotation

HALF_TICK = 1 / 160_000
"""A mean of readings is taken to the nearest 1/80 000 mm."""

PLANED = ("runner", "kicker")
"""Strips that are ripped and planed to their own thickness."""


def sheet_faults(plan):
    """Names, thickness above zero, thickness the mean of the readings."""
    names = Counter(sheet["name"] for sheet in plan["sheets"])
    faults = [f"sheet: {n} sheets are called {name}" for name, n in names.items() if n > 1]
    for sheet in plan["sheets"]:
        name, thickness, readings = sheet["name"], sheet["thickness"], sheet["readings"]
        if thickness <= 0:
            faults.append(f"sheet: {name} is {thickness} mm thick")
        if readings and abs(thickness - fmean(readings)) > HALF_TICK + SAME:
            faults.append(f"sheet: {name} is given as {thickness} mm, its readings mean {fmean(readings)} mm")
    return faults


def board_faults(plan):
    """Unique names, positive sizes, the thickness of a known sheet, a right-handed placement, cuts inside."""
    names = Counter(board["name"] for board in plan["boards"])
    faults = [f"board: {n} boards are called {name}" for name, n in names.items() if n > 1]
    sheets = {sheet["name"]: sheet for sheet in plan["sheets"]}
    for board in plan["boards"]:
        name, size = board["name"], board["size"]
        if len(size) != 3 or min(size) <= 0:
            faults.append(f"board: {name} has the size {size}")
            continue
        if board["sheet"] not in sheets:
            faults.append(f"board: {name} is of an unknown sheet, {board['sheet']}")
        elif board.get("role") not in PLANED:
            thickness = sheets[board["sheet"]]["thickness"]
            if abs(size[2] - thickness) > SAME:
                faults.append(f"board: {name} is {size[2]} mm thick, its sheet {thickness} mm")
        faults += _placement_faults(board)
        for cut in board["cuts"]:
            faults += [f"cut: {cut['kind']} in {name} {what}" for what in _cut_faults(cut, size)]
            if cut.get("for") and cut["for"] not in names:
                faults.append(f"cut: {cut['kind']} in {name} is for an unknown board, {cut['for']}")
    return faults


def _placement_faults(board):
    turn = np.linalg.det(rotation(board["axes"]))
    if turn > 0.5:
        return []
    wrong = "are left-handed" if turn < -0.5 else "do not name x, y and z once each"
    return [f"board: the axes of {board['name']}, {board['axes']}, {wrong}"]


def _cut_faults(cut, size):
    if is_box_cut(cut):
        return _span_faults(cut["low"], cut["high"], size)
    if is_hole(cut):
        return _hole_faults(cut, size)
    return _prism_faults(cut, size)


def _span_faults(low, high, size):
    faults = []
    for letter, a, b, whole in zip(OWN, low, high, size, strict=True):
        if b - a <= SAME:
            faults.append(f"runs from {a} to {b} along {letter}: no positive size")
        if a < -SAME or b > whole + SAME:
            faults.append(f"runs from {a} to {b} along {letter}, outside 0 to {whole}")
    return faults


def _hole_faults(cut, size):
    along = OWN.index(cut["along"])
    faults = []
    if cut["diameter"] <= 0 or cut["depth"] <= 0:
        return [f"has the diameter {cut['diameter']} and the depth {cut['depth']}"]
    for own, (at, whole) in enumerate(zip(cut["centre"], size, strict=True)):
        if own == along:
            if min(abs(at), abs(at - whole)) > SAME:
                faults.append(f"is drilled from {at} along {OWN[own]}: no face lies there")
            if cut["depth"] > whole + SAME:
                faults.append(f"is {cut['depth']} deep in {whole}")
        elif at - cut["diameter"] / 2 < -SAME or at + cut["diameter"] / 2 > whole + SAME:
            faults.append(f"of diameter {cut['diameter']} at {at} along {OWN[own]} leaves 0 to {whole}")
    return faults


def _prism_faults(cut, size):
    along = OWN.index(cut["along"])
    low, high = [0.0] * 3, [0.0] * 3
    low[along], high[along] = cut["from"], cut["to"]
    for k in range(2):
        values = [point[k] for point in cut["outline"]]
        low[(along + 1 + k) % 3], high[(along + 1 + k) % 3] = min(values), max(values)
    return _span_faults(low, high, size)


def reference_faults(plan):
    """Joints, gaps, hardware and travel name boards and groups that exist."""
    names = {board["name"] for board in plan["boards"]}
    groups = {board["group"] for board in plan["boards"]}
    faults = []
    for joint in plan["joints"]:
        ends = (joint["enters"], joint["receives"])
        faults += [f"joint: unknown board {name}" for name in ends if name not in names]
    for gap in plan["gaps"]:
        faults += [f"gap: unknown board {name}" for name in gap["between"] if name not in names]
    for fitting in plan["hardware"]:
        if fitting["on"] not in names:
            faults.append(f"hardware: {fitting['what']} on an unknown board, {fitting['on']}")
        if fitting["group"] not in groups:
            faults.append(f"hardware: {fitting['what']} in an unknown group, {fitting['group']}")
        if any(b - a <= SAME for a, b in zip(fitting["low"], fitting["high"], strict=True)):
            faults.append(f"hardware: {fitting['what']} on {fitting['on']} has no positive size")
    return faults + _group_faults(plan, groups)


def _group_faults(plan, groups):
    """Everything fixed is in "case"; every other group has one travel entry, and runs out along -y."""
    moving = Counter(entry["group"] for entry in plan["travel"])
    faults = [f"travel: {n} entries for {group}" for group, n in moving.items() if n > 1]
    faults += [f"travel: group {group} has no travel" for group in sorted(groups - {"case"} - set(moving))]
    faults += [f"travel: there are no boards in group {group}" for group in sorted(set(moving) - groups)]
    for entry in plan["travel"]:
        x, y, z = entry["vector"]
        if entry["group"] == "case":
            faults.append("travel: the case itself travels")
        if y >= 0 or x or z:
            faults.append(f"travel: {entry['group']} runs along {entry['vector']}, outward is -y")
    return faults
