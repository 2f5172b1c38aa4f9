"""Fixings that only a maker or a wall can name: no count of the plan, but what to buy them by."""

from collections.abc import Iterator

from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.tables.screws import screws

INTO_STUD = {"in": 3 * INCH // 2, "mm": 40 * MM}
"""How deep a screw goes into a stud at least, by the unit of the project (common practice, no source)."""

_STEP = {"in": INCH // 8, "mm": 5 * MM}
"""What the lengths of screws for a wall differ by (common practice, no source)."""


def maker_named(cabinet: Cabinet) -> Iterator[str]:
    """A sentence for each kind: how many, how thick, how long, and what is not known of it."""
    yield from _under(cabinet)
    stands = cabinet.project.in_use.stands if cabinet.project else "free"
    if stands == "hung":
        yield _hung(cabinet)
    else:
        rail = f"; or screws through its rail, {through_rail(cabinet)}" if rails_of(cabinet) else ""
        yield (
            f"What fastens the case to the building: angle brackets with their screws, which go {_depth(cabinet)} into "
            f"a stud beyond what covers the wall{rail}; in masonry anchors, as their maker says; bought by what their "
            "maker says they hold. How many is not worked out."
        )


def _under(cabinet: Cabinet) -> Iterator[str]:
    """Screws of casters and feet: their heads and number are the maker's, and no point may come out inside."""
    for what, called in (("caster", "casters"), ("foot", "feet")):
        found = [fitting for fitting in cabinet.hardware if fitting.what == what]
        if not found:
            continue
        board = cabinet.by_name[found[0].on]
        if what == "caster":
            by = (
                f"pan-head, one for each hole of their plates: {4 * len(found)} where each plate has 4, as thick as "
                "those holes let through"
            )
        else:
            by = "as many and as thick as their maker names"
        yield f"Screws of the {len(found)} {called}, {by}{_no_longer(board, cabinet)}."


def _no_longer(board: Board, cabinet: Cabinet) -> str:
    """How long they may be in a board that lies flat; nothing where they go up into an edge."""
    if board.placement.own_axis(2) != 2:
        return ""
    wood = cabinet.sheets[board.sheet].thinnest - screws(cabinet.style.unit)["slide"].spare
    return (
        f", and no longer than what they pass of the plate and {Writing(cabinet.style).measured(wood)} more, or their "
        f"points come out of the {board.name}. If their maker asks for more: bolts right through it, with washers and "
        "lock nuts"
    )


def _hung(cabinet: Cabinet) -> str:
    return (
        f"Screws that the case hangs by: {through_rail(cabinet)} that is crossed. With a broad head or a washer; no "
        "drywall screws, which snap. In masonry anchors instead, as their maker says. How thick and how many, and what "
        "they carry, is not worked out."
    )


def rails_of(cabinet: Cabinet) -> list[Board]:
    """The rails that a case may be fastened by.

    >>> rails_of(Cabinet("no boards", (), {}))
    []
    """
    return [board for board in cabinet.boards if board.role == "rail"]


def through_rail(cabinet: Cabinet) -> str:
    """How long screws through its rails are: as rail, back and hollow are deep and the stud asks for; what covers the
    wall comes on top.

    >>> from shoplib.documents.examples import cabinet_from
    >>> through_rail(cabinet_from("finger_jointed_drawers"))
    '80 mm long and what covers the studs besides, for they pass 35.62 mm from the front of the rail to the wall and \
go 40 mm (common practice, no source) into each stud'
    """
    rails, unit = rails_of(cabinet), cabinet.style.unit
    deep = max(cabinet.outside.high[1] - rail.box.low[1] for rail in rails)
    least = -(-(deep + INTO_STUD[unit]) // _STEP[unit]) * _STEP[unit]
    writing = Writing(cabinet.style)
    return (
        f"{writing.length(least)} long and what covers the studs besides, for they pass {writing.measured(deep)} from "
        f"the front of the {'rails' if len(rails) > 1 else 'rail'} to the wall and go {_depth(cabinet)} into each stud"
    )


def _depth(cabinet: Cabinet) -> str:
    return f"{Writing(cabinet.style).length(INTO_STUD[cabinet.style.unit])} (common practice, no source)"
