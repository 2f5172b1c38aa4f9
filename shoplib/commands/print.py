"""`python3 -m shoplib print FILE --to FOLDER`: everything that a person needs on paper in the shop."""

import sys
import textwrap
from pathlib import Path

from shoplib.buying.laid import LaidOut
from shoplib.checks import check
from shoplib.checks.in_use import check_in_use
from shoplib.commands.progress import laid_out_told, say
from shoplib.documents.asked import NotUnderstood, date_printed, paper_called, paper_name
from shoplib.documents.atomic import WriteError, write_files
from shoplib.documents.plan_words import verdict
from shoplib.documents.project_file import ProjectFileError, read_project
from shoplib.layout.pieces import LayoutError
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject
from shoplib.model.solved import Cabinet
from shoplib.printed.everything import ABOUT, print_files
from shoplib.printed.paper import PAPERS, USUAL

PRINTED, STOPPED, NOTHING = 0, 1, 2

_NOT_YET = "The boards do not go together yet, and every page says so: cut nothing before."
_HOW = (
    "Print at 100 %, not fitted to the page, and lay a rule on the bars of 100 mm. Read the cautions, the first pages "
    "of the plan set, before you cut."
)


def run(file: str, to: str, paper: str, date: str, seconds: str) -> int:
    """Print into the folder `to`; return 0 printed, 1 printed but a check says stop, 2 nothing is written.

    `paper` is the name of one, or empty for that of the project's unit.
    """
    try:
        sheet = PAPERS[paper_called(paper)] if paper else None
        dated = date_printed(date)
        cabinet = solve(read_project(file))
        sheet = sheet or PAPERS[USUAL[cabinet.style.unit]]
        findings, in_use = check(cabinet), check_in_use(cabinet)
        found = _laid_out(cabinet, seconds)
        files = print_files(cabinet, findings, in_use, found, sheet, dated)
        write_files(to, files)
    except (ProjectFileError, ImpossibleProject, NotUnderstood, WriteError) as fault:
        print(_filled(fault), file=sys.stderr)
        return NOTHING
    except KeyboardInterrupt:
        print("Stopped; nothing is written.", file=sys.stderr)
        return NOTHING
    stopped = any(finding.level == "stop" for finding in findings)
    print("\n".join([
        cabinet.name, verdict(cabinet, findings, in_use), "",
        f"Printed into {to} on {paper_name(sheet.name)} paper", *_where(Path(to), files), "",
        _filled(_HOW),
        *([_filled(_NOT_YET)] if stopped else []),
    ]))
    return STOPPED if stopped else PRINTED


def _laid_out(cabinet: Cabinet, seconds: str) -> LaidOut | None:
    """The layouts; None, and a sentence said, where the boards cannot be laid out: all else can be printed."""
    try:
        return laid_out_told(cabinet, seconds)
    except LayoutError as fault:
        say(_filled(f"{fault} The plan set is printed without sheets."))
        return None


def _where(folder: Path, files: dict[str, bytes]) -> list[str]:
    """What was written, and which templates in the folder are left from an earlier plan."""
    lines = [f"  {name:20}{about}" for name, about in ABOUT.items() if name in files]
    templates = [name for name in files if name.startswith("templates/")]
    if templates:
        lines.append(f"  {'templates/*.svg':20}{len(templates)} templates in true scale, in millimetres")
    left = sorted(f"templates/{path.name}" for path in folder.glob("templates/*.svg")
                  if f"templates/{path.name}" not in files)
    if left:
        many = f" and {len(left) - 3} more" if len(left) > 3 else ""
        lines.append(_filled(f"Not of this plan, and best taken out of the folder: {', '.join(left[:3])}{many}."))
    return lines


def _filled(text: object) -> str:
    return textwrap.fill(str(text), 79, break_long_words=False, break_on_hyphens=False)
