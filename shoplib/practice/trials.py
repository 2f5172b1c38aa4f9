"""The practice of every joint but the dado, which has a bench of its own (`shoplib.practice.session`)."""

from shoplib.practice.trial_case import DRAWER_LOCK, GROOVE, RABBET, STOPPED_DADO, TONGUE
from shoplib.practice.trial_comb import DOVETAIL, FINGER
from shoplib.practice.trial_frame import BRIDLE, CROSS_LAP, HALF_LAP, MORTISE_AND_TENON
from shoplib.practice.trial_kind import Trial
from shoplib.practice.trial_mitre import SPLINED_MITRE
from shoplib.practice.trial_pegs import BUTT, DOWEL, POCKET_SCREWS, SPLINE

TRIALS: tuple[Trial, ...] = (
    BUTT, POCKET_SCREWS, RABBET, STOPPED_DADO, GROOVE, TONGUE, DRAWER_LOCK, FINGER, HALF_LAP, CROSS_LAP, DOWEL, SPLINE,
    BRIDLE, MORTISE_AND_TENON, DOVETAIL, SPLINED_MITRE,
)
"""In the order in which the joints are learnt."""


def trial(name: str) -> Trial:
    """The practice of that joint; ValueError names those there are.

    >>> trial("rabbet").kind.title
    'rabbet'
    """
    for each in TRIALS:
        if each.name == name:
            return each
    raise ValueError(f"there is no practice for {name!r}; there is for {', '.join(each.name for each in TRIALS)}.")
