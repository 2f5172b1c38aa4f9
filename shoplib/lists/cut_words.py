"""The cuts of a board in words, as they are set out on the bench.

A place is measured from the left, front or bottom side of the finished board to the near wall of the
cut (holes: to the centre). Equal cuts at several places are told once.
"""

from dataclasses import dataclass

from shoplib.lists.sides import datum_side, side_name
from shoplib.measure import write_length
from shoplib.model.board import Board, BoxCut, Hole
from shoplib.model.box import Box, Point, around
from shoplib.model.solved import Cabinet

_PLURALS = {"dado": "dadoes", "notch": "notches"}


@dataclass(frozen=True, slots=True)
class _Phrase:
    """What a cut is (`noun`, `size`), at which `place` and from where, and its `tail`."""

    noun: str
    size: str
    place: str
    reference: str
    tail: str


def cut_words(board: Board, cabinet: Cabinet) -> tuple[str, ...]:
    """One phrase for each kind of cut in the board, in the cabinet's style."""
    box_parts = [part for part in cabinet.groups[board.group] if part.stage == board.stage]
    outline = around([part.box for part in box_parts])
    return _merged([_phrase(cut, board, cabinet, outline) for cut in board.cuts])


def and_list(words: list[str] | tuple[str, ...]) -> str:
    """The words with commas, and `and` before the last.

    >>> and_list(["top", "bottom", "back"])
    'top, bottom and back'
    """
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)


def plural(noun: str) -> str:
    """More than one of it.

    >>> plural("dado"), plural("box side"), plural("box bottom")
    ('dadoes', 'box sides', 'box bottoms')
    """
    return _PLURALS.get(noun, "shelves".join(noun.rsplit("shelf", 1)) if noun.endswith("shelf") else f"{noun}s")


def _merged(phrases: list[_Phrase]) -> tuple[str, ...]:
    alike: dict[tuple, list[str]] = {}
    for phrase in phrases:
        places = alike.setdefault((phrase.noun, phrase.size, phrase.reference, phrase.tail), [])
        places.append(phrase.place)
    told = []
    for (noun, size, reference, tail), places in alike.items():
        head = f"{noun} {size}" if len(places) == 1 else f"{len(places)} {plural(noun)} {size}"
        where = f"{and_list(places)} {reference}".strip() if places[0] else reference
        told.append(", ".join(part for part in (head, where, tail) if part))
    return tuple(told)


def _phrase(cut: BoxCut | Hole, board: Board, cabinet: Cabinet, outline: Box) -> _Phrase:
    if isinstance(cut, Hole):
        return _hole(cut, board, cabinet, outline)
    spans = [_span(cut, board, own) for own in range(3)]
    open_faces = [own for own in (2, 1, 0) if spans[own] in ("low", "high")]
    if spans[2] == "through" or not open_faces:
        return _notch(cut, board, cabinet, spans)
    deep = open_faces[0]
    return _channel(cut, board, cabinet, outline, spans, deep)


def _span(cut: BoxCut, board: Board, own: int) -> str:
    """Where along one own axis the cut runs out of the board: through, low, high, or inside."""
    low, high = cut.low[own] <= 0, cut.high[own] >= board.size[own]
    return {(True, True): "through", (True, False): "low", (False, True): "high"}.get((low, high), "inside")


def _channel(cut: BoxCut, board: Board, cabinet: Cabinet, outline: Box, spans: list[str], deep: int) -> _Phrase:
    """A dado, groove or rabbet: sunk into one side, `wide` across, running along the third axis."""

    def write(ticks: int) -> str:
        return write_length(ticks, cabinet.style)

    extent = [high - low for low, high in zip(cut.low, cut.high, strict=True)]
    run = _run(cut, spans, deep, extent)
    wide = 3 - deep - run
    face = side_name(board, deep, -1 if spans[deep] == "low" else 1, outline)
    size = f"{write(extent[wide])} wide, {write(extent[deep])} deep{_receives(cut, cabinet)}, in the {face}"
    if spans[wide] in ("low", "high"):
        side = -1 if spans[wide] == "low" else 1
        place, reference = "", f"along the {side_name(board, wide, side, outline)}"
    else:
        place, reference = _place(cut.low, cut.high, board, wide, cabinet, outline)
    stops = [
        f"stopped {write(rest)} from the {side_name(board, run, side, outline)}"
        for side, rest in ((-1, cut.low[run]), (1, board.size[run] - cut.high[run]))
        if rest > 0
    ]
    return _Phrase(cut.kind, size, place, reference, ", ".join(stops))


def _run(cut: BoxCut, spans: list[str], deep: int, extent: list[int]) -> int:
    """The axis that the cut runs along: right through; else a dado across the grain, a groove with it."""
    others = [own for own in range(3) if own != deep]
    through = [own for own in others if spans[own] == "through"]
    if len(through) == 1:
        return through[0]
    by_kind = {"dado": 1, "groove": 0}.get(cut.kind)
    return by_kind if by_kind in others else max(others, key=lambda own: extent[own])


def _notch(cut: BoxCut, board: Board, cabinet: Cabinet, spans: list[str]) -> _Phrase:
    """Wood taken out through the whole thickness: at a corner, out of one side, or inside."""
    sizes, corner, places = [], [], []
    for own in (0, 1):
        sizes.append(write_length(cut.high[own] - cut.low[own], cabinet.style))
        if spans[own] in ("low", "high"):
            corner.append(side_name(board, own, -1 if spans[own] == "low" else 1))
        elif spans[own] == "inside":
            places.append(" ".join(_place(cut.low, cut.high, board, own, cabinet, None)))
    size = f"{sizes[0]} along the length x {sizes[1]} across{_receives(cut, cabinet)}"
    where = f"at the {and_list(corner)}" if corner else ""
    return _Phrase(cut.kind, size, "", ", ".join(part for part in (where, *places) if part), "")


def _hole(hole: Hole, board: Board, cabinet: Cabinet, outline: Box) -> _Phrase:
    deep = "uvw".index(hole.along)
    side = -1 if hole.centre[deep] <= 0 else 1
    through = hole.depth >= board.size[deep]
    depth = "right through" if through else f"{write_length(hole.depth, cabinet.style)} deep"
    size = f"{write_length(hole.diameter, cabinet.style)} across, {depth}{_receives(hole, cabinet)}"
    size += f", from the {side_name(board, deep, side, outline)}"
    across, along = [own for own in (1, 0, 2) if own != deep][:2]
    fixed = " ".join(_place(hole.centre, hole.centre, board, across, cabinet, outline))
    place, reference = _place(hole.centre, hole.centre, board, along, cabinet, outline)
    noun = hole.kind if hole.kind.endswith("hole") else f"{hole.kind} hole"
    return _Phrase(noun, size, place, reference, fixed)


def _place(low: Point, high: Point, board: Board, own: int, cabinet: Cabinet, outline: Box | None) -> tuple[str, str]:
    """How far the near wall is from the datum side, and the words for that side."""
    side = datum_side(board, own)
    name = side_name(board, own, side, outline)
    distance = low[own] if side < 0 else board.size[own] - high[own]
    if distance == 0:
        return "flush", f"with the {name}"
    return write_length(distance, cabinet.style), f"from the {name}"


def _receives(cut: BoxCut | Hole, cabinet: Cabinet) -> str:
    """What enters the cut, by what it does: equal boards receive boards of different names."""
    entering = cabinet.by_name.get(cut.for_board)
    if entering is None:
        return f" for the {cut.for_board}" if cut.for_board else ""
    return f" for the {entering.role or entering.name}"
