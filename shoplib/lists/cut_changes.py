"""How a typed cut differs from the planned one, in words: its width, its depth, where it lies and where it stops."""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.lists.cut_words import channel_ways, cut_words
from shoplib.lists.cuts_read import ReadPhrase
from shoplib.lists.sides import datum_side, outline_of, side_name
from shoplib.lists.slanting import slant_of
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, share
from shoplib.model.board import Board, BoxCut, Cut, Hole, PrismCut
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet
from shoplib.words.amounts import how_much, setting
from shoplib.words.naming import plural

SETTABLE = {"in": INCH // 500, "mm": MM // 20}
"""As `measure.write_brief`: nothing finer is told of a width or a depth."""

_TOO_FAR = (("too far left", "too far right"), ("too far forward", "too far back"), ("low", "high"))


def receives(cut: Cut, cabinet: Cabinet) -> str:
    """What the board that goes into the cut does; empty where none goes in."""
    board = cabinet.by_name.get(cut.for_board)
    return (board.role or board.name) if board else cut.for_board


@dataclass(frozen=True, slots=True)
class Change:
    """How a cut differs; `slip` is empty where it is in another side of the board, and so another cut."""

    what: str
    sentence: str
    slip: str


def goes_in(cut: Cut, typed_for: str, cabinet: Cabinet) -> bool:
    """Whether the typed words may name what goes into the cut: its role or name, or nothing that the cabinet has."""
    role = receives(cut, cabinet)
    if typed_for in ("", role, plural(role), cut.for_board):
        return True
    known = {word for board in cabinet.boards for word in (board.role, plural(board.role), board.name)}
    return typed_for not in known


def change(planned: Cut, typed: Cut, said: ReadPhrase, board: Board, cabinet: Cabinet) -> Change | None:
    """How a cut typed in a phrase differs from the planned one; None where it does not."""
    role = receives(planned, cabinet)
    noun = planned.kind if not isinstance(planned, Hole) or planned.kind.endswith("hole") else f"{planned.kind} hole"
    what = f"{noun}{f' for the {role}' if role else ''}"
    if isinstance(planned, Hole):
        parts = list(_hole_parts(planned, typed, board, cabinet))
    elif isinstance(planned, PrismCut):
        parts = list(_pocket_parts(planned, typed, board, cabinet))
    else:
        now, then = channel_ways(typed, board), channel_ways(planned, board)
        if typed.kind != planned.kind or now != then or _open(typed, board, then) != _open(planned, board, then):
            (meant,) = cut_words(board, cabinet, Writing(cabinet.style), (planned,))
            return Change(what, f"is typed as `{said.text}`, planned {meant}", "")
        if then:
            parts = list(_channel_parts(planned, typed, then, board, cabinet))
        else:
            parts = list(_notch_parts(planned, typed, board, cabinet))
    if role and not goes_in(planned, said.receives, cabinet):
        parts.append((f"is typed as for the {said.receives}", f"typed as for the {said.receives}"))
    if not parts:
        return None
    return Change(what, " and ".join(full for full, _ in parts), f"{what} {' and '.join(short for _, short in parts)}")


def _open(cut: BoxCut, board: Board, ways: tuple[int, int, int] | None) -> list[tuple[bool, bool]]:
    """Which sides of the board the cut runs out of, but for where it stops along its run."""
    return [(cut.low[own] <= 0, cut.high[own] >= board.size[own]) for own in (ways[:2] if ways else (0, 1))]


Part = tuple[str, str]
"""What differs, in full with the planned value, and in a few words."""


def _channel_parts(
    planned: BoxCut, typed: BoxCut, ways: tuple[int, int, int], board: Board, cabinet: Cabinet
) -> Iterator[Part]:
    deep, wide, run = ways
    exact, place = SETTABLE[cabinet.style.unit], cabinet.style.step // 2
    writing = Writing(cabinet.style)
    for own, more, less in ((wide, "wide", "narrow"), (deep, "deep", "shallow")):
        now, then = typed.high[own] - typed.low[own], planned.high[own] - planned.low[own]
        if abs(now - then) > exact:
            write = writing.measured if planned.for_board and own == wide else writing.setting
            amount = setting(abs(now - then), cabinet.style)
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


def _notch_parts(planned: BoxCut, typed: BoxCut, board: Board, cabinet: Cabinet) -> Iterator[Part]:
    place, writing = cabinet.style.step // 2, Writing(cabinet.style)
    for own, along in ((0, "along the length"), (1, "across")):
        now, then = typed.high[own] - typed.low[own], planned.high[own] - planned.low[own]
        if abs(now - then) > place:
            yield f"is {writing.length(now)} {along}, planned {writing.length(then)}", f"{writing.length(now)} {along}"
        side = datum_side(board, own)
        now, then = (cut.low[own] if side < 0 else board.size[own] - cut.high[own] for cut in (typed, planned))
        if planned.low[own] > 0 and planned.high[own] < board.size[own] and abs(now - then) > place:
            yield _moved(now, then, board, own, cabinet)


def _pocket_parts(planned: PrismCut, typed: PrismCut, board: Board, cabinet: Cabinet) -> Iterator[Part]:
    exact, place = SETTABLE[cabinet.style.unit], cabinet.style.step // 2
    writing = Writing(cabinet.style)
    now, then = slant_of(typed, board), slant_of(planned, board)
    if (now.face, now.end) != (then.face, then.end):
        yield "is drilled from another face or end than planned", "drilled from another side"
        return
    wide = (typed.end - typed.start, planned.end - planned.start)
    for what, (one, other) in (("across", wide), ("of web", (now.web, then.web))):
        if abs(one - other) > exact:
            said = f"{writing.setting(one)} {what}"
            yield f"is {said}, planned {writing.setting(other)}", said
    if now.angle != then.angle:
        yield f"leans {now.angle} degrees, planned {then.angle}", f"leaning {now.angle} degrees"
    side = datum_side(board, 1)
    from_side = [
        share(cut.start + cut.end, 2, 1)[0] if side < 0 else board.width - share(cut.start + cut.end, 2, 1)[0]
        for cut in (typed, planned)
    ]
    if abs(from_side[0] - from_side[1]) > place:
        yield _moved(*from_side, board, 1, cabinet)


def _hole_parts(planned: Hole, typed: Hole, board: Board, cabinet: Cabinet) -> Iterator[Part]:
    exact, place = SETTABLE[cabinet.style.unit], cabinet.style.step // 2
    writing = Writing(cabinet.style)
    if typed.along != planned.along:
        yield "is bored from another side than planned", "bored from another side"
        return
    deep = "uvw".index(planned.along)
    if abs(typed.diameter - planned.diameter) > exact:
        now, then = writing.bored(typed.diameter), writing.bored(planned.diameter)
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
