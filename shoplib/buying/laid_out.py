"""A cabinet laid out on its sheets and boards, cut by cut: what documents, drawings and lessons read."""

import time
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace

from shoplib.buying.jobs import Ask, Held, Offered, asks, in_shop, job_of, offered
from shoplib.buying.lifts import one_lifts
from shoplib.layout.cut_tree import sawn
from shoplib.layout.order import Step, cut_order
from shoplib.layout.pieces import Job, Laid, Layout, Placed, Rect, Stock
from shoplib.layout.sawn import Sawn
from shoplib.layout.search import layouts, pool
from shoplib.model.board import Board
from shoplib.model.cutting import Cutting
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

FOR_CHOICE = 0.3
"""The part of the time that goes to other layouts of the same cost, for the choice among them."""


@dataclass(frozen=True, slots=True)
class Piece:
    """One part where it lies on its sheet: the board that it becomes, and the letter of its kind."""

    board: Board
    letter: str
    placed: Placed


@dataclass(frozen=True, slots=True)
class LaidSheet:
    """One sheet, board or offcut with what is cut from it.

    `name` is written on it in the shop: "case sheet 1". `held` is the piece that lies in the shop, None where it is
    bought. `pieces` are in the order of `laid.placed`; `sawn` has the cuts and what is left.
    """

    name: str
    sheet: Sheet
    stages: tuple[int, ...]
    stock: Stock
    held: Held | None
    kerf: int
    laid: Laid
    pieces: tuple[Piece, ...]
    sawn: Sawn

    @property
    def bought(self) -> bool:
        """Whether it comes from the yard."""
        return self.held is None


@dataclass(frozen=True, slots=True)
class LaidJob:
    """What was laid out together: what was asked, on what, the layout that was chosen, its sheets, and the cuts that
    free their parts, fence setting by fence setting."""

    ask: Ask
    on: Offered
    job: Job
    layout: Layout
    sheets: tuple[LaidSheet, ...]
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class LaidOut:
    """All sheets of a cabinet. `stopped`: the search was stopped before its time, and the best so far was taken."""

    cabinet: Cabinet
    jobs: tuple[LaidJob, ...]
    stopped: bool = False

    @property
    def sheets(self) -> tuple[LaidSheet, ...]:
        """All of them, in the order in which they are cut."""
        return tuple(sheet for job in self.jobs for sheet in job.sheets)


Tell = Callable[[Ask, Layout], None]
"""Called with each better layout of what is being laid out."""


def laid_out(cabinet: Cabinet, seconds: float = 10.0, tell: Tell = lambda ask, layout: None) -> LaidOut:
    """Lay out all boards, in about so many seconds, or fewer where nothing can be better.

    Ctrl+C, and a kernel that is interrupted, stop the search: the best so far is taken, of what was not yet looked at
    the first layout. Raises ImpossibleProject or LayoutError, each one sentence.
    """
    ends = time.monotonic() + seconds
    waiting = asks(cabinet)
    held = {ask.sheet.name: in_shop(ask.sheet) for ask in waiting}
    for ask in waiting:  # what cannot be is said before any time is spent on what can
        offered(ask, held[ask.sheet.name], cabinet.style)
    numbers: dict[str, int] = {}
    done: list[LaidJob] = []
    stopped = False
    for number, ask in enumerate(waiting):
        on = offered(ask, held[ask.sheet.name], cabinet.style)
        job = job_of(ask, on)
        left = 0.0 if stopped else (ends - time.monotonic()) / (len(waiting) - number)
        layout, stopped_here = _searched(job, ask, max(left, 0.0), cabinet.project.cutting, tell)
        stopped = stopped or stopped_here
        sheets = tuple(_sheets(ask, on, job, layout, numbers, cabinet.project.cutting))
        held[ask.sheet.name] = _left_after(held[ask.sheet.name], sheets)
        steps = cut_order(
            job, layout.sheets, [sheet.sawn for sheet in sheets],
            one_lifts(ask.sheet, cabinet.project.cutting.one_lifts), [sheet.name for sheet in sheets],
        )  # fmt: skip
        done.append(LaidJob(ask, on, job, layout, sheets, steps))
    return LaidOut(cabinet, tuple(done), stopped)


def _searched(job: Job, ask: Ask, seconds: float, cutting: Cutting, tell: Tell) -> tuple[Layout, bool]:
    """The layout that is wished for among those of least cost, and whether the search was stopped."""
    found: list[Layout] = []
    try:
        for layout in layouts(job, seconds * (1 - FOR_CHOICE)):
            found = [layout]
            tell(ask, layout)
        for layout in pool(job, found[0].cost, seconds * FOR_CHOICE):
            found.append(replace(layout, bound=found[0].bound))
        return found[0], False
    except KeyboardInterrupt:
        if not found:
            found = [next(layouts(job, 0.0))]
            tell(ask, found[0])
        return found[0], True


def _sheets(
    ask: Ask, on: Offered, job: Job, layout: Layout, numbers: dict[str, int], cutting: Cutting
) -> Iterator[LaidSheet]:
    """The sheets by name, the pieces of each by the boards that they become."""
    boards = [iter(names) for names in ask.boards]
    lying = [iter(held) for held in on.held]
    for laid in layout.sheets:
        held = next(lying[laid.stock], None)
        pieces = tuple(Piece(next(boards[one.part]), ask.letters[one.part], one) for one in laid.placed)
        name = _name(ask.sheet, held, numbers)
        yield LaidSheet(
            name, ask.sheet, ask.stages, job.stock[laid.stock], held, ask.kerf, laid, pieces,
            sawn(job, laid, cutting.choose),
        )  # fmt: skip


def _name(sheet: Sheet, held: Held | None, numbers: dict[str, int]) -> str:
    """What is written on it: bought sheets are counted, and so are offcuts in the shop and the rests of each sheet."""
    what = sheet.name if held is None else f"{held.root}, rest" if held.root else f"{sheet.name}, offcut"
    numbers[what] = numbers.get(what, 0) + 1
    return f"{what} {numbers[what]}"


def _left_after(held: Iterable[Held], sheets: Iterable[LaidSheet]) -> tuple[Held, ...]:
    """What lies in the shop when these are cut: what was not used, and what they left."""
    left = list(held)
    for sheet in sheets:
        if sheet.held is not None:
            left.remove(sheet.held)
        root = (sheet.held and sheet.held.root) or sheet.name
        left += [Held(rest.w, rest.h, left_of=sheet.name, root=root) for rest in sheet.sawn.offcuts]
    return tuple(left)


def offcuts_left(found: LaidOut) -> tuple[tuple[LaidSheet, Rect], ...]:
    """What is left in the end: each offcut with the sheet that it is left of, but those that were cut up later."""
    cut_up = [(sheet.held.left_of, sheet.held.length, sheet.held.width) for sheet in found.sheets if sheet.held]
    left = []
    for sheet in found.sheets:
        for rest in sheet.sawn.offcuts:
            if (key := (sheet.name, rest.w, rest.h)) in cut_up:
                cut_up.remove(key)
            else:
                left.append((sheet, rest))
    return tuple(left)
