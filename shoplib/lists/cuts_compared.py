"""The cuts that a typed row asks for, held against those of the plan, and put on the boards.

Each cut that is read (`cuts_read`) is set beside the planned cut that it is most like. A width or depth that
takes a board agrees within what a shop can set, a place within half the project's finest step. What
differs gives a sentence, and the boards with the cuts as typed, for the dry-fit.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from shoplib.lists.cut_list import HALF_TURNS
from shoplib.lists.cut_words import channel_ways, cut_words
from shoplib.lists.cuts_read import CannotBeCut, NotRead, ReadPhrase, read_phrase
from shoplib.lists.sides import datum_side, outline_of, side_name
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, to_step
from shoplib.model.board import Board, BoxCut, Cut, Hole
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet
from shoplib.words.amounts import how_much

_SETTABLE = {"in": INCH // 500, "mm": MM // 20}
"""As `measure.write_brief`: nothing finer is told of a width or a depth."""

_TOO_FAR = (("too far left", "too far right"), ("too far forward", "too far back"), ("low", "high"))

_UNLIKE = 10_000 * MM
"""What another kind of cut weighs against its place, so that like cuts are set beside each other first."""


@dataclass(frozen=True)
class CutsOff:
    """What differs in the cuts of one row.

    `sentences` tell of cuts that are changed or added, without the name of the board; `slip` in a few
    words. `typed` holds, by name of board, its cuts as typed: the planned ones in their order, then those
    that the plan does not have. `missing` are planned cuts of the first board that the row leaves out,
    told in `left_out`; `unread` the phrases not understood, `impossible` those that the board has no wood for.
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
    board = boards[0]
    read, unread, impossible = _read(text, board, cabinet)
    pairs, added = _paired([(cut, one) for one in read for cut in one.cuts], board, cabinet)
    missing = () if unread or impossible else tuple(cut for at, cut in enumerate(board.cuts) if at not in pairs)
    changes, new, sentences = [], list(board.cuts), []
    for at, (typed, phrase) in sorted(pairs.items()):
        change = _change(board.cuts[at], typed, phrase, board, cabinet)
        if change:
            changes.append(change)
            new[at] = _as_made(board.cuts[at], typed, cabinet)
    sentences += [f"the {one.what} {one.sentence}" for one in changes]
    planned = "; ".join(cut_words(board, cabinet, Writing(cabinet.style), missing))
    left_out = f"cuts leave out {planned}" if read else f"no cuts, planned {planned}"
    for phrase in dict.fromkeys(one.text for _, one in added):
        sentences.append(f"cuts add {phrase}")
    typed = (*new, *(cut for cut, _ in added))
    slip = " and ".join(dict.fromkeys(one.slip for one in changes)) or ("with the added cut" if added else "")
    on_boards = tuple(_on_each(text, boards, typed, cabinet)) if changes or added else ()
    return CutsOff(tuple(dict.fromkeys(sentences)), slip, on_boards, missing, left_out, unread, impossible)


def _read(text: str, board: Board, cabinet: Cabinet) -> tuple[list[ReadPhrase], tuple[str, ...], tuple[str, ...]]:
    """The phrases that are read, those that are not, and those that ask for wood that the board has not."""
    read, unread, impossible = [], [], []
    for phrase in (part.strip() for part in text.split(";")):
        if not phrase or phrase.casefold() in ("none", "-", "no cuts") or phrase.startswith("(sides named as"):
            continue
        try:
            read.append(read_phrase(phrase, board, cabinet))
        except NotRead:
            unread.append(phrase)
        except CannotBeCut:
            impossible.append(phrase)
    return read, tuple(unread), tuple(impossible)


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
    return pairs, [one for number, one in enumerate(read) if number not in used]


def _apart(planned: Cut, cut: Cut, phrase: ReadPhrase, cabinet: Cabinet) -> int | None:
    """How unlike two cuts are; None where they are nothing to each other."""
    if isinstance(planned, Hole) != isinstance(cut, Hole):
        return None
    same_kind = planned.kind.removesuffix(" hole") == cut.kind
    same_role = not phrase.receives or _receives(planned, cabinet) == phrase.receives
    if not same_kind and not (same_role and phrase.receives):
        return None
    places = (planned.low + planned.high, cut.low + cut.high) if isinstance(cut, BoxCut) else (
        planned.centre, cut.centre
    )  # fmt: skip
    apart = sum(abs(one - other) for one, other in zip(*places, strict=True))
    return apart + _UNLIKE * ((not same_kind) + (not same_role))


def _receives(cut: Cut, cabinet: Cabinet) -> str:
    board = cabinet.by_name.get(cut.for_board)
    return (board.role or board.name) if board else cut.for_board


def _as_made(planned: Cut, typed: Cut, cabinet: Cabinet) -> Cut:
    """The planned cut with what is typed otherwise: moved by whole steps, since nobody types the rests."""
    exact, place = _SETTABLE[cabinet.style.unit], cabinet.style.step // 2
    if isinstance(planned, Hole):
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


@dataclass(frozen=True, slots=True)
class _Change:
    what: str
    sentence: str
    slip: str


