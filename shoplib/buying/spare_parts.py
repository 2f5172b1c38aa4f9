"""Whether a spoiled part could be made again: asked of each sheet of a cabinet, of all that is left in the end."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from shoplib.buying.jobs import least_kept, usable_again
from shoplib.buying.kept import left_after
from shoplib.buying.laid import LaidJob, LaidOut
from shoplib.layout.cut_tree import sawn
from shoplib.layout.pieces import Job, Rect
from shoplib.layout.spare import Spare, most_spare, one_more, spare
from shoplib.model.sheet import Sheet

OTHERS = 6
"""So many other layouts of the same cost are cut in thought, to see whether one of them leaves more."""


@dataclass(frozen=True, slots=True)
class SheetSpare:
    """What is left of a sheet for parts that are spoiled: all its parts and what can be bought stand in `job`.

    `more` is one more sheet and what it would change, `other` what another layout of the same cost leaves.
    """

    sheet: Sheet
    job: Job
    found: Spare
    more: tuple[int, Spare] | None
    other: Spare | None


def spares(found: LaidOut) -> tuple[SheetSpare, ...]:
    """The spare of each sheet, in the order of the project."""
    by_sheet: dict[str, list[LaidJob]] = {}
    for job in found.jobs:
        by_sheet.setdefault(job.ask.sheet.name, []).append(job)
    return tuple(_of_sheet(jobs, found) for jobs in by_sheet.values())


def _of_sheet(jobs: list[LaidJob], found: LaidOut) -> SheetSpare:
    last = jobs[-1]
    whole = replace(last.job, parts=tuple(part for job in jobs for part in job.job.parts))
    left = [one.usable for one in usable_again(found.left[last.ask.sheet.name])]
    others = [spare(whole, other) for other in _left_otherwise(last, found)]
    other = others[most_spare(others)] if others else None
    return SheetSpare(last.ask.sheet, whole, spare(whole, left), one_more(whole, left), other)


def _left_otherwise(job: LaidJob, found: LaidOut) -> Iterator[list[Rect]]:
    """What other layouts of the job would leave; those before it stay as they are."""
    wish, least = found.cabinet.project.cutting.choose, least_kept(job.ask.sheet)
    for layout in [one for one in job.others if one.cost == job.layout.cost][:OTHERS]:
        cut = []
        lying = [iter(held) for held in job.on.held]
        for laid in layout.sheets:
            cut.append((next(lying[laid.stock], None), "", sawn(job.job, laid, wish, least).offcuts))
        yield [one.usable for one in usable_again(left_after(job.held, cut, least))]
