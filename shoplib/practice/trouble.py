"""What is wrong with one side, read off the board itself: nobody need know how it came about."""

from dataclasses import dataclass

from shoplib.measure import INCH, Style, write_brief
from shoplib.model.board import Board, BoxCut
from shoplib.practice.assembled import GLUED, MEET
from shoplib.practice.fit import Felt, small
from shoplib.practice.plan import LEVELS, Plan, Stock, rabbet_cut
from shoplib.words.amounts import how_much

MOVED = INCH // 32
"""A place this far off (1/32 in) is seen beside a pencil line (common practice, no source)."""

SIZE_TROUBLES = ("shallow", "deep", "narrow", "loose")


@dataclass(frozen=True, slots=True)
class Trouble:
    """One thing wrong with a side. `dado` names the board that its dado is for, empty where it is all of them.

    `kind` is the name of a slip, one of `SIZE_TROUBLES`, or "moved"; `amount` is by how much, in ticks.
    """

    kind: str
    side: str
    dado: str
    amount: int
    said: str


def troubles(side: Board, plan: Plan, stock: Stock, style: Style) -> tuple[Trouble, ...]:
    """Everything that is wrong with a side that was meant for the place it is named after.

    >>> from shoplib.practice.bench import Bench
    >>> from shoplib.practice.plan import plan_for, planned_side, stock_of
    >>> from shoplib.practice.slips import second_forgotten
    >>> bench = Bench("Noor", "dado", "in")
    >>> plan, stock = plan_for(bench), stock_of(bench)
    >>> right = second_forgotten(plan, planned_side(plan, "right side", stock))
    >>> [(trouble.kind, trouble.dado) for trouble in troubles(right, plan, stock, bench.style)]
    [('second dado forgotten', 'shelf')]
    """
    look = _Look(side, plan, stock, style)
    return (*look.hand(), *look.end(), *(found for level in LEVELS for found in look.dado(level)))


@dataclass(frozen=True)
class _Look:
    side: Board
    plan: Plan
    stock: Stock
    style: Style

    def _cut(self, level: str) -> BoxCut | None:
        return next((cut for cut in self.side.cuts if cut.for_board == level), None)

    def _is_outside(self, cut: BoxCut) -> bool:
        return cut.low[2] > 0 and cut.high[2] == self.side.thickness

    def _at_other_end(self, cut: BoxCut, level: str) -> bool:
        """Whether its upper wall is as far from the upper end as its lower one should be from the lower end."""
        return abs(self.plan.height - cut.high[0] - self.plan.up(level)) < MEET < abs(cut.low[0] - self.plan.up(level))

    def _told(self, kind: str, dado: str, amount: int, said: str) -> Trouble:
        return Trouble(kind, self.side.name, dado, amount, said)

    def hand(self) -> list[Trouble]:
        rabbet = next((cut for cut in self.side.cuts if cut.for_board == "back"), None)
        if rabbet is None or rabbet.low[1] == rabbet_cut(self.plan, self.side.name).low[1]:
            return []
        other = "left" if self.side.name == "right side" else "right"
        return [self._told("mirrored pair", "", self.plan.depth - self.plan.back, (
            f"The {self.side.name} is a second {other} side: stood in its place, its rabbet for the back comes to the "
            "front."
        ))]

    def end(self) -> list[Trouble]:
        wrong = [level for level in LEVELS if (cut := self._cut(level)) and self._at_other_end(cut, level)]
        if not wrong:
            return []
        off = self._cut(wrong[-1]).low[0] - self.plan.up(wrong[-1])
        return [self._told("wrong reference edge", "", abs(off), (
            f"The dadoes of the {self.side.name} were measured from its upper end: the one for the {wrong[-1]} lies "
            f"{how_much(abs(off), self.style)} too {'high' if off > 0 else 'low'}."
        ))]

    def dado(self, level: str) -> list[Trouble]:
        cut, plan, name = self._cut(level), self.plan, self.side.name
        if cut is None:
            return [self._told("second dado forgotten", level, plan.dado, (
                f"The {name} has no dado for the {level}, and its end strikes the face "
                f"{write_brief(plan.dado, self.style)} before it is in."
            ))]
        found = []
        off, width = cut.low[0] - plan.up(level), cut.high[0] - cut.low[0]
        if self._is_outside(cut):
            found.append(self._told("wrong face", level, plan.dado, (
                f"The dado for the {level} is in the outer face of the {name}; inside there is none."
            )))
        elif not self._at_other_end(cut, level) and abs(off + width) < MEET < abs(off):
            found.append(self._told("wrong side of the line", level, width, (
                f"The dado for the {level} lies on the wrong side of its line in the {name}: "
                f"{write_brief(abs(off), self.style, decimal=True)} too low, which is its own width."
            )))
        elif abs(off) > MOVED and not self._at_other_end(cut, level):
            found.append(self._told("moved", level, abs(off), (
                f"The dado for the {level} lies {how_much(abs(off), self.style)} too "
                f"{'high' if off > 0 else 'low'} in the {name}."
            )))
        return [*found, *self._sizes(level, cut)]

    def _sizes(self, level: str, cut: BoxCut) -> list[Trouble]:
        deep, width = cut.high[2] - cut.low[2], cut.high[0] - cut.low[0]
        lacks, over, found = self.plan.dado - deep, width - self.stock.thickest, []
        where = f"The dado for the {level} in the {self.side.name}"
        if lacks > GLUED:
            found.append(self._told("shallow", level, lacks, f"{where} is {small(lacks, self.style)} too shallow."))
        elif -lacks > GLUED:
            found.append(self._told("deep", level, -lacks, f"{where} is {small(-lacks, self.style)} too deep."))
        tight = width - self.stock.of(level)
        if not Felt(tight, self.plan.unit).enters:
            found.append(self._told("narrow", level, -tight, (
                f"{where} is {small(-tight, self.style)} narrower than the {level} is thick: it does not enter."
            )))
        elif Felt(over, self.plan.unit).loose:
            found.append(self._told("loose", level, over, (
                f"{where} is loose: {small(over, self.style)} wider than the thickest board."
            )))
        return found
