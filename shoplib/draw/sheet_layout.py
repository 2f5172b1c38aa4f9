"""A sheet with the parts that are cut from it: where each lies, the trim, the saw cuts, and what is left."""

from collections.abc import Iterator, Sequence

from shoplib.buying.held_back import held_back
from shoplib.buying.laid import LaidOut, LaidSheet, Piece
from shoplib.buying.numbering import numbered_steps
from shoplib.buying.piece_sizes import PieceSizes
from shoplib.buying.thickness import rough_words
from shoplib.draw.chains import unit_note
from shoplib.draw.look import fill_of
from shoplib.draw.scene import Chain, EdgeText, Item, Label, Line, Scene, Shape, Tag
from shoplib.draw.scene import Rect as Flat
from shoplib.layout.order import Step
from shoplib.layout.pieces import Rect
from shoplib.layout.sawn import SawCut
from shoplib.lists.writing import Writing
from shoplib.measure import Style, write_brief
from shoplib.words.amounts import setting
from shoplib.words.naming import and_list, boards_in_short

SAW_CUT, LEFT = "hardware", "back"
"""Fills: what the blade takes shows as the ground between all that is drawn on it; what is left is hatched."""


TIMES = " × "

_NARROW = 6
"""What is longer than so many times its width is drawn so low that its letters stand round it."""


def sheet_scenes(found: LaidOut) -> Iterator[tuple[LaidSheet, Scene]]:
    """All sheets in the order in which they are cut, each with the numbers of its steps, and what must come first.

    >>> from shoplib.buying.laid_out import laid_out
    >>> from shoplib.documents.examples import cabinet_from
    >>> found = laid_out(cabinet_from("finger_jointed_drawers"), 0)
    >>> [sheet.name for sheet, _ in sheet_scenes(found)][:4]
    ['case sheet 1', 'thin sheet 1', 'box sheet on hand 1', 'box sheet on hand 2']
    """
    style, steps, waiting = found.cabinet.style, numbered_steps(found), held_back(found)
    for sheet in found.sheets:
        scene, alarms = sheet_layout(sheet, style, steps[sheet.name]), waiting[sheet.name]
        yield sheet, scene.with_alarms(alarms) if alarms else scene


def sheet_layout(sheet: LaidSheet, style: Style, steps: Sequence[tuple[int, Step]] = ()) -> Scene:
    """The sheet as it lies on the bench: its length, which is the way of its grain, from left to right.

    Each part has the letter of its kind, and its name and size where they have room, as it lies: along the sheet, then
    across it. The legend has all of them, with the sizes of the cut list. Where the sheet has grain, an arrow shows it;
    a narrow one says it in words, for letters that have no room on their parts stand round it. Offcuts worth keeping
    have small letters. What no part, offcut or trimmed edge covers is what the saw takes.

    `steps` of the cut order, each with its number there, put that number on each of their cuts, and the legend says at
    which of them the pieces come off that are cut further.

    >>> from shoplib.buying.laid_out import laid_out
    >>> from shoplib.documents.examples import cabinet_from
    >>> found = laid_out(cabinet_from("finger_jointed_drawers"), 0)
    >>> sheet_layout(found.sheets[0], found.cabinet.style).title
    'case sheet 1: 2440 × 1220, 17.77 mm thick'
    """
    stock = sheet.stock
    whole = (0, 0, stock.length, stock.width)
    arrow = sheet.sheet.grain == "length" and stock.width * _NARROW > stock.length
    band = max(stock.length, stock.width) // 24 if arrow else 0
    kept, sizes = sheet.kept, PieceSizes(sheet, Writing(style, units=False))
    items: list[Item] = [Shape((whole,), SAW_CUT, "what the saw takes")]
    if trim := trim_of(sheet):
        items.append(Shape(trim, LEFT, "trimmed off", "\\"))
    items += _left(sheet, kept, sizes)
    for piece in sheet.pieces:
        items += _part(piece, sizes)
    items += [
        Chain("below", 0, (0, stock.length), (sizes.length(sizes.stock),), foot=0),
        Chain("left", 0, (0, stock.width), (sizes.width(sizes.stock),)),
    ]
    if arrow:
        items += _grain(sheet, band)
    items += [tag for number, step in steps for cut in step.cuts for tag in [numbered(cut, number, sheet)]]
    legend = (*_parts_told(sheet, sizes, style), *_rest_told(sheet, kept, sizes, style), *_steps_told(sheet, steps))
    return Scene(
        f"{sheet.name}: {sizes.size(sizes.stock, TIMES)}, {_thick(sheet, style)}",
        unit_note(style, f"{_way(sheet, arrow)} Saw cuts of {_bare(sheet.kerf, style)} are dark."),
        f"{_said(sheet, style)} {' '.join(legend)}",
        (0, 0, stock.length, stock.width + band),
        tuple(items),
        legend,
    )


