"""A cabinet laid out on its sheets and boards, cut by cut: what documents, drawings and lessons read."""

import time
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field, replace
from itertools import count

from shoplib.buying.front_order import runs_of
from shoplib.buying.jobs import Ask, Held, Offered, asks, in_shop, job_of, least_kept, offered, usable_again
from shoplib.buying.leftovers import cheapest_of, later_cost, left_by, spare_rank, together
from shoplib.buying.lifts import one_lifts
from shoplib.buying.rough import as_it_comes
from shoplib.buying.shop_first import shop_first
from shoplib.buying.staves import from_boards
from shoplib.buying.strip_runs import shortest_rip, strip_runs
from shoplib.layout.choose import Wanted, best_for
from shoplib.layout.cut_tree import sawn
from shoplib.layout.grain_run import apart, joined
from shoplib.layout.marks import letter
from shoplib.layout.offcuts import Least, worth_keeping
from shoplib.layout.order import SCRAP, Step, cut_order
from shoplib.layout.pieces import Job, Laid, Layout, LayoutError, Placed, Rect, Stock
from shoplib.layout.sawn import Sawn
from shoplib.layout.search import layouts, pool
from shoplib.measure import MM
from shoplib.model.board import Board
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

FOR_CHOICE = 0.3
"""The part of the time that goes to other layouts of the same cost, for the choice among them."""

LEAST_CHOICE = 0.1
"""Seconds that layouts are weighed against one another at least."""

MOST_FOR_CHOICE = 1.0
"""Seconds that the choice gets of what the search leaves of its time."""

LEAST_SHARE = 0.4
"""What each job has at least of the time that would be its own if all had the same."""

A_MOMENT = 2.0
"""Seconds for a first layout where stock is short, when the search was stopped before."""

QUICK_TOGETHER = 0.5
"""Seconds to find what a sheet would cost with all its stages laid out together."""


@dataclass(frozen=True, slots=True)
class Piece:
    """One part where it lies on its sheet: the board that it becomes, and the letter of its kind.

    `stave` counts from 1 where several are glued up into one board, and is 0 where it is the board itself.
    """

    board: Board
    letter: str
    placed: Placed
    stave: int = 0

    @property
    def name(self) -> str:
        """What it is called: the board, or which of its staves."""
        return f"{self.board.name}, stave {self.stave}" if self.stave else self.board.name


@dataclass(frozen=True, slots=True)
class LaidSheet:
    """One sheet, board or offcut with what is cut from it.

    `name` is written on it in the shop: "case sheet 1". `thickness` is as it comes, a solid board being rough. `held`
    is the piece that lies in the shop, None where it is bought. `pieces` are in the order of `laid.placed`; `sawn` has
    the cuts and what is left.
    """

    name: str
    sheet: Sheet
    stages: tuple[int, ...]
    stock: Stock
    thickness: int
    held: Held | None
    kerf: int
    laid: Laid
    pieces: tuple[Piece, ...]
    sawn: Sawn

    @property
    def bought(self) -> bool:
        """Whether it comes from the yard."""
        return self.held is None

    @property
    def kept(self) -> dict[Rect, str]:
        """The offcuts worth keeping, the largest first, each with its small letter."""
        return lettered(self.sawn.offcuts, least_kept(self.sheet))

    @property
    def left(self) -> dict[Rect, str]:
        """What is written on all that is left: an offcut has its letter, what is too small to keep is scrap."""
        kept = self.kept
        return {rest: offcut_name(self.name, kept[rest]) if rest in kept else SCRAP for rest in self.sawn.offcuts}


@dataclass(frozen=True, slots=True)
class LaidJob:
    """What was laid out together: what was asked, what lay in the shop before it, and what is offered for it; the
    layout that was chosen, its sheets, and the steps that free their parts, setting by setting. `others`
    are layouts that cost the same, of which `among` were looked at when it was chosen.
    """

    ask: Ask
    held: tuple[Held, ...]
    on: Offered
    job: Job
    layout: Layout
    sheets: tuple[LaidSheet, ...]
    steps: tuple[Step, ...]
    others: tuple[Layout, ...] = ()
    among: int = 1


@dataclass(frozen=True, slots=True)
class LaidOut:
    """All sheets of a cabinet, in the order in which they are cut.

    `left` is what lies in the shop at the end, by the name of its sheet: what was not used, and all offcuts. `stopped`:
    the search was stopped before its time, and the best so far was taken. `all_together` is what the stock of a sheet
    would cost with all its stages laid out together, for the sheets that would cost less so.
    """

    cabinet: Cabinet
    jobs: tuple[LaidJob, ...]
    left: dict[str, tuple[Held, ...]]
    stopped: bool = False
    all_together: dict[str, int] = field(default_factory=dict)

    @property
    def sheets(self) -> tuple[LaidSheet, ...]:
        """All of them."""
        return tuple(sheet for job in self.jobs for sheet in job.sheets)


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
            found, stopped_here = _searched(asked, max(left, 0.0), tell)
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


