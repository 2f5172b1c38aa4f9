"""Every joint must be seated: the board is in as far as it should be, and the cut gives it its clearance."""

from shoplib.checks.as_built import AsBuilt
from shoplib.checks.finger_seat import finger_faults
from shoplib.checks.geometry import direction, far, near
from shoplib.checks.seat import Seat, seat_of
from shoplib.measure import write_brief
from shoplib.model.board import Board
from shoplib.model.box import Box, what_remains
from shoplib.model.solved import Cabinet, Finding, Joint
from shoplib.words.amounts import how_much, longer, setting, shorter, true_amount

CORNERS = ("dovetail", "mitre")
"""Joints at a corner whose boards both run to the outside."""


def find_unseated(cabinet: Cabinet) -> tuple[Finding, ...]:
    """What keeps each joint from being seated.

    "stop" where a board would not go in, stands off, or finds no cut; "warn" where the end gap or
    the clearance is larger than the plan says, and where a board that is cut already, for it was measured, is
    short and at least half of what should enter does (common practice, no source). The amount is by how much.

    Boards that meet at a corner with tails and pins, or mitred, are flush with the outside of each other.

    What is butted between the uprights of a measured opening must meet them where they were measured.
    """
    found, built = [], AsBuilt(cabinet)
    for joint in cabinet.joints:
        enters, receives = cabinet.by_name.get(joint.enters), cabinet.by_name.get(joint.receives)
        if enters is None or receives is None:
            found.append(_missing(joint, joint.enters if enters is None else joint.receives))
        elif joint.kind == "finger":
            found += finger_faults(joint, enters, receives, cabinet.style)
        elif joint.kind in CORNERS:
            found += _corner(cabinet, joint, enters, receives)
        elif joint.depth == 0:
            found += _butt(cabinet, joint, enters, built.met_by(receives, enters))
        else:
            found += _cut_joint(cabinet, seat_of(joint, enters, receives))
    return tuple(found)


def _missing(joint: Joint, name: str) -> Finding:
    text = (
        f"The {joint.kind} of {joint.enters} with {joint.receives} cannot be made: there is no board "
        f"called {name}. Add it, or take the joint away."
    )
    return Finding("seating", "stop", (joint.enters, joint.receives), text)


def _corner(cabinet: Cabinet, joint: Joint, enters: Board, receives: Board) -> list[Finding]:
    """At a corner of tails and pins, or of mitres, the end is flush with the outside of the other board."""
    axis, sign = direction(joint.axis)
    off = sign * (far(enters.box, axis, sign) - far(receives.box, axis, sign))
    if not off:
        return []
    size = true_amount(abs(off), cabinet.style)
    what, mend = ("past", shorter(enters, axis)) if off > 0 else ("short of", longer(enters, axis))
    text = f"{enters.name} ends {size} {what} the outside of {receives.name}. Make it {mend} by {size}."
    return [Finding("seating", "stop", (enters.name, receives.name), text, abs(off))]


def _butt(cabinet: Cabinet, joint: Joint, enters: Board, receives: Board) -> list[Finding]:
    """A butt end must lie against some face of its receiver."""
    axis, sign = direction(joint.axis)
    sides = [a for a in range(3) if a != axis]
    for piece in enters.pieces:
        end = far(piece, axis, sign)
        for wall in receives.pieces:
            if end == near(wall, axis, sign) and all(
                piece.low[a] < wall.high[a] and wall.low[a] < piece.high[a] for a in sides
            ):
                return []
    gap = sign * (near(receives.box, axis, sign) - far(enters.box, axis, sign))
    amount = abs(gap)
    if gap > 0:
        what = f"stops {true_amount(gap, cabinet.style)} short of {receives.name}"
        mend = f"Make {enters.name} that much {longer(enters, axis)}, or move it up to {receives.name}."
    elif gap < 0:
        over = true_amount(amount, cabinet.style)
        what = f"goes {over} past the face of {receives.name} that it should lie against"
        mend = f"Make {enters.name} that much {shorter(enters, axis)}."
    else:
        amount = max(
            max(receives.box.low[a] - enters.box.high[a], enters.box.low[a] - receives.box.high[a], 0)
            for a in sides
        )
        past = f"by {how_much(amount, cabinet.style)}" if amount else "and meets only air there"
        what = f"misses {receives.name} sideways {past}"
        mend = "Move one of them until the end lies on wood."
    text = f"The end of {enters.name} {what}. {mend}"
    return [Finding("seating", "stop", (enters.name, receives.name), text, amount)]


