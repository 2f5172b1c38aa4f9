"""The steps from the case as built to drawers that run: measure, slides and runners, boxes hung, pull-outs."""


from shoplib.building.riding import lies_on_bottom, riding
from shoplib.building.spacers import slide_spacers
from shoplib.buying.screws import Need, estimated
from shoplib.documents.cautions import DRAWERS, hangs
from shoplib.documents.hardware_page import apart_words
from shoplib.documents.slides_section import stop_words
from shoplib.lists.writing import Writing
from shoplib.model.board import BOXES
from shoplib.model.solved import Cabinet
from shoplib.printed.build.called_for import template_numbers, templates_called
from shoplib.printed.build.words import (
    SAW_AGAIN,
    cut_to_size,
    screws_told,
)
from shoplib.printed.told.readings import NEW_PAGES, OLD_PAGES, WHAT_IT_LEFT, boxes_to_fill_in, differs
from shoplib.printed.told.shims import shims_told
from shoplib.printed.told.spacer_table import CUT_OFF, spacer_table
from shoplib.printed.true_scale.template import SLIDES
from shoplib.printed.typeset.blocks import Block, Framed, Table, Together, ToTick, Words
from shoplib.words.stages import STAGES


def measure(stage: int, cabinet: Cabinet) -> list[Block]:
    """What is read off the case before the boards of a stage are cut, and how it comes into the plan.

    >>> [type(block).__name__ for block in measure(BOXES, Cabinet("no boards", (), {}))]
    ['Together', 'ToTick']
    """
    first = stage == BOXES
    asked = Framed((Words(
        f"Measure before you cut: no board of stage {stage}, {STAGES[stage]}, is cut before this is filled in.",
        grave=True,
    ), Words(_TAPE if first else _AGAIN)))
    return [
        Together((asked, *boxes_to_fill_in(stage, cabinet))),
        ToTick((
            "Write each reading into to_measure.toml, between its quotes, and copy the lines with their headings to "
            "the end of your project file.",
            WHAT_IT_LEFT,
            _PRINT,
            f"{NEW_PAGES} {OLD_PAGES}",
        ) if first else (
            f"{_unread_strips(cabinet)}{differs(cabinet)}",
            "Where none differs, cut stage 3 from the pages that you have.",
        )),
    ]


_PRINT = (
    "Plan again and print again: \u201cpython3 -m shoplib plan my_case.toml --to my_case\u201d, then \u201cpython3 -m "
    "shoplib print my_case.toml --to my_prints\u201d, with the names of your own project file and folders. It says "
    "what changed."
)


def _unread_strips(cabinet: Cabinet) -> str:
    """Strips that were not read with the openings of the boxes."""
    waits = any(one.of in cabinet.by_name for one in cabinet.waiting)
    return "Write in the openings of the strips, plan and print again. " if waits else ""


_TAPE = "Measure with a tape or two sliding sticks, at the front edge and at the back, and write down both."
_AGAIN = (
    "Put in every box and pull-out, and shut it. Then read each opening once more: it should be what you wrote for the "
    "boxes. Where it is not, something moved or was drawn in by a screw: find it before you cut a front."
)


