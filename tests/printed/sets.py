"""The plan sets of the shipped projects, made once for each test run and project, on both papers."""

import io
from dataclasses import dataclass
from functools import cache

from pypdf import PdfReader

from shoplib.buying.laid import LaidOut
from shoplib.buying.laid_out import laid_out
from shoplib.checks import check
from shoplib.checks.in_use import check_in_use
from shoplib.documents.examples import project_path
from shoplib.documents.paper import PAPERS
from shoplib.documents.project_file import read_project
from shoplib.model.cabinet import solve
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.everything import print_files
from tests.printed.tagged import Tagged

PROJECTS = (
    "finger_jointed_drawers", "rolling_stand", "small_parts_wall_case", "under_bench_case", "wheel_wall_drawers",
)
DATE = "29 May"


@dataclass(frozen=True)
class Solved:
    """A shipped project with all that is printed of it."""

    cabinet: Cabinet
    found: LaidOut
    findings: tuple[Finding, ...]
    in_use: tuple[Finding, ...]


@cache
def solved(project: str) -> Solved:
    cabinet = solve(read_project(project_path(project)))
    return Solved(cabinet, laid_out(cabinet, 0), check(cabinet), check_in_use(cabinet))


@cache
def plan_set_of(project: str, paper: str) -> Tagged:
    """The plan set as it is written to the disk, read back."""
    of = solved(project)
    return read(print_files(of.cabinet, of.findings, of.in_use, of.found, PAPERS[paper], DATE)["plan_set.pdf"])


def read(pdf: bytes) -> Tagged:
    return Tagged(PdfReader(io.BytesIO(pdf)))