def _cut_joint(cabinet: Cabinet, seat: Seat) -> list[Finding]:
    """Depth, end gap, place and clearance of a joint with a cut, each said apart."""
    if seat.cut is None:
        depth = setting(seat.joint.depth, cabinet.style)
        cut = "dado" if seat.joint.kind == "tongue" else seat.joint.kind  # a tongue is what goes in
        what = (
            f"{seat.receives.name} has no {cut} for {seat.enters.name}. "
            f"Cut one {depth} deep, or make {seat.enters.name} end at the face."
        )
        return [_finding(seat, "stop", what, seat.joint.depth)]
    if not seat.inside and seat.entered > 0:
        return [_beside(cabinet, seat)]
    found = [*_depth(cabinet, seat), *_reach(cabinet, seat)]
    clearance = _clearance(cabinet, seat)
    return [*found, *clearance, *_place(cabinet, seat, clearance)]


def _beside(cabinet: Cabinet, seat: Seat) -> Finding:
    """No wood of the entering board is inside the receiving one: it stands beside it, or its end is cut away."""
    one, other = seat.enters.box, seat.receives.box
    off = max(max(one.low[a] - other.high[a], other.low[a] - one.high[a], 0) for a in range(3) if a != seat.axis)
    by = f" by {how_much(off, cabinet.style)}" if off else ""
    what = (
        f"{seat.enters.name} misses the {seat.cut.kind} of {seat.receives.name} sideways{by}. "
        "Check the length of both, or move one of them."
    )
    return _finding(seat, "stop", what, off)


def _finding(seat: Seat, level: str, text: str, amount: int) -> Finding:
    return Finding("seating", level, (seat.enters.name, seat.receives.name), text, amount)


def _depth(cabinet: Cabinet, seat: Seat) -> list[Finding]:
    """The cut is as deep as the joint says."""
    missing = seat.joint.depth - seat.cut_depth
    if missing == 0:
        return []
    size, meant = true_amount(abs(missing), cabinet.style), setting(seat.joint.depth, cabinet.style)
    what = (
        f"The {seat.cut.kind} in {seat.receives.name} for {seat.enters.name} is {size} too "
        f"{'shallow' if missing > 0 else 'deep'}: it should be {meant} deep. "
    )
    mend = (
        f"Cut it deeper by {size}."
        if missing > 0
        else f"Set the cutter higher by {size}; if it is cut already, glue in a slip of that thickness."
    )
    return [_finding(seat, "stop" if missing > 0 else "warn", what + mend, abs(missing))]


def _reach(cabinet: Cabinet, seat: Seat) -> list[Finding]:
    """The entering board is in as far as the joint says, so that the end gap is the stated one."""
    style, enters = cabinet.style, seat.enters
    meant = seat.joint.depth - seat.joint.end_gap
    short = meant - seat.entered
    if short == 0:
        return []
    size = true_amount(abs(short), style)  # not to the nearest step: a board that is cut by it must come home
    if short > 0:
        what = f"{enters.name} stands {size} short of its place in the {seat.cut.kind} of {seat.receives.name}"
        inside = setting(seat.entered, style) if seat.entered > 0 else "nothing"
        if not _is_cut(cabinet, seat):
            what += f". Make it {longer(enters, seat.axis)} by {size}, or bring the boards closer."
        elif 2 * seat.entered >= meant:
            what += (
                f", and {inside} of it is in, which holds. Leave it; where it must not slip, glue in a slip of {size} "
                "behind its end."
            )
            return [_finding(seat, "warn", what, short)]
        else:
            what += f": {inside} of it is in. Cut it again, {longer(enters, seat.axis)} by {size}."
        return [_finding(seat, "stop", what, short)]
    level = "stop" if seat.entered > seat.joint.depth else "warn"
    what = (
        f"{enters.name} goes {size} too far into the {seat.cut.kind} of {seat.receives.name}: "
        f"the gap at its end should be {write_brief(seat.joint.end_gap, style)}. "
        f"Make it {shorter(enters, seat.axis)} by {size}."
        if seat.joint.end_gap
        else f"{enters.name} is {size} too long for the {seat.cut.kind} of {seat.receives.name} "
        f"and would strike the floor of the {seat.cut.kind}. Make it {shorter(enters, seat.axis)} by {size}."
    )
    return [_finding(seat, level, what, -short)]


