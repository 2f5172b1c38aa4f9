"""A plan in words: the verdict, what to do in which order, and what the checks found."""

import textwrap
from collections.abc import Iterable, Sequence

from shoplib.lists.alike import told_of_each, told_once
from shoplib.model.board import CASE, FRONTS
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.stages import STAGES

LEVELS = {"stop": "Stop", "warn": "Look", "note": "Note"}
"""The word for each level, the gravest first; the pages use the same."""

READ_AGAIN = (
    "What you read again goes under [measured.openings_again], for which to_measure.toml has the lines. Leave the "
    "first readings as they are: the boxes are cut to them."
)
"""Where second readings are written; without the first ones nobody could tell how large a box was cut."""

MOST = 6
"""So many notes of one group are read on a screen; the rest stands in the file."""


def verdict(cabinet: Cabinet, findings: Iterable[Finding], in_use: Iterable[Finding] = ()) -> str:
    """One line: how many boards, whether they go together, how much there is to read.

    `in_use` is what was found of the case in use; of it only what is to be looked at is counted here.

    >>> verdict(Cabinet("case", (), {}), [Finding("stock", "warn", (), "No thickness was measured.")])
    '0 boards; the dry-fit stops at nothing; 1 thing to look at.'
    """
    findings = tuple(findings)
    told = {level: len(_told(findings, level)) for level in LEVELS}
    stops = "; STOP: they do not go together yet" if told["stop"] else "; the dry-fit stops at nothing"
    more = [_counted(told["stop"], "thing to mend", "things to mend")] if told["stop"] else []
    if told["warn"]:
        more.append(_counted(told["warn"], "thing to look at", "things to look at"))
    if told["note"]:
        more.append(_counted(told["note"], "note", "notes"))
    in_use = len(_told(tuple(in_use), "warn"))
    if in_use:
        more.append(f"{_counted(in_use, 'thing', 'things')} to look at in use")
    boards = _counted(len(cabinet.boards), "board", "boards")
    return f"{boards}{stops}{'; ' if more else ''}{', '.join(more)}."


def order_of_work(cabinet: Cabinet, example: str, width: int = 79) -> str:
    """Stage by stage: what may be cut now, what waits for a measurement and for which; how it is written down.

    `example` is one measurement as it is written; it is shown where something waits.
    """
    lines = ["What to cut and measure, in order"]
    for stage in sorted({board.stage for board in cabinet.boards}):
        boards = _counted(sum(board.stage == stage for board in cabinet.boards), "board", "boards")
        waits = told_of_each(one.text for one in cabinet.waiting if one.stage == stage)
        again = told_of_each(one.text for one in cabinet.again) if stage == FRONTS else []
        then = "Before cutting, measure" if waits else "May be cut."
        if again and not waits:
            then = "Before cutting, measure again"
        if stage == CASE and cabinet.waiting:
            then = "May be cut. Put the case together, then measure it."
        if stage < cabinet.first_stage:
            then = "Already cut."
        lines += _wrapped(f"Stage {stage}, {STAGES[stage]}: {boards}. {then}", "  ", width)
        lines += [line for text in [*waits, *again] for line in _wrapped(text, "    - ", width)]
    if cabinet.waiting:
        how = "The file to_measure.toml has a line for each. Fill it in, copy it into your project file, such as"
        lines += _wrapped(how, "  ", width)
        lines += ["", "    [measured.openings]", f"    {example}", ""] if example else []
        lines += ["  and plan again: the sizes of stages 2 and 3 follow what you measured."]
    elif cabinet.again:
        lines += _wrapped(READ_AGAIN, "  ", width)
    return "\n".join([*lines, ""])


def findings_text(findings: Iterable[Finding], width: int = 79, most: int | None = None, rest_in: str = "") -> str:
    """What the checks found, the gravest first; what is found alike of several drawers is told once.

    With `most`, only so many notes of a group are shown, and the file `rest_in` is named for the rest.

    >>> found = (Finding("stock", "note", (), "No size is given for the case sheet."),)
    >>> print(findings_text(found))
    Note (1)
      - No size is given for the case sheet.
    <BLANKLINE>
    """
    findings = tuple(findings)
    changed = [f for f in findings if f.level == "note" and f.check == "as measured"]
    others = [f for f in findings if f not in changed]
    groups = [(level, word, _told(others, level)) for level, word in LEVELS.items()]
    groups.insert(-1, ("note", "Note: changed because of what you measured", _told(changed, "note")))
    lines = []
    for level, word, told in groups:
        if not told:
            continue
        shown = told[:most] if level == "note" else told
        lines.append(f"{word} ({len(told)})")
        lines += [line for text in shown for line in _wrapped(text, "  - ", width)]
        if len(shown) < len(told):
            lines.append(f"  - ... and {len(told) - len(shown)} more in {rest_in}")
        lines.append("")
    return "\n".join(lines)


def in_use_text(findings: Iterable[Finding], width: int = 79, rest_in: str = "") -> str:
    """Will it hold, will it move: what was found of the case in use, what is to be looked at first.

    With `rest_in`, the name of a file, only that is shown, and whether it tips in any case; the file has the rest.

    >>> print(in_use_text([Finding("sag", "warn", (), "The shelf sags too much.")]))
    In use: will it hold, will it move (1)
      - Look: The shelf sags too much.
    <BLANKLINE>
    """
    findings = tuple(findings)
    told = _said(findings)
    if not told:
        return ""
    first = tuple(finding for finding in findings if finding.level == "warn" or finding.check == "tipping")
    shown = _said(first) if rest_in else told
    lines = [f"In use: will it hold, will it move ({len(told)})"]
    lines += [line for text in shown for line in _wrapped(text, "  - ", width)]
    if len(shown) < len(told):
        lines.append(f"  - ... and {_counted(len(told) - len(shown), 'note', 'notes')} in {rest_in}")
    return "\n".join([*lines, ""])


def _said(findings: Sequence[Finding]) -> list[str]:
    """The warnings, called so, then the notes."""
    return [*(f"{LEVELS['warn']}: {text}" for text in _told(findings, "warn")), *_told(findings, "note")]


def _told(findings: Sequence[Finding], level: str) -> list[str]:
    return told_once([finding.text for finding in findings if finding.level == level])


def _counted(count: int, one: str, more: str) -> str:
    return f"{count} {one if count == 1 else more}"


def _wrapped(text: str, indent: str, width: int) -> list[str]:
    hanging = " " * len(indent)
    return textwrap.wrap(text, width, initial_indent=indent, subsequent_indent=hanging, break_on_hyphens=False)
