"""The dry-fit of the practice case: what the checks find, which gaps are open, how far it is out of square."""

from dataclasses import dataclass

from shoplib.checks.diagonals import diagonal
from shoplib.checks.geometry import deepest, regions
from shoplib.checks.misfits import CLASH, GAP, Misfit, misfits
from shoplib.checks.overlap import find_overlaps, overlapping
from shoplib.checks.seating import find_unseated
from shoplib.checks.wood_left import find_thin_wood
from shoplib.model.board import Board
from shoplib.model.box import around
from shoplib.model.solved import Cabinet, Finding
from shoplib.practice.assembled import GLUED, Assembled, assembled, level_difference
from shoplib.practice.bench import Bench
from shoplib.practice.fit import small
from shoplib.practice.plan import Plan, Stock, planned_side
from shoplib.words.amounts import how_much

CHECKS = (find_overlaps, find_unseated, find_thin_wood)
"""The checks that have something to say about a case of dadoes."""


@dataclass(frozen=True)
class DryFit:
    """What the dry-fit of the two sides with bottom, shelf and back gives.

    `gaps` are the places where boards do not meet as planned by more than glue fills. `diagonals` are the two over
    the outer corners of the front, lower left to upper right first (ticks).
    """

    case: Assembled
    findings: tuple[Finding, ...]
    gaps: tuple[Misfit, ...]
    diagonals: tuple[int, int]

    @property
    def clean(self) -> bool:
        """Whether the case goes together and holds: no stop and no warning."""
        return not any(finding.level in ("stop", "warn") for finding in self.findings)

    @property
    def clashes(self) -> tuple[Misfit, ...]:
        """Where two boards want the same wood, the deepest first."""
        found = []
        for one, other, shared in overlapping(self.case.cabinet.boards):
            amount, axis = deepest(shared)
            found.append(Misfit(CLASH, (one.name, other.name), axis, amount, around(regions(shared))))
        return tuple(sorted(found, key=lambda clash: -clash.amount))

    @property
    def out_of_square(self) -> int:
        """The difference of the two diagonals."""
        return abs(self.diagonals[0] - self.diagonals[1])


def planned_case(bench: Bench, plan: Plan, stock: Stock) -> Assembled:
    """The case as it would be with both sides cut exactly as planned."""
    return assembled(
        bench, plan, stock, planned_side(plan, "left side", stock), planned_side(plan, "right side", stock)
    )


def dry_fit(bench: Bench, plan: Plan, stock: Stock, left: Board, right: Board) -> DryFit:
    """Puts two sides together with the rest of the case and looks.

    >>> from shoplib.practice.plan import plan_for, stock_of
    >>> bench = Bench("Noor", "dado", "in")
    >>> plan, stock = plan_for(bench), stock_of(bench)
    >>> sides = [planned_side(plan, side, stock) for side in ("left side", "right side")]
    >>> dry_fit(bench, plan, stock, *sides).findings
    ()
    """
    case = assembled(bench, plan, stock, left, right)
    findings = tuple(finding for look in CHECKS for finding in look(case.cabinet))
    planned = planned_case(bench, plan, stock).cabinet
    gaps = tuple(
        misfit for misfit in misfits(case.cabinet, planned) if misfit.kind == GAP and misfit.amount > GLUED
    )
    return DryFit(case, findings, gaps, _diagonals(case.cabinet, case.raised))


def _diagonals(cabinet: Cabinet, raised: int) -> tuple[int, int]:
    left, right = (cabinet.by_name[side].box for side in ("left side", "right side"))
    width, height = right.high[0] - left.low[0], left.high[2] - left.low[2]
    return diagonal(width, height + raised), diagonal(width, height - raised)


def square_said(fit: DryFit, bench: Bench) -> str:
    """How far the case is out of square, in a sentence or two."""
    style, off, raised = bench.style, fit.out_of_square, fit.case.raised
    tilted = list(level_difference(fit.case))
    if tilted:
        level, out = tilted[0]
        end = "right" if out > 0 else "left"
        return (
            f"The dado for the {level} lies {how_much(abs(out), style)} higher in the {end} side: the {level} would "
            "lie that much out of level."
        )
    if any(finding.check == "overlap" for finding in fit.findings):
        return "While it does not go together there is no square to measure."
    if small(off, style) == small(0, style):
        return "The case is square: both diagonals of its front are alike."
    higher = "right" if raised > 0 else "left"
    return (
        f"The {higher} side stands {small(abs(raised), style)} higher, and the diagonals of the front differ by "
        f"{small(off, style)}."
    )
