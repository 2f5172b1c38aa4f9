"""Screws whose points come out: of a front from behind, of an upright or box side that a slide is fixed to."""

from shoplib.model.board import Board
from shoplib.model.pocket import point_in, usual_pocket
from shoplib.model.pocketed import POCKET
from shoplib.model.solved import Cabinet, Finding, Hardware, Screw
from shoplib.words.amounts import setting
from shoplib.words.naming import and_list, in_short

_PASSES_ITS_OWN = ("front screws",)
"""The fittings whose screws pass through the board that they are on before they bite the next."""


def find_screws_through(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One stop for each kind of screw that is longer than the wood it goes through, with the largest amount.

    A front's screw has the box front and the front before it; a slide's screw the board that it is driven into.
    """
    out: dict[str, list[tuple[Hardware, Screw, int]]] = {}
    for fitting in cabinet.hardware:
        for screw in fitting.screws:
            wood = _wood(cabinet, fitting, screw)
            reach = reach_of(cabinet, fitting, screw)
            if wood is not None and reach > wood:
                out.setdefault(fitting.what, []).append((fitting, screw, reach - wood))
    return tuple(_finding(cabinet, what, cases) for what, cases in out.items())


def _wood(cabinet: Cabinet, fitting: Hardware, screw: Screw) -> int | None:
    """How thick the wood before the point is where its sheet is thinnest, for there the point comes through first;
    None for screws into an end, which is longer than any screw.
    """
    into = cabinet.by_name.get(screw.into)
    if into is None:
        return None
    if fitting.what in ("slide", POCKET):
        return thinnest_of(cabinet, into)
    if fitting.what in _PASSES_ITS_OWN and fitting.on in cabinet.by_name:
        return thinnest_of(cabinet, cabinet.by_name[fitting.on]) + thinnest_of(cabinet, into)
    return None


def reach_of(cabinet: Cabinet, fitting: Hardware, screw: Screw) -> int:
    """How deep the point goes, square to the face: the length of the screw, but of one in a pocket, which slants."""
    board = cabinet.by_name.get(fitting.on)
    if fitting.what != POCKET or board is None:
        return screw.length
    pocket = usual_pocket(board.thickness, cabinet.style)
    return point_in(screw.length, pocket.web, pocket.angle)


def thinnest_of(cabinet: Cabinet, board: Board) -> int:
    """The board where it is thinnest: as far under its thickness as its sheet is, there, under its mean."""
    sheet = cabinet.project.sheets.get(board.sheet) if cabinet.project else None
    return board.thickness - (sheet.thickness - sheet.thinnest) if sheet else board.thickness


def _finding(cabinet: Cabinet, what: str, cases: list[tuple[Hardware, Screw, int]]) -> Finding:
    over = max(amount for _, _, amount in cases)
    groups = and_list(in_short(fitting.group for fitting, _, _ in cases))
    boards = tuple(dict.fromkeys(screw.into for _, screw, _ in cases))
    screw = next(screw for _, screw, amount in cases if amount == over)
    name, face = ("screws of the slides", "the board") if what == "slide" else (what, "the face")
    text = (
        f"{groups}: the {name}, {setting(screw.length, cabinet.style)} long, come through {face} by "
        f"{setting(over, cabinet.style)}. Take shorter ones."
    )
    return Finding("screws", "stop", boards, text, over)
