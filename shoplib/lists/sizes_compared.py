"""The sizes of a typed row held against the planned boards.

Sizes agree within half the finest step that the project shows.
"""

from collections.abc import Iterable

from shoplib.lists.slips import SIZES, slip
from shoplib.lists.typed import Said, TypedRow, all_of
from shoplib.measure import write_brief
from shoplib.model.board import Board
from shoplib.model.box import Point
from shoplib.model.solved import Cabinet
from shoplib.words.amounts import how_much, setting
from shoplib.words.naming import and_list

_LESS = ("short", "narrow", "thin")
_MORE = ("long", "wide", "thick")


def _farthest(said: tuple[Said, ...], planned: int) -> Said:
    """Of two columns that disagree, the one that is further from the plan: it was edited, or both were."""
    return max(said, key=lambda one: abs(one.ticks - planned))


def changes(row: TypedRow, board: Board, cabinet: Cabinet) -> Point:
    """How far each of the row's sizes is off the cut size of the board; 0 within half a step."""
    near = cabinet.style.step // 2
    changes = []
    for own, said in enumerate((row.length, row.width, row.thickness)):
        planned = board.cut_size[own]
        change = _farthest(said, planned).ticks - planned if said else 0
        changes.append(change if abs(change) > near else 0)
    return tuple(changes)


def size_text(row: TypedRow, board: Board, off: Point, cabinet: Cabinet) -> str:
    """Each size that is off, typed and planned, and what may have happened; without the name of the board.

    Last comes which of two columns was taken, where the other still says what the plan does.
    """
    style, parts = cabinet.style, []
    for own, said in enumerate((row.length, row.width, row.thickness)):
        if off[own]:
            one = _farthest(said, board.cut_size[own])
            hint = slip(board, own, one, cabinet)
            measured = own == 2
            parts.append(
                f"{SIZES[own]} {write_brief(one.ticks, style, measured)}, "
                f"planned {write_brief(board.cut_size[own], style, measured)}: "
                f"{amount(off[own], own, cabinet)}{f' ({hint})' if hint else ''}"
            )
    sizes = [(said, board.cut_size[own]) for own, said in enumerate((row.length, row.width, row.thickness)) if off[own]]
    return f": {'; '.join(parts)}.{_taken(sizes, cabinet)}"


def _taken(sizes: Iterable[tuple[tuple[Said, ...], int]], cabinet: Cabinet) -> str:
    """Which columns were edited and so taken, where their twins were left as planned; empty where there are none.

    `sizes` are what the columns say, each with its planned size in ticks.
    """
    edited, left = [], []
    for said, planned in sizes:
        as_planned = [one.column for one in said if abs(one.ticks - planned) <= cabinet.style.step // 2]
        if 0 < len(as_planned) < len(said):
            edited += [one.column for one in said if one.column not in as_planned]
            left += as_planned
    if not edited:
        return ""
    one, other = (and_list([f"`{column}`" for column in columns]) for columns in (edited, left))
    return f" Taken from {one}; {other} still say{'s' * (len(left) == 1)} what the plan does."


def amounts(own: Point, cabinet: Cabinet) -> str:
    """All that a board is off by: "2 in short and 1/8 in wide"."""
    return " and ".join(amount(change, axis, cabinet) for axis, change in enumerate(own) if change)


def amount(change: int, own: int, cabinet: Cabinet) -> str:
    """How much, and which way: "2 in short". A thickness differs by a decimal."""
    size = (setting if own == 2 else how_much)(abs(change), cabinet.style)
    return f"{size} {(_MORE if change > 0 else _LESS)[own]}"


def swapped(row: TypedRow, board: Board, cabinet: Cabinet) -> bool:
    """True where length and width have changed places."""
    near = cabinet.style.step // 2
    length, width, _ = board.cut_size
    if abs(length - width) <= near or not (row.length and row.width):
        return False
    typed = _farthest(row.length, length).ticks, _farthest(row.width, width).ticks
    return abs(typed[0] - width) <= near and abs(typed[1] - length) <= near


def swapped_text(row: TypedRow, boards: list[Board], cabinet: Cabinet) -> str:
    """What boards do whose length and width have changed places."""
    names = all_of(boards, cabinet)
    taken = _taken(zip((row.length, row.width), boards[0].cut_size[:2], strict=True), cabinet)
    if boards[0].grain == "none":
        return f"{names}: length and width have changed places; this sheet has no grain, so it would still fit.{taken}"
    return (
        f"{names}: length and width have changed places; the length runs with the grain, "
        f"so the board would have its grain across.{taken}"
    )


def contradictions(row: TypedRow, boards: tuple[Board, ...], cabinet: Cabinet) -> list[str]:
    """Two columns that say the same size otherwise, unless one of them still says what the plan of the boards does.

    Then only the other was edited, and it is the one that is meant.
    """
    found, near = [], cabinet.style.step // 2
    all_said = (row.length, row.width, row.thickness, row.finished_length, row.finished_width)
    planned = (*boards[0].cut_size, *boards[0].size[:2]) if boards else (None,) * len(all_said)
    for said, size in zip(all_said, planned, strict=True):
        ticks = [one.ticks for one in said]
        edited_once = size is not None and any(abs(one - size) <= near for one in ticks)
        if said and max(ticks) - min(ticks) > near and not edited_once:
            apart = how_much(max(ticks) - min(ticks), cabinet.style)
            cells = " and ".join(f"{one.column} `{one.text}`" for one in said)
            found.append(f"{row.names[0]}: {cells} are {apart} apart; make them say the same.")
    return found


def finished_off(row: TypedRow, board: Board, cabinet: Cabinet) -> list[str]:
    """Finished sizes that are off where the size at the saw is not: else that one tells it all."""
    found = []
    off = changes(row, board, cabinet)
    for own, said in enumerate((row.finished_length, row.finished_width)):
        if (
            said
            and not off[own]
            and abs(_farthest(said, board.size[own]).ticks - board.size[own]) > cabinet.style.step // 2
        ):
            one = _farthest(said, board.size[own])
            found.append(
                f"{row.names[0]}: finished {SIZES[own]} {write_brief(one.ticks, cabinet.style)}, "
                f"planned {write_brief(board.size[own], cabinet.style)}: "
                f"{amount(one.ticks - board.size[own], own, cabinet)}.{_taken([(said, board.size[own])], cabinet)}"
            )
    return found
