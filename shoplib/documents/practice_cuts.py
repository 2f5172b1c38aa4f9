"""The cuts of a pair as they are set up: how wide, how deep, and from which end, edge or face."""

from dataclasses import dataclass, replace

from shoplib.draw.pair_section import said
from shoplib.draw.slices import around
from shoplib.joints.bench_pair import Pair
from shoplib.joints.pocket_screws import along_the_drill
from shoplib.joints.splined_mitre import toe_to_slot
from shoplib.measure import Style, shows_rest, write_brief
from shoplib.model.board import Board, BoxCut, Hole, PrismCut
from shoplib.model.dado_stack import NEAR
from shoplib.model.placement import directions

_LOW, _HIGH = ("left", "front", "bottom"), ("right", "back", "top")
_EDGE = ("end", "edge", "face")


@dataclass(frozen=True, slots=True)
class CutRow:
    """Cuts of one kind and size in one board, in ticks; `wide` or `deep` is 0 where only the drawing tells it.

    `bored` cuts are holes, `wide` their diameter; `through` ones come out on the other side. `walls` says whether wood
    stands on both sides of its width, so that the cutter's width, or where its first and last pass stand, decides it.
    `where` says in words where the cuts begin.
    """

    board: str
    kind: str
    count: int
    wide: int
    deep: int
    walls: bool
    bored: bool
    where: str
    through: bool = False


def cut_rows(pair: Pair) -> tuple[CutRow, ...]:
    """Every cut of the two boards, those alike in one row; what is bought, a dowel or a spline, has none.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> [dado] = cut_rows(joint("dado").build(stock_of(INCH * 3 // 4)))
    >>> said(dado.wide, INCH_STYLE), said(dado.deep, INCH_STYLE), dado.where
    ('0.752 in', '1/4 in', '5 in from the bottom end')
    """
    style = pair.stock.style
    rows: dict[tuple, list[tuple[CutRow, _Place]]] = {}
    for board in pair.boards[:2]:
        for cut in board.cuts:
            if isinstance(cut, Hole):
                row, place = _bored(board, cut, style)
            elif isinstance(cut, BoxCut):
                row, place = _sawn(board, cut, style)
            else:
                row, place = _slanted(pair, board, cut), _Place(0, "")
            alike = (row.board, row.kind, said(row.wide, style), said(row.deep, style), place.of)
            rows.setdefault(alike, []).append((row, place))
    return tuple(_together(found, style) for found in rows.values())


def _slanted(pair: Pair, board: Board, cut: PrismCut) -> CutRow:
    """A cut with slanting walls: what the settings say of it, for a rule cannot be laid along its axes."""
    values = pair.values
    if pair.kind == "splined mitre" and cut.kind == "slot":
        toe = said(toe_to_slot(pair.stock, values), pair.stock.style)
        return CutRow(board.name, cut.kind, 1, values["spline"] + values["fit"], values["slot"], True, False,
                      f"square to the mitre's face, {toe} from its long point")
    if pair.kind == "splined mitre":
        return CutRow(board.name, cut.kind, 1, 0, 0, False, False, "right across the end, at 45 degrees")
    if pair.kind == "pocket screws":
        lean = f"leaning {values['angle']} degrees, as drawn"
        shank = cut.kind == "shank hole"  # it goes on from the pocket, out of the end
        deep = values["web"] if shank else along_the_drill(pair.stock, values) - values["web"]
        return CutRow(board.name, cut.kind, 1, values[cut.kind], deep, False, True, lean, shank)
    long = board.placement.to_board(around(cut, board)).size[0]
    return CutRow(board.name, cut.kind, 1, 0, long, False, False, "at the end, between slanting walls, as drawn")


@dataclass(frozen=True, slots=True)
class _Place:
    """How far a cut begins from an end, an edge or a face, and from which; then what `more` is told of its place."""

    at: int
    of: str
    more: str = ""

    def words(self, style: Style) -> str:
        told = f"{_shop(self.at, style)} from {self.of}" if self.at else f"at {self.of}"
        return f"{told}; {self.more}" if self.more else told


