"""Equal widths in one row: parts that one setting of the fence serves, laid out as one long strip.

A search for the least cost scatters equal parts over a sheet wherever they fit. A shop rips one strip and crosscuts
all of them from it. Such layouts are found by laying out the strips.
"""

from shoplib.layout.grain_run import Run
from shoplib.layout.pieces import Job


def rows(job: Job, longest: int, across: bool = False) -> tuple[Run, ...]:
    """Parts of equal width one after another, in as few strips as go, none longer than `longest` ticks.

    `across`: parts of equal length side by side, in pieces that are crosscut at one setting. Long parts go first, each
    into the strip that it fills best; what would be alone in its strip is in none.

    >>> from shoplib.layout.pieces import Part
    >>> job = Job((Part("divider", 150, 80, 3), Part("shelf", 90, 80, 4), Part("rail", 500, 40)), (), kerf=3)
    >>> [run.parts for run in rows(job, 500)]
    [(0, 0, 0), (1, 1, 1, 1)]
    """
    by_width: dict[int, list[tuple[int, int]]] = {}
    for index, part in enumerate(job.parts):
        along, beside = (part.width, part.length) if across else (part.length, part.width)
        by_width.setdefault(beside, []).extend([(along, index)] * part.count)
    found = []
    for equal in by_width.values():
        strips: list[tuple[int, list[int]]] = []  # what is left of each, and its parts
        for along, index in sorted(equal, key=lambda one: (-one[0], one[1])):
            able = [strip for strip in strips if strip[0] >= along + job.kerf]
            best = min(able, default=None)
            if best is None:
                strips.append((longest - along, [index]))
            else:
                strips[strips.index(best)] = (best[0] - along - job.kerf, [*best[1], index])
        found += [Run(tuple(sorted(parts)), across, "row") for _, parts in strips if len(parts) > 1]
    return tuple(found)
