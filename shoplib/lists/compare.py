"""A typed cut list held against the planned boards: which line differs, by how much, what it would do.

Lines that are off by the same amount in the same direction, or whose cuts are off alike, are put together
as one slip (both sides 2 in short); the cabinet is then built from those boards (`refit`) and
dry-fitted, and what the dry-fit finds now and did not find before is what the slip would do.
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from shoplib.lists.alike import told_once
from shoplib.lists.compared import Unread, What, parts_said
from shoplib.lists.consequences import consequences
from shoplib.lists.cut_list import Kind
from shoplib.lists.cuts_compared import CutsOff, cuts_off
from shoplib.lists.edging_compared import EdgingNotRead, edging_off
from shoplib.lists.refit import refit
from shoplib.lists.row_words import kind_cut_words
from shoplib.lists.sizes_compared import (
    amounts,
    changes,
    contradictions,
    finished_off,
    size_text,
    swapped,
    swapped_text,
)
from shoplib.lists.typed import TypedRow, all_of, assign
from shoplib.lists.words_compared import grain_of, lengths_off, words_off
from shoplib.lists.writing import Writing
from shoplib.model.board import Board, BoxCut, Cut, Hole, PrismCut
from shoplib.model.box import Point
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list, in_short, plural

Judge = Callable[[Cabinet], tuple[Finding, ...]]


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
class Comparison:
    """The differences, the gravest first, and what of the list could be compared at all."""

    differences: tuple[Difference, ...]
    what: What


@dataclass(frozen=True, slots=True)
class _Off:
    """One board that is off in size or in its cuts: what the line says of it, and how it would be made.

    `text` is the sentence without the board's name, `slip` the same in a few words: "2 in short".
    """

    line: int
    board: Board
    text: str
    slip: str
    own: Point = (0, 0, 0)
    cuts: tuple[Cut, ...] | None = None

    @property
    def alike(self) -> tuple:
        """Boards of one slip are off alike along the world's axes; case and moving parts apart."""
        change = [0, 0, 0]
        for own, (axis, _) in enumerate(directions(self.board.placement.axes)):
            change[axis] = self.own[own]
        return (tuple(change), self.own, self.slip if self.cuts else "", self.board.group == "case")


def compare(cabinet: Cabinet, rows: tuple[TypedRow, ...], dry_fit: Judge) -> Comparison:
    """Everything in which the rows differ from the boards of the cabinet, and what was compared.

    `dry_fit` gives the findings of a cabinet. The sizes in the rows are sizes at the saw.
    """
    parts = parts_said(rows)
    unread: list[Unread] = []
    assigned = assign(rows, cabinet, lambda row, board: not any(changes(row, board, cabinet)))
    found = [Difference(((line, sentence),)) for line, sentence in assigned.faults]
    off: list[_Off] = []
    cuts_of = {row.line: cuts_off(row.cuts, boards, cabinet) for row, boards in assigned.boards if boards and row.cuts}
    # An empty cell says "nothing is cut" only in a list whose other cells say what is.
    empty_says_none = any(not cuts.unread for cuts in cuts_of.values())
    for row, boards in assigned.boards:
        off += _sizes(row, boards, cabinet)
        said = contradictions(row, boards, cabinet)
        if boards:
            sayings, unknown = _sayings(row, boards, cabinet, parts)
            cuts = cuts_of.get(row.line) or (cuts_off("", boards, cabinet) if empty_says_none else CutsOff())
            said += sayings
            unread += [*unknown, *(("cuts", row.line, phrase) for phrase in cuts.unread)]
            off += _cuts_as_typed(row, boards, cuts)
            if cuts.missing:
                found.append(_cuts_missing(row, boards, cuts, cabinet))
            said += _odd_cuts(row, boards, cuts, cabinet)
        if said:
            found.append(Difference(tuple((row.line, sentence) for sentence in said)))
    planned = dry_fit(cabinet) if off else ()
    slips = _slips(off)
    found += [_built(same, cabinet, planned, dry_fit) for same in slips]
    if assigned.missing:
        found.insert(0, _without(assigned.missing, cabinet))
    found.sort(key=lambda difference: not (difference.would or difference.lines[0][0] is None))
    if len(slips) > 1:
        told = {sentence for difference in found for sentence in difference.would}
        together = _dry_fitted(off, cabinet, planned, dry_fit)
        if not told.issuperset(together):
            found.append(Difference((), "all these together", together))
    return Comparison(tuple(found), What.of(rows, tuple(unread), cabinet))


def _sizes(row: TypedRow, boards: tuple[Board, ...], cabinet: Cabinet) -> list[_Off]:
    found = []
    for board in boards:
        own = changes(row, board, cabinet)
        if any(own) and not swapped(row, board, cabinet):
            text = size_text(row, board, own, cabinet)
            found.append(_Off(row.line, board, text, amounts(own, cabinet), own))
    return found


