"""Any joint of the bench cut across, for the screen: sizes written true, clearances drawn larger than they are."""

from dataclasses import dataclass
from itertools import pairwise

import shapely

from shoplib.draw.chains import stacked, unit_note
from shoplib.draw.look import Look
from shoplib.draw.scene import Chain, Item, Leader, Line, Rect, Scene, Told
from shoplib.draw.slices import Plane, Slice, name_on, named_parts, region
from shoplib.draw.stretched import Stretched
from shoplib.joints.bench_pair import Pair
from shoplib.lists.writing import Writing
from shoplib.model.board import Board, BoxCut, Hole, PrismCut
from shoplib.model.box import Box
from shoplib.model.joinery import axis_of

_PART = 28
"""A clearance is drawn at least as wide as the picture divided by this."""
_LONGEST = 4
"""Of boards that run on side by side so many thicknesses are shown."""
_ASIDE = 24
"""From a leader a name stands off by the height of the picture divided by this."""

LARGER = "Clearances are drawn larger than they are."


def bench_section(pair: Pair, title: str, gain: int = 0) -> Scene:
    """The pair cut at its `section`: both boards with the sizes of their cuts, and what the entering board gains.

    Sizes are written as they are; a clearance is drawn larger where it would not be seen, and the drawing says so.
    `gain` is what the entering board gains at this end, 0 where nothing is to be said of it.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> dado = joint("dado").build(stock_of(3 * INCH // 4))
    >>> bench_section(dado, "A dado, in section").legend
    ('Fit under the upper wall: 0.002.',)
    """
    plane = Plane.of(pair)
    look = plane.look
    pieces = {board.name: plane.slice(board) for board in pair.boards}
    window = _window(pair, look, pieces)
    least = max(window[2] - window[0], window[3] - window[1]) // _PART
    across, up = (Stretched(_gaps(pair, pieces, look, flat), least) for flat in (look.across, look.up))
    frame = (across(window[0]), up(window[1]), across(window[2]), up(window[3]))
    items: list[Item] = []
    leaders = named_parts(pair, plane, frame, across, up)
    ways = [_way(leader, frame) for leader in leaders]
    names: list[Item] = [*leaders]
    for number, board in enumerate(pair.boards):
        piece = pieces[board.name].drawn(across, up)
        parts = piece.parts(shapely.box(*frame))
        items += [region(part, board.name, number) for part in parts]
        names += [name_on(board.name, parts, piece.rooms(frame, ways))] if parts else []
    items += names
    lines = _Lines(pair, plane, window, across, up)
    told_before = lines.dimensions()
    items += told_before
    items += [item for item in (lines.gained(gain) if gain else []) if not any(_same(item, one) for one in told_before)]
    told = _clearances(pair)
    note = f"Seen from {plane.seen_from}. The boards run on beyond the frame."
    note += f" {LARGER}" if across or up else ""
    cut = [board.name for board in pair.boards if pieces[board.name].wood]
    return Scene(
        title, unit_note(pair.stock.style, note),
        f"{' and '.join(cut)} cut across, seen from {plane.seen_from}. {' '.join(line.line for line in told)} {note}",
        frame, tuple(items), tuple(line.line for line in told), told=told,
    )


