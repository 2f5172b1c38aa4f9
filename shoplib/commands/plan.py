"""`python3 -m shoplib plan FILE --to FOLDER`: a project file becomes a dry-fitted plan in a folder."""

import sys
import textwrap
from pathlib import Path

from shoplib.checks import check
from shoplib.documents.atomic import WriteError, write_files
from shoplib.documents.cut_list_file import cut_list_csv, cut_list_text
from shoplib.documents.drawings import drawing_files
from shoplib.documents.plan_file import plan_text
from shoplib.documents.project_file import ProjectFileError, read_project
from shoplib.lists.alike import told_once
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject
from shoplib.model.solved import Finding

DRY_FITTED, STOPPED, NO_PLAN = 0, 1, 2

_LEVELS = {"stop": "Stop", "warn": "Look at this", "note": "Note"}


def run(file: str, to: str) -> int:
    """Write the plan and print its cut list; return 0 dry-fitted, 1 a check says stop, 2 no plan.

    With 2 nothing is written, and one sentence says why.
    """
    try:
        cabinet = solve(read_project(file))
        findings = check(cabinet)
        files = {
            "plan.json": plan_text(cabinet, findings).encode(),
            "cut_list.csv": cut_list_csv(cabinet, findings).encode(),
            **drawing_files(cabinet, findings),
        }
        write_files(to, files)
    except (ProjectFileError, ImpossibleProject, WriteError) as fault:
        print(fault, file=sys.stderr)
        return NO_PLAN
    print(cut_list_text(cabinet))
    print(findings_text(findings))
    print(_where(Path(to), list(files)))
    if any(finding.level == "stop" for finding in findings):
        print("\nThe boards exist, but they do not go together yet: see under Stop, and cut nothing before.")
        return STOPPED
    return DRY_FITTED


def findings_text(findings: tuple[Finding, ...]) -> str:
    """What the checks found, the gravest first; what is found alike of several drawers is told once.

    >>> found = (Finding("stock", "note", (), "No size is given for the case sheet."),)
    >>> print(findings_text(found))
    Dry-fit
    <BLANKLINE>
      Note: No size is given for the case sheet.
    <BLANKLINE>
    """
    lines = ["Dry-fit", ""]
    for level, word in _LEVELS.items():
        for text in told_once([finding.text for finding in findings if finding.level == level]):
            lines += textwrap.wrap(f"{word}: {text}", 100, initial_indent="  ", subsequent_indent="    ")
    return "\n".join([*lines, ""])


def _where(folder: Path, names: list[str]) -> str:
    """What was written, and which drawings in the folder are left from an earlier plan."""
    drawings = [name for name in names if name.endswith(".svg")]
    text = [f"Written into {folder}:"]
    text += [f"  {name}" for name in names if name not in drawings]
    text.append(f"  {len(drawings)} drawings, each as an SVG")
    left = sorted(path.name for path in folder.glob("*.svg") if path.name not in drawings)
    if left:
        many = f" and {len(left) - 3} more" if len(left) > 3 else ""
        text.append(f"Not of this plan, and best taken out of the folder: {', '.join(left[:3])}{many}.")
    return "\n".join(text)
