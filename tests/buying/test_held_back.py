"""A sheet waits for the readings of what is cut from it, and says which parts still have planned sizes.

Boxes are cut to the opening as built: common practice, no source.
"""

from dataclasses import replace

from shoplib.buying.held_back import held_back
from shoplib.buying.laid_out import laid_out
from shoplib.buying.waiting import STANDS, cut_together_waits
from shoplib.documents.examples import cabinet_from
from shoplib.documents.to_measure import planned_depths, planned_openings
from shoplib.model.board import BOXES
from shoplib.model.cabinet import solve
from shoplib.model.project import Measured, Opening


def read_but(name, left_out):
    """A shipped project with every depth and opening read as planned, but for those left out."""
    cabinet = cabinet_from(name)
    openings = {of: Opening(wide, wide) for of, wide in planned_openings(cabinet).items() if of not in left_out}
    return solve(replace(cabinet.project, measured=Measured(openings, planned_depths(cabinet))))


def test_what_is_cut_by_readings_that_are_all_there_waits_for_no_others():
    """Panel and cleat of the pull-out are of the sheet of the case, and its opening and depth were read."""
    cabinet = read_but("under_bench_case", {"bay 3 drawer 3"})
    pull_out, boxes = ([board for board in cabinet.boards if board.stage == BOXES and board.part_of.what == what]
                       for what in ("pull-out", "drawer"))
    assert pull_out and cut_together_waits(BOXES, pull_out, cabinet) == ""
    assert cut_together_waits(BOXES, boxes, cabinet) == STANDS
    assert cut_together_waits(BOXES, pull_out, cabinet_from("under_bench_case")) == STANDS


def test_a_sheet_says_which_of_its_parts_have_planned_sizes():
    found = laid_out(read_but("finger_jointed_drawers", {"bay 1 drawer 2"}), 0)
    told, seen = held_back(found), set()
    for job in found.jobs:
        for sheet in job.sheets if job.ask.stages == (BOXES,) else ():
            waits = sorted({piece.letter for piece in sheet.pieces
                            if any(b.part_of.number == 2 for b in job.ask.boards[piece.placed.part])})
            every = waits == sorted({piece.letter for piece in sheet.pieces})
            [line] = told[sheet.name]
            assert ("its parts have planned sizes" in line) == every
            if waits and not every:
                named = line.rpartition(": ")[2].partition(" ha")[0].replace(" and ", ", ").split(", ")
                assert named == waits
            seen.add(every)
    assert seen
