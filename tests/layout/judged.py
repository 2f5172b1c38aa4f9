"""A layout of the project handed to the judge, which knows nothing of the project's records."""

from tests.judge.sheets import Bought, Lying, Wanted, faults


def judged(job, layout):
    """What the judge of coordinates finds wrong with a layout of this job."""
    return faults(
        [Wanted(part.length, part.width, part.count, part.may_turn) for part in job.parts],
        [Bought(one.length, one.width, one.trim_ends, one.trim_edges, one.count) for one in job.stock],
        job.kerf,
        [(laid.stock, [Lying(one.part, *one.at) for one in laid.placed]) for laid in layout.sheets],
    )