def _window(pair: Pair, look: Look, pieces: dict[str, Slice]) -> Rect:
    """Where boards meet, with some of both round it, and all of what is bored or cut there."""
    boxes = [board.box for board in pair.boards]
    thick = max(board.thickness for board in pair.boards[:2])
    meets = []
    for number, one in enumerate(boxes):
        for other in boxes[number + 1:]:
            low, high = map(max, one.low, other.low), map(min, one.high, other.high)
            low, high = tuple(low), tuple(high)
            if all(a <= b for a, b in zip(low, high, strict=True)):
                meets.append(look.flat(Box(low, high)))
    whole = [look.flat(box) for box in boxes]
    reach = thick * 5 // 4
    window = []
    for side in (0, 1):
        low = max(min(meet[side] for meet in meets) - reach, min(box[side] for box in whole))
        last = max(meet[side + 2] for meet in meets)
        cut = [place for board, box in zip(pair.boards, whole, strict=True) for place in pieces[board.name].places(side)
               if box[side] < place < box[side + 2]]
        high = min(max([last + reach, *(place + reach // 3 for place in cut)]), max(box[side + 2] for box in whole))
        if len({box[side + 2] for box in whole}) == 1:  # both run on alike: their near ends tell all
            high = min(high, low + _LONGEST * thick)
        window.append((int(low), int(high)))
    (left, right), (bottom, top) = window
    return left, bottom, right, top


def _way(leader: Leader, frame: Rect) -> Rect:
    """The straight way of a leader out of the drawing, with some room below and above it."""
    left, bottom, right, top = frame
    x, y = leader.point
    aside = (top - bottom) // _ASIDE
    return (left, y - aside, x, y + aside) if leader.side == "left" else (x, y - aside, right, y + aside)


def _gaps(pair: Pair, pieces: dict[str, Slice], look: Look, axis: int) -> list[tuple[int, int]]:
    """Where the stated clearances along one axis of the picture lie: between a face of either board."""
    side = 0 if axis == look.across else 1
    found = []
    for stated in pair.clearances:
        along, sign = axis_of(stated.way)
        if along != axis or not stated.gap:
            continue
        against = pieces[stated.against].places(side)
        for place in pieces[stated.mover].places(side):
            face = place + sign * int(stated.gap)
            if face in against:
                found.append((min(place, face), max(place, face)))
    return found


@dataclass(frozen=True, slots=True)
class _Lines:
    """The dimensions of a section: of the first board below and on the left, of the others above and on the right."""

    pair: Pair
    plane: Plane
    window: Rect
    across: Stretched
    up: Stretched

    def dimensions(self) -> list[Item]:
        """Thickness and cuts of each board, as far as the window shows their ends."""
        items: list[Item] = []
        for number, board in enumerate(self.pair.boards[:3]):
            if number > 1 and any(isinstance(cut, PrismCut) for cut in board.cuts):
                continue  # it stands aslant: the box round it tells none of its sizes
            sides = ("below", "left") if number == 0 else ("above", "right")
            for axis, side in zip((self.plane.look.across, self.plane.look.up), sides, strict=True):
                found = self._chain(board, axis, side, number - 1 if number else 0)
                if found is not None:
                    items.append(found)
        return items

    def gained(self, gain: int) -> list[Item]:
        """A dashed line where the entering board would end if it were butted, and the length that it gains."""
        along, sign = axis_of(self.pair.joints[0].axis)
        if along == self.plane.look.along:
            return []
        enters = self.pair.by_name[self.pair.joints[0].enters].box
        tip = enters.high[along] if sign > 0 else enters.low[along]
        face = int(tip) - sign * int(gain)
        other = self.plane.look.up if along == self.plane.look.across else self.plane.look.across
        place, beside = (self.across, self.up) if along == self.plane.look.across else (self.up, self.across)
        low = max(int(enters.low[other]), self.window[1 if other == self.plane.look.up else 0])
        high = min(int(enters.high[other]), self.window[3 if other == self.plane.look.up else 2])
        ends = [(place(face), beside(low)), (place(face), beside(high))]
        if along == self.plane.look.up:
            ends = [(y, x) for x, y in ends]
        text = stacked(self._page.setting(gain))
        at = tuple(sorted((place(int(tip)), place(face))))
        return [
            Line(*ends, "hidden"),
            Chain("above" if along == self.plane.look.across else "right", 2, at, (text,), sizes=(gain,)),
        ]

    @property
    def _page(self) -> Writing:
        return Writing(self.pair.stock.style, units=False)

    def _chain(self, board: Board, axis: int, side: str, row: int) -> Chain | None:
        flat = axis == self.plane.look.across
        low, high = (self.window[0], self.window[2]) if flat else (self.window[1], self.window[3])
        stations = {}
        # A cut with slanting sides tells no level size.
        for box in (board.box, *(box for _, box in self.plane.cuts(board, BoxCut, Hole))):
            for place in (box.low[axis], box.high[axis]):
                if low <= place <= high and board.box.low[axis] <= place <= board.box.high[axis]:
                    stations.setdefault(int(place), place)
        at = sorted(stations)
        if len(at) < 2:
            return None
        drawn = self.across if flat else self.up
        sizes = tuple(stations[b] - stations[a] for a, b in pairwise(at))
        return Chain(side, row, tuple(map(drawn, at)), tuple(stacked(self._page.setting(size)) for size in sizes),
                     sizes=sizes)


def _same(one: Item, other: Item) -> bool:
    """Whether two dimensions stand on one side and run from the same place to the same."""
    return isinstance(one, Chain) and isinstance(other, Chain) and (one.side, one.at) == (other.side, other.at)


def _clearances(pair: Pair) -> tuple[Told, ...]:
    """A line for each clearance that is not nothing, with its size."""
    page = Writing(pair.stock.style, units=False)
    lines = {}
    for stated in pair.clearances:
        if stated.gap:
            what = f"{stated.what[:1].upper()}{stated.what[1:]}"
            lines.setdefault(f"{what}: {page.setting(stated.gap)}.", (stated.what, stated.gap))
    return tuple(Told(line, (size,)) for line, size in lines.items())
