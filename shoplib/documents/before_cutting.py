"""What must be read before a kind of board is cut: what a check stopped, and what is to be measured first."""

from collections.abc import Iterable

from shoplib.lists.alike import told_of_each, told_once
from shoplib.lists.cut_list import Kind
from shoplib.model.board import FRONTS, Board
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list

STOP, LOOK, MEASURE = "STOP, do not cut", "Look before cutting", "Do not cut before measuring"
"""How each of the three begins: words, so that a grey print says it too."""


STOPPED = "STOP: this plan does not go together yet. Cut nothing from it."
"""On every paper of a plan that a check stops, from whichever command it comes."""


def before_cutting(kind: Kind, cabinet: Cabinet, findings: Iterable[Finding] = ()) -> tuple[str, ...]:
    """The lines that belong on the drawing of a kind of board, the gravest first; none where it may be cut.

    >>> from shoplib.model.placement import Placement
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> front = Board("bay 1 drawer 1 front", "bay 1 drawer 1", 3, "s", 9, 9, 9, place)
    >>> case = Cabinet("case", (front,), {}, waiting=((3, "the opening of bay 1 drawer 1, front and back"),))
    >>> before_cutting(Kind((front,)), case, [Finding("overlap", "stop", (front.name,), "It is in the way.")])
    ('STOP, do not cut: It is in the way.', \
'Do not cut before measuring the opening of bay 1 drawer 1, front and back.')
    """
    findings, names = tuple(findings), set(kind.names)
    lines = []
    for level, begins in (("stop", STOP), ("warn", LOOK)):
        about = [f.text for f in findings if f.level == level and names.intersection(f.boards)]
        lines += [f"{begins}: {text}" for text in told_once(about)]
    waits = [text for stage, text in cabinet.waiting if stage == kind.stage and _is_about(text, kind.boards)]
    if waits:
        lines.append(f"{MEASURE} {_listed(told_of_each(waits))}.")
    again = [text for text in cabinet.again if kind.stage == FRONTS and _is_about(text, kind.boards)]
    if again:
        lines.append(f"{MEASURE} again {_listed(told_of_each(again))}.")
    return tuple(lines)


def measure_first(cabinet: Cabinet) -> tuple[str, ...]:
    """For every stage that waits, one line that says for what."""
    stages = sorted({stage for stage, _ in cabinet.waiting})
    waits = [(stage, "", [text for waiting, text in cabinet.waiting if waiting == stage]) for stage in stages]
    if cabinet.again:
        waits.append((FRONTS, "again ", list(cabinet.again)))
    return tuple(
        f"Stage {stage}: {MEASURE[0].lower()}{MEASURE[1:]} {again}{_listed(told_of_each(texts))}."
        for stage, again, texts in waits
    )


def _listed(told: list[str]) -> str:
    return "; ".join(told) if any("," in text for text in told) else and_list(told)


def _is_about(text: str, boards: Iterable[Board]) -> bool:
    """Whether a sentence such as "the depth of bay 1, from ..." names a board, its drawer or its bay.

    One that names nothing of a cabinet is about every board of its stage.
    """
    subject = text.partition(" of ")[2].partition(",")[0]
    if not subject:
        return True
    names = [name for board in boards for name in (board.name, board.group)]
    return any(name == subject or name.startswith(f"{subject} ") for name in names)
