"""cut_order.csv: all saw cuts in their order, setting by setting, for a spreadsheet.

First stand the cautions. After the saw cuts of a stage stand its joint cuts that must match, stop by stop: dadoes,
grooves and rabbets that more than one board, or more than one place of a board, has at the same distance from the same
side; the mates that no one stop serves; and all notches, holes for screws, pockets and finger sockets, alike ones
together.
"""

import csv
import io
from collections import Counter
from collections.abc import Iterable, Iterator

from shoplib.buying.board_words import then_ripped
from shoplib.buying.held_back import stages_of, turn_waits
from shoplib.buying.laid import LaidJob, LaidOut, LaidSheet
from shoplib.buying.lifts import needs_two, weight_of
from shoplib.buying.numbering import Turn, turns
from shoplib.buying.piece_sizes import PieceSizes
from shoplib.buying.rough import STRIPS, second_rip
from shoplib.buying.waiting import cut_waits
from shoplib.documents.before_cutting import STOPPED
from shoplib.documents.cut_list_file import safe_cell
from shoplib.documents.cut_order_words import minded, on_end_cautions, rough_cautions, saw_cautions
from shoplib.layout.order import Piece, Step
from shoplib.lists.dado_stops import place_words, size_words, stopped_words, two_apart, two_sizes, two_walls
from shoplib.lists.on_end import MIND, always_on_end
from shoplib.lists.writing import Writing
from shoplib.measure import Style, write_mm
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.words.naming import boards_in_short

COLUMNS = (
    "step", "setting", "stage", "sheet", "piece", "piece_length", "piece_width", "cut", "set_by", "fence",
    "cuts", "comes_off", "is_left", "mind", "not_before", "then", "finishes", "weighs", "lift",
    "piece_length_mm", "piece_width_mm", "fence_mm",
)  # fmt: skip
"""The columns of cut_order.csv, in order. `set_by` is the fence, a stop on a sled or mitre gauge, a thin-strip stop
beside the blade, on its outer side, or a line that a guided saw follows; `fence` is the size of what comes off between
that and the blade, of a joint cut the side that it is set from, and how far. Rows with the same `setting` follow one
another, and what is set stays. `mind` says what asks for care, and the cautions stand there too, in rows of their own
before all others. `not_before` says what must have been done first, `then` what must be done to a strip before its next
cut, and to what finished size a rough part is trimmed. Lengths run along the grain of the sheet, widths across it; they
are written as a shop sets them, what is left rounded down, and in the columns in mm exactly."""

TWO, ONE = "two people", "one person"

STOP, CAUTION, CHECK = "stop", "caution", "check"
"""Stand for a cut in the row of a plan that does not go together, in the rows that are cautions, and in those of cuts
that were all made in rows before."""

ALL_CUT = "cut already, nothing is cut here: hold the boards together and measure"


def cut_order_csv(found: LaidOut, stopped: bool = False) -> str:
    """The text of cut_order.csv. Save it as UTF-8.

    Of a plan that a check has `stopped` the first row says so, before all cautions.

    Lines end in a line feed on every system, and no cell begins with a sign that a spreadsheet takes for a formula.
    """
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    stop = [_note(STOP, STOPPED)] if stopped else []
    for cells in (*stop, *caution_rows(found.cabinet), *order_rows(found)):
        writer.writerow([safe_cell(cell) for cell in cells])
    return out.getvalue()


def caution_rows(cabinet: Cabinet) -> Iterator[list[str]]:
    """The cautions, each in a row of its own under `mind`: of rough boards first, for they are planed before a saw."""
    for caution in (*rough_cautions(cabinet), *saw_cautions(), *on_end_cautions(cabinet)):
        yield _note(CAUTION, caution)


def _note(cut: str, mind: str) -> list[str]:
    row = dict.fromkeys(COLUMNS, "") | {"cut": cut, "mind": mind}
    return [row[column] for column in COLUMNS]


