"""What a slip would do, in words: which boards stand elsewhere, and what the dry-fit finds then."""

from shoplib.lists.alike import told_once
from shoplib.lists.refit import Refit
from shoplib.lists.typed import all_of
from shoplib.measure import write_brief
from shoplib.model.board import Board
from shoplib.model.box import Box, Point
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import how_much
from shoplib.words.naming import and_list

MOST = 8
"""Sentences; beyond that, how many more there are."""

_TOO_FAR = (("too far left", "too far right"), ("too far forward", "too far back"), ("low", "high"))
_NO_ROOM = ("overlap", "travel")
_ORDER = ("overlap", "travel", "seating", "outside")


def consequences(
    built: Refit, planned: Cabinet, before: tuple[Finding, ...], after: tuple[Finding, ...]
) -> tuple[str, ...]:
    """One sentence for each thing that is worse than planned: boards that moved, drawers, the rest."""
    known = {finding.text for finding in before}
    new = [finding for finding in after if finding.text not in known and finding.level in ("stop", "warn")]
    overlaps = {frozenset(finding.boards) for finding in new if finding.check == "overlap"}
    # Where two boards want the same wood, that their joint is not seated says nothing more.
    new = [f for f in new if f.check != "seating" or frozenset(f.boards) not in overlaps]
    new.sort(key=lambda finding: _ORDER.index(finding.check) if finding.check in _ORDER else len(_ORDER))
    told = [
        *_moved(built, planned),
        *told_once(_without_room(new, built, planned)),
        *told_once(_gaps(built.cabinet, planned)),
        *told_once(_others(new, built, planned)),
        *told_once(_parted(built.cabinet, new)),
    ]
    if len(told) > MOST:
        told = [*told[: MOST - 1], f"and {len(told) - MOST + 1} more things do not fit"]
    return tuple(told)


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


def _parted(built: Cabinet, new: list[Finding]) -> list[str]:
    """Joined boards that do not even touch, unless a finding tells of the pair."""
    told = {frozenset(finding.boards) for finding in new}
    found = []
    for joint in built.joints:
        enters, receives = built.by_name[joint.enters], built.by_name[joint.receives]
        apart = max(
            max(enters.box.low[axis] - receives.box.high[axis], receives.box.low[axis] - enters.box.high[axis])
            for axis in range(3)
        )
        if apart > 0 and frozenset((joint.enters, joint.receives)) not in told:
            found.append(f"{joint.enters} and {joint.receives} stand {how_much(apart, built.style)} apart")
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
        told.append(f"the {names} stands {where}" if len(boards) == 1 else f"{names} stand {where}")
    return told


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
    return max(missing, default=0)


def _room(one: Box, other: Box, axis: int, order: tuple[Box, Box]) -> int:
    """The room between two boxes along an axis, in the order in which two others stand; negative: none."""
    first, second = (box.low[axis] + box.high[axis] for box in order)
    low, high = (one, other) if first <= second else (other, one)
    return high.low[axis] - low.high[axis]
