"""Layouts of the same cost, for a choice among them: found at random, with equal widths in rows, with a room kept."""

from collections.abc import Callable, Iterator
from dataclasses import replace

from shoplib.layout.beam import Beam
from shoplib.layout.grain_run import apart, joined
from shoplib.layout.grown import grown
from shoplib.layout.in_rows import rows
from shoplib.layout.pieces import Job, Layout, LayoutError
from shoplib.layout.room_kept import sheet_by_sheet, with_room

PASSES = 200
"""Passes with the worth of the parts shaken: beyond these hardly any layout is new."""

GUIDES = ((0.1, 1.0), (0.0, 1.0), (0.1, 1.5))
"""How unfinished layouts are compared (see `Beam._score`)."""

FRUITLESS = 8
"""Passes without a layout after which parts lie on top of each other in a strip as well, and beams are wider."""

ROW_PASSES = 6
"""The same for layouts in rows."""

SHARES = (1, 2)
"""A row is as long as the sheet at most, or half as long."""


def alike(job: Job, cost: int, seconds: float, clock: Callable[[], float]) -> Iterator[Layout]:
    """Layouts that cost at most `cost`, some of them more than once.

    All ways to find them get the same time, so that none has to wait until another has found all it can.
    """
    until = clock() + seconds

    def stop() -> bool:
        return clock() > until

    known: list[Layout] = []
    for layout in _shaken(job, cost, PASSES, lambda: clock() > until - 2 * seconds / 3):
        if layout is not None:
            known.append(layout)
            yield layout
    scarce = _as_used(job, known[0]) if known else job
    waiting = [sheet_by_sheet(job, known, stop), with_room(scarce, cost, known, stop), _in_rows(scarce, cost, stop)]
    while waiting and not stop():
        way = waiting.pop(0)
        begun = clock()
        for layout in way:
            if layout is not None:
                yield layout
            if clock() - begun > seconds / 20:
                waiting.append(way)
                break


def _shaken(job: Job, cost: int, passes: int, stop: Callable[[], bool]) -> Iterator[Layout | None]:
    """Layouts as the beam finds them when parts are worth a little more or less; None for a pass that finds none."""
    g = grown(job)
    beam = Beam(g)
    reached = False
    for shaken in range(passes):
        # Where three stages do not seem to do, four may, and more must be looked at.
        again = 0 if reached else min(shaken // FRUITLESS, 5)
        beam.deep = again > 0
        beam.shake(shaken)
        found = beam.run(16 * 2 ** (shaken % 4 + again), GUIDES[shaken % len(GUIDES)], cost, stop)
        reached |= bool(found)
        for sheets in found:
            if g.missing is None or all(sheet.stock != g.missing for sheet in sheets):
                yield g.layout(sheets, 0)
        if stop():
            return
        yield None


def _in_rows(job: Job, cost: int, stop: Callable[[], bool]) -> Iterator[Layout | None]:
    """Layouts with equal widths in one row, and such that leave a piece whole besides."""
    largest = max((stock.usable for stock in job.stock if stock.count != 0), key=lambda usable: usable.area)
    for share in SHARES:
        for across in (False, True):
            runs = rows(job, (largest.h if across else largest.w) // share, across)
            if not runs:
                continue
            whole = joined(job, runs)
            known: list[Layout] = []
            try:
                for layout in _shaken(whole, cost, ROW_PASSES, stop):
                    known += [layout] if layout else []
                    yield layout and apart(job, runs, layout)
                if not known:
                    continue
                for layout in with_room(whole, cost, known, stop):
                    yield layout and apart(job, runs, layout)
            except LayoutError:  # a row comes out of no stock that there is
                continue


def _as_used(job: Job, layout: Layout) -> Job:
    """The job with the pieces in the shop alone that this layout uses."""
    used = [laid.stock for laid in layout.sheets]
    return replace(
        job,
        stock=tuple(
            one if one.count is None else replace(one, count=used.count(number)) for number, one in enumerate(job.stock)
        ),
    )
