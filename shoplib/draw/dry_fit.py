"""A dry-fit drawn: the cabinet cut through as its boards go together, with each gap and clash marked and named."""

from collections.abc import Callable, Sequence
from itertools import pairwise
from typing import NamedTuple

import shapely

from shoplib.checks.geometry import is_outlined
from shoplib.checks.misfits import BARE, CLASH, GAP, Misfit, outside
from shoplib.draw.chains import bare, unit_note
from shoplib.draw.look import FROM_ABOVE, FROM_RIGHT, FRONT, Look, cut_through, is_cut
from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Rect, Region, Scene, Shape
from shoplib.draw.slices import Plane, region
from shoplib.measure import Style
from shoplib.model.board import Board
from shoplib.model.box import around
from shoplib.model.solved import Cabinet, Hardware
from shoplib.words.amounts import how_much
from shoplib.words.naming import and_list

_PART = 70
"""A gap or clash is drawn at least as wide as the picture divided by this."""

_SIDES = {0: ("wide", "from left to right"), 1: ("deep", "from front to back"), 2: ("high", "from bottom to top")}
_SEEN = {FRONT: "the front", FROM_RIGHT: "the right", FROM_ABOVE: "above"}


class View(NamedTuple):
    """From where the cabinet is looked at, and the board through whose middle it is cut."""

    look: Look
    through: str

    @property
    def name(self) -> str:
        """What the note calls the board: "the back", but "bay 1 drawer 1 box bottom"."""
        return self.through if any(sign.isdigit() for sign in self.through) else f"the {self.through}"

    def at(self, cabinet: Cabinet) -> int:
        """Where the plane lies on the axis looked along."""
        box = self.board(cabinet).box
        return (box.low[self.look.along] + box.high[self.look.along]) // 2

    def board(self, cabinet: Cabinet) -> Board:
        """The board that is cut; KeyError where the cabinet has none of that name."""
        return cabinet.by_name[self.through]


