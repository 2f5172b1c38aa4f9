"""Short strips and parts are ripped as one long piece and cut to length afterwards: a short piece is not ripped."""

from itertools import pairwise

from shoplib.buying.jobs import Ask
from shoplib.buying.rough import STRIPS, ripped_whole, shortest_rip
from shoplib.layout.grain_run import Run, comes_out
from shoplib.layout.pieces import Job
from shoplib.measure import Style
from shoplib.model.board import Board


def strip_runs(ask: Ask, job: Job, style: Style) -> list[tuple[Run, tuple[Board, ...]]]:
    """Equal strips and parts too short to be ripped singly, in runs that are just long enough, with their boards.

    Where all of them together are still too short, they are one run. Where a run comes out of no board of the job,
    they stay single, and so do fronts: those may keep an order of their own (`front_order`).

    >>> from shoplib.layout.pieces import Part, Stock
    >>> from shoplib.measure import MM, MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> from shoplib.model.sheet import Sheet
    >>> place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    >>> lips = tuple(Board(f"lip {n}", "case", 1, "ash", 140, 18, 4, place, role="edging strip") for n in range(5))
    >>> ask = Ask(Sheet("ash", "solid", 20 * MM), (1,), (Part("lips", 150 * MM, 4 * MM, 5),), (lips,), ("A",), 3 * MM)
    >>> job = Job(ask.parts, (Stock("ash", 2400 * MM, 120 * MM),), ask.kerf)
    >>> [[board.name for board in boards] for _, boards in strip_runs(ask, job, MM_STYLE)]
    [['lip 0', 'lip 1'], ['lip 2', 'lip 3', 'lip 4']]
    """
    found = []
    for index, (part, boards) in enumerate(zip(ask.parts, ask.boards, strict=True)):
        strip = boards[0].role in STRIPS and part.length < shortest_rip(style)
        part_ripped = boards[0].role != "front" and ripped_whole(boards[0], ask.sheet, part.length, style)
        if (strip or part_ripped) and len(boards) > 1:
            each = -(-(shortest_rip(style) + ask.kerf) // (part.length + ask.kerf))
            count = max(1, len(boards) // each)
            bounds = [len(boards) * number // count for number in range(count + 1)]
            mine = [boards[start:end] for start, end in pairwise(bounds)]
            runs = [(Run((index,) * len(some), name=f"{part.name} as one strip"), some) for some in mine]
            found += runs if all(comes_out(job, run) for run, _ in runs) else []
    return found
