"""All that is printed for the bench, file by file, each page with the same stamp."""

from collections.abc import Callable
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
from shoplib.documents.to_measure import TO_MEASURE, to_measure_text
from shoplib.documents.typeset import signs_without_letter
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
    TO_MEASURE: "what to measure on the case as built, to fill in",
}
"""What is in the files, in one line each."""

TRUE_SCALE = f"True scale: print {AT_FULL_SIZE}; measure the bars."

TEMPLATES = "templates/"
"""The folder of the templates as SVG, in the folder that is printed into."""

WRITTEN_SIZES = "Work to the written sizes; do not measure from the paper."


@dataclass(frozen=True, slots=True)
class Planned:
    """A cabinet with all that is known of it: findings of `check` and of `check_in_use`, and how it is laid out.

    `found` is None where it cannot be laid out; `refused` is the sentence that says why.
    """

    cabinet: Cabinet
    findings: tuple[Finding, ...]
    in_use: tuple[Finding, ...]
    found: LaidOut | None
    refused: str = ""

    @property
    def stops(self) -> tuple[str, ...]:
        """What stops it by the checks, each once."""
        return tuple(told_once([finding.text for finding in self.findings if finding.level == "stop"]))


@dataclass(frozen=True, slots=True)
class Printed:
    """A project as it is printed: its stamp, the verdict of its plan, what stops it by the checks, all files by name.

    `not_laid_out` is empty, or the sentence that says why its boards are on no sheet; `no_letters` are the signs of its
    names that the papers cannot print.
    """

    stamp: Stamp
    verdict: str
    stops: tuple[str, ...]
    paper: Paper
    files: dict[str, bytes]
    not_laid_out: str = ""
    no_letters: tuple[str, ...] = ()


def print_project(
    file: Path | str, paper: Paper | None, date: str, lay_out: Callable[[Cabinet], LaidOut]
) -> Printed:
    """Solve, check, lay out and print a project file; nothing is written yet.

    `paper` None is that of the project's unit. A cabinet that `lay_out` refuses is printed without its sheets.
    Raises ProjectFileError or ImpossibleProject, each one sentence.

    >>> print_project("no_such_case.toml", None, "", lambda cabinet: None)
    Traceback (most recent call last):
    ...
    shoplib.documents.project_file.ProjectFileError: no_such_case.toml: there is no such file; check the name and ...
    """
    plan = planned(solve(read_project(file)), lay_out)
    paper, stamp = paper or PAPERS[USUAL[plan.cabinet.style.unit]], stamp_of(plan, date)
    return Printed(
        stamp, verdict(plan.cabinet, plan.findings, plan.in_use), plan.stops, paper, print_files(plan, stamp, paper),
        plan.refused, signs_without_letter(project_text(plan.cabinet.project)),
    )


def planned(cabinet: Cabinet, lay_out: Callable[[Cabinet], LaidOut]) -> Planned:
    """The cabinet checked and laid out, or with the reason why it cannot be laid out.

    >>> from shoplib.buying.laid_out import laid_out
    >>> from shoplib.documents.examples import cabinet_from
    >>> plan = planned(cabinet_from("finger_jointed_drawers"), lambda cabinet: laid_out(cabinet, 0))
    >>> len(plan.cabinet.boards), plan.stops, plan.refused
    (18, (), '')
    """
    found, refused = None, ""
    try:
        found = lay_out(cabinet)
    except (LayoutError, ImpossibleProject) as fault:
        refused = str(fault)
    return Planned(cabinet, tuple(check(cabinet)), tuple(check_in_use(cabinet)), found, refused)


def stamp_of(plan: Planned, date: str = "") -> Stamp:
    """What marks each page: its fingerprint is that of the project, of the plan and of the sheets as they are laid out.

    Paper and date have no part in it: a page on another paper or of another day is of the same plan. A finding of level
    stop puts the warning across each page.

    >>> from shoplib.documents.examples import cabinet_from
    >>> wall = cabinet_from("wheel_wall_drawers")
    >>> plan = Planned(wall, (), (), None)
    >>> stamp_of(plan, "29 May").fingerprint == stamp_of(plan, "30 May").fingerprint
    True
    >>> stamp_of(Planned(wall, (Finding("overlap", "stop", (), "Two boards share wood."),), (), None)).stopped
    'STOP: this plan does not go together yet. Cut nothing from it.'
    """
    contents = [project_text(plan.cabinet.project), plan_text(plan.cabinet, plan.findings, plan.in_use)]
    if plan.found:
        contents.append(sheets_text(plan.found))
    return Stamp(plan.cabinet.name, fingerprint(*contents), date, STOPPED if plan.stops else "")


def print_files(plan: Planned, stamp: Stamp, paper: Paper) -> dict[str, bytes]:
    """File name to content. The same plan, layouts, stamp and paper give the same bytes.

    >>> from dataclasses import replace
    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.model.project import Bay, Fronts
    >>> project = cabinet_from("finger_jointed_drawers").project
    >>> case = solve(replace(project, bays=(Bay(),), fronts=Fronts()))  # no drawers, so that it prints fast
    >>> plan = Planned(case, (), (), None)
    >>> list(print_files(plan, stamp_of(plan), PAPERS["a4"]))[:4]
    ['plan_set.pdf', 'labels.pdf', 'story_stick.pdf', 'templates.pdf']
    """
    cabinet, found = plan.cabinet, plan.found
    table, to_measure = cut_list_csv(cabinet, plan.findings), to_measure_text(cabinet)
    pages = plan_set(cabinet, plan.findings, plan.in_use, found, paper, plan.refused)
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
        **({"cut_order.csv": with_decimal_point(cut_order_csv(found, bool(plan.stops)))} if found else {}),
        **({TO_MEASURE: to_measure.encode()} if to_measure else {}),
    }
