"""Screws of a slide must not come out in a cut on the far face of their board, where another board stands."""

from dataclasses import dataclass

from shoplib.measure import write_brief
from shoplib.model.board import Board, BoxCut
from shoplib.model.screw_room import screw_body
from shoplib.model.solved import Cabinet, Finding, Hardware, Screw
from shoplib.words.naming import and_list, in_short

_CUTS = ("dado", "rabbet", "groove")


@dataclass(frozen=True, slots=True)
class _Met:
    """Screws of one slide that reach into one cut, and how far."""

    fitting: Hardware
    screw: Screw
    cut: BoxCut
    over: int


def find_screws_in_cuts(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One warning for each upright in which screws of slides reach a dado, rabbet or groove, with how far at most."""
    met: dict[str, list[_Met]] = {}
    for fitting in cabinet.hardware:
        board = cabinet.by_name.get(fitting.on)
        if fitting.what == "slide" and board is not None:
            for screw in fitting.screws:
                if screw.into == board.name:
                    met.setdefault(board.name, []).extend(_reached(fitting, screw, board))
    return tuple(_finding(cabinet, board, cases) for board, cases in met.items() if cases)


def _reached(fitting: Hardware, screw: Screw, board: Board) -> list[_Met]:
    body, found = screw_body(fitting, screw, board.box), []
    for cut in board.cuts:
        if isinstance(cut, BoxCut) and cut.kind in _CUTS:
            common = body.common(board.placement.to_world(cut.box))
            if common is not None and min(common.size) > 0:
                found.append(_Met(fitting, screw, cut, common.size[0]))
    return found


def _finding(cabinet: Cabinet, board: str, cases: list[_Met]) -> Finding:
    style, worst = cabinet.style, max(cases, key=lambda case: case.over)
    groups = and_list(in_short(dict.fromkeys(case.fitting.group for case in cases)))
    whose = f" of {worst.cut.for_board}" if worst.cut.for_board else ""
    text = (
        f"{board}: screws of {write_brief(worst.screw.length, style)} for the slides of {groups} reach "
        f"{write_brief(worst.over, style, decimal=True)} into the {worst.cut.kind}{whose}. Use holes of the slide "
        "that lie clear of it, take shorter screws, or move one of the two."
    )
    return Finding("screws", "warn", (board,), text, worst.over)
