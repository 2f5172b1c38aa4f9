"""cut_order.csv: all saw cuts in their order, setting by setting, for a spreadsheet.

First stand the cautions. After the saw cuts of a stage stand its joint cuts that must match, stop by stop: dadoes,
grooves and rabbets that more than one board, or more than one place of a board, has at the same distance from the same
side; and the mates that no one stop serves.
"""

import csv
import io
from collections import Counter
from collections.abc import Iterator

from shoplib.buying.board_words import then_ripped
from shoplib.buying.laid import LaidJob, LaidOut, LaidSheet
from shoplib.buying.lifts import needs_two, weight_of
from shoplib.buying.numbering import Turn, turns
from shoplib.buying.piece_sizes import PieceSizes
from shoplib.buying.rough import second_rip
from shoplib.buying.waiting import not_before
from shoplib.documents.cut_list_file import safe_cell
from shoplib.documents.cut_order_words import minded, saw_cautions
from shoplib.layout.order import Piece, Step
from shoplib.lists.dado_stops import place_words, size_words, two_apart, two_walls
from shoplib.lists.writing import Writing
from shoplib.measure import Style, write_mm
from shoplib.words.naming import boards_in_short

COLUMNS = (
    "step", "setting", "stage", "sheet", "piece", "piece_length", "piece_width", "cut", "set_by", "fence",
    "cuts", "comes_off", "is_left", "mind", "not_before", "then", "finishes", "weighs", "lift",
    "piece_length_mm", "piece_width_mm", "fence_mm",
)  # fmt: skip
"""The columns of cut_order.csv, in order. `set_by` is the fence, a stop on a sled or mitre gauge, or a line that a
guided saw follows; `fence` is the size of what comes off between that and the blade, of a joint cut the side that it
is set from, and how far. Rows with the same `setting` follow one another, and what is set stays. `mind` says what asks
for care, and the cautions stand there too, in rows of their own before all others. `not_before` says what must have
been done first, `then` what must be done to a strip before its next cut. Lengths run along the grain of the sheet,
widths across it; they are written as a shop sets them, what is left rounded down, and in the columns in mm exactly."""

TWO, ONE = "two people", "one person"

CAUTION = "caution"
"""Stands for a cut in the rows that are cautions."""


def cut_order_csv(found: LaidOut) -> str:
    """The text of cut_order.csv. Save it as UTF-8.

    Lines end in a line feed on every system, and no cell begins with a sign that a spreadsheet takes for a formula.
    """
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for cells in (*caution_rows(), *order_rows(found)):
        writer.writerow([safe_cell(cell) for cell in cells])
    return out.getvalue()


def caution_rows() -> Iterator[list[str]]:
    """The cautions, each in a row of its own under `mind`."""
    for caution in saw_cautions():
        row = dict.fromkeys(COLUMNS, "") | {"cut": CAUTION, "mind": caution}
        yield [row[column] for column in COLUMNS]


def order_rows(found: LaidOut) -> Iterator[list[str]]:
    """All cuts in their order, cells in the order of `COLUMNS`: saw cuts, after those of a stage its joint cuts.

    Steps and settings are numbered on from job to job. A joint cut that must match others is one setting, for all its
    boards. After them come the mates that no one stop serves; they are settings of rows before, or of cuts that nothing
    must match.
    """
    writing = Writing(found.cabinet.style)
    for turn in turns(found):
        for step in turn.job.steps:
            number = str(turn.steps + step.number), str(turn.settings + step.setting)
            yield [*number, *_cells(step, turn.job, found, writing)]
        yield from _joint_rows(turn, found, writing)


