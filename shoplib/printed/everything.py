"""All that is printed for the bench, file by file, each page with the same stamp."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

from shoplib.buying.laid import LaidOut
from shoplib.checks import check
from shoplib.checks.in_use import check_in_use
from shoplib.documents.before_cutting import STOPPED
from shoplib.documents.cut_list_file import cut_list_csv
from shoplib.documents.cut_order_file import cut_order_csv
from shoplib.documents.decimal_comma import with_decimal_comma, with_decimal_point
from shoplib.documents.paper import AT_FULL_SIZE, PAPERS, USUAL, Paper
from shoplib.documents.plan_file import plan_text
from shoplib.documents.plan_words import verdict
from shoplib.documents.project_file import read_project
from shoplib.documents.project_text import project_text
from shoplib.documents.sheets_file import sheets_text
from shoplib.documents.to_measure import to_measure_text
from shoplib.draw.pen import draw
from shoplib.draw.whole_view import whole_scenes
from shoplib.layout.pieces import LayoutError
from shoplib.lists.alike import told_once
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.plan.plan_set import TITLE, plan_set
from shoplib.printed.true_scale.labels import label_pages
from shoplib.printed.true_scale.story_stick import story_stick_pages
from shoplib.printed.true_scale.template_pages import template_files, template_pages
from shoplib.printed.typeset.set_in_type import set_in_type
from shoplib.printed.typeset.stamp import Stamp, fingerprint

ABOUT = {
    "plan_set.pdf": "the plan set: cautions, cut list, sheets, boards, build order",
    "labels.pdf": "a label for each part",
    "story_stick.pdf": "heights and widths as marks, and spacers, in true scale",
    "templates.pdf": "templates for pulls, slides and holes, in true scale",
    "assembled-view.svg": "the whole, closed, to look at",
    "exploded-view.svg": "the whole drawn apart, each part named",
    "cut_list.csv": "the cut list, for a spreadsheet that writes 12.5",
    "cut_list_comma.csv": "the same for one that writes 12,5",
    "cut_order.csv": "all cuts in their order, for a spreadsheet",
    "to_measure.toml": "what to measure on the case as built, to fill in",
}
"""What is in the files, in one line each."""

TRUE_SCALE = f"True scale: print {AT_FULL_SIZE}; measure the bars."

TEMPLATES = "templates/"
"""The folder of the templates as SVG, in the folder that is printed into."""

WRITTEN_SIZES = "Work to the written sizes; do not measure from the paper."


@dataclass(frozen=True, slots=True)
class Printed:
    """A project as it is printed: the verdict of its plan, what stops it by the checks, and all files by name.

    `not_laid_out` is empty, or the sentence that says why its boards are on no sheet.
    """

    stamp: Stamp
    verdict: str
    stops: tuple[str, ...]
    paper: Paper
    files: dict[str, bytes]
    not_laid_out: str = ""


def print_project(
    file: Path | str, paper: Paper | None, date: str, lay_out: Callable[[Cabinet], LaidOut]
) -> Printed:
    """Solve, check, lay out and print a project file; nothing is written yet.

    `paper` None is that of the project's unit. A cabinet that `lay_out` refuses is printed without its sheets.
    Raises ProjectFileError or ImpossibleProject, each one sentence.
    """
    cabinet = solve(read_project(file))
    findings, in_use = check(cabinet), check_in_use(cabinet)
    paper = paper or PAPERS[USUAL[cabinet.style.unit]]
    found, refused = None, ""
    try:
        found = lay_out(cabinet)
    except (LayoutError, ImpossibleProject) as fault:
        refused = str(fault)
    stops = told_once([finding.text for finding in findings if finding.level == "stop"])
    return Printed(
        stamp_of(cabinet, findings, in_use, found, date), verdict(cabinet, findings, in_use), tuple(stops), paper,
        print_files(cabinet, findings, in_use, found, paper, date, refused), refused,
    )


def stamp_of(
    cabinet: Cabinet, findings: Iterable[Finding], in_use: Iterable[Finding], found: LaidOut | None, date: str = ""
) -> Stamp:
    """What marks each page: its fingerprint is that of the project, of the plan and of the sheets as they are laid out.

    Paper and date have no part in it: a page on another paper or of another day is of the same plan. A finding of level
    stop puts the warning across each page.
    """
    findings = tuple(findings)
    contents = [
        project_text(cabinet.project), plan_text(cabinet, findings, in_use), *([sheets_text(found)] if found else []),
    ]
    stopped = STOPPED if any(finding.level == "stop" for finding in findings) else ""
    return Stamp(cabinet.name, fingerprint(*contents), date, stopped)


def print_files(
    cabinet: Cabinet, findings: Iterable[Finding], in_use: Iterable[Finding], found: LaidOut | None, paper: Paper,
    date: str = "", refused: str = "",
) -> dict[str, bytes]:
    """File name to content. The same plan, layouts, paper and date give the same bytes.

    `findings` are those of `check`, `in_use` those of `check_in_use`, `found` is the cabinet laid out, None where it
    cannot be; `refused` says why.
    """
    findings, in_use = tuple(findings), tuple(in_use)
    stamp = stamp_of(cabinet, findings, in_use, found, date)
    table, to_measure = cut_list_csv(cabinet, findings), to_measure_text(cabinet)
    pages = plan_set(cabinet, findings, in_use, found, paper, refused)
    return {
        "plan_set.pdf": set_in_type(TITLE, pages, stamp, paper, WRITTEN_SIZES),
        "labels.pdf": set_in_type("Labels", label_pages(cabinet, stamp), stamp, paper, WRITTEN_SIZES),
        "story_stick.pdf": set_in_type(
            "Story stick", story_stick_pages(cabinet, paper, stamp), stamp, paper, TRUE_SCALE,
        ),
        "templates.pdf": set_in_type("Templates", template_pages(cabinet, paper, stamp), stamp, paper, TRUE_SCALE),
        **{f"{TEMPLATES}{name}": svg.encode() for name, svg in template_files(cabinet, stamp).items()},
        **{f"{name}.svg": draw(scene).encode() for name, scene in whole_scenes(cabinet)},
        "cut_list.csv": with_decimal_point(table),
        "cut_list_comma.csv": with_decimal_comma(table),
        **({"cut_order.csv": with_decimal_point(cut_order_csv(found))} if found else {}),
        **({"to_measure.toml": to_measure.encode()} if to_measure else {}),
    }
