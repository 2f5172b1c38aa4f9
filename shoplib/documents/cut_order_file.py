"""cut_order.csv: all saw cuts in their order, fence setting by fence setting, for a spreadsheet."""

import csv
import io
from collections import Counter
from collections.abc import Iterator

from shoplib.buying.laid_out import LaidJob, LaidOut, LaidSheet
from shoplib.buying.lifts import needs_two, weight_of
from shoplib.documents.cut_list_file import safe_cell
from shoplib.layout.order import Piece, Step
from shoplib.lists.writing import Writing
from shoplib.measure import write_mm

COLUMNS = (
    "step", "setting", "stage", "sheet", "piece", "piece_length", "piece_width", "cut", "fence", "cuts",
    "comes_off", "is_left", "finishes", "weighs", "lift",
    "piece_length_mm", "piece_width_mm", "fence_mm",
)  # fmt: skip
"""The columns of cut_order.csv, in order. `fence` is the size between fence and blade of what comes off; rows with the
same `setting` follow one another, and the fence stays. Lengths run along the grain of the sheet, widths across it;
they are written as a shop sets them, and in the columns in mm exactly."""

TWO, ONE = "two people", "one person"


def cut_order_csv(found: LaidOut) -> str:
    """The text of cut_order.csv. Save it as UTF-8.

    Lines end in a line feed on every system, and no cell begins with a sign that a spreadsheet takes for a formula.
    """
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for cells in order_rows(found):
        writer.writerow([safe_cell(cell) for cell in cells])
    return out.getvalue()


def order_rows(found: LaidOut) -> Iterator[list[str]]:
    """The rows of the table, cells in the order of `COLUMNS`; steps and settings are numbered on from job to job."""
    writing = Writing(found.cabinet.style)
    steps = settings = 0
    for job in found.jobs:
        for step in job.steps:
            yield [str(steps + step.number), str(settings + step.setting), *_cells(step, job, found, writing)]
        if job.steps:
            steps, settings = steps + job.steps[-1].number, settings + job.steps[-1].setting


def _cells(step: Step, job: LaidJob, found: LaidOut, writing: Writing) -> list[str]:
    on, at = job.sheets[step.sheet], step.piece.at
    weight = weight_of(on.sheet, at.w, at.h)
    two = needs_two(on.sheet, at.w, at.h, found.cabinet.project.cutting.one_lifts)
    made = (*step.off, *([step.left] if step.left else []))
    off, left = _told(step.off, job, writing), _told((step.left,), job, writing) if step.left else ["nothing"]
    if step.kind == "trim":  # what is kept lies between fence and blade
        [kept] = step.off
        off, left = [f"trim, {writing.length(at.w - kept.at.w + at.h - kept.at.h)}"], off
    return [
        ", ".join(map(str, job.ask.stages)),
        on.sheet.name,
        step.piece.mark,
        writing.length(at.w),
        writing.length(at.h),
        step.kind,
        writing.length(step.fence),
        str(len(step.cuts)),
        "; ".join(off),
        "; ".join(left),
        "; ".join(board_of(piece, on) for piece in made if piece.part is not None),
        weight.told(found.cabinet.style.unit) if weight else "not known",
        (TWO if two else ONE) if weight else "not known",
        write_mm(at.w),
        write_mm(at.h),
        write_mm(step.fence),
    ]


def _told(pieces: tuple[Piece, ...], job: LaidJob, writing: Writing) -> list[str]:
    """Equal pieces together: "3 x A, 20 in x 7 15/16 in"; a part by its letter on the drawing."""
    marks = [job.ask.letters[piece.part] if piece.part is not None else piece.mark for piece in pieces]
    sizes = [f"{writing.length(piece.at.w)} x {writing.length(piece.at.h)}" for piece in pieces]
    counted = Counter(zip(marks, sizes, strict=True))
    return [f"{count} x {mark}, {size}" if count > 1 else f"{mark}, {size}" for (mark, size), count in counted.items()]


def board_of(piece: Piece, on: LaidSheet) -> str:
    """The name of the board that a part becomes, by where it lies on the sheet."""
    return next(one.board.name for one in on.pieces if one.placed.at == piece.at)
