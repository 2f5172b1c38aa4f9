"""Parts that must come from one board in the order of their grain: laid out as one part, then taken apart again.

Drawer fronts that lie in one board as they stand in the case show one figure running through all of them. Cut from
two boards, or out of order, the lines of the grain stop at every gap.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

from shoplib.layout.pieces import Job, Laid, Layout, LayoutError, Part, Placed, Rect


@dataclass(frozen=True, slots=True)
class Run:
    """Parts in the order in which they lie in the board; each counts in the list of parts, and may come again.

    They follow one another along the grain or, where `across`, lie side by side across it.
    """

    parts: tuple[int, ...]
    across: bool = False
    name: str = ""


def joined(job: Job, runs: Sequence[Run]) -> Job:
    """The job with each run as one part, as long (or, across the grain, as wide) as its parts and the cuts between.

    The parts that are left come first, in their order, then the runs. Raises LayoutError where the runs ask for more
    of a part than the job has.

    >>> left, right, rail = Part("left front", 400, 150), Part("right front", 300, 150), Part("rail", 700, 60)
    >>> joined(Job((left, right, rail), (), kerf=3), [Run((0, 1), name="fronts")]).parts
    (Part(name='rail', length=700, width=60, count=1, may_turn=False, turn=0), \
Part(name='fronts', length=703, width=150, count=1, may_turn=False, turn=0))
    """
    left = _left_over(job, runs)
    alone = tuple(replace(job.parts[index], count=count) for index, count in left.items())
    return replace(job, parts=(*alone, *(_as_one(job, run) for run in runs)))


def apart(job: Job, runs: Sequence[Run], layout: Layout) -> Layout:
    """A layout of the joined job as one of the job itself: each run is its parts again, in their order.

    >>> front = Part("front", 400, 150, count=2)
    >>> job, run = Job((front,), (), kerf=3), Run((0, 0))
    >>> one = Layout((Laid(0, (Placed(0, Rect(10, 0, 803, 150)),)),), 0, 0)
    >>> [placed.at.x for placed in apart(job, [run], one).sheets[0].placed]
    [10, 413]
    """
    alone = list(_left_over(job, runs))
    sheets = []
    for sheet in layout.sheets:
        placed = []
        for one in sheet.placed:
            if one.part < len(alone):
                placed.append(replace(one, part=alone[one.part]))
            else:
                placed += _members(job, runs[one.part - len(alone)], one)
        sheets.append(Laid(sheet.stock, tuple(placed)))
    return replace(layout, sheets=tuple(sheets))


def _left_over(job: Job, runs: Sequence[Run]) -> dict[int, int]:
    """Of each part, how many are in no run; those that are all in runs are left out."""
    taken = Counter(index for run in runs for index in run.parts)
    for index, count in taken.items():
        if count > job.parts[index].count:
            part = job.parts[index]
            raise LayoutError(
                f"{count} of {part.name} are to lie in the order of their grain, and there are only {part.count}"
            )
    return {
        index: part.count - taken[index] for index, part in enumerate(job.parts) if part.count > taken[index]
    }


def size_of(job: Job, run: Run) -> tuple[int, int]:
    """Length and width of the piece that a run is cut from, a kerf between its parts.

    >>> size_of(Job((Part("front", 400, 150, count=2),), (), kerf=3), Run((0, 0)))
    (803, 150)
    """
    parts = [job.parts[index] for index in run.parts]
    between = job.kerf * (len(parts) - 1)
    lengths, widths = [part.length for part in parts], [part.width for part in parts]
    return (max(lengths), sum(widths) + between) if run.across else (sum(lengths) + between, max(widths))


def comes_out(job: Job, run: Run) -> bool:
    """Whether some stock of the job holds the whole run.

    >>> from shoplib.layout.pieces import Stock
    >>> comes_out(Job((Part("front", 400, 150, count=2),), (Stock("board", 800, 190),), kerf=3), Run((0, 0)))
    False
    """
    length, width = size_of(job, run)
    return any(length <= stock.usable.w and width <= stock.usable.h for stock in job.stock)


def _as_one(job: Job, run: Run) -> Part:
    parts = [job.parts[index] for index in run.parts]
    may_turn, turn = all(part.may_turn for part in parts), min(part.turn for part in parts)
    return Part(run.name, *size_of(job, run), may_turn=may_turn, turn=turn)


def _members(job: Job, run: Run, whole: Placed) -> list[Placed]:
    """The parts of a run where they lie, from the corner of the whole outwards."""
    x, y, found = whole.at.x, whole.at.y, []
    # Turned across the sheet, what ran along the grain runs along y.
    along_x = run.across == whole.turned
    for index in run.parts:
        part = job.parts[index]
        w, h = (part.width, part.length) if whole.turned else (part.length, part.width)
        found.append(Placed(index, Rect(x, y, w, h), whole.turned))
        if along_x:
            x += w + job.kerf
        else:
            y += h + job.kerf
    return found
