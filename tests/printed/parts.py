"""Boards, drawers, fronts and hardware of the shipped projects as they are printed, without the other parts."""

import io
from functools import cache

from pypdf import PdfReader

from shoplib.checks import check
from shoplib.documents.examples import cabinet_from
from shoplib.documents.paper import PAPERS
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.plan.board_pages import board_pages
from shoplib.printed.plan.drawer_page import drawer_pages
from shoplib.printed.plan.front_pages import front_pages
from shoplib.printed.plan.hardware_pages import hardware_pages
from shoplib.printed.typeset.blocks import Block, NewPage
from shoplib.printed.typeset.set_in_type import set_in_type
from shoplib.printed.typeset.stamp import Stamp
from tests.printed.tagged import Tagged

PROJECTS = (
    "finger_jointed_drawers", "rolling_stand", "small_parts_wall_case", "under_bench_case", "wheel_wall_drawers",
)


@cache
def cabinet_of(project: str) -> Cabinet:
    return cabinet_from(project)


@cache
def found_in(project: str) -> tuple[Finding, ...]:
    return check(cabinet_of(project))


@cache
def printed(project: str, paper: str) -> Tagged:
    cabinet, findings = cabinet_of(project), found_in(project)
    return in_print(parts_of(cabinet, findings, paper), paper)


def parts_of(cabinet: Cabinet, findings: tuple[Finding, ...], paper: str) -> list[list[Block]]:
    on = PAPERS[paper]
    drawn = (board_pages, drawer_pages, front_pages)
    return [*(part(cabinet, findings, on) for part in drawn), hardware_pages(cabinet)]


def in_print(parts: list[list[Block]], paper: str) -> Tagged:
    """Each part from a new page, read back."""
    blocks = [block for part in parts if part for block in (NewPage(), *part)]
    pdf = set_in_type("Plan set", blocks, Stamp("Case", "2222-3333", "29 May"), PAPERS[paper], "Measure.")
    return Tagged(PdfReader(io.BytesIO(pdf)))
