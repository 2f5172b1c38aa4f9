"""What must be read before a kind of board is cut: what a check stopped, and what is to be measured first."""

from collections.abc import Iterable

from shoplib.buying.waiting import is_about, told
from shoplib.lists.alike import told_once
from shoplib.lists.cut_list import Kind
from shoplib.model.board import BOXES, CASE, FRONTS
from shoplib.model.solved import Cabinet, Finding

STOP, LOOK, MEASURE = "STOP, do not cut", "Look before cutting", "Do not cut before measuring"
"""How each of the three begins: words, so that a grey print says it too."""


STOPPED = "STOP: this plan does not go together yet. Cut nothing from it."
"""On every paper of a plan that a check stops, from whichever command it comes."""

ALREADY_CUT = "Already cut."
"""Of a stage whose boards the project says are cut."""


def before_cutting(kind: Kind, cabinet: Cabinet, findings: Iterable[Finding] = ()) -> tuple[str, ...]:
    """The lines that belong on the drawing of a kind of board, the gravest first; none where it may be cut.

    >>> from shoplib.model.board import Board
    >>> from shoplib.model.part_of import PartOf
    >>> from shoplib.model.placement import Placement
    >>> from shoplib.model.solved import Awaited
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> front = Board("bay 1 drawer 1 front", "bay 1 drawer 1", 3, "s", 9, 9, 9, place, part_of=PartOf(1, "drawer", 1))
    >>> case = Cabinet("case", (front,), {}, waiting=(Awaited(3, "opening", front.group, "front and back"),))
    >>> before_cutting(Kind((front,)), case, [Finding("overlap", "stop", (front.name,), "It is in the way.")])
    ('STOP, do not cut: It is in the way.', \
'Do not cut before measuring the opening of bay 1 drawer 1, front and back.')
    """
    lines = [*found_on(kind.names, cabinet, findings)]
    for begins, readings in ((MEASURE, cabinet.waiting), (f"{MEASURE} again", cabinet.again)):
        if waits := [one for one in readings if one.stage == kind.stage and is_about(one, kind.boards, cabinet)]:
            lines.append(f"{begins} {told(waits)}.")
    return tuple(lines)


def found_on(names: Iterable[str], cabinet: Cabinet, findings: Iterable[Finding]) -> tuple[str, ...]:
    """What a check stopped of these boards, then what is to be looked at, before they are cut or though they are cut.

    >>> from shoplib.model.board import Board
    >>> from shoplib.model.placement import Placement
    >>> side = Board("side", "case", 1, "s", 9, 9, 9, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> found = [Finding("overlap", level, ("side",), "It is in the way.") for level in ("warn", "note")]
    >>> found_on(["side"], Cabinet("case", (side,), {}), found)
    ('Look before cutting: It is in the way.',)
    """
    findings, names, lines = tuple(findings), set(names), []
    cut = {board.name for board in cabinet.boards if board.stage < cabinet.first_stage}
    for level, begins, though_cut in (("stop", STOP, "STOP"), ("warn", LOOK, "Look")):
        about = [f for f in findings if f.level == level and names.intersection(f.boards)]
        done = [f for f in about if names.intersection(f.boards) <= cut]
        lines += [f"{begins}: {text}" for text in told_once([f.text for f in about if f not in done])]
        lines += [f"{though_cut}: {text}" for text in told_once([f.text for f in done])]
    return tuple(lines)


def measure_first(cabinet: Cabinet, stages: Iterable[int] = (CASE, BOXES, FRONTS)) -> tuple[str, ...]:
    """For every one of these stages that waits, one line that says for what."""
    asked = set(stages)
    stages = sorted(asked.intersection(one.stage for one in cabinet.waiting))
    waits = [(stage, "", [one for one in cabinet.waiting if one.stage == stage]) for stage in stages]
    if cabinet.again and FRONTS in asked:
        waits.append((FRONTS, "again ", list(cabinet.again)))
    return tuple(
        f"Stage {stage}: {MEASURE[0].lower()}{MEASURE[1:]} {again}{told(readings)}." for stage, again, readings in waits
    )
