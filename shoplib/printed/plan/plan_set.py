"""The plan set: all that a person takes to the bench on paper, its parts in the order in which they are needed."""

from collections.abc import Iterable

from shoplib.buying.laid import LaidOut
from shoplib.documents.paper import Paper
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.build.pages import build_pages
from shoplib.printed.plan.board_pages import board_pages
from shoplib.printed.plan.buying_pages import buying_pages
from shoplib.printed.plan.caution_page import caution_pages
from shoplib.printed.plan.cover import cover_pages, reading_pages
from shoplib.printed.plan.cut_list_pages import cut_list_pages
from shoplib.printed.plan.drawer_page import drawer_pages
from shoplib.printed.plan.front_pages import front_pages
from shoplib.printed.plan.hardware_pages import hardware_pages
from shoplib.printed.plan.notes import note_blocks
from shoplib.printed.plan.sheet_pages import sheet_pages
from shoplib.printed.plan.whole_pages import whole_pages
from shoplib.printed.typeset.blocks import Block, NewPage, NextPart, told

TITLE = "Plan set"


def plan_set(
    cabinet: Cabinet, findings: Iterable[Finding], in_use: Iterable[Finding], found: LaidOut | None, paper: Paper,
    refused: str = "",
) -> list[Block]:
    """All blocks of the plan set.

    `findings` are those of `check`, `in_use` those of `check_in_use`, `found` is the cabinet laid out; None where it
    cannot be, and then the parts about sheets say so. Each part begins on a page of its own, but where the one before
    ends with a few lines. The first sheet and the first drawer are drawn as large as a page lets them, and so begin
    on one.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.documents.paper import PAPERS
    >>> from shoplib.printed.typeset.blocks import Heading
    >>> blocks = plan_set(cabinet_from("finger_jointed_drawers"), (), (), None, PAPERS["a4"], "No stock is given.")
    >>> [block.text for block in blocks if isinstance(block, Heading) and block.level == 1][-5:]
    ['Sheets and saw cuts', 'Each board with its cuts', 'Drawers', 'Hardware', 'Build order']
    """
    findings, in_use = tuple(findings), tuple(in_use)
    cautions = caution_pages(cabinet, findings, in_use, found)
    work = [
        NewPage(lying=True),
        *cut_list_pages(cabinet, findings),
        *note_blocks(findings, in_use),
        *begun(buying_pages(found)),
        NewPage(lying=True),
        *sheet_pages(found, paper, refused),
        NewPage(),
        *board_pages(cabinet, findings, paper),
        NewPage(),
        *drawer_pages(cabinet, findings, paper),
        *begun(front_pages(cabinet, findings, paper)),
        *begun(hardware_pages(cabinet)),
        *begun(build_pages(cabinet, findings, in_use, found)),
    ]
    return [
        *cautions,
        NewPage(),
        *cover_pages(cabinet, paper),
        NewPage(),
        *reading_pages(cabinet, told([*cautions, *work])),
        NewPage(),
        *whole_pages(cabinet, paper),
        *work,
    ]


def begun(part: list[Block]) -> list[Block]:
    """A part where it may begin; nothing where there is none.

    >>> begun([])
    []
    """
    return [NextPart(), *part] if part else []