def _searched(asked: _Asked, seconds: float, tell: Tell) -> tuple[list[Layout], bool]:
    """Layouts of least cost, the first found first, and whether the search was stopped.

    Where nothing need be bought, they are those that take the least from the shop; else those in which what can comes
    out of pieces in the shop.
    """
    found: list[Layout] = []
    stopped = False
    begun = time.monotonic()
    try:
        for layout in layouts(asked.whole, seconds * (1 - FOR_CHOICE)) if seconds else ():
            found = [layout]
            tell(asked.ask, asked.on, layout)
    except KeyboardInterrupt:
        stopped = True
    if not found:
        found = [_at_once(asked.whole)]
        tell(asked.ask, asked.on, found[0])
    for_choice = max(seconds * FOR_CHOICE, min(MOST_FOR_CHOICE, begun + seconds - time.monotonic()))
    cost, bound = found[0].cost, found[0].bound
    if not stopped:
        try:
            if not cost:
                found = _least_of_the_shop(_by_area(asked.whole), found, for_choice)
            elif (shop := shop_first(asked.whole, found[0], for_choice)) != found:
                found, cost = shop, shop[0].cost
            else:
                _add_alike(asked.whole, cost, for_choice, found)
        except KeyboardInterrupt:
            stopped = True
    return [replace(layout, cost=cost, bound=bound) for layout in found], stopped


def _at_once(job: Job) -> Layout:
    """The first layout; a moment is given to the search where stock is so short that it is not found at once."""
    try:
        return next(layouts(job, 0.0))
    except LayoutError:
        return next(layouts(job, A_MOMENT))


def _least_of_the_shop(job: Job, found: list[Layout], seconds: float) -> list[Layout]:
    """Layouts that take the least area from the shop; those that were found before where the time is too short."""
    try:
        *_, best = layouts(job, seconds / 2)
    except LayoutError:
        return found
    found = [best]
    _add_alike(job, best.cost, seconds / 2, found)
    return found


def _add_alike(job: Job, cost: int, seconds: float, found: list[Layout]) -> None:
    """More layouts at this cost, one by one, so that a search that is stopped has added what it came to.

    None in no time: what is laid out at once comes out the same each time.
    """
    if not seconds:
        return
    with suppress(LayoutError):  # none was found in this time, and there is one already
        found += pool(job, cost, seconds)


def _by_area(job: Job) -> Job:
    """The job with the stock that lies in the shop alone, each piece as dear as it is large (mm2)."""
    stock = (
        replace(one, count=0) if one.count is None else replace(one, cost=one.length * one.width // MM**2)
        for one in job.stock
    )
    return replace(job, stock=tuple(stock))


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


def left_after(
    held: Iterable[Held], cut: Iterable[tuple[Held | None, str, Sequence[Rect]]], least: Least
) -> tuple[Held, ...]:
    """What lies in the shop when these are cut: what was not used, and what they left.

    Each is the piece in the shop that it was (None: bought), its name, and its offcuts; those of at least the size
    `least` are kept.

    >>> from shoplib.layout.offcuts import LEAST
    >>> one, other = Held(60, 30), Held(40, 30)
    >>> left_after([one, other], [(one, "ply on hand 1", [Rect(0, 0, 20, 30)])], LEAST)[0] == other
    True
    """
    left = list(held)
    for was, name, offcuts in cut:
        if was is not None:
            left.remove(was)
        letters = lettered(offcuts, least)
        left += [
            Held(rest.w, rest.h, left_of=name, name=offcut_name(name, letters[rest]) if rest in letters else "")
            for rest in offcuts
        ]
    return tuple(left)


def offcut_name(sheet: str, called: str) -> str:
    """What is written on an offcut that is kept.

    >>> offcut_name("ply 1", "a")
    'ply 1, offcut a'
    """
    return f"{sheet}, offcut {called}"


def lettered(offcuts: Iterable[Rect], least: Least) -> dict[Rect, str]:
    """The offcuts worth keeping, the largest first, each with its small letter.

    >>> from shoplib.layout.offcuts import LEAST
    >>> from shoplib.measure import INCH
    >>> small, large = Rect(0, 0, 20 * INCH, 9 * INCH), Rect(0, 9 * INCH, 40 * INCH, 9 * INCH)
    >>> list(lettered([small, large, Rect(0, 0, INCH, INCH)], LEAST).values()), lettered([small, large], LEAST)[large]
    (['a', 'b'], 'a')
    """
    return {rest: letter(number).lower() for number, rest in enumerate(worth_keeping(offcuts, least))}