def flat(at: Rect) -> Flat:
    """Left, bottom, right and top of a place.

    >>> flat(Rect(1, 2, 30, 40))
    (1, 2, 31, 42)
    """
    return at.x, at.y, at.x + at.w, at.y + at.h


def trim_of(sheet: LaidSheet) -> tuple[Flat, ...]:
    """The strips that are trimmed off, ends first.

    >>> from shoplib.buying.laid_out import laid_out
    >>> from shoplib.documents.examples import cabinet_from
    >>> found = laid_out(cabinet_from("finger_jointed_drawers"), 0)
    >>> [(c - a, d - b) for a, b, c, d in trim_of(found.sheets[0])]  # 8 mm round a sheet of 2440 × 1220
    [(640000, 97600000), (640000, 97600000), (193920000, 640000), (193920000, 640000)]
    """
    stock, usable = sheet.stock, sheet.stock.usable
    ends = [(0, 0, usable.x, stock.width), (usable.x + usable.w, 0, stock.length, stock.width)]
    edges = [
        (usable.x, 0, usable.x + usable.w, usable.y),
        (usable.x, usable.y + usable.h, usable.x + usable.w, stock.width),
    ]
    return tuple(ends if stock.trim_ends else []) + tuple(edges if stock.trim_edges else [])


def _left(sheet: LaidSheet, kept: dict[Rect, str], sizes: PieceSizes) -> Iterator[Item]:
    for rest in sheet.sawn.offcuts:
        size = sizes.size(rest, TIMES)
        yield Shape((flat(rest),), LEFT, f"left: {size}", "/")
        if rest in kept:
            called = f"{kept[rest]} left"
            yield Label(
                flat(rest), (f"{called}\n{size}", f"{called}: {size}", kept[rest]), plate=True, fullest=True
            )


def _part(piece: Piece, sizes: PieceSizes) -> Iterator[Item]:
    board, at = piece.board, piece.placed.at
    size = sizes.size(at, TIMES)
    stacked = size.replace(TIMES, f"\n{TIMES.lstrip()}")
    name = piece.name.removeprefix(f"{board.group} ")
    yield Shape((flat(at),), fill_of(board), f"{piece.letter}: {piece.name}, {size}")
    full = [f"{piece.letter}  {piece.name}\n{size}", f"{piece.letter}  {piece.name}, {size}"]
    if board.group != "case":
        full += [f"{piece.letter}  {board.group}\n{name}\n{size}"]
    yield Label(
        flat(at), (*full, f"{piece.letter}\n{size}", f"{piece.letter}  {size}",
                    f"{piece.letter}\n{stacked}", piece.letter), fullest=True,
    )  # fmt: skip


def numbered(cut: SawCut, number: int, sheet: LaidSheet) -> Tag:
    """The number of a step, somewhere along one of its cuts."""
    x, y, w, h = cut.piece
    within = flat(Rect(0, 0, sheet.stock.length, sheet.stock.width))
    if cut.off.w != w:
        at = cut.off.x + cut.off.w if cut.off.x == x else cut.off.x
        return Tag((at, y), (at, y + h), str(number), within)
    at = cut.off.y + cut.off.h if cut.off.y == y else cut.off.y
    return Tag((x, at), (x + w, at), str(number), within)


