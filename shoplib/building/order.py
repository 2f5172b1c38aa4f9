"""The steps in which a shop builds a cabinet, and which boards are mounted in each."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from shoplib.building.boxes import AlikeBoxes, alike_boxes
from shoplib.building.glue_time import USUAL, GlueTime
from shoplib.building.glue_ups import GlueUp, glue_ups
from shoplib.buying.brads import backs_from_behind
from shoplib.buying.rough import is_rough
from shoplib.checks.driver_way import driven
from shoplib.checks.parting import Captured, Entry, put_together
from shoplib.model.board import BOXES, CASE, FRONTS, Board
from shoplib.model.solved import Cabinet


@dataclass(frozen=True, slots=True)
class Step:
    """One step; `kind` says what is done, in the order of `build_order`.

    `boards` are mounted in it, each board of a cabinet in one step; `entries` says how those of the case and of the
    plinth go together. `measures` is the stage that is measured for, 0 where nothing is read; `go` is what is glued in
    one go, `boxes` the drawer boxes made alike.
    """

    kind: str
    boards: tuple[str, ...] = ()
    entries: tuple[Entry, ...] = ()
    measures: int = 0
    go: GlueUp | None = None
    boxes: AlikeBoxes | None = None


def build_order(cabinet: Cabinet, time: GlueTime = USUAL) -> tuple[Step, ...]:
    """The steps of this cabinet in order: what it does not have is left out.

    The case first, inside finished, dry run, glued in goes, its back last; stood, hung or rolled into place and
    levelled; then measured, and only then slides, boxes and fronts (common practice, no source).

    >>> [step.kind for step in build_order(Cabinet("no boards", (), {}))]
    []
    """
    if not cabinet.boards:
        return ()
    return tuple(_steps(cabinet, time))


def _steps(cabinet: Cabinet, time: GlueTime) -> Iterator[Step]:
    if any(sheet.kind == "solid" for sheet in cabinet.sheets.values()):
        yield Step("solid wood")
    yield from (Step(kind) for kind in ("cut the case", *_trimmed(cabinet), "finish inside", "dry run"))
    yield from _case(cabinet, time)
    plinth = _of_case(cabinet, "plinth")
    if plinth:
        yield Step("plinth", tuple(board.name for board in plinth), put_together(plinth, cabinet.joints))
    yield Step("finish outside")
    yield Step("place")
    if any(one.stage == BOXES for one in cabinet.waiting):
        yield Step("measure", measures=BOXES)
    yield from _runs(cabinet)
    yield from _boxes(cabinet)
    if cabinet.again or any(one.stage == FRONTS for one in cabinet.waiting):
        yield Step("measure", measures=FRONTS)
    yield from _named("strips", _of_case(cabinet, "strip"))
    fronts = [board for board in cabinet.boards if board.role == "front"]
    yield from _named("fronts", fronts)
    if any(fitting.what == "pull" for fitting in cabinet.hardware):
        yield Step("pulls")
    yield from _named("loose shelves", _of_case(cabinet, "loose shelf"))
    yield Step("load")


_SAWN = ("solid wood", "cut the case", "trim", "joints")
_STANDS = (*_SAWN, "finish inside", "dry run", "glue", "back", "plinth", "finish outside", "place")
"""Steps that are behind a shop once stage 1 is cut, and once the case was measured where it stands."""


def is_done(step: Step, cabinet: Cabinet) -> bool:
    """Whether the project, by what it says is cut and was read, says that a step is done.

    The case stands once something of it was read, or boxes are cut. Solid wood is ready only where nothing is left to
    be cut of any.

    >>> is_done(Step("cut the case"), Cabinet("no boards", (), {}))
    False
    """
    if cabinet.project is None or cabinet.first_stage == CASE:
        return False
    read = cabinet.project.measured
    stands = cabinet.first_stage > BOXES or bool(read.openings or read.depths)
    if step.kind == "solid wood" and any(
        cabinet.sheets[board.sheet].kind == "solid" for board in cabinet.boards if board.stage >= cabinet.first_stage
    ):
        return False
    return step.kind in (_STANDS if stands else _SAWN)


def _trimmed(cabinet: Cabinet) -> tuple[str, ...]:
    """Rough boards of solid wood are trimmed before any joint is cut; without them joints follow in the same step."""
    rough = any(is_rough(board, cabinet) for board in cabinet.boards if board.stage == CASE)
    return ("trim", "joints") if rough else ()


def _named(kind: str, boards: Iterable[Board]) -> Iterator[Step]:
    names = tuple(board.name for board in boards)
    if names:
        yield Step(kind, names)


def _of_case(cabinet: Cabinet, *roles: str) -> list[Board]:
    return [board for board in cabinet.groups.get("case", ()) if board.role in roles]


_APART = ("plinth", "loose shelf")
"""Boards of stage 1 that are no part of the case while it is glued."""


def _case(cabinet: Cabinet, time: GlueTime) -> Iterator[Step]:
    boards = [b for b in cabinet.groups.get("case", ()) if b.stage == CASE and b.role not in _APART]
    backs = tuple(backs_from_behind(cabinet))
    try:
        entries = put_together(boards, cabinet.joints, driven(cabinet))
    except Captured:
        yield Step("captured", tuple(board.name for board in boards))
        return
    for go in glue_ups([entry for entry in entries if entry.board not in backs], cabinet, time):
        yield Step("glue", go.boards, go.entries, go=go)
    if backs:
        yield Step("back", backs, tuple(entry for entry in entries if entry.board in backs))


def _runs(cabinet: Cabinet) -> Iterator[Step]:
    """Slides, runners and kickers; a board of the case that is none of them and waits for boxes goes in with them."""
    boards = [b for b in cabinet.groups.get("case", ()) if b.stage == BOXES]
    if boards or any(fitting.what == "slide" for fitting in cabinet.hardware):
        yield Step("runs", tuple(board.name for board in boards))


def _boxes(cabinet: Cabinet) -> Iterator[Step]:
    boxes = alike_boxes(cabinet)
    for alike in boxes:
        yield Step("box", alike.boards, boxes=alike)
    if boxes:
        yield Step("hang boxes")
    made = {name for alike in boxes for name in alike.boards}
    yield from _named("pull-outs", [
        board for group, boards in cabinet.groups.items() if group != "case"
        for board in boards if board.stage == BOXES and board.name not in made
    ])
