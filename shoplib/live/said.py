"""The sentences of a panel, its findings and the line above its picture, with lengths that can be asked for."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cache

from shoplib.checks import LEVELS
from shoplib.measure import Style
from shoplib.measure.noted import Notes, Sentence
from shoplib.model.solved import Finding
from shoplib.words.working import working_of

SENTENCES = ("finding", "message")
"""How the names of lengths in sentences begin."""


@dataclass(frozen=True, slots=True)
class Said:
    """What a panel says of one set of values; its sentences know their lengths. Findings stand as they are shown."""

    findings: tuple[Finding, ...]
    message: Sentence


def said(notes: Notes, findings: Iterable[Finding], message: str) -> Said:
    """The sentences that were written while the notes were taken: the gravest finding first."""
    told = [replace(finding, text=notes.told(finding.text)) for finding in findings]
    return Said(tuple(sorted(told, key=lambda each: LEVELS.index(each.level))), notes.told(message))


def why_said(
    shown: Said, again: Callable[[], Said], style: Style, why: Callable[[str], tuple[str, ...]] | None = None,
) -> Callable[[str], tuple[str, ...]]:
    """An answer to "why" for a panel: for a length of a finding, "finding/NUMBER/LENGTH", or of the line above the
    picture, "message/LENGTH", both counted from 0; `why` has the answers for all others.

    `again` says the same of the same values on numbers that carry their working; it is called when the first is asked.

    >>> from shoplib.measure import INCH, INCH_STYLE, write_brief
    >>> from shoplib.measure.noted import noting
    >>> from shoplib.measure.traced import leaf
    >>> def say(width: int) -> Said:
    ...     with noting() as notes:
    ...         return said(notes, (), f"It is {write_brief(width - INCH, INCH_STYLE)} wide inside.")
    >>> why_said(say(9 * INCH), lambda: say(leaf(9 * INCH, "case width")), INCH_STYLE)("message/0")
    ('this length 8 in = case width 9 in - 1 in',)
    """
    once = cache(again)

    def explain(name: str) -> tuple[str, ...]:
        kind, *place = name.split("/")
        if kind not in SENTENCES:
            if why is None:
                raise LookupError(f"the panel shows no size {name!r}")
            return why(name)
        sentence, traced = (_sentence(told, place[:-1]) for told in (shown, once()))
        if traced != sentence:
            raise LookupError(f"{sentence!r} is said otherwise of numbers that carry their working: {traced!r}")
        length = int(place[-1])
        start, end, _ = sentence.lengths[length]
        return _lines(traced.lengths[length].ticks, sentence[start:end], style)

    return explain


def same_length(name: str, before: Said, now: Said) -> str:
    """By which name the length that went by `name` goes `now`: "" where no sentence tells it any more.

    It is the same where a finding about the same boards, or the message, comes to it in the same words, wherever the
    finding stands in the list. Names of other sizes stay.

    >>> from shoplib.measure.noted import Stands
    >>> one, other = (Finding("fit", "note", (board,), Sentence("3 mm", (Stands(0, 4, None),)), 0) for board in "ab")
    >>> same_length("finding/0/0", Said((other,), Sentence("")), Said((one, other), Sentence("")))
    'finding/1/0'
    """
    kind, *place = name.split("/")
    if kind not in SENTENCES:
        return name
    length = int(place[-1])
    if kind == "message":
        return name if now.message.up_to(length) == before.message.up_to(length) else ""

    def about(finding: Finding) -> tuple[object, ...]:
        return finding.check, finding.boards, finding.text.up_to(length)

    number = int(place[0])
    sought = about(before.findings[number])
    earlier = sum(about(finding) == sought for finding in before.findings[:number])
    alike = [number for number, finding in enumerate(now.findings) if about(finding) == sought]
    return f"finding/{alike[earlier]}/{length}" if earlier < len(alike) else ""


def _sentence(told: Said, number: Sequence[str]) -> Sentence:
    """A finding by its number, the message where there is none."""
    return told.findings[int(number[0])].text if number else told.message


def _lines(ticks: int | None, written: str, style: Style) -> tuple[str, ...]:
    if ticks is None:
        return (f"this length {written} = fixed by the workbook: nothing that you measured or chose changes it",)
    return working_of(ticks, f"this length {written}", style)