def _steps_told(sheet: LaidSheet, steps: Sequence[tuple[int, Step]]) -> Iterator[str]:
    if not steps:
        return
    yield "Numbers in boxes: the steps of cut_order.csv, each on its cut."
    first = f"{sheet.name}, "
    off: dict[int, list[str]] = {}
    for number, step in steps:
        for piece in step.off:
            if piece.part is None and piece.mark.startswith(f"{first}piece "):
                off.setdefault(number, []).append(piece.mark.removeprefix(f"{first}piece "))
    if off:
        told = [f"{and_list(names)} at step {number}" for number, names in off.items()]
        yield f"Pieces that are cut further, and where they come off: {'; '.join(told)}."


def _way(sheet: LaidSheet, arrow: bool) -> str:
    """How the sizes on the sheet are to be read."""
    if sheet.sheet.grain == "none":
        return "Sizes are along the sheet × across it; its parts have no grain to follow."
    return f"{'' if arrow else 'The grain runs from left to right. '}Sizes are along the grain × across it."


def _grain(sheet: LaidSheet, band: int) -> Iterator[Item]:
    """An arrow along the sheet's grain, above it."""
    length, middle = sheet.stock.length, sheet.stock.width + band // 2
    yield Line((length * 3 // 8, middle), (length * 5 // 8, middle), "grain")
    room = (0, sheet.stock.width, length, sheet.stock.width + band)
    yield EdgeText(room, "above", "grain of the sheet")


def _parts_told(sheet: LaidSheet, sizes: PieceSizes, style: Style) -> Iterator[str]:
    """A line for each letter: how many, of which boards, how large by the cut list, and which lie across."""
    by_letter: dict[str, list[Piece]] = {}
    for piece in sorted(sheet.pieces, key=lambda piece: (len(piece.letter), piece.letter)):
        by_letter.setdefault(piece.letter, []).append(piece)
    for called, pieces in by_letter.items():
        names = boards_in_short(piece.board for piece in pieces)
        names = f"stave of {names}" if pieces[0].stave else names
        turned = [piece for piece in pieces if piece.placed.turned]
        at = pieces[0].placed.at
        length, width = (at.h, at.w) if pieces[0].placed.turned else (at.w, at.h)
        across = ""
        if turned:
            how_many = "" if len(turned) == len(pieces) else f"{len(turned)} "
            across = f"; {how_many}across the sheet, as {sizes.size(turned[0].placed.at, TIMES)}"
        yield f"{called}: {len(pieces)} × {names}, {_bare(length, style)}{TIMES}{_bare(width, style)}{across}."


def _rest_told(sheet: LaidSheet, kept: dict[Rect, str], sizes: PieceSizes, style: Style) -> Iterator[str]:
    if kept:
        told = [f"{called} {sizes.size(rest, TIMES)}" for rest, called in kept.items()]
        yield f"Left, worth keeping: {'; '.join(told)}."
    if len(kept) < len(sheet.sawn.offcuts):
        yield "Hatched without a letter: scrap, too small to keep."
    if sheet.stock.trim_ends or sheet.stock.trim_edges:
        stock = sheet.stock
        ends, edges = _bare(stock.trim_ends, style), _bare(stock.trim_edges, style)
        much = [f"{ends} off each end"] if stock.trim_ends else []
        much += [f"{edges} off each long edge"] if stock.trim_edges else []
        if stock.trim_ends == stock.trim_edges:
            much = [f"{ends} off each edge"]
        yield f"Hatched the other way: trimmed off first, {', '.join(much)}."


def _said(sheet: LaidSheet, style: Style) -> str:
    """What the drawing shows, for those who do not see it."""
    sizes = PieceSizes(sheet, Writing(style))
    size = f"{sizes.length(sizes.stock)} long and {sizes.width(sizes.stock)} wide"
    count = len(sheet.pieces)
    parts = "1 part where it is" if count == 1 else f"{count} parts where they are"
    return f"{sheet.name}, {size}, seen flat, with {parts} cut."


def _bare(ticks: int, style: Style) -> str:
    """A size as the cut list has it: nothing that is set at the saw is told in two ways."""
    return Writing(style, units=False).length(ticks)


def _thick(sheet: LaidSheet, style: Style) -> str:
    """A rough board by its name at the yard, and what it becomes."""
    if sheet.sheet.kind == "solid":
        return f"{rough_words(sheet.thickness, style)}, planed to {setting(sheet.sheet.thickness, style)}"
    return f"{write_brief(sheet.sheet.thickness, style, True)} thick"
