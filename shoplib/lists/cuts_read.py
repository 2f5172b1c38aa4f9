"""Cuts read from words: what `cut_words` writes, edited by hand or typed in the same manner, becomes cuts.

A phrase must say what the cut is, how wide and how deep, in which side of the board, and where; the order
of its parts and words such as `face` and `end` are free, and a number without a unit is in the project's.
Each part that is understood is taken out of the phrase: what is left over was not understood, and then
nothing of the phrase is believed.
"""

import re
from dataclasses import dataclass

from shoplib.lists.sides import outline_of, side_name
from shoplib.lists.slanting import POCKETS, Slant, pocket_cut
from shoplib.measure import LengthError, read_length
from shoplib.model.board import Board, BoxCut, Cut, Hole
from shoplib.model.box import Box, Point, around
from shoplib.model.solved import Cabinet

Side = tuple[int, int]
"""One side of a board: the own axis (0, 1, 2) and -1 for the low, +1 for the high end of it."""

_LENGTH = r"\d+(?:[ -]\d+/\d+|/\d+|[.,]\d+)?\s*(?:mm|cm|m\b|in\b|inch\b|\")?(?:\s*\([+-][\d.,]+\s*(?:in|mm)\))?"
_LENGTHS = rf"{_LENGTH}(?:(?:\s*,\s*|\s+and\s+){_LENGTH})*"
_SIDE = r"(?:the )?(inside|outside|left|right|front|back|top|bottom)(?: (?:face|end|edge|side))?"
_NOUN = re.compile(r"^(?:\d+ )?(dado|rabbet|groove|notch|socket|pocket|(?:[a-z]+ )*hole)(?:e?s)?\b")
_FOR = re.compile(r"\bfor (?:the |a )?([a-z][a-z ]*?)\s*(?=,|$|\bin the\b|\bfrom the\b|\bat the\b|\d)")


class NotRead(ValueError):
    """A phrase that does not say a cut in words that are read here."""


class CannotBeCut(ValueError):
    """A phrase that asks for more wood than the board has there."""


@dataclass(frozen=True, slots=True)
class ReadPhrase:
    """The cuts of one phrase (one for each place), and the role of what goes into them, if it says so."""

    text: str
    cuts: tuple[Cut, ...]
    receives: str


def read_phrase(text: str, board: Board, cabinet: Cabinet) -> ReadPhrase:
    """The cuts that a phrase asks for, in the own coordinates of the board at its planned size.

    Raises NotRead where a part is missing or unknown, CannotBeCut where the board has no wood there.
    """
    return _Phrase(text, board, cabinet).read()


