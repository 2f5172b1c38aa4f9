"""A cabinet laid out on its sheets and boards, cut by cut: what documents, drawings and lessons read."""

import time
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, suppress
from dataclasses import replace
from functools import partial
from itertools import count

from shoplib.buying.front_order import runs_of
from shoplib.buying.jobs import Ask, Held, Offered, asks, in_shop, job_of, least_kept, offered, usable_again
from shoplib.buying.kept import left_after
from shoplib.buying.laid import LaidJob, LaidOut, LaidSheet, Piece
from shoplib.buying.leftovers import cheapest_of, later_cost, left_by, spare_rank, together
from shoplib.buying.lifts import one_lifts
from shoplib.buying.rough import as_it_comes, shortest_rip
from shoplib.buying.searched import FOR_CHOICE, searched
from shoplib.buying.staves import from_boards
from shoplib.buying.strip_runs import strip_runs
from shoplib.layout.choose import Wanted, best_for
from shoplib.layout.cut_tree import sawn
from shoplib.layout.grain_run import apart, joined
from shoplib.layout.order import cut_order
from shoplib.layout.pieces import Layout, LayoutError, Placed
from shoplib.model.board import Board
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

LEAST_CHOICE = 0.1
"""Seconds that layouts are weighed against one another at least."""

LEAST_SHARE = 0.4
"""What each job has at least of the time that would be its own if all had the same."""

QUICK_TOGETHER = 0.5
"""Seconds to find what a sheet would cost with all its stages laid out together."""


Tell = Callable[[Ask, Offered, Layout], None]
"""Called with each better layout of what is being laid out, and what it may be cut from."""


def laid_out(cabinet: Cabinet, seconds: float = 10.0, tell: Tell = lambda ask, on, layout: None) -> LaidOut:
    """Lay out all boards, in about so many seconds, or fewer where nothing can be better.

    Ctrl+C, and a kernel that is interrupted, stop the search: the best so far is taken, of what was not yet looked at
    the first layout. Raises ImpossibleProject or LayoutError, each one sentence.
    """
    ends = time.monotonic() + seconds
    waiting = asks(cabinet)
    held = {ask.sheet.name: in_shop(ask.sheet) for ask in waiting}
    for ask in waiting:  # what cannot be is said before any time is spent on what can
        with _of(ask.sheet):
            _asked(cabinet, ask, held[ask.sheet.name])
    done: list[LaidJob] = []
    stopped = False
    for number, ask in enumerate(waiting):
        left = 0.0 if stopped else (ends - time.monotonic()) / (len(waiting) - number)
        if not stopped:  # a job before it that took long to choose leaves it less, and yet some
            left = max(left, seconds * LEAST_SHARE / len(waiting))
        with _of(ask.sheet):
            asked = _asked(cabinet, ask, held[ask.sheet.name])
            found, stopped_here = searched(asked.whole, max(left, 0.0), partial(tell, asked.ask, asked.on))
        stopped = stopped or stopped_here
        try:
            for_choice = max(LEAST_CHOICE, FOR_CHOICE * left) if seconds else 0.0
            laid = _laid(asked, found, done, for_choice, _wanted(asked, waiting, number))
        except KeyboardInterrupt:
            laid, stopped = _laid(asked, found[:1], done), True
        cut = [(sheet.held, sheet.name, sheet.sawn.offcuts) for sheet in laid.sheets]
        held[ask.sheet.name] = left_after(held[ask.sheet.name], cut, least_kept(ask.sheet))
        done.append(laid)
    cheaper: dict[str, int] = {}
    with suppress(KeyboardInterrupt):
        cheaper = {} if stopped else _all_together(cabinet, done)
    return LaidOut(cabinet, tuple(done), held, stopped, cheaper)


def _all_together(cabinet: Cabinet, done: Sequence[LaidJob]) -> dict[str, int]:
    """What sheets laid out stage by stage would cost with all their stages at once, where a quick search finds less."""
    by_sheet: dict[str, list[LaidJob]] = {}
    for job in done:
        by_sheet.setdefault(job.ask.sheet.name, []).append(job)
    found = {}
    for name, jobs in by_sheet.items():
        paid = sum(job.layout.cost for job in jobs)
        if len(jobs) > 1 and paid and jobs[0].on.priced:
            asked = [ask for ask in asks(cabinet) if ask.sheet.name == name]
            cost = cheapest_of(_asked(cabinet, together(asked), in_shop(jobs[0].ask.sheet)).whole, QUICK_TOGETHER)
            if cost < paid:
                found[name] = cost
    return found


def _wanted(asked: "_Asked", waiting: Sequence[Ask], number: int) -> Wanted | None:
    """What the leftovers of a job are wanted for; nothing is asked of them where parts are in runs."""
    if asked.runs:
        return None
    ask, cabinet = asked.ask, asked.cabinet
    left = left_by(asked.on, asked.held, least_kept(ask.sheet), left_after)
    same = [other for other in waiting if other.sheet.name == ask.sheet.name]
    parts = [part for other in same for part in (asked.job.parts if other is waiting[number] else other.parts)]
    later = [other for other in waiting[number + 1 :] if other.sheet.name == ask.sheet.name]
    if not later:
        return Wanted(spare=spare_rank(parts, ask.kerf, left))
    return Wanted(
        later_cost(lambda held: _asked(cabinet, together(later), held).whole, left), spare_rank(parts, ask.kerf, left)
    )


