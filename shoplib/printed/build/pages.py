"""The build order of the plan set: how this cabinet is built, step by step, each naming its boards."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from shoplib.building.clamps import Clamps, clamps_for
from shoplib.building.glue_ups import GlueUp
from shoplib.building.order import Step, build_order, is_done
from shoplib.building.spacers import slide_spacers
from shoplib.buying.laid import LaidJob, LaidOut
from shoplib.model.board import BOXES, CASE
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.build import boxes, case, cutting, drawers, fronts, glue, place, pull_outs
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
_BEHIND = (
    "What is marked done is done as the project says: stage 1 is cut, and where its openings were read, it stands. "
    "These steps, with your ticks and what you wrote, stand in the set from which stage 1 was cut: keep their pages."
)


def build_pages(
    cabinet: Cabinet, findings: Iterable[Finding], in_use: Iterable[Finding], found: LaidOut | None = None
) -> list[Block]:
    """The steps: first all at a glance, then each with what is done, its cautions, and what is measured.

    `findings` are those of `check`, which tell where the case stands in its space, `in_use` those of `check_in_use`;
    `found` is the cabinet laid out, which says what is glued up from staves, None where it cannot be.

    >>> [type(block).__name__ for block in build_pages(Cabinet("no boards", (), {}), (), ())]
    ['Heading', 'Words', 'Table']
    """
    findings, in_use, steps = tuple(findings), tuple(in_use), build_order(cabinet)
    jobs = found.jobs if found else ()
    every = [_At(step, steps, cabinet, findings, in_use, tuple(jobs)) for step in steps]
    glance = Table(
        ("step", "what is done", "boards mounted in it"),
        tuple((str(n), _marked(at), names_in_short(at.step.boards, cabinet)) for n, at in enumerate(every, start=1)),
        (1, 2),
    )
    behind = [Words(_BEHIND)] if any(at.is_done for at in every) else []
    blocks: list[Block] = [Heading(TITLE), Words(_LEAD), *behind, glance]
    for number, at in enumerate(every, start=1):
        if at.is_done:
            blocks.append(Heading(f"Step {number}. {_marked(at)}", 2))
            continue
        done = _done(at)
        # A caution stays with what it is about.
        head = 2 if isinstance(done[0], Framed) else 1
        blocks += [Together((Heading(f"Step {number}. {_title(at)}", 2), *done[:head])), *done[head:]]
    return blocks


@dataclass(frozen=True, slots=True)
class _At:
    """One step with all that its words are made of; `jobs` are those of the layout, none where it is not laid out."""

    step: Step
    steps: tuple[Step, ...]
    cabinet: Cabinet
    findings: tuple[Finding, ...]
    in_use: tuple[Finding, ...]
    jobs: tuple[LaidJob, ...]

    @property
    def is_done(self) -> bool:
        return is_done(self.step, self.cabinet)

    @property
    def goes(self) -> tuple[GlueUp, ...]:
        return tuple(step.go for step in self.steps if step.go)

    @property
    def clamps(self) -> list[tuple[str, tuple[Clamps, ...]]]:
        """Each glue-up by its number, with its clamps."""
        called = [f"glue-up {n}" if len(self.goes) > 1 else "the case" for n in range(1, len(self.goes) + 1)]
        return [(title, clamps_for(go, self.cabinet)) for title, go in zip(called, self.goes, strict=True)]

    @property
    def trims(self) -> bool:
        return any(step.kind == "trim" for step in self.steps)


def _cut_title(at: _At) -> str:
    if at.trims:
        return "Saw out and label the case"
    return f"Cut{', label and edge' if _edged(at) else ' and label'} the case; cut its joints"


def _joints_title(at: _At) -> str:
    return "Edge the case and cut its joints" if _edged(at) else "Cut the joints of the case"


def _edged(at: _At) -> bool:
    return any(board.edging and board.stage == CASE for board in at.cabinet.boards)


def _glue_title(at: _At) -> str:
    number = f": glue-up {at.goes.index(at.step.go) + 1} of {len(at.goes)}" if len(at.goes) > 1 else ""
    return f"Glue the case{number}"


def _measure_title(at: _At) -> str:
    of = STAGES[at.step.measures]
    return f"Measure the case as built, for the {of}" if at.step.measures == BOXES else f"Measure again, for the {of}"


def _runs_title(at: _At) -> str:
    bought = ["slides"] if any(fitting.what == "slide" for fitting in at.cabinet.hardware) else []
    wood = sorted({plural(at.cabinet.by_name[name].role) for name in at.step.boards}, reverse=True)
    set_by = ", by spacers" if slide_spacers(at.cabinet) else ""
    return f"{and_list([*bought, *wood]).capitalize()}{set_by}"


def _box_title(at: _At) -> str:
    return f"Make the boxes: {and_list(in_short(at.step.boxes.groups))}"


_Title = str | Callable[[_At], str]

_KINDS: dict[str, tuple[_Title, Callable[[_At], list[Block]]]] = {
    "solid wood": ("Get the solid wood ready", lambda at: cutting.solid_wood(at.cabinet)),
    "cut the case": (_cut_title, lambda at: cutting.cut_the_case(at.cabinet, bool(at.jobs))),
    "trim": ("Glue up and trim the solid boards", lambda at: cutting.trim(at.cabinet, *at.jobs)),
    "joints": (_joints_title, lambda at: cutting.joints(at.cabinet, bool(at.jobs))),
    "finish inside": ("Finish the inside faces, glue faces masked", lambda at: case.finish_inside(at.cabinet)),
    "dry run": ("Dry run of the case", lambda at: case.dry_run(at.cabinet, at.clamps)),
    "glue": (_glue_title, lambda at: glue.glue_up(at.step.go, at.step.go == at.goes[-1], at.cabinet)),
    "captured": ("Mend the plan first", lambda at: glue.captured(at.step.boards, at.cabinet)),
    "back": ("The back, last of the case", lambda at: glue.back(at.step.boards, at.cabinet)),
    "plinth": ("The plinth", lambda at: glue.plinth(at.step.boards, at.cabinet)),
    "finish outside": ("Finish the outside of the case", lambda at: place.finish_outside()),
    "place": ("Into its place: level and true", lambda at: place.place(at.cabinet, at.findings)),
    "measure": (_measure_title, lambda at: drawers.measure(at.step.measures, at.cabinet)),
    "runs": (_runs_title, lambda at: drawers.runs(at.step.boards, at.cabinet)),
    "box": (_box_title, lambda at: boxes.box(at.step.boxes, at.cabinet, bool(at.jobs))),
    "hang boxes": ("Fit the drawer boxes", lambda at: drawers.hang_boxes(at.cabinet)),
    "pull-outs": ("The pull-out panel", lambda at: pull_outs.pull_outs(at.step.boards, at.cabinet)),
    "strips": ("Strips between the drawers", lambda at: fronts.strips(at.step.boards, at.cabinet)),
    "fronts": ("Fronts, with gap spacers", lambda at: fronts.fronts(at.step.boards, at.cabinet, *at.jobs)),
    "pulls": ("Pulls", lambda at: fronts.pulls(at.cabinet)),
    "loose shelves": ("Loose shelves", lambda at: fronts.loose_shelves(at.step.boards, at.cabinet)),
    "load": ("Load it, step by step", lambda at: place.load(at.cabinet, at.in_use)),
}
"""Each kind of step that `build_order` knows: its title, and what is told of it."""


def _title(at: _At) -> str:
    title, _ = _KINDS[at.step.kind]
    return title if isinstance(title, str) else title(at)


def _marked(at: _At) -> str:
    return f"{_title(at)}: done" if at.is_done else _title(at)


def _done(at: _At) -> list[Block]:
    _, told = _KINDS[at.step.kind]
    return told(at)
