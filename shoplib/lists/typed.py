"""A cut list as somebody typed it: rows with the sizes they say, and which boards they mean."""

import difflib
from collections.abc import Callable
from dataclasses import dataclass, replace

from shoplib.lists.names_read import Names, plain
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, boards_in_short, in_short, plural


@dataclass(frozen=True, slots=True)
class Said:
    """One size as one cell says it: the heading of its column, its text, and the length in ticks."""

    column: str
    text: str
    ticks: int


@dataclass(frozen=True, slots=True)
class TypedRow:
    """One line of the list. A size may be said in two columns (shop text and millimetres).

    Lengths and widths are sizes at the saw. What the list does not say is empty or None.
    """

    line: int
    names: tuple[str, ...]
    length: tuple[Said, ...]
    width: tuple[Said, ...]
    thickness: tuple[Said, ...] = ()
    finished_length: tuple[Said, ...] = ()
    finished_width: tuple[Said, ...] = ()
    count: int | None = None
    sheet: str = ""
    stage: int | None = None
    edging: str = ""
    cuts: str = ""
    grain: str = ""


@dataclass(frozen=True, slots=True)
class Assignment:
    """Which boards each row means, and what is wrong with names and counts: (line or None, sentence)."""

    boards: tuple[tuple[TypedRow, tuple[Board, ...]], ...]
    faults: tuple[tuple[int | None, str], ...]
    missing: tuple[Board, ...]


_LONG = 80
"""Signs; names that take more are told as a number."""

Agrees = Callable[[TypedRow, Board], bool]


def assign(rows: tuple[TypedRow, ...], cabinet: Cabinet, agrees: Agrees) -> Assignment:
    """The boards that each row means.

    Names first: any case and spacing; a name that is printed for several boards ("dividers 1 and 2") is
    those boards. A name that is no board's but what boards do ("box side",
    "sides", "bay 1 drawer 2 box sides") takes as many of those as the row counts, those whose sizes
    agree with the row before others. A misspelt name is read as the board that it is most like, if no row
    names that one, and is told.
    """
    names = Names(cabinet.boards)
    return _Assigner(cabinet, agrees).run(tuple(replace(row, names=_each(row.names, names)) for row in rows))


def _each(typed: tuple[str, ...], names: Names) -> tuple[str, ...]:
    """A name for each board; what was parted at a comma may be one phrase: "dividers 1, 2 and 4"."""
    whole = names.read(", ".join(typed))
    return whole if whole is not None else tuple(one for name in typed for one in names.read(name) or (name,))


class _Assigner:
    def __init__(self, cabinet: Cabinet, agrees: Agrees) -> None:
        self._agrees = agrees
        self._boards = cabinet.boards
        self._by_name = {plain(board.name): board for board in cabinet.boards}
        self._claimed: dict[str, int] = {}
        self._faults: list[tuple[int | None, str]] = []

    def run(self, rows: tuple[TypedRow, ...]) -> Assignment:
        exact = [[self._by_name.get(plain(name)) for name in row.names] for row in rows]
        found = [self._claim_named(row, boards) for row, boards in zip(rows, exact, strict=True)]
        for row, boards, claimed in zip(rows, exact, found, strict=True):
            unknown = [name for name, board in zip(row.names, boards, strict=True) if board is None]
            by_role = [self._claim_role(row, name) for name in unknown]
            for name, boards_of_role in zip(unknown, by_role, strict=True):
                claimed += boards_of_role if boards_of_role is not None else self._claim_alike(row, name)
            if row.count is not None and all(found is None for found in by_role) and row.count != len(row.names):
                names = and_list(in_short(row.names))
                self._fault(row, f"the count is {row.count}, but the line names {len(row.names)} boards: {names}")
        missing = tuple(board for board in self._boards if board.name not in self._claimed)
        pairs = tuple((row, tuple(boards)) for row, boards in zip(rows, found, strict=True))
        return Assignment(pairs, tuple(self._faults), missing)

    def _fault(self, row: TypedRow, sentence: str) -> None:
        self._faults.append((row.line, sentence + "."))

    def _take(self, row: TypedRow, board: Board) -> Board:
        self._claimed[board.name] = row.line
        return board

    def _claim_named(self, row: TypedRow, boards: list[Board | None]) -> list[Board]:
        taken = []
        for board in boards:
            if board is None:
                continue
            if board.name in self._claimed:
                before = self._claimed[board.name]
                where = "twice in this line" if before == row.line else f"already in line {before}"
                self._fault(row, f"{board.name} is listed {where}; each board is cut once")
            else:
                taken.append(self._take(row, board))
        return taken

    def _claim_role(self, row: TypedRow, name: str) -> list[Board] | None:
        """None where no board does what the name says."""
        wanted = plain(name)
        doing = [board for board in self._boards if wanted in _words_for(board)]
        if not doing:
            return None
        free = [board for board in doing if board.name not in self._claimed]
        free.sort(key=lambda board: not self._agrees(row, board))
        fitting = [board for board in free if self._agrees(row, board)]
        count = row.count if row.count is not None else len(fitting) or len(free)
        if count > len(free):
            groups = len({board.group for board in doing})
            even = groups > 1 and len(doing) % groups == 0
            each = f", {len(doing) // groups} for each of {groups}" if even else ""
            elsewhere = len(doing) - len(free)
            others = f", {elsewhere} in other lines" if elsewhere else ""
            said = f"{name}: {count} here{others}, and the plan needs {len(doing)}{each}"
            self._fault(row, said)
        return [self._take(row, board) for board in free[:count]]

    def _claim_alike(self, row: TypedRow, name: str) -> list[Board]:
        free = {plain: board for plain, board in self._by_name.items() if board.name not in self._claimed}
        like = difflib.get_close_matches(plain(name), free, n=1, cutoff=0.8)
        if not like:
            taken = difflib.get_close_matches(plain(name), self._by_name, n=1, cutoff=0.8)
            hint = f" ({self._by_name[taken[0]].name} is listed in another line)" if taken else ""
            self._fault(row, f"the plan has no board called {name}{hint}; take it out, or correct its name")
            return []
        board = free[like[0]]
        self._fault(row, f"the plan has no board called {name}; it is read as {board.name}")
        return [self._take(row, board)]


def all_of(boards: tuple[Board, ...] | list[Board], cabinet: Cabinet, most: int = 3) -> str:
    """The boards in a few words: "both sides", "all 8 box sides and the back", or their names.

    Of a part of which more than `most` are meant, but not all, the number is told where the names are long.
    """
    parts: dict[str, list[Board]] = {}
    for board in boards:
        parts.setdefault(board.role or board.name, []).append(board)
    told, named = [], []
    for part, some in parts.items():
        of_all = sum((board.role or board.name) == part for board in cabinet.boards)
        if 1 < len(some) == of_all:
            told.append(f"both {plural(part)}" if of_all == 2 else f"all {of_all} {plural(part)}")
        elif len(some) > most and len(boards_in_short(some)) > _LONG:
            told.append(f"{len(some)} of {of_all} {plural(part)}")
        else:
            named += some
    told += [board.name for board in named if board.group == "case"]
    moving = [board for board in named if board.group != "case"]
    return and_list([*told, *([boards_in_short(moving)] if moving else [])])


def _words_for(board: Board) -> tuple[str, ...]:
    role = board.role or board.name
    words = (role, plural(role), f"{board.group} {role}", f"{board.group} {plural(role)}")
    return tuple(plain(word) for word in words)
