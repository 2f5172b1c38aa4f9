"""`python3 -m shoplib plan FILE --to FOLDER`: a project file becomes a dry-fitted plan in a folder."""

import sys
from pathlib import Path

from shoplib.checks import check
from shoplib.checks.in_use import check_in_use
from shoplib.documents.asked import NotUnderstood, folder_called
from shoplib.documents.atomic import WriteError, write_files
from shoplib.documents.cautions import cautions_text
from shoplib.documents.cut_list_file import cut_list_csv, cut_list_text
from shoplib.documents.decimal_comma import with_decimal_comma, with_decimal_point
from shoplib.documents.drawings import drawing_files
from shoplib.documents.filled_in import filled_in_by_hand
from shoplib.documents.glossary import words_text
from shoplib.documents.plan_file import plan_text
from shoplib.documents.plan_words import MOST, findings_text, in_use_text, order_of_work, verdict
from shoplib.documents.project_file import ProjectFileError, read_project
from shoplib.documents.to_measure import TO_MEASURE, example_line, to_measure_text
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import some_of

DRY_FITTED, STOPPED, NO_PLAN = 0, 1, 2

_LIST, _COMMA = "cut_list.txt", "cut_list_comma.csv"
_ABOUT = {
    _LIST: "the cut list to read: boards, cuts, sums, what was found",
    "cut_list.csv": "the cut list, for a spreadsheet that writes 12.5",
    _COMMA: "the same for one that writes 12,5",
    TO_MEASURE: "what to measure before stages 2 and 3, to fill in",
    "drawings.pdf": "all drawings, to print",
    "plan.json": "everything, for other programs",
}


def run(file: str, to: str) -> int:
    """Write the plan and print what to do with it; return 0 dry-fitted, 1 a check says stop, 2 no plan.

    With 2 nothing is written, and one sentence says why.
    """
    try:
        folder_called(to, "my_case")
        cabinet = solve(read_project(file))
        findings, in_use = check(cabinet), check_in_use(cabinet)
        to_measure, table = to_measure_text(cabinet), cut_list_csv(cabinet, findings)
        files = {
            _LIST: _list_text(cabinet, findings, in_use).encode(),
            "cut_list.csv": with_decimal_point(table),
            _COMMA: with_decimal_comma(table),
            **({TO_MEASURE: to_measure.encode()} if to_measure else {}),
            "plan.json": plan_text(cabinet, findings, in_use).encode(),
            **drawing_files(cabinet, findings),
        }
        yours = filled_in_by_hand(Path(to), files)
        write_files(to, {**yours, **files})
    except (ProjectFileError, ImpossibleProject, NotUnderstood, WriteError) as fault:
        print(fault, file=sys.stderr)
        return NO_PLAN
    stopped = any(finding.level == "stop" for finding in findings)
    found = findings_text(findings, most=MOST, rest_in=_LIST)
    judged = verdict(cabinet, findings, in_use)
    parts = [f"{cabinet.name}\n{judged}\n"]
    if not stopped:
        parts.append(order_of_work(cabinet, example_line(cabinet)))
    used = in_use_text(in_use, rest_in=_LIST)
    parts += [found, used, words_text([*parts, found, used]), _where(Path(to), list(files))]
    if yours:
        parts.append(f"What you had filled in there is kept: {some_of(list(yours))}.\n")
    if stopped:
        parts.append("The boards exist, but they do not go together yet: see under Stop,\nand cut nothing before.\n")
    print("\n".join(filter(None, [*parts, judged])))
    return STOPPED if stopped else DRY_FITTED


def _list_text(cabinet: Cabinet, findings: tuple[Finding, ...], in_use: tuple[Finding, ...]) -> str:
    """The list to take along: the verdict, the boards, what was found, the words that may be new, the cautions."""
    listed, found = cut_list_text(cabinet), findings_text(findings, width=100)
    used = in_use_text(in_use, width=100)
    parts = [verdict(cabinet, findings, in_use) + "\n", listed, f"Dry-fit\n\n{found}", used]
    parts.append(words_text([listed, found, used]))
    parts.append(cautions_text(cabinet))
    return "\n".join(filter(None, parts))


def _where(folder: Path, names: list[str]) -> str:
    """What was written, and what in the folder is left from an earlier plan."""
    drawings = [name for name in names if name.endswith(".svg")]
    text = [f"Written into {folder}"]
    text += [f"  {name:19}{about}" for name, about in _ABOUT.items() if name in names]
    text.append(f"  {'*.svg':19}{len(drawings)} drawings, one by one")
    left = sorted(path.name for path in [*folder.glob("*.svg"), folder / TO_MEASURE] if path.name not in names)
    left = [name for name in left if (folder / name).exists()]
    if left:
        text.append(f"Not of this plan, and best taken out of the folder: {some_of(left)}.")
    return "\n".join([*text, ""])
