"""The drawers that the page on clearance shows: its worked box, and a case with three drawers that was measured."""

from dataclasses import replace

from shoplib.live.drawer_panel import drawer_style
from shoplib.live.drawer_project import DrawerChoices, drawer_project, drawer_rounding, starting_drawer
from shoplib.measure import read_length
from shoplib.measure.traced import leaf
from shoplib.model.cabinet import solve
from shoplib.model.project import Bay, Measured, Opening
from shoplib.model.solved import Cabinet
from shoplib.model.tracing import traced

READ = {
    "in": (("16 1/32 in", "16 1/16 in"), ("16 in", "16 3/32 in"), ("15 15/16 in", "16 1/8 in")),
    "mm": (("401 mm", "402 mm"), ("400 mm", "402.5 mm"), ("398.5 mm", "403 mm")),
}
"""A case as built, from the lowest drawer up: front and back of its opening at the height of each pair of slides."""

OUT_OF_SQUARE = {"in": ("16 in", "20 in", "25 3/4 in", "25 1/2 in"), "mm": ("400 mm", "500 mm", "643.5 mm", "637 mm")}
"""An opening that leans: its width, front and back alike, its depth, and its two diagonals, the longer first."""

ROW = "bay 1 drawer"


def drawer(unit: str, **other: object) -> Cabinet:
    """The drawer that the panel begins with, with other choices in place of some."""
    return solved(replace(starting_drawer(unit), **other), unit)


def solved(choices: DrawerChoices, unit: str) -> Cabinet:
    """A drawer as the panel would solve it."""
    return solve(traced(replace(drawer_project(choices, drawer_style(unit)), rounding=drawer_rounding(unit))))


def out_of_true(unit: str) -> tuple[int, int, int, int]:
    """Width, depth and the two diagonals of the opening that leans, in ticks that carry their names."""
    called = ("width of the opening", "depth of the opening", "longer diagonal", "shorter diagonal")
    width, depth, longer, shorter = (
        leaf(read_length(text), what, "measured") for text, what in zip(OUT_OF_SQUARE[unit], called, strict=True)
    )
    return width, depth, longer, shorter


def readings(unit: str) -> dict[str, Opening]:
    """The readings of the case with three drawers, by drawer."""
    return {
        f"{ROW} {number}": Opening(*(read_length(text) for text in pair))
        for number, pair in enumerate(READ[unit], 1)
    }


def three_drawers(unit: str) -> Cabinet:
    """The same case with three drawers, measured at the height of each."""
    height = read_length("21 in" if unit == "in" else "540 mm")
    project = drawer_project(replace(starting_drawer(unit), height=height), drawer_style(unit))
    bay = Bay("drawers", drawers=replace(project.bays[0].drawers, count=3))
    measured = Measured(readings(unit), project.measured.depths)
    return solve(traced(replace(project, bays=(bay,), measured=measured, rounding=drawer_rounding(unit))))
