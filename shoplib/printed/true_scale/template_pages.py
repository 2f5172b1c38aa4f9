"""Templates of a cabinet as pages to print and as SVG files in millimetres."""

from shoplib.documents.board_scenes import file_name
from shoplib.documents.hardware_page import waste_behind
from shoplib.documents.paper import Paper
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.hole_templates import peg_templates, pull_templates
from shoplib.printed.true_scale.page_head import DAMP, PRINTED, Head
from shoplib.printed.true_scale.pin_templates import pin_templates
from shoplib.printed.true_scale.slide_templates import slide_templates
from shoplib.printed.true_scale.template import Template
from shoplib.printed.true_scale.tiles import alone, tiled
from shoplib.printed.typeset.blocks import Block, Bullets, Heading, Table, Words
from shoplib.printed.typeset.stamp import Stamp, plan_mark

TITLE = "Templates in true scale"
NONE = "Nothing in this plan is bored or marked from a template: it has no pulls, slides, pegs or shelf pins."

HOW = (
    PRINTED,
    "Where a template takes several pages, cut each along its dashed line and glue it over the page before, register "
    "mark on register mark. The map at the head of the page shows how they go together.",
    "Cut along the middle of the heavy lines, lay them on the edges or lines that they name, and hold the paper with "
    "tape.",
    DAMP,
    f"Where a board is bored right through, {waste_behind('it')}.",
)
"""Common practice, no source."""


def templates(cabinet: Cabinet, mark: str = "") -> list[Template]:
    """All that the cabinet has something for, in the order in which a shop needs them; `mark` tells of which plan.

    >>> from shoplib.documents.examples import cabinet_from
    >>> [one.what for one in templates(cabinet_from("finger_jointed_drawers"))]
    ['slides and runners', 'holes for pulls']
    """
    kinds = (pin_templates, slide_templates, peg_templates, pull_templates)
    return [template for kind in kinds for template in kind(cabinet, mark)]


def template_pages(cabinet: Cabinet, paper: Paper, stamp: Stamp | None = None) -> list[Block]:
    """A page that lists the templates and says how they are used, or that there is none; then each in true scale.

    With a `stamp` each tells of which plan it is where it is not cut off.

    >>> from shoplib.documents.paper import PAPERS
    >>> [block.text for block in template_pages(Cabinet("Trial", (), {}), PAPERS["a4"])] == [TITLE, NONE]
    True
    """
    found = templates(cabinet, plan_mark(stamp))
    pages = [tiled(one.drawing, _head(one, number), paper, cabinet.style) for number, one in enumerate(found, 1)]
    if not pages:
        return [Heading(TITLE), Words(NONE)]
    rows = tuple(
        (f"{number}", one.what, one.serves, f"{len(blocks) // 2}")
        for number, (one, blocks) in enumerate(zip(found, pages, strict=True), 1)
    )
    return [
        Heading(TITLE), Bullets(HOW, numbered=True),
        Table(("template", "what", "for", "pages"), rows, wide=(2,)), *(block for page in pages for block in page),
    ]


def template_files(cabinet: Cabinet, stamp: Stamp | None = None) -> dict[str, str]:
    """File name to SVG text: each template whole, its width and height in mm, one unit of its own one mm.

    With a `stamp` each says of which version of the plan it is, and that it is stopped where that is so.

    >>> from shoplib.documents.examples import cabinet_from
    >>> list(template_files(cabinet_from("finger_jointed_drawers")))
    ['01-slides-and-runners-left-side.svg', '02-holes-for-pulls-bay-1-drawer-1-front.svg']
    """
    taken: set[str] = set()
    marks = (cabinet.name,) if stamp is None else _marks(stamp)
    return {
        f"{file_name(f'{number:02} {one.what} {one.names[0]}', taken)}.svg":
            alone(one.drawing, _head(one, number, marks), cabinet.style)
        for number, one in enumerate(templates(cabinet, plan_mark(stamp)), 1)
    }


def _marks(stamp: Stamp) -> tuple[str, ...]:
    """What the margins of a page say, for a file that has none."""
    told = ", ".join(filter(None, (stamp.name, stamp.date, plan_mark(stamp))))
    return (stamp.stopped, told) if stamp.stopped else (told,)


def _head(template: Template, number: int, marks: tuple[str, ...] = ()) -> Head:
    return Head(f"Template {number}: {template.what}", (*marks, *template.lines), template.alt)
