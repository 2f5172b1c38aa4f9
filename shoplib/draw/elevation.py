"""The cabinet from the front, closed or with its fronts off."""

from dataclasses import replace
from itertools import pairwise

from shoplib.draw.chains import (
    ends,
    levels,
    not_within,
    rows,
    size_text,
    stacked,
    thicknesses,
    unit_note,
)
from shoplib.draw.look import FRONT, seen, visible
from shoplib.draw.scene import Chain, EdgeText, Item, Label, Rect, Scene
from shoplib.lists.writing import Writing
from shoplib.measure import Style, write_brief
from shoplib.model.board import Board
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet, Hardware
from shoplib.model.uprights import bays, uprights

_READ = "Openings, and the gaps in them, are as read at the lowest fronts; the whole is as planned."


def front_elevation(cabinet: Cabinet, style: Style, fronts: bool = True) -> Scene:
    """The front, with widths under it and heights beside it; `fronts=False` shows openings, boxes and slides.

    Every position is read off the boards. Raises ValueError where the cabinet has no boards.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> front_elevation(cabinet, cabinet.style).alt[:81]
    'Finger-jointed drawers seen from the front, closed: 400 mm wide and 280 mm high. '
    >>> front_elevation(cabinet, cabinet.style, fronts=False).title
    'Front elevation, fronts off: Finger-jointed drawers'
    """
    boards = [b for b in cabinet.boards if fronts or b.role != "front"]
    fittings = [h for h in visible(cabinet) if fronts or h.what != "pull"]
    whole = around([b.box for b in boards] + [h.box for h in fittings])
    bounds = FRONT.flat(whole)
    spaces = bays(cabinet)
    items: list[Item] = [*seen(boards, fittings, FRONT)]
    named = [b for b in boards if b.role == ("front" if fronts else "box front")]
    pulls = [h for h in fittings if h.what == "pull"]
    items += [_label(b, [h for h in pulls if h.group == b.group], style, bounds) for b in named]
    for number, (low, high) in enumerate(spaces, 1):
        if len(spaces) > 1:
            items.append(EdgeText((low, bounds[1], high, bounds[3]), "above", f"bay {number}"))
    read = _as_read(cabinet, _lowest_row(named)) if fronts else {}
    items += [_told_as_read(one, read, style) for one in _widths(cabinet, style, whole, named if fronts else [])]
    items += _heights(cabinet, style, whole, spaces, named if fronts else [])
    title = "Front elevation" if fronts else "Front elevation, fronts off"
    return Scene(
        f"{title}: {cabinet.name}", unit_note(style, _READ if read else ""),
        _alt(cabinet, style, whole, spaces, named, fronts), bounds, tuple(items),
    )


def _label(board: Board, pulls: list[Hardware], style: Style, bounds: Rect) -> Label:
    room = FRONT.flat(board.box)
    size = size_text(room, style)
    tall = size.replace(" × ", "\n× ")
    left, bottom, right, top = room
    for box in (FRONT.flat(p.box) for p in pulls):
        # The words stand in the taller of the two parts that the pull leaves free.
        if left < box[2] and box[0] < right and bottom < box[1] and box[3] < top:
            under = box[1] - bottom >= top - box[3]
            room = (left, bottom, right, box[1]) if under else (left, box[3], right, top)
    name = board.group if board.group != "case" else board.name
    short = name.removeprefix(f"{board.part_of.bay_name} ") if board.part_of else name
    left, bottom, right, top = FRONT.flat(board.box)
    off = left + right - bounds[0] - bounds[2]
    beside = "above" if abs(off) < right - left else "left" if off < 0 else "right"
    return Label(
        room, (*(f"{called}\n{written}" for called, written in ((name, size), (short, size), (short, tall),
                                                                (short, stacked(tall)))), f"{short}: {size}", short),
        sizes=((f"{board.name}, width", right - left), (f"{board.name}, height", top - bottom)),
        sides=(beside,),
    )


