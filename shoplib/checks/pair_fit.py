"""The dry-fit of a pair from the joint bench: no wood twice, and every stated clearance as it is stated. Exact."""

from itertools import combinations
from math import isqrt

from shoplib.checks.geometry import direction, share_wood
from shoplib.joints.bench_pair import Clearance, Pair
from shoplib.model.board import Board, Hole
from shoplib.model.box import Box
from shoplib.model.placement import directions
from shoplib.model.prism import Number, Prism, shared_shifts
from shoplib.model.solved import Finding
from shoplib.words.amounts import true_amount


def fit_pair(pair: Pair) -> tuple[Finding, ...]:
    """Everything that keeps the pair from going together as its joint says, each a "stop"; empty where it fits.

    Of two boards that want the same wood no clearance is told: they do not stand where it could be read.
    """
    clashes = [
        finding for one, other in combinations(pair.boards, 2) for finding in _overlap(pair, one, other)
    ]
    clashing = {frozenset(finding.boards) for finding in clashes}
    clear = [stated for stated in pair.clearances if frozenset((stated.mover, stated.against)) not in clashing]
    return (*clashes, *(finding for stated in clear for finding in _clearance(pair, stated)))


def free_way(mover: Board, against: Board, way: str, part: Box | None = None) -> Number | None:
    """How far a board can be moved in a world direction before it strikes another, exact; None where it never does.

    Less than nothing where the two share wood as they stand. `part` keeps the look to the wood of the mover in it.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> pair = joint("dado").build(stock_of(3 * INCH // 4), {"fit": 500, "end gap": 7})
    >>> [free_way(pair.by_name["shelf"], pair.by_name["side"], way) for way in ("-x", "+z", "-z", "+x")]
    [7, 500, 0, None]
    """
    axis, sign = direction(way)
    solids = mover.solids if part is None else [piece for piece in (s.inside(part) for s in mover.solids) if piece]
    ways = [
        room
        for ours in solids
        for theirs in against.solids
        if (room := _way(ours, theirs, against, axis, sign)) is not None
    ]
    return min(ways, default=None)


def ways(
    mover: Board, against: Board, axis: int, part: Box | None = None, give: int = 0
) -> tuple[Number | None, Number | None]:
    """How far a board can be moved back and forth along a world axis between the pieces of another; bores are wood.

    Less than nothing where a wall stands in its wood, by how much it would have to go the other way to clear that
    wall: the two added are the play between two walls, or by how much a board is too thick for them. A piece counts
    as lying on the side on which most of it is met; None where nothing lies there. What reaches no more than `give`
    into the mover sideways is let pass: in a press fit the wood gives as much.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> pair = joint("dado").build(stock_of(3 * INCH // 4), {"fit": 500})
    >>> ways(pair.by_name["shelf"], pair.by_name["side"], 2)
    (0, 500)
    """
    solids = mover.solids if part is None else [piece for piece in (_in_part(s, part) for s in mover.solids) if piece]
    back, forth = [], []
    for ours in solids:
        for theirs in against.solids:
            shifts = shared_shifts(ours, theirs, axis)
            if shifts is not None and not _gives(ours, theirs, axis, give):
                low, high = shifts
                (back if low + high < 0 else forth).append(-high if low + high < 0 else low)
    return min(back, default=None), min(forth, default=None)


def _in_part(piece: Prism, part: Box) -> Prism | None:
    """What of a piece lies in the box; most pieces lie wholly in it or wholly beside it, and need no cutting."""
    reaches = [piece.reach(axis) for axis in range(3)]
    if any(high <= part.low[axis] or low >= part.high[axis] for axis, (low, high) in enumerate(reaches)):
        return None
    if all(part.low[axis] <= low and high <= part.high[axis] for axis, (low, high) in enumerate(reaches)):
        return piece
    return piece.inside(part)


def _gives(ours: Prism, theirs: Prism, axis: int, give: int) -> bool:
    """Whether two pieces lie in each other's way across an axis by no more than the wood gives."""
    across = [(ours.reach(other), theirs.reach(other)) for other in {0, 1, 2} - {axis}] if give else []
    return any(min(b, d) - max(a, c) <= give for (a, b), (c, d) in across)


def way_out(mover: Board, against: Board, way: str) -> Number:
    """How far a board must be drawn back against the world direction `way` until it shares no wood with the other.

    >>> from dataclasses import replace
    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> pair = joint("dado").build(stock_of(3 * INCH // 4))
    >>> whole = replace(pair.by_name["side"], cuts=())
    >>> way_out(pair.by_name["shelf"], pair.by_name["side"], "-x"), way_out(pair.by_name["shelf"], whole, "-x") / INCH
    (0, 0.25)
    """
    axis, sign = direction(way)
    found = [shared_shifts(ours, theirs, axis) for ours in mover.solids for theirs in against.solids]
    met = [(low, high) if sign > 0 else (-high, -low) for low, high in filter(None, found)]
    out = 0
    while blocked := [low for low, high in met if low < -out < high]:
        out = -min(blocked)
    return out


