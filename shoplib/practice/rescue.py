"""Which side can be saved, and how: nothing is called saved whose mended board does not go together in the dry-fit."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from shoplib.measure import narrowest, thickest
from shoplib.model.board import Board, BoxCut
from shoplib.model.box import Box
from shoplib.practice.assembled import MEET
from shoplib.practice.bench import Bench
from shoplib.practice.dry_fit import DryFit, dry_fit
from shoplib.practice.fit import small
from shoplib.practice.plan import LEVELS, SIDES, Plan, Stock, dado_cut, planned_side
from shoplib.practice.slips import along
from shoplib.practice.trouble import Trouble, troubles
from shoplib.practice.turning import Stand, stands, stood
from shoplib.words.naming import and_list


@dataclass(frozen=True)
class Rescue:
    """What becomes of one side that has troubles.

    `saved` says whether it can still be used; `said` how, or why not. `stand` is how it then stands, `board` the
    mended side, and `proof` the dry-fit of that board with a partner cut right; both are None where it is not saved.
    """

    side: str
    saved: bool
    said: str
    stand: Stand | None = None
    board: Board | None = None
    proof: DryFit | None = None


def rescue(bench: Bench, plan: Plan, stock: Stock, side: Board, other: Board) -> Rescue | None:
    """What can be done with a side; None where nothing is. `other` is the side that it pairs with.

    A dado that lies elsewhere than planned, but in both sides alike, needs nothing: the case goes together.

    Tried in turn: cutting again what is shallow, narrow or missing, packing what is too deep or loose, turning the
    side or standing it at the other place; a glued-in strip, and last another dado in the inner face. The first that
    goes together in the dry-fit is told.

    >>> from shoplib.practice.plan import plan_for, stock_of
    >>> from shoplib.practice.slips import mirrored
    >>> bench = Bench("Noor", "dado", "in")
    >>> plan, stock = plan_for(bench), stock_of(bench)
    >>> left, right = (planned_side(plan, side, stock) for side in SIDES)
    >>> rescue(bench, plan, stock, mirrored(plan, right), left).said
    'The right side can be saved: it goes together as a left side. What is missing is a right side: cut one more.'
    """
    found = troubles(side, plan, stock, bench.style)
    if all(trouble.kind == "moved" and _alike(side, other, trouble.dado) for trouble in found):
        return None
    for board, steps in _mended(bench, plan, stock, side, other, found):
        for stand in stands(side.name):
            proof = proved(bench, plan, stock, board, stand, other)
            if proof.clean:
                return Rescue(side.name, True, _saved(side.name, stand, steps), stand, stood(board, stand), proof)
    return Rescue(side.name, False, _lost(side, found, bench, plan))


def proved(bench: Bench, plan: Plan, stock: Stock, board: Board, stand: Stand, other: Board) -> DryFit:
    """The dry-fit of a side stood so, with a partner cut right.

    Where the side's dadoes are a little off their planned places, or lie where the `other` side has them too, those
    of the partner lie there as well: both are cut at one setting of the fence.
    """
    own = stood(board, stand)
    partner = next(each for each in SIDES if each != stand.place)
    there, walls = _walls(other), {}
    for cut, box in zip(own.cuts, own.cut_boxes, strict=True):
        level, wall = cut.for_board, box.low[2]
        if level in LEVELS and any(abs(wall - at) < MEET for at in (plan.up(level), there.get(level, plan.up(level)))):
            walls[level] = wall
    pair = {stand.place: own, partner: planned_side(plan, partner, stock, walls)}
    return dry_fit(bench, plan, stock, pair["left side"], pair["right side"])


@dataclass(frozen=True)
class MadeAlike:
    """Two sides, each cut well and yet not alike, brought together. `proof` is the dry-fit of the mended sides."""

    said: str
    left: Board
    right: Board
    proof: DryFit


def made_alike(bench: Bench, plan: Plan, stock: Stock, left: Board, right: Board) -> MadeAlike | None:
    """What brings two sides together whose dadoes do not meet; None where they do, or nothing that was tried does.

    First the walls that the boards strike are pared; where that makes a dado loose, the right side gets a strip glued
    in and is cut again at the height of the left one. It is told only where the dry-fit is clean then.
    """
    before = dry_fit(bench, plan, stock, left, right)
    struck = [(level, side, f.amount) for f in before.findings if f.check == "overlap" for side in SIDES
              for level in LEVELS if {side, level} == set(f.boards)]
    if not struck:
        return None
    standing, sides = before.case.cabinet.by_name, {"left side": left, "right side": right}
    for level, side, _ in struck:
        sides[side] = _widened(sides[side], standing[side], level, standing[level].box)
    places = [f"the dado for the {level} in the {side} by {small(by, bench.style)}" for level, side, by in struck]
    heights = _walls(left)
    again = replace(right, cuts=tuple(
        along(cut, heights[cut.for_board]) if cut.for_board in heights else cut for cut in right.cuts
    ))
    ways = (
        (f"pare a wall of {and_list(places)}", sides["left side"], sides["right side"]),
        ("glue strips into the dadoes of the right side, plane them flush and cut both again at the fence settings of "
         "the left side; the strips show at the front edge", left, again),
    )
    for how, one, other in ways:
        proof = dry_fit(bench, plan, stock, one, other)
        if proof.clean:
            said = f"The dadoes of the two sides are not at one height. Both can be saved: {how}."
            return MadeAlike(f"{said} Dry-fitted so, it goes together.", one, other, proof)
    return None


def _widened(side: Board, standing: Board, level: str, board: Box) -> Board:
    """The side with its dado as wide as the board needs where it stands in the case."""
    cuts = []
    for cut in side.cuts:
        if cut.for_board == level:
            room = standing.placement.to_world(cut.box)
            low, high = narrowest([room.low[2], board.low[2]]), thickest([room.high[2], board.high[2]])
            own = standing.placement.to_board(Box((*room.low[:2], low), (*room.high[:2], high)))
            cut = replace(cut, low=own.low, high=own.high)
        cuts.append(cut)
    return replace(side, cuts=tuple(cuts))


def _walls(board: Board) -> dict[str, int]:
    """Where the near walls of its dadoes lie, up from its lower end."""
    return {cut.for_board: cut.low[0] for cut in board.cuts if cut.for_board in LEVELS}


def _alike(side: Board, other: Board, level: str) -> bool:
    """Whether both sides have this dado, at the same height as far as that makes them meet."""
    one, two = _walls(side).get(level), _walls(other).get(level)
    return one is not None and two is not None and abs(one - two) < MEET


def _mended(
    bench: Bench, plan: Plan, stock: Stock, side: Board, other: Board, found: tuple[Trouble, ...]
) -> Iterator[tuple[Board, tuple[str, ...]]]:
    """Boards that might come of the side, each with the steps to it: the least work first."""
    board, steps = side, []
    for kind, step in _SIZED.items():
        sized = [trouble for trouble in found if trouble.kind == kind]
        for trouble in sized:
            board = _resized(board, trouble, plan, stock)
        if sized:
            steps.append(step.format(dado=_dadoes(sized), size=_amounts(sized, bench)))
    for trouble in found:
        if trouble.kind == "second dado forgotten":
            board = replace(board, cuts=(*board.cuts, _right_cut(plan, stock, other, trouble.dado)))
            steps.append(f"cut the dado for the {trouble.dado} now, at the fence setting of the {other.name}")
    yield board, tuple(steps)
    misplaced = [
        trouble for trouble in found
        if trouble.kind in ("wrong side of the line", "moved") and not _alike(side, other, trouble.dado)
    ]
    if misplaced:
        filled = board
        for trouble in misplaced:
            right = _right_cut(plan, stock, other, trouble.dado)
            cuts = [right if cut.for_board == trouble.dado else cut for cut in filled.cuts]
            filled = replace(filled, cuts=tuple(cuts))
        yield filled, (
            *steps, f"glue a strip into {_dadoes(misplaced)}, plane it flush and cut the dado again at its line; the "
            "strip shows at the front edge",
        )
    if any(trouble.kind == "wrong face" for trouble in found):
        again = [_right_cut(plan, stock, other, level) for level in LEVELS]
        outer = [replace(cut, for_board="") if cut.for_board in LEVELS else cut for cut in board.cuts]
        yield replace(board, cuts=(*outer, *again)), (*steps, "cut the dadoes again in the inner face")


_SIZED = {
    "shallow": "run {dado} over the cutter again, pressed down, {size} deeper",
    "deep": "glue a slip {size} thick to the floor of {dado}",
    "narrow": "move the fence and cut {dado} again, wider on the side away from the line, until the board enters "
              "({size} at least)",
    "loose": "glue a shaving {size} thick to one wall of {dado}",
}


def _dadoes(found: list[Trouble]) -> str:
    names = " and the ".join(trouble.dado for trouble in found)
    return f"the {'dado' if len(found) == 1 else 'dadoes'} for the {names}"


def _amounts(found: list[Trouble], bench: Bench) -> str:
    """The amount, or both in the order of the dadoes where they differ."""
    return and_list(list(dict.fromkeys(small(trouble.amount, bench.style) for trouble in found)))


def _resized(board: Board, trouble: Trouble, plan: Plan, stock: Stock) -> Board:
    """The dado with the planned depth, or with the planned width from the wall that lies at the line."""
    def right(cut: BoxCut) -> BoxCut:
        if cut.for_board != trouble.dado:
            return cut
        if trouble.kind in ("narrow", "loose"):
            return replace(cut, high=(cut.low[0] + stock.thickest + plan.fit, *cut.high[1:]))
        if cut.low[2] > 0:  # in the outer face
            return replace(cut, low=(*cut.low[:2], board.thickness - plan.dado))
        return replace(cut, high=(*cut.high[:2], plan.dado))

    return replace(board, cuts=tuple(right(cut) for cut in board.cuts))


def _right_cut(plan: Plan, stock: Stock, other: Board, level: str) -> BoxCut:
    """The dado as it should be: where the other side has it, if that is about its place, else where it is planned."""
    cut = dado_cut(plan, level, plan.up(level), stock.thickest + plan.fit, plan.dado)
    there = next((each for each in other.cuts if each.for_board == level and each.low[2] == 0), None)
    if there is not None and abs(there.low[0] - plan.up(level)) < MEET:
        return along(cut, there.low[0])
    return cut


def _saved(side: str, stand: Stand, steps: tuple[str, ...]) -> str:
    done = "; ".join(steps)
    if stand == Stand(side):
        return f"The {side} can be saved: {done}. Dry-fitted so, it goes together."
    first = f"{done}; then " if done else ""
    missing = "" if stand.place == side else f" What is missing is a {side}: cut one more."
    return f"The {side} can be saved: {first}it goes together {stand.said(side)}.{missing}"


def _lost(side: Board, found: tuple[Trouble, ...], bench: Bench, plan: Plan) -> str:
    if any(trouble.kind == "wrong face" for trouble in found):
        left = small(side.thickness - 2 * plan.dado, bench.style)
        return (
            f"The {side.name} cannot be saved: wherever it stands, its dadoes or its rabbet look the wrong way, and "
            f"dadoes cut again inside would leave {left} between two of them. Cut a new one, and keep this for tests."
        )
    return (
        f"The {side.name} cannot be saved: it goes together in no way that was tried. Cut a new one, and keep this "
        "for tests."
    )
