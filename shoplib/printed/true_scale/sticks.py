"""What a story stick tells: the heights of each bay, the places across, the blocks that slides and fronts rest on."""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.building.datum import datum
from shoplib.building.gaps import open_gaps
from shoplib.building.riding import riding
from shoplib.draw.chains import levels
from shoplib.lists.writing import Writing
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.solved import Cabinet
from shoplib.model.uprights import bays, uprights
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
    """One stick for each bay, from the upper face of the bottom; bays with the same marks share one.

    >>> from shoplib.documents.examples import cabinet_from
    >>> [stick.name for stick in bay_sticks(cabinet_from("under_bench_case"))]
    ['bays 1 and 3', 'bay 2']
    """
    zero = datum(cabinet)
    alike: dict[tuple[Mark, ...], list[int]] = {}
    for number, span in enumerate(bays(cabinet), 1):
        alike.setdefault(_of_bay(cabinet, number, span, zero.height), []).append(number)
    return [
        Stick(and_list(in_short(f"bay {number}" for number in numbers)), zero.name, "below", marks)
        for marks, numbers in alike.items()
    ]


def _of_bay(cabinet: Cabinet, number: int, span: tuple[int, int], zero: int) -> tuple[Mark, ...]:
    own = f"bay {number} "  # which the stick is named after
    found: list[tuple[int, str]] = []
    for board in levels(cabinet, *span):
        name = board.name.removeprefix(own)
        low, high = board.box.low[2], board.box.high[2]
        side = "face" if board.placement.own_axis(2) == 2 else "edge"  # a toe board stands on edge
        found += [(low, f"{name}, lower {side}"), (high, f"{name}, upper {side}")]
    for board in cabinet.boards:
        if board.role == "front" and _is_in(board.box, span):
            name, (below, above) = board.name.removeprefix(own), _gaps(board, cabinet)
            low, high = board.box.low[2], board.box.high[2]
            found += [(low, f"{name}, lower edge{below}"), (high, f"{name}, upper edge{above}")]
    for item in riding(cabinet):
        if _is_in(item.box, span):
            what = "slide" if item.bought else item.what
            found.append((item.box.low[2], f"{what} of {item.group.removeprefix(own)}, lower edge"))
    return _marks((at - zero, what) for at, what in found)


def _is_in(box: Box, bay: tuple[int, int]) -> bool:
    """Whether the middle of a box lies between two uprights: a front may reach over both."""
    return 2 * bay[0] < box.low[0] + box.high[0] < 2 * bay[1]


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


def crossed(cabinet: Cabinet) -> list[Board]:
    """The boards that dividers stand in or against: bottom, top or stretchers, as the cabinet has them.

    >>> crossed(Cabinet("no boards", (), {}))
    []
    """
    divided = {joint.receives for joint in cabinet.joints
               if joint.enters in cabinet.by_name and cabinet.by_name[joint.enters].role == "divider"}
    return [board for board in cabinet.boards if board.name in divided]


def across_stick(cabinet: Cabinet) -> Stick:
    """One stick across the front, from the outside of the left side: uprights, the ends of what the dividers stand in,
    by which the stick is laid on it while it is loose, and the ends of the fronts as planned.

    Once an opening of a bay is read, its fronts are set from the uprights as they stand, each drawer's as its own
    opening was read; marks among uprights that are drawn as planned would stand at no gap that the plan has.

    >>> from shoplib.documents.examples import cabinet_from
    >>> [mark.what for mark in across_stick(cabinet_from("finger_jointed_drawers")).marks][:2]
    ['left side, left face', 'left side, right face']
    """
    standing = uprights(cabinet)
    zero = standing[0].box.low[0]
    found: list[tuple[int, str]] = []
    for board in standing:
        low, high = board.box.low[0], board.box.high[0]
        found += [(low, f"{board.name}, left face"), (high, f"{board.name}, right face")]
    for board in crossed(cabinet):
        low, high = board.box.low[0], board.box.high[0]
        found += [(low, f"{board.name}, left end"), (high, f"{board.name}, right end")]
    fronts = [board for board in cabinet.boards if board.role == "front"]
    openings = cabinet.project.measured.latest if cabinet.project else {}
    read = {board.part_of.bay for board in fronts if board.part_of.opening in openings}
    for board in (board for board in fronts if board.part_of.bay not in read):
        low, high, name = board.box.low[0], board.box.high[0], f"{board.part_of.bay_name} front"
        found += [(low, f"{name}, left end"), (high, f"{name}, right end")]
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
