"""The cuts of a board in words, as they are set out on the bench.

A place is measured from the left, front or bottom side of the finished board to the near wall of the
cut (holes: to the centre). Equal cuts at several places are told once.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from shoplib.lists.sides import datum_side, outline_of, side_name
from shoplib.lists.slanting import slant_of
from shoplib.lists.writing import Writing
from shoplib.measure import share
from shoplib.model.board import Board, BoxCut, Cut, Hole, PrismCut
from shoplib.model.box import Box, Point
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, plural


@dataclass(frozen=True, slots=True)
class _Phrase:
    """What a cut is (`noun`, `size`, and `how` it goes into which side), at which `place` and from where, its `tail`.

    Holes have a second place, across the first.
    """

    noun: str
    size: str
    place: str
    reference: str
    tail: str = ""
    across: str = ""
    across_reference: str = ""
    how: str = ""


class CutTold(NamedTuple):
    """One cut in words: what it is, its size, and all about its place."""

    noun: str
    size: str
    place: str


def cut_told(board: Board, cabinet: Cabinet, writing: Writing, cut: Cut) -> CutTold:
    """The parts that `cut_words` puts together for one cut.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> notch = BoxCut("notch", (0, 0, 0), (90 * MM, 50 * MM, 18 * MM))
    >>> side = Board("left side", "case", 1, "s", 900 * MM, 400 * MM, 18 * MM, Placement((0, 0, 0), ("+z", "+y", "-x")),
    ...              (notch,))
    >>> cut_told(side, Cabinet("case", (side,), {}), Writing(MM_STYLE), notch)[:2]
    ('notch', '90 mm along the length x 50 mm across')
    """
    phrase = _Teller(board, cabinet, writing, outline_of(board, cabinet)).phrase(cut)
    return CutTold(phrase.noun, phrase.size, ", ".join(_where(phrase, (phrase.place,), [phrase.across])))


def cut_words(
    board: Board, cabinet: Cabinet, writing: Writing, cuts: Sequence[Cut] | None = None
) -> tuple[str, ...]:
    """One phrase for each kind of cut in the board (or of those of its `cuts` that are given)."""
    teller = _Teller(board, cabinet, writing, outline_of(board, cabinet))
    return _merged([teller.phrase(cut) for cut in (board.cuts if cuts is None else cuts)])


def _merged(phrases: list[_Phrase]) -> tuple[str, ...]:
    """Cuts that are alike but for their places told once; rows of holes with equal places as a grid."""
    rows: dict[_Phrase, list[str]] = {}
    for phrase in phrases:
        places = rows.setdefault(replace(phrase, place=""), [])
        if phrase.place not in places:  # one rabbet may take two boards, such as both stretchers
            places.append(phrase.place)
    grids: dict[tuple[_Phrase, tuple[str, ...]], list[str]] = {}
    for phrase, places in rows.items():
        grids.setdefault((replace(phrase, across=""), tuple(places)), []).append(phrase.across)
    return tuple(_told(phrase, places, across) for (phrase, places), across in grids.items())


def _told(phrase: _Phrase, places: tuple[str, ...], across: list[str]) -> str:
    count = len(places) * len(across)
    head = f"{phrase.noun} {phrase.size}" if count == 1 else f"{count} {plural(phrase.noun)} {phrase.size}"
    return ", ".join([head, *_where(phrase, places, across)])


def _where(phrase: _Phrase, places: tuple[str, ...], across: list[str]) -> list[str]:
    where = f"{and_list(places)} {phrase.reference}".strip() if places[0] else phrase.reference
    second = f"{and_list(across)} {phrase.across_reference}".strip()
    if len(places) > 1 and len(across) > 1:
        where, second = f"in a grid: {where}", f"each {second}"
    return [part for part in (phrase.how, where, second, phrase.tail) if part]


def _span(cut: BoxCut, board: Board, own: int) -> str:
    """Where along one own axis the cut runs out of the board: through, low, high, or inside."""
    low, high = cut.low[own] <= 0, cut.high[own] >= board.size[own]
    return {(True, True): "through", (True, False): "low", (False, True): "high"}.get((low, high), "inside")


def _run(cut: BoxCut, spans: list[str], deep: int, extent: list[int]) -> int:
    """The axis that the cut runs along: right through; else a dado across the grain, a groove with it."""
    others = [own for own in range(3) if own != deep]
    through = [own for own in others if spans[own] == "through"]
    if len(through) == 1:
        return through[0]
    by_kind = {"dado": 1, "groove": 0}.get(cut.kind)
    return by_kind if by_kind in others else max(others, key=lambda own: extent[own])


def channel_ways(cut: BoxCut, board: Board) -> tuple[int, int, int] | None:
    """The own axes along which a dado, groove, rabbet or socket is sunk, is wide, and runs; None for a notch."""
    if cut.kind == "socket":
        return 0, 1, 2
    spans = [_span(cut, board, own) for own in range(3)]
    open_faces = [own for own in (2, 1, 0) if spans[own] in ("low", "high")]
    if spans[2] == "through" or not open_faces:
        return None
    deep = open_faces[0]
    extent = [high - low for low, high in zip(cut.low, cut.high, strict=True)]
    run = _run(cut, spans, deep, extent)
    return deep, 3 - deep - run, run


@dataclass(frozen=True, slots=True)
class _Teller:
    """Puts the cuts of one board in words."""

    board: Board
    cabinet: Cabinet
    writing: Writing
    outline: Box

    def phrase(self, cut: Cut) -> _Phrase:
        """What one cut is and where."""
        if isinstance(cut, Hole):
            return self._hole(cut)
        if isinstance(cut, PrismCut):
            return self._pocket(cut)
        spans = [_span(cut, self.board, own) for own in range(3)]
        ways = channel_ways(cut, self.board)
        return self._notch(cut, spans) if ways is None else self._channel(cut, spans, *ways)

    def _channel(self, cut: BoxCut, spans: list[str], deep: int, wide: int, run: int) -> _Phrase:
        """A dado, groove or rabbet: sunk into one side, `wide` across, running along the third axis."""
        extent = [high - low for low, high in zip(cut.low, cut.high, strict=True)]
        across = (self.writing.measured if cut.for_board else self.writing.setting)(extent[wide])
        sunk = f"{self.writing.setting(extent[deep])} deep{self._receives(cut)}"
        how = f"{sunk}, in the {self._side(deep, -1 if spans[deep] == 'low' else 1)}"
        if spans[wide] in ("low", "high"):
            place, reference = "", f"along the {self._side(wide, -1 if spans[wide] == 'low' else 1)}"
        else:
            place, reference = self._place(cut.low, cut.high, wide)
        stops = [
            f"stopped {self.writing.length(rest)} from the {self._side(run, side)}"
            for side, rest in ((-1, cut.low[run]), (1, self.board.size[run] - cut.high[run]))
            if rest > 0
        ]
        tail = ", ".join([*stops, *self._leaves(cut)])
        return _Phrase(cut.kind, f"{across} wide", place, reference, tail, how=how)

    def _leaves(self, cut: BoxCut) -> list[str]:
        """The tongue that this rabbet leaves: it is what the dado takes, and so what the cut is set up by.

        One between two shoulders is left by two cuts, and said of neither.
        """
        left = self.board.thickness - (cut.high[2] - cut.low[2])
        tongues = {
            joint.tongue
            for joint in self.cabinet.joints
            if (joint.enters, joint.receives) == (self.board.name, cut.for_board) and joint.kind == "tongue"
        }
        return [f"leaving a tongue {self.writing.setting(left)} thick"] if left in tongues else []

    def _pocket(self, cut: PrismCut) -> _Phrase:
        """A pocket, or the hole before it: what the jig is set by, and where across the board."""
        found = slant_of(cut, self.board)
        centre = tuple(share(low + high, 2, 1)[0] for low, high in zip(cut.low, cut.high, strict=True))
        size = f"{self.writing.setting(cut.end - cut.start)} across"
        how = (
            f"{found.angle} degrees, web {self.writing.setting(found.web)}{self._receives(cut)}, in the "
            f"{self._side(2, found.face)}"
        )
        return _Phrase(cut.kind, size, *self._place(centre, centre, 1), f"at the {self._side(0, found.end)}", how=how)

    def _notch(self, cut: BoxCut, spans: list[str]) -> _Phrase:
        """Wood taken out through the whole thickness: at a corner, out of one side, or inside."""
        sizes, corner, places = [], [], []
        for own in (0, 1):
            sizes.append(self.writing.length(cut.high[own] - cut.low[own]))
            if spans[own] in ("low", "high"):
                corner.append(self._side(own, -1 if spans[own] == "low" else 1))
            elif spans[own] == "inside":
                places.append(" ".join(self._place(cut.low, cut.high, own)))
        size = f"{sizes[0]} along the length x {sizes[1]} across{self._receives(cut)}"
        where = f"at the {and_list(corner)}" if corner else ""
        return _Phrase(cut.kind, size, "", ", ".join(part for part in (where, *places) if part))

    def _hole(self, hole: Hole) -> _Phrase:
        deep = "uvw".index(hole.along)
        side = -1 if hole.centre[deep] <= 0 else 1
        through = hole.depth >= self.board.size[deep]
        depth = "right through" if through else f"{self.writing.setting(hole.depth)} deep"
        how = f"{depth}{self._receives(hole)}, from the {self._side(deep, side)}"
        across, along = [own for own in (1, 0, 2) if own != deep][:2]
        noun = hole.kind if hole.kind.endswith("hole") else f"{hole.kind} hole"
        first, second = (self._place(hole.centre, hole.centre, own) for own in (along, across))
        return _Phrase(noun, f"{self.writing.bored(hole.diameter)} across", *first, "", *second, how)

    def _place(self, low: Point, high: Point, own: int) -> tuple[str, str]:
        """How far the near wall is from the datum side, and the words for that side."""
        side = datum_side(self.board, own)
        distance = low[own] if side < 0 else self.board.size[own] - high[own]
        name = self._side(own, side)
        return (self.writing.length(distance), f"from the {name}") if distance else ("flush", f"with the {name}")

    def _side(self, own: int, side: int) -> str:
        return side_name(self.board, own, side, self.outline)

    def _receives(self, cut: Cut) -> str:
        """What enters the cut, by what it does: equal boards receive boards of different names."""
        entering = self.cabinet.by_name.get(cut.for_board)
        if entering is None:
            return f" for the {cut.for_board}" if cut.for_board else ""
        return f" for the {entering.role or entering.name}"
