"""The sentences of a panel, its findings and the line above its picture, with lengths that can be asked for."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cache

from shoplib.checks import LEVELS
from shoplib.measure import Style
from shoplib.measure.noted import Notes, Told
from shoplib.model.solved import Finding
from shoplib.words.working import working_of


@dataclass(frozen=True, slots=True)
class Said:
    """What a panel says of one set of values; its sentences know their lengths. Findings stand as they are shown."""

    findings: tuple[Finding, ...]
    message: Told


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
        if kind not in ("finding", "message"):
            if why is None:
                raise LookupError(f"the panel shows no size {name!r}")
            return why(name)
        sentence, traced = _sentences(shown, once(), place[:-1])
        length = int(place[-1])
        start, end, _ = sentence.lengths[length]
        return _lines(traced.lengths[length].ticks, sentence[start:end], style)

    return explain


def _sentences(shown: Said, again: Said, number: Sequence[str]) -> tuple[Told, Told]:
    """A sentence as it is shown and as it is said again: a finding by its number, without one the message.

    A finding is found again by its words: of several that read alike, it is the same one in their order.
    """
    if not number:
        return shown.message, again.message
    text = shown.findings[int(number[0])].text
    before = sum(finding.text == text for finding in shown.findings[: int(number[0])])
    alike = [finding.text for finding in again.findings if finding.text == text]
    return text, alike[min(before, len(alike) - 1)]


def _lines(ticks: int | None, written: str, style: Style) -> tuple[str, ...]:
    if ticks is None:
        return (f"this length {written} = fixed by the workbook: nothing that you measured or chose changes it",)
    return working_of(ticks, f"this length {written}", style)
