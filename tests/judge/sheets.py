"""Judges parts laid out on sheets, from coordinates alone.

A layout that pleases may still be no use at the saw: a circular saw cuts right through whatever lies on it, so parts
must come apart by cuts from edge to edge, and each cut costs the width of the blade. This module rebuilds those cuts
from nothing but the places of the parts. At the outer edges no blade is needed, and one may run half off the piece.
"""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations
from typing import NamedTuple


class Wanted(NamedTuple):
    """A part as ordered: `length` along x, the grain; it may lie across the sheet only where it `may_turn`."""

    length: int
    width: int
    count: int = 1
    may_turn: bool = False


class Bought(NamedTuple):
    """A size of sheet, what is trimmed off each end (x) and each edge (y), how many there are (None: no end)."""

    length: int
    width: int
    trim_ends: int = 0
    trim_edges: int = 0
    count: int | None = None


class Lying(NamedTuple):
    """The part with this number in the order, with its corner at x, y and its sizes along x and along y."""

    part: int
    x: int
    y: int
    w: int
    h: int


Sheet = tuple[int, Sequence[Lying]]
"""Which of the bought sizes, and what lies on it."""


def faults(wanted: Sequence[Wanted], bought: Sequence[Bought], kerf: int, sheets: Sequence[Sheet]) -> list[str]:
    """Everything that is wrong with a layout, in words; an empty list for a layout that can be cut."""
    found = [*_miscounted(wanted, sheets), *_too_many(bought, sheets)]
    for number, (size, lying) in enumerate(sheets, start=1):
        if not 0 <= size < len(bought):
            found.append(f"sheet {number}: there is no size {size}")
            continue
        on_sheet = [*_off_size(wanted, lying), *_outside(bought[size], lying), *_over(lying)]
        if not on_sheet:
            on_sheet = _locked(lying, kerf)
        found += [f"sheet {number}: {fault}" for fault in on_sheet]
    return found


def cuttable(lying: Sequence[Lying], kerf: int) -> bool:
    """Whether straight cuts of this width, each right through the piece it is made in, free every part.

    Any cut that frees some parts may come first: what can be cut apart can still be when others are gone.
    """
    waiting = [list(lying)]
    while waiting:
        piece = waiting.pop()
        if len(piece) > 1:
            groups = _apart(piece, kerf)
            if len(groups) == 1:
                return False
            waiting += groups
    return True


def _apart(piece: list[Lying], kerf: int) -> list[list[Lying]]:
    """The piece cut by all cuts of one direction, the first that has any."""
    for low, size in ((1, 3), (2, 4)):
        groups, reach = [], None
        for part in sorted(piece, key=lambda part, low=low: part[low]):
            if reach is None or part[low] - reach >= kerf:
                groups.append([])
            groups[-1].append(part)
            end = part[low] + part[size]
            reach = end if reach is None else max(reach, end)
        if len(groups) > 1:
            return groups
    return [piece]


def _miscounted(wanted: Sequence[Wanted], sheets: Sequence[Sheet]) -> Iterator[str]:
    laid = Counter(part.part for _, lying in sheets for part in lying)
    for number in sorted({*range(len(wanted)), *laid}):
        asked = wanted[number].count if 0 <= number < len(wanted) else 0
        if laid[number] != asked:
            yield f"part {number}: {asked} ordered, {laid[number]} laid out"


def _too_many(bought: Sequence[Bought], sheets: Sequence[Sheet]) -> Iterator[str]:
    used_of = Counter(size for size, _ in sheets)
    for size, sheet in enumerate(bought):
        used, there = used_of[size], sheet.count
        if there is not None and used > there:
            yield f"size {size}: {used} sheets used, there are {there}"


def _off_size(wanted: Sequence[Wanted], lying: Iterable[Lying]) -> Iterator[str]:
    for part in lying:
        if not 0 <= part.part < len(wanted):
            continue  # counted as a fault already
        order = wanted[part.part]
        along, across = (order.length, order.width), (order.width, order.length)
        if (part.w, part.h) == along:
            continue
        if (part.w, part.h) != across:
            yield f"part {part.part} is {part.w} x {part.h}, ordered {order.length} x {order.width}"
        elif not order.may_turn:
            yield f"part {part.part} at {part.x}, {part.y} lies across the grain"


def _outside(sheet: Bought, lying: Iterable[Lying]) -> Iterator[str]:
    for part in lying:
        if (
            part.x < sheet.trim_ends
            or part.y < sheet.trim_edges
            or part.x + part.w > sheet.length - sheet.trim_ends
            or part.y + part.h > sheet.width - sheet.trim_edges
        ):
            yield f"part {part.part} at {part.x}, {part.y} lies outside the trimmed sheet"


def _over(lying: Iterable[Lying]) -> Iterator[str]:
    for one, other in combinations(sorted(lying, key=lambda part: part.x), 2):
        if other.x < one.x + one.w and one.y < other.y + other.h and other.y < one.y + one.h:
            yield f"parts {one.part} at {one.x}, {one.y} and {other.part} at {other.x}, {other.y} overlap"


def _locked(lying: Sequence[Lying], kerf: int) -> list[str]:
    if cuttable(lying, kerf):
        return []
    if cuttable(lying, 0):
        return [f"the blade ({kerf}) does not pass between all parts"]
    return ["no cuts from edge to edge free all parts"]
