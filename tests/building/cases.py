"""The shipped projects solved once, for the tests of building and of what is printed of it."""

from functools import cache

from shoplib.documents.examples import example
from shoplib.documents.project_file import read_project
from shoplib.model.cabinet import solve

SHIPPED = (
    "under_bench_case", "finger_jointed_drawers", "rolling_stand", "small_parts_wall_case", "wheel_wall_drawers",
)


@cache
def shipped(name):
    """A shipped project, solved."""
    return solve(read_project(example(name)))
