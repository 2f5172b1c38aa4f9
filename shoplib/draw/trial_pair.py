"""The pair of a trial bench as it was cut and put together: in section, and as solids."""

from dataclasses import replace

from shoplib.draw.bench_section import bench_section
from shoplib.draw.pair_view import pair_view, telling
from shoplib.draw.scene import Scene
from shoplib.joints.bench_pair import Pair
from shoplib.measure import INCH
from shoplib.practice.trial import TrialSession, planned
from shoplib.practice.trial_stand import gaps

_LEAST = INCH // 2000
"""A gap that is less is none: no feeler tells it."""


def as_cut_views(session: TrialSession) -> tuple[Scene, ...]:
    """Section and solids of the pair as it was cut, gaps larger than they are; both say so.

    >>> from shoplib.practice.trial import begin, cut_pair, set_scale
    >>> session = begin("rabbet", "Noor")
    >>> session = set_scale(set_scale(session, "fence", "0.71 in").session, "depth", "0.36 in").session
    >>> [scene.title for scene in as_cut_views(cut_pair(session).session)]
    ['As it was cut, in section', 'As it was cut, put together']
    """
    felt = tuple(gap for gap in gaps(session.trial, session.pair) if gap.gap >= _LEAST)
    pair = _all_cut(replace(session.pair.pair, clearances=felt))
    miscut = cut_otherwise(session)
    pair = replace(pair, named={part: where for part, where in pair.named.items() if where[0] not in miscut})
    direction = telling(session.trial.kind.build(session.usual, session.plan), False)
    return (
        bench_section(pair, "As it was cut, in section"),
        pair_view(pair, "As it was cut, put together", direction=direction, called={}),
    )


def cut_otherwise(session: TrialSession) -> frozenset[str]:
    """The boards that a slip has cut in another place, or not: no part of theirs is where its name would point.

    A slip that only counts an error twice leaves the parts where they were meant, nearly.

    >>> from shoplib.practice.trial import begin, cut_pair, set_scale
    >>> session = begin("rabbet", "Noor")
    >>> session = set_scale(set_scale(session, "fence", "0.71 in").session, "depth", "0.36 in").session
    >>> [sorted(cut_otherwise(cut_pair(session, slip).session)) for slip in ("", "wrong face")]
    [[], ['side']]
    """
    slip = next((each for each in session.trial.slips if each.name == session.slip), None)
    if slip is None or slip.shows:
        return frozenset()
    meant = planned(session)
    after = slip.does(meant).by_name
    return frozenset(board.name for board in meant.boards if board.cuts != after[board.name].cuts)


def _all_cut(pair: Pair) -> Pair:
    """The pair, cut across at the first part that has a name where the plane meets only one board: so far are fingers
    apart that do not go in.
    """
    axis, at = "xyz".index(pair.section[0]), pair.section[1]
    if all(board.box.low[axis] < at < board.box.high[axis] for board in pair.boards[:2]):
        return pair
    _, point = next(iter(pair.named.values()))
    return replace(pair, section=("y", point[1]))
