"""A typed cut list held against the planned boards: which line differs, by how much, what it would do.

Sizes agree within half the finest step that the project shows. Lines that are off by the same amount
in the same direction are put together as one slip (both sides 2 in short); the cabinet is then
built from those boards (`refit`) and dry-fitted, and what the dry-fit finds now and did not find
before is what the slip would do.
"""

from collections.abc import Callable
from dataclasses import dataclass

from shoplib.lists.alike import told_once
from shoplib.lists.consequences import consequences
from shoplib.lists.refit import refit
from shoplib.lists.slips import SIZES, slip
from shoplib.lists.typed import Said, TypedRow, all_of, assign
from shoplib.lists.words_compared import words_off
from shoplib.measure import write_brief
from shoplib.model.board import Board
from shoplib.model.box import Point
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import how_much, setting
from shoplib.words.naming import plural

Judge = Callable[[Cabinet], tuple[Finding, ...]]

_LESS = ("short", "narrow", "thin")
_MORE = ("long", "wide", "thick")


@dataclass(frozen=True, slots=True)
class Difference:
    """What differs: each line's own sentence, and what it would do.

    `lines` are line numbers of the file, each with its sentence (None: no line of the file). `slip`
    sums up lines that are off alike, in a few words; `would` is what the dry-fit says of them, one
    sentence each, empty where nothing is found or nothing was dry-fitted.
    """

    lines: tuple[tuple[int | None, str], ...]
    slip: str = ""
    would: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class _Off:
    """One board whose size is off: what the line says of it, and the change along own and world axes."""

    line: int
    board: Board
    own: Point
    text: str

    @property
    def world(self) -> Point:
        change = [0, 0, 0]
        for own, (axis, _) in enumerate(directions(self.board.placement.axes)):
            change[axis] = self.own[own]
        return tuple(change)


def compare(cabinet: Cabinet, rows: tuple[TypedRow, ...], dry_fit: Judge) -> tuple[Difference, ...]:
    """Everything in which the rows differ from the boards of the cabinet; empty where they agree.

    `dry_fit` gives the findings of a cabinet. The sizes in the rows are sizes at the saw.
    """
    assigned = assign(rows, cabinet, lambda row, board: not any(_changes(row, board, cabinet)))
    found = [Difference(((line, sentence),)) for line, sentence in assigned.faults]
    off: list[_Off] = []
    for row, boards in assigned.boards:
        said = _sayings(row, boards, cabinet)
        if said:
            found.append(Difference(tuple((row.line, sentence) for sentence in said)))
        off += _off(row, boards, cabinet)
    planned = dry_fit(cabinet) if off else ()
    slips = _slips(off)
    found += [_built(same, cabinet, planned, dry_fit) for same in slips]
    if assigned.missing:
        found.append(_without(assigned.missing, cabinet))
    if len(slips) > 1:
        told = {sentence for difference in found for sentence in difference.would}
        together = _dry_fitted(off, cabinet, planned, dry_fit)
        if not told.issuperset(together):
            found.append(Difference((), "all these sizes together", together))
    return tuple(found)


def _farthest(said: tuple[Said, ...], planned: int) -> Said:
    """Of two columns that disagree, the one that is further from the plan: it was edited, or both were."""
    return max(said, key=lambda one: abs(one.ticks - planned))


def _changes(row: TypedRow, board: Board, cabinet: Cabinet) -> Point:
    """How far each of the row's sizes is off the cut size of the board; 0 within half a step."""
    near = cabinet.style.step // 2
    changes = []
    for own, said in enumerate((row.length, row.width, row.thickness)):
        planned = board.cut_size[own]
        change = _farthest(said, planned).ticks - planned if said else 0
        changes.append(change if abs(change) > near else 0)
    return tuple(changes)


def _off(row: TypedRow, boards: tuple[Board, ...], cabinet: Cabinet) -> list[_Off]:
    found = []
    for board in boards:
        changes = _changes(row, board, cabinet)
        if any(changes) and not _swapped(row, board, cabinet):
            found.append(_Off(row.line, board, changes, _size_text(row, board, changes, cabinet)))
    return found


def _size_text(row: TypedRow, board: Board, changes: Point, cabinet: Cabinet) -> str:
    style, parts = cabinet.style, []
    for own, said in enumerate((row.length, row.width, row.thickness)):
        if changes[own]:
            one = _farthest(said, board.cut_size[own])
            hint = slip(board, own, one, cabinet)
            measured = own == 2
            parts.append(
                f"{SIZES[own]} {write_brief(one.ticks, style, measured)}, "
                f"planned {write_brief(board.cut_size[own], style, measured)}: "
                f"{_amount(changes[own], own, cabinet)}{f' ({hint})' if hint else ''}"
            )
    return f"{board.name}: {'; '.join(parts)}."


def _amount(change: int, own: int, cabinet: Cabinet) -> str:
    """How much, and which way: "2 in short". A thickness differs by a decimal."""
    size = (setting if own == 2 else how_much)(abs(change), cabinet.style)
    return f"{size} {(_MORE if change > 0 else _LESS)[own]}"


def _swapped(row: TypedRow, board: Board, cabinet: Cabinet) -> bool:
    near = cabinet.style.step // 2
    length, width, _ = board.cut_size
    if abs(length - width) <= near:
        return False
    return all(abs(said.ticks - width) <= near for said in row.length) and all(
        abs(said.ticks - length) <= near for said in row.width
    )