def dry_fit(
    built: Cabinet, planned: Cabinet, misfits: Sequence[Misfit], view: View,
    amount: Callable[[int, Style], str] = how_much,
) -> Scene:
    """The cabinet `built` cut through, its gaps open and its clashes cross-hatched, each with its size.

    What is too small to see is drawn larger, and the drawing says so; a size outside that is not the planned
    one shows against a dashed line. Misfits along the line of sight are not drawn. `amount` writes by how much.
    """
    look, style = view.look, built.style
    whole = look.flat(around([board.box for board in built.boards]))
    comes_to, asked = look.flat(outside(built, planned)), look.flat(planned.outside)
    bounds = _around(whole, asked)
    items: list[Item] = [*cut_through([board for board in built.boards if not is_outlined(board)], (), look,
                                      view.at(built)), *_outlined(built, view)]
    slides = [fitting.box for fitting in built.hardware if fitting.what == "slide" and _goes_with(fitting, view, built)]
    items += [Shape((look.flat(box),), "hardware", "slide") for box in slides]
    items += _names(built, view, bounds)
    if _differ(comes_to, asked, style.step):
        items += _dashed(asked)
    least = max(bounds[2] - bounds[0], bounds[3] - bounds[1]) // _PART
    shown = [misfit for misfit in misfits if misfit.axis != look.along]
    marks: list[Shape] = []
    enlarged = False
    for misfit in shown:
        true = look.flat(misfit.box)
        rect = _at_least(true, misfit.axis == look.across, least)
        enlarged = enlarged or rect != true
        fill, hatch = ("clash", "x") if misfit.kind == CLASH else ("air", "")
        marks.append(Shape((rect,), fill, f"{misfit.kind}: {' and '.join(misfit.boards)}", hatch))
        what = f"{misfit.kind} off by" if misfit.kind == GAP and not misfit.joint else misfit.kind
        items.append(_leader(rect, misfit, bounds, look, f"{what} {amount(misfit.amount, style)}"))
    items += marks
    items.append(Chain("below", 0, (comes_to[0], comes_to[2]), (bare(comes_to[2] - comes_to[0], style),)))
    items.append(Chain("left", 0, (comes_to[1], comes_to[3]), (bare(comes_to[3] - comes_to[1], style),)))
    if slides:
        a, b, c, d = look.flat(slides[-1])
        items.append(Leader(((a + c) // 2, b + (d - b) // 8), "right", "slide"))
    note = " ".join(
        told for told, so in (
            ("Its slides are drawn in, though they lie higher or lower.", slides),
            ("Gaps and clashes are drawn larger than they are.", enlarged),
        ) if so
    )
    sizes = [
        f"{how_much(comes_to[side + 2] - comes_to[side], style)} {_SIDES[axis][0]}, "
        f"asked for {how_much(asked[side + 2] - asked[side], style)}"
        for side, axis in ((0, look.across), (1, look.up))
        if abs((comes_to[side + 2] - comes_to[side]) - (asked[side + 2] - asked[side])) >= style.step
    ]
    legend = [f"Dashed: the outside that was asked for. It comes to {' and '.join(sizes)}."] if sizes else []
    said = " ".join(_said(misfit, amount(misfit.amount, style)) for misfit in shown) or "No gap and no clash is marked."
    return Scene(
        "Put together dry, as you cut it",
        unit_note(style, f"Cut through {view.name}, seen from {_SEEN[look]}. {note}".strip()),
        " ".join([
            f"The boards put together, cut through {view.name} and seen from {_SEEN[look]}: "
            f"{and_list([board.name for board in _cut(built, view)])}.", said, *legend, note]).strip(),
        bounds, tuple(items), tuple(legend),
    )


def _said(misfit: Misfit, size: str) -> str:
    one, other = misfit.boards
    if misfit.kind == BARE:
        return f"{one} leaves the edge of {other} bare for {size}, {_SIDES[misfit.axis][1]}: marked."
    what = f"A {misfit.kind} of {size}" if misfit.joint or misfit.kind == CLASH else f"A gap that is off by {size}"
    return f"{what} between {one} and {other}, {_SIDES[misfit.axis][1]}, is marked."


def _goes_with(fitting: Hardware, view: View, cabinet: Cabinet) -> bool:
    return fitting.group == view.board(cabinet).group and view.look.along == 2


def _outlined(cabinet: Cabinet, view: View) -> list[Region]:
    """What the plane cuts of boards that are cut aslant; a side and what meets it are hatched against each other."""
    plane = Plane(view.look, view.at(cabinet), _SEEN[view.look])
    found = []
    for board in cabinet.boards:
        if is_outlined(board) and is_cut(board, view.look, plane.at):
            parts = plane.slice(board).parts(shapely.box(*view.look.flat(board.box)))
            found += [region(part, board.name, board.placement.own_axis(view.look.across) != 2) for part in parts]
    return found


def _cut(cabinet: Cabinet, view: View) -> list[Board]:
    at = view.at(cabinet)
    return [board for board in cabinet.boards if is_cut(board, view.look, at)]


def _names(cabinet: Cabinet, view: View, bounds: Rect) -> list[Label | Leader]:
    """Names of the cut boards of one group: on a board seen broad, else beside the drawing, on its own side."""
    found: list[Label | Leader] = []
    group = view.board(cabinet).group
    for board in _cut(cabinet, view):
        if board.group != group:
            continue
        left, bottom, right, top = view.look.flat(board.box)
        name = board.name.removeprefix(f"{board.group} ")
        if board.placement.own_axis(view.look.along) == 2:
            found.append(Label((left, bottom, right, top), (name, name.replace(" ", "\n")), plate=True))
        elif right - left < top - bottom:
            side = "right" if left + right > bounds[0] + bounds[2] else "left"
            found.append(Leader(((left + right) // 2, bottom + (top - bottom) // 4), side, name))
        else:
            found.append(Leader((right - (right - left) // 8, (bottom + top) // 2), "right", name))
    return found


def _leader(rect: Rect, misfit: Misfit, bounds: Rect, look: Look, text: str) -> Leader:
    """Beside the drawing where the mark is nearest to its edge; a mark that lies is named at its right part, unless it
    is wholly in the left half.
    """
    a, b, c, d = rect
    upright = misfit.axis == look.across
    right = a + c >= bounds[0] + bounds[2]
    if upright:
        point, side = ((a + c) // 2, b + (d - b) * 2 // 3), "right" if right else "left"
    elif 2 * c < bounds[0] + bounds[2]:
        point, side = (a + (c - a) // 5, (b + d) // 2), "left"
    else:
        point, side = (c - (c - a) // 5, (b + d) // 2), "right"
    return Leader(point, side, text, size=misfit.amount)


def _at_least(rect: Rect, across: bool, least: int) -> Rect:
    a, b, c, d = rect
    more = max(0, least - (c - a if across else d - b) + 1) // 2
    return (a - more, b, c + more, d) if across else (a, b - more, c, d + more)


def _around(one: Rect, other: Rect) -> Rect:
    return min(one[0], other[0]), min(one[1], other[1]), max(one[2], other[2]), max(one[3], other[3])


def _differ(one: Rect, other: Rect, step: int) -> bool:
    return any(abs(a - b) >= step for a, b in zip(one, other, strict=True))


def _dashed(rect: Rect) -> list[Line]:
    a, b, c, d = rect
    corners = ((a, b), (c, b), (c, d), (a, d), (a, b))
    return [Line(start, end, "hidden") for start, end in pairwise(corners)]