def _shop(ticks: int, style: Style) -> str:
    """A place at the rule's nearest mark, or as a decimal where that is off by more than a shop sets."""
    return write_brief(ticks, style, decimal=shows_rest(ticks, style))


def _together(found: list[tuple[CutRow, _Place]], style: Style) -> CutRow:
    """One row for cuts that are alike, with all their places."""
    row, first = found[0]
    if len(found) == 1:
        return row
    places = sorted({place.at for _, place in found})
    where = row.where
    if len(places) > 1:
        told = ", ".join(_shop(at, style).removesuffix(f" {style.unit}") for at in places)
        where = f"at {told} {style.unit} from {first.of}{f'; {first.more}' if first.more else ''}"
    return replace(row, count=len(found), where=where, walls=any(one.walls for one, _ in found))


def _sawn(board: Board, cut: BoxCut, style: Style) -> tuple[CutRow, _Place]:
    """A box: deep from the face, else from the edge or end that it opens on; wide across that and its run."""
    full, open_, closed = [], [], []
    for k in range(3):
        touches = (cut.low[k] == 0) + (cut.high[k] == board.size[k])
        (closed, open_, full)[touches].append(k)
    # Cut right through the thickness, it is cut from the end; let into the thickness, from the edge if it can be.
    deep = open_[0] if 2 in full else open_[-1]
    rest = [k for k in (0, 1, 2) if k != deep]
    sizes = [high - low for low, high in zip(cut.low, cut.high, strict=True)]
    # The run of the cut goes right through, or is the longer way; what lies across it is its width.
    run = next((k for k in rest if k in full), max(rest, key=lambda k: sizes[k]))
    wide = next(k for k in rest if k != run)
    place = _place(board, cut, wide)
    if run not in full:
        place = replace(place, more=f"{said(sizes[run], style)} long, {_place(board, cut, run).words(style)}")
    return CutRow(board.name, cut.kind, 1, sizes[wide], sizes[deep], wide in closed, False, place.words(style)), place


def _place(board: Board, cut: BoxCut, k: int) -> _Place:
    """Where a cut begins along one of its board's own axes: from the nearer end; always the same edge and face."""
    axis, sign = directions(board.placement.axes)[k]
    before, after = cut.low[k], board.size[k] - cut.high[k]
    if sign < 0:
        before, after = after, before
    if before <= after or k > 0:
        return _Place(before, f"the {_LOW[axis]} {_EDGE[k]}")
    return _Place(after, f"the {_HIGH[axis]} {_EDGE[k]}")


def _bored(board: Board, hole: Hole, style: Style) -> tuple[CutRow, _Place]:
    """A hole; those of a row stand along the width of their board."""
    along = "uvw".index(hole.along)
    places = []
    for k in (1, 0, 2):
        if k != along:
            axis, sign = directions(board.placement.axes)[k]
            at = hole.centre[k] if sign > 0 else board.size[k] - hole.centre[k]
            places.append(_Place(at, f"the {_LOW[axis]} {_EDGE[k]}"))
    first, *others = places
    place = replace(first, more="; ".join(other.words(style) for other in others))
    kind = hole.kind if "hole" in hole.kind else f"{hole.kind} hole"
    through = hole.depth >= board.size["uvw".index(hole.along)]
    return CutRow(board.name, kind, 1, hole.diameter, hole.depth, False, True, place.words(style), through), place


_CHANNELS = ("dado", "groove", "notch", "socket", "slot")


def channels(rows: tuple[CutRow, ...], mortises: bool = False) -> tuple[CutRow, ...]:
    """One row for each width that a cutter makes between two walls; `mortises` too, where it makes those.

    Widths that no cutter tells apart, of sockets and their mates, are one: the wider.
    """
    found: list[CutRow] = []
    for row in sorted(rows, key=lambda row: -row.wide):
        cut = row.kind in _CHANNELS or (mortises and row.kind == "mortise")
        if row.walls and row.wide and cut and not any(one.wide - row.wide <= NEAR for one in found):
            found.append(row)
    return tuple(found)