@contextmanager
def _of(sheet: Sheet) -> Iterator[None]:
    """What cannot be laid out is said with the name of its sheet: a room below knows rectangles only."""
    try:
        yield
    except LayoutError as fault:
        raise LayoutError(f"{sheet.name}: {fault}") from fault


class _Asked:
    """One job on its way: fronts that keep the order of their grain are one part until they are laid, and short strips.

    `whole` has them so; `runs` says which they are, `in_runs` their boards.
    """

    def __init__(self, cabinet: Cabinet, ask: Ask, held: tuple[Held, ...], on: Offered) -> None:
        self.cabinet, self.ask, self.held, self.on = cabinet, ask, held, on
        self.job = replace(job_of(ask, on), shortest=shortest_rip(cabinet.style))
        names = [[board.name for board in boards] for boards in ask.boards]
        runs = [*runs_of(cabinet, self.job, names, cabinet.style), *strip_runs(ask, self.job, cabinet.style)]
        self.runs = tuple(run for run, _ in runs)
        self.whole = joined(self.job, self.runs) if self.runs else self.job
        self.in_runs = [boards for _, boards in runs]


def _asked(cabinet: Cabinet, ask: Ask, held: tuple[Held, ...]) -> _Asked:
    """The job on what lies in the shop by then and what can be bought; what is too wide for boards is in staves.

    Of what an earlier stage leaves only what is worth keeping is cut up (`usable_again`).
    """
    there = usable_again(held)
    ask = from_boards(ask, there, cabinet.project.cutting.jointing, cabinet.style)
    return _Asked(cabinet, ask, held, offered(ask, there, cabinet.style))


def _laid(
    asked: _Asked,
    found: list[Layout],
    done: Sequence[LaidJob],
    for_choice: float = 0.0,
    wanted: Wanted | None = None,
) -> LaidJob:
    """The job as it will be cut, by the layout that is wished for among those that were found."""
    ask, job, cutting = asked.ask, asked.job, asked.cabinet.project.cutting
    # Where no time is given, the few layouts are weighed to the end, so that the choice is the same each time.
    clock = time.monotonic if for_choice else lambda: 0.0
    choice = best_for(cutting.choose, asked.whole, found, least_kept(ask.sheet), for_choice, clock, wanted)
    layout, cuts = choice.layout, choice.sheets
    if asked.runs:
        layout = apart(job, asked.runs, layout)
        cuts = [sawn(job, laid, cutting.choose, least_kept(ask.sheet)) for laid in layout.sheets]
    boards = _boards_in_turn(ask, asked.in_runs, choice.layout)
    names = _names(ask, done)
    lying, thick = [iter(held) for held in asked.on.held], as_it_comes(ask.sheet, cutting)
    sheets = []
    for laid, found_cuts in zip(layout.sheets, cuts, strict=True):
        held = next(lying[laid.stock], None)
        pieces = tuple(_piece(one, next(boards), ask) for one in laid.placed)
        stock = job.stock[laid.stock]
        sheets.append(
            LaidSheet(names(held), ask.sheet, ask.stages, stock, thick, held, ask.kerf, laid, pieces, found_cuts)
        )
    lifts = one_lifts(ask.sheet, cutting.one_lifts, thick)
    called = [sheet.name for sheet in sheets]
    steps = cut_order(job, layout.sheets, cuts, lifts, called, [sheet.left for sheet in sheets])
    others = () if asked.runs else tuple(found)
    return LaidJob(ask, asked.held, asked.on, job, layout, tuple(sheets), steps, others, choice.among)


def _piece(placed: Placed, becomes: tuple[Board, int], ask: Ask) -> Piece:
    board, stave = becomes
    return Piece(board, ask.letters[placed.part], placed, stave)


def _boards_in_turn(
    ask: Ask, runs: Sequence[Sequence[Board]], layout: Layout
) -> Iterator[tuple[Board, int]]:
    """The boards that the parts become, in the order in which they lie: those of a run in the order of their grain.

    With each the number of the stave, 0 where the part is the board itself.
    """
    made = Counter(board.name for boards in ask.boards for board in boards)
    given: Counter[str] = Counter()
    for board in _in_turn(ask, runs, layout):
        given[board.name] += 1
        yield board, given[board.name] if made[board.name] > 1 else 0


def _in_turn(ask: Ask, runs: Sequence[Sequence[Board]], layout: Layout) -> Iterator[Board]:
    in_runs = Counter(board.name for run in runs for board in run)
    alone = []
    for boards in ask.boards:
        alone.append([])
        for board in boards:  # a board that is glued up is there once for each stave, and may be in runs as often
            in_runs[board.name] -= 1
            if in_runs[board.name] < 0:
                alone[-1].append(board)
    waiting = [iter(boards) for boards in alone if boards]
    for laid in layout.sheets:
        for one in laid.placed:
            run = one.part - len(waiting)
            if run < 0:
                yield next(waiting[one.part])
            else:
                yield from runs[run]


def _names(ask: Ask, done: Sequence[LaidJob]) -> Callable[[Held | None], str]:
    """What is written on each: bought sheets are counted, and so are pieces on hand."""
    taken = {sheet.name for job in done for sheet in job.sheets}

    def name(held: Held | None) -> str:
        if held and held.name:
            return held.name
        what = ask.sheet.name if held is None else f"{ask.sheet.name} on hand"
        found = next(called for number in count(1) if (called := f"{what} {number}") not in taken)
        taken.add(found)
        return found

    return name