def order_rows(found: LaidOut) -> Iterator[list[str]]:
    """All cuts in their order, cells in the order of `COLUMNS`: saw cuts, after those of a stage its joint cuts.

    Steps and settings are numbered on from job to job. A joint cut that must match others is one setting, for all its
    boards. After them come the mates that no one stop serves; they are settings of rows before, or of cuts that nothing
    must match. Last come notches, holes for screws, pockets and finger sockets.
    """
    writing = Writing(found.cabinet.style)
    for turn in turns(found):
        for step in turn.cuts:
            number = str(turn.steps + step.number), str(turn.settings + step.setting)
            yield [*number, *_cells(step, turn.job, found, writing)]
        yield from _joint_rows(turn, found, writing)


def _joint_rows(turn: Turn, found: LaidOut, writing: Writing) -> Iterator[list[str]]:
    steps, settings = turn.before_joints
    told = [*_stop_rows(turn, found.cabinet, writing), *_mate_rows(turn, writing), *_alike_rows(turn)]
    for number, (stages, sets, cells) in enumerate(told, start=1):
        row = dict.fromkeys(COLUMNS, "") | cells
        row |= {
            "step": str(steps + number),
            "stage": ", ".join(map(str, stages)),
            "not_before": cut_waits(max(stages), found.cabinet),
        }
        if sets:
            settings += 1
            row["setting"] = str(settings)
        yield [row[column] for column in COLUMNS]


_Told = tuple[list[int], bool, dict[str, str]]
"""The stages of a joint cut, whether it is a setting of its own, and its cells."""


def _stop_rows(turn: Turn, cabinet: Cabinet, writing: Writing) -> Iterator[_Told]:
    for stop in turn.stops:
        yield [stop.stage], True, {
            "sheet": _sheets(stop.boards),
            "piece": boards_in_short(stop.boards),
            "cut": stop.kind,
            "fence": place_words(stop, writing),
            "cuts": str(len(stop.cuts)),
            "comes_off": size_words(stop, writing),
            "mind": "; ".join(filter(None, [
                MIND if always_on_end(stop.cuts, cabinet) else "", stopped_words(stop.cuts, writing),
            ])),
            "fence_mm": write_mm(stop.wall),
        }


def _mate_rows(turn: Turn, writing: Writing) -> Iterator[_Told]:
    """Dadoes for the two ends of one board that stand at unlike places: the board that is cut stands first.

    Where stops before have made them all, the row is a check.
    """
    made = [one for stop in turn.stops for one in stop.cuts]
    for two in turn.mates:
        cuts = [cut for several in two.cuts for cut in several]
        boards = {board.name: board for board, _ in cuts}.values()
        still = [one for one in cuts if one not in made]
        yield sorted({board.stage for board in two.boards}), False, {
            "sheet": _sheets(boards),
            "piece": f"{boards_in_short(boards)}, for {boards_in_short(two.boards)}",
            "cut": "dado" if still else CHECK,
            "fence": two_walls(two, writing),
            "cuts": str(len(still)),
            "comes_off": two_sizes(two, writing),
            "mind": "; ".join(filter(None, [
                "" if still else ALL_CUT, two_apart(two, writing), stopped_words(still, writing),
            ])),
        }


def _alike_rows(turn: Turn) -> Iterator[_Told]:
    for cut in turn.alike:
        yield [cut.stage], True, {
            "sheet": _sheets(cut.boards),
            "piece": boards_in_short(cut.boards),
            "cut": cut.kind,
            "fence": cut.place,
            "cuts": str(cut.count),
            "comes_off": cut.size,
            "mind": cut.mind,
        }


def _sheets(boards: Iterable[Board]) -> str:
    return ", ".join(dict.fromkeys(board.sheet for board in boards))


