"""The case put together as a person would: each board as far in as it goes, the sides as level as the dadoes allow.

Boards that were cut a few thousandths off still go together. What a shop lets pass is written into the joint as it
was cut, so that the dry-fit behind it stays exact: it then says nothing of that joint, and everything of the others.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from shoplib.checks.geometry import far, near
from shoplib.measure import narrowest, thickest, to_step
from shoplib.model.board import Board, BoxCut
from shoplib.model.box import Box
from shoplib.model.solved import Cabinet, Joint
from shoplib.practice.bench import Bench
from shoplib.practice.fit import Felt
from shoplib.practice.plan import (
    LEVELS,
    SIDES,
    Plan,
    Stock,
    back_board,
    cabinet_of,
    joints_of,
    level_board,
    moved,
)
from shoplib.practice.spreads import THOU

GLUED = 5 * THOU
"""Glue fills a gap up to this (second hand); so much too shallow, too deep or short lets a shop pass."""

MEET = 125 * THOU
"""Dadoes of left and right that differ by less are meant for one board; more is another place."""


@dataclass(frozen=True, slots=True)
class Opening:
    """A dado that opens inward where its side stands: its walls (heights) and its depth, in ticks."""

    low: int
    high: int
    depth: int

    @property
    def width(self) -> int:
        """From wall to wall."""
        return self.high - self.low


@dataclass(frozen=True)
class Assembled:
    """The case as it goes together: the cabinet for the dry-fit, and what was read while it was put together.

    `fits` are how the boards went into their dadoes, by level board and side. `raised` is how far the right side
    stands above the left one. `level` names, for each level board, how much higher its dado lies in the right side.
    """

    cabinet: Cabinet
    fits: tuple[tuple[str, str, Felt], ...]
    raised: int
    level: tuple[tuple[str, int], ...]


def openings(side: Board, place: str) -> dict[str, Opening]:
    """The dadoes of a side that open to the inside of the case, by the board that each is for."""
    axis, sign = 0, -1 if place == "left side" else 1
    face, found = near(side.box, axis, sign), {}
    for cut, box in zip([c for c in side.cuts if isinstance(c, BoxCut)], side.cut_boxes, strict=True):
        if cut.for_board in LEVELS and near(box, axis, sign) == face:
            found[cut.for_board] = Opening(box.low[2], box.high[2], sign * (far(box, axis, sign) - face))
    return found


def assembled(bench: Bench, plan: Plan, stock: Stock, left: Board, right: Board) -> Assembled:
    """Puts the two sides, the bottom, the shelf and a back cut to fit together.

    The sides lie as near as their shallowest dadoes let them, and the right one as level with the left one as the
    dadoes that meet allow. Dadoes that lie in other places are left out of that, so that the clash shows whole.

    >>> from shoplib.practice.plan import plan_for, planned_side, stock_of
    >>> bench = Bench("Noor", "dado", "in")
    >>> plan, stock = plan_for(bench), stock_of(bench)
    >>> case = assembled(bench, plan, stock, *(planned_side(plan, side, stock) for side in SIDES))
    >>> [board.name for board in case.cabinet.boards], case.raised
    (['left side', 'right side', 'bottom', 'shelf', 'back'], 0)
    """
    opened = {"left side": openings(left, "left side"), "right side": openings(right, "right side")}
    meeting = [level for level in LEVELS if _meets(opened, level)]
    raised = _raise(opened, meeting, stock)
    at = {level: _rest(plan, opened, meeting, raised, level) for level in LEVELS}
    short = {side: _short(plan, opened[side], at) for side in SIDES}
    faces = {"left side": plan.dado - short["left side"], "right side": plan.length - plan.dado + short["right side"]}
    stand = {
        "left side": moved(left, faces["left side"] - left.box.high[0]),
        "right side": moved(right, faces["right side"] - right.box.low[0], raised),
    }
    levels = [level_board(plan, level, stock.of(level), at[level]) for level in LEVELS]
    sides = {side: _given_way(_for_none(stand[side], opened[side]), levels, meeting, bench.unit) for side in SIDES}
    boards = (*sides.values(), *levels, back_board(plan, faces["left side"], faces["right side"]))
    joints = tuple(
        _as_cut(joint, openings(sides[joint.receives], joint.receives).get(joint.enters), plan, stock, short)
        for joint in joints_of(plan)
    )
    fits = tuple(
        (level, side, Felt(opened[side][level].width - stock.of(level), bench.unit))
        for level in LEVELS for side in SIDES if level in opened[side]
    )
    heights = tuple(
        (level, opened["right side"][level].low - opened["left side"][level].low)
        for level in LEVELS if all(level in opened[side] for side in SIDES)
    )
    return Assembled(cabinet_of(bench, plan, stock, boards, joints), fits, raised, heights)


def _meets(opened: dict[str, dict[str, Opening]], level: str) -> bool:
    one, other = (opened[side].get(level) for side in SIDES)
    return one is not None and other is not None and abs(one.low - other.low) < MEET


def _raise(opened: dict[str, dict[str, Opening]], meeting: list[str], stock: Stock) -> int:
    """How far the right side must go up or down so that every board that meets both its dadoes lies level.

    A board `t` thick passes where the walls of both dadoes leave it that much: left.low + t - right.high <= raised
    <= left.high - t - right.low. Of all that pass, the one nearest 0; where none does, the middle, which shares
    the clash between them.
    """
    if not meeting:
        return 0
    least, most = [], []
    for level in meeting:
        one, other, t = opened["left side"][level], opened["right side"][level], stock.of(level)
        low, high = one.low + t - other.high, one.high - t - other.low
        middle = to_step(low + high, 2) // 2
        least.append(low if low <= high else middle)  # too narrow: the walls of both in line, and that clash is told
        most.append(high if low <= high else middle)
    low, high = thickest(least), narrowest(most)
    if low > high:
        return to_step(low + high, 2) // 2
    return low if low > 0 else high if high < 0 else 0


def _short(plan: Plan, opened: dict[str, Opening], at: dict[str, int]) -> int:
    """How far a side stands off its place: by what the shallowest of the dadoes lacks that lie where a board rests.

    Where all are too deep it is still set to the planned width, and the ends of the boards stand off the floors.
    """
    return thickest([0, *(plan.dado - cut.depth for level, cut in opened.items() if abs(cut.low - at[level]) < MEET)])


def _rest(plan: Plan, opened: dict[str, dict[str, Opening]], meeting: list[str], raised: int, level: str) -> int:
    """The height at which a level board rests: on the higher of its two near walls, else on the one that is planned."""
    walls = [
        opened[side][level].low + (raised if side == "right side" else 0)
        for side in SIDES if level in opened[side]
    ]
    if level in meeting:
        return thickest(walls)
    planned = plan.up(level)
    near_plan = [wall for wall in walls if abs(wall - planned) < MEET]
    return near_plan[0] if near_plan else planned


def _for_none(side: Board, opened: dict[str, Opening]) -> Board:
    """The side as nobody meant it: a dado that does not open to the inside is there for no board."""
    cuts = (
        replace(cut, for_board="") if cut.for_board in LEVELS and cut.for_board not in opened else cut
        for cut in side.cuts
    )
    return replace(side, cuts=tuple(cuts))


def _given_way(side: Board, levels: list[Board], meeting: list[str], unit: str) -> Board:
    """The side with dadoes as wide as a press fit makes them: the wood gives as much as it does in a press fit."""
    cuts = []
    for cut in side.cuts:
        board = next((each for each in levels if each.name == cut.for_board and cut.for_board in meeting), None)
        cuts.append(cut if board is None else _pressed(side, cut, board, unit))
    return replace(side, cuts=tuple(cuts))


def _pressed(side: Board, cut: BoxCut, board: Board, unit: str) -> BoxCut:
    room = side.placement.to_world(cut.box)
    low, high = narrowest([room.low[2], board.box.low[2]]), thickest([room.high[2], board.box.high[2]])
    if not Felt(room.size[2] - (high - low), unit).enters:
        return cut
    own = side.placement.to_board(Box((*room.low[:2], low), (*room.high[:2], high)))
    return replace(cut, low=own.low, high=own.high)


def _as_cut(joint: Joint, cut: Opening | None, plan: Plan, stock: Stock, short: dict[str, int]) -> Joint:
    """The joint with what was cut written into it, where that is near enough to what it should be."""
    if cut is None or joint.enters not in LEVELS:
        return joint
    play, entered = cut.width - stock.thickest, plan.dado - short[joint.receives]
    if Felt(cut.width - stock.of(joint.enters), plan.unit).enters and not Felt(play, plan.unit).loose:
        joint = replace(joint, fit=play)
    if abs(cut.depth - plan.dado) <= GLUED and short[joint.receives] <= GLUED:
        joint = replace(joint, depth=cut.depth, end_gap=cut.depth - entered)
    return joint


def level_difference(case: Assembled) -> Iterator[tuple[str, int]]:
    """Level boards that would lie out of level, and by how much over their length (the right end higher: plus)."""
    for level, higher in case.level:
        out = higher + case.raised
        if abs(out) > GLUED:
            yield level, out
