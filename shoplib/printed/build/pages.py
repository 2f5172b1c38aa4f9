"""The build order of the plan set: how this cabinet is built, step by step, each naming its boards."""

from collections.abc import Iterable

from shoplib.building.clamps import clamps_for
from shoplib.building.order import Step, build_order
from shoplib.buying.laid import LaidOut
from shoplib.model.board import BOXES, CASE
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.build import case as build_case
from shoplib.printed.build import drawers as build_drawers
from shoplib.printed.build import fronts as build_fronts
from shoplib.printed.build import glue as build_glue
from shoplib.printed.build import place as build_place
from shoplib.printed.build.words import names_in_short
from shoplib.printed.typeset.blocks import Block, Framed, Heading, Table, Together, Words
from shoplib.words.naming import and_list, in_short, plural
from shoplib.words.stages import STAGES

TITLE = "Build order"
_LEAD = (
    "Work from the top to the bottom: each step needs what stands above it. Tick off each line. The order, clamps, "
    "times, brads and ways of working are common practice, no source; the label of your glue, the manuals of your "
    "tools and the sheets that come with slides and fittings go before them."
)


def build_pages(
    cabinet: Cabinet, findings: Iterable[Finding], in_use: Iterable[Finding], found: LaidOut | None = None
) -> list[Block]:
    """The steps: first all at a glance, then each with what is done, its cautions, and what is measured.

    `findings` are those of `check`, which give the diagonals to expect, `in_use` those of `check_in_use`; `found` is
    the cabinet laid out, which says what is glued up from staves, None where it cannot be.
    """
    findings, in_use = tuple(findings), tuple(in_use)
    steps = build_order(cabinet)
    titles = _titles(steps, cabinet)
    glance = Table(
        ("step", "what is done", "boards mounted in it"),
        tuple((str(n), title, names_in_short(step.boards, cabinet))
              for n, (step, title) in enumerate(zip(steps, titles, strict=True), start=1)),
        (1, 2),
    )
    blocks: list[Block] = [Heading(TITLE), Words(_LEAD), glance]
    for number, (step, title) in enumerate(zip(steps, titles, strict=True), start=1):
        done = _done(step, steps, cabinet, findings, in_use, found)
        # A caution stays with what it is about.
        head = 2 if isinstance(done[0], Framed) else 1
        blocks += [Together((Heading(f"Step {number}. {title}", 2), *done[:head])), *done[head:]]
    return blocks


_FIXED = {
    "solid wood": "Get the solid wood ready",
    "finish inside": "Finish the inside faces, glue faces masked",
    "dry run": "Dry run of the case",
    "captured": "Mend the plan first",
    "back": "The back, last of the case",
    "plinth": "The plinth",
    "finish outside": "Finish the outside of the case",
    "place": "Into its place: level and true",
    "hang boxes": "Fit the drawer boxes",
    "pull-outs": "The pull-out panel",
    "strips": "Strips between the drawers",
    "fronts": "Fronts, with gap spacers",
    "pulls": "Pulls",
    "loose shelves": "Loose shelves",
    "load": "Load it, step by step",
}


def _titles(steps: tuple[Step, ...], cabinet: Cabinet) -> list[str]:
    goes = [step for step in steps if step.kind == "glue"]
    titles = []
    for step in steps:
        if step.kind == "glue":
            number = f": glue-up {goes.index(step) + 1} of {len(goes)}" if len(goes) > 1 else ""
            titles.append(f"Glue the case{number}")
        elif step.kind == "measure":
            of = STAGES[step.measures]
            titles.append(f"Measure the case as built, for the {of}" if step.measures == BOXES
                          else f"Measure again, for the {of}")
        elif step.boxes:
            titles.append(f"Make the boxes: {and_list(in_short(step.boxes.groups))}")
        elif step.kind == "cut the case":
            edged = any(board.edging and board.stage == CASE for board in cabinet.boards)
            titles.append(f"Cut{', label and edge' if edged else ' and label'} the case; cut its joints")
        elif step.kind == "runs":
            bought = ["slides"] if any(fitting.what == "slide" for fitting in cabinet.hardware) else []
            wood = sorted({plural(cabinet.by_name[name].role) for name in step.boards}, reverse=True)
            titles.append(f"{and_list([*bought, *wood]).capitalize()}, by spacers")
        else:
            titles.append(_FIXED[step.kind])
    return titles


def _done(
    step: Step, steps: tuple[Step, ...], cabinet: Cabinet, findings: tuple[Finding, ...],
    in_use: tuple[Finding, ...], found: LaidOut | None,
) -> list[Block]:
    goes = [each.go for each in steps if each.kind == "glue"]
    jobs = found.jobs if found else ()
    match step.kind:
        case "solid wood":
            return build_case.solid_wood(cabinet)
        case "cut the case":
            return build_case.cut_the_case(cabinet, *jobs)
        case "finish inside":
            return build_case.finish_inside(cabinet)
        case "dry run":
            called = [f"glue-up {n}" if len(goes) > 1 else "the case" for n in range(1, len(goes) + 1)]
            clamps = [clamps_for(go, cabinet) for go in goes]
            return build_case.dry_run(cabinet, list(zip(called, clamps, strict=True)))
        case "glue":
            return build_glue.glue_up(step.go, step.go == goes[-1], cabinet, findings)
        case "back":
            return build_glue.back(step.boards, cabinet, findings)
        case "plinth":
            return build_glue.plinth(step.boards, cabinet)
        case "captured":
            return build_glue.captured(step.boards, cabinet)
        case "finish outside":
            return build_place.finish_outside(cabinet)
        case "place":
            return build_place.place(cabinet, findings)
        case "measure":
            return build_drawers.measure(step.measures, cabinet)
        case "runs":
            return build_drawers.runs(step.boards, cabinet)
        case "box":
            return build_drawers.box(step.boxes, cabinet, findings)
        case "hang boxes":
            return build_drawers.hang_boxes(cabinet)
        case "pull-outs":
            return build_drawers.pull_outs(step.boards, cabinet)
        case "strips":
            return build_fronts.strips(step.boards, cabinet)
        case "fronts":
            return build_fronts.fronts(step.boards, cabinet, *jobs)
        case "pulls":
            return build_fronts.pulls(cabinet)
        case "loose shelves":
            return build_fronts.loose_shelves(step.boards, cabinet)
        case "load":
            return build_place.load(cabinet, in_use)
    raise ValueError(f"no words for a step of kind {step.kind}.")