def _cells(step: Step, job: LaidJob, found: LaidOut, writing: Writing) -> list[str]:
    on, at, stages = job.sheets[step.sheet], step.piece.at, stages_of(step.turn, job.ask, found.cabinet)
    sizes = PieceSizes(on, writing)
    weight = weight_of(on.sheet, at.w, at.h, on.thickness)
    two = needs_two(on.sheet, at.w, at.h, found.cabinet.project.cutting.one_lifts, on.thickness)
    made = (*step.off, *([step.left] if step.left else []))
    sides = sizes.length(at), sizes.width(at)
    off, left = _told(step.off, job, sizes), _told((step.left,), job, sizes) if step.left else ["nothing"]
    if step.kind == "trim":  # what is kept lies between fence and blade
        [kept] = step.off
        off, left = [f"trim, {writing.length(at.w - kept.at.w + at.h - kept.at.h)}"], off
    return [
        ", ".join(map(str, stages)),
        on.sheet.name,
        step.piece.mark,
        *sides,
        step.kind,
        step.set_by,
        writing.length(step.fence),
        str(len(step.cuts)),
        "; ".join(off),
        "; ".join(left),
        "; ".join(filter(None, [_jointed(step, on), minded(step, job.ask.letters, writing.length, sides)])),
        turn_waits(step.turn, job.ask, found.cabinet),
        "; ".join([
            *(_then(made, on, writing.style) if step.kind == "rip" else ()), *_finished(made, on, writing),
        ]),
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
        told |= {f"each strip is {then_ripped(wide, style)}": None
                 for one in strips if (wide := second_rip(one.board, on.sheet, style))}
    return told


def _jointed(step: Step, on: LaidSheet) -> str:
    """A board of solid wood has no straight edge of its own: what a fence guides is jointed first.

    Of what a stage before has left, the jointed edge may have gone with what was ripped off.
    """
    if on.sheet.kind == "solid" and step.set_by == "thin-strip stop":
        return "joint both its edges first: one along the fence, the other to the stop"
    if on.sheet.kind != "solid" or step.set_by != "fence" or step.piece.at.h != on.stock.width:
        return ""
    left = on.held and on.held.left_of
    return "joint its sawn edge first: that edge along the fence" if left else "its jointed edge along the fence"


def _finished(made: tuple[Piece, ...], on: LaidSheet, writing: Writing) -> dict[str, None]:
    """Parts of solid wood are rough: the size that each is trimmed to, of a stave that of its board.

    What is too short for jointer and fence has its width already, from the longer piece that it was part of.
    """
    told: dict[str, None] = {}
    for piece in made:
        lies = next((one for one in on.pieces if one.placed.at == piece.at), None) if piece.part is not None else None
        if on.sheet.kind == "solid" and lies and lies.board.role not in STRIPS:
            length, width = (writing.length(ticks) for ticks in lies.board.cut_size[:2])
            first = "glued up, then " if lies.stave else ""
            wide = not lies.stave and lies.placed.at.h == lies.board.cut_size[1]
            told[f"{lies.letter} has its width, {width}, and is only longer: trimmed to {length}" if wide
                 else f"{lies.letter} is rough: {first}trimmed to {length} x {width}"] = None
    return told


def _told(pieces: tuple[Piece, ...], job: LaidJob, sizes: PieceSizes) -> list[str]:
    """Equal pieces together: "3 x A, 20 in x 7 15/16 in"; a part by its letter on the drawing."""
    marks = [job.ask.letters[piece.part] if piece.part is not None else piece.mark for piece in pieces]
    counted = Counter(zip(marks, (sizes.size(piece.at) for piece in pieces), strict=True))
    return [f"{count} x {mark}, {size}" if count > 1 else f"{mark}, {size}" for (mark, size), count in counted.items()]


def board_of(piece: Piece, on: LaidSheet) -> str:
    """The name of the board that a part becomes, or of its stave, by where it lies on the sheet."""
    return next(one.name for one in on.pieces if one.placed.at == piece.at)
