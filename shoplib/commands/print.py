"""`python3 -m shoplib print FILE --to FOLDER`: everything that a person needs on paper in the shop."""

import sys
import textwrap
from pathlib import Path

from shoplib.commands.progress import laid_out_told
from shoplib.documents.asked import NotUnderstood, date_printed, folder_called, paper_called
from shoplib.documents.atomic import WriteError
from shoplib.documents.paper import PAPERS
from shoplib.documents.project_file import ProjectFileError
from shoplib.model.project import ImpossibleProject
from shoplib.printed.everything import print_project
from shoplib.printed.into_folder import Told, put_into, try_to_print_into

PRINTED, STOPPED, NOTHING = 0, 1, 2


def run(file: str, to: str, paper: str, date: str, seconds: str) -> int:
    """Print into the folder `to`; return 0 printed, 1 printed but a check says stop, 2 nothing is written.

    `paper` is the name of one, or empty for that of the project's unit. What is wrong is told on the error stream.

    >>> from contextlib import redirect_stderr
    >>> with redirect_stderr(sys.stdout):
    ...     run("my_case.toml", "my_prints/my_case", "a7", "", "10")
    There is no paper "a7": there are letter and a4.
    2
    """
    try:
        asked = PAPERS[paper_called(paper)] if paper else None
        date = date_printed(date)
        try_to_print_into(folder_called(to, "my_prints/my_case"))
        printed = print_project(file, asked, date, lambda cabinet: laid_out_told(cabinet, seconds))
    except (ProjectFileError, ImpossibleProject, NotUnderstood, WriteError) as fault:
        print(_filled(fault), file=sys.stderr)
        return NOTHING
    except KeyboardInterrupt:
        print("Stopped; nothing is written.", file=sys.stderr)
        return NOTHING
    try:
        told = put_into(Path(to), printed, to)
    except WriteError as fault:
        print(_filled(fault), file=sys.stderr)
        return NOTHING
    print("\n".join(_lines(told)))
    return STOPPED if printed.stops else PRINTED


def _lines(told: Told) -> list[str]:
    files = [f"  {name:20}{about}" for name, about in told.files]
    return [*told.verdict, "", told.where, *files, "", *map(_filled, told.afterwards)]


def _filled(text: object) -> str:
    return textwrap.fill(str(text), 79, break_long_words=False, break_on_hyphens=False)
