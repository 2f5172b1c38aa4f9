"""A drawer in its opening: its parts, its box and its slides, what stands behind it, the opening as it was read.

>>> from shoplib.documents.examples import cabinet_from
>>> from shoplib.measure import MM
>>> case = cabinet_from("rolling_stand")
>>> boards, slides = parts_of(case, "bay 1 drawer 1")
>>> len(boards), len(slides), box_of(case, "bay 1 drawer 1").size[1] / MM, rails_behind(case, "bay 1 drawer 1")
(6, 2, 550.0, [])
>>> [ticks / MM for ticks in runs_of(case, "bay 1 drawer 1")], read_of(case, "bay 1 drawer 1").back / MM
([2.0, 552.0], 312.15)
"""

from shoplib.measure import narrowest
from shoplib.model.board import BOX_PARTS, Board
from shoplib.model.box import Box, around
from shoplib.model.project import Opening
from shoplib.model.shell import shell_of
from shoplib.model.solved import Cabinet, Hardware
from shoplib.model.uprights import bays
from shoplib.tables.slides import Slide


def parts_of(cabinet: Cabinet, group: str) -> tuple[tuple[Board, ...], tuple[Hardware, ...]]:
    """The boards of a drawer with its runners, and its slides."""
    boards = tuple(board for board in cabinet.boards if board.part_of and board.part_of.name == group)
    return boards, tuple(piece for piece in cabinet.hardware if piece.what == "slide" and piece.group == group)


def box_of(cabinet: Cabinet, group: str) -> Box:
    """The outside of a drawer box, its front left out. Raises KeyError where there is no such drawer."""
    return around([board.box for board in cabinet.groups[group] if board.role in BOX_PARTS])


def held_width(cabinet: Cabinet, group: str, row: Slide) -> int:
    """The width that the slides of a drawer hold: the box outside, or between its sides.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.measure import MM
    >>> case = cabinet_from("rolling_stand")
    >>> held_width(case, "bay 1 drawer 1", next(iter(case.slides.values()))) == box_of(case, "bay 1 drawer 1").size[0]
    True
    """
    side = next(board.thickness for board in cabinet.groups[group] if board.role == "box side")
    return box_of(cabinet, group).size[0] - (2 * side if row.holds == "inside" else 0)


def runs_of(cabinet: Cabinet, group: str) -> tuple[int, int]:
    """Where a drawer's slides begin and end in depth; its box, where it has none.

    A bought slide is as long as the box, begins a little behind the front, and ends as far behind the box.
    """
    _, slides = parts_of(cabinet, group)
    runs = slides[0].box if slides else box_of(cabinet, group)
    return runs.low[1], runs.high[1]


def back_seat(cabinet: Cabinet) -> int:
    """How far back the front face of the back lies, pressed home: on the floor of its rabbet, where it is let into one.

    A rabbet is cut for the thickest reading of the back, so a thinner one lies a little within the edges behind it.
    """
    face = cabinet.by_name["back"].box.low[1]
    return narrowest([face, shell_of(cabinet.project).behind]) if cabinet.project else face


def rails_behind(cabinet: Cabinet, group: str) -> list[Board]:
    """The rails that stand behind a drawer, at the height of its box, before the back; the nearest first."""
    box = box_of(cabinet, group)
    rails = [board for board in cabinet.boards if board.role == "rail"
             and board.box.low[2] < box.high[2] and box.low[2] < board.box.high[2]]
    return sorted(rails, key=lambda board: board.box.low[1])


def depth_of(cabinet: Cabinet, group: str) -> int:
    """How far it is from the front edge of the case to what stands behind a drawer: as measured, else as planned.

    A bay is measured to what stands nearest behind its boxes; behind a box that has no rail at its height, where
    others of the case have, the plan is all that is known.

    >>> from dataclasses import replace
    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.measure import MM
    >>> from shoplib.model.cabinet import solve
    >>> from shoplib.model.project import Measured
    >>> planned = cabinet_from("rolling_stand")
    >>> read = solve(replace(planned.project, measured=Measured(depths={"bay 1": 585 * MM})))
    >>> [depth_of(case, "bay 1 drawer 1") / MM for case in (planned, read)]
    [586.1, 585.0]
    """
    seat = back_seat(cabinet)
    planned = narrowest([seat, *(rail.box.low[1] for rail in rails_behind(cabinet, group))])
    nearest = narrowest([seat, *(board.box.low[1] for board in cabinet.boards if board.role == "rail")])
    read = cabinet.project.measured.depths.get(cabinet.part_of(group).bay_name) if cabinet.project else None
    return planned if read is None or planned != nearest else read


def read_of(cabinet: Cabinet, group: str) -> Opening:
    """The opening of a drawer as it was read last, or as planned where it was not; boxes side by side share that of a
    row.
    """
    read = cabinet.project.measured.latest.get(cabinet.part_of(group).opening) if cabinet.project else None
    return read or _as_planned(cabinet, group)


def cut_to(cabinet: Cabinet, group: str) -> Opening:
    """The opening that a box is cut to: its first reading, for by the second one it is cut, or as planned."""
    read = cabinet.project.measured.openings.get(cabinet.part_of(group).opening) if cabinet.project else None
    return read or _as_planned(cabinet, group)


def _as_planned(cabinet: Cabinet, group: str) -> Opening:
    left, right = bays(cabinet)[cabinet.part_of(group).bay - 1]
    return Opening(right - left, right - left)
