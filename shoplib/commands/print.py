"""`python3 -m shoplib print FILE --to FOLDER`: everything that a person needs on paper in the shop."""

import sys
import textwrap
from pathlib import Path

from shoplib.commands.progress import laid_out_told
from shoplib.documents.asked import NotUnderstood, date_printed, paper_called, paper_name
from shoplib.documents.atomic import WriteError, write_files
from shoplib.documents.paper import PAPERS
from shoplib.documents.project_file import ProjectFileError
from shoplib.model.project import ImpossibleProject
from shoplib.printed.everything import ABOUT, HOW_TO_PRINT, NOT_YET, TEMPLATES, left_over, print_project

PRINTED, STOPPED, NOTHING = 0, 1, 2


def run(file: str, to: str, paper: str, date: str, seconds: str) -> int:
    """Print into the folder `to`; return 0 printed, 1 printed but a check says stop, 2 nothing is written.

    `paper` is the name of one, or empty for that of the project's unit.
    """
    try:
        asked = PAPERS[paper_called(paper)] if paper else None
        printed = print_project(file, asked, date_printed(date), lambda cabinet: laid_out_told(cabinet, seconds))
    except (ProjectFileError, ImpossibleProject, NotUnderstood) as fault:
        print(_filled(fault), file=sys.stderr)
        return NOTHING
    except KeyboardInterrupt:
        print("Stopped; nothing is written.", file=sys.stderr)
        return NOTHING
    left = left_over(Path(to), printed.files)
    try:
        write_files(to, printed.files)
    except WriteError as fault:
        print(_filled(fault), file=sys.stderr)
        return NOTHING
    told = [
        printed.name, printed.verdict, "",
        f"Printed into {to} on {paper_name(printed.paper.name)} paper", *_where(printed.files, left), "",
        _filled(HOW_TO_PRINT),
    ]
    if printed.not_laid_out:
        told.append(_filled(f"No sheets are in it: {printed.not_laid_out}"))
    told += [_filled(f"STOP: {text}") for text in printed.stops]
    if printed.stops:
        told.append(_filled(NOT_YET))
    print("\n".join(told))
    return STOPPED if printed.stops else PRINTED


def _where(files: dict[str, bytes], left: list[str]) -> list[str]:
    """What was written, and what in the folder is left from another plan."""
    lines = [f"  {name:20}{about}" for name, about in ABOUT.items() if name in files]
    drawers = [name for name in files if name.endswith(".svg") and "/" not in name and name not in ABOUT]
    if drawers:
        lines.append(f"  {'exploded-*.svg':20}{len(drawers)} more drawn apart, one of each build")
    templates = [name for name in files if name.startswith(TEMPLATES)]
    if templates:
        lines.append(f"  {'templates/*.svg':20}{len(templates)} templates in true scale, in millimetres")
    if left:
        many = f" and {len(left) - 3} more" if len(left) > 3 else ""
        lines.append(_filled(f"Not of this plan, and best taken out of the folder: {', '.join(left[:3])}{many}."))
    return lines


def _filled(text: object) -> str:
    return textwrap.fill(str(text), 79, break_long_words=False, break_on_hyphens=False)