def _joint_rows(turn: Turn, found: LaidOut, writing: Writing) -> Iterator[list[str]]:
    steps, settings = turn.before_joints
    for number, stop in enumerate(turn.stops, start=1):
        row = dict.fromkeys(COLUMNS, "")
        row |= {
            "step": str(steps + number),
            "setting": str(settings + number),
            "stage": str(stop.stage),
            "sheet": ", ".join(dict.fromkeys(board.sheet for board in stop.boards)),
            "piece": boards_in_short(stop.boards),
            "cut": stop.kind,
            "fence": place_words(stop, writing),
            "cuts": str(len(stop.cuts)),
            "comes_off": size_words(stop, writing),
            "not_before": not_before([stop.stage], found.cabinet),
            "fence_mm": write_mm(stop.wall),
        }
        yield [row[column] for column in COLUMNS]
    for number, two in enumerate(turn.mates, start=len(turn.stops) + 1):
        stages = sorted({board.stage for board in two.boards})
        row = dict.fromkeys(COLUMNS, "")
        row |= {
            "step": str(steps + number),
            "stage": ", ".join(map(str, stages)),
            "piece": f"mates of {boards_in_short(two.boards)}",
            "cut": "dado",
            "fence": two_walls(two, writing),
            "mind": two_apart(two, writing),
            "not_before": not_before(stages, found.cabinet),
        }
        yield [row[column] for column in COLUMNS]


def _cells(step: Step, job: LaidJob, found: LaidOut, writing: Writing) -> list[str]:
    on, at = job.sheets[step.sheet], step.piece.at
    sizes = PieceSizes(on, writing)
    weight = weight_of(on.sheet, at.w, at.h, on.thickness)
    two = needs_two(on.sheet, at.w, at.h, found.cabinet.project.cutting.one_lifts, on.thickness)
    made = (*step.off, *([step.left] if step.left else []))
    off, left = _told(step.off, job, sizes), _told((step.left,), job, sizes) if step.left else ["nothing"]
    if step.kind == "trim":  # what is kept lies between fence and blade
        [kept] = step.off
        off, left = [f"trim, {writing.length(at.w - kept.at.w + at.h - kept.at.h)}"], off
    return [
        ", ".join(map(str, job.ask.stages)),
        on.sheet.name,
        step.piece.mark,
        sizes.length(at),
        sizes.width(at),
        step.kind,
        step.set_by,
        writing.length(step.fence),
        str(len(step.cuts)),
        "; ".join(off),
        "; ".join(left),
        minded(step, job.ask.letters, writing.length),
        not_before(job.ask.stages, found.cabinet),
        "; ".join(_then(made, on, writing.style)) if step.kind == "rip" else "",
        "; ".join(board_of(piece, on) for piece in made if piece.part is not None),
        weight.told(found.cabinet.style.unit) if weight else "not known",
        (TWO if two else ONE) if weight else "not known",
        write_mm(at.w),
        write_mm(at.h),
        write_mm(step.fence),
    ]


def _then(made: tuple[Piece, ...], on: LaidSheet, style: Style) -> dict[str, None]:
    """What is done to strips that come off a board thicker than they are wide, long ones and those cut to length."""
    told: dict[str, None] = {}
    for piece in made:
        x, y, w, h = piece.at
        strips = [one for one in on.pieces if (one.placed.at.y, one.placed.at.h) == (y, h)
                  and x <= one.placed.at.x and one.placed.at.x + one.placed.at.w <= x + w]  # fmt: skip
        told |= {then_ripped(wide, style): None for one in strips if (wide := second_rip(one.board, on.sheet, style))}
    return told


def _told(pieces: tuple[Piece, ...], job: LaidJob, sizes: PieceSizes) -> list[str]:
    """Equal pieces together: "3 x A, 20 in x 7 15/16 in"; a part by its letter on the drawing."""
    marks = [job.ask.letters[piece.part] if piece.part is not None else piece.mark for piece in pieces]
    counted = Counter(zip(marks, (sizes.size(piece.at) for piece in pieces), strict=True))
    return [f"{count} x {mark}, {size}" if count > 1 else f"{mark}, {size}" for (mark, size), count in counted.items()]


def board_of(piece: Piece, on: LaidSheet) -> str:
    """The name of the board that a part becomes, or of its stave, by where it lies on the sheet."""
    return next(one.name for one in on.pieces if one.placed.at == piece.at)