def _is_cut(cabinet: Cabinet, seat: Seat) -> bool:
    """Whether one of the two boards is finished: a line that is still to be cut is put right instead."""
    parts = cabinet.project.measured.parts if cabinet.project else {}
    return seat.enters.name in parts or seat.receives.name in parts


def _clearance(cabinet: Cabinet, seat: Seat) -> list[Finding]:
    """The cut is wider than what enters by the fit; where it runs out of an edge, its one wall is near."""
    entering = seat.entering
    if seat.across == seat.axis or entering is None:
        return []
    thick = seat.joint.tongue or cabinet.sheets[seat.enters.sheet].thickest
    found = _tongue(cabinet, seat, entering) if seat.joint.tongue else []
    open_low = seat.room.low[seat.across] <= seat.receives.box.low[seat.across]
    open_high = seat.room.high[seat.across] >= seat.receives.box.high[seat.across]
    if open_low and open_high:
        return found
    if open_low or open_high:
        room = (
            seat.room.high[seat.across] - entering.high[seat.across]
            if open_low
            else entering.low[seat.across] - seat.room.low[seat.across]
        )
        most = seat.joint.fit + thick - entering.size[seat.across]
        if room > most:
            found.append(_loose(cabinet, seat, room - most))
        return found
    play = seat.room.size[seat.across] - thick - seat.joint.fit
    if play < 0:
        found.append(_tight(cabinet, seat, -play, thick))
    elif play > 0:
        found.append(_loose(cabinet, seat, play))
    return found


def _tongue(cabinet: Cabinet, seat: Seat, entering: Box) -> list[Finding]:
    """The rabbet in the entering board leaves the tongue that the joint names."""
    over = entering.size[seat.across] - seat.joint.tongue
    if over == 0:
        return []
    size, meant = true_amount(abs(over), cabinet.style), write_brief(seat.joint.tongue, cabinet.style, decimal=True)
    what = (
        f"The tongue of {seat.enters.name} for {seat.receives.name} is {size} too "
        f"{'thick' if over > 0 else 'thin'}: it should be {meant}. "
        f"Cut the rabbet that leaves it {'deeper' if over > 0 else 'shallower'} by {size}."
    )
    return [_finding(seat, "stop" if over > 0 else "warn", what, abs(over))]


def _tight(cabinet: Cabinet, seat: Seat, missing: int, thick: int) -> Finding:
    size = true_amount(missing, cabinet.style)
    entering = "tongue" if seat.joint.tongue else "thickest reading"
    what = (
        f"The {seat.cut.kind} in {seat.receives.name} is {size} too narrow for {seat.enters.name}: "
        f"it needs the {entering} {write_brief(thick, cabinet.style, decimal=True)} "
        f"and {write_brief(seat.joint.fit, cabinet.style, decimal=True)} of clearance. Widen it by {size}."
    )
    return _finding(seat, "stop", what, missing)


def _loose(cabinet: Cabinet, seat: Seat, spare: int) -> Finding:
    size = true_amount(spare, cabinet.style)
    what = (
        f"The {seat.cut.kind} in {seat.receives.name} leaves {size} more play to {seat.enters.name} than the "
        f"{write_brief(seat.joint.fit, cabinet.style, decimal=True)} meant. Make it narrower by {size}."
    )
    return _finding(seat, "warn", what, spare)


def _place(cabinet: Cabinet, seat: Seat, clearance: list[Finding]) -> list[Finding]:
    """The cut lies where the board enters: nothing of it stands over a wall or an end of the cut."""
    entering, found = seat.entering, []
    if entering is None or seat.room.common(entering) == entering:
        return []
    if not what_remains(seat.inside, list(seat.receives.cut_boxes)):
        return []
    told = any(finding.level == "stop" for finding in clearance)
    for axis in range(3):
        if axis == seat.axis or (axis == seat.across and told):
            continue
        over = max(
            seat.room.low[axis] - entering.low[axis], entering.high[axis] - seat.room.high[axis], 0
        )
        if over:
            size = true_amount(over, cabinet.style)
            name, cut = seat.receives.name, seat.cut.kind
            wrong, mend = (
                ("wall", f"Move the {cut} by {size}; if it is cut already, glue a strip into it and cut it again, or "
                         f"make {name} anew.")
                if axis == seat.across
                else ("end", f"Move the cut, or let it run further by {size}.")
            )
            what = f"{seat.enters.name} stands {size} over the {wrong} of the {cut} in {name}. {mend}"
            found.append(_finding(seat, "stop", what, over))
    return found
