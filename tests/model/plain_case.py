"""A case for the tests of the model, in inches or millimetres, and what is read off its boards.

Numbers go in and come out as exact fractions of the unit, so that a test can work beside the code with
arithmetic of its own. The case belongs to a bicycle workshop; its sizes are made up.
"""

from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

import pytest

from shoplib.checks import check
from shoplib.measure import Style
from shoplib.model.board import Board, BoxCut
from shoplib.model.cabinet import solve
from shoplib.model.project import Bay, Carcass, Drawers, Fronts, ImpossibleProject, JointChoice, Project, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet


def exact(text) -> Fraction:
    """A number as the shop writes it: `34 1/2`, `0.703`."""
    return sum(map(Fraction, str(text).split()), Fraction(0))


@dataclass(frozen=True)
class Unit:
    """Inch or millimetre: its ticks (1 in = 25.4 mm, 1 mm = 80 000 ticks), its step, its usual slide."""

    name: str
    ticks: int
    step: Fraction
    slide: str

    def of(self, number) -> int:
        """So many of this unit as ticks, which must come out whole."""
        ticks = exact(number) * self.ticks
        assert ticks.denominator == 1, f"{number} {self.name} is no whole number of ticks"
        return int(ticks)

    def back(self, ticks: int) -> Fraction:
        """Ticks as an exact number of this unit."""
        return Fraction(ticks, self.ticks)

    def down(self, number) -> Fraction:
        """Down to a whole step."""
        return exact(number) // self.step * self.step

    def sheet(self, name: str, nominal, *readings, kind: str = "plywood") -> Sheet:
        return Sheet(name, kind, self.of(nominal), tuple(map(self.of, readings)))

    def joint(self, kind: str, depth=None, fit=0, end_gap=0) -> JointChoice:
        return JointChoice(kind, None if depth is None else self.of(depth), self.of(fit), self.of(end_gap))


IN = Unit("in", 80_000 * 254 // 10, Fraction(1, 64), "side-mount ball-bearing")
MM = Unit("mm", 80_000, Fraction(1, 2), "side-mount ball-bearing, metric lengths")


def usual_size(unit: Unit, **other) -> tuple[Fraction, Fraction, Fraction]:
    """Outside width, height and depth of the case where a test does not care, or cares for one of them."""
    numbers = ("24", "30", "20") if unit is IN else ("600", "760", "500")
    usual = dict(zip(("width", "height", "depth"), map(exact, numbers), strict=True))
    return tuple((usual | other).values())


def a_case(unit: Unit, *, size=None, t=None, s=None, f=None, thin=None, carcass=None, **more) -> Project:
    """A case with a joint of no depth, 24 x 30 x 20 in or 600 x 760 x 500 mm, unless told otherwise.

    `t`, `s`, `f`, `thin`: readings of the sheets of case, boxes, fronts, and of back and box bottoms.
    """
    inch = unit is IN
    size = size or usual_size(unit)
    sheets = {
        "case sheet": unit.sheet("case sheet", "3/4" if inch else "18", *(t or ["0.703" if inch else "17.86"])),
        "box sheet": unit.sheet("box sheet", "1/2" if inch else "12", *(s or ["0.472" if inch else "11.9"])),
        "front sheet": unit.sheet("front sheet", "3/4" if inch else "18", *(f or ["0.721" if inch else "18.3"])),
        "thin sheet": unit.sheet("thin sheet", "1/4" if inch else "6", *(thin or ["0.204" if inch else "5.9"])),
    }
    return Project(
        name="Case for the tests",
        style=Style(unit.name, unit.of(unit.step)),
        sheets=sheets,
        size=Size("outside", *map(unit.of, size)) if isinstance(size, tuple) else size,
        carcass=Carcass("case sheet", **(carcass or {})),
        **more,
    )


def drawer_case(unit: Unit, *, fronts="inset", gap="1/8", reveal="1/8", columns=1, rule=None, **more) -> Project:
    """The same with drawers in each of its `columns` bays; `gap` is also the gap around inset fronts."""
    inch = unit is IN
    usual = Drawers(
        slide=unit.slide,
        box_sheet="box sheet",
        bottom_sheet="thin sheet",
        bottom_up=unit.of("1/4" if inch else "6"),
        bottom_depth=unit.of("7/32" if inch else "5.5"),
        bottom_slack=unit.of("1/16" if inch else "2"),
        room_above=unit.of("1/4" if inch else "6"),
    )
    sheet, beside = ("" if fronts == "none" else "front sheet"), ((unit.of(reveal),) if fronts == "overlay" else ())
    kinds = Fronts(fronts, sheet, unit.of(gap), unit.of(gap), *beside)
    return a_case(unit, bays=(Bay("drawers", drawers=replace(usual, **(rule or {}))),) * columns, fronts=kinds, **more)


def stops(project: Project) -> list[str]:
    """What the dry-fit stops at."""
    return [finding.text for finding in check(solve(project)) if finding.level == "stop"]


def refusal(project: Project) -> str:
    """The key for which the project is refused."""
    with pytest.raises(ImpossibleProject) as refused:
        solve(project)
    return refused.value.key


def each(names: str, *rows):
    """Rows of a unit and numbers as text; the test gets exact numbers."""
    return pytest.mark.parametrize(f"unit,{names}", [(unit, *map(exact, rest)) for unit, *rest in rows])


class Solved:
    """A solved project, read in its own unit. Axes: 0 from left to right, 1 from front to back, 2 up."""

    def __init__(self, project: Project, unit: Unit) -> None:
        self.cabinet: Cabinet = solve(project)
        self.unit = unit

    def board(self, name: str) -> Board:
        return self.cabinet.by_name[name]

    def low(self, name: str, axis: int) -> Fraction:
        return self.unit.back(self.board(name).box.low[axis])

    def high(self, name: str, axis: int) -> Fraction:
        return self.unit.back(self.board(name).box.high[axis])

    def size(self, name: str, axis: int) -> Fraction:
        return self.high(name, axis) - self.low(name, axis)

    def cut(self, name: str, for_board: str) -> BoxCut:
        """The one cut of a board that receives another."""
        (found,) = (c for c in self.board(name).cuts if isinstance(c, BoxCut) and c.for_board == for_board)
        return found

    def cut_size(self, name: str, for_board: str, axis: int) -> Fraction:
        """How large that cut is along a world axis."""
        board = self.board(name)
        return self.unit.back(board.placement.to_world(self.cut(name, for_board).box).size[axis])

    def outside(self) -> tuple[Fraction, ...]:
        """Outside width, height and depth over all boards."""
        width, depth, height = self.cabinet.outside.size
        return tuple(map(self.unit.back, (width, height, depth)))

    def bays(self) -> list[Fraction]:
        """Clear widths between the uprights, left to right."""
        walls = sorted(
            (b.box for b in self.cabinet.boards if b.role in ("side", "divider")), key=lambda box: box.low[0]
        )
        return [self.unit.back(b.low[0] - a.high[0]) for a, b in pairwise(walls)]

    def box_width(self, group: str) -> Fraction:
        """Outside width of a drawer box, over its sides."""
        return self.high(f"{group} right box side", 0) - self.low(f"{group} left box side", 0)