class _Phrase:
    """A phrase from which the parts that are understood are taken one by one."""

    def __init__(self, text: str, board: Board, cabinet: Cabinet) -> None:
        self._text, self._left = text, " ".join(text.lower().split())
        self._board, self._unit, self._step = board, cabinet.style.unit, cabinet.style.step
        outline = outline_of(board, cabinet)
        self._sides: dict[str, Side] = {}
        for own in (2, 1, 0):
            for side in (-1, 1):
                for name in (side_name(board, own, side), side_name(board, own, side, outline)):
                    self._sides.setdefault(name.split()[0], (own, side))

    def read(self) -> ReadPhrase:
        kind = self._take(_NOUN)[1]
        receives = self._take(_FOR, needed=False)
        role = receives[1].strip() if receives else ""
        if kind in POCKETS:
            cuts = self._pockets(kind)
        elif kind.endswith("hole"):
            cuts = self._holes(kind)
        elif kind == "notch":
            cuts = self._notch()
        else:
            cuts = self._channels(kind)
        if re.search(r"[a-z0-9]", re.sub(r"\b(?:and|in a grid|each|of)\b", "", self._left)):
            raise NotRead(self._text)
        said = re.match(r"^(\d+) [a-z]", " ".join(self._text.lower().split()))
        if said and int(said[1]) != len(cuts):
            raise NotRead(self._text)
        return ReadPhrase(self._text.strip(), cuts, role)

    def _take(self, pattern: re.Pattern | str, needed: bool = True) -> re.Match | None:
        found = re.search(pattern, self._left)
        if found is None and needed:
            raise NotRead(self._text)
        if found:
            self._left = f"{self._left[: found.start()]} {self._left[found.end() :]}".strip()
        return found

    def _length(self, text: str) -> int:
        try:
            return read_length(text.strip(), unit=self._unit, zero=True)
        except LengthError:
            raise NotRead(self._text) from None

    def _side(self, name: str) -> Side:
        if name not in self._sides:
            raise NotRead(self._text)
        return self._sides[name]

    def _channels(self, kind: str) -> tuple[Cut, ...]:
        """Dadoes, grooves, rabbets: sunk into one side, so wide, along or across the board."""
        wide = self._length(self._take(rf"({_LENGTH}) wide")[1])
        leaves = self._take(rf"leaving a tongue ({_LENGTH}) thick", needed=False)
        sunk = self._take(rf"({_LENGTH}) deep", needed=leaves is None)
        deep = self._length(sunk[1]) if sunk else self._board.thickness - self._length(leaves[1])
        if leaves and abs(self._board.thickness - deep - self._length(leaves[1])) > self._step:
            raise NotRead(self._text)
        stops = []
        while stop := self._take(rf"stopped ({_LENGTH}) from {_SIDE}", needed=False):
            stops.append((self._side(stop[2]), self._length(stop[1])))
        sunk_into = self._side(self._take(rf"\b(?:in|into) {_SIDE}")[1])
        across, places = self._places(wide)
        runs = 3 - sunk_into[0] - across
        if sunk_into[0] == across or runs not in (0, 1, 2):
            raise NotRead(self._text)
        span = {runs: [0, self._board.size[runs]], sunk_into[0]: self._from(sunk_into, 0, deep)}
        for (own, side), rest in stops:
            if own != runs:
                raise NotRead(self._text)
            span[runs][side > 0] = rest if side < 0 else self._board.size[own] - rest
        return tuple(self._box_cut(kind, span | {across: place}) for place in places)

    def _notch(self) -> tuple[Cut, ...]:
        """Wood taken out through the whole thickness."""
        sizes = self._take(rf"({_LENGTH}) along the length x ({_LENGTH}) across")
        span = {2: [0, self._board.size[2]]}
        at = self._take(rf"\bat {_SIDE}(?: and {_SIDE})?", needed=False)
        for name in at.groups() if at else ():
            if name:
                side = self._side(name)
                span[side[0]] = self._from(side, 0, self._length(sizes[side[0] + 1]) if side[0] < 2 else 0)
        for own in (0, 1):
            size = self._length(sizes[own + 1])
            if own not in span and size == self._board.size[own]:
                span[own] = [0, size]
        for own in (0, 1):
            if own not in span:
                axis, (place,) = self._places(self._length(sizes[own + 1]))
                if axis != own:
                    raise NotRead(self._text)
                span[own] = place
        return (self._box_cut("notch", span),)

    def _pockets(self, kind: str) -> tuple[Cut, ...]:
        """Pockets, or the holes before them, across the board at one end."""
        across = self._length(self._take(rf"({_LENGTH}) across")[1])
        angle = int(self._take(r"(\d+) degrees")[1])
        web = self._length(self._take(rf"web ({_LENGTH})")[1])
        own, face = self._side(self._take(rf"\b(?:in|into) {_SIDE}")[1])
        along, end = self._side(self._take(rf"\bat {_SIDE}")[1])
        way, places = self._places(0)
        if (own, along, way) != (2, 0, 1) or not 1 <= angle <= 45:
            raise NotRead(self._text)
        cuts = [pocket_cut(kind, self._board, Slant(angle, web, face, end), at, across) for at, _ in places]
        wood = Box((0, 0, 0), self._board.size)
        if any(around([wood, cut.box]) != wood for cut in cuts):
            raise CannotBeCut(self._text)
        return tuple(cuts)

    def _holes(self, kind: str) -> tuple[Cut, ...]:
        """Holes at every meeting of two rows of places."""
        across = self._length(self._take(rf"({_LENGTH}) across")[1])
        through = self._take(r"\b(?:right )?through\b", needed=False)
        depth = None if through else self._length(self._take(rf"({_LENGTH}) deep")[1])
        first, second = self._places(0), self._places(0)
        own, side = self._side(self._take(rf"\bfrom {_SIDE}")[1])
        if {first[0], second[0], own} != {0, 1, 2}:
            raise NotRead(self._text)
        holes = []
        depth = self._board.size[own] if depth is None else depth
        for one in first[1]:
            for other in second[1]:
                at = {first[0]: one[0], second[0]: other[0], own: 0 if side < 0 else self._board.size[own]}
                centre = (at[0], at[1], at[2])
                holes.append(Hole(kind.removesuffix(" hole"), centre, "uvw"[own], across, depth))
        return tuple(holes)

    def _places(self, size: int) -> tuple[int, list[list[int]]]:
        """Along which own axis, and from where to where, for each place that the phrase gives."""
        found = self._take(rf"({_LENGTHS}) from {_SIDE}", needed=False)
        if found:
            side = self._side(found[2])
            lengths = re.findall(_LENGTH, found[1])
            return side[0], [self._from(side, self._length(one), size) for one in lengths]
        edge = self._take(rf"\b(?:along|flush with|with) {_SIDE}")
        side = self._side(edge[1])
        return side[0], [self._from(side, 0, size)]

    def _from(self, side: Side, distance: int, size: int) -> list[int]:
        """The stretch of this size that begins this far from a side."""
        own, end = side
        if end < 0:
            return [distance, distance + size]
        return [self._board.size[own] - distance - size, self._board.size[own] - distance]

    def _box_cut(self, kind: str, span: dict[int, list[int]]) -> BoxCut:
        low: Point = tuple(span[own][0] for own in range(3))
        high: Point = tuple(span[own][1] for own in range(3))
        wood = Box((0, 0, 0), self._board.size)
        if any(a >= b for a, b in zip(low, high, strict=True)) or around([wood, Box(low, high)]) != wood:
            raise CannotBeCut(self._text)
        return BoxCut(kind, low, high)
