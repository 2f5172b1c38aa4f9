"""`python3 -m shoplib check FILE LIST.csv`: a typed cut list against the project, line by line."""

import sys
import textwrap

from shoplib.checks import check
from shoplib.checks.in_use import check_in_use
from shoplib.documents.hand_list import ListError, read_hand_list
from shoplib.documents.plan_words import in_use_text
from shoplib.documents.project_file import ProjectFileError, read_project
from shoplib.lists.compare import Comparison, Difference, compare
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject

AGREES, DIFFERS, UNREADABLE = 0, 1, 2
_WIDE = 100


def run(file: str, list_file: str) -> int:
    """Print what differs and what it would do; return 0 agrees, 1 differs, 2 cannot be read.

    What was found of the planned case in use stands below it, and changes nothing of what is returned.
    """
    try:
        cabinet = solve(read_project(file))
        typed = read_hand_list(list_file)
    except (ProjectFileError, ImpossibleProject, ListError) as fault:
        print(fault, file=sys.stderr)
        return UNREADABLE
    comparison = compare(cabinet, typed.rows, check)
    for sentence in typed.unreadable:
        print(sentence, file=sys.stderr)
    if typed.unreadable:
        if comparison.differences:
            print(report(comparison, len(typed.rows), len(cabinet.boards), "What can be read differs from the plan."))
        return UNREADABLE
    print(report(comparison, len(typed.rows), len(cabinet.boards)))
    if used := in_use_text(check_in_use(cabinet), width=_WIDE, rest_in="cut_list.txt, which plan writes"):
        print(f"\n{used}", end="")
    return DIFFERS if comparison.differences else AGREES


def report(comparison: Comparison, rows: int, boards: int, differs: str = "The list differs from the plan.") -> str:
    """The differences as text: each line's own sentence, then what it would do; last what was compared.

    >>> from shoplib.lists.compared import What
    >>> print(report(Comparison((), What(("cuts", "sheet", "thickness", "edging", "grain"))), 5, 12))
    The list agrees with the plan: 5 lines, 12 boards.
    Compared: names, lengths, widths, cuts, sheet, thickness, edging and grain.
    """
    compared = [line for sentence in comparison.what.told() for line in _wrapped(sentence, "")]
    if not comparison.differences:
        agrees = "agrees with the plan" if comparison.what.whole else "agrees with the plan in what could be compared"
        return "\n".join([f"The list {agrees}: {rows} lines, {boards} boards.", *compared])
    text = [differs, ""]
    for difference in comparison.differences:
        for line, sentence in difference.lines:
            text += _wrapped(sentence if line is None else f"Line {line}: {sentence}", "")
        if difference.slip:
            text += _wrapped(_would(difference), "  ")
        elif difference.would:
            text += _wrapped(f"{_capital('; '.join(difference.would))}.", "  ")
        text.append("")
    return "\n".join([*text, *compared])


def _would(difference: Difference) -> str:
    found = "; ".join(difference.would) or "by itself this stops nothing: the rest still goes together"
    return _capital(f"{difference.slip}: {found}.")


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _wrapped(text: str, indent: str) -> list[str]:
    return textwrap.wrap(text, _WIDE, initial_indent=indent, subsequent_indent=f"{indent}  ")