def _widths(cabinet: Cabinet, style: Style, whole: Box, fronts: list[Board]) -> list[Chain]:
    """Fronts with their gaps, then sides, bays and dividers, then the whole."""
    standing = ends(uprights(cabinet), 0)
    lowest = _lowest_row(fronts)
    beside = not_within(standing, [(b.box.low[0], b.box.high[0]) for b in lowest]) if lowest else []
    chains = [ends(lowest, 0) + beside, standing, (whole.low[0], whole.high[0])]
    return rows("below", chains, style, thicknesses(cabinet))


def _lowest_row(fronts: list[Board]) -> list[Board]:
    """For each position across, the lowest front."""
    lowest: list[Board] = []
    for board in sorted(fronts, key=lambda b: b.box.low[2]):
        if not any(o.box.low[0] < board.box.high[0] and board.box.low[0] < o.box.high[0] for o in lowest):
            lowest.append(board)
    return lowest


def _as_read(cabinet: Cabinet, lowest: list[Board]) -> dict[tuple[int, int], int]:
    """What is drawn where the plan has it and was measured: from where to where, and its size as built.

    The uprights stay where they were planned; between them are the openings that were read at the lowest fronts, and
    the gaps that the fronts leave in those.
    """
    if cabinet.project is None:
        return {}
    openings, gaps = cabinet.project.measured.latest, {gap.between: gap.size for gap in cabinet.gaps}
    found: dict[tuple[int, int], int] = {}
    for front in lowest:
        if (read := openings.get(front.part_of.opening)) is None:
            continue
        bay, (low, _, _), (high, _, _) = front.part_of.bay, front.box.low, front.box.high
        left, right = uprights(cabinet)[bay - 1:bay + 1]
        faces = left.box.high[0], right.box.low[0]
        found[faces] = read.front
        for at, names in (((faces[0], low), (left.name, front.name)), ((high, faces[1]), (front.name, right.name))):
            if names in gaps:
                found[at] = gaps[names]
    return found


def _told_as_read(told: Chain, read: dict[tuple[int, int], int], style: Style) -> Chain:
    """The dimensions with what was read instead of what was planned."""
    spans = list(pairwise(told.at))
    if not any(span in read for span in spans):
        return told
    page = Writing(style, units=False)
    texts = tuple(stacked(page.length(read[span])) if span in read else text
                  for span, text in zip(spans, told.texts, strict=True))
    return replace(told, texts=texts, sizes=tuple(read.get(span, span[1] - span[0]) for span in spans))


def _heights(cabinet: Cabinet, style: Style, whole: Box, spaces: list[tuple[int, int]],
             fronts: list[Board]) -> list[Chain]:
    """The first bay and the whole on the left; on the right the last bay, where it differs."""
    total = [whole.low[2], whole.high[2]]
    each = [set(_bay_heights(cabinet, low, high, fronts) + total) for low, high in spaces] or [set(total)]
    thick = thicknesses(cabinet)
    left = rows("left", [each[0], total], style, thick)
    return left if each[0] == each[-1] else left + rows("right", [each[-1]], style, thick)


def _bay_heights(cabinet: Cabinet, low: int, high: int, fronts: list[Board]) -> list[int]:
    here = [b for b in fronts if b.box.low[0] < high and low < b.box.high[0]]
    lying = ends(levels(cabinet, low, high), 2)
    return ends(here, 2) + not_within(lying, [(b.box.low[2], b.box.high[2]) for b in here])


def _alt(cabinet: Cabinet, style: Style, whole: Box, spaces: list[tuple[int, int]], named: list[Board],
         fronts: bool) -> str:
    """What the drawing shows, for those who do not see it."""
    wide, _, high = whole.size
    parts = [f"{cabinet.name} seen from the front, {'closed' if fronts else 'with the fronts off'}: "
             f"{write_brief(wide, style)} wide and {write_brief(high, style)} high."]
    if spaces:
        widths = ", ".join(write_brief(b - a, style) for a, b in spaces)
        parts.append(f"{_count(len(spaces), 'bay')} from left to right, {widths} wide.")
    if named:
        parts.append(f"{_count(len(named), 'front') if fronts else _count(len(named), 'drawer box', 'es')}.")
    return " ".join(parts)


def _count(number: int, word: str, ending: str = "s") -> str:
    return f"{number} {word}{ending if number != 1 else ''}"
