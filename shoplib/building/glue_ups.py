"""Glue-ups: which boards are glued in one go, so that every joint is closed and clamped while the glue is open."""

from collections.abc import Sequence
from dataclasses import dataclass

from shoplib.building.glue_time import USUAL, GlueTime
from shoplib.buying.surfaces import is_glued
from shoplib.checks.parting import HELD_AT_ENDS, Entry
from shoplib.model.solved import Cabinet, Joint


@dataclass(frozen=True, slots=True)
class GlueUp:
    """Boards that go in one after another in one go, and the joints that are glued then."""

    entries: tuple[Entry, ...]
    joints: tuple[Joint, ...]

    @property
    def boards(self) -> tuple[str, ...]:
        """What goes in, in its order."""
        return tuple(entry.board for entry in self.entries)

    @property
    def standing(self) -> tuple[str, ...]:
        """What stood before, by itself or glued."""
        return self.entries[0].onto


def closed_by(entry: Entry, cabinet: Cabinet) -> tuple[Joint, ...]:
    """All joints between a board that goes in and what stands then.

    >>> closed_by(Entry("side"), Cabinet("no boards", (), {}))
    ()
    """
    return tuple(
        joint for joint in cabinet.joints
        if (joint.enters == entry.board and joint.receives in entry.onto)
        or (joint.receives == entry.board and joint.enters in entry.onto)
    )


def glue_ups(entries: Sequence[Entry], cabinet: Cabinet, time: GlueTime = USUAL) -> tuple[GlueUp, ...]:
    """The entries in as few goes as the open time allows; where there is a choice, a go ends where the clamps turn.

    A board that still hangs free at one end is glued in one go with the board that closes it, so a go may have more
    joints than the time allows: `joints` says how many.

    >>> glue_ups([], Cabinet("no boards", (), {}))
    ()
    """
    units = _units(entries, cabinet)
    if not units:
        return ()
    counts = [sum(len(glued_by(entry, cabinet)) for entry in unit) for unit in units]
    best: list[tuple[tuple[int, ...], int]] = [((0, 0, 0, 0), 0)]
    for end in range(1, len(units) + 1):
        ways = []
        for start in range(end):
            count = sum(counts[start:end])
            over = max(0, count - time.joints) if end - start > 1 else 0
            turns = start > 0 and _axis(units[start - 1], cabinet) == _axis(units[start], cabinet)
            cost = (over, 1, int(turns), count * count)
            ways.append((tuple(a + b for a, b in zip(best[start][0], cost, strict=True)), start))
        best.append(min(ways))
    goes, end = [], len(units)
    while end:
        start = best[end][1]
        goes.append([entry for unit in units[start:end] for entry in unit])
        end = start
    return tuple(
        GlueUp(tuple(go), tuple(joint for entry in go for joint in glued_by(entry, cabinet))) for go in reversed(goes)
    )


def glued_by(entry: Entry, cabinet: Cabinet) -> tuple[Joint, ...]:
    """The joints that a board closes as it goes in, as far as they are glued.

    >>> glued_by(Entry("side"), Cabinet("no boards", (), {}))
    ()
    """
    return tuple(joint for joint in closed_by(entry, cabinet) if is_glued(joint, cabinet))


def _units(entries: Sequence[Entry], cabinet: Cabinet) -> list[list[Entry]]:
    """What is never parted: the first board with the second, and what hangs free with what closes its other end."""
    names = {entry.board for entry in entries}
    units: list[list[Entry]] = []
    standing, open_ends = set(), set()
    for entry in entries:
        if open_ends or len(standing) == 1:
            units[-1].append(entry)
        else:
            units.append([entry])
        standing.add(entry.board)
        if cabinet.by_name[entry.board].role in HELD_AT_ENDS:
            open_ends.add(entry.board)
        open_ends = {name for name in open_ends if _receivers(name, names, cabinet) - standing}
    return units


def _receivers(name: str, names: set[str], cabinet: Cabinet) -> set[str]:
    return {joint.receives for joint in cabinet.joints if joint.enters == name and joint.receives in names}


def _axis(unit: Sequence[Entry], cabinet: Cabinet) -> str:
    """Along which axis the clamps of the last board of a unit that is glued press."""
    axes = [joint.axis[1] for entry in unit for joint in glued_by(entry, cabinet)]
    return axes[-1] if axes else ""
