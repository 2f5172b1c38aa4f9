"""What a slip would do, in words: which boards stand elsewhere, and what the dry-fit finds then."""

from shoplib.lists.alike import told_once
from shoplib.lists.flush import out_of_flush
from shoplib.lists.refit import Refit
from shoplib.lists.typed import all_of
from shoplib.measure import write_brief
from shoplib.model.board import Board
from shoplib.model.box import Box, Point, around
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import how_much, setting
from shoplib.words.naming import and_list

MOST = 6
"""Sentences; beyond that, how many more there are."""

_TOO_FAR = (("too far left", "too far right"), ("too far forward", "too far back"), ("low", "high"))
_FURTHER = (("further left", "further right"), ("further forward", "further back"), ("lower", "higher"))
_FEW_STEPS = 4
"""Below that many steps an outside size is told as a caliper reads it: it comes of a sheet's thickness."""

_NO_ROOM = ("overlap", "travel")
_ORDER = ("overlap", "travel", "seating", "outside")


def consequences(
    built: Refit, planned: Cabinet, before: tuple[Finding, ...], after: tuple[Finding, ...]
) -> tuple[str, ...]:
    """One sentence for each thing that is worse than planned: boards that moved, drawers, the rest.

    Empty only where the dry-fit finds no stop and no warning that it did not find before.
    """
    known = {finding.text for finding in before}
    new = every = [finding for finding in after if finding.text not in known and finding.level in ("stop", "warn")]
    overlaps = {frozenset(finding.boards) for finding in new if finding.check == "overlap"}
    # Where two boards want the same wood, that their joint is not seated says nothing more; but of a cut that is
    # made otherwise it is the joint that tells why.
    recut = {frozenset(pair) for pair, depth in built.cut_moves.changed.items() if not depth}
    seated = {frozenset(finding.boards) for finding in new if finding.check == "seating"} & recut
    new = [f for f in new if f.check != "seating" or frozenset(f.boards) not in overlaps - recut]
    new = [f for f in new if f.check != "overlap" or frozenset(f.boards) not in seated]
    new = [finding for finding in new if not _told_by_the_cut(finding, built)]
    new.sort(key=lambda finding: _ORDER.index(finding.check) if finding.check in _ORDER else len(_ORDER))
    told = [
        *_moved(built, planned),
        *told_once(_without_room(new, built, planned)),
        *_outside(built, planned),
        *told_once(_crooked(built, planned)),
        *told_once(_others([finding for finding in new if finding.check != "outside"], built, planned)),
        *told_once(_gaps(built.cabinet, planned)),
        *out_of_flush(built.cabinet, planned),
        *told_once(_parted(built, new)),
    ]
    # What the line says of a cut may be all that is wrong with it; it is said again rather than nothing.
    told = _both_hands(told) or told_once(_others(every, built, planned))
    if len(told) > MOST:
        told = [*told[: MOST - 1], f"and {len(told) - MOST + 1} more things do not fit"]
    return tuple(told)


def _told_by_the_cut(finding: Finding, built: Refit) -> bool:
    """True where the depth of the cut, told with the line, says it all, or that the board would be crooked."""
    pair = tuple(reversed(finding.boards))  # findings of joints name the entering board first
    if finding.check not in ("seating", "overlap") or len(pair) != 2:
        return False
    moves = built.cut_moves
    if any(one.board in pair and not {*one.odd, *one.against}.isdisjoint(pair) for one in built.crooked):
        return True
    depths = {abs(moves.changed.get(pair, 0)), abs(moves.pushed.get(pair, 0))} - {0}
    return finding.check == "seating" and finding.amount in depths


def _crooked(built: Refit, planned: Cabinet) -> list[str]:
    alike: dict[tuple, list[Board]] = {}
    for one in built.crooked:
        alike.setdefault((one.odd, one.against, one.axis, one.amount), []).append(planned.by_name[one.board])
    told = []
    for (odd_ones, others, axis, amount), boards in alike.items():
        odd, against = (all_of([planned.by_name[name] for name in names], planned) for names in (odd_ones, others))
        names, what = all_of(boards, planned), "lie level" if axis == 2 else "stand square"
        told.append(
            f"{_the(names) if len(boards) == 1 else names} would not {what}: "
            f"{odd} {'has' if len(odd_ones) == 1 else 'have'} {'it' if len(boards) == 1 else 'them'} "
            f"{how_much(abs(amount), planned.style)} {_FURTHER[axis][amount > 0]} than {against}"
        )
    return told


def _outside(built: Refit, planned: Cabinet) -> list[str]:
    """Outside sizes that come out otherwise, where one board's own change says by how much.

    Where boards run into each other, what sticks out furthest is not the size that the cabinet comes to.
    """
    grown = [abs(by) for shift in built.shifts.values() for by in shift]
    for board in built.cabinet.boards:
        grown += [abs(now - then) for now, then in zip(board.size, planned.by_name[board.name].size, strict=True)]
    whole, told = around([board.box for board in built.cabinet.boards]), []
    for axis, (more, less) in enumerate((("wide", "narrow"), ("deep", "shallow"), ("high", "low"))):
        by = whole.size[axis] - planned.outside.size[axis]
        if by and any(abs(abs(by) - one) <= planned.style.step for one in grown):
            size = (how_much if abs(by) >= _FEW_STEPS * planned.style.step else setting)(abs(by), planned.style)
            told.append(f"the cabinet comes {size} too {more if by > 0 else less}")
    return told