def _sayings(
    row: TypedRow, boards: tuple[Board, ...], cabinet: Cabinet, parts: tuple[str, ...]
) -> tuple[list[str], list[Unread]]:
    """What is wrong with a row besides sizes that are off and cuts: a turned board, edging, words."""
    unread: list[Unread] = []
    name = all_of(boards, cabinet)
    said = words_off(row, boards[0], name)
    if row.grain and grain_of(row.grain) is None:
        unread.append(("grain", row.line, row.grain))
    if "edging" in parts:
        try:
            off = edging_off(row.edging, boards[0], cabinet)
        except EdgingNotRead:
            unread.append(("edging", row.line, row.edging))
        else:
            said += [f"{name}: {'; '.join(off)}."] if off else []
    turned = [board for board in boards if swapped(row, board, cabinet)]
    said += [swapped_text(row, turned, cabinet)] if turned else finished_off(row, boards[0], cabinet)
    return said, unread


def _cuts_as_typed(row: TypedRow, boards: tuple[Board, ...], cuts: CutsOff) -> list[_Off]:
    by_name = {board.name: board for board in boards}
    text = f": {'; '.join(cuts.sentences)}."
    return [_Off(row.line, by_name[name], text, cuts.slip, cuts=typed) for name, typed in cuts.typed]


def _cuts_missing(row: TypedRow, boards: tuple[Board, ...], cuts: CutsOff, cabinet: Cabinet) -> Difference:
    """Cuts that the row leaves out; where others of its cuts are off too, those are told with the slip."""
    into: dict[type, dict[str, Board]] = {BoxCut: {}, Hole: {}, PrismCut: {}}
    for cut in cuts.missing:
        if cut.for_board in cabinet.by_name:
            into[type(cut)][cut.for_board] = cabinet.by_name[cut.for_board]
    would = []
    if into[BoxCut]:
        has = "has" if len(into[BoxCut]) == 1 else "have"
        would.append(f"{all_of([*into[BoxCut].values()], cabinet)} {has} nothing to go into in {boards[0].name}")
    if into[PrismCut]:
        would.append(f"no screw goes from {boards[0].name} into {all_of([*into[PrismCut].values()], cabinet)}")
    if into[Hole]:
        would.append(f"no screw goes through {boards[0].name} into {all_of([*into[Hole].values()], cabinet)}")
    return Difference(((row.line, f"{all_of(boards, cabinet)}: {cuts.left_out}."),), "", tuple(would))


def _odd_cuts(row: TypedRow, boards: tuple[Board, ...], cuts: CutsOff, cabinet: Cabinet) -> list[str]:
    """Cuts that the board has no wood for, and lengths in words that are not read that the plan does not have."""
    name = all_of(boards, cabinet)
    found = [f"{name}: `{phrase}` cannot be cut, the board has not the wood for it." for phrase in cuts.impossible]
    if cuts.unread:
        planned = "; ".join(kind_cut_words(Kind(boards), cabinet, Writing(cabinet.style, exact=True)))
        odd = lengths_off("cuts", "; ".join(cuts.unread), planned, cabinet)
        found += [f"{name}: {odd}."] if odd else []
    return found


def _slips(off: Iterable[_Off]) -> list[list[_Off]]:
    alike: dict[tuple, list[_Off]] = {}
    for one in off:
        alike.setdefault(one.alike, []).append(one)
    return list(alike.values())


def _built(same: list[_Off], cabinet: Cabinet, planned: tuple[Finding, ...], dry_fit: Judge) -> Difference:
    lines: dict[int, list[_Off]] = {}
    for one in same:
        lines.setdefault(one.line, []).append(one)
    told = tuple((line, text) for line, offs in lines.items() for text in _told(offs, cabinet))
    boards = all_of([one.board for one in same], cabinet)
    slip = same[0].slip
    what = f"{boards} {slip}" if boards.startswith(("both ", "all ")) and not same[0].cuts else f"{boards}, {slip}"
    return Difference(told, what, _dry_fitted(same, cabinet, planned, dry_fit))


def _told(offs: list[_Off], cabinet: Cabinet) -> list[str]:
    """One sentence for boards of a line that are off by the same sizes."""
    texts: dict[str, list[Board]] = {}
    for one in offs:
        texts.setdefault(one.text, []).append(one.board)
    return [all_of(boards, cabinet) + text for text, boards in texts.items()]


def _dry_fitted(off: list[_Off], cabinet: Cabinet, planned: tuple[Finding, ...], dry_fit: Judge) -> tuple[str, ...]:
    sizes = {
        one.board.name: tuple(size + change for size, change in zip(one.board.size, one.own, strict=True))
        for one in off
        if any(one.own)
    }
    built = refit(cabinet, sizes, {one.board.name: one.cuts for one in off if one.cuts})
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
    hung = {}
    for fitting in cabinet.hardware:
        if fitting.on in gone and fitting.group not in ("case", cabinet.by_name[fitting.on].group):
            hung.setdefault(fitting.group)
    if hung:
        would.append(f"{and_list(in_short(hung))} {'has' if len(hung) == 1 else 'have'} nothing to hang on there")
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
