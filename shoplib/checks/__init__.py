"""Checks of a solved cabinet. Each gives findings; none raises and none changes anything."""

from shoplib.checks.as_built import AsBuilt, opening_of
from shoplib.checks.bring_in import find_trouble_on_the_way
from shoplib.checks.diagonals import give_diagonals
from shoplib.checks.driver_between import find_bays_too_narrow_for_a_driver
from shoplib.checks.driver_room import find_pockets_out_of_reach
from shoplib.checks.fit_space import find_space_conflicts
from shoplib.checks.fittings import find_slides_in_wood, tell_what_the_sheet_says
from shoplib.checks.gaps import find_tight_gaps
from shoplib.checks.joint_choice import (
    find_joints_without_clearance,
    find_weak_joints,
    tell_to_square_stopped_cuts,
)
from shoplib.checks.measured_sum import find_openings_that_do_not_add_up
from shoplib.checks.outside import find_outside_difference, tell_height_on_casters
from shoplib.checks.overlap import find_overlaps
from shoplib.checks.pocket_points import find_meeting_pocket_screws
from shoplib.checks.proportions import find_large_end_gaps, find_loose_fits, find_wide_gaps
from shoplib.checks.pulls import find_pulls_off_the_box
from shoplib.checks.readings import find_doubtful_readings, find_unlike_readings
from shoplib.checks.runner_points import find_meeting_runner_screws
from shoplib.checks.screw_points import find_screws_through
from shoplib.checks.screws import find_meeting_screws, find_missing_screws
from shoplib.checks.screws_in_cuts import find_screws_in_cuts
from shoplib.checks.seating import find_unseated
from shoplib.checks.sheet_effects import tell_what_sheets_change
from shoplib.checks.show_through import find_grooves_that_show
from shoplib.checks.slide_room import find_box_of_other_length, find_too_little_behind, find_wrong_slide_room
from shoplib.checks.stands import find_deep_toe_room
from shoplib.checks.steps import tell_where_the_rest_went
from shoplib.checks.stock import find_too_big_for_sheet
from shoplib.checks.travel import find_blocked_travel
from shoplib.checks.wood_left import find_thin_wood
from shoplib.model.solved import Cabinet, Finding

CHECKS = (
    find_overlaps,
    find_unseated,
    find_blocked_travel,
    find_wrong_slide_room,
    find_too_little_behind,
    find_box_of_other_length,
    find_slides_in_wood,
    find_tight_gaps,
    find_wide_gaps,
    find_pulls_off_the_box,
    find_outside_difference,
    find_thin_wood,
    find_weak_joints,
    find_loose_fits,
    find_large_end_gaps,
    find_deep_toe_room,
    find_missing_screws,
    find_meeting_screws,
    find_meeting_pocket_screws,
    find_meeting_runner_screws,
    find_pockets_out_of_reach,
    find_bays_too_narrow_for_a_driver,
    find_screws_in_cuts,
    find_screws_through,
    find_too_big_for_sheet,
    find_doubtful_readings,
    find_unlike_readings,
    find_joints_without_clearance,
    find_openings_that_do_not_add_up,
    find_space_conflicts,
    find_trouble_on_the_way,
    tell_height_on_casters,
    tell_what_sheets_change,
    tell_where_the_rest_went,
    tell_to_square_stopped_cuts,
    tell_what_the_sheet_says,
    give_diagonals,
    find_grooves_that_show,
)
"""The dry-fit, check by check."""

LEVELS = ("stop", "warn", "note")
"""Levels of a finding, the gravest first."""

__all__ = ["CHECKS", "LEVELS", "check"]


def check(cabinet: Cabinet) -> tuple[Finding, ...]:
    """Everything there is to say about the cabinet: stops first, then warnings, then notes.

    Within a level, what solving found stands before what the checks found. Where a measurement is so far off
    the plan that it must be read again, its clashes with the rest are held back: nobody is to cut the case
    because of a slip.
    """
    found = [*cabinet.findings]
    doubted = AsBuilt(cabinet).doubted
    for look in CHECKS:
        found += [finding for finding in look(cabinet) if not (doubted and _clashes(finding, doubted, cabinet))]
    return tuple(sorted(found, key=lambda finding: LEVELS.index(finding.level)))


def _clashes(finding: Finding, doubted: frozenset[str], cabinet: Cabinet) -> bool:
    """Whether this is a stop where something that goes by a doubted reading meets what does not."""
    boards = [cabinet.by_name[name] for name in finding.boards]
    measured = [board.part_of for board in boards if opening_of(board)]
    by_reading = any(part.opening in doubted or part.bay_name in doubted for part in measured)
    apart = len({opening_of(board) for board in boards}) > 1
    return finding.level == "stop" and by_reading and (apart or finding.check == "outside")
