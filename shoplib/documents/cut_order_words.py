"""What to mind at a step of the cut order, and the cautions that come before all of them."""

from collections.abc import Callable, Iterator

from shoplib.buying.laid import LaidOut
from shoplib.layout.order import Step
from shoplib.layout.set_by import NARROW
from shoplib.lists.on_end import ON_END, stood_on_end
from shoplib.model.solved import Cabinet
from shoplib.tables.setups import cautions
from shoplib.words.naming import and_list

AT_THE_SAW = "sheet at the saw"
"""What the cautions for cutting sheets and boards up stand under in `data/cautions.toml`."""

AT_THE_PLANER = ("jointer", "planer", "rough board")
"""What those for rough boards stand under there."""


BESIDE_THE_FENCE = "a low fence that the guard passes over, featherboards, and a thin push block that may be cut"
"""What leads and moves a narrow piece that has to lie between fence and blade (common practice, no source)."""

_PIVOTS = 2
"""A piece more times as wide as its edge on the fence is long turns on it (common practice, no source)."""


def saw_cautions() -> tuple[str, ...]:
    """The cautions for cutting sheets and boards up, after those of every tool.

    >>> saw_cautions()[0]
    'The manual of your own tool comes before anything on this page.'
    """
    return tuple(caution.claim.say for caution in cautions().of([AT_THE_SAW]))


def rough_cautions(cabinet: Cabinet) -> tuple[str, ...]:
    """The cautions for flattening and planing rough boards, where the project has any.

    >>> rough_cautions(Cabinet("no boards", (), {}))
    ()
    """
    solid = cabinet.project and any(sheet.kind == "solid" for sheet in cabinet.project.sheets.values())
    return tuple(caution.claim.say for caution in cautions().only(AT_THE_PLANER)) if solid else ()


def on_end_cautions(cabinet: Cabinet) -> tuple[str, ...]:
    """The cautions for boards that joints stand on their end or edge, where there are any.

    >>> on_end_cautions(Cabinet("no boards", (), {}))
    ()
    """
    stood = stood_on_end(cabinet.boards, cabinet)
    return tuple(one.claim.say for one in cautions().only([ON_END])) if stood else ()


def minded(step: Step, letters: tuple[str, ...], say: Callable[[int], str], sides: tuple[str, str]) -> str:
    """What to mind at one step, nothing where nothing is; `letters` are those of the parts, `say` writes a length.

    `sides` are length and width of the piece, as its row writes them.

    >>> from shoplib.layout.order import Piece
    >>> from shoplib.layout.pieces import Rect
    >>> step = Step(5, 3, "rip", 20, 0, Piece("sheet 1", Rect(0, 0, 9, 40)), (None,), (), None, edge=9, short=True,
    ...             set_by="stop", again=True, gauge=(0, 1), to_size=(1,))
    >>> for sentence in minded(step, ("A", "B"), str, ("9", "40")).split("; "):
    ...     print(sentence)
    set again to 20: use a finished A or B as the gauge
    short, 9 along the cut: use a sled and push blocks, or cut by hand or with a guided saw
    B is left to size: measure it
    >>> strip = Piece("sheet 1, piece 2", Rect(0, 0, 90, 40))
    >>> stop = Step(6, 4, "crosscut", 20, 0, strip, (None,), (), None, set_by="stop", again=True, like="piece 3")
    >>> minded(stop, (), str, ("90", "40"))
    'set again to 20: piece 3 has this size'
    >>> panel = Piece("panel", Rect(0, 0, 20, 61))
    >>> minded(Step(6, 4, "rip", NARROW, 0, panel, (None,), (), None, edge=20), (), str, ("20", "60"))
    '60 wide and only 20 along the fence: it pivots, so support both sides, or be two'
    """
    return "; ".join(_minded(step, letters, say, sides))


def _minded(
    step: Step, letters: tuple[str, ...], say: Callable[[int], str], sides: tuple[str, str],
) -> Iterator[str]:
    at = step.piece.at
    along = sides[step.edge != at.w]
    if step.again:
        gauge = " or ".join(letters[part] for part in step.gauge)
        by = f": use a finished {gauge} as the gauge" if gauge else f": {step.like} has this size" if step.like else ""
        yield f"set again to {say(step.fence)}{by}"
    if step.set_by == "thin-strip stop":
        yield "narrow: it comes off on the outer side of the blade, and for each the fence brings the board to the stop"
    elif step.set_by == "fence" and step.fence < NARROW:
        yield f"narrow between fence and blade: {BESIDE_THE_FENCE}"
    if step.short:
        yield f"short, {along} along the cut: use a sled and push blocks, or cut by hand or with a guided saw"
    if _pivots(step):
        yield f"{sides[at.h > at.w]} wide and only {along} along the fence: it pivots, so support both sides, or be two"
    if step.skim:
        yield f"trimming: it takes off {say(step.skim)}, less than the blade"
    if step.to_size:
        parts = [letters[part] for part in step.to_size]
        are, them = ("is", "it") if len(parts) == 1 else ("are", "them")
        yield f"{and_list(parts)} {are} left to size: measure {them}"
    if step.too_early:
        parts = [letters[part] for part in step.too_early]
        waits = "gets its planned size here and waits" if len(parts) == 1 else "get their planned sizes here and wait"
        yield f"{and_list(parts)} {waits}: see the box on the drawing"


def _pivots(step: Step) -> bool:
    return step.set_by == "fence" and not step.short and max(step.piece.at[2:]) > _PIVOTS * step.edge


def to_mind(found: LaidOut) -> Iterator[str]:
    """How many steps ask for care, in one sentence; none where none does."""
    steps = [step for job in found.jobs for step in job.steps]
    counted = (
        (sum(step.short for step in steps), "on pieces too short for the fence"),
        (sum(_pivots(step) for step in steps), "on pieces that pivot on it"),
        (len({(n, step.setting) for n, job in enumerate(found.jobs) for step in job.steps if step.again}), "set again"),
        (sum(bool(step.to_size) for step in steps), "that leave a part to size"),
    )
    told = [f"{count} {words}" for count, words in counted if count]
    if told:
        yield f"Steps to mind: {and_list(told)}; cut_order.csv says which, under mind."
