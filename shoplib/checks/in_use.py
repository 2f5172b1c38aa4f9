"""Will it hold, will it move: what is asked of a case in use. Beside the dry-fit, which asks whether it goes together.

A panel does not ask these between two moves of a slider; `plan` and `check` do, and a lesson of its own.
"""

from shoplib.checks.drawer_load import find_slide_load, tell_weight
from shoplib.checks.sag import find_sagging_bottoms, find_sagging_shelves
from shoplib.checks.screw_hold import find_weak_front_screws, tell_cleats_and_rails
from shoplib.checks.solid_moves import find_bottoms_without_room, find_closing_gaps, tell_wood_without_species
from shoplib.checks.tipping import find_tipping
from shoplib.model.solved import Cabinet, Finding

LEVELS = ("warn", "note")
"""None of these stops a plan: the figures are ranges, and what lies in the case is a guess."""

IN_USE = (
    find_tipping,
    find_sagging_shelves,
    find_sagging_bottoms,
    find_slide_load,
    find_weak_front_screws,
    tell_cleats_and_rails,
    find_closing_gaps,
    find_bottoms_without_room,
    tell_wood_without_species,
    tell_weight,
)
"""The questions, one by one; each gives one finding for a kind of part."""


def check_in_use(cabinet: Cabinet) -> tuple[Finding, ...]:
    """Everything there is to say about the cabinet in use: warnings first, then notes; none without its project.

    >>> check_in_use(Cabinet("case", (), {}))
    ()
    """
    found = [finding for look in IN_USE for finding in look(cabinet)]
    return tuple(sorted(found, key=lambda finding: LEVELS.index(finding.level)))
