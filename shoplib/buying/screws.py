"""Screws to buy: those of the plan, and an estimate for butted boards that the plan leaves to the maker."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal

from shoplib.buying.brads import GAUGE, back_brads, brads_into
from shoplib.buying.line import Line
from shoplib.lists.butted import screwed_and_open
from shoplib.lists.writing import Writing
from shoplib.model.board import BOXES, Board
from shoplib.model.screw_room import end_screw, face_screw
from shoplib.model.screwed import BOTTOM_SCREWS, TOE_SCREWS
from shoplib.model.solved import Cabinet, Joint
from shoplib.tables.coverage import butt_screws
from shoplib.tables.screws import screws
from shoplib.words.naming import and_list

_PLAN = {
    "slide": ("pan-head", "slides"),
    "front screws": ("pan-head", "fronts"),
    "rail screws": ("flat-head", "rails"),
    "cleat screws": ("flat-head", "cleats"),
    "pocket screws": ("pocket", "pockets"),
    TOE_SCREWS: ("flat-head", "toe boards"),
    BOTTOM_SCREWS: ("pan-head", "box bottoms"),
}
"""The head of the screws of each fitting (common practice, no source), and what they hold."""

_HEAD_OF_ROW = {"slide": "pan-head", "end": "flat-head", "front": "flat-head"}
"""The head of the screws that are estimated, by the row that they are taken from: a thin board wants a wide head."""


@dataclass(frozen=True, slots=True)
class Need:
    """So many equal screws for one use; `length` in ticks. `counted`: by the plan, else estimated here.

    `passed` and `into` are the boards that it goes through and into, or the fitting lies on and it goes into.
    """

    head: str
    gauge: str
    length: int
    count: int
    use: str
    stage: int
    counted: bool
    passed: Board | None = None
    into: Board | None = None


def planned(cabinet: Cabinet) -> Iterator[Need]:
    """The screws of the hardware, each once."""
    for fitting in cabinet.hardware:
        for screw in fitting.screws:
            head, use = _PLAN[fitting.what]
            on, into = cabinet.by_name[fitting.on], cabinet.by_name[screw.into]
            stage = BOXES if fitting.what == "slide" else max(on.stage, into.stage)
            yield Need(head, screw.gauge, screw.length, screw.count, use, stage, True, on, into)


@dataclass(frozen=True, slots=True)
class Meeting:
    """Two boards that are screwed together without a count in the plan.

    `passed` is the board that the screw goes through first, `thick` what it passes there, `length` how far the two
    run along one another (ticks), `end` whether the point goes into an end or edge of `into`: no face lies before it.
    """

    passed: Board
    into: Board
    thick: int
    length: int
    end: bool


def meetings(cabinet: Cabinet) -> Iterator[Meeting]:
    """Boards butted with no screws in the plan, and solid backs in rabbets."""
    nailed = brads_into(cabinet)
    for enters, receives, joint in _left_open(cabinet):
        found = _butted(joint, enters, receives, cabinet)
        if found is not None and found.passed.name not in nailed:
            yield found
    for joint in cabinet.joints:
        enters, receives = cabinet.by_name.get(joint.enters), cabinet.by_name.get(joint.receives)
        if enters and receives and joint.kind == "rabbet" and enters.role == "back" and enters.name not in nailed:
            axis = "xyz".index(joint.axis[1])
            yield Meeting(enters, receives, _thin(enters, cabinet), _along(enters, receives, 3 - axis - 1), True)


def _left_open(cabinet: Cabinet) -> Iterator[tuple[Board, Board, Joint]]:
    """The butted pairs that no fitting holds. A front has fittings, with or without screws that fit."""
    without = _chosen_for(cabinet)
    for joint in screwed_and_open(cabinet)[1]:
        enters, receives = cabinet.by_name[joint.enters], cabinet.by_name[joint.receives]
        if enters.role != "front" and frozenset((joint.enters, joint.receives)) not in without:
            yield enters, receives, joint


def _chosen_for(cabinet: Cabinet) -> set[frozenset[str]]:
    """Pairs whose fitting is there but for which the table has no screw that is short enough: they are told apart."""
    found = set()
    for fitting in cabinet.hardware:
        if fitting.what in _PLAN and not fitting.screws:
            found |= {frozenset((fitting.on, board.name)) for board in cabinet.boards if board.box == fitting.box}
    return found


def without_screw(cabinet: Cabinet) -> tuple[str, ...]:
    """What the plan holds by screws for which no length of the table will do."""
    pairs: dict[str, set[str]] = {}
    for fitting in cabinet.hardware:
        if fitting.what in _PLAN and not fitting.screws:
            pairs.setdefault(_PLAN[fitting.what][1], set()).add(fitting.on)
    return tuple(
        f"The screws of the {use} on {and_list(sorted(on))}: no length of the table will do there, so none is counted."
        for use, on in pairs.items()
    )


def _butted(joint: Joint, enters: Board, receives: Board, cabinet: Cabinet) -> Meeting | None:
    """How a butted pair is screwed; None where edge stands on edge, which no screw holds."""
    axis = "xyz".index(joint.axis[1])
    faces = [board.placement.own_axis(axis) == 2 for board in (enters, receives)]
    run = max(_along(enters, receives, other) for other in range(3) if other != axis)
    if enters.role in ("runner", "kicker"):  # from inside the opening, through the strip
        return Meeting(enters, receives, enters.box.size[axis], run, False)
    if faces == [True, True]:
        passed, into = sorted((enters, receives), key=lambda board: board.thickness)
        return Meeting(passed, into, _thin(passed, cabinet), run, False)
    if faces == [False, True]:
        return Meeting(receives, enters, _thin(receives, cabinet), run, True)
    if faces == [True, False]:
        return Meeting(enters, receives, _thin(enters, cabinet), run, True)
    return None


def unscrewed(cabinet: Cabinet) -> tuple[tuple[Board, Board], ...]:
    """Pairs that stand edge on edge: glue blocks or dowels hold them, not screws."""
    return tuple(
        (one, other) for one, other, joint in _left_open(cabinet) if _butted(joint, one, other, cabinet) is None
    )


def _thin(board: Board, cabinet: Cabinet) -> int:
    return cabinet.sheets[board.sheet].thinnest


def _along(one: Board, other: Board, axis: int) -> int:
    """How far two boards run along one another on a world axis (ticks)."""
    low = max(one.box.low[axis], other.box.low[axis])
    return max(0, min(one.box.high[axis], other.box.high[axis]) - low)


def estimated(cabinet: Cabinet) -> Iterator[Need]:
    """Screws for all meetings, one for every so much of their length (`data/coverage.toml`), of the longest that fit.

    Into an end or edge they are at most three times as long as what they pass is thick; into a face the wood of the
    table stays before the point. Backs that are nailed have their brads.
    """
    rule = butt_screws(cabinet.style.unit)
    for meeting in meetings(cabinet):
        row, length = _screw_for(meeting, cabinet)
        if length is not None:
            count = max(rule.least, -(-meeting.length // rule.every))
            use = f"{_called(meeting.passed)} to {_called(meeting.into)}"
            stage = max(meeting.passed.stage, meeting.into.stage)
            gauge = screws(cabinet.style.unit)[row].gauge
            yield Need(_HEAD_OF_ROW[row], gauge, length, count, use, stage, False, meeting.passed, meeting.into)
    brads = back_brads(cabinet)
    for name, counts in brads_into(cabinet).items():
        back = cabinet.by_name[name]
        for on, count in counts.items():
            into = cabinet.by_name[on]
            use, gauge = f"{_called(back)} to {_called(into)}", GAUGE[cabinet.style.unit]
            yield Need(BRAD, gauge, brads[name].length, count, use, back.stage, False, back, into)


BRAD = "brad"
"""What a need of brads has for a head."""


def _called(board: Board) -> str:
    return board.role or board.name


def unfitted(cabinet: Cabinet) -> tuple[Meeting, ...]:
    """Meetings for which no screw of the table will do."""
    return tuple(meeting for meeting in meetings(cabinet) if _screw_for(meeting, cabinet)[1] is None)


def _screw_for(meeting: Meeting, cabinet: Cabinet) -> tuple[str, int | None]:
    """The row of the table and the longest of its screws that fits."""
    if not meeting.end:
        return face_screw(meeting.thick, _thin(meeting.into, cabinet), cabinet.style.unit)
    return end_screw(meeting.thick, cabinet.style.unit)


def screw_lines(cabinet: Cabinet, spare: int) -> Iterator[Line]:
    """One line for each head, gauge and length, `spare` percent over the count, up to a whole screw."""
    found: dict[tuple[str, str, int], list[Need]] = {}
    for need in (*planned(cabinet), *estimated(cabinet)):
        found.setdefault((need.head, need.gauge, need.length), []).append(need)
    writing = Writing(cabinet.style)
    for (head, gauge, length), needs in sorted(found.items(), key=lambda item: item[0]):
        count = sum(need.count for need in needs)
        guessed = sum(need.count for need in needs if not need.counted)
        yield Line(
            "screw",
            f"{head} {gauge} x {writing.length(length)}" if head == BRAD else
            f"{head} screw {gauge} x {writing.length(length)}",
            Decimal(count),
            "each",
            Decimal(-(-count * spare // 100)),
            (length, 0, 0),
            min(need.stage for need in needs),
            estimate=f"{guessed} of {count} estimated" if guessed else "",
            uses=_uses(needs),
        )


def _uses(needs: Iterable[Need]) -> str:
    counts: dict[str, int] = {}
    for need in needs:
        counts[need.use] = counts.get(need.use, 0) + need.count
    return ", ".join(f"{count} for {use}" for use, count in counts.items())
