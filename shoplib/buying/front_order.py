"""Which drawer fronts come from one board in the order in which they stand in the case."""

from collections import Counter
from collections.abc import Sequence

from shoplib.layout.grain_run import Run, comes_out, size_of
from shoplib.layout.pieces import Job, LayoutError
from shoplib.measure import Style, write_brief
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.words.naming import boards_in_short

_X, _Z = 0, 2


def fronts_in_order(cabinet: Cabinet) -> tuple[tuple[Board, ...], ...]:
    """The fronts of each run, as `cutting.fronts_in_grain_order` asks: top to bottom, or from left to right.

    Only fronts whose grain runs from side to side belong to one: those of a bay from its top one down, or all that
    stand at one height. A front by itself is no run.
    """
    how = cabinet.project.cutting.fronts_in_grain_order if cabinet.project else "no"
    if how == "no":
        return ()
    together: dict[object, list[Board]] = {}
    for board in cabinet.boards:
        if board.role == "front" and board.placement.own_axis(_X) == 0:
            low, high = board.box.low[_Z], board.box.high[_Z]
            together.setdefault(board.part_of.bay if how == "down each bay" else (low, high), []).append(board)
    runs = (sorted(fronts, key=lambda one: (-one.box.low[_Z], one.box.low[_X])) for fronts in together.values())
    return tuple(tuple(run) for run in runs if len(run) > 1)


def runs_of(
    cabinet: Cabinet, job: Job, boards: Sequence[Sequence[str]], style: Style
) -> list[tuple[Run, tuple[Board, ...]]]:
    """The runs of this job with their fronts; `boards` names, for each part of the job, the boards that are cut as it.

    Fronts that are glued up are there once for each of their staves, and have as many runs: each has one stave of
    every front, so that each stave of the row shows one figure. Fronts of a bay lie side by side across the grain, as
    they stand, where they are equally long and some stock is wide enough; else one behind another. Raises LayoutError
    where no stock holds a run.
    """
    where = {name: index for index, names in enumerate(boards) for name in names}
    down = cabinet.project is not None and cabinet.project.cutting.fronts_in_grain_order == "down each bay"
    pieces = Counter(name for names in boards for name in names)
    found = []
    for whole in fronts_in_order(cabinet):
        if not all(front.name in where for front in whole):
            continue
        for stave in range(max(pieces[front.name] for front in whole)):
            fronts = tuple(front for front in whole if pieces[front.name] > stave)
            if len(fronts) > 1:
                found.append((_run(job, fronts, where, down, style), fronts))
    return found


def _run(job: Job, fronts: tuple[Board, ...], where: dict[str, int], down: bool, style: Style) -> Run:
    run = tuple(where[front.name] for front in fronts)
    told = f"{boards_in_short(fronts)} in the order of their grain"
    side_by_side = [Run(run, True, told)] if down and len({front.length for front in fronts}) == 1 else []
    fitting = next((way for way in (*side_by_side, Run(run, False, told)) if comes_out(job, way)), None)
    if fitting is None:
        raise LayoutError(_too_large(job, run, told, style))
    return fitting


def _too_large(job: Job, run: tuple[int, ...], told: str, style: Style) -> str:
    length, width = (write_brief(side, style) for side in size_of(job, Run(run)))
    return (
        f"{told}: no board leaves {length} by {width} when it is trimmed; get a larger "
        'one, or write fronts_in_grain_order = "no" in [cutting]'
    )
