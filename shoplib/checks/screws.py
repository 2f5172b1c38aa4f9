"""Screws must hold and must not come through: fittings whose board is too thin for any screw of their table."""

from collections.abc import Iterable

from shoplib.measure import write_brief
from shoplib.model.solved import Cabinet, Finding, Hardware
from shoplib.tables.screws import screws
from shoplib.words.naming import and_list, in_short

_BOARDS = {"slide": ("slide", 2), "front screws": ("front", 1)}
"""For each fitting: its row of the screw table, and how many boards it is screwed into."""


def find_missing_screws(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One warning for each kind of fitting that found no screw short enough for one of its boards."""
    found = []
    for what, (use, boards) in _BOARDS.items():
        short = [piece for piece in cabinet.hardware if piece.what == what and len(piece.screws) < boards]
        if short:
            spare = write_brief(screws()[use].spare, cabinet.style)
            text = (
                f"{_fittings(what, short)}: no screw of the table is short enough to leave {spare} of wood "
                "before its point. Use thicker stock, or the maker's own shorter screws."
            )
            found.append(Finding("screws", "warn", tuple(dict.fromkeys(piece.on for piece in short)), text))
    return tuple(found)


def _fittings(what: str, short: Iterable[Hardware]) -> str:
    groups = in_short(dict.fromkeys(piece.group for piece in short))
    return f"The {'slides' if what == 'slide' else 'front screws'} of {and_list(groups)}"
