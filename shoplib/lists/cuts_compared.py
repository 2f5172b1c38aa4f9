"""The cuts that a typed row asks for, held against those of the plan, and put on the boards.

Each cut that is read (`cuts_read`) is set beside the planned cut that it is most like. A width or depth that
takes a board agrees within what a shop can set, a place within half the project's finest step. What
differs gives a sentence, and the boards with the cuts as typed, for the dry-fit.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace

from shoplib.lists.cut_changes import SETTABLE, change, goes_in, receives
from shoplib.lists.cut_list import HALF_TURNS
from shoplib.lists.cut_words import cut_words
from shoplib.lists.cuts_read import CannotBeCut, NotRead, ReadPhrase, read_phrase
from shoplib.lists.writing import Writing
from shoplib.measure import MM, to_step
from shoplib.model.board import Board, BoxCut, Cut, Hole, PrismCut
from shoplib.model.solved import Cabinet

_CLAUSES = (r"\bwide\b", r"\bdeep\b", r"\bin(?:to)? the\b", r"(?<!stopped )\b(?:from|along|with) the\b", r"\bstopped\b")
"""What tells the parts of a phrase apart: width, depth, side, place, where it stops."""

_UNLIKE = 10_000 * MM
"""What another kind of cut weighs against its place, so that like cuts are set beside each other first."""


@dataclass(frozen=True)
class CutsOff:
    """What differs in the cuts of one row.

    `sentences` tell of cuts that are changed or added, without the name of the board; `slip` in a few
    words. `typed` holds, by name of board, its cuts as typed: the planned ones in their order, then those
    that the plan does not have. `missing` are planned cuts of the first board that the row leaves out or has
    somewhere else altogether, told in `left_out`; `unread` the phrases not understood, `impossible` those
    that the board has no wood for.
    """

    sentences: tuple[str, ...] = ()
    slip: str = ""
    typed: tuple[tuple[str, tuple[Cut, ...]], ...] = ()
    missing: tuple[Cut, ...] = ()
    left_out: str = ""
    unread: tuple[str, ...] = ()
    impossible: tuple[str, ...] = ()


def cuts_off(text: str, boards: tuple[Board, ...], cabinet: Cabinet) -> CutsOff:
    """What a cell of cuts says otherwise than the plan of these boards, which are cut alike.

    An empty cell and `none` both say that nothing is cut.
    """
    board, exact = boards[0], Writing(cabinet.style, exact=True)
    read, unread, impossible = _read(text, board, cabinet)
    pairs, added = _paired([(cut, one) for one in read for cut in one.cuts], board, cabinet)
    missing = [] if unread or impossible else [cut for at, cut in enumerate(board.cuts) if at not in pairs]
    planned = "; ".join(cut_words(board, cabinet, Writing(cabinet.style), missing))
    left_out = [f"cuts leave out {planned}" if read else f"no cuts, planned {planned}"] if missing else []
    changes, new = [], list(board.cuts)
    for at, (typed, phrase) in sorted(pairs.items()):
        off = change(board.cuts[at], typed, phrase, board, cabinet)
        if off and off.slip:
            changes.append(off)
            new[at] = _as_made(board.cuts[at], typed, cabinet)
        elif off:
            left_out.append(f"the {off.what} {off.sentence}")
            missing.append(board.cuts[at])
    sentences = [f"the {one.what} {one.sentence}" for one in changes]
    for phrase in dict.fromkeys(one.text for _, one in added):
        sentences.append(f"cuts add {phrase}")
    typed = (*new, *(cut for cut, _ in added))
    turned = [one for one in boards if cut_words(one, cabinet, exact) != cut_words(board, cabinet, exact)]
    if _placed_otherwise(board.cuts, new) and any(one.size == board.size for one in turned):
        sentences.append(f"told of {board.name}; the others of the line are the same board, turned")
    slip = " and ".join(dict.fromkeys(one.slip for one in changes)) or ("with the added cut" if added else "")
    on_boards = tuple(_on_each(text, boards, typed, cabinet)) if changes or added else ()
    told = tuple(dict.fromkeys(sentences))
    return CutsOff(told, slip, on_boards, tuple(missing), "; ".join(left_out), unread, impossible)


def _placed_otherwise(planned: tuple[Cut, ...], made: list[Cut]) -> bool:
    """True where a cut lies elsewhere along or across the board, which is mirrored where that board lies turned."""
    boxes = [pair for pair in zip(planned, made, strict=True) if isinstance(pair[0], BoxCut)]
    return any(one.low[own] + one.high[own] != new.low[own] + new.high[own] for one, new in boxes for own in (0, 1))


def _read(text: str, board: Board, cabinet: Cabinet) -> tuple[list[ReadPhrase], tuple[str, ...], tuple[str, ...]]:
    """The phrases that are read, those that are not, and those that ask for wood that the board has not."""
    read, unread, impossible = [], [], []
    for phrase in (part.strip() for part in text.split(";")):
        if not phrase or phrase.casefold() in ("none", "-", "no cuts") or phrase.startswith("(sides named as"):
            continue
        try:
            read.append(_read_one(phrase, board, cabinet))
        except NotRead:
            unread.append(phrase)
        except CannotBeCut:
            impossible.append(phrase)
    return read, tuple(unread), tuple(impossible)


def _read_one(phrase: str, board: Board, cabinet: Cabinet) -> ReadPhrase:
    """The phrase as it stands, else with what it does not say as planned."""
    try:
        return read_phrase(phrase, board, cabinet)
    except NotRead:
        return replace(read_phrase(_completed(phrase, board, cabinet), board, cabinet), text=phrase)


def _completed(phrase: str, board: Board, cabinet: Cabinet) -> str:
    """The phrase with what it does not say as planned, where only one planned cut of its kind can be meant.

    Unchanged where none or several can.
    """
    exact, plain = Writing(cabinet.style, exact=True), " ".join(phrase.casefold().split())
    meant = []
    for cut in board.cuts:
        (words,) = cut_words(board, cabinet, exact, (cut,))
        role = receives(cut, cabinet)
        same = re.match(rf"{words.split()[0]}\b", plain)
        if same and (f" for the {role}" in plain or f" for {role}" in plain or " for " not in plain):
            meant.append(words)
    if len(meant) != 1:
        return phrase
    said = [part for part in _CLAUSES if re.search(part, plain)]
    unsaid = [clause for clause in meant[0].split(", ") if not any(re.search(part, clause) for part in said)]
    if not re.search(_CLAUSES[0], plain):  # the first clause opens with the name of the cut
        unsaid = [clause.partition(" ")[2] if clause.startswith(meant[0].split()[0]) else clause for clause in unsaid]
    return ", ".join([phrase, *unsaid])


Said = tuple[Cut, ReadPhrase]


def _paired(read: list[Said], board: Board, cabinet: Cabinet) -> tuple[dict[int, Said], list[Said]]:
    """Each planned cut (by its number) with the typed one that is most like it; typed ones without a partner."""
    close = []
    for number, (cut, phrase) in enumerate(read):
        for at, planned in enumerate(board.cuts):
            apart = _apart(planned, cut, phrase, cabinet)
            if apart is not None:
                close.append((apart, at, number))
    pairs: dict[int, Said] = {}
    used: set[int] = set()
    for _, at, number in sorted(close):
        if at not in pairs and number not in used:
            pairs[at] = read[number]
            used.add(number)
    told = {_place(board.cuts[at]): said for at, said in pairs.items()}
    for at, planned in enumerate(board.cuts):  # one cut that takes two boards is told once
        if at not in pairs and _place(planned) in told:
            pairs[at] = told[_place(planned)]
    return pairs, [one for number, one in enumerate(read) if number not in used]


def _apart(planned: Cut, cut: Cut, phrase: ReadPhrase, cabinet: Cabinet) -> int | None:
    """How unlike two cuts are; None where they are nothing to each other."""
    if type(planned) is not type(cut):
        return None
    same_kind = planned.kind.removesuffix(" hole") == cut.kind
    same_role = goes_in(planned, phrase.receives, cabinet)
    if not same_kind and not (same_role and phrase.receives):
        return None
    places = (planned.low + planned.high, cut.low + cut.high) if not isinstance(cut, Hole) else (
        planned.centre, cut.centre
    )  # fmt: skip
    apart = sum(abs(one - other) for one, other in zip(*places, strict=True))
    return apart + _UNLIKE * ((not same_kind) + (not same_role))


def _as_made(planned: Cut, typed: Cut, cabinet: Cabinet) -> Cut:
    """The planned cut with what is typed otherwise: moved by whole steps, since nobody types the rests."""
    exact, place = SETTABLE[cabinet.style.unit], cabinet.style.step // 2
    if not isinstance(planned, BoxCut):
        return replace(typed, kind=planned.kind, for_board=planned.for_board)
    low, high = [], []
    for was, end, now, til in zip(planned.low, planned.high, typed.low, typed.high, strict=True):
        if abs((til - now) - (end - was)) <= exact:
            move = to_step(now - was, cabinet.style.step)
            low.append(was + move)
            high.append(end + move)
        else:
            low.append(was if abs(now - was) <= place else now)
            high.append(end if abs(til - end) <= place and low[-1] != was else til)
    return replace(planned, low=tuple(low), high=tuple(high))


def _on_each(
    text: str, boards: tuple[Board, ...], typed: tuple[Cut, ...], cabinet: Cabinet
) -> Iterator[tuple[str, tuple[Cut, ...]]]:
    """The typed cuts on the first board, and on the others: by their own words, or turned as they lie there."""
    board, exact = boards[0], Writing(cabinet.style, exact=True)
    yield board.name, typed
    words = cut_words(board, cabinet, exact)
    for other in boards[1:]:
        if cut_words(other, cabinet, exact) == words:
            yield from cuts_off(text, (other,), cabinet).typed
        else:
            cuts = _turned_onto(other, board, typed)
            if cuts is not None:
                yield other.name, cuts


def _turned_onto(other: Board, board: Board, typed: tuple[Cut, ...]) -> tuple[Cut, ...] | None:
    """None where the other board is not cut as the first one is, however it is turned."""
    if other.size != board.size or len(other.cuts) != len(board.cuts):
        return None
    for turn in HALF_TURNS:
        places = {_place(cut): cut for cut in other.cuts}
        turned = [_turn(cut, board, turn) for cut in typed]
        planned = [places.get(_place(_turn(cut, board, turn))) for cut in board.cuts]
        if all(planned):
            twins = [replace(cut, for_board=twin.for_board) for cut, twin in zip(turned, planned, strict=False)]
            in_order = dict(zip(map(_place, planned), twins, strict=True))
            return (*(in_order[_place(cut)] for cut in other.cuts), *turned[len(planned) :])
    return None


def _place(cut: Cut) -> tuple:
    if isinstance(cut, Hole):
        return cut.kind, cut.centre, cut.diameter, cut.depth
    return cut.kind, cut.low, cut.high


def _turn(cut: Cut, board: Board, turn: tuple[int, int, int]) -> Cut:
    def ends(low: int, high: int, own: int) -> tuple[int, int]:
        return (board.size[own] - high, board.size[own] - low) if turn[own] else (low, high)

    if isinstance(cut, Hole):
        return replace(cut, centre=tuple(ends(at, at, own)[0] for own, at in enumerate(cut.centre)))
    if isinstance(cut, PrismCut):
        own = "uvw".index(cut.along)
        outline = tuple(
            tuple(ends(corner[k], corner[k], (own + 1 + k) % 3)[0] for k in (0, 1)) for corner in cut.outline
        )
        start, end = ends(cut.start, cut.end, own)
        return replace(cut, outline=outline, start=start, end=end)
    spans = [ends(low, high, own) for own, (low, high) in enumerate(zip(cut.low, cut.high, strict=True))]
    return replace(cut, low=tuple(low for low, _ in spans), high=tuple(high for _, high in spans))
