"""What a story stick tells: the heights of each bay, the places across, the blocks that slides and fronts rest on."""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.building.gaps import open_gaps
from shoplib.building.riding import riding
from shoplib.draw.chains import bays, levels, uprights
from shoplib.lists.writing import Writing
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.datum import datum
from shoplib.words.naming import and_list, in_short


@dataclass(frozen=True, slots=True)
class Mark:
    """One mark: how far from the datum (ticks, less than nothing below it or left of it), and what is there."""

    at: int
    what: str


@dataclass(frozen=True, slots=True)
class Stick:
    """A stick: its name, what its datum is, the word for what lies before the datum, and its marks from there on."""

    name: str
    zero: str
    before: str
    marks: tuple[Mark, ...]


def bay_sticks(cabinet: Cabinet) -> list[Stick]:
    """One stick for each bay, from the upper face of the bottom; bays with the same marks share one."""
    zero = datum(cabinet)
    alike: dict[tuple[Mark, ...], list[int]] = {}
    for number, span in enumerate(bays(cabinet), 1):
        alike.setdefault(_of_bay(cabinet, number, span, zero.height), []).append(number)
    return [
        Stick(and_list(in_short(f"bay {number}" for number in numbers)), zero.name, "below", marks)
        for marks, numbers in alike.items()
    ]


def _of_bay(cabinet: Cabinet, number: int, span: tuple[int, int], zero: int) -> tuple[Mark, ...]:
    own = f"bay {number} "
    found: list[tuple[int, str]] = []
    for board in levels(cabinet, *span):
        name = board.name.removeprefix(own)
        low, high = board.box.low[2], board.box.high[2]
        found += [(low, f"{name}, lower face"), (high, f"{name}, upper face")]
    for board in cabinet.boards:
        if board.role == "front" and board.name.startswith(own):
            name, (below, above) = board.name.removeprefix(own), _gaps(board, cabinet)
            low, high = board.box.low[2], board.box.high[2]
            found += [(low, f"{name}, lower edge{below}"), (high, f"{name}, upper edge{above}")]
    for item in riding(cabinet):
        if item.group.startswith(own):
            what = item.what if item.what.startswith("wood") else "slide"
            found.append((item.box.low[2], f"{what} of {item.group.removeprefix(own)}, lower edge"))
    return _marks((at - zero, what) for at, what in found)


def _gaps(front: Board, cabinet: Cabinet) -> tuple[str, str]:
    """The gaps below and above a front, where the plan has one; that to the next front above is told there."""
    page, found = Writing(cabinet.style), ["", ""]
    for gap in open_gaps(cabinet):
        if gap.along != "z" or front.name not in gap.between:
            continue
        other = cabinet.by_name[gap.between[gap.between[0] == front.name]]
        if other.box.high[2] + gap.size == front.box.low[2]:
            found[0] = f" (gap {page.setting(gap.size)} below)"
        elif other.role != "front":
            found[1] = f" (gap {page.setting(gap.size)} above)"
    return found[0], found[1]


def across_stick(cabinet: Cabinet) -> Stick:
    """One stick across the front, from the outside of the left side: uprights, and the ends of the fronts."""
    standing = uprights(cabinet)
    zero = standing[0].box.low[0]
    found: list[tuple[int, str]] = []
    for board in standing:
        low, high = board.box.low[0], board.box.high[0]
        found += [(low, f"{board.name}, left face"), (high, f"{board.name}, right face")]
    for board in cabinet.boards:
        if board.role == "front":
            bay = " ".join(board.name.split()[:2])
            low, high = board.box.low[0], board.box.high[0]
            found += [(low, f"{bay} front, left end"), (high, f"{bay} front, right end")]
    return Stick("across", f"left face of {standing[0].name}", "left of it", _marks((at - zero, w) for at, w in found))


def _marks(found: Iterable[tuple[int, str]]) -> tuple[Mark, ...]:
    """In order, each place once, with all that is there."""
    at: dict[int, list[str]] = {}
    for place, what in sorted(set(found)):
        at.setdefault(place, []).append(what)
    return tuple(Mark(place, "; ".join(names)) for place, names in at.items())


def told(mark: Mark, stick: Stick, page: Writing) -> str:
    """A mark in words: its distance from the datum, then what is there.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> told(Mark(-INCH // 2, "front 1, lower edge"), Stick("bay 1", "bottom", "below", ()), Writing(INCH_STYLE))
    '1/2 in below: front 1, lower edge'
    """
    if mark.at < 0:
        return f"{page.length(-mark.at)} {stick.before}: {mark.what}"
    return f"{page.length(mark.at)}: {mark.what}" if mark.at else f"0: {mark.what}"
