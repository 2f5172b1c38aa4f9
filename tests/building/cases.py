"""The shipped projects solved once, for the tests of building and of what is printed of it."""

from dataclasses import replace
from functools import cache

from shoplib.documents.examples import cabinet_from
from shoplib.documents.to_measure import planned_depths, planned_openings
from shoplib.model.cabinet import solve
from shoplib.model.project import Measured, Opening

SHIPPED = (
    "under_bench_case", "finger_jointed_drawers", "rolling_stand", "small_parts_wall_case", "wheel_wall_drawers",
)


@cache
def shipped(name):
    """A shipped project, solved."""
    return cabinet_from(name)


@cache
def measured(name):
    """The same with every opening and depth measured, a little smaller than planned."""
    cabinet = shipped(name)
    step = cabinet.project.step
    openings = {of: Opening(*[wide // step * step - step] * 2) for of, wide in planned_openings(cabinet).items()}
    depths = {of: deep // step * step - step for of, deep in planned_depths(cabinet).items()}
    return solve(replace(cabinet.project, measured=Measured(openings, depths)))


@cache
def measured_unevenly(name):
    """The same with each opening and depth read up to two steps off the plan, no two neighbours by as much."""
    cabinet = shipped(name)
    step = cabinet.project.step
    openings = {
        of: Opening(*((wide // step + off[n % len(off)]) * step for off in (_AT_FRONT, _AT_BACK)))
        for n, (of, wide) in enumerate(planned_openings(cabinet).items())
    }
    depths = {
        of: (deep // step + _IN_DEPTH[n % len(_IN_DEPTH)]) * step
        for n, (of, deep) in enumerate(planned_depths(cabinet).items())
    }
    return solve(replace(cabinet.project, measured=Measured(openings, depths)))


_AT_FRONT, _AT_BACK, _IN_DEPTH = (-2, 1, 0, 2, -1, 1, -2, 2, 0, 1, -1, 2), (-1, 1, 1, 2, -2, 0, -1, 1, 1, 2, 0, 2), (
    -1, 1, 2, -2)
"""By how many steps readings are off the plan, in turn: plausible ones, made up."""