def _sayings(row: TypedRow, boards: tuple[Board, ...], cabinet: Cabinet) -> list[str]:
    """What is wrong with a row besides sizes that are off: contradictions, a turned board, words."""
    said = [*_contradictions(row, cabinet)]
    if boards:
        said += words_off(row, boards, cabinet)
    swapped = [board for board in boards if _swapped(row, board, cabinet)]
    if swapped:
        said.append(_swapped_text(swapped, cabinet))
    elif boards:
        said += _finished_off(row, boards[0], cabinet)
    return said


def _swapped_text(boards: list[Board], cabinet: Cabinet) -> str:
    names = all_of(boards, cabinet)
    if boards[0].grain == "none":
        return f"{names}: length and width have changed places; this sheet has no grain, so it would still fit."
    return (
        f"{names}: length and width have changed places; the length runs with the grain, "
        "so the board would have its grain across."
    )


def _contradictions(row: TypedRow, cabinet: Cabinet) -> list[str]:
    found = []
    for said in (row.length, row.width, row.thickness, row.finished_length, row.finished_width):
        ticks = [one.ticks for one in said]
        if said and max(ticks) - min(ticks) > cabinet.style.step // 2:
            apart = how_much(max(ticks) - min(ticks), cabinet.style)
            cells = " and ".join(f"{one.column} `{one.text}`" for one in said)
            found.append(f"{row.names[0]}: {cells} are {apart} apart; make them say the same.")
    return found


def _finished_off(row: TypedRow, board: Board, cabinet: Cabinet) -> list[str]:
    """Finished sizes that are off where the size at the saw is not: else that one tells it all."""
    found = []
    changes = _changes(row, board, cabinet)
    for own, said in enumerate((row.finished_length, row.finished_width)):
        if (
            said
            and not changes[own]
            and abs(_farthest(said, board.size[own]).ticks - board.size[own]) > cabinet.style.step // 2
        ):
            one = _farthest(said, board.size[own])
            found.append(
                f"{row.names[0]}: finished {SIZES[own]} {write_brief(one.ticks, cabinet.style)}, "
                f"planned {write_brief(board.size[own], cabinet.style)}: "
                f"{_amount(one.ticks - board.size[own], own, cabinet)}."
            )
    return found


def _slips(off: list[_Off]) -> list[list[_Off]]:
    """Boards that are off alike along the same world axis, case and moving parts apart."""
    alike: dict[tuple, list[_Off]] = {}
    for one in off:
        alike.setdefault((one.world, one.own, one.board.group == "case"), []).append(one)
    return list(alike.values())


def _built(same: list[_Off], cabinet: Cabinet, planned: tuple[Finding, ...], dry_fit: Judge) -> Difference:
    amounts = " and ".join(_amount(change, own, cabinet) for own, change in enumerate(same[0].own) if change)
    lines: dict[int, list[_Off]] = {}
    for one in same:
        lines.setdefault(one.line, []).append(one)
    told = tuple((line, text) for line, offs in lines.items() for text in _told(offs, cabinet))
    boards = all_of([one.board for one in same], cabinet)
    what = f"{boards} {amounts}" if boards.startswith(("both ", "all ")) else f"{boards}, {amounts}"
    return Difference(told, what, _dry_fitted(same, cabinet, planned, dry_fit))


def _told(offs: list[_Off], cabinet: Cabinet) -> list[str]:
    """One sentence for boards of a line that are off by the same sizes."""
    texts: dict[str, list[Board]] = {}
    for one in offs:
        texts.setdefault(one.text.removeprefix(one.board.name), []).append(one.board)
    return [all_of(boards, cabinet) + text for text, boards in texts.items()]


def _dry_fitted(off: list[_Off], cabinet: Cabinet, planned: tuple[Finding, ...], dry_fit: Judge) -> tuple[str, ...]:
    sizes = {
        one.board.name: tuple(size + change for size, change in zip(one.board.size, one.own, strict=True))
        for one in off
    }
    built = refit(cabinet, sizes)
    return consequences(built, cabinet, planned, dry_fit(built.cabinet))


def _without(missing: tuple[Board, ...], cabinet: Cabinet) -> Difference:
    """The boards that no line names, and what would have nothing to go into, read off the joints."""
    gone = {board.name for board in missing}
    left: dict[str, list[Board]] = {}
    for joint in cabinet.joints:
        if joint.receives in gone and joint.enters not in gone:
            left.setdefault(joint.receives, []).append(cabinet.by_name[joint.enters])
    would = [
        f"without {name}, {all_of(boards, cabinet)} {'has' if len(boards) == 1 else 'have'} nothing to go into there"
        for name, boards in left.items()
    ]
    text = f"In the plan and in no line: {all_of(missing, cabinet)}{_as_many_as(missing, cabinet)}."
    return Difference(((None, text),), "", tuple(told_once(would)))


def _as_many_as(missing: tuple[Board, ...], cabinet: Cabinet) -> str:
    """How many of each part the plan has, where drawers each need the same number."""
    told = []
    for role in dict.fromkeys(board.role for board in missing if board.role):
        boards = [board for board in cabinet.boards if board.role == role]
        groups = len({board.group for board in boards})
        partly = sum(board.role == role for board in missing) < len(boards)
        if partly and groups > 1 and len(boards) % groups == 0:
            told.append(f"{len(boards)} {plural(role)}, {len(boards) // groups} in each of {groups}")
    return f" (the plan has {'; '.join(told)})" if told else ""
