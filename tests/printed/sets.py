"""The plan sets of the shipped projects, made once for each test run and project, on both papers."""

import io
from functools import cache

from pypdf import PdfReader

from shoplib.buying.laid_out import laid_out
from shoplib.documents.examples import cabinet_from
from shoplib.documents.paper import PAPERS
from shoplib.printed.everything import Planned, planned, print_files, stamp_of
from tests.printed.tagged import Tagged

PROJECTS = (
    "finger_jointed_drawers", "rolling_stand", "small_parts_wall_case", "under_bench_case", "wheel_wall_drawers",
)
DATE = "29 May"


@cache
def solved(project: str) -> Planned:
    """A shipped project with all that is printed of it."""
    return planned(cabinet_from(project), lambda cabinet: laid_out(cabinet, 0))


@cache
def plan_set_of(project: str, paper: str) -> Tagged:
    """The plan set as it is written to the disk, read back."""
    return plan_set_pdf(solved(project), paper)


def plan_set_pdf(plan: Planned, paper: str) -> Tagged:
    return read(print_files(plan, stamp_of(plan, DATE), PAPERS[paper])["plan_set.pdf"])


def read(pdf: bytes) -> Tagged:
    return Tagged(PdfReader(io.BytesIO(pdf)))
