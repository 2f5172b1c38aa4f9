"""`python3 -m shoplib check FILE LIST.csv`: a typed cut list against the project, line by line."""

import sys
import textwrap

from shoplib.checks import check
from shoplib.documents.hand_list import ListError, read_hand_list
from shoplib.documents.project_file import ProjectFileError, read_project
from shoplib.lists.compare import Difference, compare
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject

AGREES, DIFFERS, UNREADABLE = 0, 1, 2


def run(file: str, list_file: str) -> int:
    """Print what differs and what it would do; return 0 agrees, 1 differs, 2 cannot be read."""
    try:
        cabinet = solve(read_project(file))
        rows = read_hand_list(list_file)
    except (ProjectFileError, ImpossibleProject, ListError) as fault:
        print(fault, file=sys.stderr)
        return UNREADABLE
    differences = compare(cabinet, rows, check)
    print(report(differences, len(rows), len(cabinet.boards)))
    return DIFFERS if differences else AGREES


def report(differences: tuple[Difference, ...], rows: int, boards: int) -> str:
    """The differences as text: each line's own sentence, then what it would do.

    >>> print(report((), 5, 12))
    The list agrees with the plan: 5 lines, 12 boards.
    """
    if not differences:
        return f"The list agrees with the plan: {rows} lines, {boards} boards."
    text = ["The list differs from the plan.", ""]
    for difference in differences:
        for line, sentence in difference.lines:
            text += _wrapped(sentence if line is None else f"Line {line}: {sentence}", "")
        if difference.slip:
            text += _wrapped(_would(difference), "  ")
        elif difference.would:
            text += _wrapped(f"{_capital('; '.join(difference.would))}.", "  ")
        text.append("")
    return "\n".join(text).rstrip()


def _would(difference: Difference) -> str:
    found = "; ".join(difference.would) or "by itself this stops nothing: the rest still goes together"
    return _capital(f"{difference.slip}: {found}.")


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _wrapped(text: str, indent: str) -> list[str]:
    return textwrap.wrap(text, 100, initial_indent=indent, subsequent_indent=f"{indent}  ")
