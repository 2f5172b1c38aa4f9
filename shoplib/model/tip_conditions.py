"""The conditions under which a case is asked whether it tips: those of ASTM F2057, as far as they are known.

Each figure says in `data/loads.toml` whether it was read or is from memory. The standard is about clothes storage in
homes; a shop case is no tested product, and what comes out here is a reason for care, never a pass.
"""

from dataclasses import dataclass
from typing import Any

import pint

from shoplib.measure import read_length, share, to_quantity
from shoplib.measure.quantity import read_quantity
from shoplib.model.laden import Stand, closed, drawer_groups, in_use, room_in, stand_of
from shoplib.model.solved import Cabinet
from shoplib.model.tipping import Push, Stability, stability
from shoplib.model.weight import Weight, together
from shoplib.tables.loads import loads


@dataclass(frozen=True, slots=True)
class Condition:
    """One condition in a few words, and what came of it."""

    name: str
    found: Stability


ONE, EMPTY, FILLED, LEANT_ON, PULLED = "one open", "empty", "filled", "leant on", "pulled"


def conditions(cabinet: Cabinet) -> tuple[Condition, ...]:
    """A case with its drawers filled, one open; then with all of them and all pull-outs open in four conditions.

    These are: empty; filled with 8.5 lb/ft3; leant on besides, with 60 lb on the front of the drawer that reaches out
    farthest and a 0.43 in block under the rear; or pulled forward at the top with 10 lb instead. The one that is open
    alone is the one that tips the case most. Without drawers there are "empty" and "pulled".
    """
    stand, drawers = stand_of(cabinet), drawer_groups(cabinet)
    fill = read_quantity(loads()["drawer_fill"].value, "filling")

    def asked(weights: tuple[Weight, ...], **more: Any) -> Stability:
        return stability(weights, stand.edge, stand.floor, cabinet.style, **more)

    own = closed(cabinet)
    empty, full = in_use(cabinet, None, None, own), in_use(cabinet, fill, None, own)
    pull = Push("pull at the top", read_quantity(loads()["pull_at_top"].value, "force"), stand.height)
    block = read_length(loads()["carpet"].value)
    found = [Condition(EMPTY, asked(empty)), Condition(PULLED, asked(full, pushes=[pull]))]
    if drawers:
        one = [asked(in_use(cabinet, fill, [group], own)) for group in drawers]
        worst = sorted(one, key=lambda each: (each.holding - each.tipping).magnitude)[0]
        leant = asked((*full, _leaning(cabinet)), raised=block, over=stand.rear - stand.edge)
        found[1:1] = [Condition(FILLED, asked(full)), Condition(LEANT_ON, leant)]
        found.insert(0, Condition(ONE, worst))
    return tuple(found)


def _leaning(cabinet: Cabinet) -> Weight:
    """A child's weight on the front of the open drawer that reaches out farthest; of several, on the lowest."""
    run = {travel.group: travel.vector for travel in cabinet.travel}

    def reach(group: str) -> tuple[int, int]:
        boards = cabinet.groups[group]
        front = sorted(boards, key=lambda board: board.box.low[1])[0].box
        return front.low[1] + run.get(group, (0, 0, 0))[1], room_in(cabinet, group).high[2]

    y, z = sorted(reach(group) for group in drawer_groups(cabinet))[0]
    force = read_quantity(loads()["child"].value, "force")
    return Weight("weight on an open drawer", force, force, (0, y, z))


def in_scope(cabinet: Cabinet) -> bool:
    """Whether a case is as high, as heavy and as large as those that ASTM F2057-23 is about (read)."""
    high, heavy, large = (loads()[row].value for row in ("tipping_height", "tipping_weight", "tipping_volume"))
    stand: Stand = stand_of(cabinet)
    _, most = together(in_use(cabinet))
    wide, deep, tall = (to_quantity(ticks, "foot") for ticks in cabinet.outside.size)
    volume = (wide * deep * tall).magnitude
    return (
        stand.height >= read_length(high)
        and most >= read_quantity(heavy, "force")
        and volume >= float(large.removesuffix(" ft3"))
    )


def wall_pull(cabinet: Cabinet, load: pint.Quantity, height: int) -> pint.Quantity:
    """What pulls a hung case off its wall at `height` over its lower edge (ticks), every filled drawer open.

    The case turns about its lower rear edge: the fixings pull with what all weighs, times how far its middle stands
    before the wall, over their height. `load` lies in each drawer.
    """
    rear, low = cabinet.outside.high[1], cabinet.outside.low[2]
    moment = stability(in_use(cabinet, load, None), rear, low, cabinet.style)
    return moment.pull_to_hold(height)


def middle_of_rail(cabinet: Cabinet) -> int | None:
    """The height of the middle of the highest rail over the lower edge of the case; None without a rail."""
    rails = sorted((board.box for board in cabinet.boards if board.role == "rail"), key=lambda box: box.high[2])
    if not rails:
        return None
    return share(rails[-1].low[2] + rails[-1].high[2], 2, 1)[0] - cabinet.outside.low[2]