def runs(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """Slides, runners and kickers at their heights, by spacers, each line when its turn comes.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> [type(block).__name__ for block in runs((), cabinet)]
    ['ToTick', 'Together']
    """
    head, rows = spacer_table(slide_spacers(cabinet), Writing(cabinet.style))
    strips = [
        cut_to_size(names, cabinet, "to the case as measured"),
        f"Bore them for their screws, {screws_told(_strips(names, cabinet), cabinet)}. On solid wood, whose grain they "
        "cross, make the front hole round and tight, the others slots.",
    ] if names else []
    cautions: list[Block] = [Framed((Words(SAW_AGAIN, grave=True),))] if names else []
    blocks: list[Block] = [*cautions, ToTick((
        *strips,
        *apart_words(cabinet),
        *([_CUT_SPACERS] if rows else []),
        *_laid(bool(rows), cabinet),
        *shims_told(cabinet),
        *_driven(bool(names), cabinet),
    ))]
    if rows:
        blocks.append(Together((Words("Spacers to cut:"), Table(head, rows, (2,)))))
    return blocks


def _strips(names: tuple[str, ...], cabinet: Cabinet) -> list[Need]:
    """The screws of runners and kickers."""
    return [need for need in estimated(cabinet) if need.passed.name in names]


_CUT_SPACERS = f"{CUT_OFF} Set by one spacer, left and right come out alike."


def _laid(by_spacers: bool, cabinet: Cabinet) -> list[str]:
    """Each at its place and held, not yet screwed: the paper marks the upright while nothing is in its way."""
    papers, flat = template_numbers(SLIDES, cabinet), lies_on_bottom(cabinet)
    held = f"{'its front end on the mark' if papers else 'set back as the hardware page says'}, and hold it there."
    what = " or ".join(dict.fromkeys(item.part for item in riding(cabinet)))
    lines = []
    if by_spacers:
        lines.append(f"Work from the top down, so that a spacer never stands on a {what}. Stand the spacer on the "
                     "bottom of the case.")
    if papers:
        on = " or ".join([*(["the spacer"] if by_spacers else []), *(["the bottom itself"] if flat else [])])
        lines.append(f"Lay {_the_paper(papers)} with its lower heavy line on {on} and the upright one on the front "
                     "edge, mark from it as it says, and take it away. The front end is now set back as the hardware "
                     "page says; where it is not, measure.")
    if by_spacers:
        lines.append(f"Rest the {what} on the spacer, {held}")
    if flat:
        lines.append(f"What lies on the bottom of the case itself needs no spacer: lay it there, {held}")
    return lines


def _the_paper(numbers: tuple[int, ...]) -> str:
    called = templates_called(numbers)
    return called if len(numbers) == 1 else f"the one of {called} that names it"


def _driven(wood: bool, cabinet: Cabinet) -> list[str]:
    """Slides hang by one screw at each end until their drawers run; strips of wood get their screws at once."""
    told = [
        *(["Drive one screw in a slot at each end of a slide, no more."] if _has_slides(cabinet) else []),
        *(["Screw what is of wood without glue, so that it can be moved, the front screw first."] if wood else []),
    ]
    return [" ".join([*told, _BIT])] if told else []


_BIT = "Keep the hand out of the line of the driver's bit."


def _has_slides(cabinet: Cabinet) -> bool:
    return any(fitting.what == "slide" for fitting in cabinet.hardware)


def hang_boxes(cabinet: Cabinet) -> list[Block]:
    """Boxes on their slides, one open at a time; what would come right out gets its stop before it is pulled.

    >>> hang_boxes(Cabinet("no boards", (), {}))[-1].lines[0]
    'Slide the boxes in, from the bottom up. Wax what they run on.'
    """
    slides = _has_slides(cabinet)
    rolls = any(fitting.what == "caster" for fitting in cabinet.hardware)
    fasten = "hung" if hangs(cabinet) else "anchored, or its casters locked" if rolls else "anchored"
    stops = stop_words(cabinet)
    lines = (
        "Screw the slide members to the boxes as the hardware page says, one screw in a slot at each end, and hang the "
        "boxes from the bottom up.",
        *stops,
        "Pull each out and shut it: it runs freely, stands level, and lies even with its neighbours. Shift it in the "
        "slots until it does, then drive the other screws.",
        "A box that binds at one end has a narrower opening there, or slides that are not parallel: shim behind the "
        "slide at the wide end, never force it.",
    ) if slides else (
        "Slide the boxes in, from the bottom up. Wax what they run on.",
        *stops,
        "Pull each out and shut it. Where it binds, look for the shiny spot, and plane or sand only there.",
    )
    return [
        Framed((Words(DRAWERS, grave=True), Words(f"The case is {fasten} before a box is pulled out."))),
        ToTick(lines),
    ]