def _way(ours: Prism, theirs: Prism, against: Board, axis: int, sign: int) -> Number | None:
    """How far one piece can go before it strikes another piece, whose board may be bored for it."""
    for across in {0, 1, 2} - {axis}:
        (a, b), (c, d) = ours.reach(across), theirs.reach(across)
        if a >= d or c >= b:
            return None
    if _bored(against) and _dips_into(ours, theirs) and (hole := _hole_round(ours, theirs, against)):
        return hole.free(ours, axis, sign)  # a round solid has many corners: no need to look at each
    shifts = shared_shifts(ours, theirs, axis)
    if shifts is None:
        return None
    near, far = shifts if sign > 0 else (-shifts[1], -shifts[0])
    if far <= 0:
        return None
    if near >= 0:
        return near
    hole = _hole_round(ours, theirs, against)
    return near if hole is None else hole.free(ours, axis, sign)


def _bored(board: Board) -> bool:
    return any(isinstance(cut, Hole) for cut in board.cuts)


def _dips_into(ours: Prism, theirs: Prism) -> bool:
    """Whether the two surely share wood: the other is a box that holds all of ours on two axes, a part on the third."""
    if theirs.along((theirs.axis + 1) % 3) is None:
        return False
    spans = [(ours.reach(axis), theirs.reach(axis)) for axis in range(3)]
    held = sum(c <= a and b <= d for (a, b), (c, d) in spans)
    return held >= 2 and all(a < d and c < b for (a, b), (c, d) in spans)


class _Bore:
    """A bored hole in the world: its axis, centre, radius and the stretch it is bored through."""

    def __init__(self, board: Board, hole: Hole) -> None:
        own = "uvw".index(hole.along)
        inward = 1 if 2 * hole.centre[own] < board.size[own] else -1
        bottom = list(hole.centre)
        bottom[own] += inward * hole.depth
        mouth, floor = board.placement.point_to_world(hole.centre), board.placement.point_to_world(tuple(bottom))
        self.axis = directions(board.placement.axes)[own][0]
        self.mouth, self.floor = mouth[self.axis], floor[self.axis]
        self.centre = (mouth[(self.axis + 1) % 3], mouth[(self.axis + 2) % 3])
        self.diameter = hole.diameter

    def holds(self, ours: Prism, theirs: Prism) -> bool:
        """Whether all that the two pieces share lies in the hole."""
        seen, wood = ours.along(self.axis), theirs.reach(self.axis)
        if seen is None:
            return False
        low, high = max(seen.low, wood[0]), min(seen.high, wood[1])
        bored = sorted((self.mouth, self.floor))
        return bored[0] <= low and high <= bored[1] and all(
            (2 * p) ** 2 + (2 * q) ** 2 <= self.diameter**2 for p, q in self._from_centre(seen)
        )

    def _from_centre(self, seen: Prism) -> list[tuple[Number, Number]]:
        return [(p - self.centre[0], q - self.centre[1]) for p, q in seen.outline]

    def free(self, ours: Prism, axis: int, sign: int) -> Number | None:
        """How far the piece in the hole can go before its floor (exact) or its wall (to the whole tick below)."""
        inward = 1 if self.floor > self.mouth else -1
        if axis == self.axis:
            low, high = ours.reach(axis)
            end = high if sign > 0 else low
            return sign * (self.floor - end) if sign == inward else None
        side = (axis - self.axis - 1) % 3
        corners = self._from_centre(ours.along(self.axis))
        return min(
            isqrt(int(self.diameter**2 - 4 * corner[1 - side] ** 2)) // 2 - sign * corner[side] for corner in corners
        )


def _hole_round(ours: Prism, theirs: Prism, against: Board) -> _Bore | None:
    bores = (_Bore(against, cut) for cut in against.cuts if isinstance(cut, Hole))
    return next((bore for bore in bores if bore.holds(ours, theirs)), None)


def _overlap(pair: Pair, one: Board, other: Board) -> list[Finding]:
    """The least way that would part two boards that want the same wood."""
    ways = [
        _least_way(ours, theirs)
        for ours in one.solids
        for theirs in other.solids
        if _near(ours, theirs)
        and _hole_round(ours, theirs, other) is None
        and _hole_round(theirs, ours, one) is None
        and share_wood(ours, theirs)
    ]
    if not ways:
        return []
    amount = -int(-max(ways) // 1)
    text = f"{one.name} and {other.name} want the same wood: {true_amount(amount, pair.stock.style)}."
    return [Finding("overlap", "stop", (one.name, other.name), text, amount)]


def _near(ours: Prism, theirs: Prism) -> bool:
    """Whether the boxes round the two share room."""
    for axis in range(3):
        (a, b), (c, d) = ours.reach(axis), theirs.reach(axis)
        if a >= d or c >= b:
            return False
    return True


def _least_way(ours: Prism, theirs: Prism) -> Number:
    shifts = [shared_shifts(ours, theirs, axis) for axis in range(3)]
    return min(min(-low, high) for low, high in filter(None, shifts))


def _clearance(pair: Pair, stated: Clearance) -> list[Finding]:
    mover, against = pair.by_name[stated.mover], pair.by_name[stated.against]
    found = free_way(mover, against, stated.way, stated.part)
    if found == stated.gap:
        return []
    style = pair.stock.style
    if found is None:
        text = f"{stated.mover} meets nothing of {stated.against}: no {stated.what}."
        return [Finding("seating", "stop", (stated.mover, stated.against), text)]
    off = abs(found - stated.gap)
    amount = -int(-off // 1)
    less = "less" if found < stated.gap else "more"
    room = f"{true_amount(amount, style)} {less} room than meant between {stated.mover} and {stated.against}"
    text = f"{stated.what[0].upper()}{stated.what[1:]}: {room}."
    return [Finding("seating", "stop", (stated.mover, stated.against), text, amount)]