def _gaps(built: Cabinet, planned: Cabinet) -> list[str]:
    """Gaps beside fronts that come out otherwise than planned, where there still is one."""
    told = []
    for gap in planned.gaps:
        axis = "xyz".index(gap.along)
        if not all(name in planned.by_name for name in gap.between):
            continue
        order = tuple(planned.by_name[name].box for name in gap.between)
        now = _room(*(built.by_name[name].box for name in gap.between), axis, order)
        if now != _room(*order, axis, order) == gap.size and now > 0:
            one, other = gap.between
            told.append(
                f"the gap between {one} and {other} comes out at {how_much(now, planned.style)}, "
                f"planned {write_brief(gap.size, planned.style)}"
            )
    return told


def _both_hands(sentences: list[str]) -> list[str]:
    """What is said of a left and of a right box side in the same words, said once."""
    told = list(sentences)
    for sentence in sentences:
        other = sentence.replace("left box side", "right box side")
        if other != sentence and other in told:
            told.remove(other)
            told[told.index(sentence)] = sentence.replace("left box side", "left and right box side")
    return told


def _parted(built: Refit, new: list[Finding]) -> list[str]:
    """Joined boards that do not even touch, unless a finding tells of the pair, or that one would be crooked."""
    told = {frozenset(finding.boards) for finding in new}
    told |= {frozenset((one.board, odd)) for one in built.crooked for odd in one.odd}
    found = []
    for joint in built.cabinet.joints:
        enters, receives = built.cabinet.by_name[joint.enters], built.cabinet.by_name[joint.receives]
        apart = max(
            max(enters.box.low[axis] - receives.box.high[axis], receives.box.low[axis] - enters.box.high[axis])
            for axis in range(3)
        )
        if apart > 0 and frozenset((joint.enters, joint.receives)) not in told:
            found.append(f"{joint.enters} and {joint.receives} stand {how_much(apart, built.cabinet.style)} apart")
    return found


def _moved(built: Refit, planned: Cabinet) -> list[str]:
    """Which boards stand off their place, those that moved alike together."""
    alike: dict[Point, list[Board]] = {}
    for name, shift in built.shifts.items():
        alike.setdefault(shift, []).append(planned.by_name[name])
    told = []
    for shift, boards in alike.items():
        where = " and ".join(_off(shift[axis], axis, planned) for axis in range(3) if shift[axis])
        names = all_of(boards, planned)
        told.append(f"{_the(names)} stands {where}" if len(boards) == 1 else f"{names} stand {where}")
    return told


def _the(name: str) -> str:
    """Boards that are one of a kind take an article: "the top", but "divider 1"."""
    return name if any(sign.isdigit() for sign in name) else f"the {name}"


def _off(ticks: int, axis: int, planned: Cabinet) -> str:
    return f"{how_much(abs(ticks), planned.style)} {_TOO_FAR[axis][ticks > 0]}"


def _without_room(new: list[Finding], built: Refit, planned: Cabinet) -> list[str]:
    """Drawers and pull-outs that share wood with, or run into, a board of another group."""
    reasons: dict[str, list[str]] = {}
    for group, findings in _by_group(new, planned).items():
        worst = max(findings, key=lambda finding: _overlap(finding, built, planned) or finding.amount or 0)
        reasons.setdefault(_what_is_wrong(worst, built, planned), []).append(group)
    return [
        f"{and_list(groups)} {'has' if len(groups) == 1 else 'have'} no room: {reason}"
        for reason, groups in reasons.items()
    ]


def _by_group(new: list[Finding], planned: Cabinet) -> dict[str, list[Finding]]:
    found: dict[str, list[Finding]] = {}
    for finding in new:
        if finding.check in _NO_ROOM:
            for group in _moving_groups(finding, planned):
                found.setdefault(group, []).append(finding)
    return found


def _moving_groups(finding: Finding, planned: Cabinet) -> list[str]:
    groups = list(dict.fromkeys(planned.by_name[name].group for name in finding.boards))
    return [group for group in groups if group != "case"] if len(groups) > 1 else []


def _others(new: list[Finding], built: Refit, planned: Cabinet) -> list[str]:
    rest = [f for f in new if f.check not in _NO_ROOM or not _moving_groups(f, planned)]
    return list(dict.fromkeys(_what_is_wrong(finding, built, planned) for finding in rest))


def _what_is_wrong(finding: Finding, built: Refit, planned: Cabinet) -> str:
    """The finding without how to mend the plan: here it is the list that is to be mended."""
    overlap = _overlap(finding, built, planned)
    if overlap:
        one, other = finding.boards
        return f"{one} and {other} overlap by {how_much(overlap, planned.style)}"
    text = finding.text.partition(". ")[0].rstrip(".")
    return text if text.startswith(tuple(finding.boards)) else text[0].lower() + text[1:]


def _overlap(finding: Finding, built: Refit, planned: Cabinet) -> int:
    """How far two boards came into each other's way, along the axis that one of them moved or grew.

    0 where the finding is no overlap, or neither moved.
    """
    if finding.check != "overlap":
        return 0
    one, other = finding.boards
    before = planned.by_name[one].box, planned.by_name[other].box
    after = built.cabinet.by_name[one].box, built.cabinet.by_name[other].box
    missing = []
    for axis in range(3):
        room, left = _room(*before, axis, before), _room(*after, axis, before)
        if room != left:
            missing.append(min(room, 0) - left)  # boards that are joined may be in each other already
    return max([*missing, 0])


def _room(one: Box, other: Box, axis: int, order: tuple[Box, Box]) -> int:
    """The room between two boxes along an axis, in the order in which two others stand; negative: none."""
    first, second = (box.low[axis] + box.high[axis] for box in order)
    low, high = (one, other) if first <= second else (other, one)
    return high.low[axis] - low.high[axis]
