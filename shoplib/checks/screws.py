"""Screws must hold, must not come through, and must not meet: the screws of slides and fronts."""

from collections.abc import Iterable
from itertools import combinations

from shoplib.measure import share, thickest, write_brief
from shoplib.measure.traced import leaf
from shoplib.model.screw_room import shank
from shoplib.model.screwed import BOTTOM_SCREWS, TOE_SCREWS
from shoplib.model.solved import Cabinet, Finding, Hardware
from shoplib.tables.screws import screws
from shoplib.words.naming import and_list, in_short

_BOARDS = {"slide": ("slide", 2), "front screws": ("front", 1), "rail screws": ("end", 1), "cleat screws": ("end", 1),
           "pocket screws": ("pocket", 1), TOE_SCREWS: ("end", 1), BOTTOM_SCREWS: ("end", 1)}
"""For each fitting: its row of the screw table, and how many boards it is screwed into; one for a slide under a box."""

_CALLED = {"slide": "slides"}


def find_missing_screws(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One warning for each kind of fitting that found no screw short enough for one of its boards."""
    found = []
    under = {row.name for row in cabinet.slides.values() if row.holds == "inside"}
    for what, (use, boards) in _BOARDS.items():
        short = [
            piece
            for piece in cabinet.hardware
            if piece.what == what and len(piece.screws) < (1 if piece.row in under else boards)
        ]
        if short:
            text = f"{_fittings(what, short)}: no screw of the table is short enough {_for(use, cabinet)}."
            found.append(Finding("screws", "warn", tuple(dict.fromkeys(piece.on for piece in short)), text))
    return tuple(found)


def find_meeting_screws(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One warning for each upright that carries slides on both faces at one height, with screws that would meet.

    Slides are screwed along their middle line. Two lines lie at one height where they are no farther apart
    than the shank is thick; the screws meet where they are together longer than the board at its thinnest. The
    amount is by how much.
    """
    on_board: dict[str, list[Hardware]] = {}
    for piece in cabinet.hardware:
        if piece.what == "slide" and piece.on in cabinet.by_name:
            on_board.setdefault(piece.on, []).append(piece)
    found = []
    for board, pieces in on_board.items():
        meeting = [
            (one, other, over)
            for one, other in combinations(pieces, 2)
            if (over := _longer_than_board(cabinet, board, one, other)) > 0
        ]
        if meeting:
            found.append(_meeting(cabinet, board, meeting))
    return tuple(found)


def _longer_than_board(cabinet: Cabinet, board: str, one: Hardware, other: Hardware) -> int:
    """By how much the screws that two slides have in a board are together longer than it is thick; 0 apart."""
    wood = cabinet.by_name[board].box
    if (one.box.low[0] >= wood.high[0]) == (other.box.low[0] >= wood.high[0]):
        return 0
    (a, b), (c, d) = ((piece.box.low, piece.box.high) for piece in (one, other))
    own = [[screw for screw in piece.screws if screw.into == board] for piece in (one, other)]
    if not all(own) or a[1] >= d[1] or c[1] >= b[1]:
        return 0
    apart = abs(share(a[2] + b[2], 2, 1)[0] - share(c[2] + d[2], 2, 1)[0])
    if apart >= thickest([shank(screws_[0].gauge) for screws_ in own]):
        return 0
    return own[0][0].length + own[1][0].length - cabinet.sheets[cabinet.by_name[board].sheet].thinnest


def _meeting(cabinet: Cabinet, board: str, meeting: list[tuple[Hardware, Hardware, int]]) -> Finding:
    style = cabinet.style
    groups = dict.fromkeys(piece.group for one, other, _ in meeting for piece in (one, other))
    one, other, over = max(meeting, key=lambda pair: pair[2])
    lengths = sorted({screw.length for piece in (one, other) for screw in piece.screws if screw.into == board})
    text = (
        f"{board}: the slides of {and_list(in_short(groups))} lie at one height on its two faces, and screws of "
        f"{and_list([write_brief(length, style) for length in lengths])} from both are together "
        f"{write_brief(over, style, decimal=True)} longer than it is thick. Set those of one face in other holes "
        "of the slide, well clear of the points, or take shorter ones."
    )
    return Finding("screws", "warn", (board,), text, over)


def _fittings(what: str, short: Iterable[Hardware]) -> str:
    groups = in_short(dict.fromkeys(piece.group for piece in short))
    return f"The {_CALLED.get(what, what)} of {and_list(groups)}"


def _for(use: str, cabinet: Cabinet) -> str:
    """What the screw is too long for, and what helps."""
    if use == "end":
        return "for a board this thin: a third of it at least should hold it. Use a thicker board, or let the end in"
    kept = leaf(screws(cabinet.style.unit)[use].spare, "wood that stays before the point of a screw", "table")
    spare = write_brief(kept, cabinet.style)
    return f"to leave {spare} of wood before its point. Use a thicker board, or the maker's own shorter screws"