def _change(planned: Cut, typed_as: Cut, phrase: ReadPhrase, board: Board, cabinet: Cabinet) -> _Change | None:
    role = _receives(planned, cabinet)
    noun = planned.kind if isinstance(planned, BoxCut) or planned.kind.endswith("hole") else f"{planned.kind} hole"
    what = f"{noun}{f' for the {role}' if role else ''}"
    if isinstance(planned, Hole):
        parts = list(_hole_parts(planned, typed_as, board, cabinet))
    else:
        now, then = channel_ways(typed_as, board), channel_ways(planned, board)
        if typed_as.kind != planned.kind or now != then or _open(typed_as, board, then) != _open(planned, board, then):
            (meant,) = cut_words(board, cabinet, Writing(cabinet.style), (planned,))
            return _Change(what, f"is typed as `{phrase.text}`, planned {meant}", f"{what} typed otherwise")
        parts = list(_channel_parts(planned, typed_as, then or (2, 0, 1), board, cabinet))
    if not parts:
        return None
    return _Change(what, " and ".join(full for full, _ in parts), f"{what} {' and '.join(short for _, short in parts)}")


def _open(cut: BoxCut, board: Board, ways: tuple[int, int, int] | None) -> list[tuple[bool, bool]]:
    """Which sides of the board the cut runs out of, but for where it stops along its run."""
    return [(cut.low[own] <= 0, cut.high[own] >= board.size[own]) for own in (ways[:2] if ways else (0, 1))]


Part = tuple[str, str]
"""What differs, in full with the planned value, and in a few words."""


def _channel_parts(
    planned: BoxCut, typed: BoxCut, ways: tuple[int, int, int], board: Board, cabinet: Cabinet
) -> Iterator[Part]:
    deep, wide, run = ways
    exact, place = _SETTABLE[cabinet.style.unit], cabinet.style.step // 2
    writing = Writing(cabinet.style)
    notch = channel_ways(planned, board) is None
    for own, more, less in ((wide, "wide", "narrow"), (deep, "deep", "shallow")):
        now, then = typed.high[own] - typed.low[own], planned.high[own] - planned.low[own]
        if abs(now - then) > exact and not (notch and own == 2):
            write = writing.measured if planned.for_board and own == wide else writing.setting
            amount = how_much(abs(now - then), cabinet.style)
            yield (
                f"is {write(now)} {more}, planned {write(then)}: {amount} {more if now > then else less}",
                f"{amount} {more if now > then else less}",
            )
    inside = planned.low[wide] > 0 and planned.high[wide] < board.size[wide]
    side = datum_side(board, wide)
    now, then = (cut.low[wide] if side < 0 else board.size[wide] - cut.high[wide] for cut in (typed, planned))
    if inside and abs(now - then) > place:
        yield _moved(now, then, board, wide, cabinet)
    for side, now, then in (
        (-1, typed.low[run], planned.low[run]),
        (1, board.size[run] - typed.high[run], board.size[run] - planned.high[run]),
    ):
        if abs(now - then) > place:
            name = side_name(board, run, side, outline_of(board, cabinet))
            stop = f"stops {writing.length(now)} from the {name}" if now else f"runs out of the {name}"
            meant = f"planned {writing.length(then)}" if then else "planned to run out there"
            yield f"{stop}, {meant}", f"{stop}"


def _hole_parts(planned: Hole, typed: Hole, board: Board, cabinet: Cabinet) -> Iterator[Part]:
    exact, place = _SETTABLE[cabinet.style.unit], cabinet.style.step // 2
    writing = Writing(cabinet.style)
    if typed.along != planned.along:
        yield "is bored from another side than planned", "bored from another side"
        return
    deep = "uvw".index(planned.along)
    if abs(typed.diameter - planned.diameter) > exact:
        now, then = writing.setting(typed.diameter), writing.setting(planned.diameter)
        yield f"is {now} across, planned {then}", f"{now} across"
    through = board.size[deep]
    now, then = (min(hole.depth, through) for hole in (typed, planned))
    if abs(now - then) > exact:
        words = ["right through" if one == through else f"{writing.setting(one)} deep" for one in (now, then)]
        yield f"is {words[0]}, planned {words[1]}", words[0]
    if abs(typed.centre[deep] - planned.centre[deep]) > place:
        yield "is bored from the other face than planned", "bored from the other face"
    for own in range(3):
        if own != deep:
            side = datum_side(board, own)
            now, then = (one.centre[own] if side < 0 else board.size[own] - one.centre[own] for one in (typed, planned))
            if abs(now - then) > place:
                yield _moved(now, then, board, own, cabinet)


def _moved(now: int, then: int, board: Board, own: int, cabinet: Cabinet) -> Part:
    """How far a cut lies from the side that it is measured from, and by how much that is too much."""
    name = side_name(board, own, datum_side(board, own), outline_of(board, cabinet))
    writing = Writing(cabinet.style)
    amount = how_much(abs(now - then), cabinet.style)
    axis, _ = directions(board.placement.axes)[own]
    where = f"{amount} {_TOO_FAR[axis][now > then]}"
    at = f"is {writing.length(now)} from the {name}" if now else f"is flush with the {name}"
    return f"{at}, planned {writing.length(then)}: {where}", where


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
    return (cut.kind, cut.low, cut.high) if isinstance(cut, BoxCut) else (cut.kind, cut.centre, cut.diameter, cut.depth)


def _turn(cut: Cut, board: Board, turn: tuple[int, int, int]) -> Cut:
    def ends(low: int, high: int, own: int) -> tuple[int, int]:
        return (board.size[own] - high, board.size[own] - low) if turn[own] else (low, high)

    if isinstance(cut, Hole):
        return replace(cut, centre=tuple(ends(at, at, own)[0] for own, at in enumerate(cut.centre)))
    spans = [ends(low, high, own) for own, (low, high) in enumerate(zip(cut.low, cut.high, strict=True))]
    return replace(cut, low=tuple(low for low, _ in spans), high=tuple(high for _, high in spans))
